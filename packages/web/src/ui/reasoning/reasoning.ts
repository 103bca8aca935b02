import { useEffect, useState } from 'react';
import type { Answers, Question, Reply } from './reasoning-worker.ts';

type Waiting = { resolve(answer: never): void; reject(error: Error): void };

/** One worker with those who wait for it; a worker that broke answers nobody, and the next question starts a new one. */
class Reasoner {
  #worker: Worker | undefined;
  #turn = 0;
  readonly #waiting = new Map<number, Waiting>();

  ask<Q extends Question>(question: Q): Promise<Answers[Q['ask']]> {
    this.#turn += 1;
    const turn = this.#turn;
    return new Promise((resolve, reject) => {
      this.#waiting.set(turn, { resolve, reject } as Waiting);
      this.#running().postMessage({ turn, question });
    });
  }

  #running(): Worker {
    if (this.#worker) return this.#worker;
    const worker = new Worker(new URL('./reasoning-worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', ({ data }: MessageEvent<Reply>) => {
      const one = this.#waiting.get(data.turn);
      this.#waiting.delete(data.turn);
      if (data.ok) one?.resolve(data.answer as never);
      else one?.reject(new Error(data.why));
    });
    worker.addEventListener('error', (event) => {
      for (const one of this.#waiting.values()) one.reject(new Error(event.message || 'the reasoning stopped'));
      this.#waiting.clear();
      worker.terminate();
      this.#worker = undefined;
    });
    this.#worker = worker;
    return worker;
  }
}

// The line has a worker of its own: it is in sight while the whole is still being worked out.
const quick = new Reasoner();
const thorough = new Reasoner();

/** Asks the reasoning, which runs beside the page. */
export function askReasoning<Q extends Question>(question: Q): Promise<Answers[Q['ask']]> {
  return question.ask === 'line' ? quick.ask(question) : thorough.ask(question);
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
