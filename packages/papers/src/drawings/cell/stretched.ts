import type { CellSectionParameters } from '../cell-section-parameters.ts';
import { type Shape, shape, weights } from '../drawing.ts';
import { Pen, type Placement } from '../pen.ts';
import { body, mark } from './body.ts';
import { fluff } from './fluff.ts';

/** A larva stretched along the lower wall, head toward the mouth. */
export function drawStretched(cell: CellSectionParameters, own: Placement): Shape[] {
  const shapes: Shape[] = [];
  const lifted = cell.headRaised ? -6.5 : 0;
  const outline = new Pen(own)
    .move(3.2, 13 + lifted)
    .curve([3.2, 8.6 + lifted], [8, 6.8 + lifted * 0.6], [15, 6.6])
    .curve([22, 6.4], [29, 7.4], [30.6, 12])
    .curve([31.2, 15.4], [29.6, 16.6], [26, 16.8])
    .line([13, 16.8])
    .curve([8, 16.8], [3.2, 16.6 + lifted], [3.2, 13 + lifted])
    .close();
  if (cell.fluff) shapes.push(...fluff(own));
  shapes.push(body(cell, outline.d));
  shapes.push(
    mark(
      cell,
      new Pen(own)
        .move(10, 9 + lifted * 0.3)
        .curve([9, 11], [9, 13], [10, 15.4])
        .move(16, 8.6)
        .curve([15, 11], [15, 13], [16, 15.4])
        .move(22, 8.8)
        .curve([21, 11], [21, 13], [22, 15.4]).d,
    ),
  );
  if (cell.headRaised) {
    const head = new Pen(own)
      .move(3.2, 13 + lifted)
      .curve([3.2, 8.6 + lifted], [6, 7.4 + lifted], [9, 6.8 + lifted * 0.75])
      .curve([8, 10 + lifted], [7, 13], [6.6, 15])
      .curve([4, 14], [3.2, 12], [3.2, 13 + lifted])
      .close();
    shapes.push(shape('head', head.d, 'ink', 'dark', weights.inner));
  }
  if (cell.shiny) {
    shapes.push(
      shape(
        'shine',
        new Pen(own).move(12, 8.4).curve([17, 7.4], [22, 7.6], [26, 9.2]).d,
        'paper',
        'none',
        weights.main,
      ),
    );
  }
  return shapes;
}
