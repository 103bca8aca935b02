import type { Finding } from '@combside/casework/act';
import type { WholeReasoning } from '@combside/casework/assess/whole-reasoning';
import { FindingLine } from '../finding-line.tsx';
import { sayWord } from '../say-sentence.ts';
import { useWords } from '../words-context.tsx';
import { DutiesList } from './duties-list.tsx';
import { OneTapDeeper } from './one-tap-deeper.tsx';

interface WhatTheLawAsksProps {
  readonly whole: WholeReasoning;
  /** What was found against the rules; what is said elsewhere on the page left out. */
  readonly findings: readonly Finding[];
}

/** What the law asks now, and what it would ask if the leading condition were suspected. */
export function WhatTheLawAsks({ whole, findings }: WhatTheLawAsksProps) {
  const words = useWords();
  const condition = (id: string) => sayWord(words, 'signs.condition.*.name', id);
  return (
    <section className="stack close">
      <h2>{words.say('reasoning.law')}</h2>
      {whole.invented && <p className="quiet">{words.say('reasoning.law-invented')}</p>}
      {findings.map((one) => (
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
  );
}
