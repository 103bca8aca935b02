import { calculation, shown, shownList } from '../distributions/calculation.ts';
import {
  acceptCount,
  acceptFraction,
  acceptList,
  acceptOpenFraction,
  acceptPositive,
  acceptPositiveFraction,
  acceptShares,
  DomainError,
  isUnknown,
} from '../distributions/domain.ts';
import { countToDetect, guardedCeil } from '../distributions/target.ts';
import * as described from './inputs-described.ts';

/** What risk-based sampling sees, stratum by stratum. */
export interface RiskBasedSensitivity {
  /** Relative risks rescaled so that their population-weighted mean is 1. */
  readonly adjustedRisks: readonly number[];
  /** Chance that a unit of the stratum is infected: design prevalence times adjusted risk. */
  readonly infectionProbabilities: readonly number[];
  /** Chance that the whole sample finds at least one infected unit. */
  readonly sensitivity: number;
}

/**
 * How sensitive is a survey that samples strata of different risk?
 *
 *   AR_i = RR_i / sum(RR_j share_j), EPI_i = P AR_i
 *   large strata:  1 - prod((1 - Se EPI_i)^n_i)
 *   known sizes:   1 - prod((1 - Se n_i/N_i)^(EPI_i N_i)), the shares from the sizes
 *
 * Shares are of the population, never of the sample. All risks 1 gives simple random sampling.
 * Worked: RR 5, 3, 1, shares 0.1, 0.1, 0.8, 5 from each, P = 10 %, Se 0.9: 0.943.
 *
 * @param inputs.relativeRisks RR_i, each above 0
 * @param inputs.populationShares share of the population in each stratum, adding up to 1; give these or the sizes
 * @param inputs.stratumSizes N_i, whole, 1 or more; give these or the shares
 * @param inputs.tested n_i, whole, 0 or more, not above N_i when sizes are known
 * @param inputs.designPrevalence P, fraction above 0, up to 1
 * @param inputs.sensitivity Se, fraction 0 to 1
 * @throws DomainError on inputs outside these ranges, and when P AR exceeds 1 in a stratum (the inputs contradict)
 * Source: Martin, Cameron and Greiner 2007 [MARTIN07]; epiR 2.0.57 manual [EPIR]
 */
export function riskBasedSensitivity(inputs: {
  relativeRisks: readonly number[];
  populationShares?: readonly number[] | null;
  stratumSizes?: readonly number[] | null;
  tested: readonly number[];
  designPrevalence: number;
  sensitivity: number;
}): RiskBasedSensitivity {
  const risks = acceptList('relativeRisks', inputs.relativeRisks, acceptPositive);
  const tested = acceptList(
    'tested',
    inputs.tested,
    (name, value) => acceptCount(name, value),
    risks.length,
    'relativeRisks',
  );
  const prevalence = acceptPositiveFraction('designPrevalence', inputs.designPrevalence);
  const sensitivity = acceptFraction('sensitivity', inputs.sensitivity);
  if (isUnknown(inputs.populationShares) === isUnknown(inputs.stratumSizes)) {
    throw new DomainError('populationShares', 'given, or else stratumSizes, but not both', inputs.populationShares);
  }
  if (isUnknown(inputs.stratumSizes)) {
    const shares = acceptShares('populationShares', inputs.populationShares, risks.length, 'relativeRisks');
    const { adjustedRisks, infectionProbabilities } = adjust(risks, shares, prevalence);
    const logMiss = tested.reduce(
      (sum, n, i) => sum + logPower(1 - sensitivity * (infectionProbabilities[i] ?? 0), n),
      0,
    );
    return { adjustedRisks, infectionProbabilities, sensitivity: -Math.expm1(logMiss) };
  }
  const sizes = acceptList(
    'stratumSizes',
    inputs.stratumSizes,
    (name, value) => acceptCount(name, value, 1),
    risks.length,
    'relativeRisks',
  );
  tested.forEach((n, i) => {
    acceptCount(`tested[${i}]`, n, 0, sizes[i] as number, `stratumSizes[${i}]`);
  });
  const all = sizes.reduce((a, b) => a + b, 0);
  const { adjustedRisks, infectionProbabilities } = adjust(
    risks,
    sizes.map((size) => size / all),
    prevalence,
  );
  const logMiss = tested.reduce((sum, n, i) => {
    const size = sizes[i] as number;
    return sum + logPower(1 - (sensitivity * n) / size, (infectionProbabilities[i] ?? 0) * size);
  }, 0);
  return { adjustedRisks, infectionProbabilities, sensitivity: -Math.expm1(logMiss) };
}

