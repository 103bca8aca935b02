import { useEffect, useRef, useState } from 'react';
import type { ReadPhotograph } from '../../device/comb/messages.ts';
import type { RunningReading, startReading } from '../../device/comb/start-reading.ts';
import { Button } from '../button.tsx';
import { useWords } from '../words-context.tsx';

type Progress = Parameters<Parameters<typeof startReading>[1]>;

interface ReadingRunsProps {
  /** Starts the reading; called once. */
  readonly start: (progress: (...told: Progress) => void) => RunningReading;
  /** What came of it; null when it was stopped. */
  readonly onEnd: (read: ReadPhotograph | null | 'failed') => void;
}

/** A reading on its way: the step in words, how far it is, and a way to stop it. Leaving the screen stops it too. */
export function ReadingRuns({ start, onEnd }: ReadingRunsProps) {
  const words = useWords();
  const [[stage, done], setTold] = useState<Progress>(['opening', 0]);
  const running = useRef<RunningReading | null>(null);
  const begin = useRef(start);
  const end = useRef(onEnd);
  end.current = onEnd;
  useEffect(() => {
    let left = false;
    const reading = begin.current((...told) => {
      if (!left) setTold(told);
    });
    running.current = reading;
    reading.done.then(
      (read) => {
        if (!left) end.current(read);
      },
      (failure: unknown) => {
        if (left) return;
        end.current('failed');
        // Handed on, so that the fault report has it.
        void Promise.reject(failure);
      },
    );
    return () => {
      left = true;
      reading.cancel();
    };
  }, []);
  return (
    <section className="stack" aria-label={words.say('comb.screen.running')}>
      <p role="status">{words.say(`comb.stage.${stage}`)}</p>
      <progress className="comb-progress" max={1} value={done} aria-label={words.say('comb.screen.running')} />
      <Button look="wide" onClick={() => running.current?.cancel()}>
        {words.say('comb.screen.stop')}
      </Button>
    </section>
  );
}
