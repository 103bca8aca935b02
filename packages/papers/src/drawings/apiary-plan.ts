import { type Drawing, type Label, type Shape, shape, weights } from './drawing.ts';
import { Pen } from './pen.ts';
import { type ColonyState, stateMarkShapes } from './state-mark.ts';

/** A point on the site, in metres east and north of the plan's own origin. */
export interface SitePoint {
  readonly east: number;
  readonly north: number;
}

export interface ApiaryPlanParameters {
  readonly hives: readonly {
    readonly id: string;
    readonly label: string;
    readonly at: SitePoint;
    readonly state: ColonyState;
  }[];
  readonly gate: SitePoint | null;
  readonly track: readonly SitePoint[];
  /** Ids of the hives in the order in which they were, or are to be, walked past. */
  readonly walk: readonly string[];
  /** Text beside the scale bar for a length in metres, already in the reader's language: (5) => "5 m". */
  readonly scaleText: (metres: number) => string;
  /** Largest edge of a hive's mark, in drawing units (a plan is 360 wide). Default 18; a phone in gloves wants more. */
  readonly largestMark?: number;
}

/** The plan with the place of each hive on it, so that a screen can tell which one was meant by a touch. */
export interface ApiaryPlan extends Drawing {
  readonly places: readonly { readonly id: string; readonly x: number; readonly y: number }[];
}

const width = 360;
const margin = 30;
/** The north arrow stands in a strip of its own above the site, so that it never covers a hive. */
const header = 24;
const footer = 26;
/** Of a letter on average, as a share of its height; measured on Atkinson Hyperlegible Next: 0.5 to 0.6. */
const letterWidth = 0.62;

/**
 * Draws the site as a surveyor would sketch it, north up: hives where they stand with the mark of their state, gate,
 * track, the way walked, a scale bar.
 *
 * @throws RangeError when there is no hive, or a position is not a finite number
 */
export function drawApiaryPlan(parameters: ApiaryPlanParameters): ApiaryPlan {
  const { hives, gate, track, walk, largestMark = 18 } = parameters;
  if (hives.length === 0) throw new RangeError('a plan without hives cannot be drawn; list the colonies instead');
  const all = [...hives.map((hive) => hive.at), ...(gate ? [gate] : []), ...track];
  for (const point of all) {
    if (!Number.isFinite(point.east) || !Number.isFinite(point.north)) {
      throw new RangeError(`a point of the plan is (${point.east}, ${point.north}); both must be metres`);
    }
  }

  const west = Math.min(...all.map((point) => point.east));
  const east = Math.max(...all.map((point) => point.east));
  const south = Math.min(...all.map((point) => point.north));
  const north = Math.max(...all.map((point) => point.north));
  // A single hive, or a row of them, still gets some ground around it.
  const spanEast = Math.max(east - west, 6);
  const spanNorth = Math.max(north - south, 3);
  const unitsPerMetre = Math.min((width - 2 * margin) / spanEast, 300 / spanNorth);
  const height = Math.ceil(header + spanNorth * unitsPerMetre + 2 * margin + footer);
  const originX = (width - (east - west) * unitsPerMetre) / 2;
  const originY = header + margin + ((spanNorth + (north - south)) * unitsPerMetre) / 2;
  const place = (point: SitePoint): [number, number] => [
    originX + (point.east - west) * unitsPerMetre,
    originY - (point.north - south) * unitsPerMetre,
  ];

  const spots = hives.map((hive) => ({ ...hive, spot: place(hive.at) }));
  const edge = hiveEdge(
    spots.map((hive) => hive.spot),
    largestMark,
  );
  const shapes: Shape[] = [];
  const labels: Label[] = [];

  const [first, ...rest] = track.map(place);
  if (first && rest.length > 0) {
    const path = new Pen().move(...first).line(...rest).d;
    shapes.push(shape('track', path, 'faint', 'none', 7));
    shapes.push(shape('track', path, 'paper', 'none', 4.5));
  }
  if (gate) {
    const [x, y] = place(gate);
    const posts = new Pen()
      .move(x - 7, y - 6)
      .line([x - 7, y + 6])
      .move(x + 7, y - 6)
      .line([x + 7, y + 6])
      .move(x - 7, y - 3)
      .line([x + 7, y - 3])
      .move(x - 7, y + 3)
      .line([x + 7, y + 3]);
    shapes.push(shape('gate ground', new Pen().box(x - 7, y - 6, 14, 12).d, 'none', 'paper', 0));
    shapes.push(shape('gate', posts.d, 'ink', 'none', weights.main));
  }

  const way = walk.flatMap((id) => {
    const hive = spots.find((one) => one.id === id);
    return hive ? [hive.spot] : [];
  });
  const start = gate ? place(gate) : undefined;
  const points = start ? [start, ...way] : way;
  if (points.length > 1) {
    const [from, ...on] = points as [[number, number], ...[number, number][]];
    shapes.push(shape('way', new Pen().move(...from).line(...on).d, 'faint', 'none', weights.inner, [1.5, 4]));
  }

  for (const hive of spots) {
    const [x, y] = hive.spot;
    shapes.push(...stateMarkShapes(hive.state, x - edge / 2, y - edge / 2, edge));
    const room = besideOf(
      hive.spot,
      spots.map((one) => one.spot),
      edge,
    );
    const { text, size } = fitLabel(hive.label, Math.max(8, Math.min(largestMark * 0.61, edge * 0.75)), room);
    const half = (text.length * size * letterWidth) / 2;
    shapes.push(
      shape('label ground', new Pen().box(x - half, y + edge / 2 + 1.5, half * 2, size).d, 'none', 'paper', 0),
    );
    labels.push({ x, y: y + edge / 2 + size, text, size, anchor: 'middle' });
  }

  shapes.push(...northArrow(width - 18, 8));
  labels.push({ x: width - 18, y: 37, text: 'N', size: 11, anchor: 'middle' });

  const metres = roundLength(70 / unitsPerMetre);
  const barY = height - 10;
  const barEnd = 14 + metres * unitsPerMetre;
  shapes.push(
    shape(
      'scale bar',
      new Pen().move(14, barY - 4).line([14, barY], [barEnd, barY], [barEnd, barY - 4]).d,
      'ink',
      'none',
      weights.inner,
    ),
  );
  labels.push({ x: barEnd + 6, y: barY, text: parameters.scaleText(metres), size: 11, anchor: 'start' });
  const places = spots.map(({ id, spot: [x, y] }) => ({ id, x, y }));
  return { width, height, shapes, labels, places };
}

