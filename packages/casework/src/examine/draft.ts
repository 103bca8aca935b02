import type { PriorChanged } from '@combside/record/kinds/assessment';
import type { ColonyBody } from '@combside/record/kinds/colony';
import type {
  ExaminationBody,
  HiveTest,
  PhotographReference,
  RopeTest,
  SignLooked,
} from '@combside/record/kinds/examination';
import type { ColonyState } from '@combside/record/states';
import { figureOf } from '@combside/science/diagnosis/test-figures';
import { diseases } from '@combside/science/signs/catalogue';
import { type Refused, refused } from '../act.ts';
import { isSign, measureOf, signPlace } from './sign-order.ts';
import { type Depth, depths, finds, measurements, testsAtTheHive } from './vocabulary.ts';

/** Where on the comb: the box as the colony's record names it, the frame counted from the same end, and the side. */
export interface Place {
  readonly box: string;
  readonly frame: number | null;
  readonly side: 'a' | 'b' | null;
}

export type HiveState = ExaminationBody['hiveState'];
type Asked = ExaminationBody['medicines'];
type Count = NonNullable<SignLooked['count']>;
type Amount = NonNullable<SignLooked['amount']>;

/** One tap at the comb. Taps are kept as they come; the draft is what they add up to. */
export type Tap =
  | { readonly tap: 'hive state'; readonly state: HiveState }
  | { readonly tap: 'depth'; readonly depth: Exclude<Depth, 'full' | 'part'> | null }
  | { readonly tap: 'frames held'; readonly box: string; readonly frames: number }
  | { readonly tap: 'frames seen'; readonly box: string; readonly frames: number | null }
  /** One tap for all of it: every brood frame, both sides, bees shaken off (in a dead hive: top bar toward the viewer). */
  | { readonly tap: 'everything looked at' }
  | { readonly tap: 'sides'; readonly box: string; readonly sides: 'both' | 'one' | null }
  | { readonly tap: 'bees shaken'; readonly shaken: boolean | null }
  | { readonly tap: 'light'; readonly light: ExaminationBody['light'] }
  | { readonly tap: 'hold'; readonly hold: ExaminationBody['hold'] }
  | { readonly tap: 'sealed brood'; readonly combSides: number | null }
  | { readonly tap: 'sign'; readonly sign: string; readonly outcome: 'seen' | 'not seen' | 'not looked for' }
  /** The rest of a group, looked for and not seen, in one tap; signs already answered keep their answer. */
  | { readonly tap: 'signs not seen'; readonly signs: readonly string[] }
  | { readonly tap: 'sign count'; readonly sign: string; readonly count: Count | null }
  | { readonly tap: 'sign amount'; readonly sign: string; readonly amount: Amount | null }
  | {
      readonly tap: 'cells at';
      readonly sign: string;
      readonly place: Place;
      readonly cellsOpened: number | null;
      readonly cellsAffected: number | null;
    }
  /** A rope test half filled in: kept like everything tapped, and no evidence until it is a rope test. */
  | { readonly tap: 'rope form'; readonly form: RopeForm }
  | { readonly tap: 'rope test'; readonly test: RopeTest }
  | { readonly tap: 'rope test removed'; readonly index: number }
  /** The same of a kit or the milk test. */
  | { readonly tap: 'test form'; readonly form: TestForm }
  | { readonly tap: 'test'; readonly test: HiveTest }
  | { readonly tap: 'test removed'; readonly index: number }
  /** What a laboratory found in honey or bees of this operation, as far as it is known here. */
  | { readonly tap: 'spores in honey or bees'; readonly found: boolean | null }
  /** The inspector sets what is believed of a condition before the look, with the reason; null takes it back. */
  | { readonly tap: 'prior'; readonly condition: string; readonly change: Omit<PriorChanged, 'condition'> | null }
  | {
      readonly tap: 'find';
      readonly find: string;
      readonly outcome: 'seen' | 'not seen' | 'not looked for';
      readonly amount: Amount | null;
    }
  | { readonly tap: 'medicines'; readonly answer: Asked }
  | { readonly tap: 'comb changes'; readonly answer: Asked }
  | { readonly tap: 'measurement'; readonly what: string; readonly value: number | null }
  | { readonly tap: 'remark'; readonly text: string }
  /** Of a correction: why. */
  | { readonly tap: 'reason'; readonly text: string }
  /** What the inspector would suspect on closing; the suspicion itself is made by closing. */
  | { readonly tap: 'suspects'; readonly conditions: readonly string[] }
  | { readonly tap: 'photograph'; readonly photograph: PhotographReference }
  | { readonly tap: 'photograph removed'; readonly hash: string };

/** A rope test as far as it was filled in. */
export interface RopeForm {
  readonly tissue: RopeTest['tissue'] | null;
  readonly stick: RopeTest['stick'] | null;
  readonly threadMillimetres: number | null;
  readonly snapsBack: boolean | null;
  readonly colour: RopeTest['colour'];
  readonly place: Place | null;
}

/** A test read here, as far as it was filled in. */
export interface TestForm {
  readonly test: (typeof testsAtTheHive)[number] | null;
  readonly result: HiveTest['result'] | null;
  readonly batch: string;
  readonly expires: string | null;
}

