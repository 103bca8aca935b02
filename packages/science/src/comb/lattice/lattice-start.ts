/*
 * Where a lattice begins.
 *
 * A honeycomb seen through a small window is nearly a perfect hexagonal lattice, however the comb is turned or tilted,
 * so its spectrum has three pairs of peaks b1, b2 and b3 with b1 + b2 + b3 = 0, of nearly equal length and about 60
 * degrees apart. Bees, grass and gloves do not. The picture is cut into tiles at several sizes (each half the one
 * before, because the pitch may be anything from 7 pixels to hundreds), and in each tile the best triple is looked for.
 * Tiles that agree on the pitch outvote those that do not.
 *
 * Two planes are transformed at once, one as the real and one as the imaginary part: brightness (strong where all cells
 * of a tile hold the same) and the wall plane (strong where sealed and open cells are mixed).
 */

import type { GreyPyramid } from '../photograph/grey-pyramid.ts';
import type { Plane } from '../photograph/picture.ts';
import { tileTransform } from './fourier.ts';
import { evenOut, wallPlane } from './wall-plane.ts';

/** A lattice as seen in one tile. Lengths in pixels of the plane given to `latticeStarts`. */
export interface LatticeStart {
  /** Middle of the tile. */
  readonly x: number;
  readonly y: number;
  /** Lattice vectors a = (ax, ay) and b = (bx, by), 60 degrees apart when the comb is seen square-on. */
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  /** Distance between neighbouring cell centres: side of the regular lattice with the same area per cell. */
  readonly pitch: number;
  /** How far the three peaks stand above the rest of the spectrum (geometric mean of power ratios); 1 is nothing. */
  readonly strength: number;
}

/** The planes of one size, `enlarge` times smaller than the plane given. */
export interface StartLevel {
  readonly walls: Plane;
  readonly tone: Plane;
  readonly enlarge: number;
}

const tile = 128;
const half = tile / 2;
const smallestRadius = 3.6;
const largestRadius = 24;

/**
 * Looks for hexagonal lattices in tiles of a plane of the pyramid, at this size and at each halving.
 *
 * @param grey the largest plane to look at
 * @param tilesAcross about how many tiles to try along the longer side at each size
 * @param checkpoint called before each size; throw from it to stop
 * @returns one start per tile in which a lattice was found, strongest first, and the planes they were found on
 */
export function latticeStarts(
  pyramid: GreyPyramid,
  grey: Plane,
  tilesAcross: number,
  checkpoint: () => void = () => {},
): { starts: LatticeStart[]; levels: StartLevel[] } {
  const starts: LatticeStart[] = [];
  const levels: StartLevel[] = [];
  const transform = tileTransform(tile);
  const real = new Float64Array(tile * tile);
  const imaginary = new Float64Array(tile * tile);
  const power = new Float64Array(tile * tile);
  const window = new Float64Array(tile);
  for (let k = 0; k < tile; k++) window[k] = 0.5 - 0.5 * Math.cos((2 * Math.PI * (k + 0.5)) / tile);

  let plane = grey;
  let enlarge = 1;
  while (Math.max(plane.width, plane.height) >= tile * 0.9 && Math.min(plane.width, plane.height) >= 32) {
    checkpoint();
    const level = plane;
    const walls = wallPlane(level, 14);
    const tone = evenOut(level, 14, 4);
    levels.push({ walls, tone, enlarge });
    const place = (length: number): number[] => {
      const room = length - tile;
      if (room <= 0) return [Math.round(room / 2)];
      const wanted = Math.max(2, Math.round((tilesAcross * length) / Math.max(level.width, level.height)));
      const count = Math.min(wanted, Math.ceil(room / (tile / 3)) + 1);
      return Array.from({ length: count }, (_, k) => Math.round((room * k) / (count - 1)));
    };
    for (const top of place(level.height)) {
      for (const left of place(level.width)) {
        for (let y = 0; y < tile; y++) {
          const sy = top + y;
          const inside = sy >= 0 && sy < level.height;
          for (let x = 0; x < tile; x++) {
            const k = y * tile + x;
            const sx = left + x;
            if (inside && sx >= 0 && sx < level.width) {
              const w = (window[x] as number) * (window[y] as number);
              real[k] = w * (tone.data[sy * level.width + sx] as number);
              imaginary[k] = w * (walls.data[sy * level.width + sx] as number);
            } else {
              real[k] = 0;
              imaginary[k] = 0;
            }
          }
        }
        transform(real, imaginary);
        for (let y = 0; y < tile; y++) {
          const oy = (tile - y) % tile;
          for (let x = 0; x < tile; x++) {
            const k = y * tile + x;
            const o = oy * tile + ((tile - x) % tile);
            const rk = real[k] as number;
            const ik = imaginary[k] as number;
            const ro = real[o] as number;
            const io = imaginary[o] as number;
            power[k] = 0.5 * (rk * rk + ik * ik + ro * ro + io * io);
          }
        }
        const found = strongestTriple(power);
        if (!found) continue;
        const [f1x, f1y, f2x, f2y] = found.basis;
        // Lattice vectors are the inverse of the frequency vectors: a . f1 = 1, a . f2 = 0, b . f1 = 0, b . f2 = 1.
        const det = (f1x * f2y - f1y * f2x) / tile;
        const ax = (f2y / det) * enlarge;
        const ay = (-f2x / det) * enlarge;
        const bx = (-f1y / det) * enlarge;
        const by = (f1x / det) * enlarge;
        starts.push({
          x: (left + half) * enlarge,
          y: (top + half) * enlarge,
          ax,
          ay,
          bx,
          by,
          pitch: Math.sqrt(Math.abs(ax * by - ay * bx) / 0.8660254),
          strength: found.strength,
        });
      }
    }
    plane = pyramid.half(level);
    enlarge *= 2;
  }
  return { starts: starts.sort((one, other) => other.strength - one.strength), levels };
}

