import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LatticeCell } from '../lattice/lattice-cell.ts';
import {
  homographyOf,
  inverseOf,
  isQuadrilateral,
  mapped,
  planeOfCorners,
  planeOfLattice,
  tiltDegrees,
} from './frame-plane.ts';

type Point = readonly [number, number];

/*
 * Worked apart from this code: numpy 2, direct linear transformation by singular values for the mapping, and a pin-hole
 * camera (focal length 800 px, middle of the picture 319.5, 239.5) over a plane turned by 0.2 rad in itself, tilted by 25
 * degrees about the horizontal and 12 about the vertical axis, 110 pitches away. The tilt of its normal is 27.563 degrees.
 */
const worked: Point[] = [
  [112, 87],
  [531, 64],
  [560, 402],
  [78, 371],
];
const turned = [
  [0.9761063, -0.10821215],
  [0.18005556, 0.88824197],
  [-0.12164077, 0.44644858],
] as const;
const opening: Point[] = [
  [41.34891247536484, 58.42749384048736],
  [659.692429240576, 159.4239301919774],
  [579.9417048298217, 409.0439432636233],
  [52.93560142036938, 302.2451628969117],
];
const size = { width: 640, height: 480 };

function seen(u: number, v: number): Point {
  const [x, y, z] = turned.map(([a, b]) => a * u + b * v) as [number, number, number];
  return [319.5 + (800 * x) / (z + 110), 239.5 + (800 * y) / (z + 110)];
}

/** A step on the plane, halfway before the place to halfway after it. */
function stepOver(u: number, v: number, du: number, dv: number): Point {
  const [x1, y1] = seen(u - 0.5 * du, v - 0.5 * dv);
  const [x2, y2] = seen(u + 0.5 * du, v + 0.5 * dv);
  return [x2 - x1, y2 - y1];
}

/** Regular cells one pitch apart on that plane, as the lattice would give them. */
function cellsOn(half: number): LatticeCell[] {
  const cells: LatticeCell[] = [];
  const row3 = Math.sqrt(0.75);
  for (let row = -20; row <= 20; row++) {
    for (let column = -60; column <= 60; column++) {
      const u = column + 0.5 * row;
      const v = row * row3;
      if (Math.abs(u) > half || Math.abs(v) > 0.45 * half) continue;
      const [x, y] = seen(u, v);
      const [ax, ay] = stepOver(u, v, 1, 0);
      const [bx, by] = stepOver(u, v, 0.5, row3);
      cells.push({ column, row, x, y, ax, ay, bx, by, seen: 1 });
    }
  }
  return cells;
}

