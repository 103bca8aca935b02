import { type Duty, duties, type Fact } from '@combside/law/duties';
import type { Pack } from '@combside/law/pack';
import type { ColonyState } from '@combside/record/states';
import { type ResultWord, suspectWords } from '../result/results-by-gravity.ts';

/** The result words that can start or meet a duty; looks of every other word need not be opened to say what is owed. */
export const dutyBearingResults = [
  ...suspectWords,
  'masked, no conclusion',
  'signs seen',
] as const satisfies readonly ResultWord[];

/**
 * What the record of some colonies says to the law: suspicions stated, notifiable finds, masked looks, other causes that
 * keep the question open, and full looks without signs. Reports, notices, specimens and confirmations are not written
 * down yet in this version of the record, so a duty that only they can meet stays open.
 */
export function factsFrom(colonies: readonly ColonyState[], pack: Pack): Fact[] {
  return colonies.flatMap((colony) => colony.assessments.flatMap((made) => factsOf(colony, made, pack)));
}

function factsOf(colony: ColonyState, made: ColonyState['assessments'][number], pack: Pack): Fact[] {
  const examined = colony.examinations.find((one) => one.written.entry === made.body.examination)?.body;
  if (!examined) return [];
  const at = { apiary: examined.apiary, colony: colony.about.id, at: made.body.statedAt };
  const found: Fact[] = [];
  if (made.body.result === 'suspect') {
    for (const condition of made.body.suspected) found.push({ fact: 'suspicion', condition, ...at });
  }
  if (made.body.result === 'masked, no conclusion') {
    for (const one of pack.notifiable) found.push({ fact: 'masked look', condition: one.condition, ...at });
  }
  const full = examined.depth === 'full' && examined.hiveState === 'living';
  if (made.body.result === 'nothing seen with this look' && full) {
    found.push({ fact: 'look without signs', condition: null, ...at });
  }
  const leading = made.body.differential[0];
  const explained =
    leading && leading.probability >= 0.9 && !pack.notifiable.some((one) => one.condition === leading.condition);
  if (made.body.result === 'signs seen' && explained) {
    for (const one of pack.notifiable) found.push({ fact: 'other cause found', condition: one.condition, ...at });
  }
  for (const one of examined.finds) {
    const rule = pack.notifiableFinds.some((listed) => listed.find === one.find);
    if (one.outcome === 'seen' && rule) found.push({ fact: 'notifiable find', condition: one.find, ...at });
  }
  return found;
}

/** What is owed for these colonies. `now` is handed in by the edge. */
export function dutiesOwed(colonies: readonly ColonyState[], pack: Pack, now: string): Duty[] {
  return onceForEachReason(duties(factsFrom(colonies, pack), pack, now));
}

/**
 * A look again stands once for each colony and reason, however many notifiable diseases it is for: one look answers for
 * all of them. It then names no condition. Every other duty stands as it is.
 */
export function onceForEachReason(owed: readonly Duty[]): Duty[] {
  const once = new Map<string, Duty>();
  for (const duty of owed) {
    const { rule, apiary, colony, since, state, met } = duty;
    const key = duty.duty === 'look again' ? [rule, apiary, colony, since, state, met].join('/') : duty.id;
    const twin = once.get(key);
    once.set(key, twin && twin.condition !== duty.condition ? { ...twin, condition: null } : duty);
  }
  return [...once.values()];
}
