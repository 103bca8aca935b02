import { betaQuantile } from '../distributions/beta.ts';
import { calculation, shown } from '../distributions/calculation.ts';
import {
  acceptCount,
  acceptFields,
  acceptFraction,
  acceptList,
  acceptOpenFraction,
  acceptPositive,
  DomainError,
} from '../distributions/domain.ts';
import { gaussLegendre } from '../distributions/gauss-legendre.ts';
import { logBinomialMass } from '../distributions/log-mass.ts';
import * as described from './inputs-described.ts';

/** The two shapes of a Beta distribution, each above 0. */
export interface BetaShapes {
  readonly alpha: number;
  readonly beta: number;
}

/** What is believed about the prevalence after the survey, all as fractions. */
export interface PosteriorPrevalence {
  readonly mean: number;
  readonly sd: number;
  readonly lower: number;
  readonly median: number;
  readonly upper: number;
}

/** Nodes per test characteristic that has a Beta prior. */
const testNodes = 48;
/** As many are enough to find the range that holds the posterior. */
const rangeNodes = 8;
/** Points over the prevalence, evenly spaced on its log-odds. */
const prevalencePoints = 401;
/** Log density below the peak by this much adds nothing. */
const reach = 40;

/**
 * How common is it really? The posterior of the prevalence after x of n tested positive, when the test errs and its
 * errors are known only roughly.
 *
 *   likelihood Binomial(x; n, p Se + (1-p)(1-Sp)); Beta prior on p; Se and Sp each a number or a Beta prior
 *
 * Deterministic quadrature, so the same offline and tomorrow: Se and Sp at 48 Gauss nodes each in their quantile
 * scale, p on an even grid of its log-odds over the range that holds the posterior. Tested to n = 1,000,000 with
 * a known test and to n = 100,000 with an estimated one.
 * Worked: 5 of 12, perfect test, uniform prior: Beta(6, 8), mean 0.4286.
 *
 * @param inputs.positives x, whole, 0 to n
 * @param inputs.tested n, whole, 0 or more
 * @param inputs.prior [alpha, beta] of the prevalence's Beta prior, each above 0; [1, 1] is uniform
 * @param inputs.sensitivity Se: a fraction 0 to 1, or {alpha, beta}
 * @param inputs.specificity Sp: a fraction 0 to 1, or {alpha, beta}
 * @param inputs.interval content of the central interval, fraction above 0 and below 1
 * @throws DomainError on inputs outside these ranges, and when the positives are impossible under the prior
 * Source: Joseph, Gyorkos and Coupal 1995 (citation from memory) [JOSEPH95]
 */
export function posteriorPrevalence(inputs: {
  positives: number;
  tested: number;
  prior: readonly [number, number] | readonly number[];
  sensitivity: number | BetaShapes;
  specificity: number | BetaShapes;
  interval: number;
}): PosteriorPrevalence {
  const n = acceptCount('tested', inputs.tested);
  const x = acceptCount('positives', inputs.positives, 0, n, 'tested');
  const [a, b] = acceptList('prior', inputs.prior, acceptPositive, 2) as [number, number];
  const content = acceptOpenFraction('interval', inputs.interval);

  /** Log posterior density on the log-odds scale, up to a constant, with so many nodes for Se and for Sp. */
  const logDensityWith = (nodes: number) => {
    const sensitivity = testCharacteristic('sensitivity', inputs.sensitivity, nodes);
    const specificity = testCharacteristic('specificity', inputs.specificity, nodes);
    return (t: number) => {
      const logP = -Math.log1p(Math.exp(-t));
      const logQ = -Math.log1p(Math.exp(t));
      return a * logP + b * logQ + logLikelihood(x, n, Math.exp(logP), Math.exp(logQ), sensitivity, specificity);
    };
  };
  const [low, high] = rangeOf(logDensityWith(rangeNodes));
  return summarise(logDensityWith(testNodes), low, high, content, inputs);
}

export const posteriorPrevalenceCalculation = calculation({
  name: 'posteriorPrevalence',
  room: 'sampling',
  line: 'posterior of the true prevalence, test known or with Beta priors',
  inputs: {
    positives: described.positives,
    tested: described.tested,
    prior: '[alpha, beta] of the prevalence, each above 0',
    sensitivity: `${described.sensitivity}, or {alpha, beta}`,
    specificity: `${described.specificity}, or {alpha, beta}`,
    interval: 'content of the central interval, above 0 and below 1',
  },
  formula: 'Bin(x; n, p Se + (1-p)(1-Sp)) times the priors, integrated by quadrature',
  sources: ['JOSEPH95'],
  call: posteriorPrevalence,
  steps: (i, r) => [
    `${i.positives} of ${i.tested}, prior Beta(${i.prior.join(', ')})`,
    `mean ${shown(r.mean)}, sd ${shown(r.sd)}, median ${shown(r.median)} (${shown(r.lower)} to ${shown(r.upper)})`,
  ],
});

interface Characteristic {
  readonly values: Float64Array;
  readonly weights: Float64Array;
}

function testCharacteristic(field: string, given: number | BetaShapes, nodes: number): Characteristic {
  if (typeof given === 'number') {
    return { values: Float64Array.of(acceptFraction(field, given)), weights: Float64Array.of(1) };
  }
  const shapes = acceptFields(field, given);
  const alpha = acceptPositive(`${field}.alpha`, shapes.alpha);
  const beta = acceptPositive(`${field}.beta`, shapes.beta);
  const rule = gaussLegendre(nodes);
  return { values: rule.nodes.map((u) => betaQuantile(u, alpha, beta)), weights: rule.weights };
}

