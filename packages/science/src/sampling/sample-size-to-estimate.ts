import { calculation, shown } from '../distributions/calculation.ts';
import { acceptCount, acceptFraction, acceptNumber, acceptOpenFraction, isUnknown } from '../distributions/domain.ts';
import { twoSidedDeviate } from '../distributions/normal.ts';
import { guardedCeil } from '../distributions/target.ts';
import * as described from './inputs-described.ts';
import { acceptTest } from './true-prevalence.ts';

/**
 * How many units must be tested to estimate a prevalence to within an absolute margin?
 *
 *   AP = P Se + (1-P)(1-Sp); n0 = (z/e)^2 AP(1-AP) / (Se+Sp-1)^2; finite: n0 N / (n0 + N - 1); rounded up
 *
 * The margin is absolute (0.03 is 3 percentage points), not relative. Colonies of one apiary are alike: a design effect
 * D = 1 + (k-1) rho multiplies the rounded n. Worked: P 15 %, margin 3 points, 95 %, perfect test: 545.
 *
 * @param inputs.populationSize N, whole, 1 or more, or null when very large
 * @param inputs.expectedPrevalence P, fraction 0 to 1
 * @param inputs.margin e, fraction above 0 and below 1
 * @param inputs.sensitivity Se; `specificity` Sp; fractions 0 to 1, together above 1
 * @param inputs.confidence fraction above 0 and below 1
 * @param inputs.designEffect D, 1 or more, or null for none
 * @returns the size, and the size times the design effect (null without one)
 * @throws DomainError on inputs outside these ranges
 * Source: Humphry, Cameron and Gunn 2004 [HUMPHRY04]
 */
export function sampleSizeToEstimate(inputs: {
  populationSize: number | null;
  expectedPrevalence: number;
  margin: number;
  sensitivity: number;
  specificity: number;
  confidence: number;
  designEffect: number | null;
}): { sampleSize: number; withDesignEffect: number | null } {
  const prevalence = acceptFraction('expectedPrevalence', inputs.expectedPrevalence);
  const margin = acceptOpenFraction('margin', inputs.margin);
  const { sensitivity, specificity } = acceptTest(inputs);
  const confidence = acceptOpenFraction('confidence', inputs.confidence);
  const apparent = prevalence * sensitivity + (1 - prevalence) * (1 - specificity);
  const z = twoSidedDeviate(confidence);
  const large = ((z / margin) ** 2 * apparent * (1 - apparent)) / (sensitivity + specificity - 1) ** 2;
  let needed = large;
  if (!isUnknown(inputs.populationSize)) {
    const N = acceptCount('populationSize', inputs.populationSize, 1);
    needed = large === 0 ? 0 : (large * N) / (large + N - 1);
  }
  const sampleSize = Math.max(1, guardedCeil(needed));
  if (isUnknown(inputs.designEffect)) return { sampleSize, withDesignEffect: null };
  const effect = acceptNumber('designEffect', inputs.designEffect, 'a number of 1 or more', (v) => v >= 1);
  return { sampleSize, withDesignEffect: guardedCeil(sampleSize * effect) };
}

export const sampleSizeToEstimateCalculation = calculation({
  name: 'sampleSizeToEstimate',
  room: 'sampling',
  line: 'how many units to test to estimate a prevalence within a margin',
  inputs: {
    populationSize: described.populationSizeOrNull,
    expectedPrevalence: 'expected prevalence, fraction 0 to 1',
    margin: 'absolute margin e, fraction above 0 and below 1',
    sensitivity: described.sensitivity,
    specificity: `${described.specificity}; Se + Sp above 1`,
    confidence: described.confidence,
    designEffect: 'design effect, 1 or more, or null',
  },
  formula: 'AP = P Se + (1-P)(1-Sp); n0 = (z/e)^2 AP(1-AP)/(Se+Sp-1)^2; finite n0 N/(n0+N-1); rounded up, times D',
  sources: ['HUMPHRY04'],
  call: sampleSizeToEstimate,
  steps: (i, r) => [
    `AP = ${shown(i.expectedPrevalence * i.sensitivity + (1 - i.expectedPrevalence) * (1 - i.specificity))}, z = ${shown(twoSidedDeviate(i.confidence))}`,
    `rounded up: ${r.sampleSize}`,
    `with design effect ${shown(i.designEffect)}: ${shown(r.withDesignEffect)}`,
  ],
});
