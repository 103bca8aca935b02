import { dateOf, dayOn, ordinalOf } from './day.ts';

/** Which day of its year a day is: 1 for 1 January, 365 or 366 for 31 December. @throws RangeError when it is no day */
export function dayOfYear(day: string): number {
  return ordinalOf(day) - ordinalOf(dayOn(dateOf(day).year, 1, 1) as string) + 1;
}
