/** True when the year has a 29 February: every fourth, not the hundredth, but the four-hundredth (Gregorian calendar). */
export function isLeapYear(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

const lengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/**
 * How many days a month has.
 *
 * @param month 1-12
 * @throws RangeError for a month outside these
 */
export function daysInMonth(year: number, month: number): number {
  const length = lengths[month - 1];
  if (length === undefined) throw new RangeError(`there is no month ${month}; months count from 1 to 12`);
  return month === 2 && isLeapYear(year) ? 29 : length;
}
