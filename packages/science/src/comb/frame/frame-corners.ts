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
import { overviewOf } from '../lattice/lattice.ts';
import { halve, type Picture, type Plane, valueAt, windowMean } from '../photograph/picture.ts';

/** The inner corners of a frame's opening, where comb meets wood. */
export interface FrameCorners {
  /** Four, clockwise from the one nearest to the top left, pixels of the picture given. */
  readonly corners: readonly (readonly [number, number])[];
  /** How surely these are the corners, 0 to 1; from 0.5 up, for less is not given. */
  readonly confidence: number;
}

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
const leastStep = 0.05;
const fullStep = 0.3;
const smoother = 0.72;
/** Most that may be noise of the camera in the steps between neighbours (0 to 255). */
const mostNoise = 20;
/** Least share of the picture the opening takes, and of each side that is seen. Chosen on the tuning family. */
const leastArea = 0.1;
const leastSeen = 0.58;
const leastMeanSeen = 0.7;
/** What steepness and size weigh beside being seen, where several openings are possible. */
const steepWeight = 0.7;
const areaWeight = 0.5;

/** A straight line with a side that is outside: nx x + ny y = distance, (nx, ny) pointing outwards. */
interface Side {
  readonly nx: number;
  readonly ny: number;
  readonly distance: number;
}

interface Line extends Side {
  readonly angle: number;
  /** Running sums along the line, a value for each pixel of its length from `from` on: where it is seen, and how steep. */
  readonly seen: Float32Array;
  readonly steep: Float32Array;
  readonly from: number;
}

type Point = readonly [number, number];

/**
 * Finds the inner corners of the frame.
 *
 * @param picture as decoded; any turn, any of its sizes
 * @param grey what `overviewOf` gave for it, where the caller has it already
 * @returns null when four sides cannot be told: most pictures of comb alone
 */
