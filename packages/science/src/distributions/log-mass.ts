/*
 * Binomial masses without overflow and without loss of digits.
 *
 * log C(n, x) by log-gamma loses digits for large n: log-gamma(1e6) is 1.3e7, so its last digit is worth 2e-9 and a
 * difference of three of them no longer meets a tolerance of 1e-12. Loader's saddle-point form writes the mass through
 * two small quantities instead: the error of Stirling's formula, and the deviance x log(x/np) + np - x, which is near
 * 0 exactly where the mass is large. Both keep full relative precision.
 *
 * Source: LOADER00 (Loader C 2000, Fast and accurate computation of binomial probabilities, from memory: circulated by the
 * author, and the method documented for dbinom in R). Checked against R in `reference/`.
 */

const halfLogTwoPi = Math.log(2 * Math.PI) / 2;

/** What Stirling's formula sqrt(2 pi n) (n/e)^n leaves out of log(n!). */
function stirlingError(n: number): number {
  if (n < smallStirlingErrors.length) return smallStirlingErrors[n] ?? 0;
  return stirlingSeries(n);
}

function stirlingSeries(n: number): number {
  const square = n * n;
  return (1 / 12 - (1 / 360 - (1 / 1260 - (1 / 1680 - 1 / 1188 / square) / square) / square) / square) / n;
}

/** For n = 1..31 the series is not exact enough, so it is carried down from 32 by its recurrence. Index 0 is unused. */
const smallStirlingErrors = new Float64Array(32);
for (let n = 31, above = stirlingSeries(32); n > 0; n--) {
  above += (n + 0.5) * Math.log1p(1 / n) - 1;
  smallStirlingErrors[n] = above;
}

/** x log(x/mean) + mean - x, without cancellation near x = mean. */
function deviance(x: number, mean: number): number {
  if (Math.abs(x - mean) >= 0.1 * (x + mean)) return x * Math.log(x / mean) + mean - x;
  const v = (x - mean) / (x + mean);
  let sum = (x - mean) * v;
  let power = 2 * x * v;
  for (let j = 3; ; j += 2) {
    power *= v * v;
    const next = sum + power / j;
    if (next === sum) return sum;
    sum = next;
  }
}

/**
 * Natural logarithm of the binomial mass C(n, x) p^x (1-p)^(n-x).
 *
 * @param x count, 0 to n
 * @param n number of draws, whole, tested to 1e6
 * @param p chance per draw, 0 to 1
 * @returns the logarithm, -Infinity where the mass is 0
 */
export function logBinomialMass(x: number, n: number, p: number): number {
  if (x < 0 || x > n) return Number.NEGATIVE_INFINITY;
  if (p === 0) return x === 0 ? 0 : Number.NEGATIVE_INFINITY;
  if (p === 1) return x === n ? 0 : Number.NEGATIVE_INFINITY;
  if (n === 0) return 0;
  if (x === 0) return n * Math.log1p(-p);
  if (x === n) return n * Math.log(p);
  return (
    stirlingError(n) -
    stirlingError(x) -
    stirlingError(n - x) -
    deviance(x, n * p) -
    deviance(n - x, n * (1 - p)) -
    halfLogTwoPi +
    0.5 * Math.log(n / (x * (n - x)))
  );
}

/**
 * Natural logarithm of the hypergeometric mass: y infected among n drawn without replacement from N, d of them
 * infected. Three binomial masses at the same p = n/N, whose powers of p cancel.
 */
export function logHypergeometricMass(y: number, N: number, d: number, n: number): number {
  if (y < Math.max(0, n + d - N) || y > Math.min(n, d)) return Number.NEGATIVE_INFINITY;
  if (n === 0 || n === N) return 0;
  const p = n / N;
  return logBinomialMass(y, d, p) + logBinomialMass(n - y, N - d, p) - logBinomialMass(n, N, p);
}

/** Natural logarithm of the Poisson mass of x events when `mean` are expected; mean above 0. */
export function logPoissonMass(x: number, mean: number): number {
  if (x === 0) return -mean;
  return -stirlingError(x) - deviance(x, mean) - halfLogTwoPi - 0.5 * Math.log(x);
}
