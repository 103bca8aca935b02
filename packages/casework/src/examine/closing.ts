import { refused } from '../act.ts';
import type { ExaminationDraft } from '../draft/examination-draft.ts';
import { lookStated } from '../draft/look-stated.ts';
import { fullClaim, lesserClaim, somethingSeen } from './nothing-seen.ts';

/**
 * How a colony is closed.
 * - `nothing seen`: the big button, with all it states
 * - `nothing seen with less`: the look the draft states
 * - `signs seen`: what was entered, with the look as far as it was stated
 * - `not judged`: recorded, but nothing is concluded
 */
export const closings = ['nothing seen', 'nothing seen with less', 'signs seen', 'not judged'] as const;
export type Closing = (typeof closings)[number];

/** What a closing states about the look, from what the draft holds; or why it does not stand. */
export function lookFor(closing: Closing, draft: ExaminationDraft) {
  if (closing === 'nothing seen' || closing === 'nothing seen with less') {
    const claim = closing === 'nothing seen' ? fullClaim(draft) : lesserClaim(draft);
    return claim.ok ? { claim: 'nothing seen' as const, look: claim } : claim;
  }
  const stated = lookStated(draft);
  const own = { beesShaken: draft.beesShaken, hold: draft.hold, signsNotSeen: [] };
  if (closing === 'not judged') {
    const look = stated.ok
      ? { ...stated, ...own }
      : {
          depth: 'outside' as const,
          boxes: draft.boxes.map((one) => ({
            box: one.box,
            framesHeld: one.framesHeld,
            framesSeen: one.framesSeen ?? 0,
            sides: one.sides ?? ('one' as const),
          })),
          ...own,
        };
    return { claim: 'not judged' as const, look };
  }
  if (!somethingSeen(draft)) return refused('casework.refused.no-sign-entered');
  if (!stated.ok) return stated;
  return { claim: 'signs seen' as const, look: { ...stated, ...own } };
}
