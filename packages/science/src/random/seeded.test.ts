import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromState, seeded } from './seeded.ts';

describe('seeded chance', () => {
  it('follows the published xoshiro128** vector for state 1, 2, 3, 4 (Blackman and Vigna, as repeated in public test suites)', () => {
    const chance = fromState([1, 2, 3, 4]);
    expect(Array.from({ length: 10 }, () => chance.bits())).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
    ]);
  });

  it('repeats itself for the same seed and differs for another', () => {
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        const first = seeded(seed);
        const again = seeded(seed);
        const other = seeded(seed + 1);
        const draws = Array.from({ length: 4 }, () => first.uniform());
        expect(Array.from({ length: 4 }, () => again.uniform())).toEqual(draws);
        expect(Array.from({ length: 4 }, () => other.uniform())).not.toEqual(draws);
        for (const draw of draws) expect(draw >= 0 && draw < 1).toBe(true);
      }),
      { seed: 20260101, numRuns: 100 },
    );
  });

  it('has the moments of its laws (mean and variance within four standard errors, 40,000 draws)', () => {
    const chance = seeded(7);
    const n = 40_000;
    const laws: [string, () => number, number, number][] = [
      ['uniform', () => chance.uniform(), 1 / 2, 1 / 12],
      ['normal', () => chance.normal(), 0, 1],
      ['gamma(0.5)', () => chance.gamma(0.5), 0.5, 0.5],
      ['gamma(3)', () => chance.gamma(3), 3, 3],
      ['beta(2, 6)', () => chance.beta(2, 6), 0.25, (2 * 6) / (8 * 8 * 9)],
      ['pert(0, 1, 4)', () => chance.pert(0, 1, 4), 8 / 6, (16 * 2 * 4) / (36 * 7)],
      ['integer(6)', () => chance.integer(6), 2.5, 35 / 12],
    ];
    for (const [name, draw, mean, variance] of laws) {
      let sum = 0;
      let squares = 0;
      for (let i = 0; i < n; i++) {
        const x = draw();
        sum += x;
        squares += (x - mean) ** 2;
      }
      expect(Math.abs(sum / n - mean), `${name} mean`).toBeLessThan(4 * Math.sqrt(variance / n));
      expect(Math.abs(squares / n / variance - 1), `${name} variance`).toBeLessThan(0.08);
    }
  });

  it('says what is wrong with a bad request', () => {
    expect(() => seeded(0.5)).toThrow(/whole number/);
    expect(() => fromState([0, 0, 0, 0])).toThrow(/all zero/);
    expect(() => seeded(1).gamma(0)).toThrow(/above 0/);
    expect(() => seeded(1).pert(1, 0, 2)).toThrow(/low <= mode/);
    expect(() => seeded(1).integer(0)).toThrow(/whole number/);
  });
});
