import type { SourceId } from '@combside/sources/bibliography';
import { combsWereSeen } from '../brood/look.ts';
import { type DiseaseId, diseases, type SignId, signs } from '../signs/catalogue.ts';
import { isPublished } from './bands.ts';
import { type CouldHaveMissed, couldHaveMissed, tooLittleBrood } from './could-have-missed.ts';
import { checkEvidence, type Evidence } from './evidence.ts';
import { type Interval, intervals } from './intervals.ts';
import { broodNetwork, numbersBehind } from './network.ts';
import { type CheckSettings, defaultCheckSettings, type NextChecks, nextChecks } from './next-check.ts';
import { chanceOfAny, inferenceOf, nodeAt, type Posterior, posterior } from './posterior.ts';
import { type Prior, priorFrom } from './prior.ts';
import { leadingTwo, type Reasons, reasonsFor } from './reasons.ts';
import { name, type Sentence, sentence } from './sentence.ts';
import { type Severity, severityOf } from './severity.ts';
import { isMasked, readRopeTests, ropeThreshold, sortEvidence } from './sort-evidence.ts';
import type { StateId } from './states.ts';
import { figureOf } from './test-figures.ts';
import { type TimeSinceOnset, timeSinceOnset } from './time-since-onset.ts';

/** The version of the reasoning: kept with every assessment, raised whenever a number or a rule changes. */
export const reasoningVersion = 2;

export interface AssessSettings {
  /** Which diseases the pack in force makes notifiable. */
  readonly notifiable: readonly DiseaseId[];
  readonly checks: CheckSettings;
  readonly draws: number;
  readonly seed: number;
  /** From this probability a notifiable disease is named in advice (a laboratory is asked for). A setting. */
  readonly worthALaboratory: number;
}

/** Defaults; the pack replaces what is notifiable. */
export const defaultSettings: AssessSettings = {
  notifiable: ['american-foulbrood', 'european-foulbrood'],
  checks: defaultCheckSettings,
  draws: 400,
  seed: 1,
  worthALaboratory: 0.05,
};

/** The one line under an examination. */
type LineId = 'line.suspicion' | `line.${'condition' | 'state'}${'' | '-and-check'}`;

export type CautionId = 'respirator' | 'do-not-shake' | 'never-certain-from-a-look';

export type AdviceId =
  | 'second-cell'
  | 'laboratory-sample'
  | 'laboratory-to-separate'
  | 'repeat-with-rough-dry-stick'
  | 'recheck-short-thread'
  | 'treat-mites-and-look-again'
  | 'keep-opening-cells'
  | 'question-stays-open'
  | 'look-again-after-masking'
  | 'look-at-every-frame'
  | 'look-again-contaminated'
  | 'specimen-though-signs-gone';

/** How likely, in words; the numbers are one tap deeper. */
export type Likelihood = 'almost-sure' | 'likely' | 'possible' | 'cannot-be-left-aside' | 'nothing-points-to-it';

export interface DiseaseAssessment {
  readonly disease: DiseaseId;
  readonly point: number;
  readonly interval: Interval;
  readonly prior: number;
  /** The ends of the prior: of its band, or of the counts. */
  readonly priorBetween: readonly [number, number];
  readonly priorSteps: Prior['diseases'][number]['steps'];
  readonly inWords: Likelihood;
  readonly stages?: {
    readonly early: { readonly point: number; readonly interval: Interval };
    readonly advanced: { readonly point: number; readonly interval: Interval };
  };
}

export interface Advice {
  readonly id: AdviceId;
  readonly sentence: Sentence<`advice.${AdviceId}`>;
  /** Where it comes from; none where it is common practice or follows from the state alone. */
  readonly sources: readonly SourceId[];
}

const adviceSources: Readonly<Record<AdviceId, readonly SourceId[]>> = {
  'second-cell': ['NZ-DIFF'],
  'laboratory-sample': ['NZ-FIELD', 'NZ-ROPE'],
  'laboratory-to-separate': ['NZ-EFB', 'ABJ22', 'NZ-HMS', 'OIE-EFB07'],
  'repeat-with-rough-dry-stick': ['NZ-ROPE'],
  'recheck-short-thread': ['NZ-ROPE'],
  'treat-mites-and-look-again': ['NZ-COLLECT', 'NZ-PMS'],
  'keep-opening-cells': ['NZ-FRAMES'],
  'question-stays-open': ['NZ-FRAMES'],
  'look-again-after-masking': [],
  'look-at-every-frame': ['NZ-FRAMES', 'NZ-SHAKE'],
  'look-again-contaminated': ['LF05', 'STE20'],
  'specimen-though-signs-gone': ['NZ-INF'],
};

