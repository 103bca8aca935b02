import { calculation, shown, shownList } from '../distributions/calculation.ts';
import {
  acceptCount,
  acceptList,
  acceptNonNegative,
  acceptOpenFraction,
  acceptPositiveFraction,
  DomainError,
  isUnknown,
} from '../distributions/domain.ts';
import { hypergeometricMass } from '../distributions/hypergeometric.ts';
import { probabilityDetected } from './detection-probability.ts';
import { infectedUnitsFromPrevalence } from './infected-units.ts';
import {
  sampleSizeApproximationImperfectSensitivity,
  sampleSizeToDetectLargePopulation,
} from './sample-size-to-detect.ts';

/**
 * How many colonies per apiary, and how many apiaries, for a wanted apiary and a wanted system sensitivity?
 *
 *   units per cluster: sample size for the wanted cluster sensitivity, with the unit sensitivity;
 *   clusters: sample size for the wanted system sensitivity, with the wanted cluster sensitivity in the place of Se.
 *   Sizes known: n = ceil((N/Se)(1 - (1 - C)^(1/d))); sizes unknown: the large-population formula.
 *
 * Rounding up already gave more than the wanted cluster sensitivity; `apiariesForColoniesPerApiary` uses what is
 * achieved. Worked: Pc 1 %, Pu 10 %, Se 0.95, both targets 0.95, sizes unknown: 31 colonies in 314 apiaries.
 *
 * @param inputs.clustersInPopulation number of apiaries, whole, or null when unknown
 * @param inputs.unitsPerCluster colonies per apiary, whole, or null when unknown
 * @param inputs.designPrevalenceClusters Pc, fraction above 0, up to 1
 * @param inputs.designPrevalenceUnits Pu within an infected apiary, fraction above 0, up to 1
 * @param inputs.unitSensitivity Se for one colony, fraction above 0, up to 1
 * @param inputs.targetClusterSensitivity fraction above 0 and below 1
 * @param inputs.targetSystemSensitivity fraction above 0 and below 1
 * @returns both counts; null where no count reaches the target, and no `clusters` when the apiary's target is out of reach
 * @throws DomainError on inputs outside these ranges
 * Source: Martin, Shoukri and Thorburn 1992 [MARTIN92]; MacDiarmid 1988 [MACDIARMID88]; Cannon and Roe 1982 [CANNON82]
 */
export function twoStageSampleSizes(inputs: {
  clustersInPopulation: number | null;
  unitsPerCluster: number | null;
  designPrevalenceClusters: number;
  designPrevalenceUnits: number;
  unitSensitivity: number;
  targetClusterSensitivity: number;
  targetSystemSensitivity: number;
}): { clusters: number | null; unitsPerCluster: number | null } {
  const clusterTarget = acceptOpenFraction('targetClusterSensitivity', inputs.targetClusterSensitivity);
  const systemTarget = acceptOpenFraction('targetSystemSensitivity', inputs.targetSystemSensitivity);
  const unitPrevalence = acceptPositiveFraction('designPrevalenceUnits', inputs.designPrevalenceUnits);
  const clusterPrevalence = acceptPositiveFraction('designPrevalenceClusters', inputs.designPrevalenceClusters);
  const unitSensitivity = acceptPositiveFraction('unitSensitivity', inputs.unitSensitivity);
  const unitsPerCluster = stageSize(
    'unitsPerCluster',
    inputs.unitsPerCluster,
    unitPrevalence,
    clusterTarget,
    unitSensitivity,
  );
  const clusters = stageSize(
    'clustersInPopulation',
    inputs.clustersInPopulation,
    clusterPrevalence,
    systemTarget,
    clusterTarget,
  );
  return { clusters: unitsPerCluster === null ? null : clusters, unitsPerCluster };
}

export const twoStageSampleSizesCalculation = calculation({
  name: 'twoStageSampleSizes',
  room: 'sampling',
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
    `colonies per apiary for ${i.targetClusterSensitivity} at ${i.designPrevalenceUnits}: ${shown(r.unitsPerCluster)}`,
    `apiaries for ${i.targetSystemSensitivity} at ${i.designPrevalenceClusters} with ${i.targetClusterSensitivity} each: ${shown(r.clusters)}`,
  ],
});

function stageSize(
  field: string,
  size: number | null,
  designPrevalence: number,
  confidence: number,
  sensitivity: number,
): number | null {
  if (isUnknown(size)) {
    return sampleSizeToDetectLargePopulation({ designPrevalence, confidence, sensitivity }).sampleSize;
  }
  const populationSize = acceptCount(field, size, 1);
  return sampleSizeApproximationImperfectSensitivity({ populationSize, designPrevalence, confidence, sensitivity })
    .sampleSize;
}

