import { dayAt, dayMilliseconds, isDay, ordinalOf } from './day.ts';

/*
 * An instant is its text, `2026-05-04T08:31:05.120Z` (RFC 3339, in UTC, with milliseconds), of the years 1 to 9999; texts
 * compare as the instants do. Counted, it is the milliseconds since 1970 UTC, without leap seconds.
 */

const written = /^(\d{4}-\d{2}-\d{2})T(?:[01]\d|2[0-3]):[0-5]\d:[0-5]\d\.\d{3}Z$/;

/** Milliseconds since 1970 UTC of an instant; null when the text is none. */
export function readInstant(text: string): number | null {
  const day = written.exec(text)?.[1];
  return day !== undefined && isDay(day) ? Date.parse(text) : null;
}

/**
 * Milliseconds since 1970 UTC of an instant, or of the start of a day in UTC.
 *
 * @param text `2026-05-04T08:31:05.120Z` or `2026-05-04`
 * @throws RangeError when the text is neither, or names a day or hour that does not exist
 */
export function millisecondsOf(text: string): number {
  const found = readInstant(text);
  if (found !== null) return found;
  if (isDay(text)) return ordinalOf(text) * dayMilliseconds;
  throw new RangeError(`"${text}" is no instant and no day that exists; write 2026-05-04T08:31:05.120Z or 2026-05-04`);
}

const first = millisecondsOf('0001-01-01');
const last = millisecondsOf('9999-12-31') + dayMilliseconds - 1;

/** The instant of milliseconds since 1970 UTC. @throws RangeError when not whole, or outside the years 1 to 9999 */
export function instantOf(milliseconds: number): string {
  if (!Number.isInteger(milliseconds) || milliseconds < first || milliseconds > last) {
    throw new RangeError(`${milliseconds} is no whole number of milliseconds since 1970 within the years 1 to 9999`);
  }
  return new Date(milliseconds).toISOString();
}

/** The day on which an instant falls in UTC; of a day, itself. @throws RangeError as `millisecondsOf` */
export function dayOf(text: string): string {
  return dayAt(Math.floor(millisecondsOf(text) / dayMilliseconds));
}

/**
 * Whole days from the first day or instant to the second, each taken as its day in UTC; negative when it runs backward.
 *
 * @throws RangeError as `millisecondsOf`
 */
export function daysBetween(from: string, to: string): number {
  return ordinalOf(dayOf(to)) - ordinalOf(dayOf(from));
}
