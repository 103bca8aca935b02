import { daysBetween } from '@combside/law/calendar';
import { type MovementBody, movement, movementBody } from '@combside/record/kinds/movement';
import type { ApiaryState } from '@combside/record/states';
import { type Act, done, refused } from '../act.ts';
import { firstFault } from './change.ts';

/**
 * Enters a movement of bees or of what they lived in. `id` is a new identifier made by the edge.
 *
 * Refused when neither end is known, when both ends are the same apiary, when an end is not in the register, or when the
 * earliest day lies after the latest.
 *
 * @param ends the apiaries the body names, as the register knows them; null where the other end is not in the register
 */
export function newMovement(
  id: string,
  body: MovementBody,
  ends: { readonly from: ApiaryState | null; readonly to: ApiaryState | null },
): Act {
  const fault = firstFault(movementBody, body);
  if (fault) return refused('casework.refused.shape', { field: fault });
  if (body.from === null && body.to === null) return refused('casework.refused.movement-nowhere');
  if (body.from === body.to) return refused('casework.refused.movement-nowhere');
  for (const [named, state] of [
    [body.from, ends.from],
    [body.to, ends.to],
  ] as const) {
    if (named !== (state?.about.id ?? null) || (state && !state.apiary.current)) {
      return refused('casework.refused.not-in-register');
    }
  }
  if (daysBetween(body.earliest, body.latest) < 0) return refused('casework.refused.time-runs-backward');
  return done([
    { kind: movement.kind, version: movement.version, about: { type: 'movement', id }, body, replaces: [] },
  ]);
}
