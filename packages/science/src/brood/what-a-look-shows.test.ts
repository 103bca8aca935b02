import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkLook, type Look, noLook } from './look.ts';
import {
  chanceFrameSeen,
  chanceNoneDrawn,
  chanceNothingShown,
  framesWith,
  noticeChance,
  pointEye,
  upperShareWhenNone,
} from './what-a-look-shows.ts';

const fullLook: Look = {
  depth: 'full',
  framesHeld: 10,
  framesSeen: 10,
  sides: 'both',
  beesShaken: true,
  light: 'sun over the shoulder',
  hold: 'top bar toward the viewer',
  cellsOpened: 20,
  cellsSuspicious: 20,
  sealedBroodCombSides: 8,
};

describe('frames and cells by chance', () => {
  it('20: one bad frame of ten, three looked at: 30.0 % (arithmetic, GOODWIN)', () => {
    expect(chanceFrameSeen(10, 1, 3)).toBeCloseTo(0.3, 12);
  });

  it('21: two bad of ten, three and five looked at: 53.3 % and 77.8 % (arithmetic)', () => {
    expect(chanceFrameSeen(10, 2, 3)).toBeCloseTo(0.5333, 4);
    expect(chanceFrameSeen(10, 2, 5)).toBeCloseTo(0.7778, 4);
  });

  it('three bad of ten: 71 % and 92 % (field protocol, arithmetic)', () => {
    expect(chanceFrameSeen(10, 3, 3)).toBeCloseTo(0.71, 2);
    expect(chanceFrameSeen(10, 3, 5)).toBeCloseTo(0.92, 2);
  });

  it('22: 100 of 1000 suspicious cells opened, 1, 10 or 30 bad: 10.0, 65.3, 96.0 % (arithmetic)', () => {
    for (const [bad, percent] of [
      [1, 10.0],
      [10, 65.3],
      [30, 96.0],
    ] as const) {
      expect(Math.abs(100 * (1 - chanceNoneDrawn(1000, bad, 100)) - percent)).toBeLessThan(0.1);
    }
  });

  it('23: none bad in 60 cells leaves up to 4.9 % (rule of three: 5.0 %; arithmetic)', () => {
    expect(upperShareWhenNone(60)).toBeCloseTo(0.0487, 4);
    expect(3 / 60).toBeCloseTo(upperShareWhenNone(60), 2);
  });

  it('gives the same chance whichever of the two sets is called marked', () => {
    fc.assert(
      fc.property(fc.nat(40), fc.nat(40), fc.nat(60), (a, b, more) => {
        const all = Math.max(a, b) + more;
        expect(chanceNoneDrawn(all, a, b)).toBeCloseTo(chanceNoneDrawn(all, b, a), 12);
      }),
      { seed: 22, numRuns: 200 },
    );
  });

  it('refuses more marked or drawn than there are', () => {
    expect(() => chanceNoneDrawn(10, 11, 3)).toThrow(/of only 10/);
    expect(() => chanceNoneDrawn(10, 1.5, 3)).toThrow(/whole number/);
  });
});

describe('what a look can show', () => {
  it('T2: nothing on the lower wall with the top bar away, whatever the light and the number of cells', () => {
    const away: Look = { ...fullLook, hold: 'top bar away' };
    expect(noticeChance('lower wall', away, pointEye)).toBe(0);
    expect(chanceNothingShown(500, 'lower wall', away, pointEye)).toBe(1);
    expect(chanceNothingShown(500, 'lower wall', fullLook, pointEye)).toBeLessThan(0.1);
  });

  it('shows less with bees left on, in poor light, on one side, on fewer frames (NZ-SHAKE, QLD-SIGN)', () => {
    const whole = chanceNothingShown(5, 'comb face', fullLook, pointEye);
    for (const worse of [
      { beesShaken: false },
      { light: 'poor' },
      { sides: 'one' },
      { framesSeen: 3, depth: 'part' },
    ] as const) {
      expect(chanceNothingShown(5, 'comb face', { ...fullLook, ...worse }, pointEye)).toBeGreaterThan(whole);
    }
  });

  it('never takes silence for the better answer', () => {
    const whole = noticeChance('lower wall', fullLook, pointEye);
    for (const field of ['beesShaken', 'light', 'hold'] as const) {
      expect(noticeChance('lower wall', { ...fullLook, [field]: null }, pointEye)).toBeLessThan(whole);
    }
  });

  it('shows nothing from outside or from above', () => {
    for (const depth of ['outside', 'tops', 'laboratory only'] as const) {
      expect(chanceNothingShown(500, 'comb face', { ...fullLook, depth }, pointEye)).toBe(1);
    }
    expect(chanceNothingShown(500, 'comb face', noLook, pointEye)).toBe(1);
  });

  it('misses less the more cells are sick, and never reaches certainty either way', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 0, max: 12 }),
        (cells, held, without) => {
          const look = { ...fullLook, framesHeld: held, framesSeen: Math.max(1, held - without) };
          const few = chanceNothingShown(cells, 'comb face', look, pointEye);
          // The same frames, twice the cells on each: more frames with the disease would be another case.
          fc.pre(framesWith(cells, held) === framesWith(2 * cells, held));
          const many = chanceNothingShown(2 * cells, 'comb face', look, pointEye);
          expect(many).toBeLessThanOrEqual(few + 1e-12);
          expect(many).toBeGreaterThan(0);
          expect(few).toBeLessThanOrEqual(1);
        },
      ),
      { seed: 500, numRuns: 200 },
    );
  });

  it('follows the frames alone when the eye misses nothing: one diseased cell, three frames of ten, 70 % missed', () => {
    const eye = { ...pointEye, cell: 1 - 1e-12, lapse: 0 };
    const look: Look = { ...fullLook, depth: 'part', framesSeen: 3 };
    expect(chanceNothingShown(1, 'comb face', look, eye)).toBeCloseTo(0.7, 9);
  });

  it('refuses a look that cannot be', () => {
    expect(() => checkLook({ ...fullLook, framesSeen: 11 })).toThrow(/holds 10 brood frames/);
    expect(() => checkLook({ ...fullLook, cellsOpened: -1 })).toThrow(/look.cellsOpened/);
    expect(() => checkLook({ ...fullLook, sealedBroodCombSides: Number.NaN })).toThrow(/sealedBroodCombSides/);
  });
});
