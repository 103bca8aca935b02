import type { CombReadingBody } from '@combside/record/kinds/comb-reading';
import { decodeCells } from './encode-cells.ts';
import type { ReadingPart } from './propose-reading.ts';

/** A cell is the same when its middle was found again within this share of the distance between cells. A setting of ours. */
const samePlace = 0.4;

/**
 * What a person said of single cells in one reading, brought over to another reading of the same photograph: each word
 * goes to the cell found at the same place. The last word on a cell counts.
 *
 * @param from the cells the words were said of
 * @param to the reading that takes its place
 * @returns the words on cells of `to`; those whose cell was not found again are left out
 * @throws RangeError when either holds cells that this program cannot read
 */
export function carryCorrections(
  from: CombReadingBody['cells'],
  corrections: CombReadingBody['corrections'],
  to: ReadingPart,
): CombReadingBody['corrections'] {
  const before = decodeCells(from);
  const after = decodeCells(to.cells);
  const words = new Map(corrections.map((one) => [one.cell, one.class]));
  return [...words].flatMap(([cell, word]) => {
    const place = before[cell];
    if (!place) return [];
    let found = -1;
    let least = samePlace * to.reader.pitchPx;
    after.forEach((other, n) => {
      const far = Math.hypot(other.x - place.x, other.y - place.y);
      if (far > least) return;
      least = far;
      found = n;
    });
    return found < 0 ? [] : [{ cell: found, class: word }];
  });
}