export const riskBasedSensitivityCalculation = calculation({
  name: 'riskBasedSensitivity',
  room: 'sampling',
  line: 'sensitivity of a survey over strata of different risk',
  inputs: {
    relativeRisks: 'list: relative risk per stratum, above 0',
    populationShares: 'list: share of the population per stratum, adding up to 1; these or the sizes',
    stratumSizes: 'list: units per stratum, whole; these or the shares',
    tested: 'list: units tested per stratum',
    designPrevalence: described.designPrevalence,
    sensitivity: described.sensitivity,
  },
  formula: 'EPI = P RR/sum(RR share); 1 - prod((1 - Se EPI)^n) or 1 - prod((1 - Se n/N)^(EPI N))',
  sources: ['MARTIN07', 'EPIR'],
  call: riskBasedSensitivity,
  steps: (_, r) => [
    `adjusted risks ${shownList(r.adjustedRisks)}`,
    `infection probabilities ${shownList(r.infectionProbabilities)}`,
    `sensitivity ${shown(r.sensitivity)}`,
  ],
});

/** log(base^exponent), with 0^0 = 1. */
const logPower = (base: number, exponent: number) => (exponent === 0 ? 0 : exponent * Math.log(Math.max(0, base)));

function adjust(risks: readonly number[], shares: readonly number[], prevalence: number) {
  const mean = risks.reduce((sum, risk, i) => sum + risk * (shares[i] ?? 0), 0);
  const adjustedRisks = risks.map((risk) => risk / mean);
  const infectionProbabilities = adjustedRisks.map((risk, i) =>
    acceptInfection(`relativeRisks[${i}]`, prevalence * risk),
  );
  return { adjustedRisks, infectionProbabilities };
}

/** Refuses an infection probability above 1: then the risk and the design prevalence contradict each other. */
function acceptInfection(field: string, probability: number): number {
  if (!(probability <= 1 + 1e-12)) {
    throw new DomainError(
      field,
      'small enough that the stratum is infected with a chance of at most 1 (design prevalence times adjusted risk)',
      probability,
    );
  }
  return Math.min(1, probability);
}

/**
 * How many units for a wanted confidence when the sample is split over strata of different risk?
 *
 *   n = ceil(ln(1 - C) / ln(1 - Se sum(EPI_i s_i))), split as ceil(n s_i) for each stratum but the last
 *
 * The last stratum gets what is left, which may be nothing. Worked: RR 5, 3, 1, P = 1 %: 147 = 59 + 59 + 29.
 *
 * @param inputs.populationShares share of the population per stratum, adding up to 1
 * @param inputs.sampleShares s_i, share of the sample per stratum, adding up to 1
 * @param inputs.confidence C, fraction above 0 and below 1
 * @param inputs.sensitivity Se, fraction above 0, up to 1; the rest as for `riskBasedSensitivity`
 * @returns total and per stratum; null when the sampled strata hold no risk
 * @throws DomainError on inputs outside these ranges
 * Source: Martin, Cameron and Greiner 2007 [MARTIN07]; epiR 2.0.57 manual [EPIR]
 */
export function riskBasedSampleSize(inputs: {
  relativeRisks: readonly number[];
  populationShares: readonly number[];
  sampleShares: readonly number[];
  designPrevalence: number;
  confidence: number;
  sensitivity: number;
}): { total: number | null; perStratum: readonly number[] | null } {
  const risks = acceptList('relativeRisks', inputs.relativeRisks, acceptPositive);
  const shares = acceptShares('populationShares', inputs.populationShares, risks.length, 'relativeRisks');
  const sampleShares = acceptShares('sampleShares', inputs.sampleShares, risks.length, 'relativeRisks');
  const prevalence = acceptPositiveFraction('designPrevalence', inputs.designPrevalence);
  const confidence = acceptOpenFraction('confidence', inputs.confidence);
  const sensitivity = acceptPositiveFraction('sensitivity', inputs.sensitivity);
  const { infectionProbabilities } = adjust(risks, shares, prevalence);
  const mean = infectionProbabilities.reduce((sum, epi, i) => sum + epi * (sampleShares[i] ?? 0), 0);
  const total = countToDetect(Math.log1p(-Math.min(1, mean) * sensitivity), confidence);
  if (total === null) return { total, perStratum: null };
  const perStratum: number[] = [];
  let left = total;
  sampleShares.forEach((share, i) => {
    const wanted = i === sampleShares.length - 1 ? left : Math.min(left, guardedCeil(total * share));
    perStratum.push(wanted);
    left -= wanted;
  });
  return { total, perStratum };
}

export const riskBasedSampleSizeCalculation = calculation({
  name: 'riskBasedSampleSize',
  room: 'sampling',
  line: 'sample size over strata of different risk',
  inputs: {
    relativeRisks: 'list: relative risk per stratum, above 0',
    populationShares: 'list: share of the population per stratum, adding up to 1',
    sampleShares: 'list: share of the sample per stratum, adding up to 1',
    designPrevalence: described.designPrevalence,
    confidence: described.confidence,
    sensitivity: `${described.sensitivity}, above 0`,
  },
  formula: 'n = ceil(ln(1 - C)/ln(1 - Se sum(EPI share))), split as ceil(n share), the last gets the rest',
  sources: ['MARTIN07', 'EPIR'],
  call: riskBasedSampleSize,
  steps: (i, r) => {
    const mean = i.relativeRisks.reduce((sum, risk, k) => sum + risk * (i.populationShares[k] ?? 0), 0);
    const epi = i.relativeRisks.map((risk) => (i.designPrevalence * risk) / mean);
    return [
      `infection probabilities ${shownList(epi)}`,
      `in the sample on average ${shown(epi.reduce((sum, e, k) => sum + e * (i.sampleShares[k] ?? 0), 0))}`,
      `${shown(r.total)} = ${(r.perStratum ?? []).join(' + ')}`,
    ];
  },
});

