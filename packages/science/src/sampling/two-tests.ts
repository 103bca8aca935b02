import { calculation, shownList } from '../distributions/calculation.ts';
import { acceptCount, acceptFields, acceptList, acceptPositive, DomainError } from '../distributions/domain.ts';
import { normalQuantile } from '../distributions/normal.ts';
import type { BetaShapes } from './posterior-prevalence.ts';

/*
 * Two tests, two populations, no gold standard (Hui and Walter 1980): six cells that are free, six unknowns.
 * What it assumes: the prevalences differ, the tests err independently given status, and each test behaves the same in
 * both populations. The mirror solution (Se <-> 1 - Sp) fits as well; the one with Se + Sp > 1 is meant. An estimate on
 * the boundary (0 or 1) means an assumption fails.
 */

/** Two prevalences and the accuracy of each test, as fractions. */
export interface TwoTestEstimates {
  /** Per population. */
  readonly prevalence: readonly number[];
  /** Per test. */
  readonly sensitivity: readonly number[];
  /** Per test. */
  readonly specificity: readonly number[];
}

type Table = [number, number, number, number];
/** [prevalence 1, prevalence 2, Se 1, Se 2, Sp 1, Sp 2] */
type Parameters = [number, number, number, number, number, number];

function acceptTables(given: unknown): [Table, Table] {
  const tables = acceptList(
    'tables',
    given,
    (name, value) => acceptList(name, value, (n, v) => acceptCount(n, v), 4),
    2,
  ) as [Table, Table];
  for (const [i, table] of tables.entries()) {
    if (table.every((count) => count === 0))
      throw new DomainError(`tables[${i}]`, 'a table with at least one unit', table);
  }
  const shares = tables.map((table) => {
    const n = table.reduce((a, b) => a + b, 0);
    return table.map((count) => count / n);
  });
  if (shares[0]?.every((share, i) => Math.abs(share - (shares[1]?.[i] ?? 0)) < 1e-12)) {
    throw new DomainError('tables', 'from two populations whose results differ, else nothing can be told apart', given);
  }
  return tables;
}

/** Chance of each cell ++, +-, -+, -- among infected (first) and among uninfected (second) units. */
function cellChances([, , se1, se2, sp1, sp2]: Parameters): [Table, Table] {
  return [
    [se1 * se2, se1 * (1 - se2), (1 - se1) * se2, (1 - se1) * (1 - se2)],
    [(1 - sp1) * (1 - sp2), (1 - sp1) * sp2, sp1 * (1 - sp2), sp1 * sp2],
  ];
}

/** What one unit of each cell adds to the expected counts, given parameters: one step of expectation-maximisation. */
function improved(tables: readonly [Table, Table], now: Parameters): Parameters {
  const [infected, uninfected] = cellChances(now);
  const prevalence: number[] = [];
  let [diseased, healthy, true1, true2, clear1, clear2] = [0, 0, 0, 0, 0, 0];
  tables.forEach((table, population) => {
    const p = now[population] as number;
    let diseasedHere = 0;
    table.forEach((count, cell) => {
      const a = p * (infected[cell] as number);
      const b = (1 - p) * (uninfected[cell] as number);
      const share = a + b === 0 ? 0 : a / (a + b);
      const sick = count * share;
      diseasedHere += sick;
      healthy += count - sick;
      if (cell < 2) true1 += sick;
      else clear1 += count - sick;
      if (cell % 2 === 0) true2 += sick;
      else clear2 += count - sick;
    });
    diseased += diseasedHere;
    prevalence.push(diseasedHere / table.reduce((a, b) => a + b, 0));
  });
  const share = (part: number, whole: number, before: number) => (whole === 0 ? before : part / whole);
  return [
    prevalence[0] as number,
    prevalence[1] as number,
    share(true1, diseased, now[2]),
    share(true2, diseased, now[3]),
    share(clear1, healthy, now[4]),
    share(clear2, healthy, now[5]),
  ];
}

