import '../../ui/comb/comb.css';
import './comb-desk.css';
import { samePlace } from '@combside/casework/comb/compare-readings';
import { replaceReading } from '@combside/casework/comb/replace-reading';
import { colonyPage } from '@combside/contract/colony-page';
import type { CombReadingBody } from '@combside/record/kinds/comb-reading';
import type { ColonyState, Folded } from '@combside/record/states';
import type { Language } from '@combside/words/language';
import { useState } from 'react';
import { Link } from 'wouter';
import { lastWords } from '../../ui/comb/last-words.ts';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { SpeaksWords, useWords } from '../../ui/words-context.tsx';
import { WriteStatus } from '../../ui/write-status.tsx';
import { PageWaits } from '../office/page-waits.tsx';
import { Unanswered } from '../office/unanswered.tsx';
import { useAsked } from '../office/use-asked.ts';
import { CameBack, draftName } from './came-back.tsx';
import { CombDesk, type ToWrite } from './comb-desk.tsx';
import { Compared } from './compared.tsx';
import { Proposed } from './proposed.tsx';
import { useCombDeskDraft } from './use-comb-desk-draft.ts';
import { type CombWriting, useCombWriting } from './use-comb-writing.ts';

interface CombPageProps {
  readonly language: Language;
  readonly colony: string;
  /** Of the photograph. */
  readonly hash: string;
}

/**
 * The comb on a stored photograph: read by the office's machine when somebody asks, looked at, corrected by keys and kept;
 * and, once kept, set beside the same side at other visits.
 */
export default function CombPage(props: CombPageProps) {
  return (
    <SpeaksWords language={props.language} rooms={['always', 'district', 'casework', 'comb', 'front']}>
      <Comb key={`${props.colony} ${props.hash}`} {...props} />
    </SpeaksWords>
  );
}

function Comb({ colony, hash }: CombPageProps) {
  const words = useWords();
  const writing = useCombWriting();
  const asked = useAsked(colonyPage, `/api/colonies/${colony}`, (event) => event.about.id === colony);
  const { answer } = asked;
  if (!answer) {
    return <PageWaits asked={asked} loading="district.colony.loading" notThere="district.colony.not-there" />;
  }
  // The page is read as the wire brings it; casework takes the same shape under the record's own name.
  const state = answer.colony as ColonyState;
  const label = state.colony.current?.body.label ?? '';
  const kept = state.combReadings.find((one) => one.body.photograph.hash === hash);
  const examined = state.examinations.find(({ body }) => body.photographs.some((one) => one.hash === hash));
  const photograph = answer.photographs.find((one) => one.hash === hash);
  const nameOf = (person: string) =>
    answer.people.find((one) => one.person === person)?.name ?? words.say('always.not-known');
  const visit = kept?.body.visit ?? examined?.body.visit;
  return (
    <main className="office-page comb-office stack">
      <Unanswered asked={asked} />
      <header className="stack close">
        <h2>{words.say('comb.screen.title', { label })}</h2>
        <p>
          <Link href={`/colony/${colony}`}>{words.say('comb.screen.back', { label })}</Link>
          {answer.apiary && ` · ${answer.apiary.name}`}
          {photograph && ` · ${words.dayAndTime(photograph.takenAt, timeZoneHere)}`}
          {visit && (
            <>
              {' · '}
              <Link href={`/combs?visit=${visit}`}>{words.say('district.combs.of-visit')}</Link>
            </>
          )}
        </p>
      </header>
      {kept ? (
        <Kept writing={writing} colony={state} kept={kept} nameOf={nameOf} />
      ) : examined && photograph ? (
        <Proposed writing={writing} colony={state} visit={examined.body.visit} photograph={photograph} />
      ) : (
        <p>{words.say('district.comb.not-of-colony')}</p>
      )}
    </main>
  );
}

interface KeptProps {
  readonly writing: CombWriting;
  readonly colony: ColonyState;
  readonly kept: Folded<CombReadingBody>;
  readonly nameOf: (person: string) => string;
}

function Kept({ writing, colony, kept, nameOf }: KeptProps) {
  const words = useWords();
  const [other, setOther] = useState<string | null>(null);
  const { body } = kept;
  const draft = useCombDeskDraft(draftName(colony.about.id, body), `corrected ${kept.corrections.length} times`);
  // Of the same side; where none is, no comparison is offered.
  const others = colony.combReadings.filter((one) => one !== kept && samePlace(one.body.place, body.place));
  const compared = others.find((one) => one.written.entry === other);
  const at = (instant: string) => words.dayAndTime(instant, timeZoneHere);
  const correct = (said: ToWrite) => {
    if (!draft) return;
    const act = () =>
      replaceReading({
        colony,
        corrects: kept.written.entry,
        reason: said.reason,
        correctedAt: new Date().toISOString(),
        corrections: lastWords(said.corrections),
        place: said.place,
        accepted: said.accepted,
      });
    void writing.write({ act, draft });
  };
  return (
    <>
      <div className="stack close">
        <p>
          {words.say(body.accepted ? 'comb.screen.kept-accepted' : 'comb.screen.kept', { when: at(body.observedAt) })}{' '}
          {words.say('comb.screen.kept-by', { name: nameOf(kept.written.by) })}
        </p>
        {kept.corrections.map(({ written, reason }) => (
          <p key={written.entry} className="quiet">
            {words.say('comb.screen.corrected-by', { name: nameOf(written.by), when: at(written.at), reason })}
          </p>
        ))}
        {draft?.cameBack && <CameBack draft={draft} />}
      </div>
      {draft ? (
        <CombDesk
          body={body}
          isKept
          draft={draft}
          boxes={colony.colony.current?.body.broodBoxes ?? []}
          busy={!writing.canWrite || writing.state === 'busy'}
          onWrite={correct}
        >
          <WriteStatus writing={writing} />
        </CombDesk>
      ) : (
        <p className="quiet">{words.say('front.opening')}</p>
      )}
      {others.length > 0 && (
        <section className="stack" aria-labelledby="compared-title">
          <h3 id="compared-title">{words.say('comb.screen.compare')}</h3>
          <label className="stack close">
            {words.say('comb.screen.compare.with')}
            <select
              className="text-input"
              value={other ?? ''}
              onChange={(event) => setOther(event.target.value || null)}
            >
              <option value="">{words.say('comb.screen.compare.nothing')}</option>
              {others.map((one) => (
                <option key={one.written.entry} value={one.written.entry}>
                  {at(one.body.observedAt)}
                </option>
              ))}
            </select>
          </label>
          {compared && <Compared one={body} other={compared.body} />}
        </section>
      )}
    </>
  );
}