/** Everything the reasoning returns on one look: plain data, ready for JSON. */
export interface WholeAssessment {
  readonly version: number;
  readonly jointStates: number;
  /** The first is the one to say; the others hold as well. */
  readonly states: readonly { readonly id: StateId; readonly sentence: Sentence<`state.${StateId}`> }[];
  /** The line at the comb. */
  readonly line: Sentence<LineId>;
  /** By posterior, greatest first. */
  readonly diseases: readonly DiseaseAssessment[];
  readonly none: { readonly point: number; readonly interval: Interval };
  readonly notifiable: {
    readonly diseases: readonly DiseaseId[];
    readonly point: number;
    readonly interval: Interval;
  };
  readonly convergence: { readonly draws: number; readonly seed: number; readonly widestEnd: number };
  readonly reasons: Reasons;
  readonly next: NextChecks;
  /** Signs this hive could still be asked for. */
  readonly notLookedFor: readonly SignId[];
  readonly couldHaveMissed: CouldHaveMissed;
  readonly timeSinceOnset: TimeSinceOnset | null;
  readonly severity: Severity | null;
  readonly cautions: readonly { readonly id: CautionId; readonly sentence: Sentence<`caution.${CautionId}`> }[];
  readonly advice: readonly Advice[];
  /** How many of the numbers behind this answer are expert bands, and how many were published. */
  readonly standing: { readonly expertBands: number; readonly published: number };
}

/** Days after a mite treatment before looking again (NZ-COLLECT). */
export const recheckAfterMiteTreatment = 20;
/** Months over which a suspect with a short thread is looked at again (NZ-ROPE). */
export const recheckShortThreadMonths = 6;
/** Days until the next look where another cause was found and the question stays open: one worker brood cycle. A setting; common practice, no source. */
export const recheckOtherCause = 21;

const definitive: readonly SignId[] = ['tongue', 'con.ropy', 'scale.hard_lower'];
const capsOverDead: readonly SignId[] = ['cap.sunken', 'cap.dark_greasy', 'cap.perforated'];

/**
 * The whole assessment of one look.
 *
 * @param evidence everything the examination offers
 * @param settings what is notifiable, what errors cost, how many draws
 * @throws RangeError when the evidence cannot be (see `checkEvidence`)
 */
export function assessLook(evidence: Evidence, settings: AssessSettings = defaultSettings): WholeAssessment {
  checkEvidence(evidence);
  const network = broodNetwork;
  const prior = priorFrom(evidence);
  const believed = posterior(network, evidence, prior);
  const drawn = intervals(network, evidence, prior, settings.notifiable, settings);
  const order = [...diseases].sort((a, b) => believed.disease[b] - believed.disease[a]);
  const reasons = reasonsFor(network, evidence, prior, leadingTwo(believed.disease));
  const next = nextChecks(network, evidence, prior, settings.notifiable, settings.checks);
  const states = statesOf(evidence, believed);
  const numbers = sortEvidence(network, evidence).items.flatMap((item) =>
    numbersBehind(nodeAt(network, item.index), evidence.circumstances.exposure),
  );
  const published = numbers.filter(isPublished).length;

  return {
    version: reasoningVersion,
    jointStates: inferenceOf(network).states,
    states: states.map((id) => ({
      id,
      sentence: sentence(
        `state.${id}`,
        id === 'signs-seen' ? { condition: name('condition', order[0] as DiseaseId) } : {},
      ),
    })),
    line: lineOf(states[0] as StateId, order[0] as DiseaseId, next),
    diseases: order.map((disease): DiseaseAssessment => {
      const before = prior.diseases.find((one) => one.disease === disease) as Prior['diseases'][number];
      const point = believed.disease[disease];
      return {
        disease,
        point,
        interval: drawn.disease[disease],
        prior: before.value.value,
        priorBetween: [before.value.low ?? before.value.value, before.value.high ?? before.value.value],
        priorSteps: before.steps,
        inWords: inWords(point, before.value.value),
        ...(disease === 'american-foulbrood'
          ? {
              stages: {
                early: { point: believed.foulbroodStage.early, interval: drawn.foulbroodStage.early },
                advanced: { point: believed.foulbroodStage.advanced, interval: drawn.foulbroodStage.advanced },
              },
            }
          : {}),
      };
    }),
    none: { point: believed.none, interval: drawn.none },
    notifiable: {
      diseases: settings.notifiable,
      point: chanceOfAny(network, believed.joint, settings.notifiable),
      interval: drawn.notifiable,
    },
    convergence: { draws: drawn.draws, seed: drawn.seed, widestEnd: drawn.widestEnd },
    reasons,
    next,
    notLookedFor: signs
      .filter((sign) => sign.askedIn.includes(evidence.hive) && !evidence.signs[sign.id])
      .map((sign) => sign.id),
    couldHaveMissed: couldHaveMissed(evidence.look, settings),
    timeSinceOnset: timeSinceOnset(evidence),
    severity: severityOf(evidence.frameCounts),
    cautions: cautionsOf(evidence, believed).map((id) => ({ id, sentence: sentence(`caution.${id}`) })),
    advice: adviceOf(evidence, believed, prior, settings, states),
    standing: { expertBands: numbers.length - published, published },
  };
}