export function findFrameCorners(picture: Picture, grey: Plane = overviewOf(picture)): FrameCorners | null {
  const planes = workingPlanes(grey);
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

/** A corner hardly outside may be an error of the lines. */
function inPicture([x, y]: Point, { width, height }: { width: number; height: number }): boolean {
  const margin = 0.015 * Math.max(width, height);
  return x > -margin && y > -margin && x < width - 1 + margin && y < height - 1 + margin;
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

interface Planes {
  /** Brightness. */
  readonly tone: Plane;
  /** How busy the ground is close by, and over about the depth of a cell or two. */
  readonly busy: Plane;
  readonly busyWide: Plane;
  /** Brightness of the palest twentieth less that of the darkest. */
  readonly contrast: number;
}

function workingPlanes(grey: Plane): Planes {
  let tone = grey;
  let busy: Plane | undefined;
  for (;;) {
    const last = Math.max(tone.width, tone.height) <= longestSide;
    // What is busy shows in the finer planes: cells of a far comb are gone in the coarse one.
    if (!busy && Math.max(tone.width, tone.height) <= 2 * longestSide) busy = busyness(tone);
    if (last) break;
    tone = halve(tone);
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
function likelyLines(planes: Planes): Line[] {
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

interface Opening {
  readonly sides: readonly Side[];
  /** Corner n lies between side n and the next. */
  readonly corners: readonly Point[];
  readonly least: number;
  readonly mean: number;
}

/** The four lines that make the best opening: outward directions a quarter turn apart, each seen along its length. */
function bestOpening(lines: readonly Line[], tone: Plane): Opening | null {
  let best: Opening | null = null;
  let bestScore = 0;
  const quarter = Math.PI / 2;
  const turned = (one: Line, other: Line): number => {
    const d = (other.angle - one.angle) % (2 * Math.PI);
    return d < 0 ? d + 2 * Math.PI : d;
  };
  const following = lines.map((one) =>
    lines.flatMap((other, n) => (Math.abs(turned(one, other) - quarter) < 0.6 ? [n] : [])),
  );
  const cornerOf = (i: number, j: number): Point | undefined => {
    const at = crossing(lines[i] as Line, lines[j] as Line);
    return at && inPicture(at, tone) ? at : undefined;
  };
  for (let i = 0; i < lines.length; i++) {
    for (const j of following[i] as number[]) {
      if (j < i) continue;
      const ij = cornerOf(i, j);
      if (!ij) continue;
      for (const k of following[j] as number[]) {
        if (k < i) continue;
        const jk = cornerOf(j, k);
        if (!jk) continue;
        const sideJ = shareOf(lines[j] as Line, 'seen', ij, jk);
        if (sideJ < leastSeen) continue;
        for (const l of following[k] as number[]) {
          if (l < i || !(following[l] as number[]).includes(i)) continue;
          const kl = cornerOf(k, l);
          const li = cornerOf(l, i);
          if (!kl || !li) continue;
          const corners = [ij, jk, kl, li];
          const area = plausibleArea(corners);
          if (area < leastArea * tone.width * tone.height) continue;
          const shares = [
            shareOf(lines[i] as Line, 'seen', li, ij),
            sideJ,
            shareOf(lines[k] as Line, 'seen', jk, kl),
            shareOf(lines[l] as Line, 'seen', kl, li),
          ];
          const least = Math.min(...shares);
          const mean = meanOf(shares);
          if (least < leastSeen || mean < leastMeanSeen) continue;
          const steep = meanOf([
            shareOf(lines[i] as Line, 'steep', li, ij),
            shareOf(lines[j] as Line, 'steep', ij, jk),
            shareOf(lines[k] as Line, 'steep', jk, kl),
            shareOf(lines[l] as Line, 'steep', kl, li),
          ]);
          // Grain of the wood is a fainter step than the comb's edge, and the handle of a brush cuts a smaller piece off.
          const score = least + mean + steepWeight * steep + areaWeight * Math.sqrt(area / (tone.width * tone.height));
          if (score > bestScore) {
            bestScore = score;
            best = { sides: [i, j, k, l].map((n) => lines[n] as Line), corners, least, mean };
          }
        }
      }
    }
  }
  return best;
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Mean over a side, away from its ends, of whether it is seen there or of how steep it is. */
function shareOf(line: Line, what: 'seen' | 'steep', a: Point, b: Point): number {
  const ta = -line.ny * a[0] + line.nx * a[1];
  const tb = -line.ny * b[0] + line.nx * b[1];
  // Lines turn with their outward side: the corner before a side comes first along it.
  const length = tb - ta;
  if (length < 8) return 0;
  const from = Math.round(ta + 0.04 * length - line.from);
  const to = Math.round(tb - 0.04 * length - line.from);
  return ((line[what][to] as number) - (line[what][from] as number)) / (to - from);
}

/** Area of a quadrilateral that a frame's opening may look like, else 0. */
function plausibleArea(corners: readonly Point[]): number {
  let area = 0;
  const lengths: number[] = [];
  for (let n = 0; n < 4; n++) {
    const [x, y] = corners[n] as Point;
    const [u, v] = corners[(n + 1) % 4] as Point;
    const [s, t] = corners[(n + 2) % 4] as Point;
    area += (x * v - u * y) / 2;
    lengths.push(Math.hypot(u - x, v - y));
    // Every corner turns the same way, between about 50 and 130 degrees.
    const cross = (u - x) * (t - v) - (v - y) * (s - u);
    const dot = (u - x) * (s - u) + (v - y) * (t - v);
    if (cross <= 0 || Math.abs(dot) > 0.65 * Math.hypot(u - x, v - y) * Math.hypot(s - u, t - v)) return 0;
  }
  const [a, b, c, d] = lengths as [number, number, number, number];
  const one = (a + c) / 2;
  const other = (b + d) / 2;
  // Opposite sides of a tilted frame differ, but not by half; no frame is four times as long as high, even when tilted.
  const like =
    Math.min(a, c) > 0.5 * Math.max(a, c) &&
    Math.min(b, d) > 0.5 * Math.max(b, d) &&
    Math.max(one, other) < 4 * Math.min(one, other);
  return like ? area : 0;
}

/** Where two lines cross, or undefined when they hardly do. */
function crossing(one: Side, other: Side): Point | undefined {
  const cross = one.nx * other.ny - one.ny * other.nx;
  if (Math.abs(cross) < 0.3) return undefined;
  return [
    (one.distance * other.ny - other.distance * one.ny) / cross,
    (one.nx * other.distance - other.nx * one.distance) / cross,
  ];
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
