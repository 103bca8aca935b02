import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { paintComb } from './paint-comb.ts';
import { drawSettings } from './settings.ts';

const small = { width: 160, height: 120 } as const;

describe('paintComb', () => {
  it('paints the same comb from the same seed, and another from another', () => {
    const settings = drawSettings('tuning', 3, { ...small, pitch: 20 });
    const one = paintComb(settings, 3);
    expect(paintComb(settings, 3)).toEqual(one);
    expect(paintComb(settings, 4).data).not.toEqual(one.data);
  });

  it('keeps true centres inside the picture and about a pitch apart', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 100_000 }),
        fc.constantFrom('tuning', 'held-out' as const),
        (seed, family) => {
          const settings = drawSettings(family as 'tuning', seed, { ...small, pitch: 16 });
          const painted = paintComb(settings, seed);
          expect(painted.data.length).toBe(160 * 120 * 3);
          for (const cell of painted.cells) {
            expect(cell.x).toBeGreaterThanOrEqual(0);
            expect(cell.x).toBeLessThan(160);
            expect(cell.y).toBeGreaterThanOrEqual(0);
            expect(cell.y).toBeLessThan(120);
            let nearest = Number.POSITIVE_INFINITY;
            for (const other of painted.cells) {
              if (other !== cell)
                nearest = Math.min(nearest, Math.hypot(cell.x - other.x, cell.y - other.y) / cell.pitch);
            }
            if (painted.cells.length > 6) {
              expect(nearest).toBeGreaterThan(0.45);
              expect(nearest).toBeLessThan(1.8);
            }
          }
        },
      ),
      { seed: 21, numRuns: 10 },
    );
  });

  it('paints rows 0.866 of a pitch apart when seen square-on', () => {
    // Measured on a square-on real comb: row spacing over pitch 0.87; a regular hexagonal lattice has root(3) / 2.
    const painted = paintComb(
      drawSettings('tuning', 5, {
        ...small,
        pitch: 20,
        turn: 0,
        tiltX: 0,
        tiltY: 0,
        bend: 0,
        jitter: 0,
        reach: 4,
        frame: 'comb only',
      }),
      5,
    );
    const rows = new Map<number, number[]>();
    for (const cell of painted.cells) rows.set(cell.row, [...(rows.get(cell.row) ?? []), cell.y]);
    const heights = [...rows.entries()]
      .sort((a, b) => a[0] - b[0])
      .map(([, ys]) => ys.reduce((a, b) => a + b, 0) / ys.length);
    const gaps = heights.slice(1).map((y, k) => (y - (heights[k] as number)) / 20);
    expect(gaps.length).toBeGreaterThan(3);
    for (const gap of gaps) expect(gap).toBeCloseTo(0.866, 2);
  });

  it('shares no wax, bee or light between the families', () => {
    const names = (family: 'tuning' | 'held-out') =>
      new Set(Array.from({ length: 60 }, (_, seed) => drawSettings(family, seed).wax.name));
    const held = names('held-out');
    expect(held.size).toBeGreaterThan(1);
    for (const name of names('tuning')) expect(held.has(name)).toBe(false);
  });

  it('widens the tuning family only, and by nothing that moves or renames a cell', () => {
    const widenings = (family: 'tuning' | 'held-out') =>
      Array.from({ length: 60 }, (_, seed) => drawSettings(family, seed)).map(
        ({ seeThrough, wallFacing, glints, content, camera }) =>
          seeThrough +
          wallFacing +
          glints +
          content.nectarClear +
          content.pollenSpread +
          Math.abs(camera.saturation - 1),
      );
    expect(widenings('held-out')).toEqual(new Array(60).fill(0));
    const tuning = widenings('tuning');
    expect(tuning.filter((one) => one > 0).length).toBeGreaterThan(30);
    expect(tuning.filter((one) => one === 0).length).toBeGreaterThan(10);

    const plain = drawSettings('held-out', 6, { ...small, pitch: 30, content: { kind: 'stores' } });
    const wide = {
      ...plain,
      seeThrough: 0.8,
      wallFacing: 0.5,
      glints: 0.4,
      content: { ...plain.content, nectarClear: 0.7, pollenSpread: 1 },
      camera: { ...plain.camera, saturation: 1.4 },
    };
    const one = paintComb(plain, 6);
    const other = paintComb(wide, 6);
    expect(other.cells).toEqual(one.cells);
    expect(other.data).not.toEqual(one.data);
  });

  it('covers more cells with more bees', () => {
    const hidden = (beeCover: number): number => {
      const settings = drawSettings('tuning', 8, {
        ...small,
        pitch: 12,
        beeCover,
        frame: 'comb only',
        glove: false,
        brush: false,
      });
      const { cells } = paintComb(settings, 8);
      return cells.filter((cell) => cell.class === 'hidden').length / cells.length;
    };
    expect(hidden(0)).toBe(0);
    expect(hidden(0.3)).toBeGreaterThan(0.1);
    expect(hidden(0.8)).toBeGreaterThan(hidden(0.3));
  });
});
