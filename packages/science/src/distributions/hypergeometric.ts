import { binomialMasses } from './binomial.ts';
import { logHypergeometricMass } from './log-mass.ts';

/** Chance of exactly y infected among n drawn without replacement from N units, d of them infected. */
export const hypergeometricMass = (y: number, N: number, d: number, n: number) =>
  Math.exp(logHypergeometricMass(y, N, d, n));

/** Masses below this share of the largest are left out of sums: together they cannot change the last digit. */
const negligible = 1e-19;

/**
 * Calls `visit(y, mass)` for every y whose weighted mass matters, from the peak outward. The weight is weight^y;
 * with weight 1 these are the masses themselves.
 */
function overSample(
  N: number,
  d: number,
  n: number,
  weight: number,
  visit: (y: number, weightedMass: number) => void,
): void {
  const lowest = Math.max(0, n + d - N);
  const highest = Math.min(n, d);
  const ratio = (y: number) => ((d - y) / (y + 1)) * ((n - y) / (N - d - n + y + 1)) * weight;
  let below = lowest;
  let above = highest;
  while (below < above) {
    const middle = Math.floor((below + above) / 2);
    if (ratio(middle) > 1) below = middle + 1;
    else above = middle;
  }
  const peak = below;
  const top = Math.exp(logHypergeometricMass(peak, N, d, n) + (peak === 0 ? 0 : peak * Math.log(weight)));
  visit(peak, top);
  for (let y = peak, mass = top; y < highest; y++) {
    mass *= ratio(y);
    if (mass <= top * negligible) break;
    visit(y + 1, mass);
  }
  for (let y = peak, mass = top; y > lowest; y--) {
    mass /= ratio(y - 1);
    if (mass <= top * negligible) break;
    visit(y - 1, mass);
  }
}

/**
 * Chance that none of the infected units in a sample is detected: the mean of miss^y, where y, the number of infected
 * units among n drawn from N with d infected, is hypergeometric.
 *
 * @param N population size
 * @param d infected units, 0 to N
 * @param n units drawn, 0 to N
 * @param miss chance that one infected unit in the sample is not detected, 0 to 1
 */
export function probabilityNoneDetected(N: number, d: number, n: number, miss: number): number {
  if (miss === 0) return Math.max(0, n + d - N) > 0 ? 0 : hypergeometricMass(0, N, d, n);
  if (miss === 1) return 1;
  let sum = 0;
  overSample(N, d, n, miss, (_, mass) => {
    sum += mass;
  });
  return Math.min(1, sum);
}

/**
 * Chance of x or fewer test-positives among n units drawn from N with d infected, when an infected unit tests
 * positive with chance `sensitivity` and an uninfected one with chance `falsePositive`, all independently: y infected
 * are drawn (hypergeometric), then positives are Binomial(y, sensitivity) + Binomial(n - y, falsePositive).
 * Source of the model: Cameron and Baldock 1998.
 */
export function probabilityOfFewPositives(
  x: number,
  N: number,
  d: number,
  n: number,
  sensitivity: number,
  falsePositive: number,
): number {
  if (x < 0) return 0;
  if (x >= n) return 1;
  if (x === 0) {
    // (1-Se)^y (1-fp)^(n-y) = (1-fp)^n * ((1-Se)/(1-fp))^y, so the closed sum above serves.
    const clean = 1 - falsePositive;
    if (clean > 0 && 1 - sensitivity <= clean) {
      return clean ** n * probabilityNoneDetected(N, d, n, (1 - sensitivity) / clean);
    }
  }
  let total = 0;
  overSample(N, d, n, 1, (y, mass) => {
    const fromInfected = binomialMasses(y, sensitivity, x);
    const fromUninfected = binomialMasses(n - y, falsePositive, x);
    let atMost = 0;
    const tails = fromUninfected.map((m) => {
      atMost += m;
      return atMost;
    });
    let sum = 0;
    for (let a = 0; a <= x; a++) sum += (fromInfected[a] ?? 0) * (tails[x - a] ?? 0);
    total += mass * sum;
  });
  return Math.min(1, total);
}
