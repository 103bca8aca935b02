import { calculation, shown } from '../distributions/calculation.ts';
import { acceptFraction, acceptList, acceptOpenFraction, acceptPositiveFraction } from '../distributions/domain.ts';
import { countToDetect, meets } from '../distributions/target.ts';
import * as described from './inputs-described.ts';

/*
 * "Free" means: below the design prevalence. Any positive that is not refuted stops the series, and the chance of
 * introduction and the system sensitivity must speak of the same period. A missed round still discounts: give it a
 * system sensitivity of 0.
 */

/**
 * How probable is freedom after each round of negative surveillance?
 *
 *   prior_t = free_(t-1) (1 - intro_t);  free_t = prior_t / (1 - SSe_t (1 - prior_t))
 *
 * Each round is discounted by its own chance of introduction. Worked: 0.5, 1 %, SSe 0.8: 0.495 / 0.596 = 0.83054.
 *
 * @param inputs.priorFreedom probability of freedom before the first round, fraction 0 to 1
 * @param inputs.introductionProbabilities chance of introduction in each round, fractions 0 to 1
 * @param inputs.systemSensitivities sensitivity of each round's surveillance, fractions 0 to 1, as many
 * @throws DomainError on inputs outside these ranges
 * Source: Martin, Cameron and Greiner 2007 [MARTIN07]
 */
export function probabilityOfFreedomOverTime(inputs: {
  priorFreedom: number;
  introductionProbabilities: readonly number[];
  systemSensitivities: readonly number[];
}): { discountedPriors: readonly number[]; freedom: readonly number[] } {
  let free = acceptFraction('priorFreedom', inputs.priorFreedom);
  const introductions = acceptList('introductionProbabilities', inputs.introductionProbabilities, acceptFraction);
  const sensitivities = acceptList(
    'systemSensitivities',
    inputs.systemSensitivities,
    acceptFraction,
    introductions.length,
    'introductionProbabilities',
  );
  const discountedPriors: number[] = [];
  const freedom: number[] = [];
  introductions.forEach((introduction, t) => {
    const prior = free * (1 - introduction);
    free = freedomAfterNegative(prior, sensitivities[t] ?? 0);
    discountedPriors.push(prior);
    freedom.push(free);
  });
  return { discountedPriors, freedom };
}

export const probabilityOfFreedomOverTimeCalculation = calculation({
  name: 'probabilityOfFreedomOverTime',
  room: 'sampling',
  line: 'probability of freedom after each negative round',
  inputs: {
    priorFreedom: 'before the first round, fraction 0 to 1',
    introductionProbabilities: 'list: chance of introduction per round',
    systemSensitivities: 'list: sensitivity per round',
  },
  formula: 'prior_t = free_(t-1)(1 - intro_t); free_t = prior_t/(1 - SSe_t(1 - prior_t))',
  sources: ['MARTIN07'],
  call: probabilityOfFreedomOverTime,
  steps: (_, r) =>
    r.freedom.map(
      (free, t) =>
        `round ${t + 1}: discounted to ${shown(r.discountedPriors[t])}, after a negative round ${shown(free)}`,
    ),
});

/** One negative round; a prior of 0 stays 0 even when the round could not have missed anything. */
function freedomAfterNegative(prior: number, systemSensitivity: number): number {
  return prior === 0 ? 0 : prior / (1 - systemSensitivity * (1 - prior));
}

/**
 * Where does confidence settle when every round has the same sensitivity and the same chance of introduction?
 *
 *   freedom after a negative round (1 - pi/SSe) / (1 - pi), discounted prior before it 1 - pi/SSe; both 0 when pi >= SSe
 *
 * A target above the plateau is never reached: sensitivity or biosecurity must rise.
 *
 * @param inputs.introductionProbability pi, fraction 0 to 1
 * @param inputs.systemSensitivity SSe, fraction above 0, up to 1
 * @throws DomainError on inputs outside these ranges
 * Source: Martin, Cameron and Greiner 2007 [MARTIN07]
 */
export function plateauOfFreedom(inputs: { introductionProbability: number; systemSensitivity: number }): {
  discountedPrior: number;
  freedom: number;
} {
  const introduction = acceptFraction('introductionProbability', inputs.introductionProbability);
  const sensitivity = acceptPositiveFraction('systemSensitivity', inputs.systemSensitivity);
  if (introduction >= sensitivity) return { discountedPrior: 0, freedom: 0 };
  const discountedPrior = 1 - introduction / sensitivity;
  return { discountedPrior, freedom: discountedPrior / (1 - introduction) };
}

