import { type Shape, shape, weights } from '../drawing.ts';
import { Pen, type Placement } from '../pen.ts';

/** Three drops beginning at (u, v), for what is watery. */
export function drops(own: Placement, u: number, v: number): Shape[] {
  return [0, 1, 2].map((index) =>
    shape('drop', new Pen(own).ellipse(u - index * 4.2, v - (index % 2) * 2.4, 1.2).d, 'ink', 'paper', weights.hair),
  );
}