/** A brood box as looked at so far. `framesSeen` and `sides` are null until somebody states them: never prefilled. */
export interface DraftBox {
  readonly box: string;
  readonly framesHeld: number;
  readonly framesSeen: number | null;
  readonly sides: 'both' | 'one' | null;
}

/** One colony's unfinished examination, as its taps add up. */
export interface Draft {
  readonly colony: string;
  readonly label: string;
  readonly hiveType: string;
  /** From the colony's own record; a tap may correct how many frames stand there today. */
  readonly boxes: readonly DraftBox[];
  readonly hiveState: HiveState;
  /** Set where only the tops or the outside were looked at; otherwise the depth follows from the frames seen. */
  readonly depth: Exclude<Depth, 'full' | 'part'> | null;
  readonly beesShaken: boolean | null;
  readonly light: ExaminationBody['light'];
  readonly hold: ExaminationBody['hold'];
  readonly sealedBroodCombSides: number | null;
  /** In the order in which signs meet the inspector, whatever the order of the taps. */
  readonly signs: readonly SignLooked[];
  readonly ropeTests: readonly RopeTest[];
  readonly ropeForm: RopeForm;
  readonly tests: readonly HiveTest[];
  readonly testForm: TestForm;
  readonly honeyPositive: boolean | null;
  readonly priorChanges: readonly PriorChanged[];
  readonly finds: ExaminationBody['finds'];
  readonly medicines: Asked;
  readonly combChanges: Asked;
  readonly measurements: ExaminationBody['measurements'];
  readonly remarks: string;
  /** Conditions that closing would put under suspicion, by id. */
  readonly suspects: readonly string[];
  /** Why a sealed examination is corrected; empty in every other draft. */
  readonly correctionReason: string;
  readonly photographs: readonly PhotographReference[];
  /** Taps that this program could not read (written by another version); kept, counted, never dropped in silence. */
  readonly unread: readonly { readonly index: number; readonly why: Refused }[];
}

const noRope: RopeForm = {
  tissue: null,
  stick: null,
  threadMillimetres: null,
  snapsBack: null,
  colour: null,
  place: null,
};
const noTest: TestForm = { test: null, result: null, batch: '', expires: null };
const neverAsked: Asked = { asked: false, answer: null, lastOn: null, what: '' };

/**
 * The colony's record before any tap: hive type and brood frames present, and nothing about what was looked at.
 *
 * @throws RangeError when the colony has no record to read (its register is empty)
 */
function untouched(colony: ColonyState): Draft {
  const known = colony.colony.current?.body;
  if (!known) {
    throw new RangeError(
      `colony ${colony.about.id} has no register entry yet; fold it first, or add it to the register`,
    );
  }
  return {
    colony: colony.about.id,
    label: known.label,
    hiveType: known.hiveType,
    boxes: boxesOf(known),
    hiveState: known.hiveState === 'gone' ? 'living' : known.hiveState,
    depth: null,
    beesShaken: null,
    light: null,
    hold: null,
    sealedBroodCombSides: null,
    signs: [],
    ropeTests: [],
    ropeForm: noRope,
    tests: [],
    testForm: noTest,
    honeyPositive: null,
    priorChanges: [],
    finds: [],
    medicines: neverAsked,
    combChanges: neverAsked,
    measurements: [],
    remarks: '',
    suspects: [],
    correctionReason: '',
    photographs: [],
    unread: [],
  };
}

function boxesOf(colony: ColonyBody): DraftBox[] {
  return colony.broodBoxes.map((one) => ({ box: one.box, framesHeld: one.frames, framesSeen: null, sides: null }));
}

/**
 * What the taps of one colony add up to.
 *
 * @param taps in the order in which they were made; a tap that cannot be read is listed in `unread` and passed over
 * @param colony the folded record of the colony looked at
 * @throws RangeError when the colony has no record to read
 */
