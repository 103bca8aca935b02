import type { CellSectionParameters } from '../cell-section-parameters.ts';
import { type Shape, shape, type Wash, weights } from '../drawing.ts';
import { Pen, type Placement } from '../pen.ts';
import { type CellPoint, width } from './outline.ts';

/** The capping over the mouth, or what is left of it. */
export function drawCapping(cell: CellSectionParameters, own: Placement): Shape[] {
  const wax: Wash = cell.cappingDark ? 'darkened wax' : 'wax';
  const thickness = 2.6;
  // The capping from v = top to v = bottom; as a whole it bulges out of the mouth (negative) or into the cell.
  const plate = (bulge: number, top = 0, bottom = width, ragged = 0): Shape => {
    const outer: CellPoint[] = [];
    const inner: CellPoint[] = [];
    for (let i = 0; i <= 6; i += 1) {
      const v = top + ((bottom - top) * i) / 6;
      const u = 0.4 + bulge * 4 * (v / width) * (1 - v / width);
      outer.push([u, v]);
      inner.push([u + thickness, v]);
    }
    const path = new Pen(own).move(...(outer[0] as CellPoint)).line(...outer.slice(1));
    if (ragged && bottom < width) path.line([(outer[6] as CellPoint)[0] + thickness * 0.6, bottom + ragged]);
    path.line(...inner.reverse());
    if (ragged && top > 0) path.line([(outer[0] as CellPoint)[0] + thickness * 0.6, top - ragged]);
    return shape('capping', path.close().d, 'ink', wax, weights.inner);
  };
  switch (cell.capping ?? 'none') {
    case 'none':
      return [];
    case 'domed':
      return [plate(-3.6)];
    case 'flat':
      return [plate(0)];
    case 'sunken':
      return [plate(5)];
    case 'drone dome':
      return [plate(-8.4)];
    case 'perforated':
      return [plate(4, 0, 6.6), plate(4, 10.6, width)];
    case 'torn':
      return [plate(-2, 0, 2.8, 1.6), plate(-2, 13.4, width, 1.9)];
  }
}
