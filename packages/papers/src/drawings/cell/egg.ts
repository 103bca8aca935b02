import type { CellSectionParameters } from '../cell-section-parameters.ts';
import { type Shape, shape, weights } from '../drawing.ts';
import { Pen, type Placement, placed, within } from '../pen.ts';

/** One egg stands on the base; laying workers leave several, on the walls too. */
export function drawEgg(cell: CellSectionParameters, own: Placement): Shape[] {
  const shapes: Shape[] = [];
  const stands: [number, number, number][] = [
    [33, 9, 180],
    [19, 17, -70],
    [12.6, 1, 75],
    [26, 1, 100],
  ];
  for (const [u, v, turn] of stands.slice(0, Math.max(1, Math.min(4, cell.eggs ?? 1)))) {
    const egg = within(own, placed(u, v, turn));
    const d = new Pen(egg).through(
      [
        [0, -1.3],
        [4, -1.8],
        [7.6, 0],
        [4, 1.8],
        [0, 1.3],
      ],
      true,
    ).d;
    shapes.push(shape('body', d, 'ink', 'white', weights.inner));
  }
  return shapes;
}