export function draftFrom(taps: readonly Tap[], colony: ColonyState): Draft {
  let draft = untouched(colony);
  const unread: { index: number; why: Refused }[] = [];
  taps.forEach((tap, index) => {
    const next = after(draft, tap);
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
): { readonly ok: true; readonly taps: readonly Tap[]; readonly draft: Draft } | Refused {
  const draft = draftFrom(taps, colony);
  const next = after(draft, tap);
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

/** Which tests were begun and not kept: closing would leave them out, so it says so. */
export function unfinishedTests(draft: Draft): readonly ('rope test' | 'test')[] {
  const { tissue, threadMillimetres, snapsBack, colour } = draft.ropeForm;
  const rope = [tissue, threadMillimetres, snapsBack, colour].some((one) => one !== null);
  return [...(rope ? ['rope test' as const] : []), ...(draft.testForm.test !== null ? ['test' as const] : [])];
}

/** Takes the last tap back. Undoing nothing changes nothing. */
export function undo(taps: readonly Tap[]): readonly Tap[] {
  return taps.slice(0, -1);
}

/** Whether anything at all was entered, so that leaving the colony would leave a draft behind. */
export function isTouched(taps: readonly Tap[]): boolean {
  return taps.length > 0;
}

function after(draft: Draft, tap: Tap): Draft | Refused {
  switch (tap.tap) {
    case 'hive state':
      if (!['living', 'dead', 'stored combs'].includes(tap.state)) return unknownWord(tap.state);
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
      if (tap.sides !== null && !['both', 'one'].includes(tap.sides)) return unknownWord(tap.sides);
      return withBox(draft, { ...box, sides: tap.sides });
    }
    case 'bees shaken':
      return { ...draft, beesShaken: tap.shaken };
    case 'light':
      if (tap.light !== null && !['sun over the shoulder', 'torch', 'shade', 'poor'].includes(tap.light)) {
        return unknownWord(tap.light);
      }
      return { ...draft, light: tap.light };
    case 'hold':
      if (tap.hold !== null && !['top bar toward the viewer', 'top bar away', 'flat'].includes(tap.hold)) {
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

function withFramesHeld(draft: Draft, name: string, frames: number): Draft | Refused {
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

function withBox(draft: Draft, changed: DraftBox): Draft {
  return { ...draft, boxes: draft.boxes.map((one) => (one.box === changed.box ? changed : one)) };
}

function withSign(draft: Draft, sign: string, outcome: 'seen' | 'not seen' | 'not looked for'): Draft | Refused {
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

function withCount(draft: Draft, sign: string, count: Count | null): Draft | Refused {
  if (!isSign(sign)) return refused('casework.refused.unknown-sign', { sign });
  if (measureOf(sign) !== 'cells') return refused('casework.refused.sign-is-not-counted', { sign });
  if (count !== null && !['1-10', '11-100', 'over 100'].includes(count)) return unknownWord(count);
  const earlier = draft.signs.find((one) => one.sign === sign);
  if (earlier?.outcome !== 'seen') return refused('casework.refused.count-needs-seen', { sign });
  return withLooked(draft, { ...earlier, count });
}

function withAmount(draft: Draft, sign: string, amount: Amount | null): Draft | Refused {
  if (!isSign(sign)) return refused('casework.refused.unknown-sign', { sign });
  if (measureOf(sign) !== 'degree') return refused('casework.refused.sign-is-not-graded', { sign });
  if (amount !== null && !['slight', 'marked'].includes(amount)) return unknownWord(amount);
  const earlier = draft.signs.find((one) => one.sign === sign);
  if (earlier?.outcome !== 'seen') return refused('casework.refused.count-needs-seen', { sign });
  return withLooked(draft, { ...earlier, amount });
}

function withCells(draft: Draft, tap: Extract<Tap, { tap: 'cells at' }>): Draft | Refused {
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

function withRopeTest(draft: Draft, test: RopeTest): Draft | Refused {
  const wrongPlace = placeRefused(draft, test);
  if (wrongPlace) return wrongPlace;
  if (!(test.threadMillimetres >= 0 && test.threadMillimetres <= 300)) return outOfRange('thread', 0, 300);
  if (!['too fresh', 'moist brown', 'part dry', 'dry scale'].includes(test.tissue)) return unknownWord(test.tissue);
  if (!['rough and dry', 'smooth or wet'].includes(test.stick)) return unknownWord(test.stick);
  const colours = ['white', 'yellow', 'coffee', 'dark brown', 'black', 'grey'];
  if (test.colour !== null && !colours.includes(test.colour)) return unknownWord(test.colour);
  // The next cell is tried with the same kind of stick, mostly from the same comb.
  const { stick, place } = draft.ropeForm;
  return { ...draft, ropeTests: [...draft.ropeTests, test], ropeForm: { ...noRope, stick, place } };
}

function withTest(draft: Draft, test: HiveTest): Draft | Refused {
  const known = testsAtTheHive.find((one) => one === test.test);
  if (!known) return unknownWord(test.test);
  if (test.material !== figureOf(known).material) return unknownWord(test.material);
  if (!['positive', 'negative', 'failed'].includes(test.result)) return unknownWord(test.result);
  if (test.batch.length > 60) return outOfRange('characters', 0, 60);
  for (const day of [test.readOn, test.expires]) {
    if (day !== null && !/^\d{4}-\d{2}-\d{2}$/.test(day)) return refused('casework.refused.shape');
  }
  return { ...draft, tests: [...draft.tests, test], testForm: noTest };
}

function withPrior(draft: Draft, condition: string, change: Omit<PriorChanged, 'condition'> | null): Draft | Refused {
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

function withLooked(draft: Draft, looked: SignLooked): Draft {
  const signs = [...draft.signs.filter((one) => one.sign !== looked.sign), looked];
  return { ...draft, signs: signs.sort((a, b) => signPlace(a.sign) - signPlace(b.sign)) };
}

function placeRefused(draft: Draft, place: Place): Refused | null {
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

function isAsked(answer: Asked): boolean {
  if (!answer.asked) return answer.answer === null && answer.lastOn === null;
  return (
    (answer.answer === null || ['none', 'yes', 'not known'].includes(answer.answer)) &&
    (answer.lastOn === null || /^\d{4}-\d{2}-\d{2}$/.test(answer.lastOn)) &&
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