/**
 * How sensitive is a survey over two crossed risk factors? The second factor's risks and shares are given within each
 * level of the first.
 *
 *   EPI = P AR1 AR2, AR2 rescaled inside each level; sensitivity 1 - prod((1 - Se EPI)^n)
 *
 * @param inputs.relativeRisks1 risk per level of the first factor, each above 0
 * @param inputs.shares1 share of the population per level, adding up to 1
 * @param inputs.relativeRisks2 one list of risks per level of the first factor
 * @param inputs.shares2 one list of shares per level, each adding up to 1
 * @param inputs.tested one list of numbers tested per level
 * @throws DomainError on inputs outside these ranges, and when an infection probability exceeds 1
 * Source: Martin, Cameron and Greiner 2007 [MARTIN07]; epiR 2.0.57 manual [EPIR]
 */
export function riskBasedSensitivityTwoFactors(inputs: {
  relativeRisks1: readonly number[];
  shares1: readonly number[];
  relativeRisks2: readonly (readonly number[])[];
  shares2: readonly (readonly number[])[];
  tested: readonly (readonly number[])[];
  designPrevalence: number;
  sensitivity: number;
}): { sensitivity: number } {
  const risks1 = acceptList('relativeRisks1', inputs.relativeRisks1, acceptPositive);
  const levels = risks1.length;
  const shares1 = acceptShares('shares1', inputs.shares1, levels, 'relativeRisks1');
  const risks2 = acceptList(
    'relativeRisks2',
    inputs.relativeRisks2,
    (name, value) => acceptList(name, value, acceptPositive),
    levels,
    'relativeRisks1',
  );
  const within = (i: number) => (risks2[i] as number[]).length;
  const rows = <T>(field: string, given: unknown, row: (name: string, value: unknown, i: number) => T) =>
    acceptList(field, given, (name, value) => [name, value] as const, levels, 'relativeRisks1').map(
      ([name, value], i) => row(name, value, i),
    );
  const shares2 = rows('shares2', inputs.shares2, (name, value, i) =>
    acceptShares(name, value, within(i), `relativeRisks2[${i}]`),
  );
  const tested = rows('tested', inputs.tested, (name, value, i) =>
    acceptList(name, value, (n, v) => acceptCount(n, v), within(i), `relativeRisks2[${i}]`),
  );
  const prevalence = acceptPositiveFraction('designPrevalence', inputs.designPrevalence);
  const sensitivity = acceptFraction('sensitivity', inputs.sensitivity);
  const mean1 = risks1.reduce((sum, risk, i) => sum + risk * (shares1[i] ?? 0), 0);
  let logMiss = 0;
  risks1.forEach((risk1, i) => {
    const row = risks2[i] as number[];
    const mean2 = row.reduce((sum, risk, j) => sum + risk * (shares2[i]?.[j] ?? 0), 0);
    row.forEach((risk2, j) => {
      const infection = acceptInfection(`relativeRisks2[${i}][${j}]`, (prevalence * risk1 * risk2) / (mean1 * mean2));
      logMiss += logPower(1 - sensitivity * infection, tested[i]?.[j] ?? 0);
    });
  });
  return { sensitivity: -Math.expm1(logMiss) };
}

export const riskBasedSensitivityTwoFactorsCalculation = calculation({
  name: 'riskBasedSensitivityTwoFactors',
  room: 'sampling',
  line: 'sensitivity over two crossed risk factors',
  inputs: {
    relativeRisks1: 'list: risk per level of the first factor',
    shares1: 'list: share of the population per level, adding up to 1',
    relativeRisks2: 'list: lists of risks of the second factor, one per level',
    shares2: 'list: lists of shares, one per level, each adding up to 1',
    tested: 'list: lists of units tested, one per level',
    designPrevalence: described.designPrevalence,
    sensitivity: described.sensitivity,
  },
  formula: 'EPI = P AR1 AR2, AR2 rescaled inside each level; 1 - prod((1 - Se EPI)^n)',
  sources: ['MARTIN07', 'EPIR'],
  call: riskBasedSensitivityTwoFactors,
  steps: (i, r) => {
    const mean = i.relativeRisks1.reduce((sum, risk, k) => sum + risk * (i.shares1[k] ?? 0), 0);
    return [
      `adjusted risks of the first factor ${shownList(i.relativeRisks1.map((risk) => risk / mean))}`,
      `sensitivity ${shown(r.sensitivity)}`,
    ];
  },
});
