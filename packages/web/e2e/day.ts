import type { BrowserContext, Page } from '@playwright/test';

const isoDay = /^\d{4}-\d\d-\d\d$/;

/** The day on which the demonstration is planted and on which every journey is made, wherever and whenever it runs. */
export const day = process.env.COMBSIDE_DAY ?? '2026-06-02';

/** Time zone of every page. */
export const zone = process.env.COMBSIDE_ZONE ?? 'Europe/Berlin';

/** Working hour at which a run begins, in the zone. It is the same day at Greenwich in zones from 12 hours behind to 10 ahead. */
const firstHour = 10;

/**
 * How far the clocks of the server, its pages and their workers stand ahead of the machine's, in milliseconds: one number
 * for a whole run, so that all of them agree. `plant-once.ts` hands it to the workers of Playwright.
 */
export const ahead = Number(process.env.COMBSIDE_AHEAD ?? beginning() - Date.now());

/** What time it is in the journeys, in milliseconds since 1970. */
export function now(): number {
  return Date.now() + ahead;
}

/** The day so many days before the journeys' own: `2026-06-01` for 1. A negative number counts into the days to come. */
export function dayBefore(days: number): string {
  return new Date(Date.parse(`${day}T00:00:00Z`) - days * 86_400_000).toISOString().slice(0, 10);
}

/** A day as British English writes it out: `2 June 2026`. */
export function written(isoDay: string): string {
  const wording = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: 'UTC' });
  return wording.format(Date.parse(`${isoDay}T00:00:00Z`));
}

/**
 * Moves the clock of whatever it runs in: a page, or a worker at whose head it stands. Timers go on as they are. It is
 * sent as text and must lean on nothing outside itself. Done twice, both count.
 *
 * @param milliseconds how far ahead
 */
export function moveClock(milliseconds: number): void {
  const real = Date;
  const read = real.now;
  real.now = () => read() + milliseconds;
  globalThis.Date = new Proxy(real, {
    apply: () => new real(read() + milliseconds).toString(),
    construct: (made, given, target) =>
      Reflect.construct(made, given.length === 0 ? [read() + milliseconds] : given, target) as Date,
  });
}

/** Sets the clock of every page of a context, or of one page, to that of the journeys. */
export async function setClock(pages: BrowserContext | Page): Promise<void> {
  await pages.addInitScript(moveClock, ahead);
}

/** Milliseconds of the first hour of the day in the zone. */
function beginning(): number {
  if (!isoDay.test(day) || Number.isNaN(Date.parse(day))) {
    throw new Error(`COMBSIDE_DAY must be a day such as 2026-06-02, not ${day}`);
  }
  const hour = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', hourCycle: 'h23', timeZone: zone });
  const noon = Date.parse(`${day}T12:00:00Z`);
  // How many hours the zone is ahead at noon, between -12 and 12.
  const offset = ((Number(hour.format(noon)) - 12 + 36) % 24) - 12;
  const began = noon + (firstHour - 12 - offset) * 3_600_000;
  const local = new Intl.DateTimeFormat('en-CA', { dateStyle: 'short', timeZone: zone }).format(began);
  if (local !== day || !new Date(began).toISOString().startsWith(day)) {
    throw new Error(`COMBSIDE_ZONE ${zone} is too far from Greenwich: at ${firstHour} o'clock it is another day there`);
  }
  return began;
}
