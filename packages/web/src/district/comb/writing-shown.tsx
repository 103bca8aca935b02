import { Refusal } from '../../ui/refusal.tsx';
import { useWords } from '../../ui/words-context.tsx';
import type { Writing } from '../register/use-writing.ts';

/** How the writing of a reading stands, and why it was refused. */
export function WritingShown({ writing }: { readonly writing: Writing }) {
  const words = useWords();
  return (
    <>
      {writing.refusal && <Refusal refusal={writing.refusal} />}
      {writing.state !== 'ready' && <p role="status">{words.say(`comb.screen.writing.${writing.state}`)}</p>}
    </>
  );
}
