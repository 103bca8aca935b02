/** The cells of a painted comb, row by row, each moved a little from its place. Lengths in pitches. */
import type { Chance } from '../../random/seeded.ts';
import type { Extent } from './extent.ts';
import { contentFiller, type PaintedCell } from './fill-comb.ts';
import type { PainterSettings } from './settings.ts';

const rowHeight = Math.sqrt(3) / 2;

/** The cell nearest to a place, and how near. */
export interface NearestCell {
  cell: PaintedCell | undefined;
  /** Square of the distance to its centre. */
  distance: number;
  /** Distance to the middle line of the nearest wall, 0 at the wall. */
  edge: number;
}

export class CellGrid {
  readonly firstRow: number;
  readonly lastRow: number;
  readonly firstColumn: number;
  readonly columns: number;
  private readonly cells: (PaintedCell | undefined)[];

  constructor(settings: PainterSettings, chance: Chance, extent: Extent) {
    const { halfWidth, halfHeight, left, right, top, bottom } = extent;
    const fill = contentFiller(settings, chance, halfWidth, halfHeight);
    const firstRow = Math.floor(-halfHeight / rowHeight) - 2;
    const lastRow = Math.ceil(halfHeight / rowHeight) + 2;
    const firstColumn = Math.floor(-halfWidth) - 2;
    const columns = Math.ceil(halfWidth) + 2 - firstColumn + 1;
    const rows = lastRow - firstRow + 1;
    const cells: (PaintedCell | undefined)[] = new Array(columns * rows);
    const inset = 0.75;
    for (let row = firstRow; row <= lastRow; row++) {
      for (let c = 0; c < columns; c++) {
        const u0 = firstColumn + c + (row & 1 ? 0.5 : 0);
        const v0 = row * rowHeight;
        const cell = fill(u0, v0);
        cell.u += settings.jitter * Math.max(-2.5, Math.min(2.5, chance.normal()));
        cell.v += settings.jitter * Math.max(-2.5, Math.min(2.5, chance.normal()));
        if (u0 < left + inset || u0 > right - inset || v0 < top + inset || v0 > bottom - inset) continue;
        cells[(row - firstRow) * columns + c] = cell;
      }
    }
    this.firstRow = firstRow;
    this.lastRow = lastRow;
    this.firstColumn = firstColumn;
    this.columns = columns;
    this.cells = cells;
  }

  /** The cell of a row and a place in it, 0 to `columns` - 1; undefined where wood is. */
  at(row: number, place: number): PaintedCell | undefined {
    return this.cells[(row - this.firstRow) * this.columns + place];
  }

  /** Finds the cell nearest to a place on the comb. */
  nearest(u: number, v: number, out: NearestCell): void {
    const { firstRow, lastRow, firstColumn, columns, cells } = this;
    // Nearest and second nearest centre among the candidates round this place.
    const row0 = Math.round(v / rowHeight);
    let nearest: PaintedCell | undefined;
    let first = Infinity;
    let second = Infinity;
    let secondCell: PaintedCell | undefined;
    for (let row = row0 - 1; row <= row0 + 1; row++) {
      if (row < firstRow || row > lastRow) continue;
      const c0 = Math.round(u - (row & 1 ? 0.5 : 0)) - firstColumn;
      for (let c = c0 - 1; c <= c0 + 1; c++) {
        if (c < 0 || c >= columns) continue;
        const cell = cells[(row - firstRow) * columns + c];
        if (!cell) continue;
        const d = (cell.u - u) ** 2 + (cell.v - v) ** 2;
        if (d < first) {
          second = first;
          secondCell = nearest;
          first = d;
          nearest = cell;
        } else if (d < second) {
          second = d;
          secondCell = cell;
        }
      }
    }
    out.cell = nearest;
    out.distance = first;
    out.edge = 0;
    if (!nearest || first >= 0.42) return;
    out.edge =
      secondCell === undefined
        ? Math.max(0, 0.5 - Math.sqrt(first))
        : (second - first) / (2 * Math.hypot(secondCell.u - nearest.u, secondCell.v - nearest.v));
  }
}
