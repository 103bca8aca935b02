import { twoSidedDeviate } from '../distributions/normal.ts';
import { kappa } from '../sampling/agreement.ts';
import { betaFromMean, betaFromMode, betaFromRange } from '../sampling/beta-from-opinion.ts';
import {
  cutPointRuleFinitePopulation,
  cutPointRuleLargePopulation,
  probabilityOfSoFewPositivesIfInfected,
} from '../sampling/cut-point-rule.ts';
import {
  detectionProbabilityFiniteApproximation,
  detectionProbabilityFinitePopulation,
  detectionProbabilityLargePopulation,
  detectionVaryingSensitivity,
} from '../sampling/detection-probability.ts';
import {
  negativeRoundsNeeded,
  plateauOfFreedom,
  probabilityOfFreedomOverTime,
  sampleSizeForFreedom,
  sensitivityNeededForFreedom,
} from '../sampling/freedom.ts';
import { infectedUnitsFromPrevalence } from '../sampling/infected-units.ts';
import * as interval from '../sampling/interval.ts';
import {
  pooledHerdTest,
  pooledPrevalenceImperfectTest,
  pooledPrevalencePerfectTest,
  pooledPrevalenceVariableSize,
  pooledSurveySensitivity,
  poolsNeeded,
} from '../sampling/pools.ts';
import { posteriorPrevalence } from '../sampling/posterior-prevalence.ts';
import { riskBasedSampleSize, riskBasedSensitivity, riskBasedSensitivityTwoFactors } from '../sampling/risk-based.ts';
import {
  sampleSizeImperfectTestFinitePopulation,
  sampleSizeImperfectTestLargePopulation,
} from '../sampling/sample-size-imperfect-test.ts';
import {
  sampleSizeApproximationImperfectSensitivity,
  sampleSizeApproximationPerfectTest,
  sampleSizeToDetectFinitePopulation,
  sampleSizeToDetectLargePopulation,
} from '../sampling/sample-size-to-detect.ts';
import { sampleSizeToEstimate } from '../sampling/sample-size-to-estimate.ts';
import { combineComponents, reportingSensitivity } from '../sampling/surveillance-components.ts';
import * as truePrevalence from '../sampling/true-prevalence.ts';
import {
  apiariesForColoniesPerApiary,
  twoStageSampleSizes,
  twoStageSystemSensitivity,
  twoStageSystemSensitivityExact,
} from '../sampling/two-stage.ts';
import { twoTestsTwoPopulations, twoTestsTwoPopulationsBayes } from '../sampling/two-tests.ts';
import { undetectedCases } from '../sampling/undetected-cases.ts';
import { upperPrevalenceAfterAllNegative } from '../sampling/upper-prevalence.ts';
import { type Calculation, calculation, shownList as list, shown as n } from './calculation.ts';

const room = 'sampling';
const P = 'design prevalence P, fraction above 0, up to 1';
const N = 'population size N, whole, 1 or more';
const Nnull = 'population size N, whole, or null when unknown or very large';
const d = 'infected units d, whole, up to N';
const C = 'confidence, fraction above 0 and below 1';
const Se = 'sensitivity of one test, fraction 0 to 1';
const Sp = 'specificity of one test, fraction 0 to 1';
const tested = 'units tested n, whole';
const x = 'positives x, whole, 0 to n';
const cut = 'cut-point c: called infected at c positives or more, whole, 1 to n';
const listOf = (what: string) => `list: ${what}`;
const proportion = { positives: x, tested: `${tested}, 1 or more`, confidence: C };
const known = { ...proportion, sensitivity: Se, specificity: `${Sp}; Se + Sp above 1` };
const pools = {
  positivePools: 'positive pools x, whole',
  pools: 'pools n, whole',
  poolSize: 'individuals per pool k, whole',
};
const statement = {
  percentile: 'x, fraction above 0 and below 1',
  probability: 'how sure, fraction above 0 and below 1',
  direction: '"above" or "below" x',
};

const limits = (
  name: string,
  formula: string,
  source: 'NEWCOMBE98' | 'BROWN01' | 'BLAKER00',
  call: typeof interval.wilson,
) =>
  calculation({
    room,
    line: `${name} interval for a proportion`,
    inputs: proportion,
    formula,
    sources: [source],
    call,
    steps: (i, r) => [
      `estimate = ${i.positives}/${i.tested} = ${n(r.estimate)}`,
      `two-sided tail (1 - ${i.confidence})/2 = ${n((1 - i.confidence) / 2)}, z = ${n(twoSidedDeviate(i.confidence))}`,
      `limits ${n(r.lower)} to ${n(r.upper)}`,
    ],
  });

const trueLimits = (
  name: string,
  source: 'REICZIGEL10' | 'NEWCOMBE98',
  call: typeof truePrevalence.blaker,
  apparent: typeof interval.wilson,
) =>
  calculation({
    room,
    line: `true prevalence with a known test, ${name} limits`,
    inputs: known,
    formula: '(AP + Sp - 1)/(Se + Sp - 1), limits of AP through the same line, cut to 0..1',
    sources: ['ROGAN78', source],
    call,
    steps: (i, r) => {
      const ap = apparent(i);
      return [
        `AP = ${i.positives}/${i.tested} = ${n(ap.estimate)} (${n(ap.lower)} to ${n(ap.upper)})`,
        `divide by Se + Sp - 1 = ${n(i.sensitivity + i.specificity - 1)}: raw ${n(r.raw)}`,
        `cut to 0..1: ${n(r.estimate)} (${n(r.lower)} to ${n(r.upper)})`,
      ];
    },
  });