/** The word for a probability: our settings. A disease raised well above its prior is never left aside. */
export function inWords(point: number, prior: number): Likelihood {
  if (point >= 0.95) return 'almost-sure';
  if (point >= 0.6) return 'likely';
  if (point >= 0.2) return 'possible';
  if (point >= 2 * prior) return 'cannot-be-left-aside';
  return 'nothing-points-to-it';
}

function seenSigns(evidence: Evidence): SignId[] {
  return signs
    .filter((sign) => evidence.signs[sign.id]?.outcome === 'seen' && !sign.ofHealthyBrood)
    .map(({ id }) => id);
}

function positive(evidence: Evidence, materials: readonly string[], target: string): boolean {
  return evidence.tests.some((test) => {
    const figure = figureOf(test.test);
    return test.result === 'positive' && figure.target === target && materials.includes(figure.material);
  });
}

/** What the look comes to, the one to say first. */
export function statesOf(evidence: Evidence, believed: Posterior): StateId[] {
  const states: StateId[] = [];
  const seen = seenSigns(evidence);
  const thread = readRopeTests(evidence.ropeTests).thread !== null;
  const nothing = seen.length === 0 && !thread;
  if (evidence.suspicionStands) states.push('suspicion-stands');
  // An answer "negative" of the laboratory settles a suspicion; signs that went away do not.
  if (evidence.earlier.some((look) => look.suspect && look.answered !== 'negative')) states.push('remains-suspect');
  if (nothing && positive(evidence, ['bees', 'honey', 'debris'], 'american-foulbrood')) {
    states.push('contaminated-not-clinical');
  }
  if (!nothing) {
    const explained = believed.none < 0.5;
    states.push(explained ? 'signs-seen' : 'signs-unexplained');
    return states;
  }
  if (isMasked(evidence)) states.push('masked');
  const { look } = evidence;
  if (!combsWereSeen(look)) states.push('not-looked');
  else {
    if (evidence.hive === 'living' && tooLittleBrood(look)) states.push('too-little-brood');
    const narrow =
      look.depth !== 'full' ||
      look.beesShaken !== true ||
      look.sides !== 'both' ||
      look.framesHeld === null ||
      look.framesSeen !== look.framesHeld ||
      look.light === 'poor';
    if (narrow) states.push('look-too-narrow');
    if (!isMasked(evidence) && !narrow && !states.includes('too-little-brood')) states.push('nothing-seen');
  }
  return states;
}

function lineOf(state: StateId, leading: DiseaseId, next: NextChecks): Sentence<LineId> {
  const first = next.first[0];
  if (first) return sentence('line.suspicion', { step: { word: `signs.first.${first.step}` } });
  const check = next.atHive[0];
  const values = {
    state: { word: `signs.state-name.${state}` as const },
    condition: name('condition', leading),
    ...(check ? { check: name('check', check.check) } : {}),
  };
  const kind = state === 'signs-seen' ? 'condition' : 'state';
  return sentence(check ? (`line.${kind}-and-check` as const) : (`line.${kind}` as const), values);
}

