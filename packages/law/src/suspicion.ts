import type { Pack, SuspicionRule } from './pack.ts';

/** What was seen and tested in one colony, as far as a pack's suspicion rules look at it. */
export interface Seen {
  readonly signs: readonly string[];
  /** Threads drawn on a rough dry stick, millimetres; short ones included. */
  readonly threadsMillimetres: readonly number[];
  /** Tests that came out positive. */
  readonly positiveTests: readonly string[];
}

/**
 * The suspicions that a pack itself makes from named signs and tests. A rule known only from memory makes none.
 *
 * @returns the rules that apply, in the pack's order
 */
export function suspicionsByRule(seen: Seen, pack: Pack): SuspicionRule[] {
  return pack.suspicion.filter((rule) => {
    if (rule.standing === 'from memory') return false;
    const { on } = rule;
    if (on.what === 'sign') return seen.signs.includes(on.sign);
    if (on.what === 'rope test') return seen.threadsMillimetres.some((length) => length >= on.millimetres);
    return seen.positiveTests.includes(on.test);
  });
}
