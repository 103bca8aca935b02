import type { Finding } from '@combside/casework/act';
import type { DiseaseAssessment, WholeAssessment } from '@combside/science/diagnosis/assess';
import type { Reason } from '@combside/science/diagnosis/reasons';
import { useState } from 'react';
import { Button } from '../ui/button.tsx';
import { FindingLine } from '../ui/finding-line.tsx';
import { sayId, saySentence } from '../ui/say-sentence.ts';
import { SignDrawing } from '../ui/sign-drawing.tsx';
import { useWords } from '../ui/words-context.tsx';
import { SourcesOf } from './sources-of.tsx';

interface ReasoningPageProps {
  readonly whole: WholeAssessment;
  /** What the law says follows, as far as the pack in force says it. */
  readonly owed: readonly Finding[];
}

/**
 * One calm page: what it could be, why, what to look at next, what was not looked at, what this look could have missed,
 * what the law asks. Order and words first; numbers one tap deeper.
 */
export function ReasoningPage({ whole, owed }: ReasoningPageProps) {
  const words = useWords();
  const [numbers, setNumbers] = useState(false);
  const shown = whole.diseases.filter((one, index) => index < 3 || one.inWords !== 'nothing-points-to-it');
  return (
    <>
      <section className="stack close">
        {whole.states.map((state) => (
          <p key={state.id} className="large-words">
            {saySentence(words, state.sentence)}
          </p>
        ))}
        {whole.cautions.map((caution) => (
          <p key={caution.id} className="caution">
            {saySentence(words, caution.sentence)}
          </p>
        ))}
      </section>

      {whole.next.first.length > 0 && (
        <ol className="caution stack close">
          {whole.next.first.map((step) => (
            <li key={step.step}>{saySentence(words, step.sentence)}</li>
          ))}
        </ol>
      )}

      <section className="stack close">
        <h2>{words.say('hive.reasoning.order')}</h2>
        <ol className="rows">
          {shown.map((one) => (
            <li key={one.disease} className="kept-line">
              <Disease one={one} numbers={numbers} />
            </li>
          ))}
        </ol>
        <Button look="plain" aria-expanded={numbers} onClick={() => setNumbers(!numbers)}>
          {words.say(numbers ? 'hive.reasoning.numbers-hide' : 'hive.reasoning.numbers')}
        </Button>
        {numbers && <p className="quiet">{words.say('hive.reasoning.expert-bands')}</p>}
      </section>

      <Pointing
        title={words.say('hive.reasoning.for')}
        reasons={whole.reasons.reasons.filter((one) => one.direction === 'for')}
      />
      <Pointing
        title={words.say('hive.reasoning.against')}
        reasons={whole.reasons.reasons.filter((one) => one.direction === 'against')}
      />

      {whole.next.atHive.length > 0 && (
        <section className="stack close">
          <h2>{words.say('hive.reasoning.next')}</h2>
          <ol className="rows">
            {whole.next.atHive.slice(0, 3).map((check) => (
              <li key={check.check} className="stack close open-line">
                <p>
                  <strong>{sayId(words, `signs.check.${check.check}.name`)}</strong>{' '}
                  <span className="quiet">
                    {words.say('hive.reasoning.next-minutes', { minutes: words.unit(check.cost, 'min') })}
                  </span>
                </p>
                <p>{saySentence(words, check.how)}</p>
                <SourcesOf ids={check.sources} />
              </li>
            ))}
          </ol>
        </section>
      )}

      {whole.next.inLaboratory.length > 0 && (
        <section className="stack close">
          <h2>{words.say('hive.reasoning.laboratory')}</h2>
          <ul className="rows">
            {whole.next.inLaboratory.slice(0, 3).map((check) => (
              <li key={check.check} className="open-line">
                {sayId(words, `signs.check.${check.check}.name`)}{' '}
                <span className="quiet">
                  {words.say('hive.reasoning.laboratory-days', { days: words.unit(check.cost, 'day', 'long') })}
                </span>
              </li>
            ))}
          </ul>
        </section>
      )}

      {whole.advice.length > 0 && (
        <ul className="stack close">
          {whole.advice.map((one) => (
            <li key={one.id}>{saySentence(words, one.sentence)}</li>
          ))}
        </ul>
      )}

      <section className="stack close">
        <h2>{words.say('hive.reasoning.missed')}</h2>
        <p>{saySentence(words, whole.couldHaveMissed.sentence)}</p>
        <ul>
          {whole.couldHaveMissed.limits.map((limit) => (
            <li key={limit}>{sayId(words, `signs.limit.${limit}`)}</li>
          ))}
        </ul>
        {numbers && (
          <table className="numbers">
            <tbody>
              {whole.couldHaveMissed.rows.map((row) => (
                <tr key={row.cells}>
                  <th scope="row">{words.say('hive.reasoning.cells', { count: row.cells })}</th>
                  <td>
                    {words.say('hive.reasoning.interval', {
                      value: words.share(row.chance),
                      low: words.share(row.low),
                      high: words.share(row.high),
                    })}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
      </section>

      {whole.notLookedFor.length > 0 && (
        <details>
          <summary>
            {words.say('hive.reasoning.not-looked')} ({whole.notLookedFor.length})
          </summary>
          <ul>
            {whole.notLookedFor.map((sign) => (
              <li key={sign}>{sayId(words, `signs.sign.${sign}.name`)}</li>
            ))}
          </ul>
        </details>
      )}

      {owed.length > 0 && (
        <section className="stack close">
          <h2>{words.say('hive.reasoning.law')}</h2>
          {owed.map((one) => (
            <FindingLine key={`${one.id} ${JSON.stringify(one.values)}`} finding={one} />
          ))}
        </section>
      )}
    </>
  );
}

function Disease({ one, numbers }: { readonly one: DiseaseAssessment; readonly numbers: boolean }) {
  const words = useWords();
  return (
    <>
      <span>{sayId(words, `signs.condition.${one.disease}.name`)}</span>
      <span className="quiet">
        {numbers
          ? words.say('hive.reasoning.interval', {
              value: words.share(one.point, 1),
              low: words.share(one.interval.low, 1),
              high: words.share(one.interval.high, 1),
            })
          : sayId(words, `signs.likelihood.${one.inWords}`)}
      </span>
    </>
  );
}

function Pointing({ title, reasons }: { readonly title: string; readonly reasons: readonly Reason[] }) {
  const words = useWords();
  if (reasons.length === 0) return null;
  return (
    <section className="stack close">
      <h2>{title}</h2>
      <ul className="rows">
        {reasons.slice(0, 6).map((reason) => (
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
