import { acceptCount, acceptOpenFraction, acceptPositiveFraction } from '../distributions/domain.ts';
import { countToDetect, guardedCeil, meets, smallestCount } from '../distributions/target.ts';
import { probabilityDetected } from './detection-probability.ts';
import { infectedUnitsFromPrevalence } from './infected-units.ts';

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

/** 1 - (1 - C)^(1/d): the share of the population to test when d units are infected. */
function detectedShare(confidence: number, infected: number): number {
  return -Math.expm1(Math.log1p(-confidence) / infected);
}
