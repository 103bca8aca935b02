import type { CellSectionParameters } from '../cell-section-parameters.ts';
import { type Ink, type Shape, shape, weights } from '../drawing.ts';
import { Pen, type Placement } from '../pen.ts';
import { body, mark } from './body.ts';
import { drops } from './drops.ts';
import { type CellPoint, colourOf, depth, lineUpon, width } from './outline.ts';

/** A young larva: a crescent on the base, its hollow toward the mouth, in its food unless unfed. */
export function drawCoiled(cell: CellSectionParameters, own: Placement): Shape[] {
  const shapes: Shape[] = [];
  if (!cell.unfed) {
    const food = new Pen(own)
      .move(depth - 3.5, 0)
      .line([depth, width / 2], [depth - 3.5, width], [depth - 12, width])
      .curve([depth - 8, width - 3], [depth - 6, 6], [depth - 3.5, 0])
      .close();
    shapes.push(shape('food', food.d, 'none', 'nectar', 0));
  }
  const outer = cell.unfed ? 6 : 7.4;
  const inner = cell.unfed ? 3.8 : 2.2;
  const centre: CellPoint = [23.8, 9.2];
  shapes.push(body(cell, crescent(new Pen(own), centre, outer, inner, 38, 322)));
  if (!cell.unfed)
    shapes.push(mark(cell, spokes(new Pen(own), centre, inner + 0.9, outer - 0.6, [95, 140, 180, 220, 265])));
  if (cell.tracheae) shapes.push(tracheae(new Pen(own), centre, (outer + inner) / 2, lineUpon(colourOf(cell))));
  if (cell.watery) shapes.push(...drops(own, 15, 16));
  return shapes;
}

function tracheae(pen: Pen, centre: CellPoint, radius: number, line: Ink): Shape {
  const points: CellPoint[] = [];
  for (let degrees = 60; degrees <= 300; degrees += 30) {
    const wobble = degrees % 60 ? 0.9 : -0.9;
    points.push(onCircle(centre, radius + wobble, degrees));
  }
  return shape('tracheae', pen.through(points).d, line, 'none', weights.hair);
}

/** Degrees run from the mouth's direction (0) clockwise: 90 is the upper wall, 180 the base. */
function onCircle(centre: CellPoint, radius: number, degrees: number): [number, number] {
  const angle = (degrees * Math.PI) / 180;
  return [centre[0] - radius * Math.cos(angle), centre[1] - radius * Math.sin(angle)];
}

function crescent(pen: Pen, centre: CellPoint, outer: number, inner: number, from: number, to: number): string {
  const steps = 8;
  const outside: CellPoint[] = [];
  const inside: CellPoint[] = [];
  for (let i = 0; i <= steps; i += 1) {
    const degrees = from + ((to - from) * i) / steps;
    outside.push(onCircle(centre, outer, degrees));
    // Thick in the middle, tapering to both ends.
    const taper = Math.sin((Math.PI * i) / steps) ** 0.5;
    inside.push(onCircle(centre, outer - (outer - inner) * Math.max(0.35, taper), degrees));
  }
  return pen.through([...outside, ...inside.reverse()], true).d;
}

function spokes(pen: Pen, centre: CellPoint, from: number, to: number, degrees: readonly number[]): string {
  for (const one of degrees) {
    pen.move(...onCircle(centre, from, one)).line(onCircle(centre, to, one));
  }
  return pen.d;
}
