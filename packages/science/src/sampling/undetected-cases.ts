import { calculation, shown } from '../distributions/calculation.ts';
import { acceptCount, acceptOpenFraction } from '../distributions/domain.ts';
import { twoSidedDeviate } from '../distributions/normal.ts';
import * as described from './inputs-described.ts';

/** All cases, seen and unseen, with two intervals; counts need not be whole. */
export interface UndetectedCases {
  readonly total: number;
  readonly standardError: number;
  readonly seen: number;
  readonly undetected: number;
  readonly normalLower: number;
  readonly normalUpper: number;
  readonly logLower: number;
  readonly logUpper: number;
}

/**
 * How many cases did nobody find? From two independent sources, n1 and n2 cases, m of them in both.
 *
 *   total = (n1+1)(n2+1)/(m+1) - 1; variance = (n1+1)(n2+1)(n1-m)(n2-m)/((m+1)^2 (m+2)); seen = n1 + n2 - m
 *   log-normal interval on the unseen part: seen + f/K to seen + f K, K = exp(z sqrt(ln(1 + variance/f^2)))
 *
 * Use the log interval: it never falls below the cases already seen. Needs independent sources, a closed population and
 * perfect matching; an inspector sent by a report makes the sources depend, and the answer too low.
 * Worked: 40, 35, 20: 41*36/21 - 1 = 69.29.
 *
 * @param inputs.firstSource n1, whole, 0 or more
 * @param inputs.secondSource n2, whole, 0 or more
 * @param inputs.both m, whole, 0 to the smaller source
 * @param inputs.confidence fraction above 0 and below 1
 * @throws DomainError on inputs outside these ranges
 * Source: Chapman 1951 [CHAPMAN51]; variance Seber 1970 [SEBER70]; log interval Chao 1989 [CHAO89]
 */
export function undetectedCases(inputs: {
  firstSource: number;
  secondSource: number;
  both: number;
  confidence: number;
}): UndetectedCases {
  const first = acceptCount('firstSource', inputs.firstSource);
  const second = acceptCount('secondSource', inputs.secondSource);
  const both = acceptCount('both', inputs.both, 0, Math.min(first, second), 'the smaller source');
  const confidence = acceptOpenFraction('confidence', inputs.confidence);
  const crossed = (first + 1) * (second + 1);
  const total = crossed / (both + 1) - 1;
  const variance = (crossed * (first - both) * (second - both)) / ((both + 1) ** 2 * (both + 2));
  const standardError = Math.sqrt(variance);
  const seen = first + second - both;
  const undetected = ((first - both) * (second - both)) / (both + 1);
  const z = twoSidedDeviate(confidence);
  const factor = undetected === 0 ? 1 : Math.exp(z * Math.sqrt(Math.log1p(variance / undetected ** 2)));
  return {
    total,
    standardError,
    seen,
    undetected,
    normalLower: total - z * standardError,
    normalUpper: total + z * standardError,
    logLower: seen + undetected / factor,
    logUpper: seen + undetected * factor,
  };
}

export const undetectedCasesCalculation = calculation({
  name: 'undetectedCases',
  room: 'sampling',
  line: 'cases nobody found, from two independent sources',
  inputs: {
    firstSource: 'cases found by the first, whole',
    secondSource: 'cases found by the second, whole',
    both: 'cases found by both, whole',
    confidence: described.confidence,
  },
  formula: '(n1+1)(n2+1)/(m+1) - 1; log interval on the unseen part',
  sources: ['CHAPMAN51', 'SEBER70', 'CHAO89'],
  call: undetectedCases,
  steps: (i, r) => [
    `${i.firstSource + 1} * ${i.secondSource + 1} / ${i.both + 1} - 1 = ${shown(r.total)}, standard error ${shown(r.standardError)}`,
    `seen ${r.seen}, unseen ${shown(r.undetected)}`,
    `all cases ${shown(r.logLower)} to ${shown(r.logUpper)}`,
  ],
});
