import type { CleanDownBody } from '@combside/record/kinds/clean-down';
import type { ExaminationBody } from '@combside/record/kinds/examination';
import type { HandoverBody } from '@combside/record/kinds/handover';
import type { Values } from '../act.ts';
import type { FindingId } from '../findings.ts';
import type { ResultWord } from '../result/results-by-gravity.ts';
import type { Issue } from './issue.ts';
import type { NextStepId } from './next-step-ids.ts';

/*
 * The written result of one visit, as facts: what a paper or a screen turns into words and hands over. It holds nothing
 * that may not be handed over: no probability, no band, nothing about another keeper or apiary.
 */

/** A sentence by its id in `words`, with what is put into it. */
export interface Sentence {
  readonly id: FindingId | NextStepId;
  readonly values: Values;
}

/** A warning as the visit kept it, named for the paper: `casework.warned.cold`. A newer version may know others. */
export interface WarningNamed {
  readonly id: `casework.warned.${string}`;
  readonly values: Readonly<Record<string, never>>;
}

export interface InspectionRecord {
  /** An invented scenario; the paper says so on every page. */
  readonly invented: boolean;
  readonly district: string;
  /** The authority in whose name the visit was made, as it writes itself. */
  readonly authority: string;
  readonly apiary: {
    readonly id: string;
    readonly name: string;
    readonly addressWords: string;
    readonly position: {
      readonly latitude: number;
      readonly longitude: number;
      readonly uncertaintyMetres: number;
    } | null;
  };
  /** Null for a site whose keeper is not known yet. */
  readonly keeper: { readonly name: string; readonly number: string | null } | null;
  readonly inspector: { readonly name: string; readonly office: string; readonly warrant: string | null };
  readonly visit: {
    readonly id: string;
    readonly startedAt: string;
    /** Null while the visit is still going on: the paper then says that it is a draft. */
    readonly endedAt: string | null;
    /** IANA time zone of the site, for every clock time on the paper. */
    readonly timeZone: string;
    /** A `VisitReason` and a `Power`, or a word of a newer version. */
    readonly reason: string;
    readonly power: string;
    readonly present: readonly { readonly name: string; readonly role: string }[];
    readonly temperatureCelsius: number | null;
    /** Warnings shown at the start (weather, season), each with what the inspector answered. */
    readonly warnings: readonly { readonly warning: WarningNamed; readonly answer: string }[];
    readonly coloniesCounted: number | null;
  };
  /** In the order in which they were walked past. */
  readonly colonies: readonly ColonyRecord[];
  readonly plan: PlanOfTheSite | null;
  readonly specimens: readonly SpecimenTaken[];
  readonly cleanDowns: readonly CleanDownAnswered[];
  readonly remarks: string;
  /** What is still open, and what comes next, in plain sentences. */
  readonly stillOpen: readonly Sentence[];
  readonly nextSteps: readonly Sentence[];
  /** Not part of the fingerprint: the same content is the same issue. */
  readonly issue: Issue;
  readonly proof: {
    /** Ids of the entries the result rests on. */
    readonly entries: readonly string[];
    /** SHA-256 of this record without `issue`, `proof.contentHash` and `signatures`, in canonical form (RFC 8785). */
    readonly contentHash: string;
  };
  readonly signatures: readonly Signature[];
}

export interface ColonyRecord {
  readonly id: string;
  readonly label: string;
  readonly hiveState: ExaminationBody['hiveState'];
  readonly result: ResultWord | 'not opened';
  /** Ids of the conditions under suspicion, only with `suspect` and `remains suspect`. */
  readonly suspected: readonly string[];
  /** Why it was not opened; empty when it was. */
  readonly whyNotOpened: string;
  readonly observedAt: string | null;
  /** What was looked at; null when the colony was not opened. */
  readonly look: Pick<
    ExaminationBody,
    'depth' | 'boxes' | 'beesShaken' | 'light' | 'hold' | 'sealedBroodCombSides'
  > | null;
  readonly signs: ExaminationBody['signs'];
  readonly ropeTests: ExaminationBody['ropeTests'];
  readonly finds: ExaminationBody['finds'];
  readonly medicines: ExaminationBody['medicines'] | null;
  readonly combChanges: ExaminationBody['combChanges'] | null;
  readonly remarks: string;
  readonly photographs: ExaminationBody['photographs'];
}

export interface SpecimenTaken {
  readonly id: string;
  readonly colony: string;
  /** What was taken, in words of the inspector or of the laboratory's list. */
  readonly what: string;
  readonly takenAt: string;
}

export interface CleanDownAnswered extends Pick<CleanDownBody, 'doneAt' | 'gloves' | 'tool' | 'phone'> {
  /** Label of the colony after which it was done; null at the exit. */
  readonly after: string | null;
}

/** Metres east and north of the plan's own origin. */
export interface PlanOfTheSite {
  readonly hives: readonly {
    readonly colony: string;
    readonly at: { readonly east: number; readonly north: number };
  }[];
  readonly gate: { readonly east: number; readonly north: number } | null;
  readonly track: readonly { readonly east: number; readonly north: number }[];
}

export interface Signature {
  readonly as: 'inspector' | 'receiver';
  readonly name: string;
  readonly at: string;
  /** The drawn line as an SVG path in a box of 300 by 100; empty when the typed name stands for it. */
  readonly path: string;
  readonly how: HandoverBody['how'] | null;
}
