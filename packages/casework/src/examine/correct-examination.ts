import type { Pack } from '@combside/law/pack';
import type { Proposal } from '@combside/record/entry';
import { type CorrectionBody, correction } from '@combside/record/kinds/correction';
import { type ExaminationBody, examination } from '@combside/record/kinds/examination';
import type { ColonyState, VisitState } from '@combside/record/states';
import { diseases } from '@combside/science/signs/catalogue';
import { type Act, done, refused } from '../act.ts';
import { type Assessed, assessExamination } from '../assess/assess-examination.ts';
import { withWhatWasSaid } from '../assess/circumstances.ts';
import type { Setting } from '../assess/evidence.ts';
import { proposeAssessment } from '../assess/propose-assessment.ts';
import { draftFrom } from '../draft/draft-from-taps.ts';
import { examinationFrom } from '../draft/examination-from-draft.ts';
import type { Tap } from '../draft/tap.ts';
import { type Closing, lookFor } from './close-colony.ts';
import { sameWritten } from './what-changed.ts';

export interface CorrectExamination {
  /** Starting from `tapsFromExamination`. */
  readonly taps: readonly Tap[];
  readonly colony: ColonyState;
  /** Running or ended. */
  readonly visit: VisitState;
  readonly pack: Pack;
  readonly closing: Closing;
  readonly suspected: readonly string[];
  /** Entry of the examination that is corrected. */
  readonly corrects: string;
  /** Why, in words. */
  readonly reason: string;
  /** Who corrects. */
  readonly by: string;
  readonly correctedAt: string;
  readonly known?: Setting['known'];
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
  const stranger = input.suspected.find((one) => !(diseases as readonly string[]).includes(one));
  if (stranger !== undefined) return refused('casework.refused.unknown-condition', { condition: stranger });

  const draft = draftFrom(input.taps, colony);
  const stated = lookFor(input.closing, draft);
  if ('reason' in stated) return stated;
  if (stated.claim === 'nothing seen' && input.suspected.length > 0) {
    return refused('casework.refused.suspicion-against-nothing-seen');
  }
  const body = examinationFrom(draft, {
    visit: input.visit.about.id,
    apiary: sealed.body.apiary,
    observedAt: sealed.body.observedAt,
    claim: stated.claim,
    look: stated.look,
  });
  const before = withWhatWasSaid(input.known ?? null, draft);
  const assessed = assessExamination({
    examination: body,
    colony: withoutLaterLooks(colony, input.corrects, sealed.body.observedAt),
    // No visit is this one: a suspicion stated at this very visit stands as well, whatever is corrected.
    visit: '',
    pack: input.pack,
    suspectedByInspector: input.suspected,
    known: before,
    priorChanges: draft.priorChanges,
  });
  const concluded = proposeAssessment(
    assessed,
    colony.about.id,
    input.visit.about.id,
    input.corrects,
    input.correctedAt,
    input.pack,
    before,
    draft.priorChanges,
  );
  const latest = colony.assessments.find((one) => one.body.examination === input.corrects);
  const sameSuspicion =
    latest?.body.result === concluded.body.result && sameWords(latest.body.suspected, concluded.body.suspected);
  if (sameWritten(body, sealed.body) && sameSuspicion) return refused('casework.refused.nothing-changed');

  const corrected: Proposal<CorrectionBody> = {
    kind: correction.kind,
    version: correction.version,
    about: colony.about,
    body: { corrects: input.corrects, reason, version: examination.version, body },
    replaces: sealed.corrections.map((one) => one.written.entry),
  };
  const findings = assessed.findings.map((one) => ({ ...one, about: colony.about }));
  return { ...done([corrected, concluded], findings), examination: body, assessed };
}

/**
 * The colony without this look and later ones, which are no evidence for it. Suspicions stay, whenever they were stated:
 * the corrected word is the newest about the colony, and must not cover one that stands.
 */
function withoutLaterLooks(colony: ColonyState, corrects: string, observedAt: string): ColonyState {
  const examinations = colony.examinations.filter(
    (one) => one.written.entry !== corrects && one.body.observedAt <= observedAt,
  );
  return { ...colony, examinations };
}

function sameWords(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((one) => b.includes(one));
}
