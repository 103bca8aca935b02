/*
 * The four inner corners of the frame round a comb, from the picture alone.
 *
 * Where comb meets wood, three things come together along a straight line: it grows paler outwards (wood beside the
 * shadowed gap or the cells), what lies inside is busy (cells, bees), and what lies just outside is smooth (wood). Every
 * pixel where all three hold votes for the lines through it that fit its direction; four lines that face inwards and
 * close a plausible quadrilateral, each seen along most of its length, are the opening. One side not seen, and there is
 * no answer: a wrong frame costs cells, none costs nothing, because the lattice finds the comb without it.
 *
 * Not found by design: frames darker than the comb beside them, corners outside the picture.
 */
import type { GreyPyramid } from '../photograph/grey-pyramid.ts';
import { type Plane, valueAt } from '../photograph/picture.ts';
import { bestOpening, crossing, inPicture, leastMeanSeen, leastSeen } from './opening.ts';
import { fullStep, leastStep, likelyLines, type Side, workingPlanes } from './side-lines.ts';

/** The inner corners of a frame's opening, where comb meets wood. */
export interface FrameCorners {
  /** Four, clockwise from the one nearest to the top left, pixels of the picture given. */
  readonly corners: readonly (readonly [number, number])[];
  /** How surely these are the corners, 0 to 1; from 0.5 up, for less is not given. */
  readonly confidence: number;
}

type Point = readonly [number, number];

/**
 * Finds the inner corners of the frame.
 *
 * @param pyramid of the picture as decoded; any turn, any of its sizes
 * @returns null when four sides cannot be told: most pictures of comb alone
 */
export function findFrameCorners(pyramid: GreyPyramid): FrameCorners | null {
  const { picture, overview: grey } = pyramid;
  const planes = workingPlanes(pyramid);
  const { tone } = planes;
  if (Math.min(tone.width, tone.height) < 80) return null;
  const lines = likelyLines(planes);
  const best = bestOpening(lines, tone);
  if (!best) return null;
  const scale = grey.width / tone.width;
  const sides = best.sides.map((side, n) => {
    const a = best.corners[(n + 3) % 4] as Point;
    const b = best.corners[n] as Point;
    return refined(grey, side, a, b, scale, planes.contrast);
  });
  const corners: Point[] = [];
  for (let n = 0; n < 4; n++) {
    const at = crossing(sides[n] as Side, sides[(n + 1) % 4] as Side);
    if (!at) return null;
    corners.push([
      ((at[0] + 0.5) * picture.width) / grey.width - 0.5,
      ((at[1] + 0.5) * picture.height) / grey.height - 0.5,
    ]);
  }
  if (!corners.every((corner) => inPicture(corner, picture))) return null;
  const confidence =
    0.5 +
    (0.25 * (best.least - leastSeen)) / (1 - leastSeen) +
    (0.25 * (best.mean - leastMeanSeen)) / (1 - leastMeanSeen);
  const kept = corners.map(
    ([x, y]): Point => [Math.min(Math.max(x, 0), picture.width - 1), Math.min(Math.max(y, 0), picture.height - 1)],
  );
  return { corners: fromTopLeft(kept), confidence };
}

/** The same corners, clockwise, beginning with the one nearest to the top left. */
function fromTopLeft(corners: readonly Point[]): Point[] {
  let first = 0;
  corners.forEach(([x, y], n) => {
    const [fx, fy] = corners[first] as Point;
    if (x + y < fx + fy) first = n;
  });
  return [...corners.slice(first), ...corners.slice(0, first)];
}

/** A side placed anew on the finer plane: the steepest step near it at many places, and a line through most of them. */
function refined(grey: Plane, side: Side, a: Point, b: Point, scale: number, contrast: number): Side {
  const { nx, ny } = side;
  const points: { x: number; y: number; weight: number }[] = [];
  const reach = 3 * scale;
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const count = Math.max(24, Math.round(length));
  for (let k = 0; k < count; k++) {
    const t = 0.03 + (0.94 * k) / (count - 1);
    const x = (a[0] + t * (b[0] - a[0]) + 0.5) * scale - 0.5;
    const y = (a[1] + t * (b[1] - a[1]) + 0.5) * scale - 0.5;
    let best = 0;
    let bestOff = 0;
    let before = 0;
    let last = 0;
    let after = 0;
    let previous = 0;
    for (let off = -reach; off <= reach + 1e-9; off += 0.5) {
      const step =
        valueAt(grey, x + (off + 0.75) * nx, y + (off + 0.75) * ny) -
        valueAt(grey, x + (off - 0.75) * nx, y + (off - 0.75) * ny);
      if (last === best && last > 0 && after === 0) after = step;
      if (step > best) {
        best = step;
        bestOff = off;
        before = previous;
        after = 0;
      }
      previous = step;
      last = step;
    }
    if (best < leastStep * contrast) continue;
    const curve = before - 2 * best + after;
    const shift = curve < -1e-6 && after > 0 ? Math.max(-0.5, Math.min(0.5, (0.5 * (before - after)) / curve)) : 0;
    const off = bestOff + 0.5 * shift;
    points.push({ x: x + off * nx, y: y + off * ny, weight: Math.min(best, fullStep * contrast) });
  }
  // The line in coordinates along and across the side found first: across = p + q along, refitted without the far points.
  const start: Side = { nx, ny, distance: (side.distance + 0.5 * (nx + ny)) * scale - 0.5 * (nx + ny) };
  if (points.length < 12) return start;
  let p = 0;
  let q = 0;
  let spread = reach;
  for (let round = 0; round < 8; round++) {
    let sw = 0;
    let st = 0;
    let so = 0;
    let stt = 0;
    let sto = 0;
    for (const one of points) {
      const t = -ny * one.x + nx * one.y;
      const off = nx * one.x + ny * one.y - start.distance;
      const far = (off - p - q * t) / spread;
      if (Math.abs(far) >= 1) continue;
      const w = one.weight * (1 - far * far) ** 2;
      sw += w;
      st += w * t;
      so += w * off;
      stt += w * t * t;
      sto += w * t * off;
    }
    const det = sw * stt - st * st;
    if (!(det > 1e-6 * sw * sw)) return start;
    q = (sw * sto - st * so) / det;
    p = (so - q * st) / sw;
    spread = Math.max(1.2, spread * 0.75);
  }
  // off = p + q t  is  (n - q d) . x = distance + p, with d along the side.
  const norm = Math.hypot(1, q);
  return { nx: (nx + q * ny) / norm, ny: (ny - q * nx) / norm, distance: (start.distance + p) / norm };
}
