import { useEffect, useMemo, useRef, useState } from 'react';
import type { Values } from './inputs-in-address.ts';
import type { Answer, Question } from './question.ts';

/** What a question comes to for these inputs. */
export interface InHand {
  /** Null while a slow one waits for its button, or is being worked out. */
  readonly answer: Answer | null;
  readonly state: 'there' | 'waits for the button' | 'working' | 'failed';
  workOut(): void;
}

/** Answers at once; a slow answer only when told to, in a worker, so that the page never stands still. */
export function useAnswer(question: Question, values: Values): InHand {
  const slow = question.slow(values as never);
  const key = JSON.stringify(values);
  const [done, setDone] = useState<{ key: string; answer: Answer | 'failed' | null } | null>(null);
  const worker = useRef<Worker | null>(null);
  const turn = useRef(0);
  useEffect(() => () => worker.current?.terminate(), []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: `key` stands for the values
  const atOnce = useMemo(() => (slow ? null : question.answer(values as never)), [question, slow, key]);
  if (atOnce) return { answer: atOnce, state: 'there', workOut: () => {} };

  const current = done?.key === key ? done.answer : undefined;
  return {
    answer: current === 'failed' ? null : (current ?? null),
    state:
      current === undefined
        ? 'waits for the button'
        : current === null
          ? 'working'
          : current === 'failed'
            ? 'failed'
            : 'there',
    workOut() {
      turn.current += 1;
      const mine = turn.current;
      setDone({ key, answer: null });
      worker.current?.terminate();
      const working = new Worker(new URL('./slow-worker.ts', import.meta.url), { type: 'module' });
      worker.current = working;
      const settle = (answer: Answer | 'failed') => {
        if (mine === turn.current) setDone({ key, answer });
        working.terminate();
      };
      working.addEventListener('message', (event: MessageEvent<{ answer: Answer }>) => settle(event.data.answer));
      working.addEventListener('error', () => settle('failed'));
      working.postMessage({ turn: mine, question: question.id, values });
    },
  };
}
