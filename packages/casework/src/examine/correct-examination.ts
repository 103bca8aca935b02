import type { Proposal } from '@combside/record/entry';
import { type CorrectionBody, correction } from '@combside/record/kinds/correction';
import { type ExaminationBody, examination } from '@combside/record/kinds/examination';
import type { VisitState } from '@combside/record/states';
import { type Act, done, refused } from '../act.ts';
import type { Assessed } from '../assess/assess-examination.ts';
import { withoutLaterLooks } from '../assess/earlier-looks.ts';
import { type Conclude, conclude } from './conclude.ts';
import { sameWritten } from './what-changed.ts';

/** What the examination should have said; its taps start from `tapsFromExamination`. */
export interface CorrectExamination extends Conclude {
  /** Running or ended. */
  readonly visit: VisitState;
  /** Entry of the examination that is corrected. */
  readonly corrects: string;
  /** Why, in words. */
  readonly reason: string;
  /** Who corrects. */
  readonly by: string;
  readonly correctedAt: string;
}

/**
 * Corrects an examination already sealed: proposes an entry that says what it should have said and why, and the
 * assessment that rests on it as corrected. The earlier entries stay, and the screen shows both. When it was observed,
 * at which visit and apiary, is not open to correction. Nor does a correction lift a suspicion that was stated:
 * that is an act of its own.
 *
 * Refused without a reason, to anybody but the inspector of the visit, when the examination is not this colony's, when
 * nothing was changed, and for whatever `closeColony` refuses in what was entered.
 */
export function correctExamination(
  input: CorrectExamination,
): Act<{ readonly examination: ExaminationBody; readonly assessed: Assessed }> {
  const { colony } = input;
  const visit = input.visit.visit.current?.body;
  const reason = input.reason.trim();
  if (!visit?.startedAt) return refused('casework.refused.visit-not-started');
  const sealed = colony.examinations.find((one) => one.written.entry === input.corrects);
  if (!sealed || sealed.body.visit !== input.visit.about.id) return refused('casework.refused.no-such-line');
  if (visit.inspector !== input.by || sealed.written.by !== input.by) {
    return refused('casework.refused.examination-not-yours');
  }
  if (reason === '') return refused('casework.refused.reason-missing');
  if (reason.length > 500)
    return refused('casework.refused.number-out-of-range', { what: 'characters', low: 1, high: 500 });
  if (input.correctedAt < sealed.body.observedAt) return refused('casework.refused.time-runs-backward');
  const concluded = conclude(input, {
    visit: input.visit.about.id,
    apiary: sealed.body.apiary,
    observedAt: sealed.body.observedAt,
    statedAt: input.correctedAt,
    examination: input.corrects,
    // Suspicions stay, whenever they were stated, and at this very visit too: the corrected word is the newest about the
    // colony, and must not cover one that stands.
    past: withoutLaterLooks(colony, input.corrects, sealed.body.observedAt),
    ownVisit: '',
  });
  if (!concluded.ok) return concluded;
  const { examination: body, assessed, assessment, findings } = concluded;
  const latest = colony.assessments.find((one) => one.body.examination === input.corrects);
  const sameSuspicion =
    latest?.body.result === assessment.body.result && sameWords(latest.body.suspected, assessment.body.suspected);
  if (sameWritten(body, sealed.body) && sameSuspicion) return refused('casework.refused.nothing-changed');

  const corrected: Proposal<CorrectionBody> = {
    kind: correction.kind,
    version: correction.version,
    about: colony.about,
    body: { corrects: input.corrects, reason, version: examination.version, body },
    replaces: sealed.corrections.map((one) => one.written.entry),
  };
  return { ...done([corrected, assessment], findings), examination: body, assessed };
}

function sameWords(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((one) => b.includes(one));
}
