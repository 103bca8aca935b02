import { type Drawing, type Shape, shape, weights } from './drawing.ts';
import { Pen, type Point } from './pen.ts';

/** One side of a comb as it hangs in the hive. Shares are of the comb's area, each from 0 to 1, together at most 1. */
export interface CombSideParameters {
  readonly brood: number;
  /** Share of the brood that is sealed, 0 to 1; the sealed part is drawn in the middle. Absent: not stated. */
  readonly sealed?: number;
  readonly pollen: number;
  readonly honey: number;
  /** Share of this side that was looked at, 0 to 1. Default 1. */
  readonly seen?: number;
}

// A deep frame, 2 : 1, in its own units; the top bar stands out with its lugs.
const left = 8;
const right = 112;
const top = 12;
const bottom = 60;
const centre: Point = { x: 60, y: 40 };
// The brood nest of a wide frame is wider than high.
const flattening = 0.58;
const steps = 240;

/**
 * Draws a comb side: an oval of brood, an arc of pollen over it, honey above, each as large as its share of the comb.
 *
 * @throws RangeError when a share is not between 0 and 1, or they come to more than the whole comb
 */
export function drawCombSide(parameters: CombSideParameters): Drawing {
  const { brood, pollen, honey, sealed = 0, seen = 1 } = parameters;
  for (const [name, share] of Object.entries({ brood, pollen, honey, sealed, seen })) {
    if (!(share >= 0 && share <= 1)) throw new RangeError(`the share of ${name} is ${share}; give 0 to 1`);
  }
  if (brood + pollen + honey > 1 + 1e-9) {
    throw new RangeError(`brood, pollen and honey come to ${brood + pollen + honey} of the comb; at most 1`);
  }
  const whole = (right - left) * (bottom - top);
  const shapes: Shape[] = [shape('comb', new Pen().box(left, top, right - left, bottom - top).d, 'none', 'paper', 0)];

  // Pollen lies over the brood; where the upper side has no room left it goes on round.
  const broodReach = reachFor(brood * whole, full);
  const pollenSpan = wideEnough(broodReach, pollen * whole);
  const pollenReach = reachFor(area(broodReach, pollenSpan) + pollen * whole, pollenSpan);
  const nest = directions(full).map((angle) => pointAt(angle, within(angle, pollenSpan) ? pollenReach : broodReach));

  // Honey fills what is left from the top bar down. It is painted first, so that the nest lies upon it.
  if (honey > 0) {
    const level = honeyLevel(honey * whole, nest);
    shapes.push(shape('honey', new Pen().box(left, top, right - left, level - top).d, 'ink', 'nectar', weights.inner));
  }
  if (pollen > 0) {
    shapes.push(shape('pollen', bandPath(broodReach, pollenReach, pollenSpan), 'ink', 'pollen', weights.inner));
  }
  if (brood > 0) shapes.push(shape('brood', outlinePath(broodReach), 'ink', 'wax', weights.inner));
  if (brood > 0 && sealed > 0) {
    const sealedReach = reachFor(brood * sealed * whole, full);
    shapes.push(shape('sealed brood', outlinePath(sealedReach), 'ink', 'darkened wax', weights.inner));
  }

  if (seen < 1) {
    const from = left + (right - left) * seen;
    shapes.push(shape('unseen', new Pen().box(from, top, right - from, bottom - top).d, 'none', 'paper', 0));
    shapes.push(shape('unseen', hatch(from, right), 'faint', 'none', weights.inner));
    shapes.push(
      shape('unseen', new Pen().move(from, top).line([from, bottom]).d, 'ink', 'none', weights.inner, [4, 3]),
    );
  }
  shapes.push(shape('frame', new Pen().box(left, top, right - left, bottom - top).d, 'ink', 'none', weights.main));
  shapes.push(shape('top bar', new Pen().box(0.5, top - 5, 119, 5).d, 'ink', 'paper', weights.main));
  return { width: 120, height: 64, shapes, labels: [] };
}

/** Directions from the middle of the nest within which something lies: `half` on each side of straight up, in radians. */
interface Span {
  readonly half: number;
}

const full: Span = { half: Math.PI };

const within = (angle: number, span: Span): boolean => Math.abs(angle) <= span.half;

