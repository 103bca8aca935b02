import { reason } from '@combside/record/kinds/reason';
import type { Act } from '../act.ts';

/** Gives a change its reason: the entry gets an identifier, and an entry beside it that explains it. */
export function withReason(act: Act, text: string, newId: () => string): Act {
  if (!act.ok || text.trim() === '') return act;
  const [first, ...rest] = act.proposals;
  if (!first) return act;
  const id = first.id ?? newId();
  const body = { explains: id, text: text.trim().slice(0, 1000) };
  const why = { kind: reason.kind, version: reason.version, about: first.about, body, replaces: [] };
  return { ...act, proposals: [{ ...first, id }, why, ...rest] };
}
