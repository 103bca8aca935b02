import { type ColonyBody, colony, colonyBody } from '@combside/record/kinds/colony';
import type { ApiaryState, ColonyState } from '@combside/record/states';
import { type Act, done, refused } from '../act.ts';
import { changedFields, firstFault } from './change.ts';
import { hiveType } from './hive-types.ts';
import { seen } from './seen.ts';
import { standingAt } from './standing-at.ts';

/** Enters a colony at an apiary. Refused when its label is already used there, or the hive type is unknown. */
export function newColony({
  id,
  body,
  at,
  colonies,
}: {
  readonly id: string;
  readonly body: ColonyBody;
  readonly at: ApiaryState;
  /** The colonies of that apiary. */
  readonly colonies: readonly ColonyState[];
}): Act {
  if (!at.apiary.current || body.apiary !== at.about.id) return refused('casework.refused.not-in-register');
  const fault = faultOf(body) ?? labelTaken(body, id, colonies);
  if (fault) return fault;
  return done([{ kind: colony.kind, version: colony.version, about: { type: 'colony', id }, body, replaces: [] }]);
}

/** Changes what the register says about a colony, its apiary included (a move of one hive). */
export function changeColony(
  state: ColonyState,
  change: Partial<ColonyBody>,
  colonies: readonly ColonyState[],
): Act<{ readonly changed: string[] }> {
  const before = state.colony.current?.body;
  if (!before) return refused('casework.refused.not-in-register');
  const body = { ...before, ...change };
  const fault = faultOf(body) ?? labelTaken(body, state.about.id, colonies);
  if (fault) return fault;
  const changed = changedFields(before, body);
  if (changed.length === 0) return refused('casework.refused.nothing-changed');
  const proposal = {
    kind: colony.kind,
    version: colony.version,
    about: state.about,
    body,
    replaces: seen(state.colony),
  };
  return { ...done([proposal]), changed };
}

function faultOf(body: ColonyBody) {
  if (!hiveType(body.hiveType)) return refused('casework.refused.unknown-hive-type', { type: body.hiveType });
  const fault = firstFault(colonyBody, body);
  return fault ? refused('casework.refused.shape', { field: fault }) : null;
}

function labelTaken(body: ColonyBody, id: string, colonies: readonly ColonyState[]) {
  if (body.hiveState === 'gone') return null;
  const other = standingAt(body.apiary, colonies).find(
    (one) => one.about.id !== id && one.colony.current?.body.label === body.label,
  );
  return other ? refused('casework.refused.label-taken', { label: body.label }) : null;
}
