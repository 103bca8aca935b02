import { betaLowerTail, betaUpperTail } from '../distributions/beta.ts';
import { bisect } from '../distributions/bisection.ts';
import { calculation, shown } from '../distributions/calculation.ts';
import { acceptFraction, acceptNumber, acceptOpenFraction, acceptWord } from '../distributions/domain.ts';

/** Shapes of a Beta distribution; both null when none fits what was said. */
export interface OpinionShapes {
  readonly alpha: number | null;
  readonly beta: number | null;
}

/** "I am 80 % sure it is above 0.75": percentile 0.75, probability 0.8, direction above. */
export interface Statement {
  /** x, fraction above 0 and below 1. */
  percentile: number;
  /** How sure, fraction above 0 and below 1. */
  probability: number;
  /** Whether the fraction is said to lie above or below x. */
  direction: 'above' | 'below';
}

const nothingFits: OpinionShapes = { alpha: null, beta: null };

/** The largest concentration looked at. */
const largest = 1e9;

function acceptStatement(inputs: Statement) {
  return {
    x: acceptOpenFraction('percentile', inputs.percentile),
    q: acceptOpenFraction('probability', inputs.probability),
    direction: acceptWord('direction', inputs.direction, ['above', 'below']),
  };
}

/**
 * Which Beta distribution has this most likely value and this statement about a tail?
 *
 *   alpha = 1 + s m, beta = 1 + s (1 - m), s >= 0 solved so that P(theta > x) = q (or P(theta < x) = q)
 *
 * Mode 1: beta = 1, alpha = ln P(theta < x) / ln x. Mode 0: alpha = 1, beta = ln P(theta > x) / ln(1 - x).
 * Null when the statement is vaguer than knowing nothing (the uniform distribution).
 * Worked: mode 0.9, 80 % sure above 0.75: Beta(9.875, 1.986).
 *
 * @param inputs.mode m, fraction 0 to 1
 * @throws DomainError on inputs outside their ranges
 * Source: Christensen, Johnson, Branscum and Hanson 2010 [CHRISTENSEN10]; epiR 2.0.57 manual [EPIR]
 */
export function betaFromMode(inputs: Statement & { mode: number }): OpinionShapes {
  const mode = acceptFraction('mode', inputs.mode);
  const { x, q, direction } = acceptStatement(inputs);
  const shapes = (s: number) => ({ alpha: 1 + s * mode, beta: 1 + s * (1 - mode) });
  if (mode === 1 || mode === 0) {
    const below = direction === 'below' ? q : 1 - q;
    const shape = mode === 1 ? Math.log(below) / Math.log(x) : Math.log1p(-below) / Math.log1p(-x);
    return shape < 1 ? nothingFits : mode === 1 ? { alpha: shape, beta: 1 } : { alpha: 1, beta: shape };
  }
  return solve(0, shapes, x, q, direction);
}

const statementDescribed = {
  percentile: 'x, fraction above 0 and below 1',
  probability: 'how sure, fraction above 0 and below 1',
  direction: '"above" or "below" x',
};

export const betaFromModeCalculation = calculation({
  name: 'betaFromMode',
  room: 'sampling',
  line: 'Beta distribution from a most likely value and one statement',
  inputs: { mode: 'most likely value, fraction 0 to 1', ...statementDescribed },
  formula: 'alpha = 1 + s m, beta = 1 + s(1 - m), s solved',
  sources: ['CHRISTENSEN10', 'EPIR'],
  call: betaFromMode,
  steps: (i, r) => [
    `${i.probability} sure ${i.direction} ${i.percentile}, most likely ${i.mode}`,
    `Beta(${shown(r.alpha)}, ${shown(r.beta)})`,
  ],
});

/**
 * Which Beta distribution has this mean and this statement about a tail? The unimodal one (alpha and beta 1 or more).
 *
 *   alpha = s mean, beta = s (1 - mean), s solved
 *
 * @param inputs.mean fraction above 0 and below 1
 * @throws DomainError on inputs outside their ranges
 * Source: R package prevalence 0.4.1, betaExpert [PREVALENCE-R]
 */
