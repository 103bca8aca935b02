import { describe, expect, test } from 'vitest';
import { createFormats } from './formats.ts';

const en = createFormats('en');
const de = createFormats('de');

// Expected texts: Unicode CLDR patterns of en-GB and de-DE, as printed in the CLDR charts (from memory).
describe('numbers and units', () => {
  test('separators and decimals', () => {
    expect(en.number(12345.678)).toBe('12,345.68');
    expect(de.number(12345.678)).toBe('12.345,68');
    expect(de.number(2, 1, 'exact')).toBe('2,0');
    expect(en.number(3.7, 0)).toBe('4');
  });
  test('units, short and written out', () => {
    expect(en.unit(25, 'mm')).toBe('25\u00a0mm');
    expect(de.unit(25, 'mm')).toBe('25\u00a0mm');
    expect(en.unit(1, 'hour', 'long')).toBe('1\u00a0hour');
    expect(de.unit(2, 'day', 'long')).toBe('2\u00a0Tage');
    expect(en.unit(15, '°C')).toBe('15°C');
    expect(de.unit(15, '°C')).toBe('15\u00a0°C');
  });
  test('shares', () => {
    expect(en.share(0.335, 1)).toBe('33.5%');
    expect(de.share(0.335, 1)).toBe('33,5\u00a0%');
  });
  test('refuses what nobody can read', () => {
    expect(() => en.number(Number.NaN)).toThrow(RangeError);
    expect(() => en.unit(Number.POSITIVE_INFINITY, 'mm')).toThrow(RangeError);
  });
});

describe('days and hours', () => {
  // 2026-03-29T01:00Z is the moment Europe goes to summer time (EU directive 2000/84/EC: last Sunday of March, 01:00 UTC).
  test('the time zone is the one asked for, on either side of the change to summer time', () => {
    expect(en.clockTime('2026-03-29T00:30:00Z', 'Europe/Berlin')).toBe('01:30');
    expect(en.clockTime('2026-03-29T01:30:00Z', 'Europe/Berlin')).toBe('03:30');
    expect(en.clockTime('2026-03-29T01:30:00Z', 'Pacific/Auckland')).toBe('14:30');
  });
  test('the day of a moment depends on the time zone', () => {
    expect(en.dayOf('2026-05-14T23:30:00Z', 'Europe/London')).toBe('15 May 2026');
    expect(de.dayOf('2026-05-14T23:30:00Z', 'Pacific/Honolulu')).toBe('14. Mai 2026');
    expect(de.dayAndTime('2026-05-14T08:42:00+02:00', 'Europe/Berlin')).toBe('14. Mai 2026, 08:42');
  });
  test('a calendar day has no time zone', () => {
    expect(en.day('2026-05-14')).toBe('14 May 2026');
    expect(de.day('2026-05-14', 'weekday')).toBe('Donnerstag, 14. Mai 2026');
    expect(de.day('2026-05-04', 'short')).toBe('04.05.2026');
    expect(en.day('2026-05-04', 'short')).toBe('04/05/2026');
  });
  test('midnight is 00:00, never 24:00', () => {
    expect(en.clockTime('2026-05-14T00:00:00Z', 'UTC')).toBe('00:00');
  });
  test('refuses moments and days that are none', () => {
    expect(() => en.clockTime('2026-05-14T10:00:00', 'UTC')).toThrow('write ISO 8601 with Z or an offset');
    expect(() => en.day('2026-02-31')).toThrow('not a calendar day');
    expect(() => en.day('14 May')).toThrow('not a calendar day');
  });
});

test('several things in a row', () => {
  expect(en.list(['smell', 'pattern', 'cappings'])).toBe('smell, pattern and cappings');
  expect(de.list(['Geruch', 'Brutbild'], 'or')).toBe('Geruch oder Brutbild');
});
