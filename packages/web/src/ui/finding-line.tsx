import type { Finding } from '@combside/casework/act';
import { saySentence } from './say-sentence.ts';
import { useWords } from './words-context.tsx';

/** What casework has to say, as a sentence; how heavily it weighs is told by weight of type, never by colour alone. */
export function FindingLine({ finding }: { readonly finding: Finding }) {
  const words = useWords();
  return <p className={`finding ${finding.weight}`}>{saySentence(words, finding)}</p>;
}
