import type { Pack } from '@combside/law/pack';
import type { ColonyState } from '@combside/record/states';
import { statesOf } from '@combside/science/diagnosis/assess';
import type { FirstStep } from '@combside/science/diagnosis/first-steps';
import { broodNetwork } from '@combside/science/diagnosis/network';
import { nextChecks } from '@combside/science/diagnosis/next-check';
import { posterior } from '@combside/science/diagnosis/posterior';
import { priorFrom } from '@combside/science/diagnosis/prior';
import { leadingTwo } from '@combside/science/diagnosis/reasons';
import type { StateId } from '@combside/science/diagnosis/states';
import type { DiseaseId } from '@combside/science/signs/catalogue';
import type { ExaminationDraft } from '../draft/examination-draft.ts';
import { examinationFrom } from '../draft/examination-from-draft.ts';
import { lookStated } from '../draft/look-stated.ts';
import { notifiableDiseases } from './assess-examination.ts';
import { withWhatWasSaid } from './circumstances.ts';
import { evidenceFrom, type Setting } from './evidence.ts';

/** The reasoning in one line, always in sight: what it comes to, what leads, what to look at next. All ids. */
export interface ReasoningLine {
  /** `null` while nothing speaks for anything: no sign seen yet. */
  readonly leading: DiseaseId | null;
  /** The conditions in order, likeliest first, for "in order and in words". Empty while nothing leads. */
  readonly order: readonly DiseaseId[];
  readonly state: StateId;
  /** First steps that come before any check once suspicion stands. */
  readonly firstStep: FirstStep | null;
  /** The most useful check that can be done at this hive, or null. */
  readonly nextCheck: string | null;
}

/**
 * The line for a draft, from the point values alone (no draws), so that it follows every tap. Before the look is stated
 * it is taken as it stands: what was not stated limits what "not seen" can mean.
 */
export function reasoningLine(
  draft: ExaminationDraft,
  setting: {
    readonly colony: ColonyState | null;
    readonly pack: Pack;
    readonly observedAt: string;
    readonly suspicionStands: boolean;
    readonly known?: Setting['known'];
    /** The visit the draft belongs to: its accepted readings of comb photographs count. */
    readonly visit?: string;
  },
): ReasoningLine {
  const { evidence } = evidenceFrom(examinationSoFar(draft, setting.observedAt), {
    ...setting,
    known: withWhatWasSaid(setting.known ?? null, draft),
    priorChanges: draft.priorChanges,
  });
  const prior = priorFrom(evidence);
  const believed = posterior(broodNetwork, evidence, prior);
  const next = nextChecks(broodNetwork, evidence, prior, notifiableDiseases(setting.pack));
  const state = statesOf(evidence, believed)[0] ?? 'not-looked';
  const speaks = state === 'signs-seen' || state === 'suspicion-stands' || state === 'remains-suspect';
  const order = Object.entries(believed.disease)
    .sort(([, a], [, b]) => b - a)
    .map(([disease]) => disease as DiseaseId);
  return {
    leading: speaks ? leadingTwo(believed.disease)[0] : null,
    order: speaks ? order : [],
    state,
    firstStep: next.first[0]?.step ?? null,
    nextCheck: next.atHive[0]?.check ?? null,
  };
}

/**
 * An unfinished draft as an examination, for the reasoning only: it is never sealed. A box of which nothing was stated
 * yet counts as looked at when a sign was seen there, and as not looked at otherwise.
 */
export function examinationSoFar(draft: ExaminationDraft, observedAt: string) {
  const stated = lookStated(draft);
  const anything = draft.signs.length > 0 || draft.ropeTests.length > 0;
  const look = stated.ok
    ? stated
    : {
        depth: anything ? ('part' as const) : ('outside' as const),
        boxes: draft.boxes.map((one) => ({
          box: one.box,
          framesHeld: one.framesHeld,
          framesSeen: one.framesSeen ?? (anything ? Math.min(1, one.framesHeld) : 0),
          sides: one.sides ?? ('one' as const),
        })),
      };
  return examinationFrom(draft, {
    visit: draft.colony,
    apiary: draft.colony,
    observedAt,
    claim: 'not judged',
    look: { ...look, beesShaken: draft.beesShaken, hold: draft.hold, signsNotSeen: [] },
  });
}
