import type { Pen } from '../pen.ts';
import type { CellPoint } from './outline.ts';

/** A body of given half-widths along a bent spine. */
export function ribbon(pen: Pen, spine: readonly CellPoint[], half: readonly number[]): string {
  const left: CellPoint[] = [];
  const right: CellPoint[] = [];
  spine.forEach(([u, v], index) => {
    const [nu, nv] = normal(spine, index);
    const h = half[index] ?? 1;
    left.push([u + nu * h, v + nv * h]);
    right.push([u - nu * h, v - nv * h]);
  });
  return pen.through([...left, ...right.reverse()], true).d;
}

/** Short lines across a bent spine at some of its points, such as the bounds of segments. */
export function crossings(pen: Pen, spine: readonly CellPoint[], at: readonly number[], half: number): string {
  for (const index of at) {
    const [u, v] = spine[index] as CellPoint;
    const [nu, nv] = normal(spine, index);
    pen.move(u + nu * half, v + nv * half).line([u - nu * half, v - nv * half]);
  }
  return pen.d;
}

function normal(spine: readonly CellPoint[], index: number): [number, number] {
  const before = spine[Math.max(0, index - 1)] as CellPoint;
  const after = spine[Math.min(spine.length - 1, index + 1)] as CellPoint;
  const du = after[0] - before[0];
  const dv = after[1] - before[1];
  const length = Math.hypot(du, dv) || 1;
  return [-dv / length, du / length];
}
