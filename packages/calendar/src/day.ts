import { daysInMonth } from './month-length.ts';

/*
 * A day is its text, `2026-05-04` (ISO 8601), of the Gregorian calendar in the years 1 to 9999; texts compare as the days
 * do. An ordinal day is the number of days since 1970-01-01, negative before, so that days can be counted.
 */

/** Milliseconds of a day in UTC. */
export const dayMilliseconds = 86_400_000;

/** A day taken apart. */
export interface CivilDate {
  /** 1-9999 */
  readonly year: number;
  /** 1-12 */
  readonly month: number;
  /** 1-31 */
  readonly day: number;
}

const written = /^(\d{4})-(\d{2})-(\d{2})$/;

/** Why a text is no day; null when it is one. */
function faultOf(text: string): string | null {
  const found = written.exec(text);
  if (!found) return 'is not written YYYY-MM-DD';
  const [year, month, day] = found.slice(1).map(Number) as [number, number, number];
  if (year === 0) return 'names the year 0, which the calendar has not';
  if (month < 1 || month > 12) return `names the month ${month}; there are 12`;
  const length = daysInMonth(year, month);
  return day < 1 || day > length ? `names day ${day} of a month with ${length} days` : null;
}

/** True for a day of the calendar, written `YYYY-MM-DD`. */
export function isDay(text: string): boolean {
  return faultOf(text) === null;
}

function acceptDay(text: string): string {
  const fault = faultOf(text);
  if (fault !== null)
    throw new RangeError(`the day "${text}" ${fault}; write a day of the calendar such as 2026-05-04`);
  return text;
}

/** Year, month and day of a day. @throws RangeError when it is none, saying why */
export function dateOf(day: string): CivilDate {
  const [year, month, date] = acceptDay(day).split('-').map(Number) as [number, number, number];
  return { year, month, day: date };
}

/** The day of that year, month and day of the month; null when the calendar has no such day. */
export function dayOn(year: number, month: number, day: number): string | null {
  const text = [String(year).padStart(4, '0'), ...[month, day].map((part) => String(part).padStart(2, '0'))].join('-');
  return isDay(text) ? text : null;
}

/** The ordinal day of a day. @throws RangeError when it is none, saying why */
export function ordinalOf(day: string): number {
  return Date.parse(`${acceptDay(day)}T00:00:00.000Z`) / dayMilliseconds;
}

const first = ordinalOf('0001-01-01');
const last = ordinalOf('9999-12-31');

/** The day of an ordinal day. @throws RangeError when it is no whole number, or outside the years 1 to 9999 */
export function dayAt(ordinal: number): string {
  if (!Number.isInteger(ordinal) || ordinal < first || ordinal > last) {
    throw new RangeError(`${ordinal} is no ordinal day; give whole days since 1970-01-01 within the years 1 to 9999`);
  }
  return new Date(ordinal * dayMilliseconds).toISOString().slice(0, 10);
}

/** The day that many whole days later; earlier where the number is negative. @throws RangeError as `dayAt` */
export function daysLater(day: string, days: number): string {
  return dayAt(ordinalOf(day) + days);
}

/** The day of the week: 1 for Monday to 7 for Sunday (ISO 8601). */
export function weekdayOf(day: string): number {
  // 1970-01-01 was a Thursday.
  return ((((ordinalOf(day) + 3) % 7) + 7) % 7) + 1;
}
