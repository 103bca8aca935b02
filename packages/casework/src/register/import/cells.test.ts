import { describe, expect, test } from 'vitest';
import { dateOrderOf, readCoordinate, readDate, readNumber } from './cells.ts';

describe('numbers as people write them', () => {
  test.each([
    ['1234.5', 1234.5],
    ['1234,5', 1234.5],
    ['1.234,5', 1234.5],
    ['1,234.5', 1234.5],
    ["1'234.5", 1234.5],
    ['1 234,5', 1234.5],
    ['1.234.567', 1_234_567],
    ['−3', -3],
    ['+7', 7],
    ['.5', 0.5],
    ['52,123456', 52.123456],
  ])('%s', (text, value) => expect(readNumber(text)).toBe(value));

  test.each(['', '-', ',', '1.2.3', '12a', '1,23,456.7', '1e5', 'NaN', '٣'])('%s is none', (text) =>
    expect(readNumber(text)).toBeNull(),
  );
});

describe('coordinates', () => {
  // 51° 28' 40" N is 51 + 28/60 + 40/3600 degrees.
  test.each([
    ['51.4778', 'latitude', 51.4778],
    ['51,4778°', 'latitude', 51.4778],
    ['51°28\'40"N', 'latitude', 51 + 28 / 60 + 40 / 3600],
    ['51° 28′ 40″ S', 'latitude', -(51 + 28 / 60 + 40 / 3600)],
    ['N 51 28,5', 'latitude', 51 + 28.5 / 60],
    ["13° 24,5' O", 'longitude', 13 + 24.5 / 60],
    ['W 3.5', 'longitude', -3.5],
    ["-0° 30'", 'longitude', -0.5],
  ] as const)('%s', (text, axis, value) => expect(readCoordinate(text, axis)).toBeCloseTo(value, 9));

  test.each([
    ['51.4 E', 'latitude'],
    ['51 61', 'latitude'],
    ['-3 W', 'longitude'],
    ['N 5 S', 'latitude'],
    ['north', 'latitude'],
  ] as const)('%s is none', (text, axis) => expect(readCoordinate(text, axis)).toBeNull());
});

describe('dates', () => {
  test.each([
    ['2026-05-04', null, '2026-05-04'],
    ['2026-05-04T10:00:00Z', null, '2026-05-04'],
    ['4.5.2026', null, '2026-05-04'],
    ['13/05/2026', null, '2026-05-13'],
    ['05/13/2026', null, '2026-05-13'],
    ['04/05/2026', null, 'order'],
    ['05/05/2026', null, '2026-05-05'],
    ['04/05/2026', 'day first', '2026-05-04'],
    ['04/05/2026', 'month first', '2026-04-05'],
    ['29.2.2025', null, null],
    ['29.2.2024', null, '2024-02-29'],
    ['31-04-2026', 'day first', null],
    ['yesterday', null, null],
    ['45000', null, null],
  ] as const)('%s, %s', (text, order, date) => expect(readDate(text, order)).toBe(date));

  test('a column tells its order when one date settles it, and not when two contradict', () => {
    expect(dateOrderOf(['04/05/2026', '13/05/2026'])).toBe('day first');
    expect(dateOrderOf(['04/05/2026', '05/13/2026'])).toBe('month first');
    expect(dateOrderOf(['13/05/2026', '05/13/2026'])).toBeNull();
    expect(dateOrderOf(['04/05/2026'])).toBeNull();
  });
});
