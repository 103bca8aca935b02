/**
 * How a colony was looked at. Every field may be `null`: nothing was stated, which is never read as the better answer.
 */
export interface Look {
  /** full: every brood frame; part: some; tops: between the combs from above; outside; laboratory only. */
  readonly depth: 'full' | 'part' | 'tops' | 'outside' | 'laboratory only';
  /** Brood frames in the hive. */
  readonly framesHeld: number | null;
  /** Brood frames looked at. */
  readonly framesSeen: number | null;
  readonly sides: 'both' | 'one' | null;
  readonly beesShaken: boolean | null;
  readonly light: 'sun over the shoulder' | 'torch' | 'shade' | 'poor' | null;
  /** How the frame was held: scale on the lower wall shows only with the top bar toward the viewer. */
  readonly hold: 'top bar toward the viewer' | 'top bar away' | 'flat' | null;
  /** Capped cells opened. */
  readonly cellsOpened: number | null;
  /** Capped cells that looked suspicious, opened or not. */
  readonly cellsSuspicious: number | null;
  /** Sealed brood in comb sides: a side sealed from edge to edge is 1. */
  readonly sealedBroodCombSides: number | null;
}

/** A look of which nothing was stated. */
export const noLook: Look = {
  depth: 'outside',
  framesHeld: null,
  framesSeen: null,
  sides: null,
  beesShaken: null,
  light: null,
  hold: null,
  cellsOpened: null,
  cellsSuspicious: null,
  sealedBroodCombSides: null,
};

/**
 * Checks that a look can be true.
 *
 * @throws RangeError naming the field, when a number is negative, not whole where it counts, or more was seen than held
 */
export function checkLook(look: Look): void {
  for (const field of ['framesHeld', 'framesSeen', 'cellsOpened', 'cellsSuspicious'] as const) {
    const value = look[field];
    if (value !== null && !(Number.isInteger(value) && value >= 0)) {
      throw new RangeError(`look.${field} is ${value}: give a whole number from 0, or null when it was not counted`);
    }
  }
  const sealed = look.sealedBroodCombSides;
  if (sealed !== null && !(Number.isFinite(sealed) && sealed >= 0)) {
    throw new RangeError(
      `look.sealedBroodCombSides is ${sealed}: give a number from 0, or null when it was not judged`,
    );
  }
  if (look.framesHeld !== null && look.framesSeen !== null && look.framesSeen > look.framesHeld) {
    throw new RangeError(
      `look.framesSeen is ${look.framesSeen} but the hive holds ${look.framesHeld} brood frames: correct one of them`,
    );
  }
}

/** True when combs were lifted out at all. */
export function combsWereSeen(look: Look): boolean {
  return look.depth === 'full' || look.depth === 'part';
}
