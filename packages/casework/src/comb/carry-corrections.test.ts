import { describe, expect, test } from 'vitest';
import { broodComb, laidComb, laidPicture } from '../acceptance/laid-comb.ts';
import { carryCorrections } from './carry-corrections.ts';
import { readingPart } from './propose-reading.ts';

const whole = laidComb(broodComb(800, 10));

function kept(result: typeof whole) {
  const part = readingPart({ result, picture: laidPicture });
  if (!part) throw new Error('not kept');
  return part;
}

/** The same comb read again between corners: only cells above a line, found a little beside where they were. */
const above = {
  ...whole,
  cells: whole.cells.filter((cell) => cell.y < 200).map((cell) => ({ ...cell, x: cell.x + 3 })),
};
const from = kept(whole).cells;
const inside = whole.cells.findLastIndex((cell) => cell.y < 200);
const outside = whole.cells.findIndex((cell) => cell.y >= 200);

describe('what was said of cells', () => {
  test('goes along to the cell at the same place of another reading', () => {
    // The cells above the line come first in either reading.
    expect(
      carryCorrections(
        from,
        [
          { cell: 0, class: 'pollen' },
          { cell: inside, class: 'nectar' },
        ],
        kept(above),
      ),
    ).toEqual([
      { cell: 0, class: 'pollen' },
      { cell: inside, class: 'nectar' },
    ]);
    // Read from below: the same places, other numbers.
    const turned = { ...above, cells: above.cells.toReversed() };
    expect(carryCorrections(from, [{ cell: 0, class: 'pollen' }], kept(turned))).toEqual([
      { cell: above.cells.length - 1, class: 'pollen' },
    ]);
  });

  test('is left out where the cell was not found again, and never goes to a neighbour', () => {
    expect(carryCorrections(from, [{ cell: outside, class: 'pollen' }], kept(above))).toEqual([]);
    const shifted = { ...whole, cells: whole.cells.map((cell) => ({ ...cell, x: cell.x + 10 })) };
    expect(carryCorrections(from, [{ cell: 5, class: 'pollen' }], kept(shifted))).toEqual([]);
  });

  test('counts once for each cell, with the last word', () => {
    const said = [
      { cell: 7, class: 'pollen' },
      { cell: 7, class: 'hidden' },
    ];
    expect(carryCorrections(from, said, kept(above))).toEqual([{ cell: 7, class: 'hidden' }]);
  });
});
