import { type ApiaryBody, apiary } from '@combside/record/kinds/apiary';
import { type ColonyBody, colony } from '@combside/record/kinds/colony';
import { type KeeperBody, keeper } from '@combside/record/kinds/keeper';
import { type MovementBody, movement } from '@combside/record/kinds/movement';
import type { ProposedChangeBody } from '@combside/record/kinds/proposed-change';
import type { ApiaryState, ColonyState, Folded, KeeperState, MovementState, Register } from '@combside/record/states';
import { type Act, done, refused } from '../act.ts';
import { changeApiary } from './apiary.ts';
import { changeColony } from './colony.ts';
import { seen } from './seen.ts';

type Registered = ApiaryState | ColonyState | KeeperState | MovementState;
type RegisteredBody = ApiaryBody | ColonyBody | KeeperBody | MovementBody;

/**
 * Settles a contested register value: the chosen one becomes the value, and replaces every other.
 *
 * @param entry id of the entry whose value is to stand, the current one or one that contests it
 */
export function settleContested(state: Registered, entry: string): Act {
  const register = registerOf(state);
  if (register.contested.length === 0) return refused('casework.refused.nothing-contested');
  const values: readonly Folded<RegisteredBody>[] = register.current
    ? [register.current, ...register.contested]
    : register.contested;
  const chosen = values.find((one) => one.written.entry === entry);
  if (!chosen) return refused('casework.refused.not-in-register');
  const kind = 'apiary' in state ? apiary : 'colony' in state ? colony : 'movement' in state ? movement : keeper;
  return done([
    { kind: kind.kind, version: kind.version, about: state.about, body: chosen.body, replaces: seen(register) },
  ]);
}

/**
 * Accepts a proposed change of an apiary: the register then says what the inspector proposed. A proposal is open as long
 * as the register does not say what it proposes; `openProposals` lists them.
 */
export function acceptApiaryChange(state: ApiaryState, proposal: Folded<ProposedChangeBody>): Act {
  const { field, to } = proposal.body;
  if (field === 'district') return refused('casework.refused.unknown-field', { field });
  return changeApiary(state, { [field]: to } as Partial<ApiaryBody>);
}

/** Accepts a proposed change of a colony. */
export function acceptColonyChange(
  state: ColonyState,
  proposal: Folded<ProposedChangeBody>,
  colonies: readonly ColonyState[],
): Act {
  const { field, to } = proposal.body;
  return changeColony(state, { [field]: to } as Partial<ColonyBody>, colonies);
}

/** Proposed changes that the register does not follow yet, newest proposal of each field only. */
export function openProposals(state: ApiaryState | ColonyState): Folded<ProposedChangeBody>[] {
  const register = 'apiary' in state ? state.apiary : state.colony;
  const current = register.current;
  if (!current) return [];
  const body = current.body as Record<string, unknown>;
  const newest = new Map<string, Folded<ProposedChangeBody>>();
  for (const one of state.proposals) {
    const before = newest.get(one.body.field);
    if (!before || one.written.clock > before.written.clock) newest.set(one.body.field, one);
  }
  // A register entry made after the proposal has answered it, whether it followed or not.
  return [...newest.values()].filter(
    (one) => one.written.clock > current.written.clock && body[one.body.field] !== one.body.to,
  );
}

/** Whether values that did not see each other wait for somebody to choose. */
export function isContested(state: ApiaryState | ColonyState | KeeperState): boolean {
  return registerOf(state).contested.length > 0;
}

/** Whether a record of the register waits for somebody's word: a contested value, or a proposed change nobody answered. */
export function isUnsettled(state: ApiaryState | ColonyState | KeeperState): boolean {
  return isContested(state) || ('proposals' in state && openProposals(state).length > 0);
}

/** Rejects a proposed change: the register says again what it says, and from then on has answered the proposal. */
export function rejectChange(state: ApiaryState | ColonyState, proposal: Folded<ProposedChangeBody>): Act {
  const register = 'apiary' in state ? state.apiary : state.colony;
  const { current } = register;
  if (!current || !openProposals(state).some((one) => one.written.entry === proposal.written.entry)) {
    return refused('casework.refused.nothing-changed');
  }
  const kind = 'apiary' in state ? apiary : colony;
  return done([
    { kind: kind.kind, version: kind.version, about: state.about, body: current.body, replaces: seen(register) },
  ]);
}

function registerOf(state: Registered): Register<RegisteredBody> {
  if ('apiary' in state) return state.apiary;
  if ('colony' in state) return state.colony;
  return 'movement' in state ? state.movement : state.keeper;
}
