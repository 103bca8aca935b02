/**
 * Days and instants by arithmetic of our own (proleptic Gregorian calendar, UTC), so that no clock, locale or time zone
 * of a machine gets into a due time. Day numbering after Hinnant, "chrono-Compatible Low-Level Date Algorithms" (from
 * memory, checked against the test beside this).
 */

const day = 86_400_000;

/** A calendar date taken apart. */
export interface CivilDate {
  readonly year: number;
  /** 1-12 */
  readonly month: number;
  /** 1-31 */
  readonly day: number;
}

/** Days since 1970-01-01 of a calendar date; negative before. */
export function daysOf(date: CivilDate): number {
  const year = date.month <= 2 ? date.year - 1 : date.year;
  const era = Math.floor(year / 400);
  const yearOfEra = year - era * 400;
  const dayOfYear = Math.floor((153 * (date.month + (date.month > 2 ? -3 : 9)) + 2) / 5) + date.day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146_097 + dayOfEra - 719_468;
}

/** The calendar date that many days after 1970-01-01. */
export function dateOf(days: number): CivilDate {
  const z = days + 719_468;
  const era = Math.floor(z / 146_097);
  const dayOfEra = z - era * 146_097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36_524) - Math.floor(dayOfEra / 146_096)) / 365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shifted = Math.floor((5 * dayOfYear + 2) / 153);
  const month = shifted < 10 ? shifted + 3 : shifted - 9;
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    day: dayOfYear - Math.floor((153 * shifted + 2) / 5) + 1,
  };
}

/** How many days the month has. */
export function daysInMonth(year: number, month: number): number {
  const next = month === 12 ? { year: year + 1, month: 1, day: 1 } : { year, month: month + 1, day: 1 };
  return daysOf(next) - daysOf({ year, month, day: 1 });
}

/**
 * Milliseconds since 1970 UTC of an instant or the start of a date.
 *
 * @param text `2026-05-04T08:31:05.120Z` or `2026-05-04`
 * @throws RangeError when the text is neither, or names a day or hour that does not exist
 */
export function millisecondsOf(text: string): number {
  const found = /^(\d{4})-(\d{2})-(\d{2})(?:T(\d{2}):(\d{2}):(\d{2})\.(\d{3})Z)?$/.exec(text);
  if (!found) {
    throw new RangeError(`"${text}" is no instant or date; write 2026-05-04T08:31:05.120Z or 2026-05-04`);
  }
  const [year, month, date, hour, minute, second, thousandth] = found.slice(1).map((part) => Number(part ?? 0)) as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const exists =
    month >= 1 &&
    month <= 12 &&
    date >= 1 &&
    date <= daysInMonth(year, month) &&
    hour < 24 &&
    minute < 60 &&
    second < 60;
  if (!exists) throw new RangeError(`"${text}" names a day or an hour that does not exist`);
  return daysOf({ year, month, day: date }) * day + ((hour * 60 + minute) * 60 + second) * 1000 + thousandth;
}

/** The instant of these milliseconds since 1970 UTC, as `2026-05-04T08:31:05.120Z`. */
export function instantOf(milliseconds: number): string {
  if (!Number.isSafeInteger(milliseconds)) {
    throw new RangeError(`${milliseconds} is no whole number of milliseconds since 1970`);
  }
  const days = Math.floor(milliseconds / day);
  const rest = milliseconds - days * day;
  const clock = [Math.floor(rest / 3_600_000), Math.floor(rest / 60_000) % 60, Math.floor(rest / 1000) % 60];
  return `${dateText(dateOf(days))}T${clock.map(two).join(':')}.${String(rest % 1000).padStart(3, '0')}Z`;
}

/** The UTC date of an instant (or the date itself), as `2026-05-04`. */
export function dayOf(text: string): string {
  return dateText(dateOf(Math.floor(millisecondsOf(text) / day)));
}

/** Whole days from the first date or instant to the second, both taken as UTC dates; negative when it runs backward. */
export function daysBetween(from: string, to: string): number {
  return Math.floor(millisecondsOf(to) / day) - Math.floor(millisecondsOf(from) / day);
}

/** A length of time as laws write it. */
export interface Span {
  readonly count: number;
  readonly unit: 'hours' | 'days' | 'weeks' | 'months' | 'years';
}

/**
 * The instant a span later. Days and weeks are 24 and 168 hours in UTC; a month later is the same day of the month, or
 * the last one where the month is too short (31 January and one month: 28 or 29 February).
 */
export function later(instant: string, span: Span): string {
  const start = millisecondsOf(instant);
  if (!Number.isInteger(span.count) || span.count < 0) {
    throw new RangeError(`a span of ${span.count} ${span.unit} must be a whole number from 0`);
  }
  if (span.unit === 'hours') return instantOf(start + span.count * 3_600_000);
  if (span.unit === 'days') return instantOf(start + span.count * day);
  if (span.unit === 'weeks') return instantOf(start + span.count * 7 * day);
  const days = Math.floor(start / day);
  const date = dateOf(days);
  const months = date.year * 12 + date.month - 1 + span.count * (span.unit === 'years' ? 12 : 1);
  const year = Math.floor(months / 12);
  const month = (months % 12) + 1;
  const target = daysOf({ year, month, day: Math.min(date.day, daysInMonth(year, month)) });
  return instantOf(target * day + (start - days * day));
}

function dateText(date: CivilDate): string {
  return `${String(date.year).padStart(4, '0')}-${two(date.month)}-${two(date.day)}`;
}

function two(value: number): string {
  return String(value).padStart(2, '0');
}
