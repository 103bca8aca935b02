import { isDay } from '@combside/calendar/day';
import type { PriorChanged } from '@combside/record/kinds/assessment';
import {
  amounts,
  combSideCounts,
  countClasses,
  depths,
  type HiveTest,
  hiveStates,
  holds,
  lights,
  type RopeTest,
  type SignLooked,
  sticks,
  testResults,
  threadColours,
  tissues,
} from '@combside/record/kinds/examination';
import { figureOf } from '@combside/science/diagnosis/test-figures';
import { diseases } from '@combside/science/signs/catalogue';
import { type Refused, refused } from '../act.ts';
import { finds, measurements, testsAtTheHive } from '../vocabulary.ts';
import { type DraftBox, type ExaminationDraft, noRope, noTest } from './examination-draft.ts';
import { isSign, measureOf, signPlace } from './sign-order.ts';
import type { Amount, Count, KeeperAnswer, Place, Tap } from './tap.ts';

/** The draft with one tap more, or why the tap cannot be taken. */
export function applyTap(draft: ExaminationDraft, tap: Tap): ExaminationDraft | Refused {
  switch (tap.tap) {
    case 'hive state':
      if (!hiveStates.includes(tap.state)) return unknownWord(tap.state);
      return { ...draft, hiveState: tap.state };
    case 'depth':
      if (tap.depth !== null && (!depths.includes(tap.depth) || ['full', 'part'].includes(tap.depth))) {
        return unknownWord(tap.depth);
      }
      return { ...draft, depth: tap.depth };
    case 'frames held':
      return withFramesHeld(draft, tap.box, tap.frames);
    case 'frames seen': {
      const box = draft.boxes.find((one) => one.box === tap.box);
      if (!box) return refused('casework.refused.unknown-box', { box: tap.box });
      if (tap.frames !== null && !isWhole(tap.frames, 0, 30)) return outOfRange('frames', 0, 30);
      if (tap.frames !== null && tap.frames > box.framesHeld) {
        return refused('casework.refused.more-frames-than-held', {
          box: tap.box,
          held: box.framesHeld,
          seen: tap.frames,
        });
      }
      return withBox(draft, { ...box, framesSeen: tap.frames });
    }
    case 'everything looked at':
      if (draft.boxes.every((one) => one.framesHeld === 0)) return refused('casework.refused.frames-not-known');
      return {
        ...draft,
        depth: null,
        boxes: draft.boxes.map((one) => ({ ...one, framesSeen: one.framesHeld, sides: 'both' })),
        ...(draft.hiveState === 'living' ? { beesShaken: true } : { hold: 'top bar toward the viewer' as const }),
      };
    case 'sides': {
      const box = draft.boxes.find((one) => one.box === tap.box);
      if (!box) return refused('casework.refused.unknown-box', { box: tap.box });
      if (tap.sides !== null && !combSideCounts.includes(tap.sides)) return unknownWord(tap.sides);
      return withBox(draft, { ...box, sides: tap.sides });
    }
    case 'bees shaken':
      return { ...draft, beesShaken: tap.shaken };
    case 'light':
      if (tap.light !== null && !lights.includes(tap.light)) {
        return unknownWord(tap.light);
      }
      return { ...draft, light: tap.light };
    case 'hold':
      if (tap.hold !== null && !holds.includes(tap.hold)) {
        return unknownWord(tap.hold);
      }
      return { ...draft, hold: tap.hold };
    case 'sealed brood':
      if (
        tap.combSides !== null &&
        !(tap.combSides >= 0 && tap.combSides <= 60 && Number.isInteger(tap.combSides * 4))
      ) {
        return outOfRange('sealed', 0, 60);
      }
      return { ...draft, sealedBroodCombSides: tap.combSides };
    case 'sign':
      return withSign(draft, tap.sign, tap.outcome);
    case 'signs not seen': {
      let next = draft;
      for (const sign of tap.signs) {
        if (next.signs.some((one) => one.sign === sign)) continue;
        const looked = withSign(next, sign, 'not seen');
        if ('reason' in looked) return looked;
        next = looked;
      }
      return next;
    }
    case 'sign count':
      return withCount(draft, tap.sign, tap.count);
    case 'sign amount':
      return withAmount(draft, tap.sign, tap.amount);
    case 'cells at':
      return withCells(draft, tap);
    case 'rope form':
      return tap.form.place !== null && placeRefused(draft, tap.form.place)
        ? { ...draft, ropeForm: { ...tap.form, place: null } }
        : { ...draft, ropeForm: tap.form };
    case 'rope test':
      return withRopeTest(draft, tap.test);
    case 'rope test removed':
      if (draft.ropeTests[tap.index] === undefined) return refused('casework.refused.no-such-line');
      return { ...draft, ropeTests: draft.ropeTests.filter((_, index) => index !== tap.index) };
    case 'test form':
      if (tap.form.batch.length > 60) return outOfRange('characters', 0, 60);
      return { ...draft, testForm: tap.form };
    case 'test':
      return withTest(draft, tap.test);
    case 'test removed':
      if (draft.tests[tap.index] === undefined) return refused('casework.refused.no-such-line');
      return { ...draft, tests: draft.tests.filter((_, index) => index !== tap.index) };
    case 'spores in honey or bees':
      return { ...draft, honeyPositive: tap.found };
    case 'prior':
      return withPrior(draft, tap.condition, tap.change);
    case 'find': {
      if (!(finds as readonly string[]).includes(tap.find)) {
        return refused('casework.refused.unknown-find', { find: tap.find });
      }
      if (tap.amount !== null && tap.outcome !== 'seen') return refused('casework.refused.count-needs-seen');
      const others = draft.finds.filter((one) => one.find !== tap.find);
      if (tap.outcome === 'not looked for') return { ...draft, finds: others };
      const place = (id: string) => (finds as readonly string[]).indexOf(id);
      const all = [...others, { find: tap.find, outcome: tap.outcome, amount: tap.amount }];
      return { ...draft, finds: all.sort((a, b) => place(a.find) - place(b.find)) };
    }
    case 'medicines':
      return isAsked(tap.answer) ? { ...draft, medicines: tap.answer } : refused('casework.refused.shape');
    case 'comb changes':
      return isAsked(tap.answer) ? { ...draft, combChanges: tap.answer } : refused('casework.refused.shape');
    case 'measurement': {
      const known = Object.hasOwn(measurements, tap.what)
        ? measurements[tap.what as keyof typeof measurements]
        : undefined;
      if (!known) return refused('casework.refused.unknown-measurement', { what: tap.what });
      const others = draft.measurements.filter((one) => one.what !== tap.what);
      if (tap.value === null) return { ...draft, measurements: others };
      if (!(tap.value >= known.low && tap.value <= known.high)) return outOfRange('value', known.low, known.high);
      return { ...draft, measurements: [...others, { what: tap.what, value: tap.value, unit: known.unit }] };
    }
    case 'remark':
      if (tap.text.length > 5000) return outOfRange('characters', 0, 5000);
      return { ...draft, remarks: tap.text };
    case 'reason':
      if (tap.text.length > 500) return outOfRange('characters', 0, 500);
      return { ...draft, correctionReason: tap.text };
    case 'suspects': {
      const stranger = tap.conditions.find((one) => !(diseases as readonly string[]).includes(one));
      if (stranger !== undefined) return refused('casework.refused.unknown-condition', { condition: stranger });
      return { ...draft, suspects: [...new Set(tap.conditions)] };
    }
    case 'photograph':
      if (draft.photographs.some((one) => one.hash === tap.photograph.hash)) return draft;
      return { ...draft, photographs: [...draft.photographs, tap.photograph] };
    case 'photograph removed':
      if (!draft.photographs.some((one) => one.hash === tap.hash)) return refused('casework.refused.no-such-line');
      return { ...draft, photographs: draft.photographs.filter((one) => one.hash !== tap.hash) };
    default:
      return unknownWord((tap as { tap?: unknown }).tap);
  }
}

