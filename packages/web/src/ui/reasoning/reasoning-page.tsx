import './reasoning.css';
import type { WholeReasoning } from '@combside/casework/assess/whole-reasoning';
import { useState } from 'react';
import { FindingLine } from '../finding-line.tsx';
import { saySentence, sayWord } from '../say-sentence.ts';
import { useWords } from '../words-context.tsx';
import { type ChangesKnown, KnownBefore } from './known-before.tsx';
import { NextChecksShown } from './next-checks.tsx';
import { OneTapDeeper } from './one-tap-deeper.tsx';
import { OrderOfConditions } from './order-of-conditions.tsx';
import { SeverityOverVisits } from './severity-over-visits.tsx';
import { SourcesOf } from './sources-of.tsx';
import { WhatPoints } from './what-points.tsx';
import { WhatTheLawAsks } from './what-the-law-asks.tsx';
import { WhatWasMissed } from './what-was-missed.tsx';

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

      <OrderOfConditions reasoning={reasoning} numbers={numbers} onNumbers={setNumbers} />

      {againstTheEye.map((one) => (
        <div key={one.id} className="caution">
          <FindingLine finding={one} />
        </div>
      ))}
      <NextChecksShown next={reasoning.next} />

      <WhatPoints reasons={reasoning.reasons} />

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

      <WhatWasMissed reasoning={reasoning} numbers={numbers} />

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

      <WhatTheLawAsks whole={whole} findings={findings.filter((one) => !againstTheEye.includes(one))} />
    </div>
  );
}