/** Most steps taken; near a boundary expectation-maximisation slows down. */
const mostSteps = 200_000;

function maximumLikelihood(tables: readonly [Table, Table]): Parameters {
  const start = tables.map((table) => {
    const n = table.reduce((a, b) => a + b, 0);
    const positive = (table[0] + (table[1] + table[2]) / 2) / n;
    return Math.min(0.95, Math.max(0.05, (positive - 0.1) / 0.8));
  });
  let now: Parameters = [start[0] as number, start[1] as number, 0.9, 0.9, 0.9, 0.9];
  if (Math.abs(now[0] - now[1]) < 0.02) now = [now[0], Math.min(0.97, now[1] + 0.02), 0.9, 0.9, 0.9, 0.9];
  for (let step = 0; step < mostSteps; step++) {
    const next = improved(tables, now);
    const moved = next.reduce((most, value, i) => Math.max(most, Math.abs(value - (now[i] as number))), 0);
    now = next;
    if (moved < 1e-15) break;
  }
  return now;
}

const asEstimates = (p: readonly number[]): TwoTestEstimates => ({
  prevalence: p.slice(0, 2),
  sensitivity: p.slice(2, 4),
  specificity: p.slice(4, 6),
});

/**
 * How good are two tests, and how common is the disease in two populations, when nobody knows the truth?
 *
 * Maximum likelihood by expectation-maximisation from Se, Sp near 0.9. Worked: the 1980 tuberculin tables give
 * prevalences 0.0268 and 0.7168.
 *
 * @param inputs.tables per population the counts [++, +-, -+, --], first test first; whole, not all 0
 * @throws DomainError on inputs outside these ranges, and when both populations show the same shares
 * Source: Hui and Walter 1980 [HUI80]
 */
export function twoTestsTwoPopulations(inputs: { tables: readonly (readonly number[])[] }): TwoTestEstimates {
  return asEstimates(maximumLikelihood(acceptTables(inputs.tables)));
}

export const twoTestsTwoPopulationsCalculation = calculation({
  name: 'twoTestsTwoPopulations',
  room: 'sampling',
  line: 'two tests in two populations without a gold standard (maximum likelihood)',
  inputs: { tables: 'two lists of counts [++, +-, -+, --], one per population' },
  formula: 'six cells, six unknowns, by expectation-maximisation from Se, Sp near 0.9',
  sources: ['HUI80'],
  call: twoTestsTwoPopulations,
  steps: (_, r) => [
    `prevalences ${shownList(r.prevalence)}`,
    `sensitivities ${shownList(r.sensitivity)}, specificities ${shownList(r.specificity)}`,
  ],
});

/**
 * The same with a Beta prior on each of the six parameters: posterior means and standard deviations.
 *
 * Computed by importance sampling on an even (Halton) set of 32,768 points in log-odds, so it is deterministic: fitted
 * first around the mode, then around the mean and covariance found. Only the half with Se + Sp > 1 for both tests is
 * counted. On the tuberculin tables it agrees with a Markov chain (JAGS) within 0.0005.
 *
 * @param inputs.tables as for `twoTestsTwoPopulations`
 * @param inputs.prior shapes of the Beta prior used for all six, each above 0; {alpha: 1, beta: 1} is uniform
 * @throws DomainError on inputs outside these ranges, and when the counts are too few for the points to tell
 * Source: Joseph, Gyorkos and Coupal 1995 (citation from memory) [JOSEPH95]; model Hui and Walter 1980 [HUI80]
 */
