import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayAt } from './day.ts';
import { dayOf, daysBetween, instantOf, millisecondsOf, readInstant } from './instant.ts';

test('instants go to milliseconds and back as Date says, and are their day and their hour', () => {
  fc.assert(
    fc.property(fc.integer({ min: -62_135_596_800_000, max: 253_402_300_799_999 }), (milliseconds) => {
      const text = new Date(milliseconds).toISOString();
      expect(instantOf(milliseconds)).toBe(text);
      expect(millisecondsOf(text)).toBe(milliseconds);
      expect(readInstant(text)).toBe(milliseconds);
      const days = Math.floor(milliseconds / 86_400_000);
      const rest = milliseconds - days * 86_400_000;
      const two = (value: number) => String(value % 60).padStart(2, '0');
      const hour = String(Math.floor(rest / 3_600_000)).padStart(2, '0');
      const clock = `${hour}:${two(Math.floor(rest / 60_000))}:${two(Math.floor(rest / 1000))}`;
      expect(text).toBe(`${dayAt(days)}T${clock}.${String(rest % 1000).padStart(3, '0')}Z`);
      expect(dayOf(text)).toBe(dayAt(days));
    }),
    { seed: 20261125, numRuns: 2000 },
  );
});

test('a day stands for its start in UTC', () => {
  expect(millisecondsOf('1970-01-02')).toBe(86_400_000);
  expect(dayOf('2027-05-04')).toBe('2027-05-04');
});

test('days between are calendar days, whatever the hour', () => {
  expect(daysBetween('2027-05-04T23:59:00.000Z', '2027-05-05T00:01:00.000Z')).toBe(1);
  expect(daysBetween('2027-05-04', '2027-04-04')).toBe(-30);
});

test.each([
  '2027-02-30',
  '2027-02-30T10:00:00.000Z',
  '0000-01-01T00:00:00.000Z',
  '2027-13-01',
  '2027-05-04T24:00:00.000Z',
  '2027-05-04T10:60:00.000Z',
  '2027-05-04T10:00:60.000Z',
  '2027-05-04T10:00:00Z',
  '2027-05-04T10:00:00.000+02:00',
  '2027-05-04T10:00:00.000',
  '4 May 2027',
  '',
])('refuses "%s", saying what to write', (text) => {
  expect(readInstant(text)).toBeNull();
  for (const ask of [millisecondsOf, dayOf]) {
    expect(() => ask(text)).toThrow(RangeError);
    expect(() => ask(text)).toThrow(/write 2026-05-04T08:31:05.120Z or 2026-05-04$/);
  }
});

test('refuses what is no whole number of milliseconds, or leaves the calendar', () => {
  for (const wrong of [Number.NaN, 1.5, -62_135_596_800_001, 253_402_300_800_000]) {
    expect(() => instantOf(wrong)).toThrow(/whole number/);
  }
});
