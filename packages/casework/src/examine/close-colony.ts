import type { Proposal } from '@combside/record/entry';
import { type ExaminationBody, examination } from '@combside/record/kinds/examination';
import type { VisitState } from '@combside/record/states';
import { type Act, done, refused } from '../act.ts';
import type { Assessed } from '../assess/assess-examination.ts';
import { proposeChange } from '../register/propose-change.ts';
import { type Conclude, conclude } from './conclude.ts';
import { examinationAt } from './walk.ts';

/** One colony's taps, and how it is closed. */
export interface CloseColony extends Conclude {
  readonly visit: VisitState;
  readonly observedAt: string;
  /** A fresh identifier for the examination entry, since the assessment has to name it (`book.newId()`). */
  readonly examinationId: string;
}

/**
 * Closes one colony: proposes its examination and the assessment that rests on it, to be sealed together; where the hive
 * was found dead (or alive) against the register, a change of the register is proposed beside them.
 *
 * Refused outside a running visit, for a colony of another apiary, when the claim does not fit what was entered, when a
 * suspicion names no known condition, when the look does not stand yet, or when the colony was closed at this visit already.
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
  if (examinationAt(input.colony, input.visit.about.id)) return refused('casework.refused.colony-closed');
  if (input.observedAt < visit.startedAt) return refused('casework.refused.time-runs-backward');
  const visitId = input.visit.about.id;
  const concluded = conclude(input, {
    visit: visitId,
    apiary: visit.apiary,
    observedAt: input.observedAt,
    statedAt: input.observedAt,
    examination: input.examinationId,
    past: input.colony,
    ownVisit: visitId,
  });
  if (!concluded.ok) return concluded;
  const sealed: Proposal<ExaminationBody> = {
    id: input.examinationId,
    kind: examination.kind,
    version: examination.version,
    about: input.colony.about,
    body: concluded.examination,
    replaces: [],
  };
  const proposals: Proposal[] = [sealed, concluded.assessment];
  const { hiveState } = concluded.draft;
  if (hiveState !== known.hiveState) {
    const found = proposeChange(input.colony, {
      field: 'hiveState',
      to: hiveState,
      visit: visitId,
      reason: 'found so at the visit',
    });
    if (found.ok) proposals.push(...found.proposals);
  }
  const { examination: body, assessed, findings } = concluded;
  return { ...done(proposals, findings), examination: body, assessed };
}
