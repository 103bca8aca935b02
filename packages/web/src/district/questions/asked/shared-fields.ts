import { isDay } from '@combside/calendar/day';

/** How sure one wants to be: 95 % is a habit of the trade, no law of nature. */
export const confidence = {
  kind: 'number',
  shown: 'share',
  from: 0.5,
  to: 0.9999,
  step: 0.0001,
  slideTo: 0.99,
  start: 0.95,
} as const;

/** A share that nobody published, and that is therefore asked for. */
export const askedShare = { kind: 'number', shown: 'share', from: 0, to: 1, step: 0.001, start: null } as const;

/** Chance that one look finds an affected colony. Nobody published it for an inspector's eye. */
export const sensitivity = { ...askedShare, from: 0.001 } as const;

/** A number of things counted: a fact, so it is asked for. */
export const counted = (slideTo = 100) =>
  ({ kind: 'number', shown: 'count', from: 0, to: 100_000, step: 1, slideTo, start: null }) as const;

/** A day of the calendar that has to be stated. */
export const askedDay = { kind: 'day', start: '' } as const;

/** A day as typed, or null while it is none: not there, or so far off that somebody is still typing the year. */
export function dayIn(text: string): string | null {
  return isDay(text) && text >= '1900-01-01' && text < '2200-01-01' ? text : null;
}
