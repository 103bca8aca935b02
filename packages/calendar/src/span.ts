import { dayMilliseconds } from './day.ts';
import { dayOf, instantOf, millisecondsOf } from './instant.ts';
import { monthsLater } from './months-later.ts';

/** A length of time as laws write it. */
export interface Span {
  readonly count: number;
  readonly unit: 'hours' | 'days' | 'weeks' | 'months' | 'years';
}

/** Milliseconds of the units that are always equally long in UTC. */
const lasting = { hours: 3_600_000, days: dayMilliseconds, weeks: 7 * dayMilliseconds } as const;

/**
 * The instant a span later. Days and weeks are 24 and 168 hours in UTC; a month later is the same day of the month at the
 * same hour, or the last one where the month is too short (31 January and one month: 28 or 29 February).
 *
 * @param instant an instant, or a day for its start in UTC
 * @throws RangeError when it is neither, when the count is not whole or negative, and beyond the year 9999
 */
export function later(instant: string, span: Span): string {
  const { count, unit } = span;
  const start = millisecondsOf(instant);
  if (!Number.isInteger(count) || count < 0) {
    throw new RangeError(`a span of ${count} ${unit} must be a whole number from 0`);
  }
  if (unit !== 'months' && unit !== 'years') return instantOf(start + count * lasting[unit]);
  const day = dayOf(instant);
  const then = monthsLater(day, unit === 'years' ? count * 12 : count);
  return instantOf(millisecondsOf(then) + start - millisecondsOf(day));
}
