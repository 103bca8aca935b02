import { calculation, shown } from '../distributions/calculation.ts';
import { acceptCount, acceptOpenFraction, acceptPositiveFraction } from '../distributions/domain.ts';
import * as described from './inputs-described.ts';

/**
 * What did finding none tell? The largest prevalence still compatible with n negatives, at the given confidence.
 *
 *   P = (1 - (1 - C)^(1/n)) / Se, at most 1; about 3/n for a perfect test and 95 % (the rule of three)
 *
 * Very large population, perfect specificity, one-sided. Not "0 %": worked, 60 of 60 negative leave 4.9 %.
 *
 * @param inputs.tested n, whole, 1 or more
 * @param inputs.confidence C, fraction above 0 and below 1
 * @param inputs.sensitivity Se, fraction above 0, up to 1
 * @throws DomainError on inputs outside these ranges
 * Source: Cannon and Roe 1982 [CANNON82]
 */
export function upperPrevalenceAfterAllNegative(inputs: { tested: number; confidence: number; sensitivity: number }): {
  prevalence: number;
} {
  const tested = acceptCount('tested', inputs.tested, 1);
  const confidence = acceptOpenFraction('confidence', inputs.confidence);
  const sensitivity = acceptPositiveFraction('sensitivity', inputs.sensitivity);
  return { prevalence: Math.min(1, -Math.expm1(Math.log1p(-confidence) / tested) / sensitivity) };
}

export const upperPrevalenceAfterAllNegativeCalculation = calculation({
  name: 'upperPrevalenceAfterAllNegative',
  room: 'sampling',
  line: 'largest prevalence still possible after n negatives',
  inputs: {
    tested: `${described.tested}, 1 or more`,
    confidence: described.confidence,
    sensitivity: `${described.sensitivity}, above 0`,
  },
  formula: '(1 - (1 - C)^(1/n)) / Se, at most 1',
  sources: ['CANNON82'],
  call: upperPrevalenceAfterAllNegative,
  steps: (i, r) => [
    `1 - (1 - C)^(1/${i.tested}) = ${shown(1 - (1 - i.confidence) ** (1 / i.tested))}`,
    `divided by Se ${i.sensitivity}, at most 1: ${shown(r.prevalence)}`,
  ],
});
