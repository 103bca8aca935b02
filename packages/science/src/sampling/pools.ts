import { bisect } from '../distributions/bisection.ts';
import { calculation, shown } from '../distributions/calculation.ts';
import {
  acceptCount,
  acceptFraction,
  acceptList,
  acceptOpenFraction,
  acceptPositiveFraction,
} from '../distributions/domain.ts';
import { countToDetect } from '../distributions/target.ts';
import * as described from './inputs-described.ts';
import { clopperPearson } from './interval.ts';
import { acceptTest } from './true-prevalence.ts';

/*
 * Samples put together before the test. Dilution lowers a pool's sensitivity, so give the sensitivity of the pool size
 * really used. A honey or bee composite of an apiary is one pool of its colonies, and its sensitivity is not that of a
 * single-colony sample.
 */

/**
 * How common is it among individuals, from n equal pools of k with x positive and a perfect test?
 *
 *   p = 1 - (1 - x/n)^(1/k), limits by pushing Clopper-Pearson limits of x/n through it
 *   se = (1/k) (1 - x/n)^(1/k - 1) sqrt((x/n)(1 - x/n)/n); null at x = 0 and x = n
 *
 * All pools positive gives 1 and a useless upper side: take fewer or smaller pools.
 *
 * @param inputs.positivePools x, whole, 0 to n
 * @param inputs.pools n, whole, 1 or more
 * @param inputs.poolSize k, individuals per pool, whole, 1 or more
 * @param inputs.confidence fraction above 0 and below 1
 * @throws DomainError on inputs outside these ranges
 * Source: Cowling, Gardner and Johnson 1999 [COWLING99]
 */
export function pooledPrevalencePerfectTest(inputs: {
  positivePools: number;
  pools: number;
  poolSize: number;
  confidence: number;
}): { prevalence: number; standardError: number | null; lower: number; upper: number } {
  const pools = acceptCount('pools', inputs.pools, 1);
  const positive = acceptCount('positivePools', inputs.positivePools, 0, pools, 'pools');
  const size = acceptCount('poolSize', inputs.poolSize, 1);
  const confidence = acceptOpenFraction('confidence', inputs.confidence);
  const limits = clopperPearson({ positives: positive, tested: pools, confidence });
  const individual = (share: number) => (share >= 1 ? 1 : -Math.expm1(Math.log1p(-share) / size));
  const share = positive / pools;
  const standardError =
    positive === 0 || positive === pools
      ? null
      : ((1 - share) ** (1 / size - 1) * Math.sqrt((share * (1 - share)) / pools)) / size;
  return {
    prevalence: individual(share),
    standardError,
    lower: individual(limits.lower),
    upper: individual(limits.upper),
  };
}

const poolsDescribed = {
  positivePools: 'positive pools x, whole',
  pools: 'pools n, whole',
  poolSize: 'individuals per pool k, whole',
};

export const pooledPrevalencePerfectTestCalculation = calculation({
  name: 'pooledPrevalencePerfectTest',
  room: 'sampling',
  line: 'individual prevalence from equal pools, perfect test',
  inputs: { ...poolsDescribed, confidence: described.confidence },
  formula: '1 - (1 - x/n)^(1/k), Clopper-Pearson limits through it',
  sources: ['COWLING99'],
  call: pooledPrevalencePerfectTest,
  steps: (i, r) => [
    `x/n = ${shown(i.positivePools / i.pools)}, k = ${i.poolSize}: ${shown(r.prevalence)}, standard error ${shown(r.standardError)}`,
    `limits ${shown(r.lower)} to ${shown(r.upper)}`,
  ],
});

/**
 * The same with a pool test that errs.
 *
 *   p = 1 - ((SeP - x/n) / (SeP + SpP - 1))^(1/k); 0 when x/n <= 1 - SpP, 1 when x/n >= SeP; limits likewise
 *
 * @param inputs.sensitivity SeP of the pool test at this pool size, fraction 0 to 1
 * @param inputs.specificity SpP of the pool test, fraction 0 to 1; SeP + SpP must exceed 1
 * @throws DomainError on inputs outside their ranges
 * Source: Cowling, Gardner and Johnson 1999 [COWLING99]
 */
