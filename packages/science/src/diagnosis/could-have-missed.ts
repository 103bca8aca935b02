import { combsWereSeen, type Look } from '../brood/look.ts';
import { chanceNothingShown, framesLookedAt, pointEye, sealedBroodShare } from '../brood/what-a-look-shows.ts';
import { seeded } from '../random/seeded.ts';
import { drawnEye, intervalOf } from './intervals.ts';
import { type Sentence, sentence } from './sentence.ts';

/** What limited a look, for the page and for the reasons. */
export type LookLimit =
  | 'no-combs-seen'
  | 'not-every-frame'
  | 'frames-not-said'
  | 'one-side-only'
  | 'bees-left-on'
  | 'shaking-not-said'
  | 'poor-light'
  | 'light-not-said'
  | 'top-bar-away'
  | 'hold-not-said'
  | 'no-cells-opened'
  | 'cells-left-unopened'
  | 'little-sealed-brood'
  | 'sealed-brood-not-said';

/** The chance that a colony with this many diseased cells would have shown nothing. */
export interface Missed {
  readonly cells: number;
  readonly chance: number;
  readonly low: number;
  readonly high: number;
}

export interface CouldHaveMissed {
  readonly rows: readonly Missed[];
  readonly tooLittleBrood: boolean;
  readonly limits: readonly LookLimit[];
  readonly sentence: Sentence<`missed.${'too-little-brood' | 'everything' | 'one-in'}`>;
}

/** The sizes of trouble that are shown. */
export const missedSizes = [1, 5, 50, 500] as const;

/** Below this much sealed brood, in comb sides, a look is "too little brood to judge". A setting; common practice, no source. */
export const tooLittleSealedBrood = 0.25;

/** What limited the look, in the order in which it is said. */
export function limitsOf(look: Look): LookLimit[] {
  if (!combsWereSeen(look)) return ['no-combs-seen'];
  const limits: LookLimit[] = [];
  if (look.framesHeld === null || look.framesSeen === null) {
    limits.push(look.depth === 'full' ? 'frames-not-said' : 'not-every-frame');
  } else if (look.framesSeen < look.framesHeld) limits.push('not-every-frame');
  if (look.sides === 'one') limits.push('one-side-only');
  if (look.beesShaken === false) limits.push('bees-left-on');
  if (look.beesShaken === null) limits.push('shaking-not-said');
  if (look.light === 'poor' || look.light === 'shade') limits.push('poor-light');
  if (look.light === null) limits.push('light-not-said');
  if (look.hold === 'top bar away' || look.hold === 'flat') limits.push('top-bar-away');
  if (look.hold === null) limits.push('hold-not-said');
  if ((look.cellsOpened ?? 0) === 0) limits.push('no-cells-opened');
  else if (look.cellsSuspicious !== null && (look.cellsOpened as number) < look.cellsSuspicious) {
    limits.push('cells-left-unopened');
  }
  if (look.sealedBroodCombSides === null) limits.push('sealed-brood-not-said');
  else if (look.sealedBroodCombSides < tooLittleSealedBrood) limits.push('little-sealed-brood');
  return limits;
}

/** True when so little sealed brood was there that seeing nothing means nothing. */
export function tooLittleBrood(look: Look): boolean {
  if (look.sealedBroodCombSides === null || !combsWereSeen(look)) return false;
  const { share } = framesLookedAt(look, pointEye);
  return look.sealedBroodCombSides * share < tooLittleSealedBrood;
}

/**
 * What this look could have missed: the chance that a colony with 1, 5, 50 or 500 diseased cells would have shown nothing
 * to it. Hypergeometric over the frames, times the eye; with the number of suspicious and of opened cells stated, the
 * opened ones count as well. The interval comes from the bands of the eye.
 *
 * @param draws how many times the eye is drawn for the interval
 */
export function couldHaveMissed(
  look: Look,
  { draws = 400, seed = 1 }: { readonly draws?: number; readonly seed?: number } = {},
): CouldHaveMissed {
  const chance = seeded(seed);
  const eyes = Array.from({ length: draws }, () => drawnEye(chance));
  const rows = missedSizes.map((cells): Missed => {
    const drawn = Float64Array.from(eyes, (eye) => missedBy(cells, look, eye));
    const { low, high } = intervalOf(drawn);
    return { cells, chance: missedBy(cells, look, pointEye), low, high };
  });
  const light = rows[1] as Missed;
  return {
    rows,
    tooLittleBrood: tooLittleBrood(look),
    limits: limitsOf(look),
    sentence: tooLittleBrood(look)
      ? sentence('missed.too-little-brood')
      : light.chance > 0.995
        ? sentence('missed.everything', { cells: light.cells })
        : sentence('missed.one-in', { cells: light.cells, percent: Math.round(light.chance * 100) }),
  };
}

function missedBy(cells: number, look: Look, eye: typeof pointEye): number {
  const share = sealedBroodShare(look);
  // With no sealed brood at all nothing sealed can be sick: what is asked is then answered by the scale alone.
  const face = chanceNothingShown(cells, share === 0 ? 'lower wall' : 'comb face', look, eye);
  const opened = look.cellsOpened ?? 0;
  const suspicious = look.cellsSuspicious ?? 0;
  if (opened === 0 || suspicious === 0) return face;
  // Each diseased cell among the suspicious ones is opened with the same chance; an opened one is recognised.
  const among = Math.min(cells, suspicious);
  const shareOpened = Math.min(1, opened / suspicious);
  return face * (1 - shareOpened * eye.openedCell * framesLookedAt(look, eye).share) ** among;
}
