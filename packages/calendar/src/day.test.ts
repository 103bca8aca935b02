import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dateOf, dayAt, dayOn, daysLater, isDay, ordinalOf, weekdayOf } from './day.ts';
import { dayOfYear } from './day-of-year.ts';
import { daysInMonth, isLeapYear } from './month-length.ts';

// Ordinal day, weekday and day of the year, made by Python 3.11.7: date.toordinal() - 719163, isoweekday(), tm_yday.
test.each([
  ['0001-01-01', -719162, 1, 1],
  ['0004-02-29', -718008, 7, 60],
  ['0099-12-31', -683004, 4, 365],
  ['0100-03-01', -682944, 1, 60],
  ['1582-10-15', -141427, 5, 288],
  ['1600-02-29', -135081, 2, 60],
  ['1752-09-14', -79366, 4, 258],
  ['1899-12-31', -25568, 7, 365],
  ['1900-02-28', -25509, 3, 59],
  ['1900-03-01', -25508, 4, 60],
  ['1969-12-31', -1, 3, 365],
  ['1970-01-01', 0, 4, 1],
  ['2000-02-29', 11016, 2, 60],
  ['2000-03-01', 11017, 3, 61],
  ['2024-02-29', 19782, 4, 60],
  ['2026-05-04', 20577, 1, 124],
  ['2026-11-28', 20785, 6, 332],
  ['2028-02-29', 21243, 2, 60],
  ['2100-03-01', 47541, 1, 60],
  ['2400-02-29', 157113, 2, 60],
  ['9999-12-31', 2932896, 5, 365],
])('%s is ordinal day %i, weekday %i, day %i of its year', (day, ordinal, weekday, ofYear) => {
  expect(ordinalOf(day)).toBe(ordinal);
  expect(dayAt(ordinal)).toBe(day);
  expect(weekdayOf(day)).toBe(weekday);
  expect(dayOfYear(day)).toBe(ofYear);
});

test('walked day by day through 400 years by the rule of leap years, every day is where it is counted', () => {
  const thirty = [4, 6, 9, 11];
  let [year, month, day, weekday, ofYear] = [1700, 1, 1, 5, 1]; // a Friday
  const first = ordinalOf('1700-01-01');
  const wrong: string[] = [];
  for (let walked = 0; walked < 146_097; walked++) {
    const text = `${year}-${month < 10 ? '0' : ''}${month}-${day < 10 ? '0' : ''}${day}`;
    const isRight =
      dayAt(first + walked) === text &&
      ordinalOf(text) === first + walked &&
      weekdayOf(text) === weekday &&
      dayOfYear(text) === ofYear;
    if (!isRight) wrong.push(text);
    const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
    const length = month === 2 ? (leap ? 29 : 28) : thirty.includes(month) ? 30 : 31;
    weekday = weekday === 7 ? 1 : weekday + 1;
    ofYear += 1;
    if (day < length) day += 1;
    else if (month < 12) [month, day] = [month + 1, 1];
    else [year, month, day, ofYear] = [year + 1, 1, 1, 1];
  }
  expect(wrong).toEqual([]);
  expect([year, month, day, weekday]).toEqual([2100, 1, 1, 5]);
});

describe('laws', () => {
  const ordinals = fc.integer({ min: ordinalOf('0001-01-01'), max: ordinalOf('9999-12-31') });

  test('to the text and back, apart and together, in the order of the texts', () => {
    fc.assert(
      fc.property(ordinals, ordinals, (one, other) => {
        const day = dayAt(one);
        expect(ordinalOf(day)).toBe(one);
        const { year, month, day: date } = dateOf(day);
        expect(dayOn(year, month, date)).toBe(day);
        expect(day < dayAt(other)).toBe(one < other);
        expect(daysLater(day, other - one)).toBe(dayAt(other));
      }),
      { seed: 20261128, numRuns: 2000 },
    );
  });

  test('the calendar repeats after 400 years, which are 146097 days and whole weeks', () => {
    fc.assert(
      fc.property(fc.integer({ min: ordinalOf('0001-01-01'), max: ordinalOf('9599-12-31') }), (ordinal) => {
        const [now, then] = [dateOf(dayAt(ordinal)), dateOf(dayAt(ordinal + 146_097))];
        expect(then).toEqual({ ...now, year: now.year + 400 });
        expect(weekdayOf(dayAt(ordinal + 146_097))).toBe(weekdayOf(dayAt(ordinal)));
      }),
      { seed: 400, numRuns: 1000 },
    );
  });
});

test('months have the days Date gives them, leap years included', () => {
  for (const year of [1900, 1999, 2000, 2023, 2024, 2100, 2400]) {
    for (let month = 1; month <= 12; month++) {
      expect(daysInMonth(year, month)).toBe(new Date(Date.UTC(year, month, 0)).getUTCDate());
    }
    expect(isLeapYear(year)).toBe(new Date(Date.UTC(year, 1, 29)).getUTCMonth() === 1);
  }
  for (const month of [0, 13, 1.5]) expect(() => daysInMonth(2026, month)).toThrow(/count from 1 to 12/);
});

test.each([
  ['2026-02-30', 'names day 30 of a month with 28 days'],
  ['2026-02-29', 'names day 29 of a month with 28 days'],
  ['2026-04-00', 'names day 0 of a month with 30 days'],
  ['2026-13-01', 'names the month 13'],
  ['2026-00-10', 'names the month 0'],
  ['0000-05-04', 'names the year 0'],
  ['2026-2-3', 'is not written YYYY-MM-DD'],
  ['2026-05-04T08:31:05.120Z', 'is not written YYYY-MM-DD'],
  [' 2026-05-04', 'is not written YYYY-MM-DD'],
  ['2026-05-04\n', 'is not written YYYY-MM-DD'],
  ['1 June', 'is not written YYYY-MM-DD'],
  ['', 'is not written YYYY-MM-DD'],
])('"%s" is no day: it %s', (text, why) => {
  expect(isDay(text)).toBe(false);
  for (const ask of [ordinalOf, dateOf, weekdayOf, dayOfYear]) {
    expect(() => ask(text)).toThrow(`the day "${text}" ${why}`);
    expect(() => ask(text)).toThrow(/write a day of the calendar such as 2026-05-04$/);
  }
});

test('no day outside the years 1 to 9999, and none between two days', () => {
  for (const ordinal of [-719_163, 2_932_897, 0.5, Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(() => dayAt(ordinal)).toThrow(/no ordinal day/);
  }
  expect(() => daysLater('9999-12-31', 1)).toThrow(/within the years 1 to 9999/);
  expect([dayOn(2026, 2, 29), dayOn(0, 1, 1), dayOn(2026, 1.5, 1), dayOn(10_000, 1, 1), dayOn(-1, 1, 1)]).toEqual([
    null,
    null,
    null,
    null,
    null,
  ]);
});
