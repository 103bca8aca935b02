import type { Look } from './look.ts';

/**
 * Whether this hold shows the lower wall of the cells, where scale lies: only with the top bar toward the viewer, looking
 * down into the cells (`look-geometry.ts` reckons from where). Held flat one sees some of it, with the top bar away none;
 * a hold that was not stated is not taken for the better one.
 */
export function showsLowerWall(hold: Look['hold']): boolean {
  return hold === 'top bar toward the viewer';
}

/**
 * What is left, by the hold, of the chance to notice trouble on the lower wall.
 *
 * @param eye what is left of it held flat, and when nobody said how it was held
 * @returns a share, 0 with the top bar away to 1 with the top bar toward the viewer
 */
export function lowerWallShareByHold(
  hold: Look['hold'],
  eye: { readonly heldFlat: number; readonly holdNotSaid: number },
): number {
  if (showsLowerWall(hold)) return 1;
  switch (hold) {
    case 'top bar away':
      return 0;
    case 'flat':
      return eye.heldFlat;
    default:
      return eye.holdNotSaid;
  }
}
