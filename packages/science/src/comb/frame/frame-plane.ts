/*
 * The plane a comb lies in, as a photograph shows it.
 *
 * Four corners of a rectangle fix the mapping between plane and picture but for the rectangle's shape, which the cells
 * tell: on the comb they are regular hexagons. Without corners the cells alone fix both. The tilt follows from the
 * mapping where the line of sight meets the picture (its middle, unless it was cut): there the comb is drawn together
 * by the cosine of the tilt, whatever the lens.
 */

import { type LatticeCell, pitchOf } from '../lattice/lattice-cell.ts';
import { solveEquations } from '../lattice/linear-equations.ts';

type Point = readonly [number, number];

/** Nine numbers, row by row: (x, y) goes to ((h0 x + h1 y + h2) / w, (h3 x + h4 y + h5) / w), w = h6 x + h7 y + h8. */
export type Homography = readonly number[];

/** What the cells say of a plane given by corners. */
export interface PlaneOfCorners {
  /** Length of the first side (first to second corner) and of the second, in cell pitches. */
  readonly sides: readonly [number, number];
  /** Angle between comb and picture plane, degrees, 0 to 90. */
  readonly tiltDegrees: number;
  /** How far the cells are from regular once the rectangle is square again: 0 when they agree with the corners, up to 1. */
  readonly skew: number;
}

const fewestCells = 30;

/** Tells whether points are the corners of a convex quadrilateral in order, either way round. */
export function isQuadrilateral(points: readonly Point[]): boolean {
  if (points.length !== 4) return false;
  let left = 0;
  let right = 0;
  for (let n = 0; n < 4; n++) {
    const [ax, ay] = points[n] as Point;
    const [bx, by] = points[(n + 1) % 4] as Point;
    const [cx, cy] = points[(n + 2) % 4] as Point;
    const turn = (bx - ax) * (cy - by) - (by - ay) * (cx - bx);
    if (turn > 0) left++;
    else if (turn < 0) right++;
  }
  return left === 4 || right === 4;
}

/**
 * The mapping of a rectangle on to a quadrilateral.
 *
 * @param corners where (0, 0), (width, 0), (width, height) and (0, height) go, in this order
 * @throws RangeError when the corners are no convex quadrilateral or a side of the rectangle is not above 0
 */
export function homographyOf(corners: readonly Point[], width = 1, height = 1): Homography {
  if (!isQuadrilateral(corners)) {
    throw new RangeError('the corners of a plane must be four, in order round a convex quadrilateral');
  }
  if (!(width > 0 && height > 0)) throw new RangeError(`a rectangle of ${width} by ${height} has no area`);
  const [[x0, y0], [x1, y1], [x2, y2], [x3, y3]] = corners as readonly [Point, Point, Point, Point];
  // Unit square to quadrilateral in closed form: Heckbert's formulas (from memory), with z the two perspective terms.
  const sx = x0 - x1 + x2 - x3;
  const sy = y0 - y1 + y2 - y3;
  const dx1 = x1 - x2;
  const dx2 = x3 - x2;
  const dy1 = y1 - y2;
  const dy2 = y3 - y2;
  const det = dx1 * dy2 - dx2 * dy1;
  const g = (sx * dy2 - dx2 * sy) / det;
  const h = (dx1 * sy - sx * dy1) / det;
  return [
    (x1 - x0 + g * x1) / width,
    (x3 - x0 + h * x3) / height,
    x0,
    (y1 - y0 + g * y1) / width,
    (y3 - y0 + h * y3) / height,
    y0,
    g / width,
    h / height,
    1,
  ];
}

/** Where a point goes. */
export function mapped(h: Homography, x: number, y: number): [number, number] {
  const [a, b, c, d, e, f, g, i, j] = h as [number, number, number, number, number, number, number, number, number];
  const w = g * x + i * y + j;
  return [(a * x + b * y + c) / w, (d * x + e * y + f) / w];
}

