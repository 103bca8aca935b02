import { acceptCount, acceptPositiveFraction } from '../distributions/domain.ts';
import { guardedCeil } from '../distributions/target.ts';

/**
 * How many infected units does a design prevalence mean in a population of known size?
 *
 *   d = max(1, ceil(N * P)), the product guarded: 100 * 0.07 is 7, not 8.
 *
 * Ceil, because "at least P" cannot be met by fewer. Worked: 6 colonies at 0.05 mean 1 colony, that is 17 %.
 *
 * @param populationSize N, whole, 1 or more
 * @param designPrevalence P, fraction above 0, up to 1
 * @throws DomainError on inputs outside these ranges
 */
export function infectedUnitsFromPrevalence(populationSize: number, designPrevalence: number): number {
  const size = acceptCount('populationSize', populationSize, 1);
  return Math.max(1, guardedCeil(size * acceptPositiveFraction('designPrevalence', designPrevalence)));
}
