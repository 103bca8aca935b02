import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { metresBetween } from './distance.ts';
import { likeness, likenessKey, nameKey, numberKey, telephoneKey } from './likeness.ts';

describe('likeness', () => {
  // Winkler (1990), table of examples; the values as commonly reprinted, from memory.
  test.each([
    ['MARTHA', 'MARHTA', 0.961],
    ['DIXON', 'DICKSONX', 0.813],
    ['DWAYNE', 'DUANE', 0.84],
  ])('%s and %s', (a, b, value) => expect(likeness(a, b)).toBeCloseTo(value, 3));

  test('lies between 0 and 1, is the same both ways, and 1 only for equal texts', () => {
    const text = fc.string({ unit: fc.constantFrom(...'abcü '), maxLength: 8 });
    fc.assert(
      fc.property(text, text, (a, b) => {
        const value = likeness(a, b);
        expect(value).toBeGreaterThanOrEqual(0);
        expect(value).toBeLessThanOrEqual(1);
        expect(likeness(b, a)).toBeCloseTo(value, 12);
        expect(value === 1).toBe(a === b && a !== '');
      }),
      { seed: 20_270_504 },
    );
  });
});

test('keys leave out what people write in different ways', () => {
  expect(likenessKey('  Straße 7,  MÜLLERS-Hof ')).toBe('strasse 7 mullers hof');
  expect(nameKey('Bell, Ann')).toBe(nameKey('Ann Bell'));
  expect(numberKey(' qm-0012 ')).toBe('QM0012');
  expect(numberKey('0012')).toBe(numberKey('12'));
  expect(telephoneKey('+49 (0)30 1234567')).toBe(telephoneKey('030/1234567'));
  expect(telephoneKey('1234')).toBeNull();
});

test('a degree of latitude is 111.195 km on a sphere of 6371.0088 km, and a turn around the world comes home', () => {
  // Arc length = radius times angle.
  expect(metresBetween({ latitude: 0, longitude: 0 }, { latitude: 1, longitude: 0 })).toBeCloseTo(
    (6_371_008.8 * Math.PI) / 180,
    3,
  );
  expect(metresBetween({ latitude: 10, longitude: 179.9999 }, { latitude: 10, longitude: -179.9999 })).toBeLessThan(25);
});
