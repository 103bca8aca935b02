import { type Shape, shape, weights } from '../drawing.ts';
import { Pen, type Placement } from '../pen.ts';

/** White growth like cotton around a body. */
export function fluff(own: Placement): Shape[] {
  const growth = new Pen(own).through(
    [
      [2, 9],
      [4, 4],
      [8, 4.6],
      [11, 2],
      [15, 3.8],
      [19, 1.6],
      [23, 3.8],
      [27, 2.4],
      [29.6, 5.6],
      [32, 9.4],
      [29.8, 13.4],
      [29, 16.4],
      [23, 15.6],
      [18, 17],
      [12, 15.6],
      [6, 16.8],
      [4, 13],
    ],
    true,
  );
  const hairs = new Pen(own);
  for (const [u, v, du, dv] of [
    [5.5, 7, -1.8, -2],
    [13, 5.6, 0, -2.4],
    [21, 5.2, 0.6, -2.4],
    [28, 7.4, 2, -1.6],
  ] as const) {
    hairs.move(u, v).line([u + du, v + dv]);
  }
  return [
    shape('growth', growth.d, 'ink', 'white', weights.inner, [1.2, 1.8]),
    shape('growth', hairs.d, 'faint', 'none', weights.hair),
  ];
}
