import type { Refused } from '@combside/casework/act';
import { saySentence } from './say-sentence.ts';
import { useWords } from './words-context.tsx';

export type { Refused };

/** Why an act cannot be done now, as a sentence. */
export function Refusal({ refusal }: { readonly refusal: Refused }) {
  const words = useWords();
  return (
    <p className="caution" role="alert">
      {saySentence(words, { id: refusal.reason, values: refusal.values })}
    </p>
  );
}
