import type { CheckId } from '@combside/science/diagnosis/checks';
import { drawCellSection, drawCombSection } from './cell-section.ts';
import { type Drawing, type Shape, type Wash, weights } from './drawing.ts';
import { Pen, type Placement, placed } from './pen.ts';

/**
 * How a check at the hive is done, as a drawing of 48 by 48: the cell as it looks, the hold of the frame, the vessel.
 *
 * @returns null for what a laboratory does: there is nothing to hold right
 */
export function drawCheck(check: CheckId): Drawing | null {
  switch (check) {
    case 'rope-test':
      return drawCellSection({ content: 'slumped', colour: 'brown', threadMillimetres: 20 });
    case 'open-cells':
      return drawCombSection({
        cells: [
          { capping: 'sunken', cappingDark: true },
          { capping: 'torn', content: 'slumped', colour: 'brown' },
          { capping: 'perforated', cappingDark: true },
        ],
      });
    case 'look-into-open-cells':
      return drawCombSection({
        cells: [{ content: 'coiled' }, { content: 'twisted', colour: 'yellow', tracheae: true }],
      });
    case 'search-tongue':
      return drawCellSection({ content: 'slumped', colour: 'brown', tongue: true });
    case 'look-for-mites':
      return drawCellSection({ content: 'pupa', capping: 'torn', mites: 3 });
    case 'look-at-eggs':
      return drawCellSection({ content: 'egg', eggs: 3 });
    case 'search-floor':
      return drawCombSection({ cells: [{ capping: 'domed' }], floor: 'mummies' });
    case 'scale-search':
      return plate(sightIntoCells());
    case 'every-frame-shaken':
      return plate(frameShakenInBox());
    case 'holst-milk':
      return plate([...tube(6, 'white', false), ...arrow(19, 26, 29, 26), ...tube(34, 'none', true)]);
    case 'lateral-flow-afb':
    case 'lateral-flow-efb':
      return plate(stripOnTheLevel());
    case 'lamp-afb':
      return plate([
        shape(new Pen().box(9, 25, 30, 17).d, 'wax', 'warm block'),
        ...tube(12, 'nectar', false),
        ...tube(29, 'nectar', false),
      ]);
    default:
      return null;
  }
}

const plate = (shapes: readonly Shape[]): Drawing => ({ width: 48, height: 48, shapes, labels: [] });

function shape(d: string, fill: Wash, role: string, weight: number = weights.main): Shape {
  return { d, stroke: 'ink', fill, weight, role };
}

function dashed(d: string, role: string): Shape {
  return { d, stroke: 'ink', fill: 'none', weight: weights.inner, dash: [4, 3], role };
}

/** From where the comb leans, seen from the side: its top bar comes toward the eye. */
const lean = 24;

/**
 * The frame from the side, top bar toward the viewer and lower than upright, the eye above it: the line of sight falls
 * through the mouth onto the lower wall (science/brood/look-geometry.ts: about 34 degrees from the perpendicular).
 */
function sightIntoCells(): Shape[] {
  const at: Placement = placed(33, 27, -lean);
  const comb: Shape[] = [
    shape(new Pen(at).box(-2, -17, 9, 34).d, 'wax', 'comb'),
    shape(new Pen(at).box(-5, -20, 13, 4).d, 'paper', 'top bar'),
  ];
  for (const y of [-10, -3, 4, 11]) {
    comb.push(
      shape(
        new Pen(at)
          .move(-2, y - 2.6)
          .line([5, y - 1.4])
          .line([5, y + 3.2])
          .line([-2, y + 2]).d,
        'paper',
        'cell',
        weights.inner,
      ),
      shape(new Pen(at).box(0.4, y + 1.3, 4.4, 1.5).d, 'dark', 'scale', weights.inner),
    );
  }
  const aim = at(2.5, 0);
  return [
    ...comb,
    dashed(new Pen().move(11, 12).line([aim.x, aim.y]).d, 'line of sight'),
    shape(
      new Pen().move(2, 10).curve([5, 5], [10, 5], [13, 10]).curve([10, 15], [5, 15], [2, 10]).close().d,
      'paper',
      'eye',
    ),
    shape(new Pen().ellipse(8.4, 10, 2.2).d, 'ink', 'eye', weights.inner),
  ];
}

/** A frame lifted a little in its box, jerked down, and the bees that drop. */
function frameShakenInBox(): Shape[] {
  const bees = [
    [15, 37],
    [21, 41],
    [27, 38],
    [33, 41],
    [18, 32],
    [31, 33],
  ] as const;
  return [
    shape(new Pen().move(4, 20).line([4, 45], [44, 45], [44, 20]).d, 'none', 'box'),
    shape(new Pen().box(10, 11, 28, 18).d, 'wax', 'comb'),
    shape(new Pen().box(5, 7, 38, 4).d, 'paper', 'top bar'),
    ...bees.map(([x, y]) => shape(new Pen().ellipse(x, y, 1.6, 1.1).d, 'ink', 'bee', weights.inner)),
    ...arrow(24, 14, 24, 26),
  ];
}

/** An arrow from one point to another. */
function arrow(fromX: number, fromY: number, toX: number, toY: number): Shape[] {
  const degrees = (Math.atan2(toY - fromY, toX - fromX) * 180) / Math.PI;
  const head: Placement = placed(toX, toY, degrees);
  return [
    shape(
      new Pen().move(fromX, fromY).line([toX, toY]).d + new Pen(head).move(-3.5, -3).line([0, 0], [-3.5, 3]).d,
      'none',
      'arrow',
    ),
  ];
}

/** A tube with milk in it: cloudy before, seen through after. */
function tube(x: number, fill: Wash, seenThrough: boolean): Shape[] {
  const glass = new Pen()
    .move(x, 8)
    .line([x, 34])
    .curve([x, 42], [x + 8, 42], [x + 8, 34])
    .line([x + 8, 8]).d;
  const milk = new Pen()
    .move(x, 20)
    .line([x, 34])
    .curve([x, 42], [x + 8, 42], [x + 8, 34])
    .line([x + 8, 20])
    .close().d;
  return [
    {
      ...shape(milk, fill === 'none' ? 'paper' : fill, 'milk', weights.inner),
      ...(seenThrough ? { dash: [3, 3] } : {}),
    },
    shape(glass, 'none', 'tube'),
  ];
}

/** A strip lying level, a drop above one end, and the line that must show before anything is read. */
function stripOnTheLevel(): Shape[] {
  return [
    shape(new Pen().box(4, 26, 40, 12).d, 'paper', 'strip'),
    shape(new Pen().ellipse(12, 32, 3.4).d, 'none', 'well', weights.inner),
    shape(new Pen().box(21, 29, 18, 6).d, 'white', 'window', weights.inner),
    shape(new Pen().move(34, 29).line([34, 35]).d, 'none', 'control line'),
    shape(
      new Pen().move(12, 10).curve([15, 15], [16, 19], [12, 20]).curve([8, 19], [9, 15], [12, 10]).close().d,
      'nectar',
      'drop',
    ),
    dashed(new Pen().move(3, 42).line([45, 42]).d, 'level'),
  ];
}
