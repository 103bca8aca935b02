import { RecordError } from './errors.ts';

/**
 * Instants by arithmetic, and the hybrid logical clock (Kulkarni, Demirbas, Madappa, Avva and Leone 2014, "Logical
 * Physical Clocks", OPODIS; from memory): a reading is never behind what this side has seen, and stays near wall time.
 *
 * A reading is text, `000001777883465120.000003`: milliseconds since 1970 in 18 digits, then a counter in 6. Texts
 * compare as the clock does.
 */

export const dayMilliseconds = 86_400_000;
const lastMillisecond = 253_402_300_799_999; // 9999-12-31T23:59:59.999Z
const lastCount = 999_999;

/** RFC 3339 text in UTC. @throws RecordError `bad instant` outside 1970 to 9999 */
export function instantAt(milliseconds: number): string {
  if (!Number.isInteger(milliseconds) || milliseconds < 0 || milliseconds > lastMillisecond) {
    throw new RecordError('bad instant', `${milliseconds} ms`);
  }
  const days = Math.floor(milliseconds / dayMilliseconds);
  const rest = milliseconds - days * dayMilliseconds;
  const { year, month, day } = dateOfDay(days);
  const two = (value: number) => String(Math.floor(value)).padStart(2, '0');
  const time = `${two(rest / 3_600_000)}:${two((rest / 60_000) % 60)}:${two((rest / 1000) % 60)}`;
  return `${String(year).padStart(4, '0')}-${two(month)}-${two(day)}T${time}.${String(rest % 1000).padStart(3, '0')}Z`;
}

/** Milliseconds since 1970 of a text as `instantAt` writes it. @throws RecordError `bad instant` */
export function millisecondsAt(instant: string): number {
  const found = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2}):(\d{2})\.(\d{3})Z$/.exec(instant);
  if (found === null) throw new RecordError('bad instant', instant);
  const [year, month, day, hour, minute, second, milli] = found.slice(1).map(Number) as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const milliseconds =
    dayOfDate(year, month, day) * dayMilliseconds + hour * 3_600_000 + minute * 60_000 + second * 1000 + milli;
  if (milliseconds < 0 || milliseconds > lastMillisecond || instantAt(milliseconds) !== instant) {
    throw new RecordError('bad instant', instant);
  }
  return milliseconds;
}

// Days since 1970-01-01 in the Gregorian calendar. Counting years from March puts the leap day last, so that a month's
// first day is a linear function of its number: 153 days in each five months.
function dayOfDate(year: number, month: number, day: number): number {
  const y = month > 2 ? year : year - 1;
  const m = month > 2 ? month - 3 : month + 9;
  const leaps = Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400);
  return y * 365 + leaps + Math.floor((153 * m + 2) / 5) + day - 1 - 719_468;
}

function dateOfDay(days: number): { year: number; month: number; day: number } {
  const shifted = days + 719_468;
  let y = Math.floor(shifted / 365.2425);
  while (dayOfDate(y, 3, 1) > days) y--;
  while (dayOfDate(y + 1, 3, 1) <= days) y++;
  const ofYear = days - dayOfDate(y, 3, 1);
  const m = Math.floor((5 * ofYear + 2) / 153);
  const day = ofYear - Math.floor((153 * m + 2) / 5) + 1;
  return { year: m >= 10 ? y + 1 : y, month: m < 10 ? m + 3 : m - 9, day };
}

interface Reading {
  readonly milliseconds: number;
  readonly count: number;
}

/** @throws RecordError `bad clock` */
export function readClock(text: string): Reading {
  const found = /^(\d{18})\.(\d{6})$/.exec(text);
  const milliseconds = Number(found?.[1]);
  if (found === null || milliseconds > lastMillisecond) throw new RecordError('bad clock', text);
  return { milliseconds, count: Number(found[2]) };
}

function writeClock(reading: Reading): string {
  return `${String(reading.milliseconds).padStart(18, '0')}.${String(reading.count).padStart(6, '0')}`;
}

/**
 * The reading for something that happens now, later than everything this side wrote or saw.
 *
 * @param last newest reading of this side, null on the first
 * @param wall this device's wall clock, milliseconds since 1970
 */
export function tick(last: string | null, wall: number): string {
  const before = last === null ? { milliseconds: -1, count: 0 } : readClock(last);
  if (wall > before.milliseconds) return writeClock({ milliseconds: wall, count: 0 });
  if (before.count < lastCount) return writeClock({ milliseconds: before.milliseconds, count: before.count + 1 });
  return writeClock({ milliseconds: before.milliseconds + 1, count: 0 });
}

/** True when a reading runs more than 24 hours ahead of a wall clock. */
export function runsAhead(clock: string, wall: number): boolean {
  return readClock(clock).milliseconds > wall + dayMilliseconds;
}

/**
 * This side's newest reading after it has seen another's. A clock that runs more than 24 hours ahead of our wall clock
 * never moves ours: one phone set to the wrong year must not drag everybody along.
 */
export function observe(last: string | null, seen: string, wall: number): string | null {
  if (runsAhead(seen, wall)) return last;
  return last === null || seen > last ? seen : last;
}