export function twoTestsTwoPopulationsBayes(inputs: { tables: readonly (readonly number[])[]; prior: BetaShapes }): {
  prevalence: readonly number[];
  sensitivity: readonly number[];
  specificity: readonly number[];
  prevalenceSd: readonly number[];
  sensitivitySd: readonly number[];
  specificitySd: readonly number[];
} {
  const tables = acceptTables(inputs.tables);
  const shapes = acceptFields('prior', inputs.prior);
  const alpha = acceptPositive('prior.alpha', shapes.alpha);
  const beta = acceptPositive('prior.beta', shapes.beta);
  const logPosterior = logPosteriorOf(tables, alpha, beta);

  const mode = maximumLikelihood(tables).map((p) => Math.min(0.999, Math.max(0.001, p)));
  let fit: Fit = {
    centre: mode.map((p) => Math.log(p / (1 - p))),
    root: startingSpread(tables, mode),
  };
  for (const points of [4096, 8192, 8192]) fit = refit(weigh(logPosterior, fit, points));
  const final = weigh(logPosterior, fit, 32_768);
  if (final.effective < 500) {
    throw new DomainError('tables', 'large enough for the posterior to be computed', inputs.tables);
  }
  const mean = momentsOf(final, (p) => p);
  const sd = momentsOf(final, (p, i) => (p - (mean[i] as number)) ** 2).map(Math.sqrt);
  const [centre, spread] = [asEstimates(mean), asEstimates(sd)];
  return {
    ...centre,
    prevalenceSd: spread.prevalence,
    sensitivitySd: spread.sensitivity,
    specificitySd: spread.specificity,
  };
}

export const twoTestsTwoPopulationsBayesCalculation = calculation({
  name: 'twoTestsTwoPopulationsBayes',
  room: 'sampling',
  line: 'the same, as posterior means and standard deviations',
  inputs: {
    tables: 'two lists of counts [++, +-, -+, --], one per population',
    prior: '{alpha, beta} used for all six, each above 0',
  },
  formula: 'importance sampling on 32,768 Halton points in log-odds, half with Se + Sp > 1',
  sources: ['JOSEPH95', 'HUI80'],
  call: twoTestsTwoPopulationsBayes,
  steps: (_, r) => [
    `prevalences ${shownList(r.prevalence)}, sd ${shownList(r.prevalenceSd)}`,
    `sensitivities ${shownList(r.sensitivity)}, sd ${shownList(r.sensitivitySd)}`,
    `specificities ${shownList(r.specificity)}, sd ${shownList(r.specificitySd)}`,
  ],
});

interface Fit {
  readonly centre: readonly number[];
  /** Lower triangular root of the covariance, on log-odds. */
  readonly root: readonly (readonly number[])[];
}

interface Weighed {
  /** Log-odds of each point, six to a point. */
  readonly points: Float64Array;
  readonly weights: Float64Array;
  readonly effective: number;
}

/** Log posterior density on log-odds, up to a constant; -Infinity in the mirror half. */
function logPosteriorOf(tables: readonly [Table, Table], alpha: number, beta: number) {
  return (p: Parameters): number => {
    if (p[2] + p[4] <= 1 || p[3] + p[5] <= 1) return Number.NEGATIVE_INFINITY;
    const [infected, uninfected] = cellChances(p);
    let log = 0;
    for (const value of p) log += alpha * Math.log(value) + beta * Math.log1p(-value);
    for (let population = 0; population < 2; population++) {
      const prevalence = p[population] as number;
      for (let cell = 0; cell < 4; cell++) {
        const count = (tables[population] as Table)[cell] as number;
        if (count > 0) {
          log +=
            count * Math.log(prevalence * (infected[cell] as number) + (1 - prevalence) * (uninfected[cell] as number));
        }
      }
    }
    return Number.isNaN(log) ? Number.NEGATIVE_INFINITY : log;
  };
}

/** Spreads as wide as the counts behind each parameter allow, uncorrelated: a first guess only. */
function startingSpread(tables: readonly [Table, Table], mode: readonly number[]): number[][] {
  const sizes = tables.map((table) => table.reduce((a, b) => a + b, 0));
  const sick = sizes.reduce((sum, n, i) => sum + n * (mode[i] as number), 0);
  const well = sizes.reduce((sum, n, i) => sum + n * (1 - (mode[i] as number)), 0);
  const behind = [sizes[0] as number, sizes[1] as number, sick, sick, well, well];
  return mode.map((p, i) => {
    const spread = 1.5 / Math.sqrt(Math.max(1, (behind[i] as number) * p * (1 - p)));
    return mode.map((_, j) => (i === j ? spread : 0));
  });
}

