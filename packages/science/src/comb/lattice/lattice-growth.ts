/*
 * How a lattice grows from a start to the whole comb.
 *
 * Around any cell the wall plane is close to mean - amplitude * sum of cos(2 pi b_i . (x - centre)) over the three
 * frequency vectors b1, b2, b3 of the local lattice, b1 + b2 + b3 = 0. Weighing the plane with a bell-shaped window and
 * each of the three waves gives three phases. Two of the three unknowns they hold say how far the centre is from where
 * it was expected, to a small part of a pitch, because the window averages over a neighbourhood. The third, the sum of
 * the phases ("closure"), does not depend on the position at all: it is zero for walls round an empty middle and
 * anything for bees, grass or gloves. So every place tells by itself whether honeycomb is seen there.
 *
 * Cells are placed best first, each predicted by an affine fit to its placed neighbours, then moved by its phases. Where
 * a bee covers the comb there is nothing to measure and the prediction stands, marked as not seen, for a few cells;
 * those never become the edge of the comb.
 */

import type { Plane } from '../photograph/picture.ts';
import type { LatticeStart } from './lattice-start.ts';
import { solveEquations } from './linear-equations.ts';

/** One cell of the lattice. Lengths in pixels of the plane it was found in. */
export interface LatticeCell {
  /** Lattice coordinates: the cell is `column` steps along the first vector and `row` along the second. */
  readonly column: number;
  readonly row: number;
  x: number;
  y: number;
  /** Local lattice vectors. */
  ax: number;
  ay: number;
  bx: number;
  by: number;
  /** How well walls are seen here, 0 to 1; 0 when the place was only extrapolated. */
  seen: number;
}

/** Distance between cell centres of the regular lattice with the same area per cell. */
export function pitchOf(cell: { ax: number; ay: number; bx: number; by: number }): number {
  return Math.sqrt(Math.abs(cell.ax * cell.by - cell.ay * cell.bx) / 0.8660254);
}

/** The six steps to the neighbours, in order round the cell. */
export const neighbourSteps: readonly (readonly [number, number])[] = [
  [1, 0],
  [0, 1],
  [-1, 1],
  [-1, 0],
  [0, -1],
  [1, -1],
];

/** What the walls near a place say about the lattice. */
export interface PhaseReading {
  /** Where the centre is, relative to where it was expected, pixels. */
  readonly dx: number;
  readonly dy: number;
  /** 0 to 1: share of the local variation that the three waves with the right closure explain. */
  readonly seen: number;
}

/**
 * Reads the three phases at a place.
 *
 * @param walls wall plane
 * @param width standard deviation of the window, in pitches
 * @param eitherSign true for a brightness plane, whose cells may be darker or brighter than their walls
 */