export function betaFromMean(inputs: Statement & { mean: number }): OpinionShapes {
  const mean = acceptOpenFraction('mean', inputs.mean);
  const { x, q, direction } = acceptStatement(inputs);
  const least = Math.max(1 / mean, 1 / (1 - mean));
  return solve(least, (s) => ({ alpha: s * mean, beta: s * (1 - mean) }), x, q, direction);
}

export const betaFromMeanCalculation = calculation({
  name: 'betaFromMean',
  room: 'sampling',
  line: 'Beta distribution from a mean and one statement',
  inputs: { mean: 'fraction above 0 and below 1', ...statementDescribed },
  formula: 'alpha = s mean, beta = s(1 - mean), s solved, both at least 1',
  sources: ['PREVALENCE-R'],
  call: betaFromMean,
  steps: (i, r) => [
    `${i.probability} sure ${i.direction} ${i.percentile}, mean ${i.mean}`,
    `Beta(${shown(r.alpha)}, ${shown(r.beta)})`,
  ],
});

function solve(
  least: number,
  shapes: (s: number) => { alpha: number; beta: number },
  x: number,
  q: number,
  direction: 'above' | 'below',
): OpinionShapes {
  const excess = (s: number) => {
    const { alpha, beta } = shapes(s);
    return (direction === 'above' ? betaUpperTail(x, alpha, beta) : betaLowerTail(x, alpha, beta)) - q;
  };
  const atLeast = excess(least);
  if (atLeast === 0) return shapes(least);
  let most = Math.max(2 * least, 1);
  while (excess(most) > 0 === atLeast > 0) {
    most *= 2;
    if (most > largest) return nothingFits;
  }
  return shapes(bisect(least, most, excess));
}

/**
 * Which Beta distribution, stretched over [min, max], has this least, most likely and greatest value?
 *
 *   mu = (min + 4 mode + max)/6, alpha = 6 (mu - min)/(max - min), beta = 6 (max - mu)/(max - min)
 *
 * Not the other "PERT", which fixes the standard deviation at a sixth of the range and gives other shapes.
 *
 * @param inputs.minimum below `mode` or equal, any finite number
 * @param inputs.mode between minimum and maximum
 * @param inputs.maximum above `minimum`
 * @throws DomainError when the three are not in order
 * Source: Vose 2008 [VOSE08]
 */
export function betaFromRange(inputs: { minimum: number; mode: number; maximum: number }): {
  alpha: number;
  beta: number;
  mean: number;
} {
  const minimum = acceptNumber('minimum', inputs.minimum, 'a finite number', () => true);
  const maximum = acceptNumber('maximum', inputs.maximum, `a number above minimum (${minimum})`, (v) => v > minimum);
  const mode = acceptNumber(
    'mode',
    inputs.mode,
    `a number from minimum (${minimum}) to maximum (${maximum})`,
    (v) => v >= minimum && v <= maximum,
  );
  const mean = (minimum + 4 * mode + maximum) / 6;
  const range = maximum - minimum;
  return { alpha: (6 * (mean - minimum)) / range, beta: (6 * (maximum - mean)) / range, mean };
}

export const betaFromRangeCalculation = calculation({
  name: 'betaFromRange',
  room: 'sampling',
  line: 'Beta distribution from least, most likely and greatest value',
  inputs: { minimum: 'least value', mode: 'most likely value', maximum: 'greatest value' },
  formula: 'mu = (min + 4 mode + max)/6; alpha = 6(mu - min)/(max - min); beta = 6(max - mu)/(max - min)',
  sources: ['VOSE08'],
  call: betaFromRange,
  steps: (_, r) => [`mean ${shown(r.mean)}`, `Beta(${shown(r.alpha)}, ${shown(r.beta)}) on the range`],
});
