import type { CellClass } from '@combside/science/comb/cells/cell-classes';
import { describe, expect, test } from 'vitest';
import { cellOutlines, cellPath, cellTowards, nearestCell, overlayPaths, type PlacedCell } from './cell-outlines.ts';

/** A regular comb, turned by an angle: rows of the lattice lean, as the reader numbers them. */
function regular(wide: number, high: number, pitch: number, turn = 0, of: CellClass = 'open-empty'): PlacedCell[] {
  const cells: PlacedCell[] = [];
  for (let row = 0; row < high; row++) {
    for (let place = 0; place < wide; place++) {
      const column = place - Math.floor(row / 2);
      const x = pitch * (column + 0.5 * row);
      const y = pitch * Math.sqrt(0.75) * row;
      cells.push({
        column,
        row,
        x: x * Math.cos(turn) - y * Math.sin(turn),
        y: x * Math.sin(turn) + y * Math.cos(turn),
        class: of,
      });
    }
  }
  return cells;
}

function area(corners: Float32Array, n: number): number {
  let twice = 0;
  for (let k = 0; k < 6; k++) {
    const [x, y] = [corners[n * 12 + 2 * k] as number, corners[n * 12 + 2 * k + 1] as number];
    const next = (k + 1) % 6;
    const [u, v] = [corners[n * 12 + 2 * next] as number, corners[n * 12 + 2 * next + 1] as number];
    twice += x * v - u * y;
  }
  return Math.abs(twice) / 2;
}

describe('outlines of cells', () => {
  test.each([0, 0.3, 1.2])('of a regular comb turned by %f are regular hexagons, at its edge too', (turn) => {
    const cells = regular(7, 6, 20, turn);
    const { corners } = cellOutlines(cells, 20);
    // A hexagon whose opposite walls are 20 apart has corners at 20 / sqrt 3 and an area of 400 sqrt 3 / 2.
    cells.forEach((cell, n) => {
      for (let k = 0; k < 6; k++) {
        const x = (corners[n * 12 + 2 * k] as number) - cell.x;
        const y = (corners[n * 12 + 2 * k + 1] as number) - cell.y;
        expect(Math.hypot(x, y)).toBeCloseTo(20 / Math.sqrt(3), 3);
      }
      expect(area(corners, n)).toBeCloseTo((400 * Math.sqrt(3)) / 2, 1);
    });
  });

  test('of a cell by itself are a hexagon of the pitch', () => {
    const { corners } = cellOutlines([{ column: 4, row: 2, x: 50, y: 60, class: 'pollen' }], 30);
    expect(area(corners, 0)).toBeCloseTo((900 * Math.sqrt(3)) / 2, 1);
    expect(cellPath(corners, 0)).toMatch(/^M[\d. ]+(L[\d. ]+){5}Z$/);
  });

  test('draw a border only between different classes and around the comb', () => {
    const cells = regular(5, 5, 20);
    const all = overlayPaths(cells, cellOutlines(cells, 20));
    const lines = (path: string) => path.split('M').length - 1;
    const around = lines(all.borders);
    const one = cells.map((cell, n): PlacedCell => (n === 12 ? { ...cell, class: 'pollen' } : cell));
    const marked = overlayPaths(one, cellOutlines(one, 20));
    expect(lines(marked.borders)).toBe(around + 6);
    expect(marked.areas.map((each) => each.class).sort()).toEqual(['open-empty', 'pollen']);
    expect(lines(marked.areas.find((each) => each.class === 'pollen')?.path ?? '')).toBe(1);
    // The six new lines are the six walls of that cell.
    const { corners } = cellOutlines(one, 20);
    const walls = cellPath(corners, 12).slice(1, -1).split('L');
    for (const corner of walls) expect(marked.borders).toContain(corner);
  });
});

describe('moving over the comb', () => {
  const cells = regular(7, 7, 20, 0.1);

  test('goes there and back, and ends at the edge', () => {
    const middle = 24;
    for (const [there, back] of [
      ['left', 'right'],
      ['right', 'left'],
    ] as const) {
      const next = cellTowards(cells, middle, there);
      expect(next).not.toBeNull();
      expect(cellTowards(cells, next as number, back)).toBe(middle);
    }
    let at: number | null = middle;
    const seen = new Set<number>();
    while (at !== null) {
      expect(seen.has(at)).toBe(false);
      seen.add(at);
      at = cellTowards(cells, at, 'up');
    }
    expect(seen.size).toBeGreaterThanOrEqual(3);
  });

  test('goes over a gap', () => {
    const row = regular(5, 1, 20);
    const gap = row.filter((_, n) => n !== 2);
    expect(cellTowards(gap, 1, 'right')).toBe(2);
    expect(gap[2]?.column).toBe(3);
  });

  test('finds the cell under a finger, and none far from the comb', () => {
    const cell = cells[10] as PlacedCell;
    expect(nearestCell(cells, { x: cell.x + 6, y: cell.y - 5 }, 20)).toBe(10);
    expect(nearestCell(cells, { x: -500, y: -500 }, 20)).toBeNull();
  });
});
