/**
 * A small line drawing as plain values: no DOM, no PDF. A screen renders it as SVG, a paper into PDF.
 * The origin is at the upper left, x to the right, y down.
 */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  /** In the order in which they are painted. */
  readonly shapes: readonly Shape[];
  readonly labels: readonly Label[];
}

/** What a line is drawn with. `paper` is the ground's colour, for marks upon something dark. */
export type Ink = 'ink' | 'faint' | 'paper' | 'none';

/** What a shape is filled with: the colours of brood, the contents of cells, or the state of a colony. */
export type Wash =
  | 'none'
  | 'ink'
  | 'paper'
  | 'wax'
  | 'darkened wax'
  | 'pearl'
  | 'yellow'
  | 'brown'
  | 'dark'
  | 'white'
  | 'grey'
  | 'pollen'
  | 'nectar'
  | 'mite'
  | 'signs seen'
  | 'suspect';

export interface Shape {
  /** SVG path, absolute commands M, L, C and Z only, in the drawing's own units. */
  readonly d: string;
  readonly stroke: Ink;
  readonly fill: Wash;
  /**
   * Line weight in pixels on a screen, whatever the size of the drawing (`vector-effect: non-scaling-stroke`): a line
   * thinned with its drawing would be lost at 40 px. On paper one pixel of weight is 0.45 pt.
   */
  readonly weight: number;
  /** Dash lengths in the same pixels; absent for an unbroken line. */
  readonly dash?: readonly number[];
  /** What the shape is, so that a test or a screen can find it: "capping", "scale", "hive". */
  readonly role: string;
}

/** Writing inside a drawing: a colony's label on a plan. `size` is the letter height in the drawing's own units. */
export interface Label {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** A main line, a line within a thing, and the thread-thin lines. */
export const weights = { main: 2, inner: 1.25, hair: 0.9 } as const;

/** Makes a shape of a path: what it is, its line, its filling and the weight of its line; dashed when dashes are given. */
export function shape(
  role: string,
  d: string,
  stroke: Ink,
  fill: Wash,
  weight: number,
  dash?: readonly number[],
): Shape {
  return dash ? { d, stroke, fill, weight, role, dash } : { d, stroke, fill, weight, role };
}