export function readPhases(
  walls: Plane,
  x: number,
  y: number,
  ax: number,
  ay: number,
  bx: number,
  by: number,
  width: number,
  eitherSign = false,
): PhaseReading | undefined {
  const det = ax * by - ay * bx;
  const pitch = Math.sqrt(Math.abs(det) / 0.8660254);
  const sigma = width * pitch;
  const reach = 2.1 * sigma;
  const x0 = Math.max(0, Math.ceil(x - reach));
  const x1 = Math.min(walls.width - 1, Math.floor(x + reach));
  const y0 = Math.max(0, Math.ceil(y - reach));
  const y1 = Math.min(walls.height - 1, Math.floor(y + reach));
  if (x1 - x0 < 4 || y1 - y0 < 4) return undefined;
  const twoPi = 2 * Math.PI;
  const f1x = (by / det) * twoPi;
  const f1y = (-bx / det) * twoPi;
  const f2x = (-ay / det) * twoPi;
  const f2y = (ax / det) * twoPi;
  // a . f1 = 1, b . f2 = 1; the third ring direction is a - b's partner: f3 = -(f1 + f2) after f1, f2 are 120 degrees apart.

  // Every other pixel says enough where a cell is many pixels across.
  const step = pitch > 12 ? 2 : 1;
  const count = Math.floor((x1 - x0) / step) + 1;
  const bell = bellScratch(count);
  let bellSum = 0;
  for (let k = 0; k < count; k++) {
    const d = (x0 + step * k - x) / sigma;
    const w = Math.exp(-0.5 * d * d);
    bell[k] = w;
    bellSum += w;
  }
  const c1 = Math.cos(f1x * step);
  const s1 = Math.sin(f1x * step);
  const c2 = Math.cos(f2x * step);
  const s2 = Math.sin(f2x * step);
  let weight = 0;
  let sum = 0;
  let squares = 0;
  let r1 = 0;
  let i1 = 0;
  let r2 = 0;
  let i2 = 0;
  let r3 = 0;
  let i3 = 0;
  let w1r = 0;
  let w1i = 0;
  let w2r = 0;
  let w2i = 0;
  let w3r = 0;
  let w3i = 0;
  for (let py = y0; py <= y1; py += step) {
    const ddy = py - y;
    const wy = Math.exp((-0.5 * ddy * ddy) / (sigma * sigma));
    weight += wy * bellSum;
    const phase1 = f1x * (x0 - x) + f1y * ddy;
    const phase2 = f2x * (x0 - x) + f2y * ddy;
    let u1 = Math.cos(phase1);
    let v1 = Math.sin(phase1);
    let u2 = Math.cos(phase2);
    let v2 = Math.sin(phase2);
    let s = py * walls.width + x0;
    for (let k = 0; k < count; k++, s += step) {
      const w = wy * (bell[k] as number);
      const value = walls.data[s] as number;
      const m = w * value;
      sum += m;
      squares += m * value;
      r1 += m * u1;
      i1 += m * v1;
      r2 += m * u2;
      i2 += m * v2;
      const u3 = u1 * u2 - v1 * v2;
      const v3 = u1 * v2 + v1 * u2;
      r3 += m * u3;
      i3 += m * v3;
      w1r += w * u1;
      w1i += w * v1;
      w2r += w * u2;
      w2i += w * v2;
      w3r += w * u3;
      w3i += w * v3;
      const t1 = u1 * c1 - v1 * s1;
      v1 = u1 * s1 + v1 * c1;
      u1 = t1;
      const t2 = u2 * c2 - v2 * s2;
      v2 = u2 * s2 + v2 * c2;
      u2 = t2;
    }
  }
  const mean = sum / weight;
  const variance = squares / weight - mean * mean;
  if (!(variance > 1e-3)) return { dx: 0, dy: 0, seen: 0 };
  // Take the mean away after the fact; walls stand where the cosine is lowest, hence the minus sign.
  r1 = -(r1 - mean * w1r);
  i1 = -(i1 - mean * w1i);
  r2 = -(r2 - mean * w2r);
  i2 = -(i2 - mean * w2i);
  r3 = -(r3 - mean * w3r);
  i3 = -(i3 - mean * w3i);
  const m1 = Math.hypot(r1, i1);
  const m2 = Math.hypot(r2, i2);
  const m3 = Math.hypot(r3, i3);
  let p1 = Math.atan2(i1, r1);
  let p2 = Math.atan2(i2, r2);
  let p3 = Math.atan2(i3, r3);
  let closure = wrap(p1 + p2 - p3);
  if (eitherSign && Math.cos(closure) < 0) {
    p1 = wrap(p1 + Math.PI);
    p2 = wrap(p2 + Math.PI);
    p3 = wrap(p3 + Math.PI);
    closure = wrap(p1 + p2 - p3);
  }
  // Spread the misfit over the three phases, less to the stronger ones, then two of them give the shift.
  const e1 = 1 / (m1 * m1 + 1e-9);
  const e2 = 1 / (m2 * m2 + 1e-9);
  const e3 = 1 / (m3 * m3 + 1e-9);
  const all = e1 + e2 + e3;
  const q1 = p1 - (closure * e1) / all;
  const q2 = p2 - (closure * e2) / all;
  // q = 2 pi f . shift, shift = a * u + b * v with u = q1 / 2 pi, v = q2 / 2 pi.
  const u = q1 / twoPi;
  const v = q2 / twoPi;
  const strength = Math.cbrt(m1 * m2 * m3) / weight;
  const share = (2 * strength * strength * 3) / variance;
  const seen = Math.min(1, share * 4) * Math.max(0, Math.cos(closure));
  return { dx: ax * u + bx * v, dy: ay * u + by * v, seen };
}

