import type { CellSectionParameters } from '../cell-section-parameters.ts';
import { type Shape, shape, weights } from '../drawing.ts';
import { Pen, type Placement } from '../pen.ts';
import { drawCapping } from './capping.ts';
import { drawContent } from './content.ts';
import { drawMites } from './mites.ts';
import { drawMoth } from './moth.ts';
import { depth, width } from './outline.ts';
import { drawScale } from './scale.ts';
import { drawThread } from './thread.ts';

/** One cell with everything in it, from the ground up. */
export function drawCell(cell: CellSectionParameters, own: Placement): Shape[] {
  const shapes: Shape[] = [];
  const pen = () => new Pen(own);
  const rim = cell.raisedRim ? 2.2 : 0;

  // The tube: the ground first, so that nothing shows through; the walls last, so that nothing covers them.
  const ground = pen()
    .move(0, 0)
    .line([depth - 3.5, 0], [depth, width / 2], [depth - 3.5, width], [0, width])
    .close();
  shapes.push(shape('ground', ground.d, 'none', 'paper', 0));
  shapes.push(...drawContent(cell, own));
  shapes.push(...drawScale(cell, own));
  if (cell.tongue) {
    const tongue = pen().through([
      [12, width - 4.5],
      [11, width / 2],
      [9.6, 1],
    ]);
    shapes.push(shape('tongue', tongue.d, 'ink', 'none', weights.inner));
  }
  if (cell.moth) shapes.push(...drawMoth(own));
  shapes.push(...drawMites(cell, own));

  const walls = pen()
    .move(0, 0)
    .line([depth - 3.5, 0], [depth, width / 2], [depth - 3.5, width], [0, width]);
  shapes.push(shape('walls', walls.d, 'ink', 'none', weights.main));
  if (rim) {
    const lips = pen()
      .move(1, 0)
      .curve([-0.5, 0], [-1, -0.6], [-1, -rim])
      .move(1, width)
      .curve([-0.5, width], [-1, width + 0.6], [-1, width + rim]);
    shapes.push(shape('rim', lips.d, 'ink', 'none', weights.main));
  }
  shapes.push(...drawCapping(cell, own));
  if (cell.threadMillimetres !== undefined) shapes.push(...drawThread(cell.threadMillimetres, own));
  return shapes;
}
