import type { Pack } from '@combside/law/pack';
import type { Proposal } from '@combside/record/entry';
import { type ExaminationBody, examination } from '@combside/record/kinds/examination';
import type { ColonyState, VisitState } from '@combside/record/states';
import { diseases } from '@combside/science/signs/catalogue';
import { type Act, done, refused } from '../act.ts';
import { type Assessed, type AssessInput, assessExamination } from '../assess/assess-examination.ts';
import { withWhatWasSaid } from '../assess/circumstances.ts';
import type { Setting } from '../assess/evidence.ts';
import { proposeAssessment } from '../assess/propose-assessment.ts';
import { draftFrom } from '../draft/draft-from-taps.ts';
import type { ExaminationDraft } from '../draft/examination-draft.ts';
import { examinationFrom } from '../draft/examination-from-draft.ts';
import { lookStated } from '../draft/look-stated.ts';
import type { Tap } from '../draft/tap.ts';
import { proposeChange } from '../register/propose-change.ts';
import { fullClaim, lesserClaim, somethingSeen } from './claim.ts';

/**
 * How a colony is closed.
 * - `nothing seen`: the big button, with all it states
 * - `nothing seen with less`: the look the draft states
 * - `signs seen`: what was entered, with the look as far as it was stated
 * - `not judged`: recorded, but nothing is concluded
 */
export const closings = ['nothing seen', 'nothing seen with less', 'signs seen', 'not judged'] as const;
export type Closing = (typeof closings)[number];

export interface CloseColony {
  readonly taps: readonly Tap[];
  readonly colony: ColonyState;
  readonly visit: VisitState;
  readonly pack: Pack;
  readonly closing: Closing;
  /** Conditions the inspector suspects; the inspector's own act. */
  readonly suspected: readonly string[];
  readonly observedAt: string;
  /** A fresh identifier for the examination entry, since the assessment has to name it (`book.newId()`). */
  readonly examinationId: string;
  /** What is known besides the look (`assess/circumstances.ts`); what the inspector said or changed stands in the taps. */
  readonly known?: Setting['known'];
  readonly weigh?: NonNullable<AssessInput['weigh']>;
}

/**
 * Closes one colony: proposes its examination and the assessment that rests on it, to be sealed together; where the hive
 * was found dead (or alive) against the register, a change of the register is proposed beside them.
 *
 * Refused outside a running visit, for a colony of another apiary, when the claim does not fit what was entered, when a
 * suspicion names no known condition, or when the look does not stand yet.
 */
export function closeColony(
  input: CloseColony,
): Act<{ readonly examination: ExaminationBody; readonly assessed: Assessed }> {
  const visit = input.visit.visit.current?.body;
  const known = input.colony.colony.current?.body;
  if (!visit?.startedAt) return refused('casework.refused.visit-not-started');
  if (visit.endedAt !== null) return refused('casework.refused.visit-ended');
  if (!known) return refused('casework.refused.not-in-register');
  if (known.apiary !== visit.apiary) return refused('casework.refused.colony-elsewhere');
  if (known.hiveState === 'gone') return refused('casework.refused.colony-gone');
  if (input.observedAt < visit.startedAt) return refused('casework.refused.time-runs-backward');
  const stranger = input.suspected.find((one) => !(diseases as readonly string[]).includes(one));
  if (stranger !== undefined) return refused('casework.refused.unknown-condition', { condition: stranger });

  const draft = draftFrom(input.taps, input.colony);
  const stated = lookFor(input.closing, draft);
  if ('reason' in stated) return stated;
  if (stated.claim === 'nothing seen' && input.suspected.length > 0) {
    return refused('casework.refused.suspicion-against-nothing-seen');
  }
  const body = examinationFrom(draft, {
    visit: input.visit.about.id,
    apiary: visit.apiary,
    observedAt: input.observedAt,
    claim: stated.claim,
    look: stated.look,
  });
  const before = withWhatWasSaid(input.known ?? null, draft);
  const assessed = assessExamination({
    examination: body,
    colony: input.colony,
    visit: input.visit.about.id,
    pack: input.pack,
    suspectedByInspector: input.suspected,
    known: before,
    priorChanges: draft.priorChanges,
    ...(input.weigh ? { weigh: input.weigh } : {}),
  });
  const sealed: Proposal<ExaminationBody> = {
    id: input.examinationId,
    kind: examination.kind,
    version: examination.version,
    about: input.colony.about,
    body,
    replaces: [],
  };
  const concluded = proposeAssessment(
    assessed,
    input.colony.about.id,
    input.visit.about.id,
    input.examinationId,
    input.observedAt,
    input.pack,
    before,
    draft.priorChanges,
  );
  const proposals: Proposal[] = [sealed, concluded];
  if (draft.hiveState !== known.hiveState) {
    const found = proposeChange(
      input.colony,
      'hiveState',
      draft.hiveState,
      input.visit.about.id,
      'found so at the visit',
    );
    if (found.ok) proposals.push(...found.proposals);
  }
  const findings = assessed.findings.map((one) => ({ ...one, about: input.colony.about }));
  return { ...done(proposals, findings), examination: body, assessed };
}

/** What a closing states about the look, from what the draft holds; or why it does not stand. */
export function lookFor(closing: Closing, draft: ExaminationDraft) {
  if (closing === 'nothing seen' || closing === 'nothing seen with less') {
    const claim = closing === 'nothing seen' ? fullClaim(draft) : lesserClaim(draft);
    return claim.ok ? { claim: 'nothing seen' as const, look: claim } : claim;
  }
  const stated = lookStated(draft);
  const own = { beesShaken: draft.beesShaken, hold: draft.hold, signsNotSeen: [] };
  if (closing === 'not judged') {
    const look = stated.ok
      ? { ...stated, ...own }
      : {
          depth: 'outside' as const,
          boxes: draft.boxes.map((one) => ({
            box: one.box,
            framesHeld: one.framesHeld,
            framesSeen: one.framesSeen ?? 0,
            sides: one.sides ?? ('one' as const),
          })),
          ...own,
        };
    return { claim: 'not judged' as const, look };
  }
  if (!somethingSeen(draft)) return refused('casework.refused.no-sign-entered');
  if (!stated.ok) return stated;
  return { claim: 'signs seen' as const, look: { ...stated, ...own } };
}
