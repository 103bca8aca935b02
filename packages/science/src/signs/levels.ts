import type { SourcedValue } from '@combside/sources/sourced-value';

/** The four words into which descriptive wording was read. */
export type Level = 'typical' | 'sometimes' | 'rare' | 'never described';

/**
 * The middle of a band of probabilities on the log-odds scale: the median of a draw that is uniform on that scale.
 * Used for every band, so that the point value and the draws agree.
 *
 * @param low lower end, in (0, 1)
 * @param high upper end, in (0, 1), not below `low`
 * @throws RangeError when an end is not strictly between 0 and 1, or the ends are crossed
 */
export function middleOf(low: number, high: number): number {
  if (!(low > 0 && high < 1 && low <= high)) {
    throw new RangeError(`a band of probability needs 0 < low <= high < 1, got ${low} to ${high}`);
  }
  const logit = (p: number): number => Math.log(p / (1 - p));
  return 1 / (1 + Math.exp(-(logit(low) + logit(high)) / 2));
}

/** An expert band of probability, its point value in the middle on the log-odds scale. */
export function band(low: number, high: number, about: Partial<SourcedValue> = {}): SourcedValue {
  return {
    value: middleOf(low, high),
    low,
    high,
    unit: 'probability',
    standing: 'expert band',
    sources: [],
    ...about,
  };
}

/**
 * The probability each word stands for: our own proposal, no source. No published table of P(sign | condition) was
 * found for any brood disease. "Never described" keeps a floor, since no sign may be impossible.
 */
export const bandOf: Readonly<Record<Level, SourcedValue>> = {
  typical: band(0.6, 0.95),
  sometimes: band(0.15, 0.6),
  rare: band(0.01, 0.15),
  'never described': band(0.001, 0.01),
};
