import type { AssessmentBody } from '@combside/record/kinds/assessment';
import type { ExaminationBody } from '@combside/record/kinds/examination';
import type { ColonyState } from '@combside/record/states';
import { draftFrom } from './draft-from-taps.ts';
import type { Tap } from './tap.ts';

/**
 * The taps that add up to an examination already sealed, so that it can be corrected on the screens it was made on.
 * Words that this program does not know (written by a newer one) come along as taps and are listed in the draft's
 * `unread`.
 *
 * @param assessed the assessment that rests on it, for what the inspector suspected, said and changed; null when none does
 */
export function tapsFromExamination(
  body: ExaminationBody,
  assessed: AssessmentBody | null,
  colony: ColonyState,
): readonly Tap[] {
  const before = draftFrom([], colony);
  const taps: Tap[] = [];
  if (body.hiveState !== before.hiveState) taps.push({ tap: 'hive state', state: body.hiveState });
  // A look that was never stated is sealed as "outside": it must be stated now, not taken over.
  const stated = !(body.claim === 'not judged' && body.depth === 'outside');
  const overall = body.depth === 'tops' || body.depth === 'outside' || body.depth === 'laboratory only';
  for (const box of body.boxes) {
    if (before.boxes.find((one) => one.box === box.box)?.framesHeld !== box.framesHeld) {
      taps.push({ tap: 'frames held', box: box.box, frames: box.framesHeld });
    }
    if (!stated || overall) continue;
    taps.push({ tap: 'frames seen', box: box.box, frames: box.framesSeen });
    taps.push({ tap: 'sides', box: box.box, sides: box.sides });
  }
  if (stated && overall) taps.push({ tap: 'depth', depth: body.depth as 'tops' | 'outside' | 'laboratory only' });
  if (body.beesShaken !== null) taps.push({ tap: 'bees shaken', shaken: body.beesShaken });
  if (body.light !== null) taps.push({ tap: 'light', light: body.light });
  if (body.hold !== null) taps.push({ tap: 'hold', hold: body.hold });
  if (body.sealedBroodCombSides !== null) taps.push({ tap: 'sealed brood', combSides: body.sealedBroodCombSides });
  for (const { sign, outcome, count, amount, places } of body.signs) {
    taps.push({ tap: 'sign', sign, outcome });
    if (count !== null) taps.push({ tap: 'sign count', sign, count });
    if (amount !== null) taps.push({ tap: 'sign amount', sign, amount });
    for (const { box, frame, side, cellsOpened, cellsAffected } of places) {
      taps.push({ tap: 'cells at', sign, place: { box, frame, side }, cellsOpened, cellsAffected });
    }
  }
  for (const test of body.ropeTests) taps.push({ tap: 'rope test', test });
  for (const test of body.tests) taps.push({ tap: 'test', test });
  for (const { find, outcome, amount } of body.finds) taps.push({ tap: 'find', find, outcome, amount });
  if (body.medicines.asked) taps.push({ tap: 'medicines', answer: body.medicines });
  if (body.combChanges.asked) taps.push({ tap: 'comb changes', answer: body.combChanges });
  for (const { what, value } of body.measurements) taps.push({ tap: 'measurement', what, value });
  if (body.remarks !== '') taps.push({ tap: 'remark', text: body.remarks });
  for (const photograph of body.photographs) taps.push({ tap: 'photograph', photograph });
  if (assessed) {
    const found = assessed.circumstances?.honeyPositive ?? null;
    if (found !== null) taps.push({ tap: 'spores in honey or bees', found });
    for (const { condition, ...change } of assessed.priorChanges) taps.push({ tap: 'prior', condition, change });
    if (assessed.result === 'suspect' && assessed.basis === 'inspector') {
      taps.push({ tap: 'suspects', conditions: assessed.suspected });
    }
  }
  return taps;
}
