import { dayAt, isDay, ordinalOf } from '@combside/calendar/day';
import { DomainError } from '../distributions/domain.ts';

/**
 * The ordinal day of a day given from outside.
 *
 * @param field name of the input, for the error
 * @param given YYYY-MM-DD
 * @throws DomainError when it is no such text, or a day that does not exist
 */
export function acceptDay(field: string, given: unknown): number {
  if (typeof given === 'string' && isDay(given)) return ordinalOf(given);
  throw new DomainError(field, 'a calendar day as YYYY-MM-DD', given);
}

/** From one day to another, both included, YYYY-MM-DD. */
export interface DaySpan {
  readonly earliest: string;
  readonly latest: string;
}

/** A span from ordinal days that may be fractions: outward to whole days, never tighter than is known. */
export function spanOf(from: number, to: number): DaySpan {
  return { earliest: dayAt(Math.floor(from)), latest: dayAt(Math.ceil(to)) };
}
