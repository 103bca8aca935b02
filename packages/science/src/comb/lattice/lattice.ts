/** Finds the whole lattice of a picture: start, choice among rival starts, growth in pieces, pruning and smoothing. */

import { type Picture, type Plane, shrinkToGrey } from '../photograph/picture.ts';
import { type GrowthPlanes, growLattice, type LatticeCell, neighbourSteps, PlaceIndex } from './lattice-growth.ts';
import { reachOn } from './lattice-reach.ts';
import { agreeingStarts, type LatticeStart, latticeStarts, type StartLevel } from './lattice-start.ts';
import { solveEquations } from './linear-equations.ts';
import { evenOut, wallPlane } from './wall-plane.ts';

/** A found lattice. All lengths in pixels of the picture given. */
export interface Lattice {
  readonly cells: LatticeCell[];
  /** Middle pitch of the seen cells; 0 when there are none. */
  readonly pitch: number;
}

/** What `findLattice` may be told. */
export interface LatticeOptions {
  /** Only cells whose centre lies in this polygon are looked for (picture pixels, three corners or more). */
  readonly region?: readonly (readonly [number, number])[] | undefined;
  readonly checkpoint?: (() => void) | undefined;
  /** What `overviewOf` gave, where the caller has it already. */
  readonly grey?: Plane | undefined;
  /** 0 for the likeliest start, 1 for the next rival, when what the first led to proved no comb. */
  readonly attempt?: number | undefined;
  /** Kept between looks at one picture, by the width of the plane: the starts are the same, whatever the region. */
  readonly known?: Map<number, ReturnType<typeof latticeStarts>> | undefined;
}

/** Pitch of the plane on which the lattice is grown: fine enough for a centre to 0.03 pitch, small enough to be quick. */
const workingPitch = 15;
const mostCells = 20_000;

/** The picture's brightness, no more than 1500 pixels across. */
export function overviewOf(picture: Picture): Plane {
  const longest = Math.max(picture.width, picture.height);
  return shrinkToGrey(picture, longest > 1500 ? 1400 / longest : 1);
}

/**
 * Finds the honeycomb lattice in a picture: any rotation, tilt to 35 degrees, pitch from 7 pixels.
 *
 * @returns the cells whose whole mouth is inside the picture, empty when no honeycomb is seen
 */
export function findLattice(picture: Picture, options: LatticeOptions = {}): Lattice {
  const checkpoint = options.checkpoint ?? (() => {});
  // A comb is some eighty cells wide, so 1400 pixels across show a start unless the comb is far away in a large picture.
  const longest = Math.max(picture.width, picture.height);
  const first = options.grey ?? overviewOf(picture);
  for (const grey of [first, undefined]) {
    const plane = grey ?? shrinkToGrey(picture, Math.min(1, 3200 / longest));
    if (!grey && plane.width === first.width) break;
    checkpoint();
    const found = options.known?.get(plane.width) ?? latticeStarts(plane, 8, checkpoint);
    options.known?.set(plane.width, found);
    const { starts: everywhere, levels } = found;
    const starts = startsIn(everywhere, options.region, plane.width / picture.width);
    const best = chooseStarts(levels, starts, checkpoint)[options.attempt ?? 0];
    if (best) return growAll(picture, best, levels, plane.width / picture.width, options, checkpoint);
  }
  return { cells: [], pitch: 0 };
}

/** The starts whose middle lies in the region; all when none does, for a tile may be larger than the region. */
function startsIn(starts: LatticeStart[], region: LatticeOptions['region'], scale: number): LatticeStart[] {
  if (!region) return starts;
  const inside = polygonTest(region);
  const within = starts.filter(({ x, y }) => inside((x + 0.5) / scale - 0.5, (y + 0.5) / scale - 0.5));
  return within.length > 0 ? within : starts;
}

/**
 * Grows a trial patch from the first starts of each group; the group whose patches hold the most ground comes first, then
 * its rivals.
 */
