import './reasoning.css';
import type { WholeReasoning } from '@combside/casework/assess/whole-reasoning';
import type { Reason } from '@combside/science/diagnosis/reasons';
import { useState } from 'react';
import { Button } from '../button.tsx';
import { FindingLine } from '../finding-line.tsx';
import { saySentence, sayWord } from '../say-sentence.ts';
import { SignDrawing } from '../sign-drawing.tsx';
import { useWords } from '../words-context.tsx';
import { ConditionBars } from './condition-bars.tsx';
import { DutiesList } from './duties-list.tsx';
import { type ChangesKnown, KnownBefore } from './known-before.tsx';
import { NextChecksShown } from './next-checks.tsx';
import { OneTapDeeper } from './one-tap-deeper.tsx';
import { SeverityOverVisits } from './severity-over-visits.tsx';
import { intervalSaid } from './shares.ts';
import { SourcesOf } from './sources-of.tsx';

interface ReasoningPageProps {
  readonly whole: WholeReasoning;
  /** Where what was known may be changed; null where the page only shows. */
  readonly changes?: ChangesKnown | null;
}

/** What a photograph shows against what was said: no matter of the law, but of the next look. */
const photographs: readonly string[] = ['casework.examined.photograph-spotty', 'casework.examined.photograph-compact'];

/**
 * One calm page: what it could be, why, what to look at next, what was not looked at, what this look could have missed,
 * what the law asks. Order and words first; numbers one tap deeper. The same at the hive and in the office.
 */
