import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellsFromCount, cellsPerArea } from './cells-per-area.ts';
import { beesOnComb, cellsOnComb, frameKinds } from './comb-constants.ts';
import { beesOnCombs, broodCells } from './strength.ts';

const squareInch = 2.54 ** 2;

describe('cells on comb', () => {
  it('a hexagon of 5.2, 5.37 and 5.5 mm gives 4.27, 4.00 and 3.82 per cm² (geometry)', () => {
    const per = (widthMillimetres: number) => cellsPerArea({ widthMillimetres });
    expect([5.2, 5.37, 5.5].map((w) => per(w).perSquareCentimetreSide.toFixed(2))).toEqual(['4.27', '4.00', '3.82']);
    // Both sides: 854, 801, 763; about 800 and 760 to 875 are printed (CELLRACE).
    expect([5.2, 5.37, 5.5].map((w) => Math.round(per(w).perSquareDecimetreBothSides))).toEqual([854, 801, 763]);
    // 5.3 mm gives 26.5 per square inch; the field rules are 23.6 (GRADE) and 25 (CHESH), up to 11 % apart from it.
    const perInch = per(5.3).perSquareCentimetreSide * squareInch;
    expect(perInch).toBeCloseTo(26.5, 1);
    expect(1 - cellsOnComb.workerPerSquareInchSideGrading.value / perInch).toBeCloseTo(0.11, 2);
  });

  it('the 1938 count rule: 12.8 in ten centimetres give 378, 20 give 923 to 924 (BETTS38)', () => {
    expect(Math.round(cellsFromCount({ cellsInTenCentimetres: 12.8 }).perSquareDecimetreBothSides)).toBe(378);
    const twenty = cellsFromCount({ cellsInTenCentimetres: 20 }).perSquareDecimetreBothSides;
    expect(twenty).toBeGreaterThan(923);
    expect(twenty).toBeLessThan(924);
  });

  it('frames: ten deep ones are 2,700 in² (GRADE), a full one 6,970 cells against 6,100 printed (BBKA-CELL)', () => {
    const deep = frameKinds['Langstroth deep'];
    expect((deep.sideArea.value * 20) / squareInch).toBeCloseTo(2700, 0);
    const cells = deep.sideArea.value * 2 * cellsOnComb.workerPerSquareCentimetreSide.value;
    expect(cells).toBeGreaterThan(6000);
    expect(cells).toBeLessThan(7100);
    expect(Math.round(55_000 / 11)).toBe(frameKinds['British National'].cellsBothSides.value);
  });
});

describe('bees on combs', () => {
  it('10 deep sides at 80 %, 130 bees/dm², 8.71 dm²: 9,058 bees (arithmetic)', () => {
    const sides = Array.from({ length: 10 }, () => ({ squareCentimetres: 871, covered: 0.8 }));
    const { bees } = beesOnCombs({ sides, beesPerSquareDecimetre: 130, errorByEye: 0.15 });
    expect(Math.round(bees.value)).toBe(9058);
    expect([Math.round(bees.low), Math.round(bees.high)]).toEqual([7700, 10417]);
  });

  it('a deep comb fully covered carries 2,200 to 2,450 bees (from memory), and in use 1,100 to 1,400 (SIM69)', () => {
    const { low, high } = beesOnComb.perSquareDecimetreCovered;
    for (const perArea of [low, high]) {
      const sides = [1, 2].map(() => ({ squareCentimetres: 871, covered: 1 }));
      const { bees } = beesOnCombs({ sides, beesPerSquareDecimetre: perArea, errorByEye: 0 });
      expect(bees.value).toBeGreaterThan(2170);
      expect(bees.value).toBeLessThan(2450);
    }
    expect(beesOnComb.perCombInUseBritish.value / beesOnComb.perCombInUseLangstroth.value).toBeCloseTo(0.786, 3);
  });
});

describe('brood by stage', () => {
  it('35 % of one side of 871 cm² capped at 4.0 cells/cm²: 1,219 cells (arithmetic)', () => {
    const sides = [{ squareCentimetres: 871, eggs: 0, larvae: 0, capped: 0.35 }];
    const { capped, all } = broodCells({ sides, cellsPerSquareCentimetre: 4, errorByEye: 0 });
    expect(Math.round(capped.value)).toBe(1219);
    expect(all.value).toBe(capped.value);
  });

  it('adds up over sides and stages, whatever the shares', () => {
    const side = fc
      .tuple(fc.double({ min: 1, max: 2000, noNaN: true }), fc.nat(30), fc.nat(30), fc.nat(40))
      .map(([squareCentimetres, a, b, c]) => ({ squareCentimetres, eggs: a / 100, larvae: b / 100, capped: c / 100 }));
    fc.assert(
      fc.property(fc.array(side, { minLength: 1, maxLength: 20 }), (sides) => {
        const inputs = { cellsPerSquareCentimetre: 4, errorByEye: 0.15 };
        const together = broodCells({ sides, ...inputs });
        const apart = sides.map((one) => broodCells({ sides: [one], ...inputs }).all.value).reduce((a, b) => a + b, 0);
        expect(together.all.value).toBeCloseTo(apart, 6);
        expect(together.all.low).toBeLessThanOrEqual(together.all.high);
      }),
      { seed: 20260301 },
    );
  });

  it('refuses more brood than the side can hold, and a share written as per cent', () => {
    const inputs = { cellsPerSquareCentimetre: 4, errorByEye: 0 };
    const side = { squareCentimetres: 871, eggs: 0.5, larvae: 0.4, capped: 0.2 };
    expect(() => broodCells({ sides: [side], ...inputs })).toThrow('sides[0].eggs + larvae + capped');
    expect(() => broodCells({ sides: [{ ...side, eggs: 50 }], ...inputs })).toThrow('sides[0].eggs must be a fraction');
  });
});
