import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { betaLowerTail, betaQuantile } from './beta.ts';
import { binomialLowerTail, binomialMass, binomialMasses, binomialUpperTail } from './binomial.ts';
import { gaussLegendre } from './gauss-legendre.ts';
import { hypergeometricMass, probabilityNoneDetected, probabilityOfFewPositives } from './hypergeometric.ts';
import { normalQuantile } from './normal.ts';
import { poissonLowerLimit, poissonUpperLimit } from './poisson.ts';

/*
 * Every distribution against R 4.2.2 over the domain that `reference/generate.R` describes, masses below 1e-290 left
 * out. The bound is the largest relative difference allowed; the largest found is printed.
 */
type Block = { columns: string[]; rows: number[][] };
const reference: Record<string, Block> = JSON.parse(
  readFileSync(new URL('./reference/distributions.json', import.meta.url), 'utf8'),
);

const smallest = 1e-290;
const relative = (got: number, wanted: number) => {
  if (Math.abs(wanted) < smallest) return 0;
  return Math.abs(got / wanted - 1);
};

const found: string[] = [];
afterAll(() => console.log(`largest relative differences from R: ${found.join('; ')}`));

/** The largest difference over a block's rows, kept for the report. */
function largest(label: string, block: string, difference: (row: readonly number[]) => number): number {
  const rows = reference[block]?.rows ?? [];
  if (rows.length < 10) throw new Error(`reference block ${block} holds only ${rows.length} rows`);
  const most = rows.reduce((worst, row) => Math.max(worst, difference(row)), 0);
  found.push(`${label} ${most.toExponential(1)} (${rows.length} values)`);
  return most;
}

describe('against R', () => {
  it('binomial masses', () => {
    // Four rows at n = 1e6, p = 0.999999 differ by 1.4e-11. There R is off: 0.999999^999999 * 1e6 * (1 - 0.999999) in 50
    // digits is 0.367879625111270, which is ours. Elsewhere the difference stays below 3e-13.
    expect(
      largest('binomial mass', 'binomial', ([x = 0, n = 0, p = 0, mass = 0]) => relative(binomialMass(x, n, p), mass)),
    ).toBeLessThan(2e-11);
    expect(binomialMass(999_999, 1_000_000, 0.999999)).toBeCloseTo(0.36787962511127, 13);
  });

  it('binomial masses as a list', () => {
    expect(
      largest('binomial list', 'binomial', ([x = 0, n = 0, p = 0, mass = 0]) =>
        n > 40_000 ? 0 : relative(binomialMasses(n, p, n)[x] ?? 0, mass),
      ),
    ).toBeLessThan(1e-12);
  });

  it('binomial tails', () => {
    expect(
      largest('binomial lower tail', 'binomial', ([x = 0, n = 0, p = 0, , fewer = 0]) =>
        relative(binomialLowerTail(x, n, p), fewer),
      ),
    ).toBeLessThan(1e-10);
    expect(
      largest('binomial upper tail', 'binomial', ([x = 0, n = 0, p = 0, , , more = 0]) =>
        relative(binomialUpperTail(x, n, p), more),
      ),
    ).toBeLessThan(1e-10);
  });

  it('hypergeometric masses', () => {
    expect(
      largest('hypergeometric mass', 'hypergeometric', ([y = 0, N = 0, d = 0, n = 0, mass = 0]) =>
        relative(hypergeometricMass(y, N, d, n), mass),
      ),
    ).toBeLessThan(1e-12);
  });

  it('the chance that none is detected', () => {
    expect(
      largest('none detected', 'noneDetected', ([N = 0, d = 0, n = 0, miss = 0, p = 0]) =>
        relative(probabilityNoneDetected(N, d, n, miss), p),
      ),
    ).toBeLessThan(1e-12);
  });

  it('no positive at all, by the sum over infected and uninfected', () => {
    expect(
      largest('no positive', 'noneDetected', ([N = 0, d = 0, n = 0, miss = 0, p = 0]) =>
        n < 2 ? 0 : relative(probabilityOfFewPositives(0, N, d, n, 1 - miss, 0), p),
      ),
    ).toBeLessThan(1e-12);
  });

  it('beta quantiles and tails', () => {
    expect(
      largest('beta quantile', 'beta', ([q = 0, a = 0, b = 0, x = 0]) => relative(betaQuantile(q, a, b), x)),
    ).toBeLessThan(1e-12);
    expect(
      largest('beta tail', 'beta', ([, a = 0, b = 0, x = 0, tail = 0]) => relative(betaLowerTail(x, a, b), tail)),
    ).toBeLessThan(1e-10);
  });

  it('normal quantiles', () => {
    expect(largest('normal quantile', 'normal', ([q = 0, z = 0]) => relative(normalQuantile(q), z))).toBeLessThan(
      1e-13,
    );
  });

  it('Poisson limits, which are gamma quantiles', () => {
    expect(
      largest('Poisson lower limit', 'gamma', ([q = 0, shape = 0, x = 0]) =>
        q > 0.5 ? 0 : relative(poissonLowerLimit(shape, q), x),
      ),
    ).toBeLessThan(1e-12);
    expect(
      largest('Poisson upper limit', 'gamma', ([q = 0, shape = 0, x = 0]) =>
        q < 0.5 ? 0 : relative(poissonUpperLimit(shape - 1, 1 - q), x),
      ),
    ).toBeLessThan(1e-9);
  });
});

describe('sums', () => {
  it('add up to 1 over all outcomes, also where factorials overflow', () => {
    for (const [N, d, n] of [
      [7, 3, 4],
      [1000, 400, 999],
      [20_000, 5000, 3000],
    ] as const) {
      let sum = 0;
      for (let y = 0; y <= Math.min(d, n); y++) sum += hypergeometricMass(y, N, d, n);
      expect(sum).toBeCloseTo(1, 11);
    }
    expect(binomialMasses(30_000, 0.37, 30_000).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 11);
  });

  it('few positives equals brute force over both binomials for a small apiary', () => {
    const [N, d, n, se, fp] = [12, 4, 7, 0.8, 0.05];
    for (let x = 0; x < n; x++) {
      let sum = 0;
      for (let y = Math.max(0, n + d - N); y <= Math.min(d, n); y++) {
        for (let a = 0; a <= Math.min(x, y); a++) {
          for (let b = 0; b <= Math.min(x - a, n - y); b++) {
            sum += hypergeometricMass(y, N, d, n) * binomialMass(a, y, se) * binomialMass(b, n - y, fp);
          }
        }
      }
      expect(probabilityOfFewPositives(x, N, d, n, se, fp)).toBeCloseTo(sum, 12);
    }
  });

  it('a 5-node rule integrates x^9 exactly', () => {
    const { nodes, weights } = gaussLegendre(5);
    expect(nodes.reduce((sum, x, i) => sum + (weights[i] ?? 0) * x ** 9, 0)).toBeCloseTo(0.1, 14);
  });
});
