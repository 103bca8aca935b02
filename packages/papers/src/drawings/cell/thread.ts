import { type Shape, shape, weights } from '../drawing.ts';
import { Pen, type Placement } from '../pen.ts';
import { width } from './outline.ts';

/** The rope test: a thread of so many millimetres drawn out of the cell by a stick. Throws outside 0 to 300 mm. */
export function drawThread(millimetres: number, own: Placement): Shape[] {
  if (!(millimetres >= 0 && millimetres <= 300)) {
    throw new RangeError(`a thread of ${millimetres} mm cannot be drawn; measure 0 to 300 mm`);
  }
  // Out of the content, over the lower rim, up and left to the stick; the longer the thread, the farther the stick.
  const start = own(8, width - 4);
  const mouth = own(0, width - 6.5);
  const reach = Math.min(millimetres, 40) / 40;
  const tip = { x: mouth.x - 4 - reach * 10, y: mouth.y - 3 - reach * 14 };
  const stick = new Pen().move(tip.x + 0.5, tip.y + 1).line([tip.x - 3.2 - (1 - reach) * 4, tip.y - 8]);
  const parts = [shape('stick', stick.d, 'ink', 'none', weights.main * 1.75)];
  if (millimetres < 10) {
    // Too short to count: it breaks between the cell and the stick.
    const rest = new Pen().move(start.x, start.y).line([mouth.x - 0.6, mouth.y]);
    const tail = new Pen().move(tip.x, tip.y).line([tip.x + 0.8, tip.y + 2.2]);
    return [
      shape('thread', rest.d, 'ink', 'none', weights.inner),
      shape('thread', tail.d, 'ink', 'none', weights.inner),
      ...parts,
    ];
  }
  const thread = new Pen()
    .move(start.x, start.y)
    .curve([mouth.x, mouth.y], [mouth.x - 2, mouth.y + 2], [(mouth.x + tip.x) / 2, (mouth.y + tip.y) / 2 + 3])
    .curve([(mouth.x + tip.x) / 2 - 3, (mouth.y + tip.y) / 2 + 1], [tip.x + 1, tip.y + 4], [tip.x, tip.y]);
  return [shape('thread', thread.d, 'ink', 'none', weights.inner), ...parts];
}
