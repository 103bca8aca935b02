import type { ExaminationBody, SignLooked } from '@combside/record/kinds/examination';
import type { ExaminationDraft } from './examination-draft.ts';
import type { StatedLook } from './look-stated.ts';
import { signPlace } from './sign-order.ts';

/**
 * The body of an examination from a draft and from what the look was: the claim of a closing button, or the look as the
 * draft states it. Signs of the claim stand beside those tapped one by one, as looked for and not seen.
 */
export function examinationFrom(
  draft: ExaminationDraft,
  stated: {
    readonly visit: string;
    readonly apiary: string;
    readonly observedAt: string;
    readonly claim: ExaminationBody['claim'];
    readonly look: StatedLook;
  },
): ExaminationBody {
  const tapped = new Set(draft.signs.map((one) => one.sign));
  const claimed: SignLooked[] = stated.look.signsNotSeen
    .filter((sign) => !tapped.has(sign))
    .map((sign) => ({ sign, outcome: 'not seen', count: null, amount: null, places: [] }));
  return {
    visit: stated.visit,
    apiary: stated.apiary,
    observedAt: stated.observedAt,
    hiveState: draft.hiveState,
    depth: stated.look.depth,
    claim: stated.claim,
    boxes: stated.look.boxes,
    beesShaken: stated.look.beesShaken,
    light: draft.light,
    hold: stated.look.hold,
    sealedBroodCombSides: draft.sealedBroodCombSides,
    signs: [...draft.signs, ...claimed].sort((a, b) => signPlace(a.sign) - signPlace(b.sign)),
    ropeTests: [...draft.ropeTests],
    tests: [...draft.tests],
    finds: draft.finds,
    medicines: draft.medicines,
    combChanges: draft.combChanges,
    measurements: draft.measurements,
    remarks: draft.remarks,
    photographs: [...draft.photographs],
  };
}
