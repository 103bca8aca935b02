import type { CellSectionParameters } from '../cell-section-parameters.ts';
import { type Shape, shape, weights } from '../drawing.ts';
import { Pen, type Placement } from '../pen.ts';
import type { CellPoint } from './outline.ts';

/** Up to three mites, on the body or on the wall. */
export function drawMites(cell: CellSectionParameters, own: Placement): Shape[] {
  const stands: CellPoint[] = [
    [20, 4.4],
    [11, 15.4],
    [27, 14.6],
  ];
  return stands
    .slice(0, Math.max(0, Math.min(3, cell.mites ?? 0)))
    .map(([u, v]) => shape('mite', new Pen(own).ellipse(u, v, 2.5, 1.8).d, 'paper', 'mite', weights.hair));
}
