/** Lines along which comb may meet wood: paler and smoother outwards, busy inwards. */
import type { GreyPyramid } from '../photograph/grey-pyramid.ts';
import { halve, type Plane, valueAt, windowMean } from '../photograph/picture.ts';

/** Longest side of the plane on which lines are looked for, at most, pixels. */
const longestSide = 512;
const angles = 240;
const angleStep = (2 * Math.PI) / angles;
const distanceStep = 1.5;

/** A gradient tells the direction of a line to about so many steps of the angle. */
const angleDoubt = 5;

const mostLines = 56;

/** How far inside and outside a side is looked, shares of the longest side. */
const insideDepth = 0.045;
const outsideDepth = 0.012;

/** Least and full step in brightness across a side, shares of the picture's contrast; how much smoother wood is than comb. */
export const leastStep = 0.05;
export const fullStep = 0.3;
const smoother = 0.72;

/** Most that may be noise of the camera in the steps between neighbours (0 to 255). */
const mostNoise = 20;

/** A straight line with a side that is outside: nx x + ny y = distance, (nx, ny) pointing outwards. */
export interface Side {
  readonly nx: number;
  readonly ny: number;
  readonly distance: number;
}

export interface Line extends Side {
  readonly angle: number;
  /** Running sums along the line, a value for each pixel of its length from `from` on: where it is seen, and how steep. */
  readonly seen: Float32Array;
  readonly steep: Float32Array;
  readonly from: number;
}

export interface Planes {
  /** Brightness. */
  readonly tone: Plane;
  /** How busy the ground is close by, and over about the depth of a cell or two. */
  readonly busy: Plane;
  readonly busyWide: Plane;
  /** Brightness of the palest twentieth less that of the darkest. */
  readonly contrast: number;
}

/** The planes on which lines are looked for. */
export function workingPlanes(pyramid: GreyPyramid): Planes {
  let tone = pyramid.overview;
  let busy: Plane | undefined;
  for (;;) {
    const last = Math.max(tone.width, tone.height) <= longestSide;
    // What is busy shows in the finer planes: cells of a far comb are gone in the coarse one.
    if (!busy && Math.max(tone.width, tone.height) <= 2 * longestSide) busy = busyness(tone);
    if (last) break;
    tone = pyramid.half(tone);
    if (busy) busy = halve(busy);
  }
  const fine = busy ?? busyness(tone);
  const longest = Math.max(tone.width, tone.height);
  return {
    tone,
    busy: windowMean(fine, 1),
    busyWide: windowMean(fine, Math.round(insideDepth * longest)),
    contrast: Math.max(20, levelOf(tone.data, 0.95) - levelOf(tone.data, 0.05)),
  };
}

/** Strength of the brightness steps, as a logarithm, so that shaded comb counts beside sunlit. */
function busyness(plane: Plane): Plane {
  const { width, height, data } = plane;
  const out = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    const up = (y > 0 ? y - 1 : y) * width;
    const at = y * width;
    const low = (y + 1 < height ? y + 1 : y) * width;
    for (let x = 0; x < width; x++) {
      const dx = (data[at + (x + 1 < width ? x + 1 : x)] as number) - (data[at + (x > 0 ? x - 1 : x)] as number);
      const dy = (data[low + x] as number) - (data[up + x] as number);
      out[at + x] = Math.sqrt(dx * dx + dy * dy);
    }
  }
  // What the smoothest quarter of the picture has is noise of the camera.
  const noise = Math.min(mostNoise, 2 * levelOf(out, 0.25));
  for (let k = 0; k < out.length; k++) out[k] = Math.log1p(0.15 * Math.max(0, (out[k] as number) - noise));
  return { width, height, data: out };
}

/** The value that so much of a plane lies below, from every seventh of its pixels. */
function levelOf(data: Float32Array, share: number): number {
  const some = Float32Array.from({ length: Math.ceil(data.length / 7) }, (_, k) => data[7 * k] as number).sort();
  return some[Math.floor(share * (some.length - 1))] as number;
}

/** How much a place looks like a point of a side, 0 to 1: paler and smoother outwards, busy inwards. */
function sideAt({ tone, busy, busyWide, contrast }: Planes, x: number, y: number, nx: number, ny: number): number {
  const longest = Math.max(tone.width, tone.height);
  const step = valueAt(tone, x + 1.5 * nx, y + 1.5 * ny) - valueAt(tone, x - 1.5 * nx, y - 1.5 * ny);
  if (step < leastStep * contrast) return 0;
  const deep = insideDepth * longest;
  const inside = valueAt(busyWide, x - (deep + 2) * nx, y - (deep + 2) * ny);
  const near = 3.5;
  const far = 3 + outsideDepth * longest;
  const outside = 0.5 * (valueAt(busy, x + near * nx, y + near * ny) + valueAt(busy, x + far * nx, y + far * ny));
  const limit = smoother * inside;
  if (outside >= limit) return 0;
  return Math.min(1, step / (fullStep * contrast));
}