/** The mapping back, up to a factor. */
export function inverseOf(h: Homography): Homography {
  const [a, b, c, d, e, f, g, i, j] = h as [number, number, number, number, number, number, number, number, number];
  return [
    e * j - f * i,
    c * i - b * j,
    b * f - c * e,
    f * g - d * j,
    a * j - c * g,
    c * d - a * f,
    d * i - e * g,
    b * g - a * i,
    a * e - b * d,
  ];
}

/** How small steps at a point are mapped: [dx'/dx, dx'/dy, dy'/dx, dy'/dy]. */
function stepsAt(h: Homography, x: number, y: number): [number, number, number, number] {
  const [a, b, , d, e, , g, i, j] = h as [number, number, number, number, number, number, number, number, number];
  const w = g * x + i * y + j;
  const [u, v] = mapped(h, x, y);
  return [(a - g * u) / w, (b - i * u) / w, (d - g * v) / w, (e - i * v) / w];
}

/**
 * Tilt of a plane against the plane of the picture, degrees, 0 to 90. Exact for a pin-hole camera; below some ten degrees
 * the comb is drawn together by less than two in a hundred, and no figure can be trusted.
 *
 * @param h from the plane, in a unit that is the same in all directions, to the picture
 * @param x, y where the line of sight meets the picture: its middle
 */
export function tiltDegrees(h: Homography, x: number, y: number): number {
  const [u, v] = mapped(inverseOf(h), x, y);
  const [a, b, c, d] = stepsAt(h, u, v);
  // The cosine is the ratio of the two singular values, from sum and product of their squares.
  const sum = a * a + b * b + c * c + d * d;
  const product = Math.abs(a * d - b * c);
  const root = Math.sqrt(Math.max(0, sum * sum - 4 * product * product));
  const cosine = Math.sqrt(Math.max(0, (sum - root) / (sum + root)));
  return (Math.acos(Math.min(1, cosine)) * 180) / Math.PI;
}

/**
 * The plane of four corners, its shape from the cells inside.
 *
 * @param corners in order round the opening, pixels
 * @param cells of the lattice; those with walls seen are used
 * @param size of the picture, pixels
 * @returns undefined when fewer than 30 cells say nothing certain
 */
export function planeOfCorners(
  corners: readonly Point[],
  cells: readonly LatticeCell[],
  size: { readonly width: number; readonly height: number },
): PlaneOfCorners | undefined {
  const square = homographyOf(corners);
  const back = inverseOf(square);
  let xx = 0;
  let yy = 0;
  let xy = 0;
  let count = 0;
  for (const cell of cells) {
    if (cell.seen === 0) continue;
    const [a, b, c, d] = stepsAt(back, cell.x, cell.y);
    count++;
    // Steps to three neighbours; those to the other three are the same turned round.
    for (const [px, py] of [
      [cell.ax, cell.ay],
      [cell.bx, cell.by],
      [cell.bx - cell.ax, cell.by - cell.ay],
    ] as const) {
      const u = a * px + b * py;
      const v = c * px + d * py;
      xx += u * u;
      yy += v * v;
      xy += u * v;
    }
  }
  if (count < fewestCells || !(xx > 0 && yy > 0)) return undefined;
  // Three steps of one pitch, 60 degrees apart, have squares that sum to 1.5 in any direction.
  const width = Math.sqrt((1.5 * count) / xx);
  const height = Math.sqrt((1.5 * count) / yy);
  return {
    sides: [width, height],
    tiltDegrees: tiltDegrees(homographyOf(corners, width, height), (size.width - 1) / 2, (size.height - 1) / 2),
    skew: Math.abs(xy) / Math.sqrt(xx * yy),
  };
}

/**
 * The plane of a comb from its lattice alone: the mapping of regular cells, one pitch apart, on to the cells found.
 *
 * @param cells of the lattice; of several pieces the largest is used, and of it the cells with walls seen
 * @returns undefined with fewer than 30 such cells
 */
