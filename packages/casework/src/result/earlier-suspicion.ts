import type { ColonyState } from '@combside/record/states';
import { saysSuspect } from './results-by-gravity.ts';

/** Whether any assessment made at this visit says that the colony is suspect. */
export function suspectAtVisit(colony: ColonyState, visit: string): boolean {
  return colony.assessments.some((one) => one.body.visit === visit && saysSuspect(one.body.result));
}

/**
 * Whether a suspicion of an earlier visit still stands. Signs gone at a later look do not lift it: colonies lose their
 * signs for a time and relapse [NZ-INF]; lifting is an act of its own, with what the law asks for it.
 */
export function earlierSuspicion(
  colony: ColonyState,
  visit: string,
): { readonly since: string; readonly conditions: readonly string[] } | null {
  const stated = colony.assessments.filter((one) => one.body.visit !== visit && saysSuspect(one.body.result));
  const oldest = [...stated].sort((a, b) => (a.body.statedAt < b.body.statedAt ? -1 : 1))[0];
  if (!oldest) return null;
  const conditions = [...new Set(stated.flatMap((one) => one.body.suspected))].sort();
  return { since: oldest.body.statedAt, conditions };
}
