/*
 * Where the comb ends. The lattice itself cannot tell: it stops short where walls are faint and runs on over wood, a
 * glove or a bee at the rim. What the classifier says about the places, "no cell" and "hidden" above all, decides which
 * are added, which are taken back and which are peeled off.
 */

import { type LatticeCell, neighbourSteps, pitchOf, placeKey } from '../lattice/lattice-cell.ts';
import { PlaceIndex } from '../lattice/place-index.ts';
import { outputCount, outputNumber } from './classifier.ts';

/** A place of the lattice and what the classifier said about it, one share for each of its outputs. */
export interface JudgedPlace {
  readonly cell: LatticeCell;
  readonly shares: Float32Array;
}

/** Judged places by `placeKey`. */
export type JudgedPlaces = Map<number, JudgedPlace>;

/** The size of the picture the places lie in. */
interface Size {
  readonly width: number;
  readonly height: number;
}

const noCell = outputCount - 1;
const hidden = outputNumber('hidden');
/** Walls seen less than this do not vouch for a cell by themselves. */
const surelySeen = 0.12;
/**
 * What the nineteen places round an unsure one may hold, as mean shares of the classifier, before it is taken back: "no
 * cell"; at the edge, "no cell" and "hidden" together where there is some "no cell". Chosen on the tuning family.
 */
const mostNoCell = 0.3;
const mostCovered = 0.5;
const someNoCell = 0.1;
/** Fewest cells with walls seen, and least share of them, that hold an island up; most "no cell" in one. */
const islandSeen = 8;
const islandShare = 0.2;
const islandNoCell = 0.35;

/** Adds missed places at the edge, then takes away what is not comb. Changes `held`. */
export function settleEdge(
  held: JudgedPlaces,
  picture: Size,
  pitch: number,
  judge: (cell: LatticeCell) => Float32Array,
): void {
  growEdge(held, picture, pitch, judge);
  takeBackReach(held, picture);
  dropIslands(held);
  peelEdge(held, picture);
}

/** Tries the free places next to the edge; takes those that look like cells. */
function growEdge(held: JudgedPlaces, picture: Size, pitch: number, judge: (cell: LatticeCell) => Float32Array): void {
  const index = new PlaceIndex(pitch * 1.4);
  for (const { cell } of held.values()) index.add(cell.x, cell.y);
  const tried = new Set<number>();
  for (let round = 0; round < 3; round++) {
    const added: JudgedPlace[] = [];
    for (const { cell } of [...held.values()]) {
      for (const [dc, dr] of neighbourSteps) {
        const place = placeKey(cell.column + dc, cell.row + dr);
        if (held.has(place) || tried.has(place)) continue;
        tried.add(place);
        // Each present neighbour says where this place should be; two at least must agree.
        let x = 0;
        let y = 0;
        let ax = 0;
        let ay = 0;
        let bx = 0;
        let by = 0;
        let count = 0;
        for (const [ec, er] of neighbourSteps) {
          const near = held.get(placeKey(cell.column + dc + ec, cell.row + dr + er))?.cell;
          if (!near) continue;
          x += near.x - ec * near.ax - er * near.bx;
          y += near.y - ec * near.ay - er * near.by;
          ax += near.ax;
          ay += near.ay;
          bx += near.bx;
          by += near.by;
          count++;
        }
        if (count < 2) continue;
        const candidate: LatticeCell = {
          column: cell.column + dc,
          row: cell.row + dr,
          x: x / count,
          y: y / count,
          ax: ax / count,
          ay: ay / count,
          bx: bx / count,
          by: by / count,
          seen: 0,
        };
        const own = pitchOf(candidate);
        const margin = 0.45 * own;
        if (
          candidate.x < margin ||
          candidate.y < margin ||
          candidate.x > picture.width - 1 - margin ||
          candidate.y > picture.height - 1 - margin ||
          index.nearest(candidate.x, candidate.y) < 0.6 * own
        ) {
          continue;
        }
        const shares = judge(candidate);
        if ((shares[hidden] as number) + (shares[noCell] as number) > 0.35) continue;
        added.push({ cell: candidate, shares });
      }
    }
    if (added.length === 0) break;
    for (const one of added) {
      if (index.nearest(one.cell.x, one.cell.y) < 0.6 * pitchOf(one.cell)) continue;
      held.set(placeKey(one.cell.column, one.cell.row), one);
      index.add(one.cell.x, one.cell.y);
    }
  }
}

