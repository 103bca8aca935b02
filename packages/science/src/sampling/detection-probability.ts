import { calculation, shown } from '../distributions/calculation.ts';
import {
  acceptCount,
  acceptFraction,
  acceptList,
  acceptPositiveFraction,
  DomainError,
  isUnknown,
} from '../distributions/domain.ts';
import { probabilityNoneDetected } from '../distributions/hypergeometric.ts';
import { infectedUnitsFromPrevalence } from './infected-units.ts';
import * as described from './inputs-described.ts';

/** A chance, as a fraction from 0 to 1. */
export interface Probability {
  readonly probability: number;
}

/**
 * How likely is at least one positive among n units of a very large population infected at the design prevalence?
 *
 *   1 - (1 - P Se)^n
 *
 * Perfect specificity: every positive is followed up until it is refuted. For an apiary of known size use
 * `detectionProbabilityFinitePopulation`; this formula is pessimistic there.
 * Worked: 30 bees at 5 % carriers, perfect test: 0.785.
 *
 * @param inputs.tested n, whole, 0 or more
 * @param inputs.designPrevalence P, fraction 0 to 1
 * @param inputs.sensitivity Se of one test, fraction 0 to 1
 * @throws DomainError on inputs outside these ranges
 * Source: Martin, Shoukri and Thorburn 1992 [MARTIN92]; Pirk et al. 2013, s. 2.2 [BB-STAT-2.2]
 */
export function detectionProbabilityLargePopulation(inputs: {
  tested: number;
  designPrevalence: number;
  sensitivity: number;
}): Probability {
  const tested = acceptCount('tested', inputs.tested);
  const prevalence = acceptFraction('designPrevalence', inputs.designPrevalence);
  const sensitivity = acceptFraction('sensitivity', inputs.sensitivity);
  if (tested === 0) return { probability: 0 };
  return { probability: -Math.expm1(tested * Math.log1p(-prevalence * sensitivity)) };
}

export const detectionProbabilityLargePopulationCalculation = calculation({
  name: 'detectionProbabilityLargePopulation',
  room: 'sampling',
  line: 'chance of at least one positive, very large population',
  inputs: {
    tested: described.tested,
    designPrevalence: described.designPrevalence,
    sensitivity: described.sensitivity,
  },
  formula: '1 - (1 - P Se)^n',
  sources: ['MARTIN92', 'BB-STAT-2.2'],
  call: detectionProbabilityLargePopulation,
  steps: (i, r) => [
    `1 - P Se = ${shown(1 - i.designPrevalence * i.sensitivity)}, to the power ${i.tested} = ${shown(1 - r.probability)}`,
    `chance to find: ${shown(r.probability)}`,
  ],
});

/**
 * How likely is at least one positive among n of N units, d of them infected, drawn without replacement?
 *
 *   1 - sum over y of hyper(y; N, d, n) (1 - Se)^y        (exact; perfect specificity)
 *
 * Worked: 10 of 40 colonies opened, 1 diseased, per-colony sensitivity 0.8: 0.20. All 40 opened: 0.80, never more.
 *
 * @param inputs.populationSize N, whole, 1 or more
 * @param inputs.infectedUnits d, whole, 0 to N
 * @param inputs.tested n, whole, 0 to N
 * @param inputs.sensitivity Se of one test, fraction 0 to 1
 * @throws DomainError on inputs outside these ranges
 * Source: Cameron and Baldock 1998 [CAMERON98]
 */
export function detectionProbabilityFinitePopulation(inputs: {
  populationSize: number;
  infectedUnits: number;
  tested: number;
  sensitivity: number;
}): Probability {
  const { size, infected, tested, sensitivity } = acceptFinite(inputs);
  return { probability: probabilityDetected(size, infected, tested, sensitivity) };
}

export const detectionProbabilityFinitePopulationCalculation = calculation({
  name: 'detectionProbabilityFinitePopulation',
  room: 'sampling',
  line: 'chance of at least one positive among n of N units (exact)',
  inputs: {
    populationSize: described.populationSize,
    infectedUnits: described.infectedUnits,
    tested: `${described.tested}, up to N`,
    sensitivity: described.sensitivity,
  },
  formula: '1 - sum_y hyper(y; N, d, n)(1 - Se)^y',
  sources: ['CAMERON98'],
  call: detectionProbabilityFinitePopulation,
  steps: (i, r) => [
    `${i.tested} of ${i.populationSize} drawn, ${i.infectedUnits} infected: ${shown((i.tested * i.infectedUnits) / i.populationSize)} infected expected in the sample`,
    `chance that none of them is detected: ${shown(1 - r.probability)}`,
    `chance to find: ${shown(r.probability)}`,
  ],
});

/** 1 - the chance that none is detected, on inputs already accepted. */
export function probabilityDetected(N: number, d: number, n: number, sensitivity: number): number {
  return Math.max(0, 1 - probabilityNoneDetected(N, d, n, 1 - sensitivity));
}