function withFramesHeld(draft: ExaminationDraft, name: string, frames: number): ExaminationDraft | Refused {
  if (!isWhole(frames, 0, 30)) return outOfRange('frames', 0, 30);
  const box = draft.boxes.find((one) => one.box === name);
  if (!box) {
    if (name.length < 1 || name.length > 40 || draft.boxes.length >= 10) {
      return refused('casework.refused.unknown-box', { box: name });
    }
    // A box that the register does not know yet: the inspector found it standing there.
    return { ...draft, boxes: [...draft.boxes, { box: name, framesHeld: frames, framesSeen: null, sides: null }] };
  }
  if (box.framesSeen !== null && box.framesSeen > frames) {
    return refused('casework.refused.more-frames-than-held', { box: name, held: frames, seen: box.framesSeen });
  }
  return withBox(draft, { ...box, framesHeld: frames });
}

function withBox(draft: ExaminationDraft, changed: DraftBox): ExaminationDraft {
  return { ...draft, boxes: draft.boxes.map((one) => (one.box === changed.box ? changed : one)) };
}

function withSign(
  draft: ExaminationDraft,
  sign: string,
  outcome: 'seen' | 'not seen' | 'not looked for',
): ExaminationDraft | Refused {
  if (!isSign(sign)) return refused('casework.refused.unknown-sign', { sign });
  if (!['seen', 'not seen', 'not looked for'].includes(outcome)) return unknownWord(outcome);
  if (outcome === 'not looked for') return { ...draft, signs: draft.signs.filter((one) => one.sign !== sign) };
  const earlier = draft.signs.find((one) => one.sign === sign);
  // Saying "seen" again keeps what was counted; saying "not seen" takes the count away, but keeps the cells opened.
  const looked: SignLooked =
    outcome === 'seen'
      ? { sign, outcome, count: earlier?.count ?? null, amount: earlier?.amount ?? null, places: earlier?.places ?? [] }
      : {
          sign,
          outcome,
          count: null,
          amount: null,
          places: (earlier?.places ?? []).filter((place) => !place.cellsAffected),
        };
  return withLooked(draft, looked);
}

