import type { WholeAssessment } from '@combside/science/diagnosis/assess';
import { saySentence, sayWord } from '../say-sentence.ts';
import { useWords } from '../words-context.tsx';
import { intervalSaid } from './shares.ts';

interface WhatWasMissedProps {
  readonly reasoning: WholeAssessment;
  /** Whether the chances are shown beside the words. */
  readonly numbers: boolean;
}

/** What this look could have missed. */
export function WhatWasMissed({ reasoning, numbers }: WhatWasMissedProps) {
  const words = useWords();
  return (
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
  );
}