const bases = [2, 3, 5, 7, 11, 13];

/** Halton's even sequence: the digits of i in the base, mirrored at the point. */
function halton(i: number, base: number): number {
  let [fraction, value] = [1, 0];
  for (let rest = i; rest > 0; rest = Math.floor(rest / base)) {
    fraction /= base;
    value += fraction * (rest % base);
  }
  return value;
}

/** The normal laws that points are drawn from: most close by, the last quarter far out, for the tails. */
const near = { share: 0.75, width: 1.1 };
const far = { share: 0.25, width: 2.5 };

function weigh(logPosterior: (p: Parameters) => number, fit: Fit, count: number): Weighed {
  const points = new Float64Array(count * 6);
  const logs = new Float64Array(count);
  const deviates = new Float64Array(6);
  const p = new Float64Array(6);
  for (let k = 0; k < count; k++) {
    const { width } = k < near.share * count ? near : far;
    let length = 0;
    for (let i = 0; i < 6; i++) {
      const z = width * normalQuantile(halton(k + 20, bases[i] as number));
      deviates[i] = z;
      length += z * z;
    }
    for (let i = 0; i < 6; i++) {
      let t = fit.centre[i] as number;
      for (let j = 0; j <= i; j++) t += (fit.root[i]?.[j] as number) * (deviates[j] as number);
      points[k * 6 + i] = t;
      p[i] = 1 / (1 + Math.exp(-t));
    }
    const density = [near, far].reduce(
      (sum, { share, width: w }) => sum + (share / w ** 6) * Math.exp(-length / (2 * w * w)),
      0,
    );
    logs[k] = logPosterior(Array.from(p) as Parameters) - Math.log(density);
  }
  const top = logs.reduce((best, v) => Math.max(best, v), Number.NEGATIVE_INFINITY);
  const weights = logs.map((v) => (top === Number.NEGATIVE_INFINITY ? 0 : Math.exp(v - top)));
  const sum = weights.reduce((a, b) => a + b, 0);
  const squares = weights.reduce((a, b) => a + b * b, 0);
  return { points, weights: weights.map((w) => w / sum), effective: sum === 0 ? 0 : (sum * sum) / squares };
}

/** Weighted means, over the points, of a function of each parameter as a fraction. */
function momentsOf({ points, weights }: Weighed, of: (p: number, i: number) => number): number[] {
  return bases.map((_, i) =>
    weights.reduce((sum, w, k) => sum + w * of(1 / (1 + Math.exp(-(points[k * 6 + i] as number))), i), 0),
  );
}

function refit({ points, weights }: Weighed): Fit {
  const centre = bases.map((_, i) => weights.reduce((sum, w, k) => sum + w * (points[k * 6 + i] as number), 0));
  const covariance = bases.map((_, i) =>
    bases.map((_, j) =>
      weights.reduce(
        (sum, w, k) =>
          sum +
          w *
            ((points[k * 6 + i] as number) - (centre[i] as number)) *
            ((points[k * 6 + j] as number) - (centre[j] as number)),
        0,
      ),
    ),
  );
  return { centre, root: choleskyRoot(covariance) };
}

/** Lower triangular L with L L' = covariance, kept away from flat directions. */
function choleskyRoot(covariance: readonly (readonly number[])[]): number[][] {
  const size = covariance.length;
  const root = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let rest = covariance[i]?.[j] as number;
      for (let k = 0; k < j; k++) rest -= (root[i]?.[k] as number) * (root[j]?.[k] as number);
      (root[i] as number[])[j] = i === j ? Math.sqrt(Math.max(rest, 1e-6)) : rest / (root[j]?.[j] as number);
    }
  }
  return root;
}
