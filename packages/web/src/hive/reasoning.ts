import { useEffect, useState } from 'react';
import type { Answers, Question, Reply } from './reasoning-worker.ts';

type Waiting = { resolve(answer: never): void; reject(error: Error): void };

let worker: Worker | undefined;
let turn = 0;
const waiting = new Map<number, Waiting>();

function reasoner(): Worker {
  if (worker) return worker;
  worker = new Worker(new URL('./reasoning-worker.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<Reply>) => {
    const one = waiting.get(data.turn);
    waiting.delete(data.turn);
    if (data.ok) one?.resolve(data.answer as never);
    else one?.reject(new Error(data.why));
  });
  worker.addEventListener('error', (event) => {
    // A worker that broke answers nobody: those who wait are told, and the next question starts a new one.
    for (const one of waiting.values()) one.reject(new Error(event.message || 'the reasoning stopped'));
    waiting.clear();
    worker?.terminate();
    worker = undefined;
  });
  return worker;
}

/** Asks the reasoning, which runs beside the page. */
export function askReasoning<Q extends Question>(question: Q): Promise<Answers[Q['ask']]> {
  turn += 1;
  const mine = turn;
  return new Promise((resolve, reject) => {
    waiting.set(mine, { resolve, reject } as Waiting);
    reasoner().postMessage({ turn: mine, question });
  });
}

/**
 * The answer to a question that changes with every tap. While a newer answer is on its way, the last one stays in sight.
 *
 * @param question null asks nothing
 * @param key says when it is another question
 */
export function useReasoning<Q extends Question>(
  question: Q | null,
  key: string,
): { readonly answer: Answers[Q['ask']] | null; readonly failed: boolean } {
  const [kept, setKept] = useState<{ answer: Answers[Q['ask']] | null; failed: boolean }>({
    answer: null,
    failed: false,
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: `key` stands for the question
  useEffect(() => {
    if (!question) return;
    let left = false;
    askReasoning(question).then(
      (answer) => {
        if (!left) setKept({ answer, failed: false });
      },
      () => {
        if (!left) setKept((before) => ({ ...before, failed: true }));
      },
    );
    return () => {
      left = true;
    };
  }, [key]);
  return kept;
}
