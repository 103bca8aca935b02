import { dayMilliseconds, daysLater } from '@combside/calendar/day';
import { dayOf, instantOf, millisecondsOf } from '@combside/calendar/instant';
import type { DayEdges } from '@combside/casework/plan/today';

/** Offset of a time zone from UTC at an instant, in milliseconds (positive east of Greenwich). */
function offsetAt(milliseconds: number, timeZone: string): number {
  const parts = new Intl.DateTimeFormat('en-GB', {
    timeZone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  }).formatToParts(milliseconds);
  const part = (type: string) => Number(parts.find((one) => one.type === type)?.value);
  const local = Date.UTC(part('year'), part('month') - 1, part('day'), part('hour'), part('minute'), part('second'));
  return local - Math.floor(milliseconds / 1000) * 1000;
}

/**
 * The day that an instant falls on in a time zone, `YYYY-MM-DD`.
 *
 * @param instant RFC 3339, in UTC
 * @param timeZone IANA name
 */
export function dayInZone(instant: string, timeZone: string): string {
  const at = millisecondsOf(instant);
  return dayOf(instantOf(at + offsetAt(at, timeZone)));
}

/** The first instant of a day in a time zone, also where clocks change at midnight. */
export function startOfDay(day: string, timeZone: string): string {
  const wall = millisecondsOf(day);
  const before = offsetAt(wall - dayMilliseconds, timeZone);
  const after = offsetAt(wall + dayMilliseconds, timeZone);
  // A change of clocks near midnight: the offset before it counts where it still holds then, or where midnight is left out.
  const holds = (offset: number) => offsetAt(wall - offset, timeZone) === offset;
  return instantOf(wall - (holds(before) || !holds(after) ? before : after));
}

/**
 * First instant of the day that `now` falls in and of the day after, in a time zone. On the days when clocks change the
 * day has 23 or 25 hours.
 */
export function dayEdges(now: string, timeZone: string): DayEdges {
  const day = dayInZone(now, timeZone);
  return { start: startOfDay(day, timeZone), end: startOfDay(daysLater(day, 1), timeZone) };
}
