import { dateOf, dayOn } from './day.ts';
import { daysInMonth } from './month-length.ts';

/**
 * The day that many months later (earlier where the number is negative): the same day of the month, or the last one where
 * the month is too short, so that one month after 31 January is 28 or 29 February.
 *
 * @throws RangeError when the day is none, the number not whole, or the end outside the years 1 to 9999
 */
export function monthsLater(day: string, months: number): string {
  const date = dateOf(day);
  if (!Number.isInteger(months)) throw new RangeError(`${months} months: give a whole number`);
  const counted = date.year * 12 + date.month - 1 + months;
  const year = Math.floor(counted / 12);
  const month = counted - year * 12 + 1;
  const found = dayOn(year, month, Math.min(date.day, daysInMonth(year, month)));
  if (found === null) throw new RangeError(`${months} months after ${day} lies outside the years 1 to 9999`);
  return found;
}
