import type { Writing } from '../device/write/use-write.ts';
import { Refusal } from './refusal.tsx';
import { useWords } from './words-context.tsx';

/** How a writing stands, whatever it writes. */
type Shown = Omit<Writing, 'write'>;

/** Why something was not written: refused by casework, failed, or nowhere to write to; each with its remedy. */
export function WriteTrouble({ writing }: { readonly writing: Shown }) {
  const words = useWords();
  if (writing.refusal) return <Refusal refusal={writing.refusal} />;
  if (writing.failure !== null) {
    return (
      <p className="caution" role="alert">
        {words.say(`always.write.failed.${writing.failure}`)}
      </p>
    );
  }
  return writing.canWrite ? null : <p className="caution">{words.say('always.write.no-store')}</p>;
}

/**
 * The trouble, and how far a writing is, in one line for eyes and screen readers: "saved here" and "at the office" as
 * `device/write/one-write-at-a-time.ts` says that it got there.
 */
export function WriteStatus({ writing }: { readonly writing: Shown }) {
  const words = useWords();
  const { state } = writing;
  return (
    <>
      <WriteTrouble writing={writing} />
      <p role="status">
        {(state === 'busy' || state === 'written' || state === 'sent') && words.say(`always.write.${state}`)}
      </p>
    </>
  );
}
