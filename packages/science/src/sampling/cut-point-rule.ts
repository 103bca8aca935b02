import { binomialLowerTail, binomialUpperTail } from '../distributions/binomial.ts';
import { calculation, shown } from '../distributions/calculation.ts';
import { acceptCount, acceptFraction } from '../distributions/domain.ts';
import { probabilityOfFewPositives } from '../distributions/hypergeometric.ts';
import type { Probability } from './detection-probability.ts';
import * as described from './inputs-described.ts';

/** How well a rule "infected when c or more are positive" tells infected from free populations. */
export interface ClusterAccuracy {
  readonly clusterSensitivity: number;
  readonly clusterSpecificity: number;
}

/**
 * How sensitive and how specific is the rule "call it infected when at least c of the n tested are positive", for a
 * population of N units with d infected and an imperfect test?
 *
 *   sensitivity  P(positives >= c): y infected among the n (hypergeometric), positives Binomial(y, Se) + Binomial(n-y, 1-Sp)
 *   specificity  P(Binomial(n, 1 - Sp) < c), since each uninfected unit is falsely positive independently
 *
 * Worked: 30 of 150, 15 infected, c = 2, Se 0.9, Sp 0.98: 0.871 and 0.879.
 *
 * @param inputs.populationSize N, whole, 1 or more
 * @param inputs.infectedUnits d, whole, 0 to N
 * @param inputs.tested n, whole, 1 to N
 * @param inputs.cutPoint c, smallest number of positives called infected, whole, 1 to n
 * @param inputs.sensitivity Se, fraction 0 to 1
 * @param inputs.specificity Sp, fraction 0 to 1
 * @throws DomainError on inputs outside these ranges
 * Source: Cameron and Baldock 1998 [CAMERON98]; Martin, Shoukri and Thorburn 1992 [MARTIN92]
 */
export function cutPointRuleFinitePopulation(inputs: {
  populationSize: number;
  infectedUnits: number;
  tested: number;
  cutPoint: number;
  sensitivity: number;
  specificity: number;
}): ClusterAccuracy {
  const size = acceptCount('populationSize', inputs.populationSize, 1);
  const infected = acceptCount('infectedUnits', inputs.infectedUnits, 0, size, 'populationSize');
  const tested = acceptCount('tested', inputs.tested, 1, size, 'populationSize');
  const { cutPoint, sensitivity, falsePositive } = acceptRule(inputs, tested);
  return {
    clusterSensitivity: 1 - probabilityOfFewPositives(cutPoint - 1, size, infected, tested, sensitivity, falsePositive),
    clusterSpecificity: binomialLowerTail(cutPoint - 1, tested, falsePositive),
  };
}

export const cutPointRuleFinitePopulationCalculation = calculation({
  name: 'cutPointRuleFinitePopulation',
  room: 'sampling',
  line: 'sensitivity and specificity of "infected at c or more positives", N units',
  inputs: {
    populationSize: described.populationSize,
    infectedUnits: described.infectedUnits,
    tested: `${described.tested}, up to N`,
    cutPoint: described.cutPoint,
    sensitivity: described.sensitivity,
    specificity: described.specificity,
  },
  formula: 'Se: P(Bin(y, Se) + Bin(n-y, 1-Sp) >= c), y hypergeometric; Sp: P(Bin(n, 1-Sp) < c)',
  sources: ['CAMERON98', 'MARTIN92'],
  call: cutPointRuleFinitePopulation,
  steps: (i, r) => [
    `infected population: ${i.cutPoint} or more of ${i.tested} positive with chance ${shown(r.clusterSensitivity)}`,
    `free population: fewer than ${i.cutPoint} with chance ${shown(r.clusterSpecificity)}`,
  ],
});

/**
 * The same for a very large population: positives are Binomial(n, AP) with AP = P Se + (1 - P)(1 - Sp).
 * Not the prevalence in the place of AP: one manual does that and reads 0.996 for a right value of 0.955.
 *
 * @param inputs.designPrevalence P, fraction 0 to 1; `tested` whole, 1 or more; the rest as for the finite form
 * @throws DomainError on inputs outside these ranges
 * Source: Martin, Shoukri and Thorburn 1992 [MARTIN92]
 */