/** As large as the nearest two hives allow with their labels between rows, at most `largest`. */
function hiveEdge(spots: readonly (readonly [number, number])[], largest: number): number {
  let nearest = Number.POSITIVE_INFINITY;
  spots.forEach(([ax, ay], i) => {
    for (const [bx, by] of spots.slice(i + 1)) {
      // Labels stand below, so a neighbour above or below needs nearly twice the room.
      nearest = Math.min(nearest, Math.max(Math.abs(ax - bx), Math.abs(ay - by) / 1.8));
    }
  });
  return Math.max(7, Math.min(largest, nearest * 0.8));
}

/** How wide a label may be before it meets the label of a hive beside it. */
function besideOf(
  [x, y]: readonly [number, number],
  spots: readonly (readonly [number, number])[],
  edge: number,
): number {
  const beside = spots.filter(([bx, by]) => bx !== x && Math.abs(by - y) < edge * 1.6).map(([bx]) => Math.abs(bx - x));
  return Math.min(...beside, 2 * x, 2 * (width - x)) * 0.95;
}

/** A label too wide is written smaller, and then without its beginning: the end is what tells two labels apart. */
function fitLabel(label: string, size: number, room: number): { text: string; size: number } {
  const fitting = room / (label.length * letterWidth);
  if (fitting >= size) return { text: label, size };
  if (fitting >= 6) return { text: label, size: fitting };
  const letters = Math.max(1, Math.floor(room / (7 * letterWidth)) - 1);
  return { text: `…${label.slice(-letters)}`, size: 7 };
}

/** The largest of 1, 2, 5, 10, 20, 50, ... metres that is not longer. */
function roundLength(metres: number): number {
  const power = 10 ** Math.floor(Math.log10(metres));
  const step = [5, 2, 1].find((one) => one * power <= metres) ?? 1;
  return step * power;
}

function northArrow(x: number, y: number): Shape[] {
  const arrow = new Pen()
    .move(x, y)
    .line([x - 5, y + 18], [x, y + 14], [x + 5, y + 18])
    .close();
  return [shape('north', arrow.d, 'ink', 'ink', weights.inner)];
}
