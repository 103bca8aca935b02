import type { CellSectionParameters } from '../cell-section-parameters.ts';
import { type Shape, shape, type Wash, weights } from '../drawing.ts';
import { Pen, type Placement } from '../pen.ts';
import { type CellPoint, depth, width } from './outline.ts';
import { ribbon } from './spine.ts';

/** Dried remains, as they lie in the cell. */
export function drawScale(cell: CellSectionParameters, own: Placement): Shape[] {
  const pen = () => new Pen(own);
  const colour: Wash = cell.colour && cell.colour !== 'pearl' ? cell.colour : 'dark';
  switch (cell.scale ?? 'none') {
    case 'none':
      return [];
    case 'lower wall': {
      // From just inside the mouth down to the base, thickest toward the base, glued all along.
      const d = pen()
        .move(2, width)
        .curve([4, width - 3.8], [10, width - 4], [18, width - 4.4])
        .curve([24, width - 4.8], [28, width - 6], [31.4, width - 9.4])
        .line([33.2, 11], [depth - 3.5, width])
        .close().d;
      return [shape('scale', d, 'ink', colour, weights.inner)];
    }
    case 'mouth': {
      const d = pen()
        .move(1, width - 0.8)
        .curve([0, 11.4], [2.4, 6.4], [6.6, 6])
        .curve([11, 5.8], [13, 10], [11, 13])
        .curve([9.4, 12.4], [9.6, 9.4], [7, 9.2])
        .curve([4.6, 9.2], [4.4, 13.6], [5.4, width - 0.8])
        .close().d;
      return [shape('scale', d, 'ink', colour, weights.inner)];
    }
    case 'rubbery': {
      const spine: CellPoint[] = [
        [6, 15],
        [10.6, 11],
        [15.4, 13.4],
        [20, 8.6],
        [25.4, 10.4],
        [29, 6.6],
      ];
      return [shape('scale', ribbon(pen(), spine, [0.8, 2, 2.2, 2.2, 2, 0.8]), 'ink', colour, weights.inner)];
    }
    case 'loose': {
      const d = pen()
        .move(4.6, 6.4)
        .curve([9, 13], [22, 13.6], [28.6, 7.4])
        .curve([26, 17.8], [8, 17.4], [4.6, 6.4])
        .close().d;
      return [shape('scale', d, 'ink', colour, weights.inner)];
    }
  }
}
