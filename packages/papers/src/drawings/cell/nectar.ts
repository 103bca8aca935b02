import { type Shape, shape, weights } from '../drawing.ts';
import { Pen, type Placement } from '../pen.ts';
import { depth, tilt, width } from './outline.ts';

/** Nectar, its surface level in the world. */
export function drawNectar(own: Placement): Shape[] {
  // Fluids stand level in the world, whatever the tilt of the cell.
  const level = Math.tan((tilt * Math.PI) / 180);
  const surface = (u: number) => 4.2 + (depth - 8 - u) * level;
  const fluid = new Pen(own)
    .move(1.4, surface(1.4) + 1)
    .line([depth - 2, surface(depth - 2)], [depth, width / 2], [depth - 3.5, width], [1.4, width])
    .close();
  return [shape('body', fluid.d, 'ink', 'nectar', weights.inner)];
}