function withCount(draft: ExaminationDraft, sign: string, count: Count | null): ExaminationDraft | Refused {
  if (!isSign(sign)) return refused('casework.refused.unknown-sign', { sign });
  if (measureOf(sign) !== 'cells') return refused('casework.refused.sign-is-not-counted', { sign });
  if (count !== null && !countClasses.includes(count)) return unknownWord(count);
  const earlier = draft.signs.find((one) => one.sign === sign);
  if (earlier?.outcome !== 'seen') return refused('casework.refused.count-needs-seen', { sign });
  return withLooked(draft, { ...earlier, count });
}

function withAmount(draft: ExaminationDraft, sign: string, amount: Amount | null): ExaminationDraft | Refused {
  if (!isSign(sign)) return refused('casework.refused.unknown-sign', { sign });
  if (measureOf(sign) !== 'degree') return refused('casework.refused.sign-is-not-graded', { sign });
  if (amount !== null && !amounts.includes(amount)) return unknownWord(amount);
  const earlier = draft.signs.find((one) => one.sign === sign);
  if (earlier?.outcome !== 'seen') return refused('casework.refused.count-needs-seen', { sign });
  return withLooked(draft, { ...earlier, amount });
}

function withCells(draft: ExaminationDraft, tap: Extract<Tap, { tap: 'cells at' }>): ExaminationDraft | Refused {
  const { sign, place, cellsOpened, cellsAffected } = tap;
  if (!isSign(sign)) return refused('casework.refused.unknown-sign', { sign });
  if (measureOf(sign) !== 'cells') return refused('casework.refused.sign-is-not-counted', { sign });
  const wrongPlace = placeRefused(draft, place);
  if (wrongPlace) return wrongPlace;
  for (const cells of [cellsOpened, cellsAffected]) {
    if (cells !== null && !isWhole(cells, 0, 10_000)) return outOfRange('cells', 0, 10_000);
  }
  if (cellsOpened !== null && cellsAffected !== null && cellsAffected > cellsOpened) {
    return refused('casework.refused.more-affected-than-opened', { opened: cellsOpened, affected: cellsAffected });
  }
  const earlier = draft.signs.find((one) => one.sign === sign);
  if (!earlier) return refused('casework.refused.count-needs-seen', { sign });
  if (earlier.outcome === 'not seen' && cellsAffected) return refused('casework.refused.count-needs-seen', { sign });
  const same = (one: Place) => one.box === place.box && one.frame === place.frame && one.side === place.side;
  const others = earlier.places.filter((one) => !same(one));
  const nothing = cellsOpened === null && cellsAffected === null;
  const places = nothing ? others : [...others, { ...place, cellsOpened, cellsAffected }].sort(byPlace);
  return withLooked(draft, { ...earlier, places });
}

