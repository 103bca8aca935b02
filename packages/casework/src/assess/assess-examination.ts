import { dayOf } from '@combside/calendar/instant';
import { isNotifiable, type Pack, type SuspicionRule } from '@combside/law/pack';
import { suspicionsByRule } from '@combside/law/suspicion';
import type { AssessmentBody, PriorChanged } from '@combside/record/kinds/assessment';
import type { ExaminationBody, HiveTest } from '@combside/record/kinds/examination';
import type { ColonyState } from '@combside/record/states';
import {
  assessLook,
  defaultSettings,
  reasoningVersion,
  type WholeAssessment,
} from '@combside/science/diagnosis/assess';
import { tooLittleBrood } from '@combside/science/diagnosis/could-have-missed';
import type { Evidence } from '@combside/science/diagnosis/evidence';
import { shownBeyondError } from '@combside/science/diagnosis/measured-pattern';
import { ropeThreshold } from '@combside/science/diagnosis/sort-evidence';
import { type DiseaseId, diseases } from '@combside/science/signs/catalogue';
import { type Finding, finding } from '../act.ts';
import { speaksOfTrouble } from '../draft/sign-order.ts';
import { earlierSuspicion } from '../result/earlier-suspicion.ts';
import type { ResultWord } from '../result/results-by-gravity.ts';
import { evidenceFrom, lookOf, type Setting } from './evidence.ts';
import { maskingEnd } from './masking-end.ts';

/** A suspicion as it stands: by the inspector's own act, or by a named rule of the pack. Never by a probability. */
export interface Suspicion {
  readonly basis: AssessmentBody['basis'];
  readonly conditions: readonly string[];
  readonly rule: SuspicionRule | null;
}

/** What an examination comes to. */
export interface Assessed {
  /** The word for the result. */
  readonly result: ResultWord;
  readonly suspicion: Suspicion | null;
  /** A suspicion of an earlier visit that nobody has lifted. */
  readonly stillSuspect: { readonly since: string; readonly conditions: readonly string[] } | null;
  /** Until when "nothing seen" means nothing, or null. */
  readonly maskedUntil: string | null;
  /** The whole reasoning: the line, the order of conditions, why, what next, what the look could have missed. */
  readonly reasoning: WholeAssessment;
  readonly findings: readonly Finding[];
  /** Signs written by a newer version, not weighed here. */
  readonly setAside: readonly string[];
  /** Entries of the accepted readings of comb photographs that were handed to the reasoning. */
  readonly combReadings: readonly string[];
}

/** What is known besides the examination, and what the inspector suspects. */
export interface AssessInput {
  readonly examination: ExaminationBody;
  readonly colony: ColonyState | null;
  readonly visit: string;
  readonly pack: Pack;
  readonly known?: Setting['known'];
  readonly priorChanges?: readonly PriorChanged[];
  /** Conditions the inspector suspects; empty when none. */
  readonly suspectedByInspector: readonly string[];
  /** How evidence is weighed; `assessLook` unless somebody who weighs thousands keeps answers to equal evidence. */
  readonly weigh?: typeof assessLook;
}

/**
 * Weighs one examination: evidence to the reasoning, rules to the suspicion, the past to what remains.
 *
 * The word of the result follows from acts and rules, never from a probability: a suspicion of the inspector or of the
 * pack says `suspect`; one of an earlier visit says `remains suspect`; signs seen say so; and "nothing seen" is only said
 * of a look that could see, outside a masking period.
 */
export function assessExamination(input: AssessInput): Assessed {
  const { examination, colony, pack } = input;
  const suspicion = suspicionOf(examination, input.suspectedByInspector, pack);
  const stillSuspect = colony ? earlierSuspicion(colony, input.visit) : null;
  const { evidence, setAside, combReadings } = evidenceFrom(examination, {
    colony,
    pack,
    suspicionStands: suspicion !== null,
    known: input.known ?? null,
    priorChanges: input.priorChanges ?? [],
  });
  const weigh = input.weigh ?? assessLook;
  const reasoning = weigh(evidence, { ...defaultSettings, notifiable: notifiableDiseases(pack) });
  const until = maskingEnd(examination, pack);
  const result = resultOf(examination, suspicion, stillSuspect !== null, until);
  return {
    result,
    suspicion,
    stillSuspect,
    maskedUntil: until,
    reasoning,
    setAside,
    combReadings,
    findings: findingsOf(examination, { result, suspicion, stillSuspect, until, setAside, reasoning, evidence, pack }),
  };
}

/** The version of the reasoning, as assessments keep it. */
export const scienceVersion = `brood ${reasoningVersion}`;

/** The pack's notifiable conditions that the reasoning knows. */
export function notifiableDiseases(pack: Pack): DiseaseId[] {
  return diseases.filter((one) => isNotifiable(pack, one));
}

