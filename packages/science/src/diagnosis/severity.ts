import type { FrameCount } from './evidence.ts';

/** Score of one comb: 0 none, 1 up to 10 cells, 2 up to 100, 3 more. */
export type CombScore = 0 | 1 | 2 | 3;

/** The standard comb score of a colony, per frame, as sum and as mean over its brood frames. */
export interface Severity {
  readonly frames: readonly { readonly frame: string; readonly cellsAffected: number; readonly score: CombScore }[];
  readonly sum: number;
  readonly mean: number;
}

/**
 * Score of one comb by its affected cells (BB-AFB-4.3.1): 0 none; 1 fewer than 10; 2 from 11 to 100; 3 more than 100.
 * Exactly 10 is left undefined in the source; we use 1.
 *
 * @throws RangeError unless a whole number from 0
 */
export function combScore(cellsAffected: number): CombScore {
  if (!Number.isInteger(cellsAffected) || cellsAffected < 0) {
    throw new RangeError(`${cellsAffected} affected cells: give a whole number from 0`);
  }
  if (cellsAffected === 0) return 0;
  if (cellsAffected <= 10) return 1;
  return cellsAffected <= 100 ? 2 : 3;
}

/**
 * Severity of a colony: the score of every brood frame, their sum and their mean.
 *
 * @param frames every brood frame looked at, the sound ones too: the mean is over all of them
 * @returns null when no frame was counted
 */
export function severityOf(frames: readonly FrameCount[]): Severity | null {
  if (frames.length === 0) return null;
  const scored = frames.map((frame) => ({ ...frame, score: combScore(frame.cellsAffected) }));
  const sum = scored.reduce((total, frame) => total + frame.score, 0);
  return { frames: scored, sum, mean: sum / scored.length };
}