function chooseStarts(
  levels: readonly StartLevel[],
  starts: readonly LatticeStart[],
  checkpoint: () => void,
): { group: LatticeStart[]; support: number }[] {
  const trials: { group: LatticeStart[]; support: number }[] = [];
  for (const group of agreeingStarts(starts, 12)) {
    let support = 0;
    for (const start of group.slice(0, 3)) {
      let number = 0;
      while (number + 1 < levels.length && start.pitch / 2 ** (number + 1) >= 8.5) number++;
      const level = levels[number] as StartLevel;
      const { enlarge } = level;
      const { width, height } = level.walls;
      const cells = growLattice(level, scaled(start, 1 / enlarge), {
        allowed: (x, y) => x >= 0 && y >= 0 && x < width && y < height,
        mostCells: 160,
        checkpoint,
      });
      let ground = 0;
      for (const cell of cells) {
        if (cell.seen > 0) ground += cell.seen * Math.abs(cell.ax * cell.by - cell.ay * cell.bx) * enlarge * enlarge;
        else ground -= 0.08 * Math.abs(cell.ax * cell.by - cell.ay * cell.bx) * enlarge * enlarge;
      }
      // Ground alone favours coarse lattices and count alone fine ones: many cells and much ground are both wanted.
      const seen = cells.filter((cell) => cell.seen > 0).length;
      if (seen >= 7) support = Math.max(support, ground * Math.min(1, seen / 25));
    }
    if (support > 0) trials.push({ group, support });
  }
  // A lattice also holds finer ones (its harmonics) but never coarser ones: a coarser rival needs less support.
  let best: { group: LatticeStart[]; support: number } | undefined;
  for (const trial of trials) {
    if (!best) best = trial;
    else {
      const ratio = (trial.group[0] as LatticeStart).pitch / (best.group[0] as LatticeStart).pitch;
      const need = ratio > 1.5 ? 0.3 : ratio < 0.67 ? 3.3 : 1;
      if (trial.support > need * best.support) best = trial;
    }
  }
  if (!best) return [];
  const first = best;
  // Rivals: other pitches, the best supported first.
  const rivals = trials
    .filter(
      (trial) =>
        Math.abs(Math.log((trial.group[0] as LatticeStart).pitch / (first.group[0] as LatticeStart).pitch)) > 0.2,
    )
    .sort((one, other) => other.support - one.support);
  return [first, ...rivals];
}

function scaled(start: LatticeStart, by: number): LatticeStart {
  return {
    ...start,
    x: (start.x + 0.5) * by - 0.5,
    y: (start.y + 0.5) * by - 0.5,
    ax: start.ax * by,
    ay: start.ay * by,
    bx: start.bx * by,
    by: start.by * by,
    pitch: start.pitch * by,
  };
}

