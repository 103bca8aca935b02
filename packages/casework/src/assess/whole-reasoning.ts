import { type Duty, duties } from '@combside/law/duties';
import type { Pack } from '@combside/law/pack';
import type { CircumstancesKnown, PriorChanged } from '@combside/record/kinds/assessment';
import type { ExaminationBody } from '@combside/record/kinds/examination';
import type { ColonyState, Folded, Written } from '@combside/record/states';
import { type Severity, severityOf } from '@combside/science/diagnosis/severity';
import type { DiseaseId } from '@combside/science/signs/catalogue';
import { type Assessed, assessExamination, notifiableDiseases } from './assess-examination.ts';
import { factsFrom, onceForEachReason } from './duties-owed.ts';
import { withoutLaterLooks } from './earlier-looks.ts';
import { frameCountsOf } from './evidence.ts';
import { proposeAssessment } from './propose-assessment.ts';

/** The comb score of one look, with its day. */
export interface SeverityAt {
  readonly observedAt: string;
  readonly severity: Severity;
}

/** Everything the page of the reasoning shows on one examination. */
export interface WholeReasoning {
  readonly assessed: Assessed;
  /** What the law asks for this colony, were the look stated as it stands. Open and late ones. */
  readonly owed: readonly Duty[];
  /** What it would ask besides, were the likeliest notifiable condition suspected; null when one is, or none is likely. */
  readonly wouldFollow: { readonly condition: DiseaseId; readonly duties: readonly Duty[] } | null;
  /** The comb score of this look and of every one before it that counted frames, oldest first. */
  readonly severities: readonly SeverityAt[];
  readonly known: CircumstancesKnown | null;
  readonly priorChanges: readonly PriorChanged[];
  readonly invented: boolean;
}

export interface ReasoningInput {
  readonly examination: ExaminationBody;
  /** Id of the entry, or null while it is not sealed. */
  readonly entry: string | null;
  readonly colony: ColonyState;
  readonly pack: Pack;
  readonly known: CircumstancesKnown | null;
  readonly priorChanges: readonly PriorChanged[];
  readonly suspectedByInspector: readonly string[];
  /** At which "late" is judged, handed in by the edge. */
  readonly now: string;
}

const unsealed = '00000000-0000-7000-8000-000000000000';

/**
 * The whole reasoning on one examination of a colony, sealed or still open, as things stood when it was made: later
 * examinations and assessments do not count. Nothing is proposed and nothing written.
 */
export function wholeReasoning(input: ReasoningInput): WholeReasoning {
  const { examination, pack } = input;
  const colony = asItStood(input);
  const assessed = assessExamination({
    examination,
    colony,
    visit: examination.visit,
    pack,
    suspectedByInspector: input.suspectedByInspector,
    known: input.known,
    priorChanges: input.priorChanges,
  });
  const owed = owedWere(input, colony, assessed);
  const likely = assessed.suspicion
    ? undefined
    : assessed.reasoning.diseases.find(
        (one) => one.inWords !== 'nothing-points-to-it' && notifiableDiseases(pack).includes(one.disease),
      )?.disease;
  const already = new Set(owed.map((one) => one.id));
  return {
    assessed,
    owed: onceForEachReason(owed),
    wouldFollow: likely
      ? {
          condition: likely,
          duties: onceForEachReason(
            owedWere(input, colony, {
              ...assessed,
              result: 'suspect',
              suspicion: { basis: 'inspector', conditions: [likely], rule: null },
            }).filter((one) => !already.has(one.id)),
          ),
        }
      : null,
    severities: severitiesOf(colony, examination),
    known: input.known,
    priorChanges: input.priorChanges,
    invented: pack.invented,
  };
}

/**
 * The colony without this look and without anything observed or stated after it. Of the readings of comb photographs an
 * examination already assessed keeps those that its newest assessment names.
 */
function asItStood({ colony, examination, entry }: ReasoningInput): ColonyState {
  const { examinations } = withoutLaterLooks(colony, entry, examination.observedAt);
  const kept = new Set(examinations.map((one) => one.written.entry));
  const made = entry === null ? undefined : colony.assessments.find((one) => one.body.examination === entry);
  return {
    ...colony,
    examinations,
    assessments: colony.assessments.filter((one) => kept.has(one.body.examination)),
    combReadings: made
      ? colony.combReadings.filter((one) => made.body.combReadings.includes(one.written.entry))
      : colony.combReadings,
  };
}

function owedWere(input: ReasoningInput, colony: ColonyState, assessed: Assessed): Duty[] {
  const { examination, pack, now } = input;
  const entry = input.entry ?? unsealed;
  const { body } = proposeAssessment(assessed, {
    colony: colony.about.id,
    visit: examination.visit,
    examination: entry,
    statedAt: examination.observedAt,
    pack,
    known: input.known,
    priorChanges: input.priorChanges,
  });
  const stated: ColonyState = {
    ...colony,
    examinations: [folded(examination, entry), ...colony.examinations],
    assessments: [folded(body, entry), ...colony.assessments],
  };
  return duties(factsFrom([stated], pack), pack, now).filter((one) => one.state === 'open' || one.state === 'late');
}

function folded<Body>(body: Body, entry: string): Folded<Body> {
  const written: Written = { entry, by: '', device: '', at: '', clock: '' };
  return { written, body, original: body, corrections: [] };
}

function severitiesOf(colony: ColonyState, examination: ExaminationBody): SeverityAt[] {
  return [...colony.examinations.map((one) => one.body), examination]
    .sort((a, b) => (a.observedAt < b.observedAt ? -1 : 1))
    .flatMap((body) => {
      const severity = severityOf(frameCountsOf(body));
      return severity ? [{ observedAt: body.observedAt, severity }] : [];
    });
}
