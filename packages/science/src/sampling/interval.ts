import { betaQuantile } from '../distributions/beta.ts';
import { binomialLowerTail, binomialUpperTail } from '../distributions/binomial.ts';
import { bisect } from '../distributions/bisection.ts';
import { calculation, shown } from '../distributions/calculation.ts';
import { acceptCount, acceptOpenFraction } from '../distributions/domain.ts';
import { twoSidedDeviate } from '../distributions/normal.ts';
import * as described from './inputs-described.ts';

/*
 * Intervals for a proportion: x of n. Import as a whole, `import * as interval from '@combside/science/sampling/interval'`,
 * and read `interval.wilson(...)`.
 *
 * Which one when: Wilson for display; Clopper-Pearson where coverage must be guaranteed; Blaker guaranteed and
 * shorter; Jeffreys and Agresti-Coull for comparison with papers that use them. Colonies of one apiary are alike:
 * divide x and n by the design effect before any interval, or it is too narrow.
 * 0 of n is an interval, never "0 %".
 */

/** What every interval takes. */
export interface ProportionInputs {
  /** x, whole, 0 to n. */
  positives: number;
  /** n, whole, 1 or more. */
  tested: number;
  /** Two-sided confidence, fraction above 0 and below 1. */
  confidence: number;
}

/** An estimated fraction with its two-sided interval, each from 0 to 1. */
export interface ProportionInterval {
  readonly estimate: number;
  readonly lower: number;
  readonly upper: number;
}

/** Accepts x, n and the confidence. @throws DomainError */
export function acceptProportion(inputs: ProportionInputs) {
  const n = acceptCount('tested', inputs.tested, 1);
  const x = acceptCount('positives', inputs.positives, 0, n, 'tested');
  return { x, n, confidence: acceptOpenFraction('confidence', inputs.confidence) };
}

/**
 * Wilson's score interval, without continuity correction.
 *
 *   (p + z^2/2n +- z sqrt(p(1-p)/n + z^2/4n^2)) / (1 + z^2/n)
 *
 * Worked: 81 of 263, 95 %: 0.2553 to 0.3662 (Newcombe 1998, table I).
 *
 * @throws DomainError on inputs outside their ranges
 * Source: Newcombe 1998 [NEWCOMBE98]
 */
export function wilson(inputs: ProportionInputs): ProportionInterval {
  const { x, n, confidence } = acceptProportion(inputs);
  const z = twoSidedDeviate(confidence);
  const estimate = x / n;
  const half = z * Math.sqrt((x * (n - x)) / n + (z * z) / 4);
  const middle = x + (z * z) / 2;
  const whole = n + z * z;
  return {
    estimate,
    lower: x === 0 ? 0 : Math.max(0, (middle - half) / whole),
    upper: x === n ? 1 : Math.min(1, (middle + half) / whole),
  };
}

/** What every interval takes, as it is offered by name. */
export const proportionDescribed = {
  positives: described.positives,
  tested: `${described.tested}, 1 or more`,
  confidence: described.confidence,
};

/* @__NO_SIDE_EFFECTS__ */
function intervalCalculation(
  name: string,
  spoken: string,
  formula: string,
  source: 'NEWCOMBE98' | 'BROWN01' | 'BLAKER00',
  call: (inputs: ProportionInputs) => ProportionInterval,
) {
  return calculation({
    name,
    room: 'sampling',
    line: `${spoken} interval for a proportion`,
    inputs: proportionDescribed,
    formula,
    sources: [source],
    call,
    steps: (i, r) => [
      `estimate = ${i.positives}/${i.tested} = ${shown(r.estimate)}`,
      `two-sided tail (1 - ${i.confidence})/2 = ${shown((1 - i.confidence) / 2)}, z = ${shown(twoSidedDeviate(i.confidence))}`,
      `limits ${shown(r.lower)} to ${shown(r.upper)}`,
    ],
  });
}

export const wilsonCalculation = intervalCalculation(
  'interval.wilson',
  'Wilson',
  '(p + z^2/2n +- z sqrt(p(1-p)/n + z^2/4n^2))/(1 + z^2/n)',
  'NEWCOMBE98',
  wilson,
);

/**
 * Clopper and Pearson's exact central interval: Beta quantiles, 0 and 1 at the ends. Covers at least as often as it
 * says, usually more often. At x = 0 the upper end is 1 - (alpha/2)^(1/n), not the one-sided rule of three.
 *
 * @throws DomainError on inputs outside their ranges
 * Source: Newcombe 1998 [NEWCOMBE98]
 */
export function clopperPearson(inputs: ProportionInputs): ProportionInterval {
  const { x, n, confidence } = acceptProportion(inputs);
  const tail = (1 - confidence) / 2;
  return {
    estimate: x / n,
    lower: x === 0 ? 0 : betaQuantile(tail, x, n - x + 1),
    upper: x === n ? 1 : 1 - betaQuantile(tail, n - x, x + 1),
  };
}

