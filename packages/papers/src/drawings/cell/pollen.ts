import { type Shape, shape, weights } from '../drawing.ts';
import { Pen, type Placement } from '../pen.ts';
import { depth, width } from './outline.ts';

/** Packed pollen in the deeper half of the cell. */
export function drawPollen(own: Placement): Shape[] {
  const packed = new Pen(own)
    .move(11, 0)
    .curve([13, 6], [13, 12], [11, width])
    .line([depth - 3.5, width], [depth, width / 2], [depth - 3.5, 0])
    .close();
  return [
    shape('body', packed.d, 'ink', 'pollen', weights.inner),
    shape(
      'mark',
      new Pen(own)
        .move(17.6, 2)
        .curve([19.4, 6], [19.4, 12], [17.6, 16])
        .move(24, 2)
        .curve([25.8, 6], [25.8, 12], [24, 16]).d,
      'ink',
      'none',
      weights.inner,
    ),
  ];
}
