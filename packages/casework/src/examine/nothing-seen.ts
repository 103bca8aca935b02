import { showsLowerWall } from '@combside/science/brood/what-the-hold-shows';
import { type HiveState, type SignId, signs } from '@combside/science/signs/catalogue';
import { type Refused, refused } from '../act.ts';
import type { ExaminationDraft } from '../draft/examination-draft.ts';
import { lookStated, type StatedLook } from '../draft/look-stated.ts';
import { speaksOfTrouble } from '../draft/sign-order.ts';

/** The sentences a closing button may state. There is none for a whole apiary: each colony is opened by itself. */
export const claimSentences = [
  'casework.claim.full',
  'casework.claim.full-dead-hive',
  'casework.claim.full-stored-combs',
  'casework.claim.part',
  'casework.claim.tops',
  'casework.claim.outside',
  'casework.claim.laboratory-only',
] as const;
export type ClaimSentence = (typeof claimSentences)[number];

/** What "nothing seen" would state, in full, so that the button can say it before it is pressed. */
export interface Claim extends StatedLook {
  readonly ok: true;
  readonly sentence: ClaimSentence;
  readonly values: Readonly<Record<string, string | number>>;
}

/**
 * The big button: nothing seen on every brood frame of this colony, both sides, bees shaken off. In a dead hive and on
 * stored combs there are no bees to shake, and the scale is the sign, so the claim states the hold instead.
 *
 * The frames are those of the colony's own record (as corrected by taps). Refused as soon as any sign was seen, or when
 * the draft already states that less was looked at.
 */
export function fullClaim(draft: ExaminationDraft): Claim | Refused {
  const seen = somethingSeen(draft);
  if (seen) return seen;
  const held = draft.boxes.reduce((sum, one) => sum + one.framesHeld, 0);
  if (held === 0) return refused('casework.refused.frames-not-known');
  const less =
    draft.depth !== null ||
    draft.boxes.some((one) => (one.framesSeen !== null && one.framesSeen < one.framesHeld) || one.sides === 'one') ||
    (draft.hiveState === 'living' ? draft.beesShaken === false : notTowardViewer(draft));
  if (less) return refused('casework.refused.less-looked-at-already');
  const living = draft.hiveState === 'living';
  const hold = living ? draft.hold : 'top bar toward the viewer';
  return {
    ok: true,
    sentence: living
      ? 'casework.claim.full'
      : draft.hiveState === 'dead'
        ? 'casework.claim.full-dead-hive'
        : 'casework.claim.full-stored-combs',
    values: { frames: held },
    depth: 'full',
    boxes: draft.boxes.map((one) => ({
      box: one.box,
      framesHeld: one.framesHeld,
      framesSeen: one.framesHeld,
      sides: 'both',
    })),
    beesShaken: living ? true : null,
    hold,
    signsNotSeen: signsOfTheOrdinaryLook(draft.hiveState, hold),
  };
}

/**
 * "Less than that": nothing seen with the look the draft states. Everything that limits the look has to be stated first:
 * frames and sides of every box and whether bees were shaken off, or that only the tops or the outside were looked at.
 */
export function lesserClaim(draft: ExaminationDraft): Claim | Refused {
  const seen = somethingSeen(draft);
  if (seen) return seen;
  const look = lookStated(draft);
  if ('reason' in look) return look;
  if (look.depth === 'full') return refused('casework.refused.look-was-full');
  const held = draft.boxes.reduce((sum, one) => sum + one.framesHeld, 0);
  const framesSeen = look.boxes.reduce((sum, one) => sum + one.framesSeen, 0);
  const brood = look.depth === 'part' && framesSeen > 0;
  return {
    ok: true,
    sentence:
      look.depth === 'part'
        ? 'casework.claim.part'
        : look.depth === 'tops'
          ? 'casework.claim.tops'
          : look.depth === 'outside'
            ? 'casework.claim.outside'
            : 'casework.claim.laboratory-only',
    values:
      look.depth === 'part'
        ? {
            seen: framesSeen,
            frames: held,
            sides: look.boxes.every((one) => one.framesSeen === 0 || one.sides === 'both') ? 'both' : 'one',
            shaken: draft.beesShaken === null ? 'none' : draft.beesShaken ? 'yes' : 'no',
          }
        : {},
    depth: look.depth,
    boxes: look.boxes,
    beesShaken: draft.beesShaken,
    hold: draft.hold,
    signsNotSeen: brood ? signsOfTheOrdinaryLook(draft.hiveState, draft.hold) : [],
  };
}

/** Why "nothing seen" cannot be said of this draft, or null. */
export function somethingSeen(draft: ExaminationDraft): Refused | null {
  const sign = draft.signs.find((one) => one.outcome === 'seen' && speaksOfTrouble(one.sign));
  if (sign) return refused('casework.refused.sign-was-seen', { sign: sign.sign });
  if (draft.ropeTests.some((one) => one.threadMillimetres > 0)) return refused('casework.refused.rope-was-drawn');
  const test = draft.tests.find((one) => one.result === 'positive');
  if (test) return refused('casework.refused.test-was-positive');
  return null;
}

function notTowardViewer(draft: ExaminationDraft): boolean {
  return draft.hold !== null && !showsLowerWall(draft.hold);
}

/**
 * What the closing button means by "nothing seen": the signs that a look over the comb faces and into the open cells
 * meets, without opening a capped cell. What lies under a capping is not in it, because no capping was opened; what lies
 * on the lower wall is in it only where the hold shows it.
 */
export function signsOfTheOrdinaryLook(hiveState: HiveState, hold: ExaminationDraft['hold']): readonly SignId[] {
  return signs
    .filter((sign) => sign.askedIn.includes(hiveState) && !sign.ofHealthyBrood)
    .filter(
      (sign) =>
        sign.place === 'comb face' ||
        sign.place === 'open cells' ||
        (sign.place === 'lower wall' && showsLowerWall(hold)),
    )
    .map((sign) => sign.id);
}
