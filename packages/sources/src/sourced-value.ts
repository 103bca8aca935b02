import type { SourceId } from './bibliography.ts';

/**
 * How firmly a number stands.
 * - `published`: a figure printed in a source, with its sample size where one was given
 * - `arithmetic`: worked out from published figures or first principles
 * - `described`: our reading of a source's wording ("typical", "rare"); a band, never a measured rate
 * - `expert band`: nobody published it; a band chosen by us
 * - `common practice`: said in the trade, no source found
 * - `from memory`: believed published, not confirmed
 * - `setting`: a choice of ours or of the agency, not a fact
 */
export type Standing =
  | 'published'
  | 'arithmetic'
  | 'described'
  | 'expert band'
  | 'common practice'
  | 'from memory'
  | 'setting';

/** A number that knows where it comes from. `low` and `high` are the ends of its interval or band, in the same unit. */
export interface SourcedValue {
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  /** SI or trade unit in words: "days", "mm", "probability". */
  readonly unit: string;
  readonly standing: Standing;
  readonly sources: readonly SourceId[];
  /** Who or what was measured, and how many. */
  readonly population?: string;
  readonly sampleSize?: number;
  /** What is doubtful about it, in one sentence. */
  readonly doubts?: string;
}
