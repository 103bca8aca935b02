import { DomainError } from './domain.ts';

/** A target met to within this much is met: doubles cannot tell 1 - 0.8^3 from 0.488. */
export const targetTolerance = 1e-12;

/** True when `reached` meets `target`, ties to within 1e-12 included. */
export const meets = (reached: number, target: number) => reached >= target - targetTolerance;

/**
 * The smallest whole number not below x, where a product that should be whole but is a hair above it
 * (100 * 0.07 = 7.000000000000001) is taken as whole.
 */
export function guardedCeil(x: number): number {
  const whole = Math.round(x);
  return Math.abs(x - whole) <= targetTolerance * Math.max(1, Math.abs(x)) ? whole : Math.ceil(x);
}

/**
 * The smallest whole number in [lowest, highest] for which `reaches` holds, when it goes on holding from there.
 * Bisects, so `reaches` is asked about log2(highest - lowest) times.
 *
 * @returns the number, or null when not even `highest` reaches the target
 */
export function smallestCount(lowest: number, highest: number, reaches: (n: number) => boolean): number | null {
  if (highest < lowest || !reaches(highest)) return null;
  let below = lowest - 1;
  let above = highest;
  while (above - below > 1) {
    const middle = below + Math.floor((above - below) / 2);
    if (reaches(middle)) above = middle;
    else below = middle;
  }
  return above;
}

/**
 * The smallest whole n of 1 or more with 1 - miss^n >= target, where `miss` is the chance that one unit is not
 * detected. Solved in logarithms and then checked against its neighbours, so exact ties fall on the right side.
 *
 * @param logMiss natural logarithm of the chance that one unit goes undetected; 0 when nothing is ever detected
 * @param target chance of detection wanted, fraction below 1
 * @returns the count, or null when detection is impossible (logMiss = 0)
 * @throws DomainError when the answer exceeds the largest exact whole number
 */
export function countToDetect(logMiss: number, target: number): number | null {
  if (target <= 0) return 1;
  if (logMiss === 0) return null;
  if (logMiss === Number.NEGATIVE_INFINITY) return 1;
  const reached = (n: number) => -Math.expm1(n * logMiss);
  let n = Math.max(1, Math.ceil(Math.log(1 - target + targetTolerance) / logMiss));
  if (!Number.isSafeInteger(n)) {
    throw new DomainError(
      'chance of detection per unit',
      'large enough that a sample can be counted',
      -Math.expm1(logMiss),
    );
  }
  while (n > 1 && meets(reached(n - 1), target)) n -= 1;
  while (!meets(reached(n), target)) n += 1;
  return n;
}