/** How far down honey reaches so that, outside the nest, it covers that area; by halving. */
function honeyLevel(wanted: number, nest: readonly (readonly [number, number])[]): number {
  let low = top;
  let high = bottom;
  for (let i = 0; i < 50; i += 1) {
    const middle = (low + high) / 2;
    if ((right - left) * (middle - top) - areaAbove(nest, middle) < wanted) low = middle;
    else high = middle;
  }
  return high;
}

/** Area of that part of a polygon which lies above a level. */
function areaAbove(polygon: readonly (readonly [number, number])[], level: number): number {
  const kept: [number, number][] = [];
  polygon.forEach(([ax, ay], index) => {
    const [bx, by] = polygon[(index + 1) % polygon.length] as readonly [number, number];
    if (ay <= level) kept.push([ax, ay]);
    if (ay <= level !== by <= level) kept.push([ax + ((level - ay) / (by - ay)) * (bx - ax), level]);
  });
  return areaOf(kept);
}

/** Area inside a polygon (shoelace rule). */
function areaOf(polygon: readonly (readonly [number, number])[]): number {
  let twice = 0;
  polygon.forEach(([ax, ay], index) => {
    const [bx, by] = polygon[(index + 1) % polygon.length] as readonly [number, number];
    twice += ax * by - bx * ay;
  });
  return Math.abs(twice) / 2;
}

/** How far the comb goes from the nest's middle in a direction (0 is up, clockwise), in flattened units. */
function edge(angle: number): number {
  const dx = Math.sin(angle);
  const dy = -Math.cos(angle) * flattening;
  const across = dx > 0 ? (right - centre.x) / dx : dx < 0 ? (left - centre.x) / dx : Number.POSITIVE_INFINITY;
  const along = dy > 0 ? (bottom - centre.y) / dy : dy < 0 ? (top - centre.y) / dy : Number.POSITIVE_INFINITY;
  return Math.min(across, along);
}

function pointAt(angle: number, reach: number): [number, number] {
  const r = Math.min(reach, edge(angle));
  return [centre.x + Math.sin(angle) * r, centre.y - Math.cos(angle) * flattening * r];
}

function directions(span: Span): number[] {
  return Array.from({ length: steps + 1 }, (_, index) => -span.half + (2 * span.half * index) / steps);
}

/** Area of the sector of that reach, cut at the comb's edge. */
function area(reach: number, span: Span): number {
  return areaOf([[centre.x, centre.y], ...directions(span).map((angle) => pointAt(angle, reach))]);
}

/** The reach whose sector has that area, by halving. */
function reachFor(wanted: number, span: Span): number {
  let low = 0;
  let high = 120;
  for (let i = 0; i < 50; i += 1) {
    const middle = (low + high) / 2;
    if (area(middle, span) < wanted) low = middle;
    else high = middle;
  }
  return high;
}

/** The narrowest span about straight up, from a little below level, that has room for that area beyond the reach. */
function wideEnough(reach: number, wanted: number): Span {
  for (let degrees = 105; degrees < 180; degrees += 5) {
    const span = { half: (degrees * Math.PI) / 180 };
    if (area(Number.POSITIVE_INFINITY, span) - area(reach, span) >= wanted * 1.02) return span;
  }
  return full;
}

function outlinePath(reach: number): string {
  const points = directions(full).map((angle) => pointAt(angle, reach));
  return new Pen()
    .move(...(points[0] as [number, number]))
    .line(...points.slice(1))
    .close().d;
}

function bandPath(inner: number, outer: number, span: Span): string {
  const outside = directions(span).map((angle) => pointAt(angle, outer));
  const inside = directions(span)
    .map((angle) => pointAt(angle, inner))
    .reverse();
  return new Pen()
    .move(...(outside[0] as [number, number]))
    .line(...outside.slice(1), ...inside)
    .close().d;
}

function hatch(from: number, to: number): string {
  const pen = new Pen();
  const height = bottom - top;
  for (let foot = from - height; foot < to; foot += 6) {
    // A line rising to the right from the lower edge, cut at both sides of the unseen part.
    const startX = Math.max(foot, from);
    const endX = Math.min(foot + height, to);
    if (endX > startX) pen.move(startX, bottom - (startX - foot)).line([endX, bottom - (endX - foot)]);
  }
  return pen.d;
}
