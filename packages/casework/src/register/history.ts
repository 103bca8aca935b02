import type { Folded, Register, StateBase, Written } from '@combside/record/states';
import { changedFields } from './change.ts';

/** One thing that happened to a record of the register. */
export interface HistoryEvent {
  readonly written: Written;
  readonly what:
    | 'entered'
    | 'changed'
    | 'contested'
    | 'corrected'
    | 'proposed'
    | 'merged'
    | 'told apart'
    | 'noted'
    | 'photographed'
    | 'erased'
    | 'written by newer';
  /** Fields that changed, with the values before and after; empty where the event changes none. */
  readonly fields: readonly { readonly field: string; readonly from: unknown; readonly to: unknown }[];
  /** Why, in the author's words; null when none was given. */
  readonly why: string | null;
  /** The other record, where the event is about one. */
  readonly other: string | null;
}

interface Recorded extends StateBase {
  readonly reasons?: readonly Folded<{ readonly explains: string; readonly text: string }>[];
  readonly merges?: readonly Folded<{
    readonly other: string;
    readonly verdict: 'same' | 'two';
    readonly reason: string;
  }>[];
  readonly proposals?: readonly Folded<{
    readonly field: string;
    readonly from: unknown;
    readonly to: unknown;
    readonly reason: string;
  }>[];
  readonly photographs?: readonly Folded<{ readonly caption: string }>[];
}

/**
 * Everything that was ever written about a keeper, an apiary, a colony or a movement in the register, newest first: who,
 * when, what it said before and after, and why. A change is told against the value that stood before it in the order of
 * clocks; one that did not see that value says `contested`.
 */
export function historyOf(state: Recorded): HistoryEvent[] {
  const register = (state as unknown as Record<string, Register<object> | undefined>)[state.about.type];
  const why = new Map((state.reasons ?? []).map(({ body }) => [body.explains, body.text]));
  const events: HistoryEvent[] = [];
  const contested = new Set(register?.contested.map(({ written }) => written.entry));
  let before: object | null = null;
  for (const { written, original, corrections } of register?.history ?? []) {
    const what = before === null ? 'entered' : contested.has(written.entry) ? 'contested' : 'changed';
    events.push({
      written,
      what,
      fields: differing(before, original),
      why: why.get(written.entry) ?? null,
      other: null,
    });
    let said: object = original;
    for (const one of corrections) {
      const fields = differing(said, one.body);
      events.push({ written: one.written, what: 'corrected', fields, why: one.reason, other: null });
      said = one.body;
    }
    before = said;
  }
  for (const { written, body } of state.merges ?? []) {
    const what = body.verdict === 'same' ? 'merged' : 'told apart';
    events.push({ written, what, fields: [], why: body.reason || null, other: body.other });
  }
  for (const { written, body } of state.proposals ?? []) {
    const fields = [{ field: body.field, from: body.from, to: body.to }];
    events.push({ written, what: 'proposed', fields, why: body.reason || null, other: null });
  }
  for (const { written, body } of state.notes) {
    events.push({ written, what: 'noted', fields: [], why: body.text, other: null });
  }
  for (const { written, body } of state.photographs ?? []) {
    events.push({ written, what: 'photographed', fields: [], why: body.caption || null, other: null });
  }
  for (const { written } of state.erased) events.push({ written, what: 'erased', fields: [], why: null, other: null });
  for (const { written } of state.unknown) {
    events.push({ written, what: 'written by newer', fields: [], why: null, other: null });
  }
  return events.sort((a, b) => (a.written.clock < b.written.clock ? 1 : a.written.clock > b.written.clock ? -1 : 0));
}

function differing(before: object | null, after: object): HistoryEvent['fields'] {
  if (before === null) return [];
  const [left, right] = [before as Record<string, unknown>, after as Record<string, unknown>];
  return changedFields(before, after).map((field) => ({ field, from: left[field], to: right[field] }));
}
