import '../../ui/comb/comb.css';
import './comb-desk.css';
import { samePlace } from '@combside/casework/comb/compare-readings';
import { replaceReading } from '@combside/casework/comb/replace-reading';
import type { ColonyPage } from '@combside/contract/colony-page';
import type { CombReadingBody } from '@combside/record/kinds/comb-reading';
import type { ColonyState, Folded } from '@combside/record/states';
import type { Language } from '@combside/words/language';
import { useState } from 'react';
import { Link } from 'wouter';
import type { Session } from '../../app/session.ts';
import { lastWords } from '../../ui/comb/last-words.ts';
import { Refusal } from '../../ui/refusal.tsx';
import { SpeaksWords, useWords } from '../../ui/words-context.tsx';
import { PageWaits } from '../page-waits.tsx';
import { useWriting } from '../register/use-writing.ts';
import { deskTimeZone } from '../time-zone.ts';
import { useAsked } from '../use-office.ts';
import { CombDesk } from './comb-desk.tsx';
import { Compared } from './compared.tsx';

interface CombPageProps {
  readonly session: Session;
  readonly language: Language;
  readonly colony: string;
  /** Of the photograph. */
  readonly hash: string;
}

/** The comb on a stored photograph as it was read, corrected here by keys, and set beside the same side at other visits. */
export default function CombPage(props: CombPageProps) {
  return (
    <SpeaksWords language={props.language} rooms={['always', 'district', 'casework', 'comb', 'front']}>
      <Comb key={`${props.colony} ${props.hash}`} {...props} />
    </SpeaksWords>
  );
}

function Comb({ session, colony, hash }: CombPageProps) {
  const words = useWords();
  const asked = useAsked<ColonyPage>(`/api/colonies/${colony}`, (event) => event.about.id === colony);
  const { answer } = asked;
  if (!answer) {
    return <PageWaits asked={asked} loading="district.colony.loading" notThere="district.colony.not-there" />;
  }
  // The page is read as the wire brings it; casework takes the same shape under the record's own name.
  const state = answer.colony as ColonyState;
  const label = state.colony.current?.body.label ?? '';
  const kept = state.combReadings.find((one) => one.body.photograph.hash === hash);
  const nameOf = (person: string) =>
    answer.people.find((one) => one.person === person)?.name ?? words.say('always.not-known');
  return (
    <main className="office-page comb-office stack">
      <header className="stack close">
        <h2>{words.say('comb.screen.title', { label })}</h2>
        <p>
          <Link href={`/colony/${colony}`}>{words.say('comb.screen.back', { label })}</Link>
          {answer.apiary && ` · ${answer.apiary.name}`}
        </p>
      </header>
      {kept ? (
        <Kept session={session} colony={state} kept={kept} nameOf={nameOf} />
      ) : (
        <p>{words.say('comb.screen.none-kept')}</p>
      )}
    </main>
  );
}

interface KeptProps {
  readonly session: Session;
  readonly colony: ColonyState;
  readonly kept: Folded<CombReadingBody>;
  readonly nameOf: (person: string) => string;
}

function Kept({ session, colony, kept, nameOf }: KeptProps) {
  const words = useWords();
  const writing = useWriting(session);
  const [other, setOther] = useState<string | null>(null);
  const { body } = kept;
  // Of the same side; where none is, no comparison is offered.
  const others = colony.combReadings.filter((one) => one !== kept && samePlace(one.body.place, body.place));
  const compared = others.find((one) => one.written.entry === other);
  const at = (instant: string) => words.dayAndTime(instant, deskTimeZone);
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
        {writing.refusal && <Refusal refusal={writing.refusal} />}
        {writing.state !== 'ready' && <p role="status">{words.say(`comb.screen.writing.${writing.state}`)}</p>}
      </div>
      {/* Each correction written begins the next from what then stands. */}
      <CombDesk
        key={kept.corrections.length}
        body={body}
        boxes={colony.colony.current?.body.broodBoxes ?? []}
        busy={writing.state === 'no store' || writing.state === 'writing'}
        onWrite={(said) =>
          void writing.write(
            replaceReading({
              colony,
              corrects: kept.written.entry,
              reason: said.reason,
              correctedAt: new Date().toISOString(),
              corrections: lastWords(said.corrections),
              place: said.place,
              accepted: said.accepted,
            }),
            [colony.about],
          )
        }
      />
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
