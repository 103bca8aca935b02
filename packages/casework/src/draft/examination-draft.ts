import type { PriorChanged } from '@combside/record/kinds/assessment';
import type { ColonyBody } from '@combside/record/kinds/colony';
import type {
  Depth,
  ExaminationBody,
  HiveTest,
  PhotographReference,
  RopeTest,
  SignLooked,
} from '@combside/record/kinds/examination';
import type { ColonyState } from '@combside/record/states';
import type { Refused } from '../act.ts';
import type { HiveState, KeeperAnswer, RopeForm, TestForm } from './tap.ts';

/** A brood box as looked at so far. `framesSeen` and `sides` are null until somebody states them: never prefilled. */
export interface DraftBox {
  readonly box: string;
  readonly framesHeld: number;
  readonly framesSeen: number | null;
  readonly sides: 'both' | 'one' | null;
}

/** One colony's unfinished examination, as its taps add up. */
export interface ExaminationDraft {
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
  readonly medicines: KeeperAnswer;
  readonly combChanges: KeeperAnswer;
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

/** A rope test of which nothing was filled in yet. */
export const noRope: RopeForm = {
  tissue: null,
  stick: null,
  threadMillimetres: null,
  snapsBack: null,
  colour: null,
  place: null,
};
/** A kit or milk test of which nothing was filled in yet. */
export const noTest: TestForm = { test: null, result: null, batch: '', expires: null };
const neverAsked: KeeperAnswer = { asked: false, answer: null, lastOn: null, what: '' };

/**
 * The colony's record before any tap: hive type and brood frames present, and nothing about what was looked at.
 *
 * @throws RangeError when the colony has no record to read (its register is empty)
 */
export function untouched(colony: ColonyState): ExaminationDraft {
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

/** Which tests were begun and not kept: closing would leave them out, so it says so. */
export function unfinishedTests(draft: ExaminationDraft): readonly ('rope test' | 'test')[] {
  const { tissue, threadMillimetres, snapsBack, colour } = draft.ropeForm;
  const rope = [tissue, threadMillimetres, snapsBack, colour].some((one) => one !== null);
  return [...(rope ? ['rope test' as const] : []), ...(draft.testForm.test !== null ? ['test' as const] : [])];
}