let scratch = new Float64Array(256);
function bellScratch(count: number): Float64Array {
  if (scratch.length < count) scratch = new Float64Array(count * 2);
  return scratch;
}

function wrap(angle: number): number {
  return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
}

/** The planes a lattice is grown on, of one size. */
export interface GrowthPlanes {
  readonly walls: Plane;
  /** Brightness with light evened out: the fall-back where walls are faint but all cells look alike. */
  readonly tone: Plane;
}

/** Reads the phases of the wall plane and, when they say little, those of brightness; the surer of both. */
export function readPlace(
  planes: GrowthPlanes,
  cell: { x: number; y: number; ax: number; ay: number; bx: number; by: number },
  furthest: number,
  enough: number,
  width = 0.8,
): { dx: number; dy: number; trust: number } {
  const pitch = Math.sqrt(Math.abs(cell.ax * cell.by - cell.ay * cell.bx) / 0.8660254);
  const judge = (reading: PhaseReading | undefined, worth: number): { dx: number; dy: number; trust: number } => {
    if (!reading) return { dx: 0, dy: 0, trust: 0 };
    const move = Math.hypot(reading.dx, reading.dy) / pitch;
    return { dx: reading.dx, dy: reading.dy, trust: worth * reading.seen * Math.max(0, 1 - (move / furthest) ** 2) };
  };
  const { x, y, ax, ay, bx, by } = cell;
  const walls = judge(readPhases(planes.walls, x, y, ax, ay, bx, by, width), 1);
  if (walls.trust >= enough) return walls;
  const tone = judge(readPhases(planes.tone, x, y, ax, ay, bx, by, width, true), toneWorth);
  return tone.trust > walls.trust ? tone : walls;
}

/** What growth may do. */
export interface GrowthOptions {
  /** Places outside are never filled: tells whether (x, y) in plane pixels may hold a cell. */
  readonly allowed: (x: number, y: number) => boolean;
  /** Stops runaway growth. */
  readonly mostCells: number;
  /** Called now and then; throw from it to stop. */
  readonly checkpoint: () => void;
}

const enoughSeen = 0.12;
/** Room above the tilt we promise, for strong perspective; below a square grid's. */
const mostSkew = 1.38;
/** Brightness may follow either sign, so chance agrees with it more often. */
const toneWorth = 0.6;
const furthestUnseen = 2;
/** With a firm prediction from all round less is enough. */
const enoughWhenHeld = 0.06;

interface Growing extends LatticeCell {
  /** Steps since the last cell whose walls were seen. */
  unseen: number;
}

/**
 * Grows one connected piece of lattice from a start.
 *
 * @param taken places already held by other pieces: true when a cell within 0.6 pitch exists there
 * @returns the cells, seen and extrapolated; empty when the start does not hold
 */
