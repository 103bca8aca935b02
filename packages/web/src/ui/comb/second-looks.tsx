import type { CombReadingBody } from '@combside/record/kinds/comb-reading';
import { Button } from '../button.tsx';
import { sayWord } from '../say-sentence.ts';
import { useWords } from '../words-context.tsx';

interface SecondLooksProps {
  readonly looks: CombReadingBody['reader']['secondLook'];
  readonly measured: boolean;
  readonly inHand: number | null;
  readonly onPick: (cell: number) => void;
}

/** Cappings that stand out from their neighbours, the most outlying first. */
export function SecondLooks({ looks, measured, inHand, onPick }: SecondLooksProps) {
  const words = useWords();
  return (
    <section className="stack close">
      <h2>{words.say('comb.screen.second-look')}</h2>
      {/* Without a measurement it would be untrue to say that none stands out. */}
      <p>
        {measured
          ? words.say('comb.second-look', { count: looks.length })
          : words.say('comb.reason.cappings-not-measured')}
      </p>
      {looks.length > 0 && (
        <ol className="comb-classes">
          {looks.map((look, place) => (
            <li key={look.cell}>
              <Button look="wide" aria-pressed={inHand === look.cell} onClick={() => onPick(look.cell)}>
                {words.say('comb.screen.second-look.one', {
                  place: place + 1,
                  why: sayWord(words, 'comb.second-look.*', look.why),
                })}
              </Button>
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}
