import { DomainError } from '../distributions/domain.ts';

/*
 * Calendar days as numbers (proleptic Gregorian calendar), so that no clock or time zone of a machine comes in.
 * Numbering after Hinnant, "chrono-Compatible Low-Level Date Algorithms" (from memory, checked in the test beside this).
 */

/**
 * Days since 1970-01-01 of a calendar day.
 *
 * @param field name of the input, for the error
 * @param given YYYY-MM-DD
 * @throws DomainError when it is no such text, or a day that does not exist
 */
export function acceptDay(field: string, given: unknown): number {
  const parts = typeof given === 'string' ? /^(\d{4})-(\d{2})-(\d{2})$/.exec(given) : null;
  if (parts) {
    const [year, month, day] = parts.slice(1).map(Number) as [number, number, number];
    const shifted = month <= 2 ? year - 1 : year;
    const era = Math.floor(shifted / 400);
    const ofEra = shifted - era * 400;
    const ofYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
    const number = era * 146_097 + ofEra * 365 + Math.floor(ofEra / 4) - Math.floor(ofEra / 100) + ofYear - 719_468;
    // 31 February would come out as a day in March; writing it back shows that.
    if (dayText(number) === given) return number;
  }
  throw new DomainError(field, 'a calendar day as YYYY-MM-DD', given);
}

/** The calendar day, YYYY-MM-DD, that many whole days after 1970-01-01. Years 0 to 9999. */
export function dayText(number: number): string {
  const z = number + 719_468;
  const era = Math.floor(z / 146_097);
  const ofEra = z - era * 146_097;
  const year = Math.floor(
    (ofEra - Math.floor(ofEra / 1460) + Math.floor(ofEra / 36_524) - Math.floor(ofEra / 146_096)) / 365,
  );
  const ofYear = ofEra - (365 * year + Math.floor(year / 4) - Math.floor(year / 100));
  const shifted = Math.floor((5 * ofYear + 2) / 153);
  const month = shifted < 10 ? shifted + 3 : shifted - 9;
  const digits = (value: number, width: number) => String(value).padStart(width, '0');
  const day = ofYear - Math.floor((153 * shifted + 2) / 5) + 1;
  return `${digits(year + era * 400 + (month <= 2 ? 1 : 0), 4)}-${digits(month, 2)}-${digits(day, 2)}`;
}

/** From one day to another, both included, YYYY-MM-DD. */
export interface DaySpan {
  readonly earliest: string;
  readonly latest: string;
}

/** A span from numbers of days that may be fractions: outward to whole days, never tighter than is known. */
export function spanOf(from: number, to: number): DaySpan {
  return { earliest: dayText(Math.floor(from)), latest: dayText(Math.ceil(to)) };
}
