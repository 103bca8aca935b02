import { acceptDay, type DaySpan, spanOf } from '../brood/calendar-day.ts';
import { calculation, shownSpan } from '../distributions/calculation.ts';
import { daysToDeath, daysToSigns, daysUntilAllDead, earliestScale, ropyDays } from './time-course.ts';

/** When an exposure can first show. Each day is the first, between two ends; none of them is a last day. */
export interface EarliestSigns {
  /** First dead brood, and with it sunken cappings and remains that may rope. */
  readonly deadBrood: DaySpan;
  /** The other published figure: when a larva shows signs. The two are not averaged. */
  readonly signsAsPublished: DaySpan;
  /** Every larva infected on the day of exposure is dead: fast genotypes at the early end, slow ones at the late. */
  readonly firstLarvaeAllDead: DaySpan;
  /** Until when the first remains may rope, before they dry. */
  readonly firstRemainsRopeUntil: DaySpan;
  /** First complete scale. */
  readonly scale: DaySpan;
  /** Always open: a colony exposed may show nothing for much longer, or ever. */
  readonly latest: null;
}

/**
 * When is the earliest sign after an exposure to American foulbrood?
 *
 *   dead brood 5 to 8 days, or signs about 12.5 days, by the other published figure; scale 30 to 34 days after that, 35 to 42 after the exposure
 *
 * Lower ends only, counted as if a larva young enough were fed spores on the very day. A look before `deadBrood` cannot
 * show this exposure; a look after it that shows nothing does not end the matter: spores wait in stores for seasons.
 *
 * @param inputs.exposedOn day on which spores may have come in, YYYY-MM-DD
 * @throws DomainError when it is no calendar day
 * Source: GEN05, NZ-TIME, BOOKLET, MAAREC-SCALE, through `time-course.ts`; the rest arithmetic
 */
export function earliestSigns(inputs: { exposedOn: string }): EarliestSigns {
  const day = acceptDay('exposedOn', inputs.exposedOn);
  const end = (value: number | undefined) => value as number;
  const [scaleFrom, scaleTo] = earliestScale();
  return {
    deadBrood: spanOf(day + end(daysToDeath.low), day + end(daysToDeath.high)),
    signsAsPublished: spanOf(day + end(daysToSigns.low), day + end(daysToSigns.high)),
    firstLarvaeAllDead: spanOf(day + end(daysUntilAllDead.fast.low), day + end(daysUntilAllDead.slowest.high)),
    firstRemainsRopeUntil: spanOf(
      day + end(daysToDeath.low) + end(ropyDays.low),
      day + end(daysToDeath.high) + end(ropyDays.high),
    ),
    scale: spanOf(day + scaleFrom, day + scaleTo),
    latest: null,
  };
}

export const earliestSignsCalculation = calculation({
  name: 'earliestSigns',
  room: 'colony',
  line: 'earliest signs of American foulbrood after an exposure; never a last day',
  inputs: { exposedOn: 'calendar day, YYYY-MM-DD' },
  formula: 'dead brood + 5 to 8 days, signs + about 12.5; scale + 35 to 42; first remains rope until + 19 to 36',
  sources: ['GEN05', 'NZ-TIME', 'BOOKLET', 'MAAREC-SCALE'],
  call: earliestSigns,
  steps: (i, r) => [
    `exposed on ${i.exposedOn}: first dead brood ${shownSpan(r.deadBrood)}, signs as published ${shownSpan(r.signsAsPublished)}`,
    `larvae infected that day all dead ${shownSpan(r.firstLarvaeAllDead)}, remains rope until ${shownSpan(r.firstRemainsRopeUntil)}`,
    `first complete scale ${shownSpan(r.scale)}; no upper end`,
  ],
});