export function pooledPrevalenceImperfectTest(inputs: {
  positivePools: number;
  pools: number;
  poolSize: number;
  sensitivity: number;
  specificity: number;
  confidence: number;
}): { prevalence: number; lower: number; upper: number } {
  const pools = acceptCount('pools', inputs.pools, 1);
  const positive = acceptCount('positivePools', inputs.positivePools, 0, pools, 'pools');
  const size = acceptCount('poolSize', inputs.poolSize, 1);
  const { sensitivity, specificity } = acceptTest(inputs);
  const confidence = acceptOpenFraction('confidence', inputs.confidence);
  const limits = clopperPearson({ positives: positive, tested: pools, confidence });
  const individual = (share: number) => {
    if (share <= 1 - specificity) return 0;
    if (share >= sensitivity) return 1;
    return -Math.expm1(Math.log((sensitivity - share) / (sensitivity + specificity - 1)) / size);
  };
  return {
    prevalence: individual(positive / pools),
    lower: individual(limits.lower),
    upper: individual(limits.upper),
  };
}

export const pooledPrevalenceImperfectTestCalculation = calculation({
  name: 'pooledPrevalenceImperfectTest',
  room: 'sampling',
  line: 'individual prevalence from equal pools, imperfect pool test',
  inputs: {
    ...poolsDescribed,
    sensitivity: 'of the pool test',
    specificity: 'of the pool test',
    confidence: described.confidence,
  },
  formula: '1 - ((SeP - x/n)/(SeP + SpP - 1))^(1/k), cut to 0..1, limits likewise',
  sources: ['COWLING99'],
  call: pooledPrevalenceImperfectTest,
  steps: (i, r) => [
    `x/n = ${shown(i.positivePools / i.pools)}: ${shown(r.prevalence)} (${shown(r.lower)} to ${shown(r.upper)})`,
  ],
});

/**
 * How common is it among individuals, from pools of different sizes and a perfect test?
 *
 *   maximum likelihood: sum(k x / (1 - (1-p)^k)) = sum(k n)
 *   standard error from the information sum(n k^2 (1-p)^(k-2) / (1 - (1-p)^k))
 *
 * 0 when no pool is positive and 1 when every pool is; the standard error is then null.
 *
 * @param inputs.positivePools x per size, whole, 0 to n
 * @param inputs.pools n per size, whole, 1 or more
 * @param inputs.poolSizes k per size, whole, 1 or more
 * @throws DomainError on inputs outside these ranges
 * Source: Williams and Moffitt 2001 [WILLIAMS01]
 */
export function pooledPrevalenceVariableSize(inputs: {
  positivePools: readonly number[];
  pools: readonly number[];
  poolSizes: readonly number[];
}): { prevalence: number; standardError: number | null } {
  const pools = acceptList('pools', inputs.pools, (name, value) => acceptCount(name, value, 1));
  const sizes = acceptList(
    'poolSizes',
    inputs.poolSizes,
    (name, value) => acceptCount(name, value, 1),
    pools.length,
    'pools',
  );
  const positive = acceptList(
    'positivePools',
    inputs.positivePools,
    (name, value) => acceptCount(name, value),
    pools.length,
    'pools',
  ).map((x, i) => acceptCount(`positivePools[${i}]`, x, 0, pools[i] as number, `pools[${i}]`));
  if (positive.every((x) => x === 0)) return { prevalence: 0, standardError: null };
  if (positive.every((x, i) => x === pools[i])) return { prevalence: 1, standardError: null };
  const units = sizes.reduce((sum, k, i) => sum + k * (pools[i] as number), 0);
  // In log(1 - p) the equation keeps its digits for very small p.
  const excess = (logClean: number) =>
    sizes.reduce((sum, k, i) => {
      const x = positive[i] as number;
      return x === 0 ? sum : sum + (k * x) / -Math.expm1(k * logClean);
    }, -units);
  const logClean = bisect(-745, -1e-300, excess);
  const information = sizes.reduce((sum, k, i) => {
    return sum + ((pools[i] as number) * k * k * Math.exp((k - 2) * logClean)) / -Math.expm1(k * logClean);
  }, 0);
  return { prevalence: -Math.expm1(logClean), standardError: 1 / Math.sqrt(information) };
}

