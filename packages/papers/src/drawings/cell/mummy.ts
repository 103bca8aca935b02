import type { CellSectionParameters } from '../cell-section-parameters.ts';
import { type Shape, shape } from '../drawing.ts';
import { Pen, type Placement } from '../pen.ts';
import { body, mark } from './body.ts';
import { fluff } from './fluff.ts';
import { colourOf, lineUpon } from './outline.ts';

/** A larva dried hard, with its fluff or its powder. */
export function drawMummy(cell: CellSectionParameters, own: Placement): Shape[] {
  const shapes: Shape[] = [];
  const outline = new Pen(own)
    .move(7, 11)
    .line(
      [8.4, 6.6],
      [13, 5],
      [18, 6],
      [23.5, 5],
      [28, 7.6],
      [28.6, 11.6],
      [25, 14.6],
      [19, 13.8],
      [13, 15.2],
      [8.4, 14],
    )
    .close();
  if (cell.fluff) shapes.push(...fluff(own));
  shapes.push(body(cell, outline.d));
  shapes.push(
    mark(cell, new Pen(own).move(13, 5).line([14.4, 9], [13, 15.2]).move(21, 5.6).line([19.6, 9.6], [21.4, 13.9]).d),
  );
  if (cell.powder) {
    const dust = new Pen(own);
    for (const [u, v] of [
      [9.4, 8.6],
      [11.6, 7.4],
      [10.6, 11.6],
      [15.8, 12.6],
      [17, 8],
      [18.4, 10.4],
      [23, 7.2],
      [24.4, 12.4],
      [26.4, 9.4],
    ] as const) {
      dust.ellipse(u, v, 0.8);
    }
    shapes.push(shape('powder', dust.d, 'none', lineUpon(colourOf(cell)), 0));
  }
  return shapes;
}
