/** What is true of a painted comb, cell by cell. */
import type { DecidedClass } from '../cells/cell-classes.ts';
import type { CellGrid } from './cell-grid.ts';
import type { Cover } from './cover.ts';
import type { PaintedCell, Sickness } from './fill-comb.ts';
import type { PainterSettings } from './settings.ts';
import type { View } from './view.ts';

/** The truth about one painted cell. */
export interface TrueCell {
  /** Centre of the mouth, pixels. */
  readonly x: number;
  readonly y: number;
  /** Local pitch, pixels. */
  readonly pitch: number;
  /** What it holds, or `hidden` when more than half of the mouth is covered. */
  readonly class: DecidedClass;
  /** What it holds even when hidden. */
  readonly holds: DecidedClass;
  readonly stage: 'egg' | 'larva' | 'none';
  /** Share of the mouth covered by bees, glove or brush, 0 to 1. */
  readonly covered: number;
  readonly sickness: Sickness;
  readonly degree: number;
  /** Lattice coordinates. */
  readonly column: number;
  readonly row: number;
}

/** The truth about every cell whose centre lies in the picture. */
export function truthOf(
  settings: PainterSettings,
  view: View,
  grid: CellGrid,
  coverAt: (u: number, v: number, out: Cover) => void,
): TrueCell[] {
  const { width, height } = settings;
  const { firstRow, lastRow, firstColumn, columns } = grid;
  const cover: Cover = { r: 0, g: 0, b: 0, alpha: 0, shadow: 1, opaque: false };
  const truth: TrueCell[] = [];
  for (let row = firstRow; row <= lastRow; row++) {
    for (let c = 0; c < columns; c++) {
      const cell = grid.at(row, c);
      if (!cell) continue;
      const [x, y] = view.toPicture(cell.u, cell.v);
      if (!(x >= 0 && y >= 0 && x < width && y < height)) continue;
      const [x1, y1] = view.toPicture(cell.u + 1, cell.v);
      const [x2, y2] = view.toPicture(cell.u, cell.v + 1);
      const pitch = Math.sqrt(Math.abs((x1 - x) * (y2 - y) - (y1 - y) * (x2 - x)));
      let covered = 0;
      for (let k = 0; k < 19; k++) {
        const ring = k === 0 ? 0 : k < 7 ? 0.2 : 0.36;
        const angle = k < 7 ? (k * Math.PI) / 3 : ((k - 7) * Math.PI) / 6;
        coverAt(cell.u + ring * Math.cos(angle), cell.v + ring * Math.sin(angle), cover);
        if (cover.opaque) covered++;
      }
      covered /= 19;
      const holds = classOf(cell);
      truth.push({
        x,
        y,
        pitch,
        class: covered > 0.5 ? 'hidden' : holds,
        holds,
        stage: cell.content === 'egg' ? 'egg' : cell.content === 'larva' ? 'larva' : 'none',
        covered,
        sickness: cell.sickness,
        degree: cell.degree,
        column: c + firstColumn - ((row - (row & 1)) >> 1),
        row,
      });
    }
  }
  return truth;
}

function classOf(cell: PaintedCell): DecidedClass {
  switch (cell.content) {
    case 'worker':
      return 'sealed-worker-brood';
    case 'drone':
      return 'sealed-drone-brood';
    case 'honey':
      return cell.amount < 0.55 ? 'nectar' : 'sealed-honey';
    case 'empty':
      return 'open-empty';
    case 'egg':
    case 'larva':
      return 'egg-or-larva';
    case 'nectar':
      return 'nectar';
    case 'pollen':
      return 'pollen';
  }
}
