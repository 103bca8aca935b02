import { sayWord } from '../say-sentence.ts';
import { useWords } from '../words-context.tsx';

/** What every reading is and is not; in sight before and after it. */
export function ReadingCautions() {
  const words = useWords();
  return (
    <div className="caution stack close">
      <p>{words.say('comb.reason.never-a-diagnosis')}</p>
      <p>{words.say('comb.reason.scale-not-visible')}</p>
    </div>
  );
}

const always: readonly string[] = ['never-a-diagnosis', 'scale-not-visible'];

/** What this reading cannot say beyond that. */
export function ReadingLimits({ warnings }: { readonly warnings: readonly string[] }) {
  const words = useWords();
  const further = warnings.filter((one) => !always.includes(one));
  if (further.length === 0) return null;
  return (
    <details>
      <summary>{words.say('comb.screen.limits', { count: further.length })}</summary>
      <ul className="stack close">
        {further.map((one) => (
          <li key={one}>{sayWord(words, 'comb.reason.*', one)}</li>
        ))}
      </ul>
    </details>
  );
}

/** Why a photograph was not read, and what to do. */
export function NotRead({ reasons }: { readonly reasons: readonly string[] }) {
  const words = useWords();
  return (
    <div className="caution stack close" role="alert">
      <p>
        <strong>{words.say('comb.screen.not-read')}</strong>
      </p>
      {reasons.map((one) => (
        <p key={one}>{sayWord(words, 'comb.reason.*', one)}</p>
      ))}
    </div>
  );
}
