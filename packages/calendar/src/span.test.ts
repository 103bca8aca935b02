import { expect, test } from 'vitest';
import { later } from './span.ts';

test('a month later is the same day, or the last one there is', () => {
  expect(later('2027-01-31T10:00:00.000Z', { count: 1, unit: 'months' })).toBe('2027-02-28T10:00:00.000Z');
  expect(later('2028-01-31T10:00:00.000Z', { count: 1, unit: 'months' })).toBe('2028-02-29T10:00:00.000Z');
  expect(later('2027-11-30T10:00:00.000Z', { count: 9, unit: 'months' })).toBe('2028-08-30T10:00:00.000Z');
  expect(later('2028-02-29T00:00:00.000Z', { count: 1, unit: 'years' })).toBe('2029-02-28T00:00:00.000Z');
  expect(later('2027-05-04T08:00:00.000Z', { count: 8, unit: 'weeks' })).toBe('2027-06-29T08:00:00.000Z');
  expect(later('2027-05-04T23:30:00.000Z', { count: 24, unit: 'hours' })).toBe('2027-05-05T23:30:00.000Z');
});

test('from a day, and to the last millisecond of the day', () => {
  expect(later('2027-05-04', { count: 3, unit: 'days' })).toBe('2027-05-07T00:00:00.000Z');
  expect(later('2026-12-31T23:59:59.999Z', { count: 2, unit: 'months' })).toBe('2027-02-28T23:59:59.999Z');
});

test('refuses a span that is not a whole number from 0, and a start that is no instant', () => {
  expect(() => later('2027-05-04', { count: 1.5, unit: 'days' })).toThrow(/whole number/);
  expect(() => later('2027-05-04', { count: -1, unit: 'months' })).toThrow(/whole number/);
  expect(() => later('2027-05-32', { count: 1, unit: 'days' })).toThrow(/no day that exists/);
});