export const plateauOfFreedomCalculation = calculation({
  name: 'plateauOfFreedom',
  room: 'sampling',
  line: 'where confidence settles with constant surveillance and introduction',
  inputs: {
    introductionProbability: 'pi per round, fraction 0 to 1',
    systemSensitivity: 'SSe per round, above 0, up to 1',
  },
  formula: 'prior 1 - pi/SSe; free (1 - pi/SSe)/(1 - pi); 0 when pi >= SSe',
  sources: ['MARTIN07'],
  call: plateauOfFreedom,
  steps: (i, r) => [
    `pi/SSe = ${shown(i.introductionProbability / i.systemSensitivity)}`,
    `discounted prior ${shown(r.discountedPrior)}, after a negative round ${shown(r.freedom)}`,
  ],
});

/**
 * How sensitive must one negative round be to lift a (discounted) prior to a target probability of freedom?
 *
 *   SSe = (1 - prior/target) / (1 - prior); 0 when the prior already meets the target
 *
 * @param inputs.prior discounted prior, fraction 0 to 1
 * @param inputs.targetFreedom fraction above 0, up to 1
 * @throws DomainError on inputs outside these ranges
 * Source: Martin, Cameron and Greiner 2007 [MARTIN07]
 */
export function sensitivityNeededForFreedom(inputs: { prior: number; targetFreedom: number }): {
  systemSensitivity: number;
} {
  const prior = acceptFraction('prior', inputs.prior);
  const target = acceptPositiveFraction('targetFreedom', inputs.targetFreedom);
  return { systemSensitivity: prior >= target ? 0 : (1 - prior / target) / (1 - prior) };
}

export const sensitivityNeededForFreedomCalculation = calculation({
  name: 'sensitivityNeededForFreedom',
  room: 'sampling',
  line: 'sensitivity one negative round needs to reach a target',
  inputs: { prior: 'discounted prior, fraction 0 to 1', targetFreedom: 'target, above 0, up to 1' },
  formula: '(1 - prior/target)/(1 - prior), 0 when already reached',
  sources: ['MARTIN07'],
  call: sensitivityNeededForFreedom,
  steps: (i, r) => [
    `1 - prior/target = ${shown(1 - i.prior / i.targetFreedom)}`,
    `divided by ${shown(1 - i.prior)}: ${shown(r.systemSensitivity)}`,
  ],
});

/**
 * How many negative rounds in a row until the probability of freedom first reaches the target?
 *
 * Written in odds of being infected, o = (1 - free)/free, one round is o -> a (o + pi) with a = (1 - SSe)/(1 - pi), so
 * the count has a closed form; it is checked against the recursion at its neighbours. At least one round is counted.
 *
 * @param inputs.priorFreedom fraction above 0, up to 1, before the first discount
 * @param inputs.introductionProbability pi per round, fraction 0 to 1
 * @param inputs.systemSensitivity SSe per round, fraction above 0, up to 1
 * @param inputs.targetFreedom fraction above 0 and below 1
 * @returns the count, or null when the plateau lies below the target
 * @throws DomainError on inputs outside these ranges
 * Source: Martin, Cameron and Greiner 2007 [MARTIN07]; the closed form is our arithmetic
 */
export function negativeRoundsNeeded(inputs: {
  priorFreedom: number;
  introductionProbability: number;
  systemSensitivity: number;
  targetFreedom: number;
}): { rounds: number | null } {
  const prior = acceptPositiveFraction('priorFreedom', inputs.priorFreedom);
  const introduction = acceptFraction('introductionProbability', inputs.introductionProbability);
  const sensitivity = acceptPositiveFraction('systemSensitivity', inputs.systemSensitivity);
  const target = acceptOpenFraction('targetFreedom', inputs.targetFreedom);
  if (introduction === 1) return { rounds: null };
  const shrink = (1 - sensitivity) / (1 - introduction);
  const start = (1 - prior) / prior;
  const oddsAfter = (t: number) => {
    if (shrink === 1) return start + t * introduction;
    const settled = (shrink * introduction) / (1 - shrink);
    return settled + shrink ** t * (start - settled);
  };
  const reached = (t: number) => meets(1 / (1 + oddsAfter(t)), target);
  if (reached(1)) return { rounds: 1 };
  if (shrink >= 1) return { rounds: null };
  const settled = (shrink * introduction) / (1 - shrink);
  const wanted = (1 - target) / target;
  if (settled >= wanted || start <= settled) return { rounds: null };
  let t = Math.max(1, Math.ceil(Math.log((wanted - settled) / (start - settled)) / Math.log(shrink)));
  while (t > 1 && reached(t - 1)) t -= 1;
  while (!reached(t)) t += 1;
  return { rounds: t };
}

