import { done } from '@combside/casework/act';
import type { Proposal } from '@combside/record/entry';
import { useEffect, useRef, useState, useSyncExternalStore } from 'react';
import { useDevice } from '../../../device/device-in-hand.tsx';
import type { SyncStatus } from '../../../device/sync/start-sync.ts';
import { CalledOff } from '../../../device/write/one-write-at-a-time.ts';
import { useWrite } from '../../../device/write/use-write.ts';
import { Button } from '../../../ui/button.tsx';
import { useWords } from '../../../ui/words-context.tsx';
import { WriteTrouble } from '../../../ui/write-status.tsx';

interface WritingStepProps {
  readonly proposals: readonly Proposal[];
  readonly onAgain: () => void;
  readonly onCancelled: () => void;
}

/** How far it is; a writing that is done says so itself. */
type Progress = { readonly at: 'sealing' | 'storing'; readonly done: number } | { readonly at: 'settling' };

/** The screen is told of progress so often, in entries. */
const toldEach = 200;

/**
 * Signs all entries and stores them together. Until the stroke that makes them safe cancelling leaves nothing; after it
 * the entries go to the office like any others, and again after the window was closed.
 */
export function WritingStep({ proposals, onAgain, onCancelled }: WritingStepProps) {
  const words = useWords();
  const [progress, setProgress] = useState<Progress>({ at: 'sealing', done: 0 });
  const called = useRef(false);
  const begun = useRef(false);
  const stopIfCalled = () => {
    if (called.current) throw new CalledOff('the person called it off');
  };
  const importing = useWrite(
    () => done(proposals),
    () => ({
      sealed(count) {
        stopIfCalled();
        if (count === proposals.length) setProgress({ at: 'storing', done: 0 });
        else if (count % toldEach === 0) setProgress({ at: 'sealing', done: count });
      },
      stored(count) {
        stopIfCalled();
        setProgress(count === proposals.length ? { at: 'settling' } : { at: 'storing', done: count });
      },
    }),
  );
  const { write, canWrite } = importing;

  // biome-ignore lint/correctness/useExhaustiveDependencies: begun once, with what this step was opened for
  useEffect(() => {
    if (begun.current || !canWrite) return;
    begun.current = true;
    void write().then(() => {
      if (called.current) onCancelled();
    });
  }, [canWrite]);

  if (importing.state === 'failed' || !canWrite) {
    return (
      <>
        <WriteTrouble writing={importing} />
        <Button onClick={onAgain}>{words.say('register.import.another')}</Button>
      </>
    );
  }
  if (importing.state === 'written' || importing.state === 'sent') {
    return <Written count={records(proposals)} onAgain={onAgain} />;
  }
  const far = progress.at === 'settling' ? null : progress;
  const said =
    far === null
      ? words.say('register.import.settling')
      : words.say(`register.import.${far.at}`, {
          done: words.number(far.done),
          of: words.number(proposals.length),
        });
  return (
    <>
      <p role="status">{said}</p>
      <progress
        {...(far === null ? {} : { value: far.done, max: proposals.length })}
        aria-label={words.say('register.import')}
      />
      {far !== null && (
        <Button
          onClick={() => {
            called.current = true;
          }}
        >
          {words.say('register.import.cancel')}
        </Button>
      )}
    </>
  );
}

/** Everything is safe here; what waits for the office, and what it did not take. */
function Written({ count, onAgain }: { readonly count: number; readonly onAgain: () => void }) {
  const words = useWords();
  const sync = useSyncStatus();
  return (
    <>
      <p role="status">
        <strong>{words.say('register.import.done', { count })}</strong>
      </p>
      {sync && sync.waiting !== null && <p>{words.say('register.import.waiting', { count: sync.waiting })}</p>}
      {sync && sync.refused > 0 && (
        <p className="caution">{words.say('register.import.refused', { count: sync.refused })}</p>
      )}
      <Button onClick={onAgain}>{words.say('register.import.another')}</Button>
    </>
  );
}

const nobody = () => () => undefined;

function useSyncStatus(): SyncStatus | null {
  const { device } = useDevice();
  return useSyncExternalStore<SyncStatus | null>(device?.sync.subscribe ?? nobody, () => device?.sync.status() ?? null);
}

function records(proposals: readonly Proposal[]): number {
  return proposals.filter(({ kind }) => kind !== 'reason').length;
}
