import type { CellSectionParameters } from '../cell-section-parameters.ts';
import { type Shape, shape } from '../drawing.ts';
import { Pen, type Placement } from '../pen.ts';
import { body, mark } from './body.ts';
import { colourOf } from './outline.ts';

/** A pupa: head toward the mouth, thorax, abdomen. */
export function drawPupa(cell: CellSectionParameters, own: Placement): Shape[] {
  const shapes: Shape[] = [];
  const abdomen = new Pen(own)
    .move(16.6, 6)
    .curve([22, 2.6], [30, 5], [31, 10])
    .curve([30, 14.6], [22, 16], [16.6, 13.4])
    .close();
  const thorax = new Pen(own).ellipse(13.4, 9.7, 4.4, 5.1);
  const head = new Pen(own).ellipse(6.6, 9.9, 3.7, 4.7);
  shapes.push(body(cell, abdomen.d), body(cell, thorax.d), body(cell, head.d));
  shapes.push(
    mark(
      cell,
      new Pen(own)
        .move(21, 5.4)
        .curve([19.8, 8], [19.8, 11.6], [21, 14.2])
        .move(25.4, 5.6)
        .curve([24.4, 8], [24.4, 11.4], [25.4, 14]).d,
    ),
  );
  shapes.push(
    shape('eye', new Pen(own).ellipse(5.5, 9, 1.5, 2.1).d, 'none', colourOf(cell) === 'dark' ? 'paper' : 'ink', 0),
  );
  return shapes;
}
