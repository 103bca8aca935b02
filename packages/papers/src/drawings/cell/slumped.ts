import type { CellSectionParameters } from '../cell-section-parameters.ts';
import type { Shape } from '../drawing.ts';
import { Pen, type Placement } from '../pen.ts';
import { body } from './body.ts';
import { drops } from './drops.ts';
import { depth, width } from './outline.ts';

/** Decayed brood: the upper edge sags, no segment is left. */
export function drawSlumped(cell: CellSectionParameters, own: Placement): Shape[] {
  const shapes: Shape[] = [];
  const outline = new Pen(own)
    .move(2.4, width)
    .curve([3, 13.2], [6, 12], [9, 12.6])
    .curve([13, 13.6], [15, 11], [19, 10.6])
    .curve([23, 10.2], [26.4, 12], [29.6, 9.4])
    .curve([31.4, 8.2], [32.6, 8.2], [33.4, 10.4])
    .line([depth - 3.5, width])
    .close();
  shapes.push(body(cell, outline.d));
  if (cell.watery) shapes.push(...drops(own, 8, 8));
  return shapes;
}