function withRopeTest(draft: ExaminationDraft, test: RopeTest): ExaminationDraft | Refused {
  const wrongPlace = placeRefused(draft, test);
  if (wrongPlace) return wrongPlace;
  if (!(test.threadMillimetres >= 0 && test.threadMillimetres <= 300)) return outOfRange('thread', 0, 300);
  if (!tissues.includes(test.tissue)) return unknownWord(test.tissue);
  if (!sticks.includes(test.stick)) return unknownWord(test.stick);
  if (test.colour !== null && !threadColours.includes(test.colour)) return unknownWord(test.colour);
  // The next cell is tried with the same kind of stick, mostly from the same comb.
  const { stick, place } = draft.ropeForm;
  return { ...draft, ropeTests: [...draft.ropeTests, test], ropeForm: { ...noRope, stick, place } };
}

function withTest(draft: ExaminationDraft, test: HiveTest): ExaminationDraft | Refused {
  const known = testsAtTheHive.find((one) => one === test.test);
  if (!known) return unknownWord(test.test);
  if (test.material !== figureOf(known).material) return unknownWord(test.material);
  if (!testResults.includes(test.result)) return unknownWord(test.result);
  if (test.batch.length > 60) return outOfRange('characters', 0, 60);
  for (const day of [test.readOn, test.expires]) {
    if (day !== null && !isDay(day)) return refused('casework.refused.shape');
  }
  return { ...draft, tests: [...draft.tests, test], testForm: noTest };
}

function withPrior(
  draft: ExaminationDraft,
  condition: string,
  change: Omit<PriorChanged, 'condition'> | null,
): ExaminationDraft | Refused {
  if (!(diseases as readonly string[]).includes(condition)) {
    return refused('casework.refused.unknown-condition', { condition });
  }
  const others = draft.priorChanges.filter((one) => one.condition !== condition);
  if (change === null) return { ...draft, priorChanges: others };
  const { value, low, high, reason } = change;
  const ordered = (low ?? value) <= value && value <= (high ?? value);
  if (![value, low ?? value, high ?? value].every((one) => one > 0 && one < 1) || !ordered) {
    return refused('casework.refused.shape');
  }
  if (reason.trim() === '' || reason.length > 1000) return refused('casework.refused.shape');
  return { ...draft, priorChanges: [...others, { condition, value, low, high, reason }] };
}

function withLooked(draft: ExaminationDraft, looked: SignLooked): ExaminationDraft {
  const signs = [...draft.signs.filter((one) => one.sign !== looked.sign), looked];
  return { ...draft, signs: signs.sort((a, b) => signPlace(a.sign) - signPlace(b.sign)) };
}

function placeRefused(draft: ExaminationDraft, place: Place): Refused | null {
  const box = draft.boxes.find((one) => one.box === place.box);
  if (!box) return refused('casework.refused.unknown-box', { box: place.box });
  if (place.frame !== null && !isWhole(place.frame, 1, box.framesHeld)) {
    return refused('casework.refused.frame-not-there', { box: place.box, held: box.framesHeld });
  }
  if (place.side !== null && !['a', 'b'].includes(place.side)) return unknownWord(place.side);
  return null;
}

function byPlace(a: Place, b: Place): number {
  if (a.box !== b.box) return a.box < b.box ? -1 : 1;
  if (a.frame !== b.frame) return (a.frame ?? 0) - (b.frame ?? 0);
  return (a.side ?? '') < (b.side ?? '') ? -1 : 1;
}

function isAsked(answer: KeeperAnswer): boolean {
  if (!answer.asked) return answer.answer === null && answer.lastOn === null;
  return (
    (answer.answer === null || ['none', 'yes', 'not known'].includes(answer.answer)) &&
    (answer.lastOn === null || isDay(answer.lastOn)) &&
    answer.what.length <= 200
  );
}

function isWhole(value: number, low: number, high: number): boolean {
  return Number.isInteger(value) && value >= low && value <= high;
}

function outOfRange(what: string, low: number, high: number): Refused {
  return refused('casework.refused.number-out-of-range', { what, low, high });
}

function unknownWord(word: unknown): Refused {
  return refused('casework.refused.unknown-word', { word: String(word) });
}
