import { type Shape, shape, weights } from '../drawing.ts';
import { Pen, type Placement } from '../pen.ts';

/** Tunnel, threads and droppings of the wax moth. */
export function drawMoth(own: Placement): Shape[] {
  const tunnel = new Pen(own).through([
    [1, 3.6],
    [8, 2.2],
    [15, 4],
    [23, 2],
    [30, 4],
  ]);
  const threads = new Pen(own).move(4, 1).line([9, 5]).move(12, 0.8).line([18, 5.2]).move(21, 0.8).line([27, 5]);
  const frass = new Pen(own);
  for (const [u, v] of [
    [4.6, 7.4],
    [7.8, 6.2],
    [6, 11.6],
  ] as const)
    frass.ellipse(u, v, 1.1);
  return [
    shape('silk', tunnel.d, 'faint', 'none', weights.inner),
    shape('silk', threads.d, 'faint', 'none', weights.hair),
    shape('frass', frass.d, 'none', 'ink', 0),
  ];
}
