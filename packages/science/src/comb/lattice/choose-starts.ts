/** Which of several possible lattices a picture shows: the one whose trial patches hold the most ground, then its rivals. */
import { polygonTest } from '../photograph/polygon.ts';
import { growLattice } from './lattice-growth.ts';
import { agreeingStarts, type LatticeStart, type StartLevel } from './lattice-start.ts';

/** The starts whose middle lies in the region; all when none does, for a tile may be larger than the region. */
export function startsIn(
  starts: LatticeStart[],
  region: readonly (readonly [number, number])[] | undefined,
  scale: number,
): LatticeStart[] {
  if (!region) return starts;
  const inside = polygonTest(region);
  const within = starts.filter(({ x, y }) => inside((x + 0.5) / scale - 0.5, (y + 0.5) / scale - 0.5));
  return within.length > 0 ? within : starts;
}

/**
 * Grows a trial patch from the first starts of each group; the group whose patches hold the most ground comes first, then
 * its rivals.
 */
export function chooseStarts(
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

export function scaled(start: LatticeStart, by: number): LatticeStart {
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
