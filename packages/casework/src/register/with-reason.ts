import { apiary } from '@combside/record/kinds/apiary';
import { colony } from '@combside/record/kinds/colony';
import { keeper } from '@combside/record/kinds/keeper';
import { movement } from '@combside/record/kinds/movement';
import { reason } from '@combside/record/kinds/reason';
import type { Act } from '../act.ts';

/** Kinds whose entries are what the register says; a history tells the why of each. */
const explained = new Set([keeper.kind, apiary.kind, colony.kind, movement.kind]);

/** Gives every register entry of a change its reason: the entry gets an identifier, and one beside it explains it. */
export function withReason(act: Act, text: string, newId: () => string): Act {
  if (!act.ok || text.trim() === '') return act;
  const said = text.trim().slice(0, 1000);
  const proposals = act.proposals.flatMap((one) => {
    if (!explained.has(one.kind)) return [one];
    const id = one.id ?? newId();
    const body = { explains: id, text: said };
    return [
      { ...one, id },
      { kind: reason.kind, version: reason.version, about: one.about, body, replaces: [] },
    ];
  });
  return { ...act, proposals };
}
