import type { CellSectionParameters } from '../cell-section-parameters.ts';
import { type Shape, weights } from '../drawing.ts';
import { Pen, type Placement } from '../pen.ts';
import { body, mark } from './body.ts';
import type { CellPoint } from './outline.ts';
import { crossings, ribbon } from './spine.ts';

/** A larva shrunken and dry on the lower wall. */
export function drawDry(cell: CellSectionParameters, own: Placement): Shape[] {
  const spine: CellPoint[] = [
    [9, 12.4],
    [14, 14.2],
    [20, 13.4],
    [25.4, 14.2],
  ];
  return [
    body(cell, ribbon(new Pen(own), spine, [0.9, 1.7, 1.5, 0.8])),
    mark(cell, crossings(new Pen(own), spine, [1, 2], 1.1), weights.hair),
  ];
}
