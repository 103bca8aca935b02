/*
 * How a lattice grows from a start to the whole comb.
 *
 * Cells are placed best first, each predicted by an affine fit to its placed neighbours, then moved by its phases. Where
 * a bee covers the comb there is nothing to measure and the prediction stands, marked as not seen, for a few cells;
 * those never become the edge of the comb.
 */
import { BestFirst } from './best-first.ts';
import { type LatticeCell, neighbourSteps, placeKey } from './lattice-cell.ts';
import type { LatticeStart } from './lattice-start.ts';
import { affineFit, wideFit } from './neighbour-fits.ts';
import { type GrowthPlanes, type PhaseReading, readPhases, readPlace, toneWorth } from './phases.ts';
import { PlaceIndex } from './place-index.ts';

/** What growth may do. */
export interface GrowthOptions {
  /** Places outside are never filled: tells whether (x, y) in plane pixels may hold a cell. */
  readonly allowed: (x: number, y: number) => boolean;
  /** Stops runaway growth. */
  readonly mostCells: number;
  /** Called now and then; throw from it to stop. */
  readonly checkpoint: () => void;
}

const enoughSeen = 0.12;
/** Room above the tilt we promise, for strong perspective; below a square grid's. */
const mostSkew = 1.38;

const furthestUnseen = 2;
/** With a firm prediction from all round less is enough. */
const enoughWhenHeld = 0.06;

interface Growing extends LatticeCell {
  /** Steps since the last cell whose walls were seen. */
  unseen: number;
}

/**
 * Grows one connected piece of lattice from a start.
 *
 * @param taken places already held by other pieces: true when a cell within 0.6 pitch exists there
 * @returns the cells, seen and extrapolated; empty when the start does not hold
 */
export function growLattice(
  planes: GrowthPlanes,
  start: LatticeStart,
  options: GrowthOptions,
  taken: (x: number, y: number, pitch: number) => boolean = () => false,
): LatticeCell[] {
  const cells = new Map<number, Growing>();
  const occupied = new PlaceIndex(start.pitch);

  // The frequency vectors must be 120 degrees apart, so the lattice vectors 60: turn b if they are 120 apart.
  let { ax, ay, bx, by } = start;
  if (ax * bx + ay * by < 0) {
    bx += ax;
    by += ay;
  }
  let x = start.x;
  let y = start.y;
  let first: PhaseReading | undefined;
  for (let round = 0; round < 3; round++) {
    first = readPhases(planes.walls, x, y, ax, ay, bx, by, 1.1);
    if (!first) return [];
    x += first.dx;
    y += first.dy;
  }
  if (!first) return [];
  if (first.seen < enoughSeen) {
    x = start.x;
    y = start.y;
    for (let round = 0; round < 3; round++) {
      first = readPhases(planes.tone, x, y, ax, ay, bx, by, 1.1, true);
      if (!first) return [];
      x += first.dx;
      y += first.dy;
    }
    if (first.seen * toneWorth < enoughSeen) return [];
  }

  const queue = new BestFirst<Growing>();
  const put = (cell: Growing): void => {
    cells.set(placeKey(cell.column, cell.row), cell);
    occupied.add(cell.x, cell.y);
    queue.push(cell, cell.seen - 0.2 * cell.unseen);
  };
  put({ column: 0, row: 0, x, y, ax, ay, bx, by, seen: first.seen, unseen: 0 });

  let steps = 0;
  const spread = (): void => {
    for (let from = queue.pop(); from; from = queue.pop()) {
      if (++steps % 64 === 0) options.checkpoint();
      if (from.unseen >= furthestUnseen) continue;
      for (const [dc, dr] of neighbourSteps) {
        const column = from.column + dc;
        const row = from.row + dr;
        if (cells.has(placeKey(column, row)) || Math.abs(column) > 4000 || Math.abs(row) > 4000) continue;
        const fit = affineFit(cells, column, row, from);
        const pitch = Math.sqrt(Math.abs(fit.ax * fit.by - fit.ay * fit.bx) / 0.8660254);
        if (pitch < start.pitch * 0.5 || pitch > start.pitch * 2 || skew(fit) > mostSkew) continue;
        if (!options.allowed(fit.x, fit.y)) continue;
        let cx = fit.x;
        let cy = fit.y;
        let seen = 0;
        const reading = readPlace(planes, fit, 0.42, enoughSeen);
        if (reading.trust >= enoughSeen) {
          seen = reading.trust;
          const blend = Math.min(1, 0.35 + seen);
          cx += blend * reading.dx;
          cy += blend * reading.dy;
        }
        if (occupied.nearest(cx, cy) < 0.6 * pitch || taken(cx, cy, pitch)) continue;
        put({
          column,
          row,
          x: cx,
          y: cy,
          ax: fit.ax,
          ay: fit.ay,
          bx: fit.bx,
          by: fit.by,
          seen,
          unseen: seen > 0 ? 0 : from.unseen + 1,
        });
        if (cells.size >= options.mostCells) {
          queue.clear();
          break;
        }
      }
    }
  };

  spread();
  for (let round = 0; round < 4 && cells.size < options.mostCells; round++) {
    options.checkpoint();
    let found = 0;
    for (const cell of cells.values()) {
      if (cell.seen > 0) continue;
      const place = wideFit(cells, cell);
      if (!place) continue;
      Object.assign(cell, place);
      const { dx, dy, trust } = readPlace(planes, cell, 0.3, enoughWhenHeld);
      if (trust < enoughWhenHeld) continue;
      const blend = Math.min(1, 0.3 + trust);
      cell.x += blend * dx;
      cell.y += blend * dy;
      cell.seen = trust;
      cell.unseen = 0;
      queue.push(cell, trust);
      found++;
    }
    // Cells whose neighbours have been found since may lead further.
    for (const cell of cells.values()) if (cell.seen > 0) queue.push(cell, cell.seen);
    const before = cells.size;
    spread();
    if (found === 0 && cells.size === before) break;
  }
  return [...cells.values()];
}

/** Longest over shortest of the three lattice vectors: 1 seen square-on, 1.22 tilted by 35 degrees, 1.41 for a square grid. */
function skew(cell: { ax: number; ay: number; bx: number; by: number }): number {
  const a = Math.hypot(cell.ax, cell.ay);
  const b = Math.hypot(cell.bx, cell.by);
  const c = Math.hypot(cell.ax - cell.bx, cell.ay - cell.by);
  return Math.max(a, b, c) / Math.min(a, b, c);
}