export function planeOfLattice(cells: readonly LatticeCell[]): Homography | undefined {
  const piece = largestPiece(cells).filter((cell) => cell.seen > 0);
  if (piece.length < fewestCells) return undefined;
  // Both sides centred and scaled to about 1, or the sums of the fit lose their digits.
  const flat = piece.map((cell): Point => [cell.column + 0.5 * cell.row, cell.row * Math.sqrt(0.75)]);
  const from = centredOn(flat);
  const to = centredOn(piece.map((cell): Point => [cell.x, cell.y]));
  let fit: Homography = [1, 0, 0, 0, 1, 0, 0, 0, 1];
  for (let round = 0; round < 4; round++) {
    const normal = new Float64Array(64);
    const right = new Float64Array(8);
    const add = (row: readonly number[], value: number, weight: number): void => {
      for (let i = 0; i < 8; i++) {
        const wi = weight * (row[i] as number);
        right[i] = (right[i] as number) + wi * value;
        for (let j = 0; j < 8; j++) normal[8 * i + j] = (normal[8 * i + j] as number) + wi * (row[j] as number);
      }
    };
    piece.forEach((cell, n) => {
      const [u, v] = from.points[n] as Point;
      const [x, y] = to.points[n] as Point;
      const w = (fit[6] as number) * u + (fit[7] as number) * v + 1;
      const [px, py] = mapped(fit, u, v);
      // The first round knows no errors yet; later ones weigh errors in the picture, and far cells not at all.
      const off = round === 0 ? 0 : Math.hypot(px - x, py - y) * to.spread;
      const far = off / (1.5 * pitchOf(cell));
      if (far >= 1) return;
      const weight = (cell.seen * (1 - far * far) ** 2) / (round === 0 ? 1 : w * w);
      add([u, v, 1, 0, 0, 0, -u * x, -v * x], x, weight);
      add([0, 0, 0, u, v, 1, -u * y, -v * y], y, weight);
    });
    const solved = solveEquations(normal, right);
    if (!solved) return undefined;
    fit = [...solved, 1];
  }
  // Undo the scaling: picture <- scaled picture <- scaled plane <- plane.
  const back: Homography = [to.spread, 0, to.x, 0, to.spread, to.y, 0, 0, 1];
  const there: Homography = [
    1 / from.spread,
    0,
    -from.x / from.spread,
    0,
    1 / from.spread,
    -from.y / from.spread,
    0,
    0,
    1,
  ];
  return product(back, product(fit, there));
}

/** Pieces of a lattice that never met are thousands of columns apart. */
function largestPiece(cells: readonly LatticeCell[]): readonly LatticeCell[] {
  const pieces = new Map<number, LatticeCell[]>();
  for (const cell of cells) {
    const number = Math.round(cell.column / 10_000);
    const piece = pieces.get(number);
    if (piece) piece.push(cell);
    else pieces.set(number, [cell]);
  }
  let largest: readonly LatticeCell[] = [];
  for (const piece of pieces.values()) if (piece.length > largest.length) largest = piece;
  return largest;
}

function centredOn(points: readonly Point[]): { points: Point[]; x: number; y: number; spread: number } {
  let x = 0;
  let y = 0;
  for (const [px, py] of points) {
    x += px / points.length;
    y += py / points.length;
  }
  let spread = 0;
  for (const [px, py] of points) spread += Math.hypot(px - x, py - y) / points.length;
  spread = Math.max(spread, 1e-9);
  return { points: points.map(([px, py]): Point => [(px - x) / spread, (py - y) / spread]), x, y, spread };
}

function product(one: Homography, other: Homography): Homography {
  const out: number[] = [];
  for (let r = 0; r < 3; r++) {
    for (let c = 0; c < 3; c++) {
      let sum = 0;
      for (let k = 0; k < 3; k++) sum += (one[3 * r + k] as number) * (other[3 * k + c] as number);
      out.push(sum);
    }
  }
  return out;
}
