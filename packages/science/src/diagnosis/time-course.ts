import type { SourcedValue } from '@combside/sources/sourced-value';
import { workerClock } from '../brood/development-calendar.ts';

/** How American foulbrood runs in a worker larva: published times, and what follows from them by arithmetic. */

const days = (value: number, about: Partial<SourcedValue>): SourcedValue => ({
  value,
  unit: 'days',
  standing: 'published',
  sources: [],
  ...about,
});

/** Days from infection until every infected larva is dead, by how fast the genotype kills (mean and standard deviation). */
export const daysUntilAllDead = {
  fast: days(7.8, { low: 6.1, high: 9.5, sources: ['GEN05'] }),
  slow: days(11.2, { low: 10.4, high: 12, sources: ['GEN05'] }),
  slowest: days(11.6, { low: 11, high: 12.2, sources: ['GEN05'] }),
} as const;

/** Days from infection to the first deaths, as used for the earliest scale (arithmetic on GEN05). */
export const daysToDeath = days(6.5, { low: 5, high: 8, standing: 'arithmetic', sources: ['GEN05'] });

/** Days from feeding spores until a larva shows signs, as printed; GEN05 by arithmetic lets the first die sooner. */
export const daysToSigns = days(12.5, { low: 12, high: 13, sources: ['NZ-TIME'], doubts: 'Printed as about 12.5.' });

/** Days from death until scale is complete: about a month or more. */
export const daysToScale = days(32, { low: 30, high: 34, sources: ['MAAREC-SCALE', 'BOOKLET'] });

/** Days after death during which remains may rope: about three weeks, give or take one. */
export const ropyDays = days(21, { low: 14, high: 28, sources: ['BOOKLET'] });

/** Years for which dry spores were shown to live: over 35, so age never makes comb safe. */
export const sporeYears: SourcedValue = {
  value: 35,
  unit: 'years',
  standing: 'published',
  sources: ['NZ-MAN03'],
  doubts: 'At least; never an upper end.',
};

/** Spores that kill half of the larvae 24 to 28 hours old, reared in the laboratory. */
export const lethalSpores: SourcedValue = {
  value: 8.49,
  unit: 'spores per larva',
  standing: 'published',
  sources: ['BRO98'],
};

/** Spores in one dead larva that are believed; one leaflet prints 2.5 million, out of line with all others. */
export const sporesPerDeadLarva: SourcedValue = {
  value: 2.5e9,
  low: 1e8,
  high: 3e9,
  unit: 'spores',
  standing: 'published',
  sources: ['NZ-MAN03', 'MAAREC-SCALE', 'WOAH-9.2', 'DOG23'],
  doubts: 'EURL-AFB prints 2.5 million, likely a slip.',
};

/** Spores fed that infect a whole colony. */
export const colonyDose: SourcedValue = {
  value: 5e6,
  unit: 'spores',
  standing: 'published',
  sources: ['NZ-XFER'],
};

/** Whether a number of spores per larva is believable as a default. */
export function isBelievableSporeCount(spores: number): boolean {
  return spores >= (sporesPerDeadLarva.low as number) && spores <= (sporesPerDeadLarva.high as number);
}

/** Age of the larva up to which infection is expected, hours of larval life; beyond the high end it is not. */
export const susceptibleHours: SourcedValue = {
  value: 36,
  low: 36,
  high: 48,
  unit: 'hours',
  standing: 'published',
  sources: ['BEIMS20', 'BRO98', 'DOSE-OLD', 'FACT-CA'],
  doubts: 'Under 36 hours, resistant at 36 to 42, no effect of dose from 48, or "under 2.5 days" (FACT-CA).',
};

/**
 * Whether spores given at this age are expected to infect a worker larva (BEIMS20: under 36 hours; BRO98: no effect of
 * dose from 48 hours; between them sources disagree).
 *
 * @param hours of larval life, from 0
 * @throws RangeError when negative
 */
export function infectionAtAge(hours: number): 'expected' | 'unsure' | 'not expected' {
  if (!(hours >= 0)) throw new RangeError(`a larva of ${hours} hours: give a number from 0`);
  if (hours < (susceptibleHours.low as number)) return 'expected';
  return hours < (susceptibleHours.high as number) ? 'unsure' : 'not expected';
}

/**
 * Days after capping at which the last infected larvae die (arithmetic: infection on day 4, capping on day 9).
 *
 * @param untilAllDead days from infection until all are dead
 * @param infectedOn day of the worker's clock on which it was infected
 */
export function lastDeathAfterCapping(untilAllDead: number, infectedOn = 4): number {
  return infectedOn + untilAllDead - workerClock.capped;
}

/** Earliest day after infection on which scale can be found: low and high end, days (arithmetic, 35 to 42). */
export function earliestScale(): readonly [number, number] {
  return [
    (daysToDeath.low as number) + (daysToScale.low as number),
    (daysToDeath.high as number) + (daysToScale.high as number),
  ];
}
