import type { CombSectionParameters } from './cell-section-parameters.ts';
import { type Shape, shape, weights } from './drawing.ts';
import { Pen, placed } from './pen.ts';

/** A smell that comes out of the cells. */
export function drawSmell(smell: NonNullable<CombSectionParameters['smell']>): Shape[] {
  const wave = (x: number, y: number, height: number): Shape =>
    shape(
      'smell',
      new Pen().through([
        [x, y],
        [x - 2.6, y - height * 0.3],
        [x + 1.4, y - height * 0.65],
        [x - 1.6, y - height],
      ]).d,
      'ink',
      'none',
      1.6,
    );
  // Told apart by shape: three waves, two with a drop, one.
  if (smell === 'other') return [wave(8, 20, 14)];
  if (smell === 'glue') return [wave(5, 22, 15), wave(10.4, 19, 14), wave(16, 16, 13)];
  const drop = new Pen()
    .move(7, 25)
    .curve([10.6, 30], [10.6, 33], [7, 33])
    .curve([3.4, 33], [3.4, 30], [7, 25])
    .close();
  return [wave(6, 20, 15), wave(12, 17.6, 14), shape('smell', drop.d, 'ink', 'nectar', weights.inner)];
}

/** The floor of the hive below the comb, and what lies on it. */
export function drawFloor(floor: NonNullable<CombSectionParameters['floor']>): Shape[] {
  const board = shape('floor', new Pen().move(3, 44.6).line([45, 44.6]).d, 'ink', 'none', weights.main);
  const lying = [9, 20.5, 31, 41].map((x, index) => {
    const y = 44;
    if (floor === 'scales') {
      const d = new Pen()
        .move(x - 4, y - 3.4)
        .curve([x - 2, y + 0.6], [x + 2, y + 0.6], [x + 4, y - 3.4])
        .curve([x + 2, y - 1.4], [x - 2, y - 1.4], [x - 4, y - 3.4])
        .close().d;
      return shape('lying', d, 'ink', 'dark', weights.hair);
    }
    if (floor === 'mummies') {
      const d = new Pen()
        .move(x - 3.8, y - 1.6)
        .line([x - 2.4, y - 4.4], [x + 1, y - 4], [x + 3.4, y - 4.8], [x + 4, y - 1.4], [x, y - 0.6])
        .close().d;
      return shape('lying', d, 'ink', index % 2 ? 'grey' : 'white', weights.inner);
    }
    return shape('lying', new Pen().ellipse(x, y - 2.2, 4, 1.8).d, 'ink', 'brown', weights.inner);
  });
  return [board, ...lying];
}

/** Bees on the comb, where their number is the sign. */
export function drawBees(bees: NonNullable<CombSectionParameters['bees']>): Shape[] {
  const stands: (readonly [number, number])[] =
    bees === 'few'
      ? [[8, 12]]
      : [
          [9.6, 8.4],
          [8.6, 24.2],
          [7.8, 40],
        ];
  return stands.flatMap(([x, y]) => {
    // Head up, feet on the comb, wings outward.
    const at = placed(x, y, -84);
    const abdomen = new Pen(at).ellipse(-3.2, 0, 4.2, 2.9);
    const bands = new Pen(at).move(-2.2, -2.7).line([-2.2, 2.7]).move(-4.6, -2.6).line([-4.6, 2.6]);
    const thorax = new Pen(at).ellipse(2.8, 0, 2.4, 2.3);
    const head = new Pen(at).ellipse(6.1, 0.3, 1.4, 1.7);
    const wing = new Pen(at)
      .move(2.6, -1.6)
      .curve([1, -5.4], [-5, -6.6], [-6.4, -4.6])
      .curve([-6, -2.6], [-1, -2], [2.6, -1.6])
      .close();
    return [
      shape('bee', abdomen.d, 'ink', 'wax', weights.inner),
      shape('bee', bands.d, 'ink', 'none', weights.inner),
      shape('bee', wing.d, 'ink', 'white', weights.hair),
      shape('bee', thorax.d, 'ink', 'ink', weights.hair),
      shape('bee', head.d, 'ink', 'ink', weights.hair),
    ];
  });
}
