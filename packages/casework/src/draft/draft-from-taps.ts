import type { ColonyState } from '@combside/record/states';
import type { Refused } from '../act.ts';
import { applyTap } from './apply-tap.ts';
import { type ExaminationDraft, untouched } from './examination-draft.ts';
import type { Tap } from './tap.ts';

/**
 * What the taps of one colony add up to.
 *
 * @param taps in the order in which they were made; a tap that cannot be read is listed in `unread` and passed over
 * @param colony the folded record of the colony looked at
 * @throws RangeError when the colony has no record to read
 */
export function draftFrom(taps: readonly Tap[], colony: ColonyState): ExaminationDraft {
  let draft = untouched(colony);
  const unread: { index: number; why: Refused }[] = [];
  taps.forEach((tap, index) => {
    const next = applyTap(draft, tap);
    if ('reason' in next) unread.push({ index, why: next });
    else draft = next;
  });
  return { ...draft, unread };
}

/**
 * Adds one tap, or refuses it with the reason: an unknown word, a frame that is not there, a number out of range.
 *
 * @returns the longer list of taps to store, and the draft it adds up to
 */
export function addTap(
  taps: readonly Tap[],
  tap: Tap,
  colony: ColonyState,
): { readonly ok: true; readonly taps: readonly Tap[]; readonly draft: ExaminationDraft } | Refused {
  const draft = draftFrom(taps, colony);
  const next = applyTap(draft, tap);
  if ('reason' in next) return next;
  // Typing goes letter by letter; to undo, it is one tap.
  const last = taps.at(-1);
  const typing = ((tap.tap === 'remark' || tap.tap === 'reason') && last?.tap === tap.tap) || typesOn(last, tap);
  return { ok: true, taps: [...(typing ? taps.slice(0, -1) : taps), tap], draft: { ...next, unread: draft.unread } };
}

function typesOn(last: Tap | undefined, tap: Tap): boolean {
  if (last?.tap !== 'test form' || tap.tap !== 'test form') return false;
  const { test, result, expires } = last.form;
  return (
    tap.form.test === test &&
    tap.form.result === result &&
    tap.form.expires === expires &&
    last.form.batch !== '' &&
    tap.form.batch !== last.form.batch
  );
}

/** Takes the last tap back. Undoing nothing changes nothing. */
export function undo(taps: readonly Tap[]): readonly Tap[] {
  return taps.slice(0, -1);
}

/** Whether anything at all was entered, so that leaving the colony would leave a draft behind. */
export function isTouched(taps: readonly Tap[]): boolean {
  return taps.length > 0;
}
