import { calculation, shown } from '../distributions/calculation.ts';
import { acceptCount, acceptOpenFraction, acceptPositiveFraction } from '../distributions/domain.ts';
import { countToDetect, guardedCeil, meets, smallestCount } from '../distributions/target.ts';
import { detectionProbabilityFinitePopulation, probabilityDetected } from './detection-probability.ts';
import { infectedUnitsFromPrevalence } from './infected-units.ts';
import * as described from './inputs-described.ts';

/** How many units to test; null when no number of units reaches the target. */
export interface SampleSize {
  readonly sampleSize: number | null;
}

/**
 * How many units of a very large population must be tested to find at least one positive with the wanted confidence,
 * when the infected fraction is the design prevalence?
 *
 *   n = ceil(ln(1 - C) / ln(1 - P Se)), never below 1; exact ties are met, so P = 0.2, C = 0.488 gives 3.
 *
 * Perfect specificity. For an apiary of known size use the finite form: 25 of 100 instead of 29.
 * Worked: 5 % carriers, 95 %, perfect test: 59 bees; with sensitivity 0.8: 74.
 *
 * @param inputs.designPrevalence P, fraction above 0, up to 1
 * @param inputs.confidence C, fraction above 0 and below 1
 * @param inputs.sensitivity Se, fraction above 0, up to 1
 * @throws DomainError on inputs outside these ranges
 * Source: Martin, Shoukri and Thorburn 1992 [MARTIN92]; Pirk et al. 2013, s. 2.2 [BB-STAT-2.2]
 */
export function sampleSizeToDetectLargePopulation(inputs: {
  designPrevalence: number;
  confidence: number;
  sensitivity: number;
}): SampleSize {
  const prevalence = acceptPositiveFraction('designPrevalence', inputs.designPrevalence);
  const confidence = acceptOpenFraction('confidence', inputs.confidence);
  const sensitivity = acceptPositiveFraction('sensitivity', inputs.sensitivity);
  return { sampleSize: countToDetect(Math.log1p(-prevalence * sensitivity), confidence) };
}

export const sampleSizeToDetectLargePopulationCalculation = calculation({
  name: 'sampleSizeToDetectLargePopulation',
  room: 'sampling',
  line: 'how many units of a very large population to test to find at least one',
  inputs: {
    designPrevalence: described.designPrevalence,
    confidence: described.confidence,
    sensitivity: `${described.sensitivity}, above 0`,
  },
  formula: 'n = ceil(ln(1 - C) / ln(1 - P Se)), never below 1; ties to 1e-12 are met',
  sources: ['MARTIN92', 'BB-STAT-2.2'],
  call: sampleSizeToDetectLargePopulation,
  steps: (i, r) => [
    `P Se = ${shown(i.designPrevalence * i.sensitivity)}`,
    `ln(1 - ${i.confidence}) / ln(1 - P Se) = ${shown(Math.log(1 - i.confidence) / Math.log1p(-i.designPrevalence * i.sensitivity))}`,
    `smallest whole number that meets ${i.confidence}: ${shown(r.sampleSize)}`,
  ],
});

/**
 * How many of N units, d of them infected, must be tested to find at least one positive with the wanted confidence?
 *
 *   smallest n with 1 - sum over y of hyper(y; N, d, n) (1 - Se)^y >= C        (exact; perfect specificity)
 *
 * Opening everything gives at most 1 - (1 - Se)^d, so a small apiary may have no answer: `null` means "cannot be
 * reached by one inspection". Worked: N = 100, d = 10, 95 %, perfect test: 25.
 *
 * @param inputs.populationSize N, whole, 1 or more
 * @param inputs.infectedUnits d, whole, 1 to N
 * @param inputs.confidence C, fraction above 0 and below 1
 * @param inputs.sensitivity Se, fraction above 0, up to 1
 * @throws DomainError on inputs outside these ranges
 * Source: Cameron and Baldock 1998 [CAMERON98]
 */
export function sampleSizeToDetectFinitePopulation(inputs: {
  populationSize: number;
  infectedUnits: number;
  confidence: number;
  sensitivity: number;
}): SampleSize {
  const size = acceptCount('populationSize', inputs.populationSize, 1);
  const infected = acceptCount('infectedUnits', inputs.infectedUnits, 1, size, 'populationSize');
  const confidence = acceptOpenFraction('confidence', inputs.confidence);
  const sensitivity = acceptPositiveFraction('sensitivity', inputs.sensitivity);
  return {
    sampleSize: smallestCount(1, size, (n) => meets(probabilityDetected(size, infected, n, sensitivity), confidence)),
  };
}

export const sampleSizeToDetectFinitePopulationCalculation = calculation({
  name: 'sampleSizeToDetectFinitePopulation',
  room: 'sampling',
  line: 'how many of N units to test to find at least one of d infected (exact)',
  inputs: {
    populationSize: described.populationSize,
    infectedUnits: `${described.infectedUnits}, 1 or more`,
    confidence: described.confidence,
    sensitivity: `${described.sensitivity}, above 0`,
  },
  formula: 'smallest n with 1 - sum_y hyper(y; N, d, n)(1 - Se)^y >= C; null when all N are not enough',
  sources: ['CAMERON98'],
  call: sampleSizeToDetectFinitePopulation,
  steps: (i, r) => {
    const at = (k: number) => detectionProbabilityFinitePopulation({ ...i, tested: k }).probability;
    const all = `all ${i.populationSize} tested: ${shown(at(i.populationSize))}`;
    if (r.sampleSize === null) return [all, `below ${i.confidence}: cannot be reached by one inspection`];
    return [
      all,
      `${r.sampleSize - 1} tested: ${shown(at(r.sampleSize - 1))}, below ${i.confidence}`,
      `${r.sampleSize} tested: ${shown(at(r.sampleSize))}, reaches it`,
    ];
  },
});

