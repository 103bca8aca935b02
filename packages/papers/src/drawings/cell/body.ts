import type { CellSectionParameters } from '../cell-section-parameters.ts';
import { type Shape, shape, weights } from '../drawing.ts';
import { colourOf, lineUpon } from './outline.ts';

/** The body of the brood in its colour. */
export const body = (cell: CellSectionParameters, d: string): Shape =>
  shape('body', d, 'ink', colourOf(cell), weights.inner);

/** Lines upon the body, such as the bounds of its segments. */
export const mark = (cell: CellSectionParameters, d: string, weight: number = weights.inner): Shape =>
  shape('mark', d, lineUpon(colourOf(cell)), 'none', weight);
