import type { Turn } from './exchange-loop.ts';

export type MessageToWorker = { readonly ask: 'run'; readonly person: string } | { readonly ask: 'stop' };

export type MessageToPage =
  | { readonly told: 'began' }
  | { readonly told: 'ended'; readonly turn: Turn }
  /** Something the program did not foresee; the name of the error, never its words. */
  | { readonly told: 'failed'; readonly name: string }
  | { readonly told: 'closed' };