/** Log of the likelihood averaged over the nodes of Se and Sp, relative to the best possible likelihood. */
function logLikelihood(x: number, n: number, p: number, q: number, se: Characteristic, sp: Characteristic): number {
  const best = n === 0 ? 0 : logBinomialMass(x, n, x / n);
  const logCoefficient = best - (x === 0 ? 0 : x * Math.log(x / n)) - (x === n ? 0 : (n - x) * Math.log1p(-x / n));
  const at = (sensitivity: number, specificity: number) => {
    const positive = p * sensitivity + q * (1 - specificity);
    const negative = p * (1 - sensitivity) + q * specificity;
    return (x === 0 ? 0 : x * Math.log(positive)) + (x === n ? 0 : (n - x) * Math.log(negative));
  };
  if (se.values.length === 1 && sp.values.length === 1) {
    return logCoefficient - best + at(se.values[0] as number, sp.values[0] as number);
  }
  let sum = 0;
  for (let i = 0; i < se.values.length; i++) {
    let row = 0;
    for (let j = 0; j < sp.values.length; j++) {
      row +=
        (sp.weights[j] as number) *
        Math.exp(logCoefficient - best + at(se.values[i] as number, sp.values[j] as number));
    }
    sum += (se.weights[i] as number) * row;
  }
  return Math.log(sum);
}

/** The stretch of log-odds that holds all of the posterior that counts. */
function rangeOf(logDensity: (t: number) => number): [number, number] {
  let [low, high] = [-700, 700];
  for (let pass = 0; pass < 30; pass++) {
    const points = 57;
    const step = (high - low) / (points - 1);
    const values = Array.from({ length: points }, (_, i) => logDensity(low + i * step));
    const peak = values.reduce((best, v) => Math.max(best, v), Number.NEGATIVE_INFINITY);
    if (peak === Number.NEGATIVE_INFINITY) return [low, high];
    const held = values.flatMap((v, i) => (v > peak - reach ? [i] : []));
    const first = Math.max(0, (held[0] as number) - 1);
    const last = Math.min(points - 1, (held[held.length - 1] as number) + 1);
    const narrowed: [number, number] = [low + first * step, low + last * step];
    const shrunk = narrowed[1] - narrowed[0] < 0.9 * (high - low);
    [low, high] = narrowed;
    if (!shrunk) break;
  }
  return [low, high];
}

function summarise(
  logDensity: (t: number) => number,
  low: number,
  high: number,
  content: number,
  inputs: { positives: number },
): PosteriorPrevalence {
  const step = (high - low) / (prevalencePoints - 1);
  const logs = Float64Array.from({ length: prevalencePoints }, (_, i) => logDensity(low + i * step));
  const peak = logs.reduce((best, v) => Math.max(best, v), Number.NEGATIVE_INFINITY);
  if (!Number.isFinite(peak)) {
    throw new DomainError('positives', 'possible under the prior and the test', inputs.positives);
  }
  const density = logs.map((v) => Math.exp(v - peak));
  const prevalence = (t: number) => 1 / (1 + Math.exp(-t));
  // On log-odds the density is smooth and dies away at both ends, where the plain sum is as exact as it gets.
  let mass = 0;
  let first = 0;
  density.forEach((f, i) => {
    mass += f;
    first += f * prevalence(low + i * step);
  });
  const mean = first / mass;
  let second = 0;
  density.forEach((f, i) => {
    second += f * (prevalence(low + i * step) - mean) ** 2;
  });

  // Cumulative mass at each point, to fourth order (trapezium with its slope correction), scaled to end at 1.
  const slope = (i: number) => {
    if (i === 0 || i === prevalencePoints - 1) return 0;
    return ((density[i + 1] as number) - (density[i - 1] as number)) / 2;
  };
  const cumulative = new Float64Array(prevalencePoints);
  for (let i = 1; i < prevalencePoints; i++) {
    const cell = ((density[i - 1] as number) + (density[i] as number)) / 2 + (slope(i - 1) - slope(i)) / 12;
    cumulative[i] = (cumulative[i - 1] as number) + Math.max(0, cell);
  }
  const total = cumulative[prevalencePoints - 1] as number;
  const quantile = (probability: number) => {
    const wanted = probability * total;
    let [i, j] = [0, prevalencePoints - 1];
    while (j - i > 1) {
      const middle = (i + j) >> 1;
      if ((cumulative[middle] as number) <= wanted) i = middle;
      else j = middle;
    }
    // Within the cell the cumulative is a cubic with known values and known slopes (the density) at both ends.
    const [c0, c1] = [cumulative[i] as number, cumulative[j] as number];
    const [d0, d1] = [density[i] as number, density[j] as number];
    let [u, v] = [0, 1];
    for (let k = 0; k < 50; k++) {
      const s = (u + v) / 2;
      const value =
        c0 * (1 + 2 * s) * (1 - s) ** 2 + d0 * s * (1 - s) ** 2 + c1 * s * s * (3 - 2 * s) + d1 * s * s * (s - 1);
      if (value <= wanted) u = s;
      else v = s;
    }
    return prevalence(low + (i + u) * step);
  };
  return {
    mean,
    sd: Math.sqrt(second / mass),
    lower: quantile((1 - content) / 2),
    median: quantile(0.5),
    upper: quantile((1 + content) / 2),
  };
}