export function growLattice(
  planes: GrowthPlanes,
  start: LatticeStart,
  options: GrowthOptions,
  taken: (x: number, y: number, pitch: number) => boolean = () => false,
): LatticeCell[] {
  const cells = new Map<number, Growing>();
  const key = (column: number, row: number): number => (column + 4096) * 8192 + (row + 4096);
  const occupied = new PlaceIndex(start.pitch);

  // The frequency vectors must be 120 degrees apart, so the lattice vectors 60: turn b if they are 120 apart.
  let { ax, ay, bx, by } = start;
  if (ax * bx + ay * by < 0) {
    bx += ax;
    by += ay;
  }
  let x = start.x;
  let y = start.y;
  let first: PhaseReading | undefined;
  for (let round = 0; round < 3; round++) {
    first = readPhases(planes.walls, x, y, ax, ay, bx, by, 1.1);
    if (!first) return [];
    x += first.dx;
    y += first.dy;
  }
  if (!first) return [];
  if (first.seen < enoughSeen) {
    x = start.x;
    y = start.y;
    for (let round = 0; round < 3; round++) {
      first = readPhases(planes.tone, x, y, ax, ay, bx, by, 1.1, true);
      if (!first) return [];
      x += first.dx;
      y += first.dy;
    }
    if (first.seen * toneWorth < enoughSeen) return [];
  }

  const queue = new BestFirst<Growing>();
  const put = (cell: Growing): void => {
    cells.set(key(cell.column, cell.row), cell);
    occupied.add(cell.x, cell.y);
    queue.push(cell, cell.seen - 0.2 * cell.unseen);
  };
  put({ column: 0, row: 0, x, y, ax, ay, bx, by, seen: first.seen, unseen: 0 });

  let steps = 0;
  const spread = (): void => {
    for (let from = queue.pop(); from; from = queue.pop()) {
      if (++steps % 64 === 0) options.checkpoint();
      if (from.unseen >= furthestUnseen) continue;
      for (const [dc, dr] of neighbourSteps) {
        const column = from.column + dc;
        const row = from.row + dr;
        if (cells.has(key(column, row)) || Math.abs(column) > 4000 || Math.abs(row) > 4000) continue;
        const fit = affineFit(cells, key, column, row, from);
        const pitch = Math.sqrt(Math.abs(fit.ax * fit.by - fit.ay * fit.bx) / 0.8660254);
        if (pitch < start.pitch * 0.5 || pitch > start.pitch * 2 || skew(fit) > mostSkew) continue;
        if (!options.allowed(fit.x, fit.y)) continue;
        let cx = fit.x;
        let cy = fit.y;
        let seen = 0;
        const reading = readPlace(planes, fit, 0.42, enoughSeen);
        if (reading.trust >= enoughSeen) {
          seen = reading.trust;
          const blend = Math.min(1, 0.35 + seen);
          cx += blend * reading.dx;
          cy += blend * reading.dy;
        }
        if (occupied.nearest(cx, cy) < 0.6 * pitch || taken(cx, cy, pitch)) continue;
        put({
          column,
          row,
          x: cx,
          y: cy,
          ax: fit.ax,
          ay: fit.ay,
          bx: fit.bx,
          by: fit.by,
          seen,
          unseen: seen > 0 ? 0 : from.unseen + 1,
        });
        if (cells.size >= options.mostCells) {
          queue.clear();
          break;
        }
      }
    }
  };

  spread();
  for (let round = 0; round < 4 && cells.size < options.mostCells; round++) {
    options.checkpoint();
    let found = 0;
    for (const cell of cells.values()) {
      if (cell.seen > 0) continue;
      const place = wideFit(cells, key, cell);
      if (!place) continue;
      Object.assign(cell, place);
      const { dx, dy, trust } = readPlace(planes, cell, 0.3, enoughWhenHeld);
      if (trust < enoughWhenHeld) continue;
      const blend = Math.min(1, 0.3 + trust);
      cell.x += blend * dx;
      cell.y += blend * dy;
      cell.seen = trust;
      cell.unseen = 0;
      queue.push(cell, trust);
      found++;
    }
    // Cells whose neighbours have been found since may lead further.
    for (const cell of cells.values()) if (cell.seen > 0) queue.push(cell, cell.seen);
    const before = cells.size;
    spread();
    if (found === 0 && cells.size === before) break;
  }
  return [...cells.values()];
}

/**
 * Predicts a cell from its placed neighbours: weighted least squares for place and lattice vectors, the vectors held
 * near those of `from` when neighbours are few.
 */
