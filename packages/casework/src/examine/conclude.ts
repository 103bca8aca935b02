import type { Pack } from '@combside/law/pack';
import type { Proposal } from '@combside/record/entry';
import type { AssessmentBody } from '@combside/record/kinds/assessment';
import type { ExaminationBody } from '@combside/record/kinds/examination';
import type { ColonyState } from '@combside/record/states';
import { diseases } from '@combside/science/signs/catalogue';
import { type Finding, type Refused, refused } from '../act.ts';
import { type Assessed, type AssessInput, assessExamination } from '../assess/assess-examination.ts';
import { withWhatWasSaid } from '../assess/circumstances.ts';
import type { Setting } from '../assess/evidence.ts';
import { proposeAssessment } from '../assess/propose-assessment.ts';
import { draftFrom } from '../draft/draft-from-taps.ts';
import type { ExaminationDraft } from '../draft/examination-draft.ts';
import { examinationFrom } from '../draft/examination-from-draft.ts';
import type { Tap } from '../draft/tap.ts';
import { type Closing, lookFor } from './closing.ts';

/** What was entered about one colony, and how it is closed. */
export interface Conclude {
  readonly taps: readonly Tap[];
  readonly colony: ColonyState;
  readonly closing: Closing;
  /** Conditions the inspector suspects; the inspector's own act. */
  readonly suspected: readonly string[];
  readonly pack: Pack;
  /** What is known besides the look (`assess/circumstances.ts`); what the inspector said or changed stands in the taps. */
  readonly known?: Setting['known'];
  readonly weigh?: NonNullable<AssessInput['weigh']>;
}

/** Where and when the colony was looked at, and what the assessment is to rest on. */
export interface ConcludedLook {
  readonly visit: string;
  readonly apiary: string;
  readonly observedAt: string;
  readonly statedAt: string;
  /** Id of the entry that holds the examination. */
  readonly examination: string;
  /** The colony as the look is weighed against it: with the looks and suspicions that count as earlier. */
  readonly past: ColonyState;
  /** The visit whose own suspicions are no earlier ones; '' when those of every visit stand. */
  readonly ownVisit: string;
}

/** An inspection of one colony, concluded: its examination, and the assessment that rests on it. */
export interface Concluded {
  readonly ok: true;
  readonly draft: ExaminationDraft;
  readonly examination: ExaminationBody;
  readonly assessed: Assessed;
  readonly assessment: Proposal<AssessmentBody>;
  readonly findings: readonly Finding[];
}

/**
 * Concludes the inspection of one colony, for closing and for correcting alike: what was entered becomes an examination,
 * and the examination is weighed.
 *
 * Refused when a suspicion names no known condition or stands against "nothing seen", when the claim does not fit what was
 * entered, or when the look does not stand yet.
 */
export function conclude(input: Conclude, look: ConcludedLook): Concluded | Refused {
  const { colony, pack, suspected } = input;
  const stranger = suspected.find((one) => !(diseases as readonly string[]).includes(one));
  if (stranger !== undefined) return refused('casework.refused.unknown-condition', { condition: stranger });
  const draft = draftFrom(input.taps, colony);
  const stated = lookFor(input.closing, draft);
  if ('reason' in stated) return stated;
  if (stated.claim === 'nothing seen' && suspected.length > 0) {
    return refused('casework.refused.suspicion-against-nothing-seen');
  }
  const { visit, apiary, observedAt } = look;
  const examination = examinationFrom(draft, { visit, apiary, observedAt, claim: stated.claim, look: stated.look });
  const known = withWhatWasSaid(input.known ?? null, draft);
  const { priorChanges } = draft;
  const assessed = assessExamination({
    examination,
    colony: look.past,
    visit: look.ownVisit,
    pack,
    suspectedByInspector: suspected,
    known,
    priorChanges,
    ...(input.weigh ? { weigh: input.weigh } : {}),
  });
  const assessment = proposeAssessment(assessed, {
    colony: colony.about.id,
    visit,
    examination: look.examination,
    statedAt: look.statedAt,
    pack,
    known,
    priorChanges,
  });
  const findings = assessed.findings.map((one) => ({ ...one, about: colony.about }));
  return { ok: true, draft, examination, assessed, assessment, findings };
}
