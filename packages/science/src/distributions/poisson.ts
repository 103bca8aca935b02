import gammaQuantile from '@stdlib/stats-base-dists-gamma-quantile';

/** Both ends of an interval for a mean. */
export interface MeanInterval {
  readonly lower: number;
  readonly upper: number;
}

/**
 * Exact central interval for the mean of a Poisson count, from gamma quantiles (Garwood 1936, from memory). The lower
 * end is 0 when nothing was counted.
 *
 * @param counted events counted, whole, 0 or more
 * @param confidence fraction above 0 and below 1
 */
export function poissonInterval(counted: number, confidence: number): MeanInterval {
  const tail = (1 - confidence) / 2;
  return {
    lower: counted === 0 ? 0 : gammaQuantile(tail, counted, 1),
    upper: gammaQuantile(1 - tail, counted + 1, 1),
  };
}

/** Largest Poisson mean that still gives no event with chance 1 - confidence: -ln(1 - confidence), 3.0 for 0.95. */
export const poissonUpperWhenNone = (confidence: number): number => -Math.log1p(-confidence);