function suspicionOf(examination: ExaminationBody, byInspector: readonly string[], pack: Pack): Suspicion | null {
  const [rule] = suspicionsByRule(
    {
      signs: examination.signs.filter((one) => one.outcome === 'seen').map((one) => one.sign),
      threadsMillimetres: examination.ropeTests
        .filter((one) => one.snapsBack !== false)
        .map((one) => one.threadMillimetres),
      positiveTests: examination.tests.filter((one) => countsAsPositive(one, examination)).map((one) => one.test),
    },
    pack,
  );
  const conditions = [...new Set([...byInspector, ...(rule ? [rule.condition] : [])])];
  if (conditions.length === 0) return null;
  // Where both speak, the inspector's act is the basis, and the rule stands beside it.
  return { basis: byInspector.length > 0 ? 'inspector' : 'pack rule', conditions, rule: rule ?? null };
}

function isOfBrood(material: string): boolean {
  return material === 'diseased cell' || material === 'scale or smear';
}

/** A kit read after the last day printed on it makes no suspicion: it is to be repeated. */
function countsAsPositive(test: HiveTest, examination: ExaminationBody): boolean {
  const readOn = test.readOn ?? dayOf(examination.observedAt);
  return test.result === 'positive' && (test.expires === null || readOn <= test.expires);
}

function resultOf(
  examination: ExaminationBody,
  suspicion: Suspicion | null,
  stillSuspect: boolean,
  until: string | null,
): ResultWord {
  if (suspicion) return 'suspect';
  if (stillSuspect) return 'remains suspect';
  if (seesTrouble(examination)) return 'signs seen';
  if (examination.claim !== 'nothing seen') return 'not judged';
  if (examination.depth === 'laboratory only') return 'not judged';
  if (until !== null) return 'masked, no conclusion';
  if (examination.hiveState === 'living' && tooLittleBrood(lookOf(examination))) return 'too little brood to judge';
  return 'nothing seen with this look';
}

function seesTrouble(examination: ExaminationBody): boolean {
  return (
    examination.signs.some((one) => one.outcome === 'seen' && speaksOfTrouble(one.sign)) ||
    examination.ropeTests.some((one) => one.threadMillimetres >= ropeThreshold) ||
    // Spores in bees or honey are no sign of brood disease: contaminated, not clinical.
    examination.tests.some((one) => isOfBrood(one.material) && countsAsPositive(one, examination))
  );
}

function findingsOf(
  examination: ExaminationBody,
  known: Pick<Assessed, 'result' | 'suspicion' | 'stillSuspect' | 'setAside' | 'reasoning'> & {
    readonly until: string | null;
    readonly evidence: Evidence;
    readonly pack: Pack;
  },
): Finding[] {
  const found: Finding[] = [];
  if (known.suspicion?.rule) {
    found.push(finding('casework.examined.rule-suspicion', 'warns', { article: known.suspicion.rule.article }));
  }
  if (known.suspicion) found.push(finding('casework.examined.close-the-hive', 'owed'));
  if (known.stillSuspect) {
    found.push(
      finding('casework.examined.earlier-suspicion', 'warns', { since: { moment: known.stillSuspect.since } }),
    );
  }
  if (known.until !== null) {
    found.push(finding('casework.examined.masked-until', 'warns', { until: { moment: known.until } }));
  }
  if (examination.hiveState === 'living' && tooLittleBrood(lookOf(examination))) {
    found.push(finding('casework.examined.too-little-brood', 'warns'));
  }
  if (!known.suspicion && known.reasoning.advice.some((one) => one.id === 'question-stays-open')) {
    found.push(finding('casework.examined.other-cause-keeps-question-open', 'warns'));
  }
  const contradiction = photographAgainstEye(known.evidence);
  if (contradiction) found.push(contradiction);
  const reported = examination.finds.filter(
    (one) => one.outcome === 'seen' && known.pack.notifiableFinds.some((rule) => rule.find === one.find),
  );
  if (reported.length > 0) found.push(finding('casework.examined.notifiable-find', 'owed'));
  if (known.reasoning.cautions.some((one) => one.id === 'respirator')) {
    found.push(finding('casework.caution.respirator', 'warns'));
  }
  if (known.setAside.length > 0) {
    found.push(finding('casework.examined.written-by-newer', 'tells', { count: known.setAside.length }));
  }
  return found;
}

/**
 * What was said of the brood pattern at the combs, against what the accepted photographs show beyond their error. Neither
 * rules the other out: the photographs show a few sides, the eye may have passed over some. It changes no word of the
 * result and nothing in the reasoning (`docs/decisions/0011`).
 */
function photographAgainstEye({ measuredPattern, signs }: Evidence): Finding | null {
  if (!measuredPattern) return null;
  const shown = shownBeyondError(measuredPattern);
  const values = {
    solid: Math.round(100 * measuredPattern.solidness),
    error: Math.max(1, Math.round(100 * measuredPattern.standardError)),
    sides: measuredPattern.sides,
  };
  const spotty = signs['pattern.spotty']?.outcome;
  if (spotty === 'seen') {
    return shown === 'compact' ? finding('casework.examined.photograph-compact', 'warns', values) : null;
  }
  const saidCompact = spotty === 'not seen' || signs['pattern.compact']?.outcome === 'seen';
  return shown === 'spotty' && saidCompact ? finding('casework.examined.photograph-spotty', 'warns', values) : null;
}
