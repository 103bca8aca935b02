import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type CellClass, cellClasses, coarseClass } from '@combside/science/comb/cells/cell-classes';
import { readCells } from '@combside/science/comb/reading/reading';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decodeCells, encodeCells, type KeptCell } from './encode-cells.ts';

const decidedCell = fc.constantFrom<CellClass[]>(...cellClasses).map((of) => ({ class: of, coarse: coarseClass(of) }));
const stagedCell = fc
  .constantFrom('egg' as const, 'larva' as const)
  .map((stage) => ({ class: 'egg-or-larva' as const, coarse: 'open' as const, stage }));
const undecidedCell = fc.oneof(
  fc
    .constantFrom('sealed' as const, 'hidden' as const, 'not-decided' as const)
    .map((coarse) => ({ class: 'not-decided' as const, coarse })),
  fc.boolean().map((bare) => ({
    class: 'not-decided' as const,
    coarse: 'open' as const,
    ...(bare ? { openWithoutStores: true } : {}),
  })),
  fc.constant({ class: 'not-decided' as const, coarse: 'sealed' as const, likelyBrood: true }),
);

/** A comb of cells at different places, x and y in quarter pixels and confidence in 255ths, as they are kept. */
const comb = fc
  .array(
    fc.tuple(
      fc.oneof(decidedCell, stagedCell, undecidedCell),
      fc.integer({ min: 0, max: 65_535 }),
      fc.integer({ min: 0, max: 65_535 }),
      fc.integer({ min: 0, max: 255 }),
    ),
    { maxLength: 300 },
  )
  .map((all) =>
    all.map(
      ([what, x, y, confidence], n): KeptCell => ({
        ...what,
        // A second piece of lattice stands ten thousands of columns apart, as the reader numbers it.
        column: (n % 17) - 8 + (n % 2) * 50_000,
        row: Math.floor(n / 17) - 4,
        x: x / 4,
        y: y / 4,
        confidence: confidence / 255,
      }),
    ),
  );

describe('cells as they are kept', () => {
  test('come back as they were', () => {
    fc.assert(
      fc.property(comb, (cells) => {
        expect(decodeCells(encodeCells(cells))).toEqual(cells);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  test('give the same figures as before they were kept', () => {
    fc.assert(
      fc.property(comb, (cells) => {
        expect(readCells(decodeCells(encodeCells(cells)))).toEqual(readCells(cells));
      }),
      { seed: 2, numRuns: 100 },
    );
  });

  test('lose at most an eighth of a pixel and one part in 510 of confidence', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 16_383, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (x, confidence) => {
          const cell: KeptCell = { column: 0, row: 0, x, y: 0, confidence, class: 'pollen', coarse: 'open' };
          const [back] = decodeCells(encodeCells([cell]));
          expect(Math.abs((back?.x ?? Number.NaN) - x)).toBeLessThanOrEqual(0.125);
          expect(Math.abs((back?.confidence ?? Number.NaN) - confidence)).toBeLessThanOrEqual(1 / 510 + 1e-12);
        },
      ),
      { seed: 3 },
    );
  });

  test('have the bytes that stand in the golden entry, for ever', () => {
    // The golden entry was sealed once; its bytes were written down by hand from the layout.
    const path = join(import.meta.dirname, '../../../record/src/kinds/golden/comb-reading.1.json');
    const { entry } = JSON.parse(readFileSync(path, 'utf8')) as {
      entry: { body: { cells: { count: number; packed: string } } };
    };
    const cells = decodeCells(entry.body.cells);
    expect(cells).toEqual([
      { column: 0, row: 0, x: 100.25, y: 50, confidence: 1, class: 'sealed-worker-brood', coarse: 'sealed' },
      {
        column: 1,
        row: 0,
        x: 144.5,
        y: 50.75,
        confidence: 0.6,
        class: 'not-decided',
        coarse: 'open',
        openWithoutStores: true,
      },
    ]);
    expect(encodeCells(cells)).toEqual(entry.body.cells);
  });

  test('refuse what does not fit, naming the cell', () => {
    const good: KeptCell = { column: 0, row: 0, x: 1, y: 1, confidence: 0.5, class: 'hidden', coarse: 'hidden' };
    const bad: Partial<KeptCell>[] = [
      { x: 16_384 },
      { y: -1 },
      { x: Number.NaN },
      { confidence: 1.1 },
      { confidence: Number.NaN },
      { row: 40_000 },
      { column: 0.5 },
    ];
    for (const wrong of bad) expect(() => encodeCells([good, { ...good, ...wrong }])).toThrow(/cell 1 cannot be kept/);
    expect(() => encodeCells(Array.from({ length: 20_001 }, () => good))).toThrow(/20001 cells/);
  });

  test('refuse bytes that are not theirs', () => {
    const one = encodeCells([{ column: 0, row: 0, x: 1, y: 1, confidence: 0.5, class: 'hidden', coarse: 'hidden' }]);
    expect(() => decodeCells({ count: 2, packed: one.packed })).toThrow(/24 bytes, not 12/);
    expect(() => decodeCells({ count: 1, packed: '#'.repeat(16) })).toThrow(RangeError);
    const newer = `${one.packed.slice(0, 13)}M${one.packed.slice(14)}`;
    expect(() => decodeCells({ count: 1, packed: newer })).toThrow(/newer version/);
  });
});
