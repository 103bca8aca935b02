import type { About, Proposal } from '@combside/record/entry';
import type { FindingId } from './findings.ts';
import type { RefusalId } from './refusals.ts';

/**
 * What is put into the sentence behind an id: text as it stands, a number that the language writes its own way, or a day
 * (`2026-05-14`) or moment (RFC 3339) that whoever reads it sees as a day, at the time of the place where it is read.
 */
export type Value = string | number | { readonly day: string } | { readonly moment: string };

export type Values = Readonly<Record<string, Value>>;

/**
 * Something an act has to say: the sentence (an id of `words`), how heavily it weighs, what it is about.
 * - `tells`: good to know
 * - `warns`: think before going on; never blocks
 * - `owed`: has to be done, and stays open until it is
 */
export interface Finding {
  readonly id: FindingId;
  readonly weight: 'tells' | 'warns' | 'owed';
  readonly about: About | null;
  readonly values: Values;
}

/** An act that cannot be done now, and why, as an id of `words` with its values. */
export interface Refused {
  readonly ok: false;
  readonly reason: RefusalId;
  readonly values: Values;
}

/** An act that can be done: the entries it proposes, in the order in which they are to be sealed, and what it has to say. */
export interface Done {
  readonly ok: true;
  readonly proposals: readonly Proposal[];
  readonly findings: readonly Finding[];
}

/** Every act of casework: state and input in, this out. Nothing is written until the edge seals the proposals. */
export type Act<Extra = unknown> = (Done & Extra) | Refused;

export function refused(reason: RefusalId, values: Values = {}): Refused {
  return { ok: false, reason, values };
}

export function done(proposals: readonly Proposal[], findings: readonly Finding[] = []): Done {
  return { ok: true, proposals, findings };
}

export function finding(
  id: FindingId,
  weight: Finding['weight'],
  values: Values = {},
  about: About | null = null,
): Finding {
  return { id, weight, about, values };
}
