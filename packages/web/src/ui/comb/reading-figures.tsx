import type { CorrectedReading } from '@combside/casework/comb/corrected-reading';
import { useId } from 'react';
import { useWords } from '../words-context.tsx';
import { classesInOrder, Swatch } from './hatching.tsx';

/** What the cells amount to, in words: brood and its area, how solid it is and how that is counted, what was not read. */
export function ReadingFigures({ corrected }: { readonly corrected: CorrectedReading }) {
  const words = useWords();
  const id = useId();
  const { reading } = corrected;
  const { brood } = reading.areas;
  const { solidness } = reading;
  const whole = (value: number) => words.number(value, 0);
  return (
    <section className="stack" aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{words.say('comb.screen.figures')}</h2>
      <ul className="stack close">
        <li>
          {words.say('comb.brood-area', {
            cells: brood.cells,
            area: whole(brood.squareCentimetres),
            low: whole(brood.low),
            high: whole(brood.high),
          })}
        </li>
        <li>
          {solidness
            ? words.say('comb.screen.solidness', {
                share: words.share(solidness.value),
                missed: solidness.missed,
                sealed: solidness.sealed,
              })
            : words.say('comb.solidness.too-few')}
          <details>
            <summary>{words.say('comb.screen.solidness.how')}</summary>
            <p className="quiet">{words.say('comb.screen.solidness.method')}</p>
          </details>
        </li>
        <li>{words.say('comb.unread', { share: words.share(reading.unread) })}</li>
        {corrected.changed > 0 && <li>{words.say('comb.corrected', { count: corrected.changed })}</li>}
        {corrected.agreement && (
          <li>
            <p>{words.say('comb.agreement', { share: words.share(corrected.agreement.share) })}</p>
            <p className="quiet">{words.say('comb.screen.agreement.limits')}</p>
          </li>
        )}
        {corrected.setAside > 0 && <li>{words.say('comb.screen.set-aside', { count: corrected.setAside })}</li>}
      </ul>
      <ul className="comb-key" aria-label={words.say('comb.screen.key')}>
        {classesInOrder
          .filter((of) => reading.counts[of] > 0)
          .map((of) => (
            <li key={of}>
              <Swatch id={id} of={of} />
              <span>{words.say(`comb.class.${of}`)}</span>
              <span className="count">{whole(reading.counts[of])}</span>
            </li>
          ))}
      </ul>
    </section>
  );
}
