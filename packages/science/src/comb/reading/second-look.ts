import type { CombCell, SecondLook } from '../comb-result.ts';
import type { LatticeCell } from '../lattice/lattice-cell.ts';
import type { GreyPyramid } from '../photograph/grey-pyramid.ts';
import { measureCappings, smallestCappingPitch } from './capping.ts';

const secondLooks = 12;
const outlyingFrom = 4;

/**
 * Measures the cappings of sealed worker brood, and names those worth a second look, the most outlying first.
 *
 * @param places of the cells, in the same order
 * @param pitch middle pitch, pixels; below `smallestCappingPitch` nothing is measured
 * @returns the cells, those measured with their capping; at most twelve to look at again
 */
export function lookAtCappings(
  pyramid: GreyPyramid,
  cells: readonly CombCell[],
  places: readonly LatticeCell[],
  pitch: number,
): { readonly cells: readonly CombCell[]; readonly secondLook: readonly SecondLook[] } {
  if (pitch < smallestCappingPitch) return { cells, secondLook: [] };
  const secondLook: SecondLook[] = [];
  const sealed = cells.flatMap((cell, n) => (cell.class === 'sealed-worker-brood' ? [n] : []));
  const looks = measureCappings(
    pyramid,
    sealed.map((n) => places[n] as LatticeCell),
    pitch,
  );
  const measured = cells.slice();
  sealed.forEach((n, k) => {
    const capping = looks[k];
    if (!capping) return;
    measured[n] = { ...(cells[n] as CombCell), capping };
    if (capping.outlying >= outlyingFrom) secondLook.push({ cell: n, outlying: capping.outlying, why: capping.most });
  });
  secondLook.sort((one, other) => other.outlying - one.outlying);
  secondLook.length = Math.min(secondLook.length, secondLooks);
  return { cells: measured, secondLook };
}
