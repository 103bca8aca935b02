import { calculation, shown } from '../distributions/calculation.ts';
import { acceptFields, acceptFraction, acceptWord, DomainError } from '../distributions/domain.ts';

/** A fraction with the band it may lie in; all three from 0 to 1, in order. */
export interface Band {
  low: number;
  value: number;
  high: number;
}

/**
 * What does this result mean for the colony at hand, when neither the test nor the prior is known exactly?
 *
 *   positive: P Se / (P Se + (1-P)(1-Sp));  negative: P (1-Se) / (P (1-Se) + (1-P) Sp)
 *
 * Each is monotone in P, Se and Sp, so the ends of the answer come from the ends of the bands: the widest honest answer.
 * Null at an end where the result could not have happened. A posterior is not a diagnosis and confirms no case.
 *
 * @param inputs.result "positive" or "negative"
 * @param inputs.prior chance of disease in this colony before the test, as a band
 * @param inputs.sensitivity Se as a band
 * @param inputs.specificity Sp as a band
 * @throws DomainError on inputs outside 0 to 1 or out of order
 * Source: Bayes' theorem; Dohoo, Martin and Stryhn 2003 [DOHOO03]
 */
export function meaningOfResult(inputs: {
  result: 'positive' | 'negative';
  prior: Band;
  sensitivity: Band;
  specificity: Band;
}): { probability: number | null; low: number | null; high: number | null } {
  const result = acceptWord('result', inputs.result, ['positive', 'negative']);
  const prior = acceptBand('prior', inputs.prior);
  const se = acceptBand('sensitivity', inputs.sensitivity);
  const sp = acceptBand('specificity', inputs.specificity);
  const posterior = (p: number, sensitivity: number, specificity: number) => {
    const sick = p * (result === 'positive' ? sensitivity : 1 - sensitivity);
    const well = (1 - p) * (result === 'positive' ? 1 - specificity : specificity);
    return sick + well === 0 ? null : sick / (sick + well);
  };
  const probability = posterior(prior.value, se.value, sp.value);
  return result === 'positive'
    ? { probability, low: posterior(prior.low, se.low, sp.low), high: posterior(prior.high, se.high, sp.high) }
    : { probability, low: posterior(prior.low, se.high, sp.high), high: posterior(prior.high, se.low, sp.low) };
}

const bandDescribed = '{low, value, high}, fractions 0 to 1 in order';

export const meaningOfResultCalculation = calculation({
  name: 'meaningOfResult',
  room: 'laboratory',
  line: 'what this result means for this colony, with bands for what is not known exactly',
  inputs: {
    result: '"positive" or "negative"',
    prior: bandDescribed,
    sensitivity: bandDescribed,
    specificity: bandDescribed,
  },
  formula: "Bayes' theorem at the ends of the bands",
  sources: ['DOHOO03'],
  call: meaningOfResult,
  steps: (i, r) => [
    `prior ${shown(i.prior.value)} (${shown(i.prior.low)} to ${shown(i.prior.high)})`,
    `after a ${i.result} result ${shown(r.probability)} (${shown(r.low)} to ${shown(r.high)})`,
  ],
});

function acceptBand(field: string, given: unknown): Band {
  const fields = acceptFields(field, given);
  const low = acceptFraction(`${field}.low`, fields.low);
  const value = acceptFraction(`${field}.value`, fields.value);
  const high = acceptFraction(`${field}.high`, fields.high);
  if (low > value || value > high) throw new DomainError(field, 'a band with low, value and high in order', given);
  return { low, value, high };
}