/**
 * The usual approximation to the finite detection probability: 1 - (1 - Se n/N)^d. It treats the infected units as
 * independently sampled; exact for d = 1, otherwise a little low.
 *
 * @param inputs as for `detectionProbabilityFinitePopulation`
 * @throws DomainError on inputs outside their ranges
 * Source: MacDiarmid 1988 [MACDIARMID88]
 */
export function detectionProbabilityFiniteApproximation(inputs: {
  populationSize: number;
  infectedUnits: number;
  tested: number;
  sensitivity: number;
}): Probability {
  const { size, infected, tested, sensitivity } = acceptFinite(inputs);
  return { probability: 1 - (1 - (sensitivity * tested) / size) ** infected };
}

export const detectionProbabilityFiniteApproximationCalculation = calculation({
  name: 'detectionProbabilityFiniteApproximation',
  room: 'sampling',
  line: 'chance of at least one positive, usual finite approximation',
  inputs: {
    populationSize: described.populationSize,
    infectedUnits: described.infectedUnits,
    tested: `${described.tested}, up to N`,
    sensitivity: described.sensitivity,
  },
  formula: '1 - (1 - Se n/N)^d',
  sources: ['MACDIARMID88'],
  call: detectionProbabilityFiniteApproximation,
  steps: (i, r) => [
    `1 - Se n/N = ${shown(1 - (i.sensitivity * i.tested) / i.populationSize)}`,
    `to the power ${i.infectedUnits}: ${shown(1 - r.probability)}; chance to find ${shown(r.probability)}`,
  ],
});

function acceptFinite(inputs: { populationSize: number; infectedUnits: number; tested: number; sensitivity: number }) {
  const size = acceptCount('populationSize', inputs.populationSize, 1);
  return {
    size,
    infected: acceptCount('infectedUnits', inputs.infectedUnits, 0, size, 'populationSize'),
    tested: acceptCount('tested', inputs.tested, 0, size, 'populationSize'),
    sensitivity: acceptFraction('sensitivity', inputs.sensitivity),
  };
}

/**
 * How likely is at least one positive when each unit was tested with its own sensitivity (different inspectors, hives
 * opened in part)?
 *
 *   large population:       1 - prod(1 - P Se_i)
 *   finite, approximation:  1 - (1 - sum(Se_i)/N)^d, d = ceil(N P)
 *
 * A unit that was not opened counts 0, or may be left out. Worked: 50 at 0.8 and 23 at 0.7, P = 5 %, N unknown: 0.943.
 *
 * @param inputs.populationSize N, whole, or null when unknown or very large
 * @param inputs.designPrevalence P, fraction above 0, up to 1
 * @param inputs.unitSensitivities Se_i, one fraction 0 to 1 per unit; not more than N of them
 * @throws DomainError on inputs outside these ranges
 * Source: Martin, Cameron and Greiner 2007 [MARTIN07]; finite form MacDiarmid 1988 [MACDIARMID88]
 */
export function detectionVaryingSensitivity(inputs: {
  populationSize: number | null;
  designPrevalence: number;
  unitSensitivities: readonly number[];
}): Probability {
  const prevalence = acceptPositiveFraction('designPrevalence', inputs.designPrevalence);
  const sensitivities = acceptList('unitSensitivities', inputs.unitSensitivities, acceptFraction);
  if (isUnknown(inputs.populationSize)) {
    const logMiss = sensitivities.reduce((sum, se) => sum + Math.log1p(-prevalence * se), 0);
    return { probability: -Math.expm1(logMiss) };
  }
  const size = acceptCount('populationSize', inputs.populationSize, 1);
  if (sensitivities.length > size) {
    throw new DomainError(
      'unitSensitivities',
      `a list of at most ${size} items (populationSize)`,
      sensitivities.length,
    );
  }
  const infected = infectedUnitsFromPrevalence(size, prevalence);
  const sum = sensitivities.reduce((a, b) => a + b, 0);
  return { probability: 1 - Math.max(0, 1 - sum / size) ** infected };
}

export const detectionVaryingSensitivityCalculation = calculation({
  name: 'detectionVaryingSensitivity',
  room: 'sampling',
  line: 'chance of at least one positive when every unit has its own sensitivity',
  inputs: {
    populationSize: described.populationSizeOrNull,
    designPrevalence: described.designPrevalence,
    unitSensitivities: 'list: sensitivity per unit, fractions 0 to 1',
  },
  formula: 'large 1 - prod(1 - P Se_i); finite 1 - (1 - sum(Se_i)/N)^ceil(N P)',
  sources: ['MARTIN07', 'MACDIARMID88'],
  call: detectionVaryingSensitivity,
  steps: (i, r) => [
    `${i.unitSensitivities.length} units, sensitivities adding up to ${shown(i.unitSensitivities.reduce((a, b) => a + b, 0))}`,
    i.populationSize === null
      ? 'population very large'
      : `d = ${infectedUnitsFromPrevalence(i.populationSize, i.designPrevalence)} of ${i.populationSize}`,
    `chance to find: ${shown(r.probability)}`,
  ],
});