function cautionsOf(evidence: Evidence, believed: Posterior): CautionId[] {
  const cautions: CautionId[] = [];
  if (evidence.signs['con.mummy_stone']?.outcome === 'seen' || believed.disease.stonebrood >= 0.05) {
    cautions.push('respirator', 'do-not-shake');
  }
  cautions.push('never-certain-from-a-look');
  return cautions;
}

function adviceOf(
  evidence: Evidence,
  believed: Posterior,
  prior: Prior,
  settings: AssessSettings,
  states: readonly StateId[],
): Advice[] {
  const advice: Advice[] = [];
  const give = (id: AdviceId, values: Sentence<string>['values'] = {}): void => {
    advice.push({ id, sentence: sentence(`advice.${id}`, values), sources: adviceSources[id] });
  };
  const rope = readRopeTests(evidence.ropeTests);
  const seen = new Set(seenSigns(evidence));
  const probability = believed.disease;
  const foulbrood = probability['american-foulbrood'];
  const before = (disease: DiseaseId): number =>
    (prior.diseases.find((one) => one.disease === disease) as Prior['diseases'][number]).value.value;

  const strongSigns = definitive.filter((sign) => seen.has(sign));
  if (strongSigns.length > 0 || rope.thread !== null) give('second-cell', { from: 3, to: 4 });
  if (rope.poorStick) give('repeat-with-rough-dry-stick');
  const short = evidence.ropeTests.some((one) => one.threadMillimetres > 0 && one.threadMillimetres < ropeThreshold);
  if (short && rope.thread === null) give('recheck-short-thread', { months: recheckShortThreadMonths });

  const worth = settings.worthALaboratory;
  const notifiableWorth = settings.notifiable.filter(
    (disease) => probability[disease] >= worth && probability[disease] > before(disease),
  );
  if (strongSigns.length > 0 || rope.thread !== null || notifiableWorth.length > 0 || evidence.suspicionStands) {
    give('laboratory-sample');
  }
  // Conditions that look alike and are separated in the laboratory only (ABJ22, NZ-HMS).
  for (const [one, other] of [
    ['american-foulbrood', 'european-foulbrood'],
    ['european-foulbrood', 'half-moon'],
  ] as const) {
    if (probability[one] >= worth && probability[other] >= worth && seen.size > 0) {
      give('laboratory-to-separate', { one: name('condition', one), other: name('condition', other) });
    }
  }

  if (probability['varroa-damage'] >= 0.5 && capsOverDead.some((sign) => seen.has(sign))) {
    give('treat-mites-and-look-again', { days: recheckAfterMiteTreatment });
  }
  const { cellsOpened, cellsSuspicious } = evidence.look;
  if (cellsSuspicious !== null && cellsSuspicious > (cellsOpened ?? 0)) {
    give('keep-opening-cells', { opened: cellsOpened ?? 0, suspicious: cellsSuspicious });
  }
  const explained = diseases.find(
    (disease) => !settings.notifiable.includes(disease) && probability[disease] >= 0.9 && seen.size > 0,
  );
  if (explained && foulbrood < 0.5) {
    give('question-stays-open', { condition: name('condition', explained), days: recheckOtherCause });
  }
  if (states.includes('masked')) {
    const { maskingDays, daysSinceCombChange, daysSinceMedicine } = evidence.circumstances;
    const since = Math.min(
      daysSinceMedicine ?? Number.POSITIVE_INFINITY,
      daysSinceCombChange ?? Number.POSITIVE_INFINITY,
    );
    give('look-again-after-masking', { days: Math.ceil((maskingDays as number) - since) });
  }
  if (states.includes('look-too-narrow')) give('look-at-every-frame');
  if (states.includes('contaminated-not-clinical')) give('look-again-contaminated');
  if (states.includes('remains-suspect') && foulbroodSignsGone(seen, rope.thread)) give('specimen-though-signs-gone');
  return advice;
}

function foulbroodSignsGone(seen: ReadonlySet<SignId>, thread: number | null): boolean {
  return thread === null && [...definitive, ...capsOverDead].every((sign) => !seen.has(sign));
}
