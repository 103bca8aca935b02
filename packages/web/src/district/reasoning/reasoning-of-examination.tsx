import { type ColonyPage, colonyPage } from '@combside/contract/colony-page';
import type { Pack } from '@combside/law/pack';
import type { AssessmentBody } from '@combside/record/kinds/assessment';
import type { ExaminationBody } from '@combside/record/kinds/examination';
import type { ColonyState } from '@combside/record/states';
import type { Language } from '@combside/words/language';
import { useState } from 'react';
import { Link } from 'wouter';
import type { Session } from '../../app/session.ts';
import { Button } from '../../ui/button.tsx';
import { useReasoning } from '../../ui/reasoning/reasoning.ts';
import { ReasoningPage } from '../../ui/reasoning/reasoning-page.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { SpeaksWords, useWords } from '../../ui/words-context.tsx';
import { useAsked } from '../office/use-asked.ts';
import { usePack } from '../use-pack.ts';
import { type Copy, WhatIf } from './what-if.tsx';

interface ReasoningOfExaminationProps {
  readonly session: Session;
  readonly language: Language;
  readonly colony: string;
  /** Id of the examination entry. */
  readonly entry: string;
}

/** The reasoning on any examination of any date, as the hive showed it, and a copy to think with. */
export default function ReasoningOfExamination(props: ReasoningOfExaminationProps) {
  return (
    <SpeaksWords language={props.language} rooms={['always', 'district', 'signs', 'casework', 'reasoning']}>
      <Examined key={`${props.colony} ${props.entry}`} {...props} />
    </SpeaksWords>
  );
}

function Examined({ session, colony, entry }: ReasoningOfExaminationProps) {
  const words = useWords();
  const { answer, state, again } = useAsked(
    colonyPage,
    `/api/colonies/${colony}`,
    (event) => event.about.type === 'colony' && event.about.id === colony,
  );
  const pack = usePack(session.pack);
  const examined = answer?.colony.examinations.find((one) => one.written.entry === entry);
  if (state === 'failed' && !answer) {
    return (
      <main className="office-page">
        <div className="caution stack close" role="alert">
          <p>{words.say('district.failed')}</p>
          <Button onClick={again}>{words.say('district.again')}</Button>
        </div>
      </main>
    );
  }
  if (state === 'not there' || (answer && !examined)) {
    return (
      <main className="office-page">
        <p>{words.say('reasoning.office.not-there')}</p>
      </main>
    );
  }
  if (!answer || !examined || !pack) {
    return (
      <main className="office-page">
        <p className="quiet">{words.say('reasoning.working')}</p>
      </main>
    );
  }
  return <Reckoned page={answer} entry={entry} pack={pack} />;
}

function Reckoned({ page, entry, pack }: { readonly page: ColonyPage; readonly entry: string; readonly pack: Pack }) {
  const words = useWords();
  const [copy, setCopy] = useState<Copy | null>(null);
  const [now] = useState(() => new Date().toISOString());
  // The page is read as the wire brings it; the reasoning takes the same shape under the record's own name.
  const colony = page.colony as ColonyState;
  const examined = colony.examinations.find((one) => one.written.entry === entry);
  const stated = colony.assessments.find((one) => one.body.examination === entry)?.body ?? null;
  const body = examined?.body ?? null;
  const shownBody = copy?.body ?? body;
  const recorded = useReasoning(
    body && question({ colony, entry, body, stated, pack, now }),
    JSON.stringify([entry, body, stated, pack.version]),
  );
  const tried = useReasoning(
    copy && shownBody && question({ colony, entry, body: shownBody, stated, pack, now }),
    copy ? JSON.stringify([entry, copy.body, pack.version]) : '',
  );
  if (!body) return null;
  const whole = copy ? (tried.answer ?? recorded.answer) : recorded.answer;
  const names = (ids: readonly string[]) =>
    words.list(ids.slice(0, 3).map((id) => sayWord(words, 'signs.condition.*.name', id)));
  const order = recorded.answer?.assessed.reasoning.diseases.map((one) => one.disease) ?? [];
  const statedOrder = stated?.differential.map((one) => one.condition) ?? [];
  const differs = statedOrder.length > 0 && statedOrder.slice(0, 3).join() !== order.slice(0, 3).join();
  const label = colony.colony.current?.body.label ?? '';
  return (
    <main className="office-page reasoning-desk stack">
      <header className="stack close">
        <h2>{words.say('reasoning.office.title', { label, when: words.dayAndTime(body.observedAt, timeZoneHere) })}</h2>
        <p>
          <Link href={`/visit/${body.visit}`}>{words.say('reasoning.office.back')}</Link>
          {page.apiary && ` · ${page.apiary.name}`}
        </p>
        {recorded.answer && (
          <p className="quiet">
            {words.say('reasoning.office.versions', {
              science: recorded.answer.assessed.reasoning.version,
              place: pack.jurisdiction,
              version: pack.version,
            })}{' '}
            {stated &&
              words.say('reasoning.office.then', {
                science: stated.scienceVersion.replace(/^\D+/, ''),
                place: stated.pack.id === pack.id ? pack.jurisdiction : stated.pack.id,
                version: stated.pack.version,
                result: sayWord(words, 'casework.result.*', stated.result),
              })}
          </p>
        )}
        {recorded.answer && differs && (
          <p className="caution">{words.say('reasoning.office.differs', { order: names(statedOrder) })}</p>
        )}
      </header>
      <WhatIf
        recorded={body}
        copy={copy}
        onCopy={setCopy}
        before={order}
        after={copy ? (tried.answer?.assessed.reasoning.diseases.map((one) => one.disease) ?? null) : null}
      />
      {(recorded.failed || tried.failed) && <p className="caution">{words.say('always.went-wrong')}</p>}
      {whole ? (
        <ReasoningPage key={copy ? 'copy' : 'recorded'} whole={whole} />
      ) : (
        <p className="quiet">{words.say('reasoning.working')}</p>
      )}
      {colony.examinations.length > 1 && (
        <nav aria-label={words.say('reasoning.office.examinations')} className="stack close">
          <h3>{words.say('reasoning.office.examinations')}</h3>
          <ul className="rows">
            {colony.examinations.map((one) => (
              <li key={one.written.entry}>
                <Link
                  className="office-line"
                  href={`/reasoning/colony/${colony.about.id}/examination/${one.written.entry}`}
                  aria-current={one.written.entry === entry ? 'page' : undefined}
                >
                  {words.dayAndTime(one.body.observedAt, timeZoneHere)}
                </Link>
              </li>
            ))}
          </ul>
        </nav>
      )}
    </main>
  );
}

/** What is asked of the reasoning: the look with what was known and suspected when it was stated. */
function question(of: {
  readonly colony: ColonyState;
  readonly entry: string;
  readonly body: ExaminationBody;
  readonly stated: AssessmentBody | null;
  readonly pack: Pack;
  readonly now: string;
}) {
  const { stated } = of;
  const byInspector = stated?.result === 'suspect' && stated.basis === 'inspector' ? stated.suspected : [];
  return {
    ask: 'examined' as const,
    examination: of.body,
    entry: of.entry,
    colony: of.colony,
    pack: of.pack,
    known: stated?.circumstances ?? null,
    priorChanges: stated?.priorChanges ?? [],
    suspectedByInspector: byInspector,
    now: of.now,
  };
}
