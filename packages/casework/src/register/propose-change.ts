import { apiaryBody } from '@combside/record/kinds/apiary';
import { colonyBody } from '@combside/record/kinds/colony';
import { type ProposedChangeBody, proposedChange } from '@combside/record/kinds/proposed-change';
import type { ApiaryState, ColonyState } from '@combside/record/states';
import { type Act, done, refused } from '../act.ts';

/**
 * Proposes that one field of the register should say something else. The register changes only when it is settled.
 *
 * @param field top-level field of the apiary's or colony's register entry that holds a plain value
 */
export function proposeChange(
  state: ApiaryState | ColonyState,
  field: string,
  to: ProposedChangeBody['to'],
  visit: string | null,
  reason: string,
): Act {
  const register = 'apiary' in state ? state.apiary : state.colony;
  const shape = 'apiary' in state ? apiaryBody : colonyBody;
  const before = register.current?.body as Record<string, unknown> | undefined;
  if (!before) return refused('casework.refused.not-in-register');
  const from = before[field];
  if (!Object.hasOwn(before, field) || (typeof from === 'object' && from !== null)) {
    return refused('casework.refused.unknown-field', { field });
  }
  if (from === to) return refused('casework.refused.nothing-changed');
  const read = shape.safeParse({ ...before, [field]: to });
  if (!read.success) return refused('casework.refused.shape', { field });
  const body: ProposedChangeBody = { visit, field, from: from as ProposedChangeBody['from'], to, reason };
  return done([{ kind: proposedChange.kind, version: proposedChange.version, about: state.about, body, replaces: [] }]);
}
