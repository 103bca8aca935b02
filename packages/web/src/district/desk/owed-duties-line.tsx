import type { DutyLine } from '@combside/contract/owed';
import { sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import { dutiesOnce } from './owed-by-time.ts';

/** Duties at one apiary in one line: each kind once, with its colonies. */
export function OwedDutiesLine({ duties }: { readonly duties: readonly DutyLine[] }) {
  const words = useWords();
  return (
    <span>
      {dutiesOnce(duties)
        .map(({ duty, colonies }) =>
          [
            sayWord(words, 'casework.duty.*', duty),
            colonies.length > 0 &&
              `(${words.say('district.owed.colonies', { count: colonies.length, labels: words.list(colonies) })})`,
          ]
            .filter(Boolean)
            .join(' '),
        )
        .join(' · ')}
    </span>
  );
}
