/*
 * What the walls round a place say about the lattice.
 *
 * Around any cell the wall plane is close to mean - amplitude * sum of cos(2 pi b_i . (x - centre)) over the three
 * frequency vectors b1, b2, b3 of the local lattice, b1 + b2 + b3 = 0. Weighing the plane with a bell-shaped window and
 * each of the three waves gives three phases. Two of the three unknowns they hold say how far the centre is from where
 * it was expected, to a small part of a pitch, because the window averages over a neighbourhood. The third, the sum of
 * the phases ("closure"), does not depend on the position at all: it is zero for walls round an empty middle and
 * anything for bees, grass or gloves. So every place tells by itself whether honeycomb is seen there.
 */
import type { Plane } from '../photograph/picture.ts';

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

/** Brightness may follow either sign, so chance agrees with it more often. */
export const toneWorth = 0.6;
