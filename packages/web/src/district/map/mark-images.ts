import type { Shape } from '@combside/papers/drawings/drawing';
import { inks, washes } from '@combside/papers/drawings/palette';
import { Pen } from '@combside/papers/drawings/pen';
import { type ColonyState, colonyStates, drawStateMark } from '@combside/papers/drawings/state-mark';

/** A picture for the map, with so many of its pixels to one pixel of the screen. */
export interface MapImage {
  readonly name: string;
  readonly data: ImageData;
  readonly pixelRatio: number;
}

const pixelRatio = 3;

/** The name under which the map knows a mark. */
export function imageOfMark(mark: ColonyState): string {
  return `mark ${mark}`;
}

/** The marks of the house as pictures, and the two of a heap: plain, and with the notch of a suspicion. */
export function mapImages(): MapImage[] {
  const marks = colonyStates.map((state) => {
    const { width, shapes } = drawStateMark(state);
    return { name: imageOfMark(state), data: painted(shapes, width, 22), pixelRatio };
  });
  return [
    ...marks,
    { name: 'heap', data: painted(heap(false), 40, 40), pixelRatio },
    { name: 'heap suspect', data: painted(heap(true), 40, 40), pixelRatio },
  ];
}

/** Three sheets one behind the other; the suspicion's notch is cut into the upper edge of the first. */
function heap(suspect: boolean): Shape[] {
  const sheet = (inset: number): Shape => ({
    d: new Pen().box(3 + inset, 9 - inset, 28, 28).d,
    stroke: 'ink',
    fill: 'paper',
    weight: 1.6,
    role: 'outline',
  });
  const notch: Shape = {
    d: new Pen().move(3, 9).line([10, 17], [17, 9]).close().d,
    stroke: 'ink',
    fill: 'suspect',
    weight: 1.6,
    role: 'mark',
  };
  return [sheet(6), sheet(3), sheet(0), ...(suspect ? [notch] : [])];
}

function painted(shapes: readonly Shape[], width: number, pixels: number): ImageData {
  const size = pixels * pixelRatio;
  const canvas = document.createElement('canvas');
  canvas.width = size;
  canvas.height = size;
  const pen = canvas.getContext('2d');
  if (!pen) throw new Error('this browser paints no pictures');
  pen.scale(size / width, size / width);
  pen.lineCap = 'round';
  pen.lineJoin = 'round';
  for (const shape of shapes) {
    const path = new Path2D(shape.d);
    if (shape.fill !== 'none') {
      pen.fillStyle = washes[shape.fill];
      pen.fill(path);
    }
    if (shape.stroke !== 'none') {
      pen.strokeStyle = inks[shape.stroke];
      // Weights and dashes are pixels of the screen, whatever the size of the drawing.
      pen.lineWidth = (shape.weight * width) / pixels;
      pen.setLineDash((shape.dash ?? []).map((dash) => (dash * width) / pixels));
      pen.stroke(path);
    }
  }
  return pen.getImageData(0, 0, size, size);
}