export function cutPointRuleLargePopulation(inputs: {
  designPrevalence: number;
  tested: number;
  cutPoint: number;
  sensitivity: number;
  specificity: number;
}): ClusterAccuracy {
  const prevalence = acceptFraction('designPrevalence', inputs.designPrevalence);
  const tested = acceptCount('tested', inputs.tested, 1);
  const { cutPoint, sensitivity, falsePositive } = acceptRule(inputs, tested);
  const apparent = prevalence * sensitivity + (1 - prevalence) * falsePositive;
  return {
    clusterSensitivity: binomialUpperTail(cutPoint, tested, apparent),
    clusterSpecificity: binomialLowerTail(cutPoint - 1, tested, falsePositive),
  };
}

export const cutPointRuleLargePopulationCalculation = calculation({
  name: 'cutPointRuleLargePopulation',
  room: 'sampling',
  line: 'sensitivity and specificity of "infected at c or more positives", very large population',
  inputs: {
    designPrevalence: described.designPrevalence,
    tested: described.tested,
    cutPoint: described.cutPoint,
    sensitivity: described.sensitivity,
    specificity: described.specificity,
  },
  formula: 'AP = P Se + (1-P)(1-Sp); Se P(Bin(n, AP) >= c); Sp P(Bin(n, 1-Sp) < c)',
  sources: ['MARTIN92'],
  call: cutPointRuleLargePopulation,
  steps: (i, r) => [
    `AP = ${shown(i.designPrevalence * i.sensitivity + (1 - i.designPrevalence) * (1 - i.specificity))}`,
    `sensitivity ${shown(r.clusterSensitivity)}, specificity ${shown(r.clusterSpecificity)}`,
  ],
});

/**
 * How likely are so few positives (x or fewer of n) if the population really is infected at the design level? The
 * p-value of "infected at or above the design prevalence".
 *
 * Worked: 1 positive of 40 tested, N = 100, d = 10, Se 0.9, Sp 0.98: 0.034.
 *
 * @param inputs.positives x, whole, 0 to n; the rest as for `cutPointRuleFinitePopulation`
 * @throws DomainError on inputs outside these ranges
 * Source: Cameron and Baldock 1998 [CAMERON98]
 */
export function probabilityOfSoFewPositivesIfInfected(inputs: {
  populationSize: number;
  infectedUnits: number;
  tested: number;
  positives: number;
  sensitivity: number;
  specificity: number;
}): Probability {
  const size = acceptCount('populationSize', inputs.populationSize, 1);
  const infected = acceptCount('infectedUnits', inputs.infectedUnits, 0, size, 'populationSize');
  const tested = acceptCount('tested', inputs.tested, 1, size, 'populationSize');
  const positives = acceptCount('positives', inputs.positives, 0, tested, 'tested');
  const sensitivity = acceptFraction('sensitivity', inputs.sensitivity);
  const falsePositive = 1 - acceptFraction('specificity', inputs.specificity);
  return { probability: probabilityOfFewPositives(positives, size, infected, tested, sensitivity, falsePositive) };
}

export const probabilityOfSoFewPositivesIfInfectedCalculation = calculation({
  name: 'probabilityOfSoFewPositivesIfInfected',
  room: 'sampling',
  line: 'chance of so few positives if the population were infected at the design level',
  inputs: {
    populationSize: described.populationSize,
    infectedUnits: described.infectedUnits,
    tested: `${described.tested}, up to N`,
    positives: described.positives,
    sensitivity: described.sensitivity,
    specificity: described.specificity,
  },
  formula: 'P(Bin(y, Se) + Bin(n-y, 1-Sp) <= x), y hypergeometric',
  sources: ['CAMERON98'],
  call: probabilityOfSoFewPositivesIfInfected,
  steps: (i, r) => [
    `${i.positives} or fewer of ${i.tested} positive, were ${i.infectedUnits} of ${i.populationSize} infected: ${shown(r.probability)}`,
  ],
});

function acceptRule(inputs: { cutPoint: number; sensitivity: number; specificity: number }, tested: number) {
  return {
    cutPoint: acceptCount('cutPoint', inputs.cutPoint, 1, tested, 'tested'),
    sensitivity: acceptFraction('sensitivity', inputs.sensitivity),
    falsePositive: 1 - acceptFraction('specificity', inputs.specificity),
  };
}