describe('four corners', () => {
  it('give the mapping worked out apart', () => {
    const h = homographyOf(worked);
    const expected = [340.09578, -43.49767, 112, -32.5101131, 238.825185, 87, -0.148595518, -0.121765, 1];
    expected.forEach((value, n) => {
      expect(h[n]).toBeCloseTo(value, 5);
    });
    const [x, y] = mapped(h, 0.25, 0.8);
    expect(x).toBeCloseTo(187.44912861, 6);
    expect(y).toBeCloseTo(311.90249355, 6);
  });

  it('go to the rectangle and back, and straight lines stay straight', () => {
    const shift = fc.double({ min: -60, max: 60, noNaN: true });
    fc.assert(
      fc.property(
        fc.tuple(shift, shift, shift, shift, shift, shift, shift, shift),
        fc.double({ min: 0.5, max: 90, noNaN: true }),
        fc.double({ min: 0.5, max: 90, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (moves, width, height, share) => {
          const corners = (
            [
              [100, 100],
              [500, 100],
              [500, 400],
              [100, 400],
            ] as const
          ).map(([x, y], n): Point => [x + (moves[2 * n] as number), y + (moves[2 * n + 1] as number)]);
          const h = homographyOf(corners, width, height);
          const back = inverseOf(h);
          const rectangle = [
            [0, 0],
            [width, 0],
            [width, height],
            [0, height],
          ] as const;
          rectangle.forEach(([u, v], n) => {
            const [x, y] = mapped(h, u, v);
            const [cx, cy] = corners[n] as Point;
            expect(Math.hypot(x - cx, y - cy)).toBeLessThan(1e-6);
            const [bu, bv] = mapped(back, cx, cy);
            expect(Math.hypot(bu - u, bv - v)).toBeLessThan(1e-6);
          });
          const [px, py] = mapped(h, share * width, share * height);
          const [ax, ay] = corners[0] as Point;
          const [cx, cy] = corners[2] as Point;
          expect(Math.abs((px - ax) * (cy - ay) - (py - ay) * (cx - ax)) / Math.hypot(cx - ax, cy - ay)).toBeLessThan(
            1e-6,
          );
        },
      ),
      { seed: 4, numRuns: 200 },
    );
  });

  it('are refused when they are not round a convex quadrilateral', () => {
    const crossed: Point[] = [worked[0] as Point, worked[2] as Point, worked[1] as Point, worked[3] as Point];
    expect(isQuadrilateral(worked)).toBe(true);
    expect(isQuadrilateral([...worked].reverse())).toBe(true);
    expect(isQuadrilateral(crossed)).toBe(false);
    expect(isQuadrilateral(worked.slice(1))).toBe(false);
    expect(
      isQuadrilateral([
        [0, 0],
        [1, 1],
        [2, 2],
        [0, 4],
      ]),
    ).toBe(false);
    expect(() => homographyOf(crossed)).toThrow(/convex/);
    expect(() => homographyOf(worked, 0, 3)).toThrow(/no area/);
  });
});

describe('tilt', () => {
  it('of a rectangle of known shape is that of the camera', () => {
    expect(tiltDegrees(homographyOf(opening, 80, 38), 319.5, 239.5)).toBeCloseTo(27.563, 2);
  });

  it('of corners follows from the cells, with the sides in pitches', () => {
    const plane = planeOfCorners(opening, cellsOn(38), size);
    expect(plane?.tiltDegrees).toBeCloseTo(27.563, 1);
    expect(plane?.sides[0]).toBeCloseTo(80, 0);
    expect(plane?.sides[1]).toBeCloseTo(38, 0);
    expect(plane?.skew).toBeLessThan(0.01);
  });

  it('of the lattice alone is the same, wherever the cells stand', () => {
    for (const half of [12, 38]) {
      const h = planeOfLattice(cellsOn(half));
      expect(h).toBeDefined();
      expect(tiltDegrees(h ?? [], 319.5, 239.5)).toBeCloseTo(27.563, 1);
      const [x, y] = mapped(h ?? [], 3, 0);
      const [sx, sy] = seen(3, 0);
      expect(Math.hypot(x - sx, y - sy)).toBeLessThan(0.01);
    }
  });

  it('is not told by a few cells, and a few that are astray do no harm', () => {
    const cells = cellsOn(20);
    expect(planeOfLattice(cells.slice(0, 20))).toBeUndefined();
    expect(planeOfCorners(opening, cells.slice(0, 20), size)).toBeUndefined();
    expect(planeOfLattice(cells.map((cell) => ({ ...cell, seen: 0 })))).toBeUndefined();
    const astray = cells.map((cell, n) => (n % 25 === 0 ? { ...cell, x: cell.x + 40, y: cell.y - 25 } : cell));
    expect(tiltDegrees(planeOfLattice(astray) ?? [], 319.5, 239.5)).toBeCloseTo(27.563, 0);
  });

  it('corners that do not fit the cells show a skew', () => {
    // No rectangle on this comb: its sides meet at 59 degrees.
    const leaning = [
      [-39, -15],
      [21, -15],
      [39, 15],
      [-21, 15],
    ] as const;
    const corners = leaning.map(([u, v]) => seen(u, v));
    // A shear by 0.6 leaves a skew of 0.6 / sqrt(1 + 0.6^2).
    expect(planeOfCorners(corners, cellsOn(20), size)?.skew).toBeCloseTo(0.514, 1);
  });
});
