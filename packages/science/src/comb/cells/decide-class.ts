import type { CombCell } from '../comb-result.ts';
import { type LatticeCell, pitchOf } from '../lattice/lattice-cell.ts';
import { type CellClass, coarseClass, type DecidedClass } from './cell-classes.ts';
import { classOfOutput, outputCount, outputs } from './classifier.ts';

/** Share of belief a class needs to be told, and its group (sealed, open, hidden). */
export interface Demand {
  readonly class: number;
  readonly group: number;
}

/** What is asked of most pictures. */
export const usual: Demand = { class: 0.52, group: 0.55 };
/**
 * The same where a picture looks unlike the painted combs the classifier has learnt from, which shows in how often it
 * cannot decide: one in five on painted combs, nearly all under bees on one real picture, where what it decided was often wrong.
 */
export const strict: Demand = { class: 0.9, group: 0.75 };

/** Pitch in pixels from which eggs and larvae are told apart. */
export const eggsPitch = 22;

const noCell = outputCount - 1;

/**
 * The class of one cell, or that it cannot be told.
 *
 * @param shares of the classifier's outputs, summing to 1
 */
export function decide(cell: LatticeCell, shares: Float32Array, demand: Demand): CombCell {
  const byClass = new Map<DecidedClass, number>();
  let egg = 0;
  let larva = 0;
  const total = Math.max(1e-6, 1 - (shares[noCell] as number));
  outputs.forEach((name, o) => {
    const of = classOfOutput(name);
    if (!of) return;
    const share = (shares[o] as number) / total;
    byClass.set(of, (byClass.get(of) ?? 0) + share);
    if (name === 'egg') egg = share;
    if (name === 'larva') larva = share;
  });
  let best: DecidedClass = 'hidden';
  let bestShare = 0;
  const coarse = { sealed: 0, open: 0, hidden: 0 };
  for (const [name, share] of byClass) {
    coarse[coarseClass(name) as 'sealed' | 'open' | 'hidden'] += share;
    if (share > bestShare) {
      best = name;
      bestShare = share;
    }
  }
  const group = (['sealed', 'open', 'hidden'] as const).reduce((a, b) => (coarse[b] > coarse[a] ? b : a));
  const unclear = (shares[noCell] as number) > 0.6;
  const coarseDecided = !unclear && coarse[group] >= demand.group;
  const of: CellClass =
    coarseDecided && bestShare >= demand.class && coarseClass(best) === group ? best : 'not-decided';
  const stage = of === 'egg-or-larva' && pitchOf(cell) >= eggsPitch ? (egg > larva ? 'egg' : 'larva') : undefined;
  const stores = (byClass.get('pollen') ?? 0) + (byClass.get('nectar') ?? 0);
  return {
    x: cell.x,
    y: cell.y,
    pitch: pitchOf(cell),
    column: cell.column,
    row: cell.row,
    class: of,
    confidence: unclear ? Math.min(bestShare, 1 - (shares[noCell] as number)) : bestShare,
    coarse: coarseDecided ? group : 'not-decided',
    coarseConfidence: coarse[group],
    seen: cell.seen,
    ...(stage ? { stage } : {}),
    ...(coarseDecided && group === 'open' ? { openWithoutStores: coarse.open - stores > stores } : {}),
    ...(of === 'not-decided' && coarseDecided && group === 'sealed'
      ? { likelyBrood: coarse.sealed > 2 * (byClass.get('sealed-honey') ?? 0) }
      : {}),
  };
}