/** What a two-stage survey could have seen: per sampled apiary, and as a whole. */
export interface SystemSensitivity {
  readonly systemSensitivity: number;
  readonly clusterSensitivities: readonly number[];
}

/**
 * How sensitive was a finished two-stage survey?
 *
 *   per apiary: 1 - (1 - Se n/N)^ceil(N Pu) when its size is known, else 1 - (1 - Pu Se)^n
 *   together:   1 - (1 - mean(SeC) h/H)^ceil(H Pc) for h of H apiaries, else 1 - prod(1 - Pc SeC)
 *
 * A visited apiary where nothing was opened is an apiary with sensitivity 0, not a missing value: put 0.
 *
 * @param inputs.clustersInPopulation H, whole, or null when unknown
 * @param inputs.unitsInSampledClusters N of each visited apiary, or null when unknown
 * @param inputs.unitsTested n in each visited apiary, 0 to its N
 * @param inputs.designPrevalenceClusters Pc, fraction above 0, up to 1
 * @param inputs.designPrevalenceUnits Pu, fraction above 0, up to 1
 * @param inputs.unitSensitivity Se, fraction above 0, up to 1
 * @throws DomainError on inputs outside these ranges
 * Source: Martin, Cameron and Greiner 2007 [MARTIN07]; finite form MacDiarmid 1988 [MACDIARMID88]
 */
export function twoStageSystemSensitivity(inputs: {
  clustersInPopulation: number | null;
  unitsInSampledClusters: readonly number[] | null;
  unitsTested: readonly number[];
  designPrevalenceClusters: number;
  designPrevalenceUnits: number;
  unitSensitivity: number;
}): SystemSensitivity {
  const clusterPrevalence = acceptPositiveFraction('designPrevalenceClusters', inputs.designPrevalenceClusters);
  const unitPrevalence = acceptPositiveFraction('designPrevalenceUnits', inputs.designPrevalenceUnits);
  const sensitivity = acceptPositiveFraction('unitSensitivity', inputs.unitSensitivity);
  const tested = acceptList('unitsTested', inputs.unitsTested, (name, value) => acceptCount(name, value));
  const sizes = isUnknown(inputs.unitsInSampledClusters) ? null : acceptSizes(inputs.unitsInSampledClusters, tested);
  const clusterSensitivities = tested.map((n, i) => {
    const size = sizes?.[i];
    if (size === undefined) return n === 0 ? 0 : -Math.expm1(n * Math.log1p(-unitPrevalence * sensitivity));
    return 1 - (1 - (sensitivity * n) / size) ** infectedUnitsFromPrevalence(size, unitPrevalence);
  });
  if (isUnknown(inputs.clustersInPopulation)) {
    const logMiss = clusterSensitivities.reduce((sum, se) => sum + Math.log1p(-clusterPrevalence * se), 0);
    return { systemSensitivity: -Math.expm1(logMiss), clusterSensitivities };
  }
  const clusters = acceptClusters(inputs.clustersInPopulation, tested.length);
  const sum = clusterSensitivities.reduce((a, b) => a + b, 0);
  const infectedClusters = infectedUnitsFromPrevalence(clusters, clusterPrevalence);
  return { systemSensitivity: 1 - Math.max(0, 1 - sum / clusters) ** infectedClusters, clusterSensitivities };
}

export const twoStageSystemSensitivityCalculation = calculation({
  name: 'twoStageSystemSensitivity',
  room: 'sampling',
  line: 'sensitivity of a finished two-stage survey',
  inputs: {
    clustersInPopulation: 'apiaries H, whole, or null',
    unitsInSampledClusters: 'list: colonies in each visited apiary, or null',
    unitsTested: 'list: colonies opened in each',
    designPrevalenceClusters: 'infected share of apiaries, above 0, up to 1',
    designPrevalenceUnits: 'infected share of colonies within one, above 0, up to 1',
    unitSensitivity: 'sensitivity for one colony, above 0, up to 1',
  },
  formula:
    'SeC = 1 - (1 - Se n/N)^ceil(N Pu) or 1 - (1 - Pu Se)^n; 1 - (1 - mean(SeC) h/H)^ceil(H Pc) or 1 - prod(1 - Pc SeC)',
  sources: ['MARTIN07', 'MACDIARMID88'],
  call: twoStageSystemSensitivity,
  steps: (i, r) => [
    `per apiary: ${shownList(r.clusterSensitivities)}`,
    `over ${i.unitsTested.length} apiaries: ${shown(r.systemSensitivity)}`,
  ],
});