export function ReasoningPage({ whole, changes = null }: ReasoningPageProps) {
  const words = useWords();
  const [numbers, setNumbers] = useState(false);
  const { reasoning } = whole.assessed;
  // The respirator is said at the top already.
  const findings = whole.assessed.findings.filter((one) => one.id !== 'casework.caution.respirator');
  const againstTheEye = findings.filter((one) => photographs.includes(one.id));
  const { reasons } = reasoning;
  const shown = reasoning.diseases.filter((one, index) => index < 3 || one.inWords !== 'nothing-points-to-it');
  const condition = (id: string) => sayWord(words, 'signs.condition.*.name', id);
  const pointing = (direction: Reason['direction']) => reasons.reasons.filter((one) => one.direction === direction);
  return (
    <div className="reasoning-page stack">
      <section className="stack close">
        {reasoning.states.map((state) => (
          <p key={state.id} className="large-words">
            {saySentence(words, state.sentence)}
          </p>
        ))}
        {reasoning.cautions.map((caution) => (
          <p key={caution.id} className="caution">
            {saySentence(words, caution.sentence)}
          </p>
        ))}
      </section>

      {reasoning.next.first.length > 0 && (
        <section className="caution stack close">
          <h2>{words.say('reasoning.first')}</h2>
          <ol className="stack close first-steps">
            {reasoning.next.first.map((step) => (
              <li key={step.step}>{saySentence(words, step.sentence)}</li>
            ))}
          </ol>
        </section>
      )}

      <section className="stack close">
        <h2>{words.say('reasoning.order')}</h2>
        {numbers ? (
          <ConditionBars whole={reasoning} />
        ) : (
          <ol className="rows">
            {shown.map((one) => (
              <li key={one.disease} className="kept-line">
                <span>{condition(one.disease)}</span>
                <span className="quiet">{sayWord(words, 'signs.likelihood.*', one.inWords)}</span>
              </li>
            ))}
          </ol>
        )}
        <Button look="plain" aria-expanded={numbers} onClick={() => setNumbers(!numbers)}>
          {words.say(numbers ? 'reasoning.numbers-hide' : 'reasoning.numbers')}
        </Button>
      </section>

      {againstTheEye.map((one) => (
        <div key={one.id} className="caution">
          <FindingLine finding={one} />
        </div>
      ))}
      <NextChecksShown next={reasoning.next} />

      {reasons.reasons.length > 0 && (
        <p className="quiet">
          {words.say('reasoning.about', { condition: condition(reasons.leading), rival: condition(reasons.rival) })}
        </p>
      )}
      <Pointing title={words.say('reasoning.for')} reasons={pointing('for')} />
      <Pointing title={words.say('reasoning.against')} reasons={pointing('against')} />
      {reasons.silent.length > 0 && (
        <OneTapDeeper
          title={
            <>
              {words.say('reasoning.silent')} ({reasons.silent.length})
            </>
          }
        >
          <ul className="stack close">
            {reasons.silent.map((one) => (
              <li key={`${one.node} ${one.why}`}>{saySentence(words, one.sentence)}</li>
            ))}
          </ul>
        </OneTapDeeper>
      )}

      {reasoning.advice.length > 0 && (
        <section className="stack close">
          <h2>{words.say('reasoning.advice')}</h2>
          <ul className="rows">
            {reasoning.advice.map((one) => (
              <li key={one.id} className="open-line">
                <p>{saySentence(words, one.sentence)}</p>
                <SourcesOf ids={one.sources} />
              </li>
            ))}
          </ul>
        </section>
      )}

      <section className="stack close">
        <h2>{words.say('reasoning.missed')}</h2>
        <p>{saySentence(words, reasoning.couldHaveMissed.sentence)}</p>
        <ul>
          {reasoning.couldHaveMissed.limits.map((limit) => (
            <li key={limit}>{sayWord(words, 'signs.limit.*', limit)}</li>
          ))}
        </ul>
        {numbers && (
          <table className="numbers">
            <caption>{words.say('reasoning.missed-chance')}</caption>
            <tbody>
              {reasoning.couldHaveMissed.rows.map((row) => (
                <tr key={row.cells}>
                  <th scope="row">{words.say('reasoning.cells', { count: row.cells })}</th>
                  <td>{intervalSaid(words, row.chance, row.low, row.high)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
      </section>

      {reasoning.notLookedFor.length > 0 && (
        <OneTapDeeper
          title={
            <>
              {words.say('reasoning.not-looked')} ({reasoning.notLookedFor.length})
            </>
          }
        >
          <ul>
            {reasoning.notLookedFor.map((sign) => (
              <li key={sign}>{sayWord(words, 'signs.sign.*.name', sign)}</li>
            ))}
          </ul>
        </OneTapDeeper>
      )}

      {reasoning.timeSinceOnset && (
        <section className="stack close">
          <h2>{words.say('reasoning.onset')}</h2>
          <p>{saySentence(words, reasoning.timeSinceOnset.sentence)}</p>
          <p>{words.say('reasoning.onset-window')}</p>
          <SourcesOf ids={reasoning.timeSinceOnset.sources} />
        </section>
      )}

      <SeverityOverVisits severities={whole.severities} />
      <KnownBefore whole={whole} changes={changes} />

      <section className="stack close">
        <h2>{words.say('reasoning.law')}</h2>
        {whole.invented && <p className="quiet">{words.say('reasoning.law-invented')}</p>}
        {findings
          .filter((one) => !againstTheEye.includes(one))
          .map((one) => (
            <FindingLine key={`${one.id} ${JSON.stringify(one.values)}`} finding={one} />
          ))}
        {whole.owed.length === 0 ? <p>{words.say('reasoning.law-none')}</p> : <DutiesList duties={whole.owed} />}
        {whole.wouldFollow && whole.wouldFollow.duties.length > 0 && (
          <OneTapDeeper title={words.say('reasoning.law-if', { condition: condition(whole.wouldFollow.condition) })}>
            <DutiesList duties={whole.wouldFollow.duties} />
          </OneTapDeeper>
        )}
        <p className="quiet">{words.say('reasoning.law-confirm')}</p>
      </section>
    </div>
  );
}

function Pointing({ title, reasons }: { readonly title: string; readonly reasons: readonly Reason[] }) {
  const words = useWords();
  if (reasons.length === 0) return null;
  return (
    <section className="stack close">
      <h2>{title}</h2>
      <ul className="rows">
        {reasons.map((reason) => (
          <li key={reason.node} className="reason">
            <SignDrawing sign={reason.node} width={48} name="" />
            <div>
              <p>{saySentence(words, reason.sentence)}</p>
              <SourcesOf ids={reason.sources} expertBand={reason.expertBand} />
            </div>
          </li>
        ))}
      </ul>
    </section>
  );
}