/** Every calculation about samples, surveys, freedom, prevalence and agreement, by name. */
export const ofSampling: Readonly<Record<string, Calculation>> = {
  sampleSizeToDetectLargePopulation: calculation({
    room,
    line: 'how many units of a very large population to test to find at least one',
    inputs: { designPrevalence: P, confidence: C, sensitivity: `${Se}, above 0` },
    formula: 'n = ceil(ln(1 - C) / ln(1 - P Se)), never below 1; ties to 1e-12 are met',
    sources: ['MARTIN92', 'BB-STAT-2.2'],
    call: sampleSizeToDetectLargePopulation,
    steps: (i, r) => [
      `P Se = ${n(i.designPrevalence * i.sensitivity)}`,
      `ln(1 - ${i.confidence}) / ln(1 - P Se) = ${n(Math.log(1 - i.confidence) / Math.log1p(-i.designPrevalence * i.sensitivity))}`,
      `smallest whole number that meets ${i.confidence}: ${n(r.sampleSize)}`,
    ],
  }),
  sampleSizeToDetectFinitePopulation: calculation({
    room,
    line: 'how many of N units to test to find at least one of d infected (exact)',
    inputs: { populationSize: N, infectedUnits: `${d}, 1 or more`, confidence: C, sensitivity: `${Se}, above 0` },
    formula: 'smallest n with 1 - sum_y hyper(y; N, d, n)(1 - Se)^y >= C; null when all N are not enough',
    sources: ['CAMERON98'],
    call: sampleSizeToDetectFinitePopulation,
    steps: (i, r) => {
      const at = (k: number) => detectionProbabilityFinitePopulation({ ...i, tested: k }).probability;
      const all = `all ${i.populationSize} tested: ${n(at(i.populationSize))}`;
      if (r.sampleSize === null) return [all, `below ${i.confidence}: cannot be reached by one inspection`];
      return [
        all,
        `${r.sampleSize - 1} tested: ${n(at(r.sampleSize - 1))}, below ${i.confidence}`,
        `${r.sampleSize} tested: ${n(at(r.sampleSize))}, reaches it`,
      ];
    },
  }),
  sampleSizeApproximationPerfectTest: calculation({
    room,
    line: "Cannon and Roe's approximation, finite population, perfect test",
    inputs: { populationSize: N, infectedUnits: `${d}, 1 or more`, confidence: C },
    formula: 'n = (1 - (1 - C)^(1/d)) (N - (d - 1)/2), rounded up',
    sources: ['CANNON82'],
    call: sampleSizeApproximationPerfectTest,
    steps: (i, r) => [
      `1 - (1 - C)^(1/d) = ${n(1 - (1 - i.confidence) ** (1 / i.infectedUnits))}`,
      `times ${n(i.populationSize - (i.infectedUnits - 1) / 2)} = ${n(r.unrounded)}`,
      `rounded up: ${r.sampleSize}`,
    ],
  }),
  sampleSizeApproximationImperfectSensitivity: calculation({
    room,
    line: "MacDiarmid's approximation, finite population, imperfect sensitivity",
    inputs: { populationSize: N, designPrevalence: P, confidence: C, sensitivity: `${Se}, above 0` },
    formula: 'd = ceil(N P); n = ceil((N/Se)(1 - (1 - C)^(1/d))), null above N',
    sources: ['MACDIARMID88'],
    call: sampleSizeApproximationImperfectSensitivity,
    steps: (i, r) => [
      `d = ceil(${i.populationSize} * ${i.designPrevalence}) = ${r.infectedUnits}`,
      `(N/Se)(1 - (1 - C)^(1/d)) = ${n((i.populationSize / i.sensitivity) * (1 - (1 - i.confidence) ** (1 / r.infectedUnits)))}`,
      `rounded up: ${n(r.sampleSize)}`,
    ],
  }),
  sampleSizeImperfectTestFinitePopulation: calculation({
    room,
    line: 'sample size and cut-point for a test with false positives, N units',
    inputs: {
      populationSize: N,
      infectedUnits: `${d}, 1 or more`,
      sensitivity: `${Se}, above 0`,
      specificity: Sp,
      targetSensitivity: 'wanted population sensitivity, fraction above 0 and below 1',
      targetSpecificity: 'wanted population specificity, fraction above 0 and below 1',
    },
    formula: 'every n: smallest c with P(Bin(n, 1-Sp) < c) >= target; smallest n with P(c or more | d of N) >= target',
    sources: ['CAMERON98'],
    call: sampleSizeImperfectTestFinitePopulation,
    steps: (i, r) => [
      `every n from 1 to ${i.populationSize} stands to choose, with the smallest cut-point that keeps ${i.targetSpecificity}`,
      `smallest n: ${n(r.sampleSize)}, infected at ${n(r.cutPoint)} positives or more`,
      `population sensitivity ${n(r.populationSensitivity)}, specificity ${n(r.populationSpecificity)}`,
    ],
  }),
  sampleSizeImperfectTestLargePopulation: calculation({
    room,
    line: 'sample size and cut-point for a test with false positives, very large population',
    inputs: {
      designPrevalence: P,
      sensitivity: `${Se}, above 0`,
      specificity: Sp,
      targetSensitivity: 'wanted population sensitivity, fraction above 0 and below 1',
      targetSpecificity: 'wanted population specificity, fraction above 0 and below 1',
    },
    formula: 'AP = P Se + (1-P)(1-Sp); every n with its smallest cut-point; P(Bin(n, AP) >= c) >= target',
    sources: ['CAMERON98'],
    call: sampleSizeImperfectTestLargePopulation,
    steps: (i, r) => [
      `AP = ${n(i.designPrevalence * i.sensitivity + (1 - i.designPrevalence) * (1 - i.specificity))}`,
      `smallest n: ${n(r.sampleSize)}, infected at ${n(r.cutPoint)} positives or more`,
      `population sensitivity ${n(r.populationSensitivity)}, specificity ${n(r.populationSpecificity)}`,
    ],
  }),
  sampleSizeToEstimate: calculation({
    room,
    line: 'how many units to test to estimate a prevalence within a margin',
    inputs: {
      populationSize: Nnull,
      expectedPrevalence: 'expected prevalence, fraction 0 to 1',
      margin: 'absolute margin e, fraction above 0 and below 1',
      sensitivity: Se,
      specificity: `${Sp}; Se + Sp above 1`,
      confidence: C,
      designEffect: 'design effect, 1 or more, or null',
    },
    formula: 'AP = P Se + (1-P)(1-Sp); n0 = (z/e)^2 AP(1-AP)/(Se+Sp-1)^2; finite n0 N/(n0+N-1); rounded up, times D',
    sources: ['HUMPHRY04'],
    call: sampleSizeToEstimate,
    steps: (i, r) => [
      `AP = ${n(i.expectedPrevalence * i.sensitivity + (1 - i.expectedPrevalence) * (1 - i.specificity))}, z = ${n(twoSidedDeviate(i.confidence))}`,
      `rounded up: ${r.sampleSize}`,
      `with design effect ${n(i.designEffect)}: ${n(r.withDesignEffect)}`,
    ],
  }),
  detectionProbabilityLargePopulation: calculation({
    room,
    line: 'chance of at least one positive, very large population',
    inputs: { tested, designPrevalence: P, sensitivity: Se },
    formula: '1 - (1 - P Se)^n',
    sources: ['MARTIN92', 'BB-STAT-2.2'],
    call: detectionProbabilityLargePopulation,
    steps: (i, r) => [
      `1 - P Se = ${n(1 - i.designPrevalence * i.sensitivity)}, to the power ${i.tested} = ${n(1 - r.probability)}`,
      `chance to find: ${n(r.probability)}`,
    ],
  }),
  detectionProbabilityFinitePopulation: calculation({
    room,
    line: 'chance of at least one positive among n of N units (exact)',
    inputs: { populationSize: N, infectedUnits: d, tested: `${tested}, up to N`, sensitivity: Se },
    formula: '1 - sum_y hyper(y; N, d, n)(1 - Se)^y',
    sources: ['CAMERON98'],
    call: detectionProbabilityFinitePopulation,
    steps: (i, r) => [
      `${i.tested} of ${i.populationSize} drawn, ${i.infectedUnits} infected: ${n((i.tested * i.infectedUnits) / i.populationSize)} infected expected in the sample`,
      `chance that none of them is detected: ${n(1 - r.probability)}`,
      `chance to find: ${n(r.probability)}`,
    ],
  }),
  detectionProbabilityFiniteApproximation: calculation({
    room,
    line: 'chance of at least one positive, usual finite approximation',
    inputs: { populationSize: N, infectedUnits: d, tested: `${tested}, up to N`, sensitivity: Se },
    formula: '1 - (1 - Se n/N)^d',
    sources: ['MACDIARMID88'],
    call: detectionProbabilityFiniteApproximation,
    steps: (i, r) => [
      `1 - Se n/N = ${n(1 - (i.sensitivity * i.tested) / i.populationSize)}`,
      `to the power ${i.infectedUnits}: ${n(1 - r.probability)}; chance to find ${n(r.probability)}`,
    ],
  }),
  detectionVaryingSensitivity: calculation({
    room,
    line: 'chance of at least one positive when every unit has its own sensitivity',
    inputs: {
      populationSize: Nnull,
      designPrevalence: P,
      unitSensitivities: listOf('sensitivity per unit, fractions 0 to 1'),
    },
    formula: 'large 1 - prod(1 - P Se_i); finite 1 - (1 - sum(Se_i)/N)^ceil(N P)',
    sources: ['MARTIN07', 'MACDIARMID88'],
    call: detectionVaryingSensitivity,
    steps: (i, r) => [
      `${i.unitSensitivities.length} units, sensitivities adding up to ${n(i.unitSensitivities.reduce((a, b) => a + b, 0))}`,
      i.populationSize === null
        ? 'population very large'
        : `d = ${infectedUnitsFromPrevalence(i.populationSize, i.designPrevalence)} of ${i.populationSize}`,
      `chance to find: ${n(r.probability)}`,
    ],
  }),
  cutPointRuleFinitePopulation: calculation({
    room,
    line: 'sensitivity and specificity of "infected at c or more positives", N units',
    inputs: {
      populationSize: N,
      infectedUnits: d,
      tested: `${tested}, up to N`,
      cutPoint: cut,
      sensitivity: Se,
      specificity: Sp,
    },
    formula: 'Se: P(Bin(y, Se) + Bin(n-y, 1-Sp) >= c), y hypergeometric; Sp: P(Bin(n, 1-Sp) < c)',
    sources: ['CAMERON98', 'MARTIN92'],
    call: cutPointRuleFinitePopulation,
    steps: (i, r) => [
      `infected population: ${i.cutPoint} or more of ${i.tested} positive with chance ${n(r.clusterSensitivity)}`,
      `free population: fewer than ${i.cutPoint} with chance ${n(r.clusterSpecificity)}`,
    ],
  }),
  cutPointRuleLargePopulation: calculation({
    room,
    line: 'sensitivity and specificity of "infected at c or more positives", very large population',
    inputs: { designPrevalence: P, tested, cutPoint: cut, sensitivity: Se, specificity: Sp },
    formula: 'AP = P Se + (1-P)(1-Sp); Se P(Bin(n, AP) >= c); Sp P(Bin(n, 1-Sp) < c)',
    sources: ['MARTIN92'],
    call: cutPointRuleLargePopulation,
    steps: (i, r) => [
      `AP = ${n(i.designPrevalence * i.sensitivity + (1 - i.designPrevalence) * (1 - i.specificity))}`,
      `sensitivity ${n(r.clusterSensitivity)}, specificity ${n(r.clusterSpecificity)}`,
    ],
  }),
  probabilityOfSoFewPositivesIfInfected: calculation({
    room,
    line: 'chance of so few positives if the population were infected at the design level',
    inputs: {
      populationSize: N,
      infectedUnits: d,
      tested: `${tested}, up to N`,
      positives: x,
      sensitivity: Se,
      specificity: Sp,
    },
    formula: 'P(Bin(y, Se) + Bin(n-y, 1-Sp) <= x), y hypergeometric',
    sources: ['CAMERON98'],
    call: probabilityOfSoFewPositivesIfInfected,
    steps: (i, r) => [
      `${i.positives} or fewer of ${i.tested} positive, were ${i.infectedUnits} of ${i.populationSize} infected: ${n(r.probability)}`,
    ],
  }),
  upperPrevalenceAfterAllNegative: calculation({
    room,
    line: 'largest prevalence still possible after n negatives',
    inputs: { tested: `${tested}, 1 or more`, confidence: C, sensitivity: `${Se}, above 0` },
    formula: '(1 - (1 - C)^(1/n)) / Se, at most 1',
    sources: ['CANNON82'],
    call: upperPrevalenceAfterAllNegative,
    steps: (i, r) => [
      `1 - (1 - C)^(1/${i.tested}) = ${n(1 - (1 - i.confidence) ** (1 / i.tested))}`,
      `divided by Se ${i.sensitivity}, at most 1: ${n(r.prevalence)}`,
    ],
  }),
  twoStageSampleSizes: calculation({
    room,
    line: 'colonies per apiary and apiaries, for wanted sensitivities',
    inputs: {
      clustersInPopulation: 'apiaries, whole, or null',
      unitsPerCluster: 'colonies per apiary, whole, or null',
      designPrevalenceClusters: 'infected share of apiaries, above 0, up to 1',
      designPrevalenceUnits: 'infected share of colonies within one, above 0, up to 1',
      unitSensitivity: 'sensitivity for one colony, above 0, up to 1',
      targetClusterSensitivity: 'wanted per apiary, above 0 and below 1',
      targetSystemSensitivity: 'wanted for the whole, above 0 and below 1',
    },
    formula: 'sample size per stage; the wanted cluster sensitivity stands in the place of Se at the second',
    sources: ['MARTIN92', 'MACDIARMID88', 'CANNON82'],
    call: twoStageSampleSizes,
    steps: (i, r) => [
      `colonies per apiary for ${i.targetClusterSensitivity} at ${i.designPrevalenceUnits}: ${n(r.unitsPerCluster)}`,
      `apiaries for ${i.targetSystemSensitivity} at ${i.designPrevalenceClusters} with ${i.targetClusterSensitivity} each: ${n(r.clusters)}`,
    ],
  }),
  twoStageSystemSensitivity: calculation({
    room,
    line: 'sensitivity of a finished two-stage survey',
    inputs: {
      clustersInPopulation: 'apiaries H, whole, or null',
      unitsInSampledClusters: 'list: colonies in each visited apiary, or null',
      unitsTested: listOf('colonies opened in each'),
      designPrevalenceClusters: 'infected share of apiaries, above 0, up to 1',
      designPrevalenceUnits: 'infected share of colonies within one, above 0, up to 1',
      unitSensitivity: 'sensitivity for one colony, above 0, up to 1',
    },
    formula:
      'SeC = 1 - (1 - Se n/N)^ceil(N Pu) or 1 - (1 - Pu Se)^n; 1 - (1 - mean(SeC) h/H)^ceil(H Pc) or 1 - prod(1 - Pc SeC)',
    sources: ['MARTIN07', 'MACDIARMID88'],
    call: twoStageSystemSensitivity,
    steps: (i, r) => [
      `per apiary: ${list(r.clusterSensitivities)}`,
      `over ${i.unitsTested.length} apiaries: ${n(r.systemSensitivity)}`,
    ],
  }),
  twoStageSystemSensitivityExact: calculation({
    room,
    line: 'exact sensitivity of a two-stage survey of a finite district',
    inputs: {
      clustersInPopulation: 'apiaries H, whole',
      unitsInSampledClusters: listOf('colonies in each visited apiary'),
      unitsTested: listOf('colonies opened in each'),
      designPrevalenceClusters: 'infected share of apiaries, above 0, up to 1',
      designPrevalenceUnits: 'infected share of colonies within one, above 0, up to 1',
      unitSensitivity: 'sensitivity for one colony, above 0, up to 1',
    },
    formula: 'miss = sum_y hyper(y; H, D, h) * mean over y-subsets of prod(1 - SeC)',
    sources: ['MARTIN07', 'CAMERON98'],
    call: twoStageSystemSensitivityExact,
    steps: (i, r) => [
      `D = ${infectedUnitsFromPrevalence(i.clustersInPopulation, i.designPrevalenceClusters)} of ${i.clustersInPopulation} apiaries infected`,
      `per apiary: ${list(r.clusterSensitivities)}`,
      `system sensitivity ${n(r.systemSensitivity)}`,
    ],
  }),
  apiariesForColoniesPerApiary: calculation({
    room,
    line: 'apiaries needed for each number of colonies opened in one, and the cheapest',
    inputs: {
      designPrevalenceClusters: 'infected share of apiaries, above 0, up to 1',
      designPrevalenceUnits: 'infected share of colonies within one, above 0, up to 1',
      unitSensitivity: 'sensitivity for one colony, above 0, up to 1',
      targetSystemSensitivity: 'wanted for the whole, above 0 and below 1',
      unitsPerClusterOptions: listOf('numbers of colonies to compare'),
      visitCost: 'cost of one visit, 0 or more',
      inspectionCost: 'cost of one colony, same unit, 0 or more',
    },
    formula: 'SeC = 1 - (1 - Pu Se)^k; h = sample size with SeC; cost = h (visit + k inspection)',
    sources: ['MARTIN07'],
    call: apiariesForColoniesPerApiary,
    steps: (i, r) =>
      i.unitsPerClusterOptions.map(
        (k, j) =>
          `${k} colonies: apiary sensitivity ${n(r.clusterSensitivities[j])}, ${n(r.clusters[j])} apiaries, cost ${n(r.costs[j])}`,
      ),
  }),
  riskBasedSensitivity: calculation({
    room,
    line: 'sensitivity of a survey over strata of different risk',
    inputs: {
      relativeRisks: listOf('relative risk per stratum, above 0'),
      populationShares: 'list: share of the population per stratum, adding up to 1; these or the sizes',
      stratumSizes: 'list: units per stratum, whole; these or the shares',
      tested: listOf('units tested per stratum'),
      designPrevalence: P,
      sensitivity: Se,
    },
    formula: 'EPI = P RR/sum(RR share); 1 - prod((1 - Se EPI)^n) or 1 - prod((1 - Se n/N)^(EPI N))',
    sources: ['MARTIN07', 'EPIR'],
    call: riskBasedSensitivity,
    steps: (_, r) => [
      `adjusted risks ${list(r.adjustedRisks)}`,
      `infection probabilities ${list(r.infectionProbabilities)}`,
      `sensitivity ${n(r.sensitivity)}`,
    ],
  }),
  riskBasedSampleSize: calculation({
    room,
    line: 'sample size over strata of different risk',
    inputs: {
      relativeRisks: listOf('relative risk per stratum, above 0'),
      populationShares: listOf('share of the population per stratum, adding up to 1'),
      sampleShares: listOf('share of the sample per stratum, adding up to 1'),
      designPrevalence: P,
      confidence: C,
      sensitivity: `${Se}, above 0`,
    },
    formula: 'n = ceil(ln(1 - C)/ln(1 - Se sum(EPI share))), split as ceil(n share), the last gets the rest',
    sources: ['MARTIN07', 'EPIR'],
    call: riskBasedSampleSize,
    steps: (i, r) => {
      const mean = i.relativeRisks.reduce((sum, risk, k) => sum + risk * (i.populationShares[k] ?? 0), 0);
      const epi = i.relativeRisks.map((risk) => (i.designPrevalence * risk) / mean);
      return [
        `infection probabilities ${list(epi)}`,
        `in the sample on average ${n(epi.reduce((sum, e, k) => sum + e * (i.sampleShares[k] ?? 0), 0))}`,
        `${n(r.total)} = ${(r.perStratum ?? []).join(' + ')}`,
      ];
    },
  }),
  riskBasedSensitivityTwoFactors: calculation({
    room,
    line: 'sensitivity over two crossed risk factors',
    inputs: {
      relativeRisks1: listOf('risk per level of the first factor'),
      shares1: listOf('share of the population per level, adding up to 1'),
      relativeRisks2: listOf('lists of risks of the second factor, one per level'),
      shares2: listOf('lists of shares, one per level, each adding up to 1'),
      tested: listOf('lists of units tested, one per level'),
      designPrevalence: P,
      sensitivity: Se,
    },
    formula: 'EPI = P AR1 AR2, AR2 rescaled inside each level; 1 - prod((1 - Se EPI)^n)',
    sources: ['MARTIN07', 'EPIR'],
    call: riskBasedSensitivityTwoFactors,
    steps: (i, r) => {
      const mean = i.relativeRisks1.reduce((sum, risk, k) => sum + risk * (i.shares1[k] ?? 0), 0);
      return [
        `adjusted risks of the first factor ${list(i.relativeRisks1.map((risk) => risk / mean))}`,
        `sensitivity ${n(r.sensitivity)}`,
      ];
    },
  }),
  probabilityOfFreedomOverTime: calculation({
    room,
    line: 'probability of freedom after each negative round',
    inputs: {
      priorFreedom: 'before the first round, fraction 0 to 1',
      introductionProbabilities: listOf('chance of introduction per round'),
      systemSensitivities: listOf('sensitivity per round'),
    },
    formula: 'prior_t = free_(t-1)(1 - intro_t); free_t = prior_t/(1 - SSe_t(1 - prior_t))',
    sources: ['MARTIN07'],
    call: probabilityOfFreedomOverTime,
    steps: (_, r) =>
      r.freedom.map(
        (free, t) => `round ${t + 1}: discounted to ${n(r.discountedPriors[t])}, after a negative round ${n(free)}`,
      ),
  }),
  plateauOfFreedom: calculation({
    room,
    line: 'where confidence settles with constant surveillance and introduction',
    inputs: {
      introductionProbability: 'pi per round, fraction 0 to 1',
      systemSensitivity: 'SSe per round, above 0, up to 1',
    },
    formula: 'prior 1 - pi/SSe; free (1 - pi/SSe)/(1 - pi); 0 when pi >= SSe',
    sources: ['MARTIN07'],
    call: plateauOfFreedom,
    steps: (i, r) => [
      `pi/SSe = ${n(i.introductionProbability / i.systemSensitivity)}`,
      `discounted prior ${n(r.discountedPrior)}, after a negative round ${n(r.freedom)}`,
    ],
  }),
  sensitivityNeededForFreedom: calculation({
    room,
    line: 'sensitivity one negative round needs to reach a target',
    inputs: { prior: 'discounted prior, fraction 0 to 1', targetFreedom: 'target, above 0, up to 1' },
    formula: '(1 - prior/target)/(1 - prior), 0 when already reached',
    sources: ['MARTIN07'],
    call: sensitivityNeededForFreedom,
    steps: (i, r) => [
      `1 - prior/target = ${n(1 - i.prior / i.targetFreedom)}`,
      `divided by ${n(1 - i.prior)}: ${n(r.systemSensitivity)}`,
    ],
  }),
  negativeRoundsNeeded: calculation({
    room,
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
    steps: (i, r) => [`plateau ${n(plateauOfFreedom(i).freedom)}`, `rounds until ${i.targetFreedom}: ${n(r.rounds)}`],
  }),
  sampleSizeForFreedom: calculation({
    room,
    line: 'sample size so that one negative survey reaches a target of freedom',
    inputs: {
      priorFreedom: 'before the discount, fraction 0 to 1',
      introductionProbability: 'fraction 0 to 1',
      designPrevalence: P,
      targetFreedom: 'target, above 0 and below 1',
      sensitivity: `${Se}, above 0`,
    },
    formula: 'discount the prior, sensitivity needed, large-population sample size for it',
    sources: ['MARTIN07'],
    call: sampleSizeForFreedom,
    steps: (_, r) => [
      `discounted prior ${n(r.discountedPrior)}`,
      `survey sensitivity needed ${n(r.systemSensitivity)}`,
      `sample size ${n(r.sampleSize)}`,
    ],
  }),
  combineComponents: calculation({
    room,
    line: 'several independent surveillance components together',
    inputs: { componentSensitivities: listOf('sensitivity per component') },
    formula: '1 - prod(1 - CSe_i)',
    sources: ['MARTIN07'],
    call: combineComponents,
    steps: (i, r) => [
      `chances to miss ${list(i.componentSensitivities.map((se) => 1 - se))}, together ${n(1 - r.systemSensitivity)}`,
      `together ${n(r.systemSensitivity)}, the last adding ${n(r.gainOfLast)}`,
    ],
  }),
  reportingSensitivity: calculation({
    room,
    line: "sensitivity of beekeepers' own reporting",
    inputs: {
      clusters: 'apiaries N, whole',
      unitsTested: 'units tested per reporting apiary, whole, 1 or more',
      stepProbabilities: listOf('chance of each step from sign to test'),
      designPrevalenceClusters: 'infected share of apiaries, above 0, up to 1',
      infectedIfSubmitted: 'chance that a submitted unit is infected',
      sensitivity: Se,
    },
    formula: 'SeC = prod(steps)(1 - (1 - I Se)^n); 1 - (1 - SeC)^(Pc N)',
    sources: ['MARTIN07', 'EPIR'],
    call: reportingSensitivity,
    steps: (i, r) => [
      `all steps ${n(i.stepProbabilities.reduce((a, b) => a * b, 1))}`,
      `per apiary ${n(r.clusterSensitivity)}, district ${n(r.systemSensitivity)}`,
    ],
  }),
  'interval.wilson': limits(
    'Wilson',
    '(p + z^2/2n +- z sqrt(p(1-p)/n + z^2/4n^2))/(1 + z^2/n)',
    'NEWCOMBE98',
    interval.wilson,
  ),
  'interval.clopperPearson': limits(
    'Clopper-Pearson',
    'Beta(x, n-x+1) and Beta(x+1, n-x) quantiles',
    'NEWCOMBE98',
    interval.clopperPearson,
  ),
  'interval.jeffreys': limits(
    'Jeffreys',
    'Beta(x+1/2, n-x+1/2) quantiles, 0 and 1 at the ends',
    'BROWN01',
    interval.jeffreys,
  ),
  'interval.blaker': limits(
    'Blaker',
    'first p inward from Clopper-Pearson whose acceptability reaches 1 - C',
    'BLAKER00',
    interval.blaker,
  ),
  'interval.agrestiCoull': limits(
    'Agresti-Coull',
    'simple interval after adding z^2/2 of each, cut to 0..1',
    'BROWN01',
    interval.agrestiCoull,
  ),
  'truePrevalence.blaker': trueLimits('Blaker', 'REICZIGEL10', truePrevalence.blaker, interval.blaker),
  'truePrevalence.clopperPearson': trueLimits(
    'Clopper-Pearson',
    'REICZIGEL10',
    truePrevalence.clopperPearson,
    interval.clopperPearson,
  ),
  'truePrevalence.wilson': trueLimits('Wilson', 'NEWCOMBE98', truePrevalence.wilson, interval.wilson),
  'truePrevalence.estimatedTest': calculation({
    room,
    line: 'true prevalence when the test was itself estimated',
    inputs: {
      ...known,
      sensitivitySample: 'infected animals Se was estimated from',
      specificitySample: 'uninfected animals Sp was estimated from',
    },
    formula: 'z^2 pseudo-tests, one positive and one negative per validation sample, shift 2z^2(p varSe - (1-p) varSp)',
    sources: ['LANG14'],
    call: truePrevalence.estimatedTest,
    steps: (i, r) => [
      `AP = ${n(i.positives / i.tested)}, raw ${n(r.raw)}`,
      `Se from ${i.sensitivitySample}, Sp from ${i.specificitySample}, z = ${n(twoSidedDeviate(i.confidence))}`,
      `estimate ${n(r.estimate)} (${n(r.lower)} to ${n(r.upper)})`,
    ],
  }),
  roganGladenNormal: calculation({
    room,
    line: 'Rogan-Gladen estimate with normal interval, uncut',
    inputs: {
      ...known,
      sensitivitySample: 'infected animals Se was estimated from, or null when known',
      specificitySample: 'uninfected animals Sp was estimated from, or null when known',
    },
    formula: '(AP+Sp-1)/(Se+Sp-1) +- z sqrt(AP(1-AP)/n + p^2 Se(1-Se)/nSe + (1-p)^2 Sp(1-Sp)/nSp)/(Se+Sp-1)',
    sources: ['ROGAN78'],
    call: truePrevalence.roganGladenNormal,
    steps: (i, r) => [
      `AP = ${n(i.positives / i.tested)}, raw ${n(r.raw)}, standard error ${n(r.standardError)}`,
      `limits ${n(r.lower)} to ${n(r.upper)}`,
    ],
  }),
  posteriorPrevalence: calculation({
    room,
    line: 'posterior of the true prevalence, test known or with Beta priors',
    inputs: {
      positives: x,
      tested,
      prior: '[alpha, beta] of the prevalence, each above 0',
      sensitivity: `${Se}, or {alpha, beta}`,
      specificity: `${Sp}, or {alpha, beta}`,
      interval: 'content of the central interval, above 0 and below 1',
    },
    formula: 'Bin(x; n, p Se + (1-p)(1-Sp)) times the priors, integrated by quadrature',
    sources: ['JOSEPH95'],
    call: posteriorPrevalence,
    steps: (i, r) => [
      `${i.positives} of ${i.tested}, prior Beta(${i.prior.join(', ')})`,
      `mean ${n(r.mean)}, sd ${n(r.sd)}, median ${n(r.median)} (${n(r.lower)} to ${n(r.upper)})`,
    ],
  }),
  pooledPrevalencePerfectTest: calculation({
    room,
    line: 'individual prevalence from equal pools, perfect test',
    inputs: { ...pools, confidence: C },
    formula: '1 - (1 - x/n)^(1/k), Clopper-Pearson limits through it',
    sources: ['COWLING99'],
    call: pooledPrevalencePerfectTest,
    steps: (i, r) => [
      `x/n = ${n(i.positivePools / i.pools)}, k = ${i.poolSize}: ${n(r.prevalence)}, standard error ${n(r.standardError)}`,
      `limits ${n(r.lower)} to ${n(r.upper)}`,
    ],
  }),
  pooledPrevalenceImperfectTest: calculation({
    room,
    line: 'individual prevalence from equal pools, imperfect pool test',
    inputs: { ...pools, sensitivity: 'of the pool test', specificity: 'of the pool test', confidence: C },
    formula: '1 - ((SeP - x/n)/(SeP + SpP - 1))^(1/k), cut to 0..1, limits likewise',
    sources: ['COWLING99'],
    call: pooledPrevalenceImperfectTest,
    steps: (i, r) => [`x/n = ${n(i.positivePools / i.pools)}: ${n(r.prevalence)} (${n(r.lower)} to ${n(r.upper)})`],
  }),
  pooledPrevalenceVariableSize: calculation({
    room,
    line: 'individual prevalence from pools of different sizes, perfect test',
    inputs: {
      positivePools: listOf('positive pools per size'),
      pools: listOf('pools per size'),
      poolSizes: listOf('individuals per pool'),
    },
    formula: 'sum(k x/(1 - (1-p)^k)) = sum(k n), solved for p',
    sources: ['WILLIAMS01'],
    call: pooledPrevalenceVariableSize,
    steps: (i, r) => [
      `${n(i.poolSizes.reduce((sum, k, j) => sum + k * (i.pools[j] ?? 0), 0))} individuals in all`,
      `p = ${n(r.prevalence)}, standard error ${n(r.standardError)}`,
    ],
  }),
  pooledSurveySensitivity: calculation({
    room,
    line: 'sensitivity and specificity of a survey of pools',
    inputs: {
      pools: 'pools r, whole',
      poolSize: 'individuals per pool k, whole',
      designPrevalence: P,
      poolSensitivity: 'SeP, fraction 0 to 1',
      poolSpecificity: 'SpP, fraction 0 to 1',
    },
    formula: '1 - ((1 - (1-P)^k)(1 - SeP) + (1-P)^k SpP)^r; SpP^r',
    sources: ['CHRISTENSEN00'],
    call: pooledSurveySensitivity,
    steps: (i, r) => [
      `a pool is free with chance ${n((1 - i.designPrevalence) ** i.poolSize)}`,
      `sensitivity ${n(r.sensitivity)}, specificity ${n(r.specificity)}`,
    ],
  }),
  poolsNeeded: calculation({
    room,
    line: 'pools needed for a survey sensitivity',
    inputs: {
      poolSize: 'individuals per pool k, whole',
      designPrevalence: P,
      poolSensitivity: 'SeP, fraction 0 to 1',
      poolSpecificity: 'SpP, fraction 0 to 1',
      confidence: C,
    },
    formula: 'ceil(ln(1 - C)/ln((1 - (1-P)^k)(1 - SeP) + (1-P)^k SpP)); survey specificity SpP^n',
    sources: ['CHRISTENSEN00'],
    call: poolsNeeded,
    steps: (i, r) => [
      `a pool is free with chance ${n((1 - i.designPrevalence) ** i.poolSize)}`,
      `pools ${n(r.pools)}; a free population is then called free with chance ${n(r.surveySpecificity)}`,
    ],
  }),
  pooledHerdTest: calculation({
    room,
    line: 'apiary sensitivity and specificity of pools whose specificity falls with size',
    inputs: {
      sensitivity: Se,
      specificity: Sp,
      prevalence: P,
      poolSize: 'units per pool m, whole',
      pools: 'pools r, whole',
    },
    formula: '1 - ((1 - (1-P)^m)(1 - Se) + (1-P)^m Sp^m)^r; Sp^(m r)',
    sources: ['CHRISTENSEN00'],
    call: pooledHerdTest,
    steps: (i, r) => [
      `Sp^m = ${n(i.specificity ** i.poolSize)}, a pool is free with chance ${n((1 - i.prevalence) ** i.poolSize)}`,
      `sensitivity ${n(r.herdSensitivity)}, specificity ${n(r.herdSpecificity)}`,
    ],
  }),
  kappa: calculation({
    room,
    line: 'agreement of two readers beyond chance',
    inputs: { table: 'square table of counts, rows first reader, columns second; [[++, +-], [-+, --]]' },
    formula: '(Po - Pe)/(1 - Pe); standard error by the delta method',
    sources: ['FLEISS69', 'BYRT93'],
    call: kappa,
    steps: (_, r) => [
      `observed ${n(r.observedAgreement)}, by chance ${n(r.expectedAgreement)}`,
      `kappa ${n(r.kappa)} (${n(r.lower)} to ${n(r.upper)}), PABAK ${n(r.pabak)}`,
    ],
  }),
  twoTestsTwoPopulations: calculation({
    room,
    line: 'two tests in two populations without a gold standard (maximum likelihood)',
    inputs: { tables: 'two lists of counts [++, +-, -+, --], one per population' },
    formula: 'six cells, six unknowns, by expectation-maximisation from Se, Sp near 0.9',
    sources: ['HUI80'],
    call: twoTestsTwoPopulations,
    steps: (_, r) => [
      `prevalences ${list(r.prevalence)}`,
      `sensitivities ${list(r.sensitivity)}, specificities ${list(r.specificity)}`,
    ],
  }),
  twoTestsTwoPopulationsBayes: calculation({
    room,
    line: 'the same, as posterior means and standard deviations',
    inputs: {
      tables: 'two lists of counts [++, +-, -+, --], one per population',
      prior: '{alpha, beta} used for all six, each above 0',
    },
    formula: 'importance sampling on 32,768 Halton points in log-odds, half with Se + Sp > 1',
    sources: ['JOSEPH95', 'HUI80'],
    call: twoTestsTwoPopulationsBayes,
    steps: (_, r) => [
      `prevalences ${list(r.prevalence)}, sd ${list(r.prevalenceSd)}`,
      `sensitivities ${list(r.sensitivity)}, sd ${list(r.sensitivitySd)}`,
      `specificities ${list(r.specificity)}, sd ${list(r.specificitySd)}`,
    ],
  }),
  undetectedCases: calculation({
    room,
    line: 'cases nobody found, from two independent sources',
    inputs: {
      firstSource: 'cases found by the first, whole',
      secondSource: 'cases found by the second, whole',
      both: 'cases found by both, whole',
      confidence: C,
    },
    formula: '(n1+1)(n2+1)/(m+1) - 1; log interval on the unseen part',
    sources: ['CHAPMAN51', 'SEBER70', 'CHAO89'],
    call: undetectedCases,
    steps: (i, r) => [
      `${i.firstSource + 1} * ${i.secondSource + 1} / ${i.both + 1} - 1 = ${n(r.total)}, standard error ${n(r.standardError)}`,
      `seen ${r.seen}, unseen ${n(r.undetected)}`,
      `all cases ${n(r.logLower)} to ${n(r.logUpper)}`,
    ],
  }),
  betaFromMode: calculation({
    room,
    line: 'Beta distribution from a most likely value and one statement',
    inputs: { mode: 'most likely value, fraction 0 to 1', ...statement },
    formula: 'alpha = 1 + s m, beta = 1 + s(1 - m), s solved',
    sources: ['CHRISTENSEN10', 'EPIR'],
    call: betaFromMode,
    steps: (i, r) => [
      `${i.probability} sure ${i.direction} ${i.percentile}, most likely ${i.mode}`,
      `Beta(${n(r.alpha)}, ${n(r.beta)})`,
    ],
  }),
  betaFromMean: calculation({
    room,
    line: 'Beta distribution from a mean and one statement',
    inputs: { mean: 'fraction above 0 and below 1', ...statement },
    formula: 'alpha = s mean, beta = s(1 - mean), s solved, both at least 1',
    sources: ['PREVALENCE-R'],
    call: betaFromMean,
    steps: (i, r) => [
      `${i.probability} sure ${i.direction} ${i.percentile}, mean ${i.mean}`,
      `Beta(${n(r.alpha)}, ${n(r.beta)})`,
    ],
  }),
  betaFromRange: calculation({
    room,
    line: 'Beta distribution from least, most likely and greatest value',
    inputs: { minimum: 'least value', mode: 'most likely value', maximum: 'greatest value' },
    formula: 'mu = (min + 4 mode + max)/6; alpha = 6(mu - min)/(max - min); beta = 6(max - mu)/(max - min)',
    sources: ['VOSE08'],
    call: betaFromRange,
    steps: (_, r) => [`mean ${n(r.mean)}`, `Beta(${n(r.alpha)}, ${n(r.beta)}) on the range`],
  }),
};
