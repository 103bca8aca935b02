import normal from '@stdlib/stats-base-dists-normal';

/**
 * The standard normal deviate below which lies `probability`, a fraction above 0 and below 1.
 *
 * The library's quantile is off by 4e-7 at 1e-12; its lower tail is exact, so one Halley step against it puts that
 * right. The upper half is the mirror image of the lower.
 */
export function normalQuantile(probability: number): number {
  if (probability > 0.5) return -normalQuantile(1 - probability);
  const z = normal.quantile(probability, 0, 1);
  const excess = (normal.cdf(z, 0, 1) - probability) / normal.pdf(z, 0, 1);
  return z - excess / (1 + (z * excess) / 2);
}

/**
 * The deviate z of a two-sided interval: z = 1.96 for confidence 0.95. Computed from the upper tail's mirror image,
 * so that confidences near 1 keep their digits.
 */
export const twoSidedDeviate = (confidence: number): number => -normalQuantile((1 - confidence) / 2);