function affineFit(
  cells: ReadonlyMap<number, LatticeCell>,
  key: (column: number, row: number) => number,
  column: number,
  row: number,
  from: LatticeCell,
): { x: number; y: number; ax: number; ay: number; bx: number; by: number } {
  // Unknown: centre c and corrections to the vectors. Residual of neighbour k: p_k - (c + a dc + b dr).
  let sw = 0;
  let sc = 0;
  let sr = 0;
  let scc = 0;
  let scr = 0;
  let srr = 0;
  let tx = 0;
  let ty = 0;
  let tcx = 0;
  let tcy = 0;
  let trx = 0;
  let tryy = 0;
  for (let dr = -3; dr <= 3; dr++) {
    for (let dc = Math.max(-3, -3 - dr); dc <= Math.min(3, 3 - dr); dc++) {
      const cell = cells.get(key(column + dc, row + dr));
      if (!cell) continue;
      const distance = (Math.abs(dc) + Math.abs(dr) + Math.abs(dc + dr)) / 2;
      const w = (0.03 + cell.seen) * (distance <= 1 ? 1 : distance <= 2 ? 0.5 : 0.22);
      const rx = cell.x - (from.ax * dc + from.bx * dr);
      const ry = cell.y - (from.ay * dc + from.by * dr);
      sw += w;
      sc += w * dc;
      sr += w * dr;
      scc += w * dc * dc;
      scr += w * dc * dr;
      srr += w * dr * dr;
      tx += w * rx;
      ty += w * ry;
      tcx += w * dc * rx;
      tcy += w * dc * ry;
      trx += w * dr * rx;
      tryy += w * dr * ry;
    }
  }
  // Corrections to the vectors are pulled to zero (ridge): with one neighbour the prediction is simply a step.
  const ridge = 0.9;
  const mc = sc / sw;
  const mr = sr / sw;
  const vcc = scc - sw * mc * mc + ridge;
  const vcr = scr - sw * mc * mr + ridge * 0.5;
  const vrr = srr - sw * mr * mr + ridge;
  const det = vcc * vrr - vcr * vcr;
  const ux = tcx - mc * tx;
  const uy = tcy - mc * ty;
  const vx = trx - mr * tx;
  const vy = tryy - mr * ty;
  const dax = (ux * vrr - vx * vcr) / det;
  const day = (uy * vrr - vy * vcr) / det;
  const dbx = (vx * vcc - ux * vcr) / det;
  const dby = (vy * vcc - uy * vcr) / det;
  return {
    x: tx / sw - dax * mc - dbx * mr,
    y: ty / sw - day * mc - dby * mr,
    ax: from.ax + dax,
    ay: from.ay + day,
    bx: from.bx + dbx,
    by: from.by + dby,
  };
}

/** Kept between fits, so that thousands of them leave nothing behind to be collected. */
const fit = {
  normal: new Float64Array(36),
  tx: new Float64Array(6),
  ty: new Float64Array(6),
  basis: new Float64Array(6),
};

/**
 * Predicts an unseen cell from seen ones up to six steps away on several sides: a curved (quadratic) fit, so that a gap
 * under a bee is bridged from both of its shores. Undefined when too few are seen or they lie on one side only.
 */
function wideFit(
  cells: ReadonlyMap<number, LatticeCell>,
  key: (column: number, row: number) => number,
  cell: LatticeCell,
): { x: number; y: number; ax: number; ay: number; bx: number; by: number } | undefined {
  const { normal, tx, ty, basis } = fit;
  normal.fill(0);
  tx.fill(0);
  ty.fill(0);
  let count = 0;
  let sideC = 0;
  let sideR = 0;
  for (let dr = -6; dr <= 6; dr++) {
    for (let dc = Math.max(-6, -6 - dr); dc <= Math.min(6, 6 - dr); dc++) {
      const near = cells.get(key(cell.column + dc, cell.row + dr));
      if (!near || near.seen <= 0) continue;
      const d2 = dc * dc + dc * dr + dr * dr;
      const w = near.seen / (1 + d2 / 6);
      count++;
      const length = Math.sqrt(d2) + 1e-9;
      sideC += dc / length;
      sideR += dr / length;
      basis[0] = 1;
      basis[1] = dc;
      basis[2] = dr;
      basis[3] = dc * dc;
      basis[4] = dc * dr;
      basis[5] = dr * dr;
      const px = near.x - cell.x;
      const py = near.y - cell.y;
      for (let i = 0; i < 6; i++) {
        const wi = w * (basis[i] as number);
        for (let j = 0; j < 6; j++) normal[i * 6 + j] = (normal[i * 6 + j] as number) + wi * (basis[j] as number);
        tx[i] = (tx[i] as number) + wi * px;
        ty[i] = (ty[i] as number) + wi * py;
      }
    }
  }
  if (count < 10 || Math.hypot(sideC, sideR) / count > 0.75) return undefined;
  // Curvature is held down: combs bend gently.
  for (let i = 3; i < 6; i++) normal[i * 7] = (normal[i * 7] as number) + 6;
  const x = solveEquations(normal, tx);
  const y = solveEquations(normal, ty);
  if (!x || !y) return undefined;
  return {
    x: cell.x + (x[0] as number),
    y: cell.y + (y[0] as number),
    ax: x[1] as number,
    ay: y[1] as number,
    bx: x[2] as number,
    by: y[2] as number,
  };
}