interface Peak {
  x: number;
  y: number;
  ratio: number;
}

const rings = Math.ceil(largestRadius * 2) + 2;
/** Where in the power spectrum the frequencies of each whole radius stand (one half of the plane). */
const ringPlaces: readonly Int32Array[] = (() => {
  const lists: number[][] = Array.from({ length: rings }, () => []);
  const furthest = Math.ceil(largestRadius * 1.9);
  for (let fy = 0; fy <= furthest; fy++) {
    for (let fx = -furthest; fx <= furthest; fx++) {
      if (fy === 0 && fx <= 0) continue;
      lists[Math.round(Math.hypot(fx, fy))]?.push((fy & (tile - 1)) * tile + (fx & (tile - 1)));
    }
  }
  return lists.map((list) => Int32Array.from(list));
})();

/** Finds the best hexagonal triple of peaks in a tile's power spectrum; frequencies in cycles per tile. */
function strongestTriple(
  power: Float64Array,
): { basis: readonly [number, number, number, number]; strength: number } | undefined {
  const medians = ringPlaces.map((places) => {
    const values = new Float64Array(places.length);
    for (let k = 0; k < values.length; k++) values[k] = power[places[k] as number] as number;
    values.sort();
    return values[values.length >> 1] ?? 0;
  });
  const floor: number[] = medians.map((_, r) => {
    let sum = 0;
    let count = 0;
    for (let k = Math.max(2, r - 1); k <= Math.min(rings - 1, r + 1); k++) {
      sum += medians[k] as number;
      count++;
    }
    return sum / Math.max(1, count);
  });
  const ratioAt = (fx: number, fy: number): number => {
    const r = Math.min(rings - 1, Math.round(Math.sqrt(fx * fx + fy * fy)));
    const noise = floor[r] as number;
    return noise > 0 ? at(power, fx, fy) / noise : 0;
  };

  const peaks: Peak[] = [];
  const bound = Math.ceil(largestRadius);
  for (let fy = 0; fy <= bound; fy++) {
    for (let fx = -bound; fx <= bound; fx++) {
      if (fy === 0 && fx <= 0) continue;
      const radius = Math.sqrt(fx * fx + fy * fy);
      if (radius < smallestRadius || radius > largestRadius) continue;
      const p = at(power, fx, fy);
      let top = true;
      for (let dy = -1; dy <= 1 && top; dy++) {
        for (let dx = -1; dx <= 1; dx++) {
          if ((dx !== 0 || dy !== 0) && at(power, fx + dx, fy + dy) > p) {
            top = false;
            break;
          }
        }
      }
      if (!top) continue;
      const ratio = ratioAt(fx, fy);
      if (ratio > 3) peaks.push({ ...between(power, fx, fy), ratio });
    }
  }
  peaks.sort((one, other) => other.ratio - one.ratio);
  peaks.length = Math.min(peaks.length, 14);

  const strongestNear = (fx: number, fy: number): number => {
    let best = 0;
    const cx = Math.round(fx);
    const cy = Math.round(fy);
    for (let dy = -1; dy <= 1; dy++) {
      for (let dx = -1; dx <= 1; dx++) best = Math.max(best, ratioAt(cx + dx, cy + dy));
    }
    return best;
  };
  const capped = (ratio: number): number => Math.min(ratio, 80);

  let best: { basis: [number, number, number, number]; strength: number } | undefined;
  for (let i = 0; i < peaks.length; i++) {
    for (let j = i + 1; j < peaks.length; j++) {
      const p = peaks[i] as Peak;
      let q = peaks[j] as Peak;
      // Choose the sign of q that puts the two vectors about 120 degrees apart; the third is then minus their sum.
      const dot = p.x * q.x + p.y * q.y;
      if (dot > 0) q = { x: -q.x, y: -q.y, ratio: q.ratio };
      const rp = Math.hypot(p.x, p.y);
      const rq = Math.hypot(q.x, q.y);
      const sx = p.x + q.x;
      const sy = p.y + q.y;
      const rs = Math.hypot(sx, sy);
      const longest = Math.max(rp, rq, rs);
      const shortest = Math.min(rp, rq, rs);
      if (shortest < smallestRadius * 0.9 || longest / shortest > 1.34 || rs > largestRadius * 1.2) continue;
      const third = strongestNear(sx, sy);
      if (third < 2) continue;
      const strength = Math.cbrt(capped(p.ratio) * capped(q.ratio) * capped(third));
      // Frequency vectors 120 degrees apart have lattice vectors 60 degrees apart as their inverse.
      if (!best || strength > best.strength) best = { basis: [p.x, p.y, q.x, q.y], strength };
    }
  }
  if (!best) return undefined;

  // A lattice also shows the triple of its second ring, turned by 30 degrees and longer by the root of three, and of its
  // doubled frequencies. When a coarser triple stands out as well, that one is the lattice.
  const [px, py, qx, qy] = best.basis;
  const coarser: [number, number, number, number][] = [
    // p = 2u + v, q = -u + v  (second ring of u, v)  =>  u = (p - q) / 3, v = (p + 2q) / 3
    [(px - qx) / 3, (py - qy) / 3, (px + 2 * qx) / 3, (py + 2 * qy) / 3],
    [px / 2, py / 2, qx / 2, qy / 2],
  ];
  for (const [ux, uy, vx, vy] of coarser) {
    if (Math.hypot(ux, uy) < smallestRadius * 0.85) continue;
    const a = strongestNear(ux, uy);
    const b = strongestNear(vx, vy);
    const c = strongestNear(ux + vx, uy + vy);
    const strength = Math.cbrt(capped(a) * capped(b) * capped(c));
    if (Math.min(a, b, c) > 4 && strength > 0.35 * best.strength) {
      const basis: [number, number, number, number] = [ux, uy, vx, vy];
      return { basis, strength };
    }
  }
  return best;
}

