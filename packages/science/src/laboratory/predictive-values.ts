import { calculation, shown } from '../distributions/calculation.ts';
import { acceptFraction, acceptList, acceptNonNegative, acceptOpenFraction } from '../distributions/domain.ts';

/** What a result means for the unit at hand; null where undefined. */
export interface PredictiveValues {
  readonly positivePredictiveValue: number | null;
  readonly negativePredictiveValue: number | null;
  readonly likelihoodRatioPositive: number | null;
  readonly likelihoodRatioNegative: number | null;
}

/**
 * What does a positive or a negative result mean for the colony at hand?
 *
 *   PPV = P Se / (P Se + (1-P)(1-Sp)); NPV = (1-P) Sp / ((1-P) Sp + P (1-Se))
 *   LR+ = Se/(1-Sp) (null, that is infinite, when Sp = 1); LR- = (1-Se)/Sp (null when Sp = 0)
 *
 * The prevalence is that of colonies like this one, not of the country. A specificity of 1 from a small study must not be
 * taken literally: at 1 % prevalence, Se 0.984 and Sp 0.99 give a PPV of 0.498.
 *
 * @param inputs.sensitivity Se, fraction 0 to 1
 * @param inputs.specificity Sp, fraction 0 to 1
 * @param inputs.prevalence P, fraction 0 to 1
 * @throws DomainError on inputs outside these ranges
 * Source: Dohoo, Martin and Stryhn 2003 [DOHOO03]
 */
export function predictiveValues(inputs: {
  sensitivity: number;
  specificity: number;
  prevalence: number;
}): PredictiveValues {
  const se = acceptFraction('sensitivity', inputs.sensitivity);
  const sp = acceptFraction('specificity', inputs.specificity);
  const p = acceptFraction('prevalence', inputs.prevalence);
  const share = (part: number, other: number) => (part + other === 0 ? null : part / (part + other));
  const ratio = (top: number, bottom: number) => (bottom === 0 ? null : top / bottom);
  return {
    positivePredictiveValue: share(p * se, (1 - p) * (1 - sp)),
    negativePredictiveValue: share((1 - p) * sp, p * (1 - se)),
    likelihoodRatioPositive: ratio(se, 1 - sp),
    likelihoodRatioNegative: ratio(1 - se, sp),
  };
}

export const predictiveValuesCalculation = calculation({
  name: 'predictiveValues',
  room: 'laboratory',
  line: 'what a positive or a negative result means at a prevalence',
  inputs: {
    sensitivity: 'Se, fraction 0 to 1',
    specificity: 'Sp, fraction 0 to 1',
    prevalence: 'among units like this one',
  },
  formula: 'PPV = P Se/(P Se + (1-P)(1-Sp)); NPV = (1-P)Sp/((1-P)Sp + P(1-Se)); LR+ = Se/(1-Sp); LR- = (1-Se)/Sp',
  sources: ['DOHOO03'],
  call: predictiveValues,
  steps: (i, r) => [
    `true positives ${shown(i.prevalence * i.sensitivity)}, false positives ${shown((1 - i.prevalence) * (1 - i.specificity))}: PPV ${shown(r.positivePredictiveValue)}`,
    `true negatives ${shown((1 - i.prevalence) * i.specificity)}, false negatives ${shown(i.prevalence * (1 - i.sensitivity))}: NPV ${shown(r.negativePredictiveValue)}`,
    `LR+ ${shown(r.likelihoodRatioPositive)}, LR- ${shown(r.likelihoodRatioNegative)}`,
  ],
});

/**
 * How probable is disease after several findings, each with its likelihood ratio?
 *
 *   posterior odds = prior odds times the product of the likelihood ratios
 *
 * Only for findings independent given status. Worked: prior 0.1, LR 9: 0.5.
 *
 * @param inputs.priorProbability fraction above 0 and below 1
 * @param inputs.likelihoodRatios numbers of 0 or more
 * @throws DomainError on inputs outside these ranges
 * Source: Dohoo, Martin and Stryhn 2003 [DOHOO03]
 */
export function postTestProbability(inputs: { priorProbability: number; likelihoodRatios: readonly number[] }): {
  probability: number;
} {
  const prior = acceptOpenFraction('priorProbability', inputs.priorProbability);
  const ratios = acceptList('likelihoodRatios', inputs.likelihoodRatios, acceptNonNegative);
  // In logarithms, so that many small or large ratios neither vanish nor overflow.
  const logOdds = Math.log(prior) - Math.log1p(-prior) + ratios.reduce((sum, ratio) => sum + Math.log(ratio), 0);
  return { probability: 1 / (1 + Math.exp(-logOdds)) };
}

export const postTestProbabilityCalculation = calculation({
  name: 'postTestProbability',
  room: 'laboratory',
  line: 'probability after several independent findings, by likelihood ratios',
  inputs: { priorProbability: 'above 0 and below 1', likelihoodRatios: 'list of numbers, 0 or more' },
  formula: 'posterior odds = prior odds * product of the ratios',
  sources: ['DOHOO03'],
  call: postTestProbability,
  steps: (i, r) => [
    `prior odds ${shown(i.priorProbability / (1 - i.priorProbability))}, times ${shown(i.likelihoodRatios.reduce((a, b) => a * b, 1))}`,
    `probability ${shown(r.probability)}`,
  ],
});
