import betaCdf from '@stdlib/stats-base-dists-beta-cdf';
import { logBinomialMass } from './log-mass.ts';

/** Chance of exactly x successes in n draws with chance p each. */
export const binomialMass = (x: number, n: number, p: number) => Math.exp(logBinomialMass(x, n, p));

/**
 * Chance of x or fewer successes in n draws with chance p each, through the regularised incomplete beta function, so
 * that small tails keep their digits. x may be below 0 (0) or above n (1).
 */
export function binomialLowerTail(x: number, n: number, p: number): number {
  if (x < 0) return 0;
  if (x >= n || p === 0) return 1;
  if (p === 1) return 0;
  return betaCdf(1 - p, n - x, x + 1);
}

/** Chance of x or more successes in n draws with chance p each. */
export function binomialUpperTail(x: number, n: number, p: number): number {
  if (x <= 0) return 1;
  if (x > n || p === 0) return 0;
  if (p === 1) return 1;
  return betaCdf(p, x, n - x + 1);
}

/**
 * Masses of 0, 1, ... `upTo` successes in n draws. One mass is computed in logarithms, at the largest of them, and
 * the others follow by their ratios, so nothing underflows where it matters.
 */
export function binomialMasses(n: number, p: number, upTo: number): Float64Array {
  const last = Math.min(n, upTo);
  const masses = new Float64Array(upTo + 1);
  if (p === 0 || p === 1) {
    const only = p === 0 ? 0 : n;
    if (only <= upTo) masses[only] = 1;
    return masses;
  }
  const peak = Math.min(last, Math.floor((n + 1) * p));
  const odds = p / (1 - p);
  const top = binomialMass(peak, n, p);
  masses[peak] = top;
  for (let x = peak, mass = top; x > 0 && mass > 0; x--) {
    mass *= x / ((n - x + 1) * odds);
    masses[x - 1] = mass;
  }
  for (let x = peak, mass = top; x < last && mass > 0; x++) {
    mass *= ((n - x) / (x + 1)) * odds;
    masses[x + 1] = mass;
  }
  return masses;
}
