import { drawBees, drawFloor, drawSmell } from './around-cells.ts';
import { drawCell } from './cell/cell.ts';
import { depth, tilt, width } from './cell/outline.ts';
import type { CellSectionParameters, CombSectionParameters } from './cell-section-parameters.ts';
import type { Drawing, Shape } from './drawing.ts';
import { placed, within } from './pen.ts';

const side = 48;

/** Draws a cut through the comb: one to three cells, mouth left, lying a little uphill. */
export function drawCombSection(parameters: CombSectionParameters): Drawing {
  const { cells } = parameters;
  if (cells.length < 1 || cells.length > 3) {
    throw new RangeError(`a comb section shows 1 to 3 cells, not ${cells.length}`);
  }
  const shapes: Shape[] = [];
  const { scale, x, y } = arrange(parameters);
  const pitch = width * scale;

  cells.forEach((cell, index) => {
    const own = within(placed(x, y + (index - (cells.length - 1) / 2) * pitch, tilt, scale), (u, v) => ({
      x: u - depth / 2,
      y: v - width / 2,
    }));
    shapes.push(...drawCell(cell, own));
  });
  if (parameters.smell) shapes.push(...drawSmell(parameters.smell));
  if (parameters.floor) shapes.push(...drawFloor(parameters.floor));
  if (parameters.bees) shapes.push(...drawBees(parameters.bees));
  return { width: side, height: side, shapes, labels: [] };
}

/** One cell fills the plate; a row of cells, a thread, or things around the cell make it smaller. */
function arrange({ cells, smell, floor, bees }: CombSectionParameters): { scale: number; x: number; y: number } {
  if (cells.length === 3) return { scale: 0.73, x: bees ? 28.5 : 26, y: 24 };
  if (cells.length === 2) return { scale: 0.92, x: bees ? 30 : 26, y: 24 };
  const only = cells[0] as CellSectionParameters;
  if (only.threadMillimetres !== undefined) return { scale: 0.82, x: 32, y: 32 };
  if (smell) return { scale: 0.9, x: 30.5, y: 27 };
  if (floor) return { scale: 1.05, x: 25, y: 18 };
  if (only.capping === 'drone dome') return { scale: 1.06, x: 28, y: 24 };
  return { scale: 1.2, x: 25, y: 24 };
}

/** Draws one cell on its own. */
export function drawCellSection(cell: CellSectionParameters): Drawing {
  return drawCombSection({ cells: [cell] });
}