/**
 * The exact system sensitivity of a two-stage survey of a finite district: D = ceil(H Pc) of H apiaries infected, the
 * h visited a random sample of them; an infected apiary of N colonies has ceil(N Pu) infected.
 *
 *   miss = sum over y of hyper(y; H, D, h) * (mean over all y-subsets of visited apiaries of the product of 1 - SeC)
 *
 * The mean over subsets is the elementary symmetric polynomial divided by the number of subsets, kept as a mean at
 * every step so that it neither overflows nor loses digits.
 *
 * @param inputs as for `twoStageSystemSensitivity`, with all sizes known
 * @throws DomainError on inputs outside their ranges
 * Source: Martin, Cameron and Greiner 2007 [MARTIN07] for the two stages, Cameron and Baldock 1998 [CAMERON98] for the
 * exact count; the averaging over subsets is our arithmetic, checked by enumeration
 */
export function twoStageSystemSensitivityExact(inputs: {
  clustersInPopulation: number;
  unitsInSampledClusters: readonly number[];
  unitsTested: readonly number[];
  designPrevalenceClusters: number;
  designPrevalenceUnits: number;
  unitSensitivity: number;
}): SystemSensitivity {
  const clusterPrevalence = acceptPositiveFraction('designPrevalenceClusters', inputs.designPrevalenceClusters);
  const unitPrevalence = acceptPositiveFraction('designPrevalenceUnits', inputs.designPrevalenceUnits);
  const sensitivity = acceptPositiveFraction('unitSensitivity', inputs.unitSensitivity);
  const tested = acceptList('unitsTested', inputs.unitsTested, (name, value) => acceptCount(name, value));
  const sizes = acceptSizes(inputs.unitsInSampledClusters, tested);
  const visited = tested.length;
  const clusters = acceptClusters(inputs.clustersInPopulation, visited);
  const infectedClusters = infectedUnitsFromPrevalence(clusters, clusterPrevalence);
  const clusterSensitivities = tested.map((n, i) => {
    const size = sizes[i] as number;
    return probabilityDetected(size, infectedUnitsFromPrevalence(size, unitPrevalence), n, sensitivity);
  });
  const most = Math.min(visited, infectedClusters);
  const meanProducts = new Float64Array(most + 1);
  meanProducts[0] = 1;
  clusterSensitivities.forEach((se, i) => {
    const seen = i + 1;
    for (let k = Math.min(seen, most); k >= 1; k--) {
      meanProducts[k] =
        ((seen - k) / seen) * (meanProducts[k] as number) + (k / seen) * (1 - se) * (meanProducts[k - 1] as number);
    }
  });
  let miss = 0;
  meanProducts.forEach((product, y) => {
    miss += hypergeometricMass(y, clusters, infectedClusters, visited) * product;
  });
  return { systemSensitivity: Math.max(0, 1 - miss), clusterSensitivities };
}

export const twoStageSystemSensitivityExactCalculation = calculation({
  name: 'twoStageSystemSensitivityExact',
  room: 'sampling',
  line: 'exact sensitivity of a two-stage survey of a finite district',
  inputs: {
    clustersInPopulation: 'apiaries H, whole',
    unitsInSampledClusters: 'list: colonies in each visited apiary',
    unitsTested: 'list: colonies opened in each',
    designPrevalenceClusters: 'infected share of apiaries, above 0, up to 1',
    designPrevalenceUnits: 'infected share of colonies within one, above 0, up to 1',
    unitSensitivity: 'sensitivity for one colony, above 0, up to 1',
  },
  formula: 'miss = sum_y hyper(y; H, D, h) * mean over y-subsets of prod(1 - SeC)',
  sources: ['MARTIN07', 'CAMERON98'],
  call: twoStageSystemSensitivityExact,
  steps: (i, r) => [
    `D = ${infectedUnitsFromPrevalence(i.clustersInPopulation, i.designPrevalenceClusters)} of ${i.clustersInPopulation} apiaries infected`,
    `per apiary: ${shownList(r.clusterSensitivities)}`,
    `system sensitivity ${shown(r.systemSensitivity)}`,
  ],
});

function acceptClusters(given: number, visited: number): number {
  const clusters = acceptCount('clustersInPopulation', given, 1);
  if (visited > clusters) {
    throw new DomainError('unitsTested', `a list of at most ${clusters} items (clustersInPopulation)`, visited);
  }
  return clusters;
}