/**
 * Takes back places the lattice reached without seeing walls where the ground around, taken together, looks like wood,
 * gap or background, or, at the edge, like nothing but bees and those. One place alone cannot say; nineteen together can.
 */
function takeBackReach(held: JudgedPlaces, picture: Size): void {
  const taken: number[] = [];
  const doubtful: JudgedPlaces = new Map();
  for (const [place, one] of held) {
    const { cell } = one;
    if (cell.seen >= surelySeen) continue;
    let none = 0;
    let covered = 0;
    let count = 0;
    for (let dr = -2; dr <= 2; dr++) {
      for (let dc = Math.max(-2, -2 - dr); dc <= Math.min(2, 2 - dr); dc++) {
        const near = held.get(placeKey(cell.column + dc, cell.row + dr))?.shares;
        if (!near) continue;
        count++;
        none += near[noCell] as number;
        covered += (near[noCell] as number) + (near[hidden] as number);
      }
    }
    if (none > mostNoCell * count) taken.push(place);
    else if (covered > mostCovered * count && none > someNoCell * count) doubtful.set(place, one);
  }
  for (const place of taken) held.delete(place);
  for (;;) {
    const off: number[] = [];
    for (const [place, { cell }] of doubtful) {
      let open = 0;
      for (const [dc, dr] of neighbourSteps) {
        if (held.has(placeKey(cell.column + dc, cell.row + dr))) continue;
        const x = cell.x + dc * cell.ax + dr * cell.bx;
        const y = cell.y + dc * cell.ay + dr * cell.by;
        const m = 0.5 * pitchOf(cell);
        open += x < m || y < m || x > picture.width - 1 - m || y > picture.height - 1 - m ? 0.5 : 1;
      }
      if (open >= 1.5) off.push(place);
    }
    if (off.length === 0) break;
    for (const place of off) {
      held.delete(place);
      doubtful.delete(place);
    }
  }
}

/** Takes away islands that few seen cells hold up, or that look like no comb. */
function dropIslands(held: JudgedPlaces): void {
  const left = new Set(held.keys());
  for (const start of held.keys()) {
    if (!left.delete(start)) continue;
    const island = [start];
    let seen = 0;
    let none = 0;
    for (let k = 0; k < island.length; k++) {
      const { cell, shares } = held.get(island[k] as number) as JudgedPlace;
      none += shares[noCell] as number;
      if (cell.seen >= surelySeen) seen++;
      for (const [dc, dr] of neighbourSteps) {
        const place = placeKey(cell.column + dc, cell.row + dr);
        if (held.has(place) && left.delete(place)) island.push(place);
      }
    }
    if (seen < islandSeen || seen < islandShare * island.length || none > islandNoCell * island.length) {
      for (const place of island) held.delete(place);
    }
  }
}

/** Takes places off the edge that look like wood, gap or background, until none is left. */
function peelEdge(held: JudgedPlaces, picture: Size): void {
  for (;;) {
    const off: number[] = [];
    for (const [place, { cell, shares }] of held) {
      if ((shares[noCell] as number) < 0.42) continue;
      let open = 0;
      for (const [dc, dr] of neighbourSteps) {
        if (held.has(placeKey(cell.column + dc, cell.row + dr))) continue;
        const x = cell.x + dc * cell.ax + dr * cell.bx;
        const y = cell.y + dc * cell.ay + dr * cell.by;
        const outside = x < 0 || y < 0 || x > picture.width - 1 || y > picture.height - 1;
        open += outside ? 0.5 : 1;
      }
      if (open >= 1) off.push(place);
    }
    if (off.length === 0) return;
    for (const place of off) held.delete(place);
  }
}
