import normal from '@stdlib/stats-base-dists-normal';

/** The standard normal deviate below which lies `probability`, a fraction above 0 and below 1. */
export const normalQuantile = (probability: number): number => normal.quantile(probability, 0, 1);

/**
 * The deviate z of a two-sided interval: z = 1.96 for confidence 0.95. Computed from the upper tail's mirror image,
 * so that confidences near 1 keep their digits.
 */
export const twoSidedDeviate = (confidence: number): number => -normalQuantile((1 - confidence) / 2);
