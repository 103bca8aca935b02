import { calculation, shownSpan } from '../distributions/calculation.ts';
import { acceptWord, DomainError } from '../distributions/domain.ts';
import { acceptDay, type DaySpan, spanOf } from './calendar-day.ts';
import { type Caste, stageDays, totalDays, workerClock } from './development-calendar.ts';

/** What can be seen in a cell that tells its age; the last four of worker cells only. */
export const cellStages = [
  'egg',
  'open larva',
  'capped',
  'coiled larva',
  'stretched larva',
  'prepupa',
  'pupa',
] as const;
export type CellStage = (typeof cellStages)[number];

/** When the things of one cell happen. Spans, because a look tells the stage and not the hour. */
export interface CellDates {
  readonly laid: DaySpan;
  readonly hatches: DaySpan;
  readonly capped: DaySpan;
  readonly emerges: DaySpan;
}

const workerOnly: Readonly<Partial<Record<CellStage, readonly [number, number]>>> = {
  'coiled larva': [workerClock.hatches, workerClock.stretches],
  'stretched larva': [workerClock.stretches, workerClock.capped],
  prepupa: [workerClock.capped, workerClock.pupates],
  pupa: [workerClock.pupates, workerClock.emerges],
};

/**
 * Youngest and oldest age, days from laying, of a cell in a stage.
 *
 * @throws DomainError for a stage whose days are known of workers only
 */
export function ageOf(caste: Caste, stage: CellStage): readonly [number, number] {
  const { egg, larva } = stageDays[caste];
  if (stage === 'egg') return [0, egg];
  if (stage === 'open larva') return [egg, egg + larva];
  if (stage === 'capped') return [egg + larva, totalDays(caste)];
  const known = caste === 'worker' ? workerOnly[stage] : undefined;
  if (!known) throw new DomainError('stage', `"egg", "open larva" or "capped" in ${caste} brood`, stage);
  return known;
}

/**
 * When was this cell laid, when is it capped, when will it emerge?
 *
 *   laid = day seen - age; each event = laid + its day; both ends outward to whole days
 *
 * Worked: a capped worker cell on 2026-06-21 was laid from 31 May to 12 June and emerges from 21 June to 3 July.
 * Mean days of brood kept warm; brood that cools takes longer (from memory), so a late cell may lie a little outside.
 *
 * @param inputs.caste "worker", "drone" or "queen"
 * @param inputs.stage one of `cellStages`
 * @param inputs.seenOn calendar day, YYYY-MM-DD
 * @throws DomainError on a stage, caste or day that does not exist
 * Source: stage days DEV-CASTE and NZ-DEV; the rest arithmetic
 */
export function cellDates(inputs: { caste: Caste; stage: CellStage; seenOn: string }): CellDates {
  const caste = acceptWord('caste', inputs.caste, ['worker', 'drone', 'queen']);
  const [youngest, oldest] = ageOf(caste, acceptWord('stage', inputs.stage, cellStages));
  const seen = acceptDay('seenOn', inputs.seenOn);
  const { egg, larva } = stageDays[caste];
  const at = (day: number) => spanOf(seen - oldest + day, seen - youngest + day);
  return { laid: at(0), hatches: at(egg), capped: at(egg + larva), emerges: at(totalDays(caste)) };
}

export const cellDatesCalculation = calculation({
  name: 'cellDates',
  room: 'colony',
  line: 'when a cell was laid, is capped and emerges, from the stage seen in it',
  inputs: {
    caste: '"worker", "drone" or "queen"',
    stage: '"egg", "open larva" or "capped"; in worker cells also "coiled larva", "stretched larva", "prepupa", "pupa"',
    seenOn: 'calendar day, YYYY-MM-DD',
  },
  formula: 'laid = seen - age of the stage; each event = laid + its day; outward to whole days',
  sources: ['DEV-CASTE', 'NZ-DEV'],
  call: cellDates,
  steps: (i, r) => [
    `${i.stage} in a ${i.caste} cell on ${i.seenOn}: laid ${shownSpan(r.laid)}`,
    `hatches ${shownSpan(r.hatches)}, capped ${shownSpan(r.capped)}, emerges ${shownSpan(r.emerges)}`,
  ],
});