/** Lines with most votes, each with what is seen along it. */
export function likelyLines(planes: Planes): Line[] {
  const { tone } = planes;
  const { width, height, data } = tone;
  const diagonal = Math.hypot(width, height);
  const distances = 2 * Math.ceil(diagonal / distanceStep / 2) + 1;
  const middleX = width / 2;
  const middleY = height / 2;
  const votes = new Float32Array(angles * distances);
  const cosines = Float64Array.from({ length: angles }, (_, k) => Math.cos(k * angleStep));
  const sines = Float64Array.from({ length: angles }, (_, k) => Math.sin(k * angleStep));
  for (let y = 3; y < height - 3; y++) {
    for (let x = 3; x < width - 3; x++) {
      const k = y * width + x;
      const gx =
        2 * ((data[k + 1] as number) - (data[k - 1] as number)) +
        (data[k + 1 - width] as number) -
        (data[k - 1 - width] as number) +
        (data[k + 1 + width] as number) -
        (data[k - 1 + width] as number);
      const gy =
        2 * ((data[k + width] as number) - (data[k - width] as number)) +
        (data[k + width - 1] as number) -
        (data[k - width - 1] as number) +
        (data[k + width + 1] as number) -
        (data[k - width + 1] as number);
      const strength = Math.sqrt(gx * gx + gy * gy);
      if (strength < 4 * leastStep * planes.contrast) continue;
      const weight = sideAt(planes, x, y, gx / strength, gy / strength);
      if (weight === 0) continue;
      const middle = Math.round(Math.atan2(gy, gx) / angleStep);
      for (let o = -angleDoubt; o <= angleDoubt; o++) {
        const angle = (middle + o + 2 * angles) % angles;
        const rho = (x - middleX) * (cosines[angle] as number) + (y - middleY) * (sines[angle] as number);
        const bin = Math.round(rho / distanceStep) + (distances >> 1);
        if (bin < 0 || bin >= distances) continue;
        const place = angle * distances + bin;
        votes[place] = (votes[place] as number) + weight;
      }
    }
  }
  const peaks: { angle: number; bin: number; votes: number }[] = [];
  const enough = 0.04 * Math.min(width, height);
  for (let angle = 0; angle < angles; angle++) {
    for (let bin = 1; bin < distances - 1; bin++) {
      const value = votes[angle * distances + bin] as number;
      if (value < enough) continue;
      let top = true;
      for (let da = -3; da <= 3 && top; da++) {
        const row = ((angle + da + angles) % angles) * distances;
        for (let db = -2; db <= 2; db++) {
          const other = votes[row + bin + db] ?? 0;
          if (other > value || (other === value && (da < 0 || (da === 0 && db < 0)))) {
            top = false;
            break;
          }
        }
      }
      if (top) peaks.push({ angle, bin, votes: value });
    }
  }
  peaks.sort((one, other) => other.votes - one.votes);
  peaks.length = Math.min(peaks.length, mostLines);
  return peaks.map(({ angle, bin }) => {
    const nx = cosines[angle] as number;
    const ny = sines[angle] as number;
    const distance = (bin - (distances >> 1)) * distanceStep + nx * middleX + ny * middleY;
    return along(planes, { nx, ny, distance }, angle * angleStep);
  });
}

/** What is seen along a line; a bend or an error of the line of three pixels does no harm. */
function along(planes: Planes, side: Side, angle: number): Line {
  const { tone } = planes;
  const { nx, ny, distance } = side;
  const footX = nx * distance;
  const footY = ny * distance;
  // Length along (-ny, nx) from the foot of the origin.
  const reach = Math.ceil(Math.hypot(tone.width, tone.height)) + 1;
  const from = -reach;
  const seen = new Float32Array(2 * reach + 2);
  const steep = new Float32Array(2 * reach + 2);
  let most = 0;
  for (let k = 0; k <= 2 * reach; k++) {
    const x = footX - ny * (from + k);
    const y = footY + nx * (from + k);
    // Every other pixel is looked at, and stands for the next.
    if ((k & 1) === 0) {
      most = 0;
      if (x > 1 && y > 1 && x < tone.width - 2 && y < tone.height - 2) {
        for (let off = -3; off <= 3; off++) most = Math.max(most, sideAt(planes, x + off * nx, y + off * ny, nx, ny));
      }
    }
    seen[k + 1] = (seen[k] as number) + (most > 0 ? 1 : 0);
    steep[k + 1] = (steep[k] as number) + most;
  }
  return { ...side, angle, seen, steep, from };
}
