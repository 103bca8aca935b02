import type { CombReadingBody } from '@combside/record/kinds/comb-reading';
import type { PhotographReference } from '@combside/record/kinds/examination';
import { type CellClass, coarseClass } from '@combside/science/comb/cells/cell-classes';
import type { CombCell, CombResult } from '@combside/science/comb/comb-result';
import { readCells } from '@combside/science/comb/reading/reading';

/** What the machine would say of a comb whose cells are known: rows of 40 cells, 20 px apart, given one by one. */
export function laidComb(classes: readonly CellClass[], wide = 40, pitch = 20): CombResult {
  const cells = classes.map((of, n): CombCell => {
    const row = Math.floor(n / wide);
    // Lattice coordinates lean: each row begins half a cell further to the left than the one before.
    const column = (n % wide) - Math.floor(row / 2);
    return {
      x: pitch * (column + 0.5 * row + 1),
      y: pitch * (0.866 * row + 1),
      pitch,
      column,
      row,
      class: of,
      confidence: of === 'not-decided' ? 0.4 : 0.9,
      coarse: coarseClass(of),
      coarseConfidence: 0.9,
      seen: 1,
    };
  });
  return {
    verdict: 'read',
    reasons: ['never-a-diagnosis', 'scale-not-visible'],
    pitchPx: pitch,
    cells,
    reading: { ...readCells(cells), secondLook: [] },
    plane: { by: 'lattice', corners: null, sides: null, tiltDegrees: 0 },
    measured: { brightness: 120, clipped: 0, detail: 1 },
  };
}

/** A brood comb of so many cells, of which every n-th is open and empty, and the last rows are honey. */
export function broodComb(cells: number, everyNthOpen: number, honey = 0): CellClass[] {
  return Array.from({ length: cells + honey }, (_, n): CellClass => {
    if (n >= cells) return 'sealed-honey';
    return n % everyNthOpen === everyNthOpen - 1 ? 'open-empty' : 'sealed-worker-brood';
  });
}

export const laidPicture = { width: 1000, height: 1500 };

export function photographOf(takenAt: string, hash = 'ab'.repeat(32)): PhotographReference {
  return { hash, mediaType: 'image/jpeg', bytes: 12_345, takenAt, caption: '' };
}

export const combPlace: CombReadingBody['place'] = { box: 'lower', frame: 4, side: 'a' };