export const negativeRoundsNeededCalculation = calculation({
  name: 'negativeRoundsNeeded',
  room: 'sampling',
  line: 'negative rounds in a row until a target is reached',
  inputs: {
    priorFreedom: 'before the first discount, above 0, up to 1',
    introductionProbability: 'pi per round, fraction 0 to 1',
    systemSensitivity: 'SSe per round, above 0, up to 1',
    targetFreedom: 'target, above 0 and below 1',
  },
  formula:
    'odds of infection o -> (1 - SSe)(o + pi)/(1 - pi) until 1/(1 + o) reaches the target; null above the plateau',
  sources: ['MARTIN07'],
  call: negativeRoundsNeeded,
  steps: (i, r) => [
    `plateau ${shown(plateauOfFreedom(i).freedom)}`,
    `rounds until ${i.targetFreedom}: ${shown(r.rounds)}`,
  ],
});

/**
 * How many units must be tested so that one negative survey lifts the probability of freedom to the target?
 *
 *   discount the prior, find the sensitivity needed, then the large-population sample size for it
 *
 * Worked: prior 0.5, introduction 1 %, design prevalence 5 %, Se 0.9, target 0.95: 65.
 *
 * @param inputs.priorFreedom fraction 0 to 1, before the discount
 * @param inputs.introductionProbability fraction 0 to 1
 * @param inputs.designPrevalence P, fraction above 0, up to 1
 * @param inputs.targetFreedom fraction above 0 and below 1
 * @param inputs.sensitivity Se of one test, fraction above 0, up to 1
 * @returns the discounted prior, the survey sensitivity needed, and the size (null when the prior is 0)
 * @throws DomainError on inputs outside these ranges
 * Source: Martin, Cameron and Greiner 2007 [MARTIN07]
 */
export function sampleSizeForFreedom(inputs: {
  priorFreedom: number;
  introductionProbability: number;
  designPrevalence: number;
  targetFreedom: number;
  sensitivity: number;
}): { discountedPrior: number; systemSensitivity: number; sampleSize: number | null } {
  const prior = acceptFraction('priorFreedom', inputs.priorFreedom);
  const introduction = acceptFraction('introductionProbability', inputs.introductionProbability);
  const prevalence = acceptPositiveFraction('designPrevalence', inputs.designPrevalence);
  const targetFreedom = acceptOpenFraction('targetFreedom', inputs.targetFreedom);
  const sensitivity = acceptPositiveFraction('sensitivity', inputs.sensitivity);
  const discountedPrior = prior * (1 - introduction);
  const { systemSensitivity } = sensitivityNeededForFreedom({ prior: discountedPrior, targetFreedom });
  const logMiss = Math.log1p(-prevalence * sensitivity);
  const certain = logMiss === Number.NEGATIVE_INFINITY;
  return {
    discountedPrior,
    systemSensitivity,
    sampleSize: systemSensitivity >= 1 && !certain ? null : countToDetect(logMiss, systemSensitivity),
  };
}

export const sampleSizeForFreedomCalculation = calculation({
  name: 'sampleSizeForFreedom',
  room: 'sampling',
  line: 'sample size so that one negative survey reaches a target of freedom',
  inputs: {
    priorFreedom: 'before the discount, fraction 0 to 1',
    introductionProbability: 'fraction 0 to 1',
    designPrevalence: described.designPrevalence,
    targetFreedom: 'target, above 0 and below 1',
    sensitivity: `${described.sensitivity}, above 0`,
  },
  formula: 'discount the prior, sensitivity needed, large-population sample size for it',
  sources: ['MARTIN07'],
  call: sampleSizeForFreedom,
  steps: (_, r) => [
    `discounted prior ${shown(r.discountedPrior)}`,
    `survey sensitivity needed ${shown(r.systemSensitivity)}`,
    `sample size ${shown(r.sampleSize)}`,
  ],
});
