import type { ApiaryState, ColonyState } from '@combside/record/states';
import { isTouched } from '../draft/draft-from-taps.ts';
import type { HiveState, Tap } from '../draft/tap.ts';
import { standingAt } from '../register/standing-at.ts';
import { type ResultWord, resultWords, saysSuspect } from '../result/results-by-gravity.ts';

/** How a colony stands at this visit: not looked at yet, or its result. A suspicion that remains is told apart elsewhere. */
export type WalkWord = 'not opened' | 'being looked at' | Exclude<ResultWord, 'remains suspect'>;
export const walkWords: readonly WalkWord[] = [
  'not opened',
  'being looked at',
  ...resultWords.filter((one) => one !== 'remains suspect'),
];

export interface WalkedColony {
  readonly colony: string;
  readonly label: string;
  readonly word: WalkWord;
  /** What stands there: from this visit's examination, else from the register. */
  readonly hiveState: HiveState;
  /** Metres east and north of the plan's origin; null where the plan does not show it. */
  readonly at: { readonly east: number; readonly north: number } | null;
  /** A suspicion of an earlier visit stands. Shown to the inspector; open it last (common practice, no source). */
  readonly suspectBefore: boolean;
  readonly examination: string | null;
}

/**
 * The colonies of an apiary in the order in which one walks past them: as the plan says, then the rest by label.
 *
 * @param drafts the stored taps of colonies not closed yet, by colony id
 */
export function walk(
  apiary: ApiaryState,
  colonies: readonly ColonyState[],
  visit: string,
  drafts: Readonly<Record<string, readonly Tap[]>> = {},
): WalkedColony[] {
  const plan = apiary.apiary.current?.body.plan ?? null;
  const order = new Map(plan?.walk.map((colony, index) => [colony, index]) ?? []);
  const last = order.size;
  return standingAt(apiary.about.id, colonies)
    .map((colony): WalkedColony => {
      const body = colony.colony.current?.body;
      const examination = examinationAt(colony, visit);
      const registered = body?.hiveState === 'dead' || body?.hiveState === 'stored combs' ? body.hiveState : 'living';
      return {
        colony: colony.about.id,
        label: body?.label ?? '',
        word: wordFor(colony, visit, drafts[colony.about.id] ?? []),
        hiveState: examination?.body.hiveState ?? registered,
        at: plan?.hives.find((one) => one.colony === colony.about.id)?.at ?? null,
        suspectBefore: colony.assessments.some((one) => one.body.visit !== visit && saysSuspect(one.body.result)),
        examination: examination?.written.entry ?? null,
      };
    })
    .sort((a, b) => (order.get(a.colony) ?? last) - (order.get(b.colony) ?? last) || byLabel(a.label, b.label));
}

/** The newest examination of a colony at a visit, or null. */
export function examinationAt(colony: ColonyState, visit: string): ColonyState['examinations'][number] | null {
  return colony.examinations.find((one) => one.body.visit === visit) ?? null;
}

/** The newest assessment of a colony at a visit, or null. */
export function assessmentAt(colony: ColonyState, visit: string): ColonyState['assessments'][number] | null {
  const made = colony.assessments.filter((one) => one.body.visit === visit);
  return made.reduce<(typeof made)[number] | null>(
    (newest, one) => (newest === null || one.body.statedAt > newest.body.statedAt ? one : newest),
    null,
  );
}

function wordFor(colony: ColonyState, visit: string, taps: readonly Tap[]): WalkWord {
  if (isTouched(taps)) return 'being looked at';
  const examination = examinationAt(colony, visit);
  if (!examination) return 'not opened';
  const result = assessmentAt(colony, visit)?.body.result;
  if (saysSuspect(result ?? null)) return 'suspect';
  if (result === 'masked, no conclusion' || result === 'too little brood to judge') return result;
  if (examination.body.claim === 'nothing seen') return 'nothing seen with this look';
  return examination.body.claim === 'signs seen' ? 'signs seen' : 'not judged';
}

/** 2 before 10: labels are mostly numbers, so digits are compared as numbers. */
export function byLabel(a: string, b: string): number {
  const parts = (label: string) => label.match(/\d+|\D+/g) ?? [];
  const left = parts(a);
  const right = parts(b);
  for (let i = 0; i < Math.max(left.length, right.length); i++) {
    const x = left[i] ?? '';
    const y = right[i] ?? '';
    if (x === y) continue;
    const numbers = /^\d+$/.test(x) && /^\d+$/.test(y);
    if (numbers && Number(x) !== Number(y)) return Number(x) - Number(y);
    return x < y ? -1 : 1;
  }
  return 0;
}
