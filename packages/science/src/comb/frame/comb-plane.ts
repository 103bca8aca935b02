/** Which plane a reading stands on: corners a person set, corners found, or the lattice itself; and when found ones go. */

import { type LatticeCell, pitchOf } from '../lattice/lattice-cell.ts';
import { polygonTest } from '../photograph/polygon.ts';
import { isQuadrilateral, planeOfCorners, planeOfLattice, tiltDegrees } from './frame-plane.ts';

type Point = readonly [number, number];
type Size = { readonly width: number; readonly height: number };

/** What a plane follows from (words: `comb.plane.<id>`). */
export type PlaneSource = 'corners-set' | 'corners-found' | 'lattice';

/** The plane of the comb in the picture. */
export interface CombPlane {
  readonly by: PlaneSource;
  /** The frame's inner corners in order round it, pixels of the picture given; null when the lattice is all there is. */
  readonly corners: readonly Point[] | null;
  /** First and second side of the opening in cell pitches, as the cells inside tell them; null without corners or cells. */
  readonly sides: readonly [number, number] | null;
  /**
   * Angle between comb and picture, degrees. Holds for a picture that was not cut at one side; below ten degrees it cannot
   * be told from none. Null when fewer than 30 cells were seen.
   */
  readonly tiltDegrees: number | null;
}

/** Cells further outside than this, in pitches, were not on comb if the corners are right. */
const outsideFrom = 0.3;
/** Cells surely seen that may lie a pitch or more outside the corners found: some, and a share of all. */
const mostOutside = 5;
const mostShareOutside = 0.03;
const surelySeen = 0.3;
/** How far cells may be from regular in the plane of the corners (0.2: a corner of 78 degrees). */
const mostSkew = 0.2;

/** The corners a person gave, when the region is a frame's: four points round a convex quadrilateral. */
export function cornersOfRegion(region: readonly Point[] | undefined): readonly Point[] | null {
  return region && isQuadrilateral(region) ? region : null;
}

/**
 * Tells whether the lattice speaks against corners that were found: cells surely seen beyond them, or cells that would be
 * no regular ones in their plane. Then the lattice is believed.
 */
export function latticeContradicts(corners: readonly Point[], cells: readonly LatticeCell[], size: Size): boolean {
  const sure = cells.filter((cell) => cell.seen >= surelySeen);
  const beyond = distanceBeyond(corners);
  const outside = sure.filter((cell) => beyond(cell.x, cell.y) > pitchOf(cell)).length;
  if (outside > Math.max(mostOutside, mostShareOutside * sure.length)) return true;
  if (sure.length - outside < 0.5 * sure.length) return true;
  return (planeOfCorners(corners, cells, size)?.skew ?? 0) > mostSkew;
}

/** Tells whether a place can be comb, given the corners of the frame. */
export function withinFrame(corners: readonly Point[]): (cell: LatticeCell) => boolean {
  const beyond = distanceBeyond(corners);
  return (cell) => beyond(cell.x, cell.y) <= outsideFrom * pitchOf(cell);
}

/** Corners moved outwards, so that cells whose middles lie in the frame as above lie in them. */
export function widened(corners: readonly Point[], pitch: number): readonly Point[] {
  const x = corners.reduce((sum, corner) => sum + corner[0], 0) / corners.length;
  const y = corners.reduce((sum, corner) => sum + corner[1], 0) / corners.length;
  return corners.map(([cx, cy]) => {
    const far = Math.hypot(cx - x, cy - y);
    // Along the diagonal the way is longer than across the side.
    const by = 1 + (1.4 * outsideFrom * pitch) / Math.max(1, far);
    return [x + by * (cx - x), y + by * (cy - y)] as const;
  });
}

/** The plane of a reading. */
export function combPlane(
  by: PlaneSource,
  corners: readonly Point[] | null,
  cells: readonly LatticeCell[],
  size: Size,
): CombPlane {
  if (corners) {
    const plane = planeOfCorners(corners, cells, size);
    return { by, corners, sides: plane?.sides ?? null, tiltDegrees: plane?.tiltDegrees ?? null };
  }
  const mapping = planeOfLattice(cells);
  const tilt = mapping ? tiltDegrees(mapping, (size.width - 1) / 2, (size.height - 1) / 2) : null;
  return { by, corners: null, sides: null, tiltDegrees: tilt };
}

/** How far a place lies outside a quadrilateral, pixels; 0 inside. */
function distanceBeyond(corners: readonly Point[]): (x: number, y: number) => number {
  const inside = polygonTest(corners);
  return (x, y) => {
    if (inside(x, y)) return 0;
    let nearest = Number.POSITIVE_INFINITY;
    corners.forEach(([ax, ay], n) => {
      const [bx, by] = corners[(n + 1) % corners.length] as Point;
      const length = (bx - ax) ** 2 + (by - ay) ** 2;
      const t = Math.max(0, Math.min(1, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length));
      nearest = Math.min(nearest, Math.hypot(x - ax - t * (bx - ax), y - ay - t * (by - ay)));
    });
    return nearest;
  };
}
