import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dateOf, dayAt } from './day.ts';
import { monthsLater } from './months-later.ts';

test.each([
  ['2026-01-31', 1, '2026-02-28'],
  ['2028-01-31', 1, '2028-02-29'],
  ['2026-11-30', 3, '2027-02-28'],
  ['2028-02-29', 12, '2029-02-28'],
  ['2028-02-29', -12, '2027-02-28'],
  ['2026-03-31', -1, '2026-02-28'],
  ['2026-01-15', -1, '2025-12-15'],
  ['2026-12-31', 0, '2026-12-31'],
  ['2000-02-29', 4800, '2400-02-29'],
])('%s and %i months: %s', (day, months, then) => expect(monthsLater(day, months)).toBe(then));

test('that many months on, on the same day of the month or the last, as Date counts months', () => {
  fc.assert(
    fc.property(fc.integer({ min: -100_000, max: 100_000 }), fc.integer({ min: -600, max: 600 }), (ordinal, months) => {
      const [from, to] = [dateOf(dayAt(ordinal)), dateOf(monthsLater(dayAt(ordinal), months))];
      expect(to.year * 12 + to.month - from.year * 12 - from.month).toBe(months);
      const last = new Date(Date.UTC(from.year, from.month + months, 0)).getUTCDate();
      expect(to.day).toBe(Math.min(from.day, last));
    }),
    { seed: 12, numRuns: 1000 },
  );
});

test('refuses half months, a day that is none, and what leaves the calendar', () => {
  expect(() => monthsLater('2026-01-31', 0.5)).toThrow(/whole number/);
  expect(() => monthsLater('2026-02-30', 1)).toThrow(/month with 28 days/);
  expect(() => monthsLater('9999-12-01', 1)).toThrow(/outside the years 1 to 9999/);
  expect(() => monthsLater('0001-01-01', -1)).toThrow(/outside the years 1 to 9999/);
});