export const pooledPrevalenceVariableSizeCalculation = calculation({
  name: 'pooledPrevalenceVariableSize',
  room: 'sampling',
  line: 'individual prevalence from pools of different sizes, perfect test',
  inputs: {
    positivePools: 'list: positive pools per size',
    pools: 'list: pools per size',
    poolSizes: 'list: individuals per pool',
  },
  formula: 'sum(k x/(1 - (1-p)^k)) = sum(k n), solved for p',
  sources: ['WILLIAMS01'],
  call: pooledPrevalenceVariableSize,
  steps: (i, r) => [
    `${shown(i.poolSizes.reduce((sum, k, j) => sum + k * (i.pools[j] ?? 0), 0))} individuals in all`,
    `p = ${shown(r.prevalence)}, standard error ${shown(r.standardError)}`,
  ],
});

/** Log of the chance that one pool of a population at the design prevalence reads negative. */
function logPoolNegative(poolSize: number, prevalence: number, sensitivity: number, specificity: number): number {
  const logClean = poolSize * Math.log1p(-prevalence);
  const tainted = -Math.expm1(logClean);
  return Math.log1p(-(tainted * sensitivity + (1 - tainted) * (1 - specificity)));
}

/**
 * How sensitive and specific is a survey of r pools of k, called positive when any pool is?
 *
 *   sensitivity 1 - ((1 - (1-P)^k)(1 - SeP) + (1-P)^k SpP)^r, specificity SpP^r
 *
 * @param inputs.pools r, whole, 1 or more
 * @param inputs.poolSize k, whole, 1 or more
 * @param inputs.designPrevalence P among individuals, fraction above 0, up to 1
 * @param inputs.poolSensitivity SeP, fraction 0 to 1
 * @param inputs.poolSpecificity SpP, fraction 0 to 1
 * @throws DomainError on inputs outside these ranges
 * Source: Christensen and Gardner 2000 [CHRISTENSEN00]
 */
export function pooledSurveySensitivity(inputs: {
  pools: number;
  poolSize: number;
  designPrevalence: number;
  poolSensitivity: number;
  poolSpecificity: number;
}): { sensitivity: number; specificity: number } {
  const pools = acceptCount('pools', inputs.pools, 1);
  const size = acceptCount('poolSize', inputs.poolSize, 1);
  const prevalence = acceptPositiveFraction('designPrevalence', inputs.designPrevalence);
  const sensitivity = acceptFraction('poolSensitivity', inputs.poolSensitivity);
  const specificity = acceptFraction('poolSpecificity', inputs.poolSpecificity);
  return {
    sensitivity: -Math.expm1(pools * logPoolNegative(size, prevalence, sensitivity, specificity)),
    specificity: specificity ** pools,
  };
}

export const pooledSurveySensitivityCalculation = calculation({
  name: 'pooledSurveySensitivity',
  room: 'sampling',
  line: 'sensitivity and specificity of a survey of pools',
  inputs: {
    pools: 'pools r, whole',
    poolSize: 'individuals per pool k, whole',
    designPrevalence: described.designPrevalence,
    poolSensitivity: 'SeP, fraction 0 to 1',
    poolSpecificity: 'SpP, fraction 0 to 1',
  },
  formula: '1 - ((1 - (1-P)^k)(1 - SeP) + (1-P)^k SpP)^r; SpP^r',
  sources: ['CHRISTENSEN00'],
  call: pooledSurveySensitivity,
  steps: (i, r) => [
    `a pool is free with chance ${shown((1 - i.designPrevalence) ** i.poolSize)}`,
    `sensitivity ${shown(r.sensitivity)}, specificity ${shown(r.specificity)}`,
  ],
});

/**
 * How many pools for a wanted survey sensitivity?
 *
 *   ceil(ln(1 - C) / ln((1 - (1-P)^k)(1 - SeP) + (1-P)^k SpP))
 *
 * With SpP below 1 false alarms count as detections, so the survey's specificity SpP^n stands beside the answer: k = 5,
 * P = 1 %, SeP 0.9, SpP 0.95 needs "32 pools", but a free population is then called infected 81 times in 100.
 *
 * @param inputs as for `pooledSurveySensitivity`, with `confidence` above 0 and below 1 in place of `pools`
 * @returns pools, null when nothing is ever detected, and the specificity of that survey
 * @throws DomainError on inputs outside their ranges
 * Source: Christensen and Gardner 2000 [CHRISTENSEN00]
 */
