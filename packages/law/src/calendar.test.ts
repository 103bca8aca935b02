import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayOf, daysBetween, daysInMonth, instantOf, later, millisecondsOf } from './calendar.ts';

describe('the calendar agrees with the language’s own', () => {
  const span = { min: Date.UTC(1970, 0, 1), max: Date.UTC(2199, 11, 31) };

  test('instants go to milliseconds and back as Date says', () => {
    fc.assert(
      fc.property(fc.integer(span), (ms) => {
        const text = new Date(ms).toISOString();
        expect(instantOf(ms)).toBe(text);
        expect(millisecondsOf(text)).toBe(ms);
        expect(dayOf(text)).toBe(text.slice(0, 10));
      }),
      { seed: 20261125, numRuns: 2000 },
    );
  });

  test('months have the days Date gives them, leap years included', () => {
    for (const year of [1999, 2000, 2023, 2024, 2100]) {
      for (let month = 1; month <= 12; month++) {
        expect(daysInMonth(year, month)).toBe(new Date(Date.UTC(year, month, 0)).getUTCDate());
      }
    }
  });
});

test('a month later is the same day, or the last one there is', () => {
  expect(later('2027-01-31T10:00:00.000Z', { count: 1, unit: 'months' })).toBe('2027-02-28T10:00:00.000Z');
  expect(later('2028-01-31T10:00:00.000Z', { count: 1, unit: 'months' })).toBe('2028-02-29T10:00:00.000Z');
  expect(later('2027-11-30T10:00:00.000Z', { count: 9, unit: 'months' })).toBe('2028-08-30T10:00:00.000Z');
  expect(later('2028-02-29T00:00:00.000Z', { count: 1, unit: 'years' })).toBe('2029-02-28T00:00:00.000Z');
  expect(later('2027-05-04T08:00:00.000Z', { count: 8, unit: 'weeks' })).toBe('2027-06-29T08:00:00.000Z');
  expect(later('2027-05-04T23:30:00.000Z', { count: 24, unit: 'hours' })).toBe('2027-05-05T23:30:00.000Z');
});

test('days between are calendar days, whatever the hour', () => {
  expect(daysBetween('2027-05-04T23:59:00.000Z', '2027-05-05T00:01:00.000Z')).toBe(1);
  expect(daysBetween('2027-05-04', '2027-04-04')).toBe(-30);
});

test.each(['2027-02-30', '2027-13-01', '2027-05-04T24:00:00.000Z', '4 May 2027', ''])('refuses "%s"', (text) => {
  expect(() => millisecondsOf(text)).toThrow(RangeError);
});

test('refuses a span that is not a whole number', () => {
  expect(() => later('2027-05-04', { count: 1.5, unit: 'days' })).toThrow(/whole number/);
  expect(() => instantOf(Number.NaN)).toThrow(/whole number/);
});
