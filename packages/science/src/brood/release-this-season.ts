import { dayAt } from '@combside/calendar/day';
import { calculation } from '../distributions/calculation.ts';
import { acceptCount, DomainError, isUnknown } from '../distributions/domain.ts';
import { acceptDay } from './calendar-day.ts';
import { totalDays, workerClock } from './development-calendar.ts';

/** What worker brood there is to judge on a day. */
export type BroodThen = 'open and capped brood' | 'capped brood only' | 'no brood' | 'not known';

/** One look that the law asks for, at its earliest. */
export interface LookAgain {
  /** YYYY-MM-DD; null when it waits for brood whose return was not stated. */
  readonly earliest: string | null;
  readonly brood: BroodThen;
  /** True when the season's brood is over by then and the look waits for the next. */
  readonly waitsForBrood: boolean;
}

/** The looks of one case against the end of its brood. */
export interface SeasonForRelease {
  /** Last day with open worker brood, and with capped; null when the end of laying was not stated. */
  readonly lastOpenBrood: string | null;
  readonly lastCappedBrood: string | null;
  readonly looks: readonly LookAgain[];
  /** Day of the last look, when every look has brood to judge; null when one waits for brood without a day. */
  readonly notBefore: string | null;
  /** Whether all looks fall into this season's brood; null when the end of laying was not stated. */
  readonly thisSeason: boolean | null;
}

/**
 * When does brood end, so can this case be released this season?
 *
 *   last open worker brood = last eggs + 9 days, last capped = last eggs + 21; look k at first + (k - 1) * gap, put off to
 *   the first capped brood of next season (first eggs + 9) when none is left
 *
 * The calendar only: how many looks, when and how far apart is the law's, and a case is released by the authority.
 * When laying ends and begins was never published for a place: the inspector states it, from the colony at hand.
 *
 * @param inputs.countedFrom day from which the law counts (destruction, treatment), YYYY-MM-DD
 * @param inputs.firstLookAfterDays whole, 0 or more, by the law
 * @param inputs.looks how many looks without signs the law asks for, whole, 1 to 20
 * @param inputs.daysBetweenLooks whole, 0 or more, by the law
 * @param inputs.lastEggsOn last day with fresh eggs this season, as expected or seen; null when not known
 * @param inputs.firstEggsOn first day with eggs of next season, after `lastEggsOn`; null when not known
 * @throws DomainError on inputs outside these ranges
 * Source: stage days NZ-DEV; the rest arithmetic
 */
export function releaseThisSeason(inputs: {
  countedFrom: string;
  firstLookAfterDays: number;
  looks: number;
  daysBetweenLooks: number;
  lastEggsOn: string | null;
  firstEggsOn: string | null;
}): SeasonForRelease {
  const first =
    acceptDay('countedFrom', inputs.countedFrom) + acceptCount('firstLookAfterDays', inputs.firstLookAfterDays);
  const count = acceptCount('looks', inputs.looks, 1, 20);
  const gap = acceptCount('daysBetweenLooks', inputs.daysBetweenLooks);
  const lastEggs = isUnknown(inputs.lastEggsOn) ? null : acceptDay('lastEggsOn', inputs.lastEggsOn);
  const firstEggs = isUnknown(inputs.firstEggsOn) ? null : acceptDay('firstEggsOn', inputs.firstEggsOn);
  if (firstEggs !== null && (lastEggs === null || firstEggs <= lastEggs)) {
    throw new DomainError('firstEggsOn', 'a day after lastEggsOn', inputs.firstEggsOn);
  }
  const lastOpen = lastEggs === null ? null : lastEggs + workerClock.capped;
  const lastCapped = lastEggs === null ? null : lastEggs + totalDays('worker');
  const returns = firstEggs === null ? null : firstEggs + workerClock.capped;

  const broodOn = (day: number): BroodThen => {
    if (lastOpen === null || lastCapped === null) return 'not known';
    if (day <= lastOpen || (returns !== null && day >= returns)) return 'open and capped brood';
    return day <= lastCapped ? 'capped brood only' : 'no brood';
  };
  const looks: LookAgain[] = [];
  let next: number | null = first;
  for (let k = 0; k < count; k++) {
    if (next === null) {
      looks.push({ earliest: null, brood: 'no brood', waitsForBrood: true });
      continue;
    }
    const waits: boolean = broodOn(next) === 'no brood';
    const day: number | null = waits ? returns : next;
    looks.push({
      earliest: day === null ? null : dayAt(day),
      brood: day === null ? 'no brood' : broodOn(day),
      waitsForBrood: waits,
    });
    next = day === null ? null : day + gap;
  }
  const last = looks.at(-1)?.earliest ?? null;
  return {
    lastOpenBrood: lastOpen === null ? null : dayAt(lastOpen),
    lastCappedBrood: lastCapped === null ? null : dayAt(lastCapped),
    looks,
    notBefore: last,
    thisSeason: lastCapped === null ? null : last !== null && acceptDay('notBefore', last) <= lastCapped,
  };
}

const day = 'calendar day, YYYY-MM-DD';

export const releaseThisSeasonCalculation = calculation({
  name: 'releaseThisSeason',
  room: 'colony',
  line: "whether the looks the law asks for fall into this season's brood",
  inputs: {
    countedFrom: `${day}, from which the law counts`,
    firstLookAfterDays: 'whole, by the law',
    looks: 'looks without signs the law asks for, whole, 1 to 20',
    daysBetweenLooks: 'whole, by the law',
    lastEggsOn: `${day}, or null (no published figure: state it from the colony at hand)`,
    firstEggsOn: `${day} of next season, or null`,
  },
  formula: 'last open brood = last eggs + 9, last capped + 21; a look without brood waits for first eggs + 9',
  sources: ['NZ-DEV'],
  call: releaseThisSeason,
  steps: (_, r) => [
    `last open brood ${r.lastOpenBrood ?? 'not known'}, last capped ${r.lastCappedBrood ?? 'not known'}`,
    ...r.looks.map((look, k) => `look ${k + 1}: ${look.earliest ?? 'waits for brood'}, ${look.brood}`),
    `not before ${r.notBefore ?? 'brood returns'}; the authority releases, not the calendar`,
  ],
});