export function poolsNeeded(inputs: {
  poolSize: number;
  designPrevalence: number;
  poolSensitivity: number;
  poolSpecificity: number;
  confidence: number;
}): { pools: number | null; surveySpecificity: number | null } {
  const size = acceptCount('poolSize', inputs.poolSize, 1);
  const prevalence = acceptPositiveFraction('designPrevalence', inputs.designPrevalence);
  const sensitivity = acceptFraction('poolSensitivity', inputs.poolSensitivity);
  const specificity = acceptFraction('poolSpecificity', inputs.poolSpecificity);
  const confidence = acceptOpenFraction('confidence', inputs.confidence);
  const pools = countToDetect(logPoolNegative(size, prevalence, sensitivity, specificity), confidence);
  return { pools, surveySpecificity: pools === null ? null : specificity ** pools };
}

export const poolsNeededCalculation = calculation({
  name: 'poolsNeeded',
  room: 'sampling',
  line: 'pools needed for a survey sensitivity',
  inputs: {
    poolSize: 'individuals per pool k, whole',
    designPrevalence: described.designPrevalence,
    poolSensitivity: 'SeP, fraction 0 to 1',
    poolSpecificity: 'SpP, fraction 0 to 1',
    confidence: described.confidence,
  },
  formula: 'ceil(ln(1 - C)/ln((1 - (1-P)^k)(1 - SeP) + (1-P)^k SpP)); survey specificity SpP^n',
  sources: ['CHRISTENSEN00'],
  call: poolsNeeded,
  steps: (i, r) => [
    `a pool is free with chance ${shown((1 - i.designPrevalence) ** i.poolSize)}`,
    `pools ${shown(r.pools)}; a free population is then called free with chance ${shown(r.surveySpecificity)}`,
  ],
});

/**
 * Herd (apiary) sensitivity and specificity of r pools of m units, when every unit in a pool can cause the false
 * positive (pool specificity Sp^m) and pooling does not dilute sensitivity.
 *
 *   sensitivity 1 - ((1 - (1-P)^m)(1 - Se) + (1-P)^m Sp^m)^r, specificity (Sp^m)^r
 *
 * Worked: Se 0.647, Sp 0.981, P 12 %, 6 pools of 5: 0.927 and 0.562.
 *
 * @param inputs.sensitivity Se, fraction 0 to 1
 * @param inputs.specificity Sp of a single unit, fraction 0 to 1
 * @param inputs.prevalence P, fraction above 0, up to 1
 * @param inputs.poolSize m, whole, 1 or more
 * @param inputs.pools r, whole, 1 or more
 * @throws DomainError on inputs outside these ranges
 * Source: Christensen and Gardner 2000 [CHRISTENSEN00]
 */
export function pooledHerdTest(inputs: {
  sensitivity: number;
  specificity: number;
  prevalence: number;
  poolSize: number;
  pools: number;
}): { herdSensitivity: number; herdSpecificity: number } {
  const sensitivity = acceptFraction('sensitivity', inputs.sensitivity);
  const specificity = acceptFraction('specificity', inputs.specificity);
  const prevalence = acceptPositiveFraction('prevalence', inputs.prevalence);
  const size = acceptCount('poolSize', inputs.poolSize, 1);
  const pools = acceptCount('pools', inputs.pools, 1);
  const poolSpecificity = specificity ** size;
  return {
    herdSensitivity: -Math.expm1(pools * logPoolNegative(size, prevalence, sensitivity, poolSpecificity)),
    herdSpecificity: poolSpecificity ** pools,
  };
}

export const pooledHerdTestCalculation = calculation({
  name: 'pooledHerdTest',
  room: 'sampling',
  line: 'apiary sensitivity and specificity of pools whose specificity falls with size',
  inputs: {
    sensitivity: described.sensitivity,
    specificity: described.specificity,
    prevalence: described.designPrevalence,
    poolSize: 'units per pool m, whole',
    pools: 'pools r, whole',
  },
  formula: '1 - ((1 - (1-P)^m)(1 - Se) + (1-P)^m Sp^m)^r; Sp^(m r)',
  sources: ['CHRISTENSEN00'],
  call: pooledHerdTest,
  steps: (i, r) => [
    `Sp^m = ${shown(i.specificity ** i.poolSize)}, a pool is free with chance ${shown((1 - i.prevalence) ** i.poolSize)}`,
    `sensitivity ${shown(r.herdSensitivity)}, specificity ${shown(r.herdSpecificity)}`,
  ],
});