/** Longest over shortest of the three lattice vectors: 1 seen square-on, 1.22 tilted by 35 degrees, 1.41 for a square grid. */
function skew(cell: { ax: number; ay: number; bx: number; by: number }): number {
  const a = Math.hypot(cell.ax, cell.ay);
  const b = Math.hypot(cell.bx, cell.by);
  const c = Math.hypot(cell.ax - cell.bx, cell.ay - cell.by);
  return Math.max(a, b, c) / Math.min(a, b, c);
}

/** Finds cells near a place without looking at all of them. */
export class PlaceIndex {
  private readonly bins = new Map<number, number[]>();
  private readonly side: number;

  constructor(side: number) {
    this.side = side;
  }

  add(x: number, y: number): void {
    const k = this.bin(x, y);
    const list = this.bins.get(k);
    if (list) list.push(x, y);
    else this.bins.set(k, [x, y]);
  }

  /** Distance to the nearest place added, if one is within about a bin's side; else infinity. */
  nearest(x: number, y: number): number {
    let best = Number.POSITIVE_INFINITY;
    for (let oy = -1; oy <= 1; oy++) {
      for (let ox = -1; ox <= 1; ox++) {
        const list = this.bins.get(this.bin(x + ox * this.side, y + oy * this.side));
        if (!list) continue;
        for (let k = 0; k < list.length; k += 2) {
          const dx = (list[k] as number) - x;
          const dy = (list[k + 1] as number) - y;
          const d = dx * dx + dy * dy;
          if (d < best) best = d;
        }
      }
    }
    return Math.sqrt(best);
  }

  private bin(x: number, y: number): number {
    // Small enough for whole numbers the engine keeps without a box: pictures are thousands of bins across at most.
    return (Math.floor(x / this.side) + 1024) * 32_768 + Math.floor(y / this.side) + 1024;
  }
}

/** A queue that gives the highest rank first (binary heap). */
class BestFirst<T> {
  private items: { item: T; rank: number }[] = [];

  push(item: T, rank: number): void {
    const heap = this.items;
    heap.push({ item, rank });
    let k = heap.length - 1;
    while (k > 0) {
      const up = (k - 1) >> 1;
      if ((heap[up] as { rank: number }).rank >= rank) break;
      [heap[k], heap[up]] = [heap[up] as { item: T; rank: number }, heap[k] as { item: T; rank: number }];
      k = up;
    }
  }

  pop(): T | undefined {
    const heap = this.items;
    const top = heap[0];
    const last = heap.pop();
    if (!top || !last) return undefined;
    if (heap.length > 0) {
      heap[0] = last;
      let k = 0;
      for (;;) {
        const l = 2 * k + 1;
        const r = l + 1;
        let best = k;
        if (l < heap.length && (heap[l] as { rank: number }).rank > (heap[best] as { rank: number }).rank) best = l;
        if (r < heap.length && (heap[r] as { rank: number }).rank > (heap[best] as { rank: number }).rank) best = r;
        if (best === k) break;
        [heap[k], heap[best]] = [heap[best] as { item: T; rank: number }, heap[k] as { item: T; rank: number }];
        k = best;
      }
    }
    return top.item;
  }

  clear(): void {
    this.items = [];
  }
}
