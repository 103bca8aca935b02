import type { CombCell } from '../comb-result.ts';
import type { Lattice } from '../lattice/lattice.ts';
import { type LatticeCell, placeKey } from '../lattice/lattice-cell.ts';
import type { GreyPyramid } from '../photograph/grey-pyramid.ts';
import { polygonTest } from '../photograph/polygon.ts';
import { CellView, featureCount } from './cell-features.ts';
import { classShares, outputCount, readNetwork } from './classifier.ts';
import { classifierWeights } from './classifier-weights.ts';
import { decide, usual } from './decide-class.ts';
import { type JudgedPlaces, settleEdge } from './edge-of-comb.ts';

/** Cells with their classes. */
export interface Classified {
  readonly cells: CombCell[];
  /** Where each of the cells stands in the lattice, in the same order. */
  readonly places: LatticeCell[];
  /** What the classifier said of each. */
  readonly shares: Float32Array[];
}

/**
 * Classes for the places of a lattice; places beyond the edge of the comb fall away, missed ones at the edge are added.
 *
 * @param region only cells in it are kept: corners in picture pixels
 * @param checkpoint called now and then; throw from it to stop
 */
export function judgePlaces(
  pyramid: GreyPyramid,
  lattice: Lattice,
  region: readonly (readonly [number, number])[] | undefined,
  checkpoint: () => void,
): Classified {
  const { cells: found, pitch } = lattice;
  const network = readNetwork(classifierWeights);
  const view = new CellView(pyramid, pitch);
  const features = new Float32Array(featureCount);
  let judged = 0;
  const judge = (cell: LatticeCell): Float32Array => {
    if (++judged % 256 === 0) checkpoint();
    const total = new Float32Array(outputCount);
    const one = new Float32Array(outputCount);
    // Three turns of the same hexagon are three looks; their mean is steadier than one.
    const turns = found.length > 2500 ? [0] : [0, 2, 4];
    for (const turn of turns) {
      view.features(cell, features, turn);
      classShares(network, features, one);
      for (let o = 0; o < outputCount; o++) total[o] = (total[o] as number) + (one[o] as number) / turns.length;
    }
    return total;
  };
  const held: JudgedPlaces = new Map();
  for (const cell of found) held.set(placeKey(cell.column, cell.row), { cell, shares: judge(cell) });
  settleEdge(held, pyramid.picture, pitch, judge);

  const places: LatticeCell[] = [];
  const cells: CombCell[] = [];
  const all: Float32Array[] = [];
  const inside = region ? polygonTest(region) : () => true;
  for (const { cell, shares } of held.values()) {
    if (!inside(cell.x, cell.y)) continue;
    places.push(cell);
    all.push(shares);
    cells.push(decide(cell, shares, usual));
  }
  return { cells, places, shares: all };
}

/** The places that pass, with what belongs to them. */
export function onlyWithin(classified: Classified, passes: (place: LatticeCell) => boolean): Classified {
  const kept = classified.places.flatMap((place, n) => (passes(place) ? [n] : []));
  return {
    cells: kept.map((n) => classified.cells[n] as CombCell),
    places: kept.map((n) => classified.places[n] as LatticeCell),
    shares: kept.map((n) => classified.shares[n] as Float32Array),
  };
}
