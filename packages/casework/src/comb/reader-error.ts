import type { CombReading } from '@combside/science/comb/reading/reading';
import type { SourcedValue } from '@combside/sources/sourced-value';

/*
 * How far the reader's figures are off, measured on painted combs whose truth is known: `bench/comb-evidence.ts`, and the
 * curves in docs/measured/comb-reading.md. Nobody measured it on real brood: no real picture of sealed brood with its
 * truth was at hand, so a real reading is likely off by more.
 */

const painted = {
  standing: 'arithmetic',
  sources: [],
  doubts: 'Measured on painted combs, which are kinder than real ones; not measured on real sealed brood.',
} as const;

/**
 * Standard deviation of the solidness read, by the share of cells that could not be read: root mean square of read less
 * true of every cell, those under bees too, since the question is about the comb.
 */
export const solidnessOff: readonly { readonly unreadUpTo: number; readonly error: SourcedValue }[] = [
  {
    unreadUpTo: 0.3,
    error: {
      value: 0.03,
      unit: 'solidness',
      ...painted,
      population: 'reader version 3, held-out painted combs with a figure, less than 0.3 unread (rms 0.029)',
      sampleSize: 30,
    },
  },
  {
    unreadUpTo: 1,
    error: {
      value: 0.13,
      unit: 'solidness',
      ...painted,
      population:
        'reader version 3, held-out painted combs with a figure, 0.3 unread and more (rms 0.130, one off by 0.29)',
      sampleSize: 8,
    },
  },
];

/**
 * Standard deviation of the number of sealed brood cells read over those that could be seen, as a share, about its mean.
 * Two sets of held-out combs, each about its own mean, taken together: 0.074 about 0.94, and 0.15 about 0.89 where a few
 * pictures left much undecided. Amounts are read too small rather than too large.
 */
export const sealedCellsOff: SourcedValue = {
  value: 0.12,
  unit: 'share',
  ...painted,
  population: 'reader version 3, held-out painted combs with 60 sealed cells and more',
  sampleSize: 126,
};

/** Half a middle interval of 90 %, in standard deviations. */
export const ninety = 1.645;

/** Solidness with its standard error, 0 to 1. */
export interface MeasuredSolidness {
  readonly value: number;
  /** Of the reader and of counting; never below the reader's own. */
  readonly error: number;
  readonly low: number;
  readonly high: number;
  readonly sealed: number;
  readonly missed: number;
}

/**
 * The solidness of a reading with its error: the reader's own, and that of counting so many cells (binomial, with one cell
 * added on each side, so that 60 of 60 is not certain either).
 *
 * @returns null where the reading has too few sealed cells to say
 */
export function measuredSolidness(reading: Pick<CombReading, 'solidness' | 'unread'>): MeasuredSolidness | null {
  const { solidness } = reading;
  if (!solidness) return null;
  const { sealed, missed, value } = solidness;
  const error = solidnessError(sealed, missed, reading.unread);
  return {
    value,
    error,
    low: Math.max(0, value - ninety * error),
    high: Math.min(1, value + ninety * error),
    sealed,
    missed,
  };
}

/**
 * Standard error of a solidness of so many cells.
 *
 * @param unread share of cells that could not be read, 0 to 1
 */
export function solidnessError(sealed: number, missed: number, unread: number): number {
  const n = sealed + missed + 2;
  const share = (sealed + 1) / n;
  const own = solidnessOff.find((one) => unread <= one.unreadUpTo) ?? solidnessOff.at(-1);
  return Math.hypot(own?.error.value ?? 1, Math.sqrt((share * (1 - share)) / n));
}