export const clopperPearsonCalculation = intervalCalculation(
  'interval.clopperPearson',
  'Clopper-Pearson',
  'Beta(x, n-x+1) and Beta(x+1, n-x) quantiles',
  'NEWCOMBE98',
  clopperPearson,
);

/**
 * Jeffreys' interval: Beta(x + 1/2, n - x + 1/2) quantiles, lower end 0 when x = 0, upper end 1 when x = n.
 *
 * @throws DomainError on inputs outside their ranges
 * Source: Brown, Cai and DasGupta 2001 [BROWN01]
 */
export function jeffreys(inputs: ProportionInputs): ProportionInterval {
  const { x, n, confidence } = acceptProportion(inputs);
  const tail = (1 - confidence) / 2;
  return {
    estimate: x / n,
    lower: x === 0 ? 0 : betaQuantile(tail, x + 0.5, n - x + 0.5),
    upper: x === n ? 1 : 1 - betaQuantile(tail, n - x + 0.5, x + 0.5),
  };
}

export const jeffreysCalculation = intervalCalculation(
  'interval.jeffreys',
  'Jeffreys',
  'Beta(x+1/2, n-x+1/2) quantiles, 0 and 1 at the ends',
  'BROWN01',
  jeffreys,
);

/**
 * Agresti and Coull's interval, cut to 0..1: the simple interval after adding z^2/2 positives and z^2/2 negatives.
 *
 * @throws DomainError on inputs outside their ranges
 * Source: Brown, Cai and DasGupta 2001 [BROWN01]
 */
export function agrestiCoull(inputs: ProportionInputs): ProportionInterval {
  const { x, n, confidence } = acceptProportion(inputs);
  const z = twoSidedDeviate(confidence);
  const whole = n + z * z;
  const centre = (x + (z * z) / 2) / whole;
  const half = z * Math.sqrt((centre * (1 - centre)) / whole);
  return { estimate: x / n, lower: Math.max(0, centre - half), upper: Math.min(1, centre + half) };
}

export const agrestiCoullCalculation = intervalCalculation(
  'interval.agrestiCoull',
  'Agresti-Coull',
  'simple interval after adding z^2/2 of each, cut to 0..1',
  'BROWN01',
  agrestiCoull,
);

/**
 * Blaker's exact interval: guaranteed coverage, inside Clopper-Pearson's, nested in the confidence.
 *
 * The acceptability of p is the chance, under p, of a count whose smaller tail is no larger than that of x. The limits
 * are the first p, going inward from each Clopper-Pearson end, whose acceptability reaches 1 - C.
 *
 * @throws DomainError on inputs outside their ranges
 * Source: Blaker 2000 [BLAKER00]
 */
export function blaker(inputs: ProportionInputs): ProportionInterval {
  const { x, n, confidence } = acceptProportion(inputs);
  return {
    estimate: x / n,
    lower: blakerLower(x, n, confidence),
    upper: 1 - blakerLower(n - x, n, confidence),
  };
}

export const blakerCalculation = intervalCalculation(
  'interval.blaker',
  'Blaker',
  'first p inward from Clopper-Pearson whose acceptability reaches 1 - C',
  'BLAKER00',
  blaker,
);

/*
 * Below the estimate, the smaller tail of x is P(X >= x), and the counts no likelier on the other side are 0..k, where
 * k is the largest with P(X <= k) <= P(X >= x). As p rises k only rises, and while k stays the acceptability
 * 1 - P(k < X < x) first falls, then rises. So walk from one rise of k to the next: the limit is either the point where
 * k rises or, inside a stretch whose far end is acceptable, the only crossing.
 */
function blakerLower(x: number, n: number, confidence: number): number {
  if (x === 0) return 0;
  const alpha = 1 - confidence;
  const start = betaQuantile(alpha / 2, x, n - x + 1);
  const upper = (p: number) => binomialUpperTail(x, n, p);
  const lower = (k: number, p: number) => binomialLowerTail(k, n, p);
  let k = -1;
  {
    // The largest k whose lower tail is no larger than the upper tail of x at the Clopper-Pearson end.
    const tail = upper(start) * (1 + 1e-12);
    let [low, high] = [-1, x - 1];
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if (lower(middle, start) <= tail) low = middle;
      else high = middle - 1;
    }
    k = low;
  }
  let p = start;
  for (;;) {
    if (k >= x - 1 || upper(p) + lower(k, p) >= alpha) return p;
    const next = bisect(p, x / n, (q) => upper(q) - lower(k + 1, q));
    if (upper(next) + lower(k, next) >= alpha) {
      return bisect(p, next, (q) => upper(q) + lower(k, q) - alpha);
    }
    p = next;
    k += 1;
  }
}