function at(power: Float64Array, fx: number, fy: number): number {
  // The side is a power of two, so the mask also brings negative frequencies to their place.
  return power[(fy & (tile - 1)) * tile + (fx & (tile - 1))] as number;
}

/** Places a peak between the bins by a parabola through the logarithms of its neighbours. */
function between(power: Float64Array, fx: number, fy: number): { x: number; y: number } {
  const shift = (before: number, middle: number, after: number): number => {
    const l = Math.log(before + 1e-12);
    const m = Math.log(middle + 1e-12);
    const r = Math.log(after + 1e-12);
    const curve = l - 2 * m + r;
    return curve < -1e-9 ? Math.max(-0.5, Math.min(0.5, (0.5 * (l - r)) / curve)) : 0;
  };
  const p = at(power, fx, fy);
  return {
    x: fx + shift(at(power, fx - 1, fy), p, at(power, fx + 1, fy)),
    y: fy + shift(at(power, fx, fy - 1), p, at(power, fx, fy + 1)),
  };
}

/**
 * Gathers starts that show the same lattice (vectors alike within a quarter of a pitch, in any of the six turns).
 *
 * @returns groups, the one with most support first; within each, the strongest start first. A start may stand in
 *   several groups.
 */
export function agreeingStarts(starts: readonly LatticeStart[], most: number): LatticeStart[][] {
  const weightOf = (one: LatticeStart): number => Math.log(Math.max(1, one.strength / 3));
  const groups: { weight: number; members: LatticeStart[] }[] = [];
  const claimed = new Set<LatticeStart>();
  const candidates = starts.map((centre) => {
    const members = starts.filter((one) => latticeDistance(centre, one) < 0.25);
    let weight = 0;
    for (const one of members) weight += weightOf(one);
    // The same tile seen at two sizes is not two witnesses, and fine tiles are many: count ground covered instead.
    return { centre, members, weight: weight * (0.5 + Math.min(1, members.length / 6)) };
  });
  candidates.sort((one, other) => other.weight - one.weight);
  for (const { centre, members, weight } of candidates) {
    if (claimed.has(centre)) continue;
    for (const one of members) claimed.add(one);
    groups.push({ weight, members: members.sort((one, other) => other.strength - one.strength) });
    if (groups.length >= most) break;
  }
  return groups.map((group) => group.members);
}

/** How unlike two lattices are: difference of their vectors in pitches of the first, best of the six turns. */
export function latticeDistance(one: LatticeStart, other: LatticeStart): number {
  const [ax, ay, bx, by] = turningLeft(one);
  let [cx, cy, dx, dy] = turningLeft(other);
  let best = Number.POSITIVE_INFINITY;
  for (let turn = 0; turn < 6; turn++) {
    const difference = Math.sqrt(((ax - cx) ** 2 + (ay - cy) ** 2 + (bx - dx) ** 2 + (by - dy) ** 2) / 2);
    best = Math.min(best, difference);
    [cx, cy, dx, dy] = [dx, dy, dx - cx, dy - cy];
  }
  return best / one.pitch;
}

/** The two lattice vectors ordered so that the turn from the first to the second has positive area. */
function turningLeft(one: LatticeStart): [number, number, number, number] {
  return one.ax * one.by - one.ay * one.bx > 0 ? [one.ax, one.ay, one.bx, one.by] : [one.bx, one.by, one.ax, one.ay];
}