function acceptSizes(given: readonly number[], tested: readonly number[]): number[] {
  const sizes = acceptList(
    'unitsInSampledClusters',
    given,
    (name, value) => acceptCount(name, value, 1),
    tested.length,
    'unitsTested',
  );
  tested.forEach((n, i) => {
    acceptCount(`unitsTested[${i}]`, n, 0, sizes[i] as number, `unitsInSampledClusters[${i}]`);
  });
  return sizes;
}

/** One line per number of colonies opened in each apiary. */
export interface ApiariesPerOption {
  readonly clusterSensitivities: readonly number[];
  readonly clusters: readonly number[];
  readonly costs: readonly number[];
  readonly cheapestUnitsPerCluster: number;
}

/**
 * How many apiaries must be visited when k colonies are opened in each, and which k is cheapest?
 *
 *   SeC(k) = 1 - (1 - Pu Se)^k; h = sample size for the system target with SeC(k) in the place of Se;
 *   cost = h (visit + k * inspection). Both stages large-population. Ties go to the smaller k.
 *
 * @param inputs.unitsPerClusterOptions the numbers k to compare, each whole, 1 or more
 * @param inputs.visitCost cost of one apiary visit, 0 or more, any unit (minutes, money)
 * @param inputs.inspectionCost cost of one colony, same unit, 0 or more
 * @throws DomainError on inputs outside their ranges
 * Source: Martin, Cameron and Greiner 2007 [MARTIN07]; the cost comparison is arithmetic
 */
export function apiariesForColoniesPerApiary(inputs: {
  designPrevalenceClusters: number;
  designPrevalenceUnits: number;
  unitSensitivity: number;
  targetSystemSensitivity: number;
  unitsPerClusterOptions: readonly number[];
  visitCost: number;
  inspectionCost: number;
}): ApiariesPerOption {
  const clusterPrevalence = acceptPositiveFraction('designPrevalenceClusters', inputs.designPrevalenceClusters);
  const unitPrevalence = acceptPositiveFraction('designPrevalenceUnits', inputs.designPrevalenceUnits);
  const sensitivity = acceptPositiveFraction('unitSensitivity', inputs.unitSensitivity);
  const target = acceptOpenFraction('targetSystemSensitivity', inputs.targetSystemSensitivity);
  const visit = acceptNonNegative('visitCost', inputs.visitCost);
  const inspection = acceptNonNegative('inspectionCost', inputs.inspectionCost);
  const options = acceptList('unitsPerClusterOptions', inputs.unitsPerClusterOptions, (name, value) =>
    acceptCount(name, value, 1),
  );
  const clusterSensitivities = options.map((k) => -Math.expm1(k * Math.log1p(-unitPrevalence * sensitivity)));
  const clusters = clusterSensitivities.map(
    (se) =>
      sampleSizeToDetectLargePopulation({ designPrevalence: clusterPrevalence, confidence: target, sensitivity: se })
        .sampleSize as number,
  );
  const costs = clusters.map((h, i) => h * (visit + inspection * (options[i] as number)));
  const lowest = Math.min(...costs);
  const cheapestUnitsPerCluster = Math.min(...options.filter((_, i) => costs[i] === lowest));
  return { clusterSensitivities, clusters, costs, cheapestUnitsPerCluster };
}

export const apiariesForColoniesPerApiaryCalculation = calculation({
  name: 'apiariesForColoniesPerApiary',
  room: 'sampling',
  line: 'apiaries needed for each number of colonies opened in one, and the cheapest',
  inputs: {
    designPrevalenceClusters: 'infected share of apiaries, above 0, up to 1',
    designPrevalenceUnits: 'infected share of colonies within one, above 0, up to 1',
    unitSensitivity: 'sensitivity for one colony, above 0, up to 1',
    targetSystemSensitivity: 'wanted for the whole, above 0 and below 1',
    unitsPerClusterOptions: 'list: numbers of colonies to compare',
    visitCost: 'cost of one visit, 0 or more',
    inspectionCost: 'cost of one colony, same unit, 0 or more',
  },
  formula: 'SeC = 1 - (1 - Pu Se)^k; h = sample size with SeC; cost = h (visit + k inspection)',
  sources: ['MARTIN07'],
  call: apiariesForColoniesPerApiary,
  steps: (i, r) =>
    i.unitsPerClusterOptions.map(
      (k, j) =>
        `${k} colonies: apiary sensitivity ${shown(r.clusterSensitivities[j])}, ${shown(r.clusters[j])} apiaries, cost ${shown(r.costs[j])}`,
    ),
});
