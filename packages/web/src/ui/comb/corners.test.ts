import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Corners, cornersTrouble, insetCorners, nearestCorner, withCorner } from './corners.ts';

const size = { width: 1200, height: 900 };
const begun = insetCorners(size);
const place = fc.record({
  x: fc.double({ min: -5000, max: 5000, noNaN: true }),
  y: fc.double({ min: -5000, max: 5000, noNaN: true }),
});

describe('corners of a comb', () => {
  test('to begin with lie clockwise from the top left, and can be read between', () => {
    expect(begun[0].x).toBeLessThan(begun[1].x);
    expect(begun[1].y).toBeLessThan(begun[2].y);
    expect(begun[3].x).toBeLessThan(begun[2].x);
    expect(cornersTrouble(begun, size)).toBeNull();
  });

  test('stay within the picture, wherever the finger goes, and move no other', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 3 }), place, (which, to) => {
        const moved = withCorner(begun, which, to, size);
        moved.forEach((corner, n) => {
          if (n !== which) expect(corner).toBe(begun[n]);
          expect(corner.x).toBeGreaterThanOrEqual(0);
          expect(corner.x).toBeLessThanOrEqual(size.width - 1);
          expect(corner.y).toBeGreaterThanOrEqual(0);
          expect(corner.y).toBeLessThanOrEqual(size.height - 1);
        });
        expect(moved[nearestCorner(moved, moved[which] ?? to)]).toEqual(moved[which]);
      }),
      { seed: 20271 },
    );
  });

  test('are refused when two are exchanged, when one lies within the others, and when they are mirrored', () => {
    const [a, b, c, d] = begun;
    expect(cornersTrouble([b, a, c, d], size)).toBe('crossed');
    expect(cornersTrouble([a, c, b, d], size)).toBe('crossed');
    expect(cornersTrouble([a, b, { x: 400, y: 300 }, d], size)).toBe('crossed');
    expect(cornersTrouble([b, a, d, c], size)).toBe('crossed');
    expect(cornersTrouble([a, a, c, d], size)).toBe('crossed');
  });

  test('are refused when too little lies between them', () => {
    const part = (width: number, height: number): Corners => [
      { x: 100, y: 100 },
      { x: 100 + width, y: 100 },
      { x: 100 + width, y: 100 + height },
      { x: 100, y: 100 + height },
    ];
    expect(cornersTrouble(part(200, 95), size)).toBe('too-small');
    expect(cornersTrouble(part(200, 96), size)).toBeNull();
    // In a large photograph a hundredth of it.
    expect(cornersTrouble(part(300, 300), { width: 4000, height: 3000 })).toBe('too-small');
    expect(cornersTrouble(part(400, 300), { width: 4000, height: 3000 })).toBeNull();
  });

  // A tilted comb: every convex part that goes round clockwise and is not tiny may be read.
  test('of a comb seen in perspective may be read', () => {
    const off = fc.integer({ min: -80, max: 80 });
    fc.assert(
      fc.property(fc.array(off, { minLength: 8, maxLength: 8 }), (offs) => {
        const moved = begun.map(({ x, y }, n) => ({
          x: x + (offs[2 * n] as number),
          y: y + (offs[2 * n + 1] as number),
        })) as unknown as Corners;
        expect(cornersTrouble(moved, size)).toBeNull();
      }),
      { seed: 20271 },
    );
  });
});
