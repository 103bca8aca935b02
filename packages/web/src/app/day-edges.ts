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
 * First instant of the day that `now` falls in and of the day after, in a time zone. On the days when clocks change the
 * day has 23 or 25 hours.
 *
 * @param now RFC 3339 instant
 * @param timeZone IANA name
 */
export function dayEdges(now: string, timeZone: string): DayEdges {
  const at = Date.parse(now);
  const local = new Date(at + offsetAt(at, timeZone));
  const midnight = (days: number) => {
    const wall = Date.UTC(local.getUTCFullYear(), local.getUTCMonth(), local.getUTCDate() + days);
    // The offset at midnight may differ from the offset now; a second pass settles it.
    const guess = wall - offsetAt(wall, timeZone);
    return new Date(wall - offsetAt(guess, timeZone)).toISOString();
  };
  return { start: midnight(0), end: midnight(1) };
}
