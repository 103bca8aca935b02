import type { WholeAssessment } from '@combside/science/diagnosis/assess';
import { Button } from '../button.tsx';
import { sayWord } from '../say-sentence.ts';
import { useWords } from '../words-context.tsx';
import { ConditionBars } from './condition-bars.tsx';

interface OrderOfConditionsProps {
  readonly reasoning: WholeAssessment;
  /** Whether the numbers are shown in place of the words. */
  readonly numbers: boolean;
  readonly onNumbers: (numbers: boolean) => void;
}

/** What it could be, the likeliest first: in words, and one tap deeper in numbers. */
export function OrderOfConditions({ reasoning, numbers, onNumbers }: OrderOfConditionsProps) {
  const words = useWords();
  const shown = reasoning.diseases.filter((one, index) => index < 3 || one.inWords !== 'nothing-points-to-it');
  return (
    <section className="stack close">
      <h2>{words.say('reasoning.order')}</h2>
      {numbers ? (
        <ConditionBars whole={reasoning} />
      ) : (
        <ol className="rows">
          {shown.map((one) => (
            <li key={one.disease} className="kept-line">
              <span>{sayWord(words, 'signs.condition.*.name', one.disease)}</span>
              <span className="quiet">{sayWord(words, 'signs.likelihood.*', one.inWords)}</span>
            </li>
          ))}
        </ol>
      )}
      <Button look="plain" aria-expanded={numbers} onClick={() => onNumbers(!numbers)}>
        {words.say(numbers ? 'reasoning.numbers-hide' : 'reasoning.numbers')}
      </Button>
    </section>
  );
}
