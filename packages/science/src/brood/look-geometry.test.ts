import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lowerWallInView, viewAngleFor, workerCell } from './look-geometry.ts';

describe('the angle to the lower wall', () => {
  it('24: 34.3 degrees for the whole wall, 52.1 for the outer half (width 5.2, depth 11.5, tilt 10; arithmetic, TILT, SM76)', () => {
    expect(Math.abs(viewAngleFor(1) - 34.3)).toBeLessThan(0.2);
    expect(Math.abs(viewAngleFor(0.5) - 52.1)).toBeLessThan(0.2);
  });

  it('25: with the top bar away the lower wall is hidden at every tilt of a cell and every angle', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 44, noNaN: true }),
        fc.double({ min: -89, max: 0, noNaN: true }),
        (tilt, angle) => {
          expect(lowerWallInView(angle, { ...workerCell, tilt })).toBe(0);
        },
      ),
      { seed: 25, numRuns: 200 },
    );
  });

  it('shows the whole wall up to that angle and less beyond it', () => {
    expect(lowerWallInView(viewAngleFor(1))).toBeCloseTo(1, 12);
    expect(lowerWallInView(20)).toBe(1);
    expect(lowerWallInView(viewAngleFor(0.5))).toBeCloseTo(0.5, 12);
    expect(lowerWallInView(0)).toBe(0);
  });

  it('refuses what cannot be', () => {
    expect(() => viewAngleFor(0)).toThrow(/must lie in/);
    expect(() => lowerWallInView(90)).toThrow(/between -90 and 90/);
    expect(() => viewAngleFor(1, { width: -5, depth: 11, tilt: 10 })).toThrow(/cannot be/);
  });
});
