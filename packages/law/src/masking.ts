import { millisecondsOf } from '@combside/calendar/instant';
import { later } from '@combside/calendar/span';
import type { Pack } from './pack.ts';

/** A medicine or a change of combs, as the keeper answered. `lastOn` is a date, or null when nobody knows. */
export interface MaskingEvent {
  readonly what: 'medicine' | 'comb change';
  readonly lastOn: string | null;
}

/**
 * Until when "nothing seen" means nothing for a condition.
 *
 * @param events what the keeper answered; an event of unknown date masks as if it had been on the day of the look
 * @param lookedAt the instant of the look
 * @returns the end of the longest masking period still running at the look, or null when none runs
 */
export function maskedUntil(
  events: readonly MaskingEvent[],
  condition: string,
  pack: Pack,
  lookedAt: string,
): string | null {
  let end: string | null = null;
  for (const rule of pack.masking) {
    if (rule.standing === 'from memory' || !rule.conditions.includes(condition)) continue;
    for (const event of events) {
      if (event.what !== rule.after) continue;
      const until = later(event.lastOn ?? lookedAt, rule.period);
      if (millisecondsOf(until) <= millisecondsOf(lookedAt)) continue;
      if (end === null || millisecondsOf(until) > millisecondsOf(end)) end = until;
    }
  }
  return end;
}
