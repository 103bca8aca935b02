import type { SourcedValue } from '@combside/sources/sourced-value';

/**
 * Which wall of a cell is seen from where. A cell rises from its base to its mouth, so the lower wall is seen only by
 * looking down into it: from the side of the top bar, when the comb hangs as in the hive.
 */
export interface CellShape {
  /** Inner width across the cell, mm. */
  readonly width: number;
  /** From mouth to base, mm. */
  readonly depth: number;
  /** How far the cell rises from base to mouth, degrees. */
  readonly tilt: number;
}

/** Half of a comb 21 to 24 mm thick. */
export const cellDepth: SourcedValue = {
  value: 11.5,
  low: 10.5,
  high: 12,
  unit: 'mm',
  standing: 'arithmetic',
  sources: ['SM76'],
};

export const cellTilt: SourcedValue = {
  value: 10,
  low: 9,
  high: 14,
  unit: 'degrees',
  standing: 'published',
  sources: ['TILT'],
};

/** A worker cell: 5.2 mm wide (SM76), as deep as half a comb, rising as published. */
export const workerCell: CellShape = { width: 5.2, depth: cellDepth.value, tilt: cellTilt.value };

const degrees = 180 / Math.PI;

function check(shape: CellShape): void {
  if (!(shape.width > 0 && shape.depth > 0 && shape.tilt >= 0 && shape.tilt < 45)) {
    throw new RangeError(
      `a cell ${shape.width} mm wide, ${shape.depth} mm deep, tilted ${shape.tilt} degrees cannot be: give lengths above 0 and a tilt from 0 to 45`,
    );
  }
}

/**
 * The steepest view, in degrees from the perpendicular of the comb face toward the top bar, at which the lower wall is
 * still seen as far in as the given part of its depth.
 *
 * @param part of the depth to be seen, in (0, 1]; 1 is the whole wall down to the base
 * @throws RangeError when the shape or the part cannot be
 */
export function viewAngleFor(part: number, shape: CellShape = workerCell): number {
  check(shape);
  if (!(part > 0 && part <= 1)) throw new RangeError(`part ${part} of the depth must lie in (0, 1]`);
  return Math.atan(shape.width / (shape.depth * part)) * degrees + shape.tilt;
}

/**
 * How much of the lower wall is in view, from the mouth inward.
 *
 * @param angle degrees from the perpendicular of the comb face; positive toward the top bar, negative away from it;
 *   strictly between -90 and 90
 * @returns part of the depth, 0 (hidden) to 1
 * @throws RangeError when the angle or the shape cannot be
 */
export function lowerWallInView(angle: number, shape: CellShape = workerCell): number {
  check(shape);
  if (!(angle > -90 && angle < 90)) throw new RangeError(`view angle ${angle} must lie between -90 and 90 degrees`);
  const aboveAxis = angle - shape.tilt;
  if (aboveAxis <= 0) return 0;
  return Math.min(1, shape.width / Math.tan(aboveAxis / degrees) / shape.depth);
}