/**
 * Cannon and Roe's approximation for a finite population and a perfect test.
 *
 *   n = (1 - (1 - C)^(1/d)) (N - (d - 1)/2)
 *
 * Rounded up it equals the exact answer nearly always (118 of 120 combinations tried, otherwise 1 too many); kept
 * because published plans quote it. Prefer `sampleSizeToDetectFinitePopulation`.
 *
 * @param inputs.populationSize N, whole, 1 or more
 * @param inputs.infectedUnits d, whole, 1 to N
 * @param inputs.confidence C, fraction above 0 and below 1
 * @returns the formula's value, and that value rounded up, never below 1
 * @throws DomainError on inputs outside these ranges
 * Source: Cannon and Roe 1982 [CANNON82]
 */
export function sampleSizeApproximationPerfectTest(inputs: {
  populationSize: number;
  infectedUnits: number;
  confidence: number;
}): { unrounded: number; sampleSize: number } {
  const size = acceptCount('populationSize', inputs.populationSize, 1);
  const infected = acceptCount('infectedUnits', inputs.infectedUnits, 1, size, 'populationSize');
  const confidence = acceptOpenFraction('confidence', inputs.confidence);
  const unrounded = detectedShare(confidence, infected) * (size - (infected - 1) / 2);
  return { unrounded, sampleSize: Math.max(1, guardedCeil(unrounded)) };
}

export const sampleSizeApproximationPerfectTestCalculation = calculation({
  name: 'sampleSizeApproximationPerfectTest',
  room: 'sampling',
  line: "Cannon and Roe's approximation, finite population, perfect test",
  inputs: {
    populationSize: described.populationSize,
    infectedUnits: `${described.infectedUnits}, 1 or more`,
    confidence: described.confidence,
  },
  formula: 'n = (1 - (1 - C)^(1/d)) (N - (d - 1)/2), rounded up',
  sources: ['CANNON82'],
  call: sampleSizeApproximationPerfectTest,
  steps: (i, r) => [
    `1 - (1 - C)^(1/d) = ${shown(1 - (1 - i.confidence) ** (1 / i.infectedUnits))}`,
    `times ${shown(i.populationSize - (i.infectedUnits - 1) / 2)} = ${shown(r.unrounded)}`,
    `rounded up: ${r.sampleSize}`,
  ],
});

/**
 * MacDiarmid's approximation for a finite population and imperfect sensitivity.
 *
 *   d = ceil(N P), n = ceil((N / Se) (1 - (1 - C)^(1/d))), null when above N
 *
 * 0 to 3 too many against the exact answer, and sometimes "cannot" where the exact form finds one; kept because
 * two-stage plans use it. Worked: N = 500, P = 5 %, 95 %, Se 0.9: 63.
 *
 * @param inputs.populationSize N, whole, 1 or more
 * @param inputs.designPrevalence P, fraction above 0, up to 1
 * @param inputs.confidence C, fraction above 0 and below 1
 * @param inputs.sensitivity Se, fraction above 0, up to 1
 * @throws DomainError on inputs outside these ranges
 * Source: MacDiarmid 1988 [MACDIARMID88]
 */
export function sampleSizeApproximationImperfectSensitivity(inputs: {
  populationSize: number;
  designPrevalence: number;
  confidence: number;
  sensitivity: number;
}): { infectedUnits: number; sampleSize: number | null } {
  const size = acceptCount('populationSize', inputs.populationSize, 1);
  const infectedUnits = infectedUnitsFromPrevalence(size, inputs.designPrevalence);
  const confidence = acceptOpenFraction('confidence', inputs.confidence);
  const sensitivity = acceptPositiveFraction('sensitivity', inputs.sensitivity);
  const n = Math.max(1, guardedCeil((size / sensitivity) * detectedShare(confidence, infectedUnits)));
  return { infectedUnits, sampleSize: n > size ? null : n };
}

export const sampleSizeApproximationImperfectSensitivityCalculation = calculation({
  name: 'sampleSizeApproximationImperfectSensitivity',
  room: 'sampling',
  line: "MacDiarmid's approximation, finite population, imperfect sensitivity",
  inputs: {
    populationSize: described.populationSize,
    designPrevalence: described.designPrevalence,
    confidence: described.confidence,
    sensitivity: `${described.sensitivity}, above 0`,
  },
  formula: 'd = ceil(N P); n = ceil((N/Se)(1 - (1 - C)^(1/d))), null above N',
  sources: ['MACDIARMID88'],
  call: sampleSizeApproximationImperfectSensitivity,
  steps: (i, r) => [
    `d = ceil(${i.populationSize} * ${i.designPrevalence}) = ${r.infectedUnits}`,
    `(N/Se)(1 - (1 - C)^(1/d)) = ${shown((i.populationSize / i.sensitivity) * (1 - (1 - i.confidence) ** (1 / r.infectedUnits)))}`,
    `rounded up: ${shown(r.sampleSize)}`,
  ],
});

/** 1 - (1 - C)^(1/d): the share of the population to test when d units are infected. */
function detectedShare(confidence: number, infected: number): number {
  return -Math.expm1(Math.log1p(-confidence) / infected);
}
