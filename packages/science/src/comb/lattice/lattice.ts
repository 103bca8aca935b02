/** Finds the whole lattice of a picture: start, choice among rival starts, growth in pieces, pruning and smoothing. */
import type { GreyPyramid } from '../photograph/grey-pyramid.ts';
import type { Plane } from '../photograph/picture.ts';
import { polygonTest } from '../photograph/polygon.ts';
import { chooseStarts, scaled, startsIn } from './choose-starts.ts';
import { type LatticeCell, middlePitch } from './lattice-cell.ts';
import { growLattice } from './lattice-growth.ts';
import { reachOn } from './lattice-reach.ts';
import { type LatticeStart, latticeStarts, type StartLevel } from './lattice-start.ts';
import type { GrowthPlanes } from './phases.ts';
import { PlaceIndex } from './place-index.ts';
import { prune, smooth } from './settle-lattice.ts';
import { evenOut, wallPlane } from './wall-plane.ts';

/** A found lattice. All lengths in pixels of the picture given. */
export interface Lattice {
  readonly cells: LatticeCell[];
  /** Middle pitch of the seen cells; 0 when there are none. */
  readonly pitch: number;
}

type Region = readonly (readonly [number, number])[];

/** Pitch of the plane on which the lattice is grown: fine enough for a centre to 0.03 pitch, small enough to be quick. */
const workingPitch = 15;
const mostCells = 20_000;

/**
 * Looks for the honeycomb lattices of one photograph: any rotation, tilt to 35 degrees, pitch from 7 pixels. Where lattices
 * start is looked for once, whatever the region.
 *
 * @param checkpoint called now and then; throw from it to stop
 * @returns a function that gives the lattices of a region (corners in picture pixels, three or more; without it the whole
 *   picture), the likeliest first, each grown when it is asked for; then its rivals, for when the first proves no comb.
 *   Of each, the cells whose whole mouth is inside the picture. Nothing when no honeycomb is seen.
 */
export function latticesOf(
  pyramid: GreyPyramid,
  checkpoint: () => void = () => {},
): (region?: Region) => Generator<Lattice, void> {
  const startsOn = onceEach((plane: Plane) => latticeStarts(pyramid, plane, 8, checkpoint));
  return function* lattices(region) {
    const scaleOf = (plane: Plane): number => plane.width / pyramid.picture.width;
    const likeliestOn = onceEach((plane: Plane) => {
      checkpoint();
      const { starts, levels } = startsOn(plane);
      return chooseStarts(levels, startsIn(starts, region, scaleOf(plane)), checkpoint);
    });
    for (let rival = 0; ; rival++) {
      let plane = pyramid.overview;
      let start = likeliestOn(plane)[rival];
      if (!start) {
        // The comb may be far away in a large picture.
        plane = pyramid.fine;
        start = likeliestOn(plane)[rival];
      }
      if (!start) return;
      yield growAll(pyramid, start, startsOn(plane).levels, scaleOf(plane), region, checkpoint);
    }
  };
}

/** The same answer for the same plane, worked out once. */
function onceEach<Answer>(answer: (plane: Plane) => Answer): (plane: Plane) => Answer {
  const known = new Map<Plane, Answer>();
  return (plane) => {
    let own = known.get(plane);
    if (!own) {
      own = answer(plane);
      known.set(plane, own);
    }
    return own;
  };
}

/** Grows the whole lattice from agreeing starts, in as many pieces as never meet. */
function growAll(
  pyramid: GreyPyramid,
  best: { group: LatticeStart[] },
  levels: readonly StartLevel[],
  startScale: number,
  region: Region | undefined,
  checkpoint: () => void,
): Lattice {
  const { picture } = pyramid;
  const pitches = best.group.map((start) => start.pitch / startScale).sort((a, b) => a - b);
  const pitch = pitches[pitches.length >> 1] as number;
  // A level of the start whose cells are about this size has the planes already.
  const level = levels.find(({ enlarge }) => {
    const there = (pitch * startScale) / enlarge;
    return there > 0.8 * workingPitch && there < 1.27 * workingPitch;
  });
  const planes = level ?? workingPlanes(pyramid, pitch);
  const { width, height } = planes.walls;
  const ratioX = level ? startScale / level.enlarge : width / picture.width;
  const ratioY = level ? ratioX : height / picture.height;
  const scale = ratioX;
  checkpoint();

  const inRegion = region
    ? polygonTest(region.map(([x, y]) => [(x + 0.5) * ratioX - 0.5, (y + 0.5) * ratioY - 0.5]))
    : () => true;
  const allowed = (x: number, y: number): boolean =>
    x > -0.5 && y > -0.5 && x < width - 0.5 && y < height - 0.5 && inRegion(x, y);

  const working = pitch * scale;
  const pieces: LatticeCell[][] = [];
  const index = new PlaceIndex(working * 1.5);
  const seeds = best.group.map((start) => scaled(start, scale / startScale));
  for (const seed of seeds) {
    if (index.nearest(seed.x, seed.y) < working * 1.2) continue;
    const cells = prune(
      growLattice(planes, seed, { allowed, mostCells, checkpoint }, (x, y, p) => index.nearest(x, y) < 0.6 * p),
      allowed,
    );
    if (cells.filter((cell) => cell.seen > 0).length < 12) continue;
    for (const cell of cells) index.add(cell.x, cell.y);
    pieces.push(cells);
    if (pieces.length >= 6) break;
  }
  pieces.sort((one, other) => other.length - one.length);
  pieces.forEach((piece, n) => {
    const reached = reachOn(planes, piece, allowed, (x, y, p) => index.nearest(x, y) < 0.6 * p, checkpoint);
    for (const cell of reached.slice(piece.length)) index.add(cell.x, cell.y);
    pieces[n] = reached;
  });

  const cells: LatticeCell[] = [];
  pieces.forEach((piece, number) => {
    for (const cell of smooth(piece)) {
      // A cell cut by the edge of the picture is not a cell that can be read.
      const margin = 0.45 * Math.sqrt(Math.abs(cell.ax * cell.by - cell.ay * cell.bx) / 0.8660254);
      if (cell.x < margin || cell.y < margin || cell.x > width - 1 - margin || cell.y > height - 1 - margin) {
        continue;
      }
      cells.push({
        // Pieces that never met keep lattice coordinates far apart, so that no cell is taken for another's neighbour.
        column: cell.column + number * 10_000,
        row: cell.row,
        x: (cell.x + 0.5) / ratioX - 0.5,
        y: (cell.y + 0.5) / ratioY - 0.5,
        ax: cell.ax / ratioX,
        ay: cell.ay / ratioY,
        bx: cell.bx / ratioX,
        by: cell.by / ratioY,
        seen: cell.seen,
      });
    }
  });
  return { cells, pitch: middlePitch(cells) };
}

function workingPlanes(pyramid: GreyPyramid, pitch: number): GrowthPlanes {
  const scale = Math.min(1, workingPitch / pitch);
  const grey = pyramid.at(scale);
  const radius = Math.max(5, Math.round(pitch * scale * 0.9));
  return { walls: wallPlane(grey, radius), tone: evenOut(grey, radius, 4) };
}
