import { bisect } from './bisection.ts';
import { logPoissonMass } from './log-mass.ts';

/** Both ends of an interval for a mean. */
export interface MeanInterval {
  readonly lower: number;
  readonly upper: number;
}

/** Terms below this share of the largest cannot change the last digit of a sum. */
const negligible = 1e-18;

/** Chance of `counted` or fewer events when `mean` are expected; mean above 0. */
export function poissonLowerTail(counted: number, mean: number): number {
  if (counted < 0) return 0;
  if (counted > mean) return 1 - poissonUpperTail(counted + 1, mean);
  let term = Math.exp(logPoissonMass(counted, mean));
  let sum = term;
  for (let x = counted; x > 0 && term > sum * negligible; x--) {
    term *= x / mean;
    sum += term;
  }
  return sum;
}

/** Chance of `counted` or more events when `mean` are expected; mean above 0. */
export function poissonUpperTail(counted: number, mean: number): number {
  if (counted <= 0) return 1;
  if (counted < mean) return 1 - poissonLowerTail(counted - 1, mean);
  let term = Math.exp(logPoissonMass(counted, mean));
  let sum = term;
  for (let x = counted + 1; term > sum * negligible; x++) {
    term *= mean / x;
    sum += term;
  }
  return sum;
}

/** The Poisson mean at which `counted` or more events have chance `tail`; 0 when nothing was counted. */
export const poissonLowerLimit = (counted: number, tail: number): number =>
  counted === 0 ? 0 : bisect(0, beyond(counted), (mean) => (mean === 0 ? 0 : poissonUpperTail(counted, mean)) - tail);

/** The Poisson mean at which `counted` or fewer events have chance `tail`; -ln(tail) when nothing was counted. */
export const poissonUpperLimit = (counted: number, tail: number): number =>
  counted === 0
    ? -Math.log(tail)
    : bisect(0, beyond(counted), (mean) => tail - (mean === 0 ? 1 : poissonLowerTail(counted, mean)));

/** A mean far above any limit that is asked for. */
const beyond = (counted: number) => counted + 40 * Math.sqrt(counted) + 800;

/**
 * Exact central interval for the mean of a Poisson count (Garwood 1936, from memory; source: GARWOOD36). The sums are our own:
 * the library's gamma quantile is off by up to 1e-4 for counts from about 500 on.
 *
 * @param counted events counted, whole, 0 or more; tested to 10,000
 * @param confidence fraction above 0 and below 1
 */
export function poissonInterval(counted: number, confidence: number): MeanInterval {
  const tail = (1 - confidence) / 2;
  return { lower: poissonLowerLimit(counted, tail), upper: poissonUpperLimit(counted, tail) };
}
