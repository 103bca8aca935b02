import type { PriorChanged } from '@combside/record/kinds/assessment';
import type {
  Depth,
  ExaminationBody,
  HiveTest,
  PhotographReference,
  RopeTest,
  SignLooked,
} from '@combside/record/kinds/examination';
import type { testsAtTheHive } from '../vocabulary.ts';

/** Where on the comb: the box as the colony's record names it, the frame counted from the same end, and the side. */
export interface Place {
  readonly box: string;
  readonly frame: number | null;
  readonly side: 'a' | 'b' | null;
}

export type HiveState = ExaminationBody['hiveState'];
/** What the keeper answers to one question of the visit: medicines given, combs changed. */
export type KeeperAnswer = ExaminationBody['medicines'];
export type Count = NonNullable<SignLooked['count']>;
export type Amount = NonNullable<SignLooked['amount']>;

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
  | { readonly tap: 'medicines'; readonly answer: KeeperAnswer }
  | { readonly tap: 'comb changes'; readonly answer: KeeperAnswer }
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
