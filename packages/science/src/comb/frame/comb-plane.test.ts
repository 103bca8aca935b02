import { describe, expect, it } from 'vitest';
import type { LatticeCell } from '../lattice/lattice-cell.ts';
import { combPlane, cornersOfRegion, latticeContradicts, widened, withinFrame } from './comb-plane.ts';

const size = { width: 640, height: 480 };
const frame = [
  [100, 100],
  [540, 100],
  [540, 380],
  [100, 380],
] as const;

/** Level rows of regular cells, 20 px apart, between two columns of pixels. */
function rows(left: number, right: number, seen = 1): LatticeCell[] {
  const cells: LatticeCell[] = [];
  for (let row = 0; row <= 15; row++) {
    const y = 110 + 20 * Math.sqrt(0.75) * row;
    for (let column = -20; column < 40; column++) {
      const x = 10 + 20 * (column + 0.5 * row);
      if (x < left || x > right) continue;
      cells.push({ column, row, x, y, ax: 20, ay: 0, bx: 10, by: 20 * Math.sqrt(0.75), seen });
    }
  }
  return cells;
}

describe('corners found and the lattice', () => {
  it('agree when the cells lie in the frame, or reach over the wood by a few', () => {
    expect(latticeContradicts(frame, rows(110, 530), size)).toBe(false);
    expect(latticeContradicts(frame, [...rows(110, 530), ...rows(565, 585).slice(0, 4)], size)).toBe(false);
  });

  it('part when many cells surely seen lie beyond, not when they were only placed', () => {
    expect(latticeContradicts(frame, rows(110, 620), size)).toBe(true);
    expect(latticeContradicts(frame, [...rows(110, 530), ...rows(565, 620, 0)], size)).toBe(false);
  });

  it('part when the cells would not be regular in the plane of the corners', () => {
    const leaning = [
      [60, 100],
      [440, 100],
      [600, 380],
      [220, 380],
    ] as const;
    const inside = rows(0, 640).filter(withinFrame(leaning));
    expect(inside.length).toBeGreaterThan(100);
    expect(latticeContradicts(leaning, inside, size)).toBe(true);
  });

  it('leave out cells that stand on the wood, by a third of a pitch and more', () => {
    const on = (x: number): LatticeCell => ({ ...(rows(110, 530)[0] as LatticeCell), x, y: 240 });
    const within = withinFrame(frame);
    expect([on(300), on(101), on(96), on(93), on(60)].map(within)).toEqual([true, true, true, false, false]);
    // The wider corners hold what passes.
    for (const [x, y] of widened(frame, 20)) {
      expect(x < 96 || x > 544).toBe(true);
      expect(y < 97 || y > 383).toBe(true);
    }
  });
});

describe('the plane of a reading', () => {
  it('has the sides of the opening in pitches and no tilt square-on', () => {
    const plane = combPlane('corners-set', frame, rows(110, 530), size);
    expect(plane.by).toBe('corners-set');
    expect(plane.sides?.[0]).toBeCloseTo(440 / 20, 1);
    expect(plane.sides?.[1]).toBeCloseTo(280 / 20, 1);
    expect(plane.tiltDegrees).toBeLessThan(1);
    expect(combPlane('lattice', null, rows(110, 530), size)).toMatchObject({ corners: null, sides: null });
  });

  it('says nothing that a few cells cannot tell', () => {
    const few = rows(110, 530).slice(0, 10);
    expect(combPlane('lattice', null, few, size).tiltDegrees).toBeNull();
    expect(combPlane('corners-found', frame, few, size)).toMatchObject({ sides: null, tiltDegrees: null });
  });

  it('takes four points round a quadrilateral for corners, and nothing else', () => {
    expect(cornersOfRegion(frame)).toBe(frame);
    expect(cornersOfRegion(frame.slice(1))).toBeNull();
    expect(cornersOfRegion([...frame, [90, 200]])).toBeNull();
    expect(cornersOfRegion([frame[0], frame[2], frame[1], frame[3]])).toBeNull();
    expect(cornersOfRegion(undefined)).toBeNull();
  });
});
