import type { CellSectionParameters } from '../cell-section-parameters.ts';
import { type Shape, shape, weights } from '../drawing.ts';
import { Pen, type Placement } from '../pen.ts';
import { body, mark } from './body.ts';
import { type CellPoint, colourOf, lineUpon } from './outline.ts';
import { crossings, ribbon } from './spine.ts';

/** A larva that lies twisted in its cell. */
export function drawTwisted(cell: CellSectionParameters, own: Placement): Shape[] {
  const shapes: Shape[] = [];
  const spine: CellPoint[] = [
    [6, 4.6],
    [10, 3.8],
    [13.6, 7.4],
    [17, 13],
    [21.5, 13.6],
    [24.6, 9],
    [28.6, 5.6],
  ];
  shapes.push(body(cell, ribbon(new Pen(own), spine, [1.4, 2.6, 3, 3.1, 3, 2.8, 1.5])));
  shapes.push(mark(cell, crossings(new Pen(own), spine, [1, 2, 3, 4, 5], 1.9)));
  if (cell.tracheae) {
    const along = new Pen(own).through(spine.map(([u, v]) => [u, v - 0.2] as const));
    shapes.push(
      shape('tracheae', along.d, lineUpon(colourOf(cell)) === 'ink' ? 'faint' : 'paper', 'none', weights.hair),
    );
  }
  return shapes;
}
