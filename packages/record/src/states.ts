import type { About } from './entry.ts';
import type { ApiaryBody } from './kinds/apiary.ts';
import type { AssessmentBody } from './kinds/assessment.ts';
import type { AttendanceBody } from './kinds/attendance.ts';
import type { CleanDownBody } from './kinds/clean-down.ts';
import type { ColonyBody } from './kinds/colony.ts';
import type { CombReadingBody } from './kinds/comb-reading.ts';
import type { CountersignatureBody } from './kinds/countersignature.ts';
import type { DeviceBody } from './kinds/device.ts';
import type { ExaminationBody, PhotographReference } from './kinds/examination.ts';
import type { HandoverBody } from './kinds/handover.ts';
import type { KeeperBody } from './kinds/keeper.ts';
import type { LaboratoryLimitsBody } from './kinds/laboratory-limits.ts';
import type { MergeBody } from './kinds/merge.ts';
import type { MovementBody } from './kinds/movement.ts';
import type { NoteBody } from './kinds/note.ts';
import type { ProposedChangeBody } from './kinds/proposed-change.ts';
import type { ReasonBody } from './kinds/reason.ts';
import type { RefusalBody } from './kinds/refusal.ts';
import type { ResealingBody } from './kinds/resealing.ts';
import type { VisitBody } from './kinds/visit.ts';

/** Who wrote an entry, on what, and when; carried beside every folded value. */
export interface Written {
  readonly entry: string;
  readonly by: string;
  readonly device: string;
  readonly at: string;
  readonly clock: string;
}

/** One folded body with its corrections, oldest first. `body` is the newest reading; `original` is what was first written. */
export interface Folded<Body> {
  readonly written: Written;
  readonly body: Body;
  readonly original: Body;
  readonly corrections: readonly { readonly written: Written; readonly reason: string; readonly body: Body }[];
}

/**
 * A value in the register. `current` won; `contested` holds the values of entries that did not see each other, shown
 * until somebody settles them; `history` is every value there ever was, oldest first.
 */
export interface Register<Body> {
  readonly current: Folded<Body> | null;
  readonly contested: readonly Folded<Body>[];
  readonly history: readonly Folded<Body>[];
}

/** What every state carries besides its own fields. */
export interface StateBase {
  readonly about: About;
  readonly foldVersion: number;
  readonly notes: readonly Folded<NoteBody>[];
  /** Entries of a kind or version this program does not know: "written by a newer version". */
  readonly unknown: readonly { readonly written: Written; readonly kind: string; readonly version: number }[];
  /** Entries whose body was erased, with the kind. */
  readonly erased: readonly { readonly written: Written; readonly kind: string }[];
  /** Entries whose clock ran more than 24 hours ahead of the office's; they lose every tie. */
  readonly clockFlagged: readonly { readonly entry: string; readonly aheadMilliseconds: number }[];
}

export interface DeviceState extends StateBase {
  readonly device: Register<DeviceBody>;
  readonly countersignatures: readonly Folded<CountersignatureBody>[];
  readonly resealings: readonly Folded<ResealingBody>[];
  readonly refusals: readonly Folded<RefusalBody>[];
}

export interface KeeperState extends StateBase {
  readonly keeper: Register<KeeperBody>;
  readonly merges: readonly Folded<MergeBody>[];
  readonly reasons: readonly Folded<ReasonBody>[];
}

export interface ApiaryState extends StateBase {
  readonly apiary: Register<ApiaryBody>;
  readonly proposals: readonly Folded<ProposedChangeBody>[];
  readonly merges: readonly Folded<MergeBody>[];
  readonly reasons: readonly Folded<ReasonBody>[];
  /** Newest first. */
  readonly photographs: readonly Folded<PhotographReference>[];
}

export interface ColonyState extends StateBase {
  readonly colony: Register<ColonyBody>;
  /** Newest observation first. */
  readonly examinations: readonly Folded<ExaminationBody>[];
  readonly assessments: readonly Folded<AssessmentBody>[];
  /** Newest first, accepted or not. */
  readonly combReadings: readonly Folded<CombReadingBody>[];
  readonly proposals: readonly Folded<ProposedChangeBody>[];
  readonly reasons: readonly Folded<ReasonBody>[];
}

export interface VisitState extends StateBase {
  readonly visit: Register<VisitBody>;
  readonly attendance: Register<AttendanceBody>;
  readonly cleanDowns: readonly Folded<CleanDownBody>[];
  readonly handovers: readonly Folded<HandoverBody>[];
}

export interface MovementState extends StateBase {
  readonly movement: Register<MovementBody>;
  readonly reasons: readonly Folded<ReasonBody>[];
}

export interface LaboratoryState extends StateBase {
  /** Every method and material, the newest statement first. */
  readonly limits: readonly Folded<LaboratoryLimitsBody>[];
}

export type EntityState =
  | DeviceState
  | KeeperState
  | ApiaryState
  | ColonyState
  | VisitState
  | MovementState
  | LaboratoryState;

/** The state of each entity type. */
export interface StateByType {
  readonly device: DeviceState;
  readonly keeper: KeeperState;
  readonly apiary: ApiaryState;
  readonly colony: ColonyState;
  readonly visit: VisitState;
  readonly movement: MovementState;
  readonly laboratory: LaboratoryState;
}
