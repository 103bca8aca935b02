import { type KeeperBody, keeper, keeperBody } from '@combside/record/kinds/keeper';
import type { KeeperState } from '@combside/record/states';
import { type Act, done, refused } from '../act.ts';
import { changedFields, firstFault } from './change.ts';
import { seen } from './seen.ts';

/** Enters a keeper in the register. `id` is a new identifier made by the edge. */
export function newKeeper(id: string, body: KeeperBody): Act {
  const fault = firstFault(keeperBody, body);
  if (fault) return refused('casework.refused.shape', { field: fault });
  return done([{ kind: keeper.kind, version: keeper.version, about: { type: 'keeper', id }, body, replaces: [] }]);
}

/** Changes what the register says about a keeper. Refused when nothing changes. */
export function changeKeeper(state: KeeperState, change: Partial<KeeperBody>): Act<{ readonly changed: string[] }> {
  const before = state.keeper.current?.body;
  if (!before) return refused('casework.refused.not-in-register');
  const body = { ...before, ...change };
  const fault = firstFault(keeperBody, body);
  if (fault) return refused('casework.refused.shape', { field: fault });
  const changed = changedFields(before, body);
  if (changed.length === 0) return refused('casework.refused.nothing-changed');
  const proposal = {
    kind: keeper.kind,
    version: keeper.version,
    about: state.about,
    body,
    replaces: seen(state.keeper),
  };
  return { ...done([proposal]), changed };
}
