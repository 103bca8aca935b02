/*
 * How a grown lattice reaches on over ground where single cells say little: capped honey whose walls run together, a
 * glove, a bee, a hard shadow. Growth stops there because no place by itself is sure; but a comb bends gently, so the
 * cells already placed say where the next ring must be, and a wide window over several faint cells still shows the
 * phase of the lattice where a narrow one does not. Rings are laid outwards one after the other, each predicted by a
 * curved fit of what is placed, moved a little by what the wide window says, and settled again once the ring beyond
 * it lies. Whether comb is there at all is not decided here: the classifier takes wood, gloves and background off again.
 */

import { type LatticeCell, neighbourSteps, pitchOf, placeKey } from './lattice-cell.ts';
import { solveEquations } from './linear-equations.ts';
import { type GrowthPlanes, readPlace } from './phases.ts';
import { PlaceIndex } from './place-index.ts';

/** Rings laid beyond the last cell of which walls were seen. */
const furthest = 8;
/** Standard deviation of the wide window, pitches. */
const wide = 1.3;
/** A wide window that explains this much counts as seen, and ends the count of rings laid blindly. */
const faintlySeen = 0.06;
/** Walls seen this well need no second settling. */
const wellSeen = 0.12;
/** Share of a move that is made: trust over trust and this. */
const caution = 0.12;
/** How strongly curvature is held down: combs bend gently. */
const stiffness = 20;
const settlings = 3;
const fitReach = 6;
/** Stops a reach that finds no end. */
const mostRings = 400;

interface Reaching extends LatticeCell {
  /** Rings since the last cell that was seen. */
  unseen: number;
}

/**
 * @param piece one connected piece of lattice; not changed
 * @param taken places held by other pieces
 * @returns the piece and what was reached from it; reached cells carry `seen` 0 or what the wide window gave
 */
export function reachOn(
  planes: GrowthPlanes,
  piece: readonly LatticeCell[],
  allowed: (x: number, y: number) => boolean,
  taken: (x: number, y: number, pitch: number) => boolean,
  checkpoint: () => void,
): LatticeCell[] {
  const cells = new Map<number, Reaching>();
  for (const cell of piece) cells.set(placeKey(cell.column, cell.row), { ...cell, unseen: 0 });
  const first = piece[0];
  if (!first) return [];
  const index = new PlaceIndex(pitchOf(first) * 1.4);
  for (const cell of cells.values()) index.add(cell.x, cell.y);

  const lay = (column: number, row: number, blindly: boolean): Reaching | undefined => {
    let from: Reaching | undefined;
    let beside = 0;
    for (const [dc, dr] of neighbourSteps) {
      const near = cells.get(placeKey(column + dc, row + dr));
      if (!near) continue;
      beside++;
      if (!from || near.unseen < from.unseen) from = near;
    }
    if (!from || beside < 2 || from.unseen >= furthest) return undefined;
    const place = curvedFit(cells, column, row, from);
    if (!place || !allowed(place.x, place.y)) return undefined;
    const cell: Reaching = { column, row, ...place, seen: 0, unseen: from.unseen + 1 };
    settle(planes, cell);
    if (cell.seen === 0 && !blindly) return undefined;
    const pitch = pitchOf(cell);
    if (index.nearest(cell.x, cell.y) < 0.6 * pitch || taken(cell.x, cell.y, pitch)) return undefined;
    return cell;
  };

  // First wherever something is seen, however far round that leads; blindly, by one ring, only when nothing is left.
  let edge: Reaching[] = [...cells.values()];
  let waiting = new Map<number, readonly [number, number]>();
  for (let ring = 0; ring < mostRings; ring++) {
    checkpoint();
    const blindly = edge.length === 0;
    if (blindly && waiting.size === 0) break;
    const tries = blindly ? waiting : freePlaces(cells, edge);
    if (blindly) waiting = new Map();
    edge = [];
    for (const [key, place] of tries) {
      const cell = lay(place[0], place[1], blindly);
      if (cell) edge.push(cell);
      else if (!blindly) waiting.set(key, place);
    }
    for (const cell of edge) {
      const key = placeKey(cell.column, cell.row);
      waiting.delete(key);
      cells.set(key, cell);
      index.add(cell.x, cell.y);
    }
    // The ring is settled again now that its cells have neighbours on both hands.
    for (const cell of edge) {
      const place = curvedFit(cells, cell.column, cell.row, cell);
      if (!place) continue;
      Object.assign(cell, place);
      settle(planes, cell);
    }
  }
  // What was reached from several sides is settled once more between them.
  for (let round = 0; round < settlings; round++) {
    checkpoint();
    for (const cell of cells.values()) {
      if (cell.seen >= wellSeen) continue;
      const place = curvedFit(cells, cell.column, cell.row, cell);
      if (!place) continue;
      Object.assign(cell, place);
      settle(planes, cell);
    }
  }
  return [...cells.values()];
}

