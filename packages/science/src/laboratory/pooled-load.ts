import { calculation, shown } from '../distributions/calculation.ts';
import { acceptCount, acceptFraction, acceptNonNegative, acceptPositive } from '../distributions/domain.ts';

/**
 * What does a pool of equal parts show when one part is positive, and is that still caught?
 *
 *   pool load = L / k; caught when it reaches the detection limit
 *
 * Worked: five parts, one at 6 CFU/g: 1.2 CFU/g, caught at a limit of 1 and missed at 2.
 *
 * @param inputs.load L of the one positive part, 0 or more, any unit
 * @param inputs.parts k, whole, 1 or more
 * @param inputs.detectionLimit of the method, above 0, same unit
 * @returns the pool's load, whether it reaches the limit, and the least load of one part that would
 * @throws DomainError on inputs outside these ranges
 * Source: arithmetic
 */
export function loadInPool(inputs: { load: number; parts: number; detectionLimit: number }): {
  poolLoad: number;
  reachesLimit: boolean;
  leastLoadCaught: number;
} {
  const load = acceptNonNegative('load', inputs.load);
  const parts = acceptCount('parts', inputs.parts, 1);
  const limit = acceptPositive('detectionLimit', inputs.detectionLimit);
  const poolLoad = load / parts;
  return { poolLoad, reachesLimit: poolLoad >= limit, leastLoadCaught: limit * parts };
}

export const loadInPoolCalculation = calculation({
  name: 'loadInPool',
  room: 'laboratory',
  line: 'what a pool of equal parts shows when one part is positive',
  inputs: {
    load: 'of the positive part, 0 or more',
    parts: 'parts in the pool, whole',
    detectionLimit: 'same unit, above 0',
  },
  formula: 'load / parts, caught when at the limit or above',
  sources: [],
  call: loadInPool,
  steps: (i, r) => [
    `${shown(i.load)} / ${i.parts} = ${shown(r.poolLoad)}, ${r.reachesLimit ? 'reaches' : 'stays below'} ${shown(i.detectionLimit)}`,
    `least load of one part that is caught: ${shown(r.leastLoadCaught)}`,
  ],
});

/**
 * How likely is at least one carrier among the bees taken from a positive hive?
 *
 *   1 - (1 - f)^n
 *
 * Carriers are clumped, and with light disease few bees carry: this even-mix formula is optimistic.
 * Worked: 30 bees at 10 %: 0.958.
 *
 * @param inputs.carrierShare f, fraction of the hive's bees that carry, 0 to 1
 * @param inputs.bees n, whole, 1 or more
 * @throws DomainError on inputs outside these ranges
 * Source: Pirk et al. 2013, s. 2.2 [BB-STAT-2.2]; Forsgren et al. 2013, s. 4 [BB-EFB-4]
 */
export function chanceOfCarrierInSample(inputs: { carrierShare: number; bees: number }): { probability: number } {
  const share = acceptFraction('carrierShare', inputs.carrierShare);
  return { probability: -Math.expm1(acceptCount('bees', inputs.bees, 1) * Math.log1p(-share)) };
}

export const chanceOfCarrierInSampleCalculation = calculation({
  name: 'chanceOfCarrierInSample',
  room: 'laboratory',
  line: 'chance of at least one carrier among the bees taken from a positive hive',
  inputs: { carrierShare: 'share of its bees that carry, 0 to 1', bees: 'bees taken, whole' },
  formula: '1 - (1 - f)^n',
  sources: ['BB-STAT-2.2', 'BB-EFB-4'],
  call: chanceOfCarrierInSample,
  steps: (i, r) => [
    `(1 - ${shown(i.carrierShare)})^${i.bees} = ${shown(1 - r.probability)}; chance ${shown(r.probability)} (optimistic: carriers are clumped)`,
  ],
});
