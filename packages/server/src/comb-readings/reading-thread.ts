import { Worker } from 'node:worker_threads';
import type { PhotographRead, PhotographToRead } from './reading-worker.ts';

/** A thread that reads photographs, one at a time. */
export interface ReadingThread {
  /** @throws Error when the thread died or took too long; the next call begins a new one */
  readonly read: (asked: PhotographToRead) => Promise<PhotographRead>;
  readonly end: () => Promise<void>;
}

/** A photograph that takes longer has hung, in milliseconds; a large one takes some seconds. */
const longest = 120_000;

/** Bounds the thread's own heap, MB. Pixels lie beside it: some 400 MB for the largest photograph that is read. */
const mostHeap = 512;

/** What the thread runs. */
const program = new URL('./start-reading-worker.mjs', import.meta.url);

/** Opens a thread when the first photograph comes and keeps it until `end`. */
export function readingThread(): ReadingThread {
  let worker: Worker | null = null;
  const end = async (): Promise<void> => {
    const ending = worker;
    worker = null;
    await ending?.terminate();
  };
  return {
    read: async (asked) => {
      worker ??= new Worker(program, {
        execArgv: [],
        resourceLimits: { maxOldGenerationSizeMb: mostHeap },
      });
      const running = worker;
      try {
        return await new Promise<PhotographRead>((done, fail) => {
          const exited = (code: number): void => over(() => fail(new Error(`the reading thread ended with ${code}`)));
          const failed = (error: unknown): void => over(() => fail(error));
          const answered = (answer: PhotographRead): void => over(() => done(answer));
          const late = setTimeout(() => failed(new Error(`the reading took longer than ${longest} ms`)), longest);
          const over = (settle: () => void): void => {
            clearTimeout(late);
            // One by one: taking all listeners away would take those that the thread itself lives by.
            running.off('message', answered).off('error', failed).off('exit', exited);
            settle();
          };
          running.on('message', answered).on('error', failed).on('exit', exited);
          running.postMessage(asked);
        });
      } catch (error) {
        await end();
        throw error;
      }
    },
    end,
  };
}
