import type { SourceId } from '@combside/sources/bibliography';
import type { SourcedValue } from '@combside/sources/sourced-value';
import { calculation, shown } from '../distributions/calculation.ts';

export type Caste = 'worker' | 'drone' | 'queen';

/** Days from laying to emerging, stage by stage. */
export interface StageDays {
  readonly egg: number;
  readonly larva: number;
  readonly capped: number;
}

/** Days of each stage, with where they come from. */
export const stageDays: Readonly<Record<Caste, StageDays & { readonly sources: readonly SourceId[] }>> = {
  worker: { egg: 3, larva: 6, capped: 12, sources: ['DEV-CASTE', 'NZ-DEV'] },
  drone: { egg: 3, larva: 6.5, capped: 14.5, sources: ['DEV-CASTE'] },
  queen: { egg: 3, larva: 5.5, capped: 7.5, sources: ['DEV-CASTE'] },
};

/** Days from laying to emerging. */
export function totalDays(caste: Caste): number {
  const { egg, larva, capped } = stageDays[caste];
  return egg + larva + capped;
}

/** The worker's clock: the day, counted from laying, on which each thing happens (NZ-DEV). */
export const workerClock = { hatches: 3, stretches: 8, capped: 9, pupates: 12, emerges: 21 } as const;

/**
 * Brood of each stage for one egg, with steady laying and no losses: 1 : 2 : 4 in worker brood (RATIO).
 */
export function steadyRatio(caste: Caste): StageDays {
  const { egg, larva, capped } = stageDays[caste];
  return { egg: 1, larva: larva / egg, capped: capped / egg };
}

/** How far a steady colony may stray from the ratio, either way (RATIO; the width is common practice, no source). */
export const steadyRatioTolerance: SourcedValue = {
  value: 0.25,
  unit: 'share',
  standing: 'common practice',
  sources: ['RATIO'],
};

/** What the amounts of brood by stage suggest. */
export type BroodBalance = 'steady' | 'capped brood missing' | 'eggs missing' | 'growing or shrinking';

/**
 * Compares eggs, larvae and capped cells with steady laying: a shortfall of capped cells against larvae suggests losses,
 * a shortfall of eggs a failing or lost queen (arithmetic on RATIO). A suggestion, not a finding.
 *
 * @param cells worker cells of each stage, from 0
 * @throws RangeError when a number is negative or all are 0
 */
export function broodBalance(cells: StageDays): BroodBalance {
  const { egg, larva, capped } = cells;
  for (const count of [egg, larva, capped]) {
    if (!(count >= 0)) throw new RangeError(`${count} cells of brood: give a number from 0`);
  }
  if (egg + larva + capped === 0) throw new RangeError('no brood at all: there is no balance to judge');
  const tolerance = steadyRatioTolerance.value;
  const within = (found: number, wanted: number): boolean => Math.abs(found / wanted - 1) <= tolerance;
  if (within(larva, 2 * egg) && within(capped, 2 * larva)) return 'steady';
  if (capped < 2 * larva * (1 - tolerance)) return 'capped brood missing';
  if (egg < (larva / 2) * (1 - tolerance)) return 'eggs missing';
  return 'growing or shrinking';
}

export const broodBalanceCalculation = calculation({
  name: 'broodBalance',
  room: 'colony',
  line: 'eggs : larvae : capped against 1 : 2 : 4 of steady laying',
  inputs: { egg: 'cells with eggs, 0 or more', larva: 'cells with open larvae', capped: 'capped cells' },
  formula: 'each step within 25 % of twofold is steady',
  sources: ['RATIO'],
  call: (i: { egg: number; larva: number; capped: number }) => ({ balance: broodBalance(i) }),
  steps: (i, r) => [
    `${shown(i.egg)} : ${shown(i.larva)} : ${shown(i.capped)} is ${r.balance} (a suggestion, not a finding)`,
  ],
});

/**
 * Eggs laid a day, from the capped worker cells of a colony laying steadily: capped cells / 12 (arithmetic).
 *
 * @param cappedCells from 0
 * @throws RangeError when negative
 */
export function eggsPerDay(cappedCells: number): number {
  if (!(cappedCells >= 0)) throw new RangeError(`${cappedCells} capped cells: give a number from 0`);
  return cappedCells / stageDays.worker.capped;
}

export const eggsPerDayCalculation = calculation({
  name: 'eggsPerDay',
  room: 'colony',
  line: 'eggs laid a day, from capped worker cells with steady laying',
  inputs: { cappedCells: 'capped worker cells, 0 or more' },
  formula: 'capped / 12',
  sources: ['DEV-CASTE'],
  call: (i: { cappedCells: number }) => ({ eggsPerDay: eggsPerDay(i.cappedCells) }),
  steps: (i, r) => [`${shown(i.cappedCells)} / 12 = ${shown(r.eggsPerDay)}`],
});