function growAll(
  picture: Picture,
  best: { group: LatticeStart[] },
  levels: readonly StartLevel[],
  startScale: number,
  options: LatticeOptions,
  checkpoint: () => void,
): Lattice {
  const pitches = best.group.map((start) => start.pitch / startScale).sort((a, b) => a - b);
  const pitch = pitches[pitches.length >> 1] as number;
  // A level of the start whose cells are about this size has the planes already.
  const level = levels.find(({ enlarge }) => {
    const there = (pitch * startScale) / enlarge;
    return there > 0.8 * workingPitch && there < 1.27 * workingPitch;
  });
  const planes = level ?? workingPlanes(picture, pitch);
  const { width, height } = planes.walls;
  const ratioX = level ? startScale / level.enlarge : width / picture.width;
  const ratioY = level ? ratioX : height / picture.height;
  const scale = ratioX;
  checkpoint();

  const inRegion = options.region
    ? polygonTest(options.region.map(([x, y]) => [(x + 0.5) * ratioX - 0.5, (y + 0.5) * ratioY - 0.5]))
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

function workingPlanes(picture: Picture, pitch: number): GrowthPlanes {
  const scale = Math.min(1, workingPitch / pitch);
  const grey = shrinkToGrey(picture, scale);
  const radius = Math.max(5, Math.round(pitch * scale * 0.9));
  return { walls: wallPlane(grey, radius), tone: evenOut(grey, radius, 4) };
}

/**
 * Takes away what is not held by seen cells: lone seen cells, and extrapolated ones that do not lie among seen cells on
 * several sides.
 */
function prune(cells: LatticeCell[], inPicture: (x: number, y: number) => boolean): LatticeCell[] {
  const byKey = new Map(cells.map((cell) => [cellKey(cell.column, cell.row), cell]));
  for (;;) {
    const before = byKey.size;
    for (const cell of [...byKey.values()]) {
      let seenAround = 0;
      let outside = 0;
      const sides = new Set<number>();
      neighbourSteps.forEach(([dc, dr], side) => {
        const near = byKey.get(cellKey(cell.column + dc, cell.row + dr));
        if (near && near.seen > 0) seenAround++;
        if (!inPicture(cell.x + dc * cell.ax + dr * cell.bx, cell.y + dc * cell.ay + dr * cell.by)) outside++;
        for (let k = 1; k <= 4; k++) {
          const along = byKey.get(cellKey(cell.column + k * dc, cell.row + k * dr));
          if (along && along.seen > 0) {
            sides.add(side);
            break;
          }
        }
      });
      // A place at the edge of the picture cannot have cells on all sides; one at the edge of the comb must have been seen.
      const held =
        cell.seen > 0
          ? seenAround >= 2 && sides.size >= 2
          : seenAround >= 3 || sides.size >= 4 || (outside > 0 && seenAround >= 1 && sides.size + outside >= 5);
      if (!held) byKey.delete(cellKey(cell.column, cell.row));
    }
    if (byKey.size === before) break;
  }
  return [...byKey.values()];
}

function cellKey(column: number, row: number): number {
  return (column + 4096) * 8192 + row + 4096;
}

/** Moves every cell part of the way to where a curved (quadratic) fit of its neighbourhood puts it; less when well seen. */
function smooth(cells: LatticeCell[]): LatticeCell[] {
  const byKey = new Map(cells.map((cell) => [cellKey(cell.column, cell.row), cell]));
  // Unknowns: 1, dc, dr, dc^2, dc dr, dr^2.
  const normal = new Float64Array(36);
  const tx = new Float64Array(6);
  const ty = new Float64Array(6);
  const basis = new Float64Array(6);
  return cells.map((cell) => {
    normal.fill(0);
    tx.fill(0);
    ty.fill(0);
    let count = 0;
    for (let dr = -3; dr <= 3; dr++) {
      for (let dc = Math.max(-3, -3 - dr); dc <= Math.min(3, 3 - dr); dc++) {
        const near = byKey.get(cellKey(cell.column + dc, cell.row + dr));
        if (!near) continue;
        const w = near.seen > 0 ? near.seen : 0.02;
        if (near.seen > 0) count++;
        basis[0] = 1;
        basis[1] = dc;
        basis[2] = dr;
        basis[3] = dc * dc;
        basis[4] = dc * dr;
        basis[5] = dr * dr;
        for (let i = 0; i < 6; i++) {
          const wi = w * (basis[i] as number);
          for (let j = 0; j < 6; j++) normal[i * 6 + j] = (normal[i * 6 + j] as number) + wi * (basis[j] as number);
          tx[i] = (tx[i] as number) + wi * near.x;
          ty[i] = (ty[i] as number) + wi * near.y;
        }
      }
    }
    if (count < 9) return cell;
    for (let i = 3; i < 6; i++) normal[i * 7] = (normal[i * 7] as number) + 1.5;
    const px = solveEquations(normal, tx);
    const py = solveEquations(normal, ty);
    if (!px || !py) return cell;
    const trust = cell.seen / (cell.seen + 0.45);
    return {
      ...cell,
      x: cell.x * trust + (px[0] as number) * (1 - trust),
      y: cell.y * trust + (py[0] as number) * (1 - trust),
      ax: px[1] as number,
      ay: py[1] as number,
      bx: px[2] as number,
      by: py[2] as number,
    };
  });
}

/** Middle of the cells' local pitch (side of the regular lattice with the same area per cell); 0 without cells. */
export function middlePitch(cells: readonly LatticeCell[]): number {
  const pitches = cells
    .filter((cell) => cell.seen > 0)
    .map((cell) => Math.sqrt(Math.abs(cell.ax * cell.by - cell.ay * cell.bx) / 0.8660254))
    .sort((a, b) => a - b);
  return pitches.length > 0 ? (pitches[pitches.length >> 1] as number) : 0;
}

/** Tells whether a point lies in a polygon (even-odd rule). */
export function polygonTest(corners: readonly (readonly [number, number])[]): (x: number, y: number) => boolean {
  if (corners.length < 3) throw new RangeError(`a region needs three corners or more, got ${corners.length}`);
  return (x, y) => {
    let inside = false;
    for (let i = 0, j = corners.length - 1; i < corners.length; j = i++) {
      const [xi, yi] = corners[i] as readonly [number, number];
      const [xj, yj] = corners[j] as readonly [number, number];
      if (yi > y !== yj > y && x < ((xj - xi) * (y - yi)) / (yj - yi) + xi) inside = !inside;
    }
    return inside;
  };
}
