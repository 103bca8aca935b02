import type { CellClass } from '@combside/science/comb/cells/cell-classes';

/** A cell as it is drawn: where it stands in the lattice, and its middle in pixels of the upright picture. */
export interface PlacedCell {
  readonly column: number;
  readonly row: number;
  readonly x: number;
  readonly y: number;
  readonly class: CellClass;
}

/** Six corners of each cell, x then y, twelve numbers a cell, and the six neighbours of each (-1 where none is). */
export interface CellOutlines {
  readonly corners: Float32Array;
  readonly neighbours: Int32Array;
}

/** The six neighbours, one after the other around the cell. */
const steps = [
  [1, 0],
  [0, 1],
  [-1, 1],
  [-1, 0],
  [0, -1],
  [1, -1],
] as const;

/**
 * The outlines of cells as the lattice lays them: each corner is the middle of the three cells that meet there, so that
 * neighbours share their edges. Where a neighbour is missing its place is judged from the others.
 *
 * @param pitch distance of neighbouring middles, pixels; used where a cell has no neighbour at all
 */
export function cellOutlines(cells: readonly PlacedCell[], pitch: number): CellOutlines {
  const byPlace = new Map(cells.map((cell, n) => [`${cell.column},${cell.row}`, n]));
  const neighbours = new Int32Array(cells.length * 6);
  const corners = new Float32Array(cells.length * 12);
  cells.forEach((cell, n) => {
    steps.forEach(([dc, dr], k) => {
      neighbours[n * 6 + k] = byPlace.get(`${cell.column + dc},${cell.row + dr}`) ?? -1;
    });
  });
  const usual = usualSteps(cells, neighbours, pitch);
  cells.forEach((cell, n) => {
    const dx: number[] = [];
    const dy: number[] = [];
    for (let k = 0; k < 6; k++) {
      const own = cells[neighbours[n * 6 + k] as number];
      const opposite = cells[neighbours[n * 6 + ((k + 3) % 6)] as number];
      dx.push(own ? own.x - cell.x : opposite ? cell.x - opposite.x : (usual[2 * k] as number));
      dy.push(own ? own.y - cell.y : opposite ? cell.y - opposite.y : (usual[2 * k + 1] as number));
    }
    for (let k = 0; k < 6; k++) {
      const next = (k + 1) % 6;
      corners[n * 12 + 2 * k] = cell.x + ((dx[k] as number) + (dx[next] as number)) / 3;
      corners[n * 12 + 2 * k + 1] = cell.y + ((dy[k] as number) + (dy[next] as number)) / 3;
    }
  });
  return { corners, neighbours };
}

/** The mean step to each of the six neighbours over the whole comb. */
function usualSteps(cells: readonly PlacedCell[], neighbours: Int32Array, pitch: number): Float64Array {
  const sums = new Float64Array(12);
  const counts = new Float64Array(6);
  cells.forEach((cell, n) => {
    for (let k = 0; k < 6; k++) {
      const near = cells[neighbours[n * 6 + k] as number];
      if (!near) continue;
      sums[2 * k] = (sums[2 * k] as number) + near.x - cell.x;
      sums[2 * k + 1] = (sums[2 * k + 1] as number) + near.y - cell.y;
      counts[k] = (counts[k] as number) + 1;
    }
  });
  for (let k = 0; k < 6; k++) {
    const count = counts[k] as number;
    const angle = (k * Math.PI) / 3;
    sums[2 * k] = count > 0 ? (sums[2 * k] as number) / count : pitch * Math.cos(angle);
    sums[2 * k + 1] = count > 0 ? (sums[2 * k + 1] as number) / count : pitch * Math.sin(angle);
  }
  return sums;
}

/** What an overlay draws, as SVG path data. */
export interface OverlayPaths {
  /** For each class that occurs, the areas of its cells, to be hatched. */
  readonly areas: readonly { readonly class: CellClass; readonly path: string }[];
  /** Lines between cells of different classes and around the comb: patches are outlined, not single cells. */
  readonly borders: string;
}

/** @returns the paths of the whole overlay, to a tenth of a pixel */
export function overlayPaths(cells: readonly PlacedCell[], { corners, neighbours }: CellOutlines): OverlayPaths {
  const areas = new Map<CellClass, string[]>();
  const borders: string[] = [];
  cells.forEach((cell, n) => {
    const parts = areas.get(cell.class) ?? [];
    parts.push(cellPath(corners, n));
    areas.set(cell.class, parts);
    for (let k = 0; k < 6; k++) {
      const other = neighbours[n * 6 + k] as number;
      const near = cells[other];
      if (near && (near.class === cell.class || other < n)) continue;
      // The wall towards neighbour k stands between corners k - 1 and k.
      const from = (k + 5) % 6;
      borders.push(`M${at(corners, n, from)}L${at(corners, n, k)}`);
    }
  });
  return {
    areas: [...areas].map(([of, parts]) => ({ class: of, path: parts.join('') })),
    borders: borders.join(''),
  };
}

/** The outline of one cell as SVG path data. */
export function cellPath(corners: Float32Array, cell: number): string {
  return `M${[0, 1, 2, 3, 4, 5].map((k) => at(corners, cell, k)).join('L')}Z`;
}

function at(corners: Float32Array, cell: number, corner: number): string {
  const x = corners[cell * 12 + 2 * corner] as number;
  const y = corners[cell * 12 + 2 * corner + 1] as number;
  return `${Math.round(x * 10) / 10} ${Math.round(y * 10) / 10}`;
}

/** The cell whose middle is nearest, or null when none is within `reach` pixels. */
export function nearestCell(
  cells: readonly PlacedCell[],
  { x, y }: { readonly x: number; readonly y: number },
  reach: number,
): number | null {
  let best: number | null = null;
  let least = reach * reach;
  cells.forEach((cell, n) => {
    const far = (cell.x - x) ** 2 + (cell.y - y) ** 2;
    if (far <= least) {
      least = far;
      best = n;
    }
  });
  return best;
}

export type Direction = 'left' | 'right' | 'up' | 'down';

const headings: Readonly<Record<Direction, readonly [number, number]>> = {
  left: [-1, 0],
  right: [1, 0],
  up: [0, -1],
  down: [0, 1],
};

/**
 * The next cell in a direction as it is seen, whatever way the lattice lies: the one least off that way among those near;
 * over a gap, the nearest beyond it.
 *
 * @returns null at the edge of the comb
 */
export function cellTowards(cells: readonly PlacedCell[], from: number, direction: Direction): number | null {
  const start = cells[from];
  if (!start) return null;
  const [hx, hy] = headings[direction];
  let best: number | null = null;
  let least = Number.POSITIVE_INFINITY;
  cells.forEach((cell, n) => {
    const dx = cell.x - start.x;
    const dy = cell.y - start.y;
    const ahead = dx * hx + dy * hy;
    const aside = Math.abs(dx * hy - dy * hx);
    // Within 45 degrees; what lies to the side counts double, so that a way goes straight on.
    if (n === from || ahead <= 0 || aside > ahead) return;
    const cost = ahead + 2 * aside;
    if (cost < least) {
      least = cost;
      best = n;
    }
  });
  return best;
}
