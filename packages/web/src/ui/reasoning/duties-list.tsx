import type { Duty } from '@combside/law/duties';
import { sayWord } from '../say-sentence.ts';
import { timeZoneHere } from '../time-zone.ts';
import { useWords } from '../words-context.tsx';

/** What the law asks: of whom, by when, by which article, and how firmly the rule stands. */
export function DutiesList({ duties }: { readonly duties: readonly Duty[] }) {
  const words = useWords();
  const at = (instant: string) =>
    /T/.test(instant) ? words.dayAndTime(instant, timeZoneHere) : words.day(instant.slice(0, 10));
  return (
    <ul className="rows">
      {duties.map((duty) => (
        <li key={duty.id} className="open-line stack close">
          <p>
            <strong>{sayWord(words, 'casework.duty.*', duty.duty)}</strong>
            {duty.state === 'late' && ` · ${words.say('casework.duty-state.late')}`}
          </p>
          <p>
            {[
              sayWord(words, 'casework.owed-by.*', duty.owedBy),
              ...(duty.promptness ? [sayWord(words, 'casework.promptness.*', duty.promptness)] : []),
              ...(duty.notBefore ? [words.say('casework.duty.not-before', { notBefore: at(duty.notBefore) })] : []),
              ...(duty.due ? [words.say('casework.duty.due', { due: at(duty.due) })] : []),
              ...(duty.times > 1 ? [words.say('casework.duty.times', { met: duty.met, times: duty.times })] : []),
            ].join(' · ')}
          </p>
          <p className="quiet">
            {duty.article}
            {duty.condition && ` · ${sayWord(words, 'signs.condition.*.name', duty.condition)}`}
          </p>
        </li>
      ))}
    </ul>
  );
}
