import { mergedInto } from '@combside/record/fold';
import { type ApiaryBody, apiary } from '@combside/record/kinds/apiary';
import { colony } from '@combside/record/kinds/colony';
import { type KeeperBody, keeper } from '@combside/record/kinds/keeper';
import { type MergeBody, merge } from '@combside/record/kinds/merge';
import type { ApiaryState, ColonyState, KeeperState } from '@combside/record/states';
import { type Act, done, type Finding, finding, refused } from '../act.ts';
import { changedFields } from './change.ts';
import { seen } from './seen.ts';
import { standingAt } from './standing-at.ts';

/** Of two records the older one (by identifier, which sorts by time of making) is kept; the other is read as part of it. */
export function keptOf(one: string, two: string): { readonly kept: string; readonly other: string } {
  return one < two ? { kept: one, other: two } : { kept: two, other: one };
}

/** What the kept record of two keepers takes over, and why they are one. */
export interface MergeKeepers {
  /** Fields whose value is taken from the other record. */
  readonly takes: readonly (keyof KeeperBody)[];
  /** Every apiary that names the other record as its keeper. */
  readonly apiaries: readonly ApiaryState[];
  readonly reason: string;
}

/** What the kept record of two apiaries takes over, and why they are one. */
export interface MergeApiaries {
  /** Fields whose value is taken from the other record; never the district. */
  readonly takes: readonly Exclude<keyof ApiaryBody, 'district'>[];
  /** Every colony that stands at either. */
  readonly colonies: readonly ColonyState[];
  readonly reason: string;
}

/**
 * Merges two records of one keeper. The apiaries of the other become the kept one's; both histories stay readable, and
 * `takeApart` undoes it.
 */
export function mergeKeepers(one: KeeperState, two: KeeperState, merging: MergeKeepers): Act {
  const { takes, apiaries, reason } = merging;
  const { first, second, refusal } = bothStand(one, two, reason);
  if (refusal) return refusal;
  const kept = first.keeper.current?.body;
  const other = second.keeper.current?.body;
  if (!kept || !other) return refused('casework.refused.not-in-register');
  const proposals = [mergeProposal(second, first.about.id, 'same', reason)];
  const body = { ...kept, ...picked(other, takes) };
  if (changedFields(kept, body).length > 0) {
    proposals.push({
      kind: keeper.kind,
      version: keeper.version,
      about: first.about,
      body,
      replaces: seen(first.keeper),
    });
  }
  for (const state of apiaries) {
    const site = state.apiary.current?.body;
    if (site?.keeper !== second.about.id) continue;
    const moved: ApiaryBody = { ...site, keeper: first.about.id };
    proposals.push({
      kind: apiary.kind,
      version: apiary.version,
      about: state.about,
      body: moved,
      replaces: seen(state.apiary),
    });
  }
  return done(proposals);
}

/**
 * Merges two records of one apiary. Colonies of the other go to the kept one, unless a colony of the same label stands
 * there: it may be the same hive, so both stay where they are and it is said. Visits stay with the record at which they
 * were made, and are shown with both.
 */
export function mergeApiaries(one: ApiaryState, two: ApiaryState, merging: MergeApiaries): Act {
  const { takes, colonies, reason } = merging;
  const { first, second, refusal } = bothStand(one, two, reason);
  if (refusal) return refusal;
  const kept = first.apiary.current?.body;
  const other = second.apiary.current?.body;
  if (!kept || !other) return refused('casework.refused.not-in-register');
  if (kept.district !== other.district) return refused('casework.refused.other-district', { district: other.district });
  const proposals = [mergeProposal(second, first.about.id, 'same', reason)];
  const body = { ...kept, ...picked(other, takes) };
  if (changedFields(kept, body).length > 0) {
    proposals.push({
      kind: apiary.kind,
      version: apiary.version,
      about: first.about,
      body,
      replaces: seen(first.apiary),
    });
  }
  const labels = new Set(standingAt(first.about.id, colonies).map((state) => state.colony.current?.body.label));
  let stay = 0;
  for (const state of standingAt(second.about.id, colonies)) {
    const hive = state.colony.current?.body;
    if (!hive) continue;
    if (labels.has(hive.label)) {
      stay += 1;
      continue;
    }
    const moved = { ...hive, apiary: first.about.id };
    proposals.push({
      kind: colony.kind,
      version: colony.version,
      about: state.about,
      body: moved,
      replaces: seen(state.colony),
    });
  }
  const told: Finding[] =
    stay > 0 ? [finding('casework.register.same-label-stays', 'warns', { count: stay }, second.about)] : [];
  return done(proposals, told);
}

/** Writes down that two records were looked at and are different ones; a merge is taken back by the same word. */
export function tellApart(one: KeeperState | ApiaryState, two: KeeperState | ApiaryState, reason: string): Act {
  if (one.about.type !== two.about.type || one.about.id === two.about.id) {
    return refused('casework.refused.not-two-records');
  }
  const { kept, other } = keptOf(one.about.id, two.about.id);
  return done([mergeProposal(one.about.id === other ? one : two, kept, 'two', reason)]);
}

/** Takes a merge back: the record stands by itself again. What was moved or taken over stays until somebody changes it. */
export function takeApart(state: KeeperState | ApiaryState, reason: string): Act {
  const into = mergedInto(state);
  if (into === null) return refused('casework.refused.not-merged');
  if (reason.trim() === '') return refused('casework.refused.reason-missing');
  return done([mergeProposal(state, into, 'two', reason)]);
}

function bothStand<State extends KeeperState | ApiaryState>(one: State, two: State, reason: string) {
  const [first, second] = (one.about.id < two.about.id ? [one, two] : [two, one]) as [State, State];
  const refusal =
    one.about.id === two.about.id
      ? refused('casework.refused.not-two-records')
      : mergedInto(first) !== null || mergedInto(second) !== null
        ? refused('casework.refused.merged-already')
        : reason.trim() === ''
          ? refused('casework.refused.reason-missing')
          : null;
  return { first, second, refusal };
}

function mergeProposal(about: KeeperState | ApiaryState, other: string, verdict: MergeBody['verdict'], reason: string) {
  const body: MergeBody = { other, verdict, reason: reason.trim().slice(0, 500) };
  return {
    kind: merge.kind,
    version: merge.version,
    about: about.about,
    body: body as unknown,
    replaces: [] as string[],
  };
}

function picked<Body extends object>(from: Body, names: readonly (keyof Body)[]): Partial<Body> {
  const taken: Partial<Body> = {};
  for (const name of names) taken[name] = from[name];
  return taken;
}