/** Free places beside the given cells. */
function freePlaces(
  cells: ReadonlyMap<number, Reaching>,
  edge: readonly Reaching[],
): Map<number, readonly [number, number]> {
  const free = new Map<number, readonly [number, number]>();
  for (const { column, row } of edge) {
    for (const [dc, dr] of neighbourSteps) {
      const key = placeKey(column + dc, row + dr);
      if (!cells.has(key)) free.set(key, [column + dc, row + dr]);
    }
  }
  return free;
}

/** Moves a predicted cell by what the wide window says, as far as that is to be trusted. */
function settle(planes: GrowthPlanes, cell: Reaching): void {
  const { dx, dy, trust } = readPlace(planes, cell, 0.45, wellSeen, wide);
  const gain = trust / (trust + caution);
  cell.x += gain * dx;
  cell.y += gain * dy;
  cell.seen = trust >= faintlySeen ? trust : 0;
  if (trust >= faintlySeen) cell.unseen = Math.max(0, cell.unseen - 2);
}

interface Place {
  x: number;
  y: number;
  ax: number;
  ay: number;
  bx: number;
  by: number;
}

const normal = new Float64Array(36);
const rightX = new Float64Array(6);
const rightY = new Float64Array(6);
const basis = new Float64Array(6);

/** Predicts a place from the cells round it: a curved (quadratic) fit about `from`'s vectors, curvature held down. */
function curvedFit(
  cells: ReadonlyMap<number, Reaching>,
  column: number,
  row: number,
  from: LatticeCell,
): Place | undefined {
  normal.fill(0);
  rightX.fill(0);
  rightY.fill(0);
  let count = 0;
  let weight = 0;
  for (let dr = -fitReach; dr <= fitReach; dr++) {
    for (let dc = Math.max(-fitReach, -fitReach - dr); dc <= Math.min(fitReach, fitReach - dr); dc++) {
      const near = cells.get(placeKey(column + dc, row + dr));
      if (!near || (dc === 0 && dr === 0)) continue;
      const d2 = dc * dc + dc * dr + dr * dr;
      const w = (0.04 + near.seen) / (1 + d2 / 8);
      count++;
      weight += w;
      basis[0] = 1;
      basis[1] = dc;
      basis[2] = dr;
      basis[3] = dc * dc;
      basis[4] = dc * dr;
      basis[5] = dr * dr;
      const px = near.x - (from.ax * dc + from.bx * dr);
      const py = near.y - (from.ay * dc + from.by * dr);
      for (let i = 0; i < 6; i++) {
        const wi = w * (basis[i] as number);
        for (let j = i; j < 6; j++) normal[i * 6 + j] = (normal[i * 6 + j] as number) + wi * (basis[j] as number);
        rightX[i] = (rightX[i] as number) + wi * px;
        rightY[i] = (rightY[i] as number) + wi * py;
      }
    }
  }
  if (count < 4) return undefined;
  for (let i = 1; i < 6; i++) for (let j = 0; j < i; j++) normal[i * 6 + j] = normal[j * 6 + i] as number;
  for (let i = 1; i < 3; i++) normal[i * 7] = (normal[i * 7] as number) + 0.1 * weight;
  for (let i = 3; i < 6; i++) normal[i * 7] = (normal[i * 7] as number) + stiffness * weight;
  const x = solveEquations(normal, rightX);
  const y = solveEquations(normal, rightY);
  if (!x || !y) return undefined;
  return {
    x: x[0] as number,
    y: y[0] as number,
    ax: from.ax + (x[1] as number),
    ay: from.ay + (y[1] as number),
    bx: from.bx + (x[2] as number),
    by: from.by + (y[2] as number),
  };
}
