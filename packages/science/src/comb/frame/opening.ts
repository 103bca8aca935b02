/** Which four lines close the opening of a frame. */
import type { Plane } from '../photograph/picture.ts';
import type { Line, Side } from './side-lines.ts';

type Point = readonly [number, number];

/** Least share of the picture the opening takes, and of each side that is seen. Chosen on the tuning family. */
const leastArea = 0.1;
export const leastSeen = 0.58;
export const leastMeanSeen = 0.7;

/** What steepness and size weigh beside being seen, where several openings are possible. */
const steepWeight = 0.7;
const areaWeight = 0.5;

/** A corner hardly outside may be an error of the lines. */
export function inPicture([x, y]: Point, { width, height }: { width: number; height: number }): boolean {
  const margin = 0.015 * Math.max(width, height);
  return x > -margin && y > -margin && x < width - 1 + margin && y < height - 1 + margin;
}

interface Opening {
  readonly sides: readonly Side[];
  /** Corner n lies between side n and the next. */
  readonly corners: readonly Point[];
  readonly least: number;
  readonly mean: number;
}

/** The four lines that make the best opening: outward directions a quarter turn apart, each seen along its length. */
export function bestOpening(lines: readonly Line[], tone: Plane): Opening | null {
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
export function crossing(one: Side, other: Side): Point | undefined {
  const cross = one.nx * other.ny - one.ny * other.nx;
  if (Math.abs(cross) < 0.3) return undefined;
  return [
    (one.distance * other.ny - other.distance * one.ny) / cross,
    (one.nx * other.distance - other.nx * one.distance) / cross,
  ];
}
