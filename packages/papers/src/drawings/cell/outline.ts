import type { CellSectionParameters } from '../cell-section-parameters.ts';

/*
 * The cell in section. Own coordinates of one cell: u runs from the mouth (0) to the base (34), v from the upper wall
 * (0) to the lower wall (18). The cell is then turned by 11 degrees, since cells rise from base to mouth: 9 to 13
 * degrees (The Beekeeper's Handbook and Winston, The Biology of the Honey Bee p. 81, both as quoted by TILT in
 * packages/sources). Width to depth is drawn 1 : 1.9 where nature has about 1 : 2.2, so that the content shows at 40 px.
 */

/** From the mouth to the tip of the base. */
export const depth = 34;

/** From the upper wall to the lower. */
export const width = 18;

/** By how many degrees the mouth lies higher than the base. */
export const tilt = 11;

/** A point (u, v) in a cell's own coordinates. */
export type CellPoint = readonly [u: number, v: number];

/** Colour of the brood in a cell. */
export type BroodColour = NonNullable<CellSectionParameters['colour']>;

/** Colour of the brood in a cell; pearl unless something else is said. */
export const colourOf = (cell: CellSectionParameters): BroodColour => cell.colour ?? 'pearl';

/** Lines upon a body: dark bodies need light lines. */
export const lineUpon = (colour: BroodColour): 'ink' | 'paper' =>
  colour === 'dark' || colour === 'brown' ? 'paper' : 'ink';
