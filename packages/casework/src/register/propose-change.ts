import { apiaryBody } from '@combside/record/kinds/apiary';
import { colonyBody } from '@combside/record/kinds/colony';
import { type ProposedChangeBody, proposedChange } from '@combside/record/kinds/proposed-change';
import type { ApiaryState, ColonyState } from '@combside/record/states';
import { type Act, done, refused } from '../act.ts';

/** What the register should say instead, and why. */
export interface ProposeChange {
  /** Top-level field of the apiary's or colony's register entry that holds a plain value. */
  readonly field: string;
  readonly to: ProposedChangeBody['to'];
  /** The visit at which it was found; null away from one. */
  readonly visit: string | null;
  readonly reason: string;
}

/**
 * Proposes that one field of the register should say something else. The register changes only when it is settled.
 */
export function proposeChange(state: ApiaryState | ColonyState, change: ProposeChange): Act {
  const { field, to, visit, reason } = change;
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
