import type { Depth, ExaminationBody } from '@combside/record/kinds/examination';
import { showsLowerWall } from '@combside/science/brood/what-the-hold-shows';
import type { SignId } from '@combside/science/signs/catalogue';
import { type Refused, refused } from '../act.ts';
import type { ExaminationDraft } from './examination-draft.ts';

/** What a look was: how deep, over which boxes, with the bees shaken off or not, held how. */
export interface StatedLook {
  readonly depth: Depth;
  readonly boxes: ExaminationBody['boxes'];
  readonly beesShaken: boolean | null;
  readonly hold: ExaminationBody['hold'];
  /** The signs the look says were looked for and not seen, besides those tapped one by one. */
  readonly signsNotSeen: readonly SignId[];
}

/**
 * What was looked at, as far as the draft states it.
 *
 * @returns the depth and boxes, or why they do not stand yet
 */
export function lookStated(
  draft: ExaminationDraft,
): { readonly ok: true; readonly depth: Depth; readonly boxes: ExaminationBody['boxes'] } | Refused {
  if (draft.depth !== null) {
    return {
      ok: true,
      depth: draft.depth,
      boxes: draft.boxes.map((one) => ({ box: one.box, framesHeld: one.framesHeld, framesSeen: 0, sides: 'one' })),
    };
  }
  if (draft.boxes.length === 0) return refused('casework.refused.frames-not-known');
  if (draft.hiveState === 'living' && draft.beesShaken === null) return refused('casework.refused.look-not-stated');
  const boxes: ExaminationBody['boxes'] = [];
  for (const one of draft.boxes) {
    if (one.framesSeen === null) return refused('casework.refused.look-not-stated', { box: one.box });
    if (one.framesSeen > 0 && one.sides === null) return refused('casework.refused.look-not-stated', { box: one.box });
    boxes.push({ box: one.box, framesHeld: one.framesHeld, framesSeen: one.framesSeen, sides: one.sides ?? 'one' });
  }
  if (boxes.every((one) => one.framesSeen === 0)) return refused('casework.refused.nothing-looked-at');
  if (draft.hiveState !== 'living' && draft.hold === null) return refused('casework.refused.hold-not-stated');
  const everything =
    boxes.every((one) => one.framesSeen === one.framesHeld && one.sides === 'both') &&
    (draft.hiveState === 'living' ? draft.beesShaken === true : showsLowerWall(draft.hold));
  return { ok: true, depth: everything ? 'full' : 'part', boxes };
}
