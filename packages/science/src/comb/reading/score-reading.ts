/** Scores a reading against known truth: painted, or labelled by eye. */
import { type CellClass, type CoarseClass, coarseClass, type DecidedClass } from '../cells/cell-classes.ts';
import type { CombCell } from '../comb-result.ts';
import { type ReadCell, readCells } from './reading.ts';

/** One true cell. */
export interface ScoredTruth {
  readonly x: number;
  readonly y: number;
  readonly pitch: number;
  /** Undefined where the label is not certain enough to score: the place counts, the class does not. */
  readonly class: CellClass | undefined;
  readonly coarse: CoarseClass;
}

export interface Score {
  /** True cells to find (not cut by the picture's edge), and how many were found within 0.3 pitch. */
  readonly wanted: number;
  readonly hit: number;
  /** The same for cells that can be seen. */
  readonly wantedVisible: number;
  readonly hitVisible: number;
  /** Found cells that are no true cell. */
  readonly false: number;
  /** Mean distance of the hits, pitches. */
  readonly offset: number;
  readonly coarse: { readonly decided: number; readonly right: number; readonly undecided: number };
  readonly fine: { readonly decided: number; readonly right: number; readonly undecided: number };
  /** Truth, then reading, then count. */
  readonly confusion: ReadonlyMap<string, number>;
  readonly coarseConfusion: ReadonlyMap<string, number>;
}

/** A cell counts as found when its centre is this near, pitches. */
const near = 0.3;

/** @param edge true when cells cut by the picture's edge are left out on both sides (0.75 pitch) */
export function scoreCells(
  cells: readonly CombCell[],
  truth: readonly ScoredTruth[],
  width: number,
  height: number,
): Score {
  const cut = (x: number, y: number, pitch: number): boolean =>
    x < 0.75 * pitch || y < 0.75 * pitch || x > width - 0.75 * pitch || y > height - 0.75 * pitch;
  const taken = new Set<number>();
  let wanted = 0;
  let hit = 0;
  let wantedVisible = 0;
  let hitVisible = 0;
  let offset = 0;
  const coarse = { decided: 0, right: 0, undecided: 0 };
  const fine = { decided: 0, right: 0, undecided: 0 };
  const confusion = new Map<string, number>();
  const coarseConfusion = new Map<string, number>();
  const side = truth.length > 0 ? Math.max(...truth.map((one) => one.pitch)) : 1;
  const bins = new Map<string, number[]>();
  cells.forEach((cell, n) => {
    const key = `${Math.floor(cell.x / side)},${Math.floor(cell.y / side)}`;
    bins.set(key, [...(bins.get(key) ?? []), n]);
  });
  for (const one of truth) {
    let best = -1;
    let distance = near * one.pitch;
    for (let oy = -1; oy <= 1; oy++) {
      for (let ox = -1; ox <= 1; ox++) {
        for (const n of bins.get(`${Math.floor(one.x / side) + ox},${Math.floor(one.y / side) + oy}`) ?? []) {
          const cell = cells[n] as CombCell;
          const d = Math.hypot(cell.x - one.x, cell.y - one.y);
          if (d < distance) {
            distance = d;
            best = n;
          }
        }
      }
    }
    if (best >= 0) taken.add(best);
    if (cut(one.x, one.y, one.pitch)) continue;
    wanted++;
    if (one.coarse !== 'hidden') wantedVisible++;
    if (best < 0) continue;
    hit++;
    if (one.coarse !== 'hidden') hitVisible++;
    offset += distance / one.pitch;
    const cell = cells[best] as CombCell;
    add(coarseConfusion, `${one.coarse} > ${cell.coarse}`);
    if (cell.coarse === 'not-decided') coarse.undecided++;
    else {
      coarse.decided++;
      if (cell.coarse === one.coarse) coarse.right++;
    }
    if (one.class === undefined) continue;
    add(confusion, `${one.class} > ${cell.class}`);
    if (cell.class === 'not-decided') fine.undecided++;
    else {
      fine.decided++;
      if (cell.class === one.class) fine.right++;
    }
  }
  let wrong = 0;
  cells.forEach((cell, n) => {
    if (!taken.has(n) && !cut(cell.x, cell.y, cell.pitch)) wrong++;
  });
  return {
    wanted,
    hit,
    wantedVisible,
    hitVisible,
    false: wrong,
    offset: hit > 0 ? offset / hit : 0,
    coarse,
    fine,
    confusion,
    coarseConfusion,
  };
}

/** Solidness of the truth by the same definition the reading uses; undefined where too few cells. */
export function trueSolidness(
  truth: readonly { column: number; row: number; class: DecidedClass }[],
): number | undefined {
  const cells: ReadCell[] = truth.map((one) => ({
    column: one.column,
    row: one.row,
    class: one.class,
    coarse: coarseClass(one.class),
  }));
  return readCells(cells).solidness?.value;
}

function add(counts: Map<string, number>, key: string): void {
  counts.set(key, (counts.get(key) ?? 0) + 1);
}
