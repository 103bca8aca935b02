import type { CellSectionParameters } from '../cell-section-parameters.ts';
import { type Shape, shape, weights } from '../drawing.ts';
import { Pen, type Placement } from '../pen.ts';
import { colourOf } from './outline.ts';

/** The unshed skin with its fluid, and within it the larva, head up toward the mouth. */
export function drawSac(cell: CellSectionParameters, own: Placement): Shape[] {
  const skin = new Pen(own)
    .move(2.6, 5.4)
    .curve([3.4, 2.4], [7.6, 2.2], [10, 4.6])
    .curve([14, 8], [20, 7.4], [26, 7.8])
    .curve([31, 8.2], [32.4, 14.6], [28.6, 16.8])
    .line([12, 16.8])
    .curve([5.6, 16.8], [1.8, 10.6], [2.6, 5.4])
    .close();
  const larva = new Pen(own)
    .move(4.6, 6.2)
    .curve([5.2, 4.2], [7.6, 4.2], [9, 6.4])
    .curve([13, 10.4], [19, 9.4], [25, 10])
    .curve([28.6, 10.4], [29, 13.6], [26.4, 14.6])
    .line([13.4, 14.6])
    .curve([7.6, 14.4], [3.8, 9.8], [4.6, 6.2])
    .close();
  const head = new Pen(own)
    .move(4.6, 6.2)
    .curve([5.2, 4.2], [7.6, 4.2], [9, 6.4])
    .curve([9, 8.6], [7.6, 10], [6.4, 11])
    .curve([4.8, 9.4], [4.2, 7.8], [4.6, 6.2])
    .close();
  return [
    shape('skin', skin.d, 'ink', 'nectar', weights.inner),
    shape('body', larva.d, 'ink', colourOf(cell) === 'pearl' ? 'yellow' : colourOf(cell), weights.hair),
    shape('head', head.d, 'none', 'dark', 0),
  ];
}
