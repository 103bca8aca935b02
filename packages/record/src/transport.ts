import { z } from 'zod';
import { type Entry, entry, identifier, instant, sha256Hex } from './entry.ts';

/**
 * The way between a phone and the office: four questions and their answers. The contract wraps these shapes in its
 * messages; an HTTP client, a socket or a test's wire implements `Transport`. Suite: `acceptance/transport.ts`.
 */

/** Largest number of entries in one push or one page. */
export const batchLimit = 500;

/**
 * Most text in one push or one page, in characters of JSON. Readings of photographs are large; 500 of them would be more
 * than a server takes or a phone can hold. Three bytes a character still stay below the largest message.
 */
export const batchText = 2_000_000;

/** How many of these entries, from the first, go into one push or one page: at least one, so that it always goes on. */
export function countThatFits(entries: readonly Entry[]): number {
  let text = 0;
  for (const [place, one] of entries.entries()) {
    text += JSON.stringify(one).length;
    if (text > batchText && place > 0) return place;
  }
  return entries.length;
}

/** Name of the scope that everybody reads: devices, and what the office says about them. */
export const everyoneScope = 'everyone';

/** A scope's name: `everyone`, or `district/` and the district. */
export const scopeName = z.string().min(1).max(120);

/** The scope of everything that stands, or ever stood, in a district. */
export function districtScope(district: string): string {
  return `district/${district}`;
}

/** What the office answers to one pushed entry. */
export const pushResult = z.discriminatedUnion('outcome', [
  /** Taken, now or earlier. */
  z.strictObject({ id: identifier, outcome: z.literal('received'), receivedAt: instant }),
  /** Its place in the chain is kept, but it does not count. `reason` is a reason id. */
  z.strictObject({ id: identifier, outcome: z.literal('refused'), receivedAt: instant, reason: z.string().max(200) }),
  /** Entries before it are missing: send this chain again from `from`. */
  z.strictObject({ id: identifier, outcome: z.literal('gap'), from: z.int().min(1) }),
  /** Another entry stands at its place: two devices write under one name. */
  z.strictObject({ id: identifier, outcome: z.literal('clash') }),
  /** Signature, body or link does not verify: damaged on the way, or nothing can follow it in this chain. */
  z.strictObject({ id: identifier, outcome: z.literal('broken'), reason: z.string().max(200) }),
]);
export type PushResult = z.infer<typeof pushResult>;

/** One entry as the office gives it out. */
export const pageItem = z.strictObject({ position: z.int().min(1), entry, receivedAt: instant });
export type PageItem = z.infer<typeof pageItem>;

/** A stretch of a scope in commit order. `more` is false when nothing stood behind it at that moment. */
export const page = z.strictObject({ scope: scopeName, items: z.array(pageItem).max(batchLimit), more: z.boolean() });
export type Page = z.infer<typeof page>;

/**
 * The office's signed word on what it holds: for a scope, the number of entries and the running digest over their
 * envelope hashes in order; for the whole record (`scope` null), the heads of all chains.
 */
export const checkpoint = z.strictObject({
  scope: scopeName.nullable(),
  position: z.int().min(0),
  digest: sha256Hex,
  heads: z.array(z.strictObject({ device: identifier, seq: z.int().min(1), hash: sha256Hex })).nullable(),
  at: instant,
  office: identifier,
  signature: z.string().regex(/^[A-Za-z0-9_-]{86}$/),
});
export type Checkpoint = z.infer<typeof checkpoint>;

/** Who answers, and what this person may read. */
export const greeting = z.strictObject({
  office: identifier,
  publicKey: z.string().regex(/^[A-Za-z0-9_-]{87}$/),
  now: instant,
  scopes: z.array(scopeName),
});
export type Greeting = z.infer<typeof greeting>;

export interface Transport {
  greet(): Promise<Greeting>;
  /** At most `batchLimit` entries; one result for each, in the same order. */
  push(entries: readonly z.infer<typeof entry>[]): Promise<PushResult[]>;
  /** Entries of a scope after a position. */
  pull(scope: string, after: number, limit: number): Promise<Page>;
  /** The office's word on a scope at a position that it has given out. */
  checkpoint(scope: string, position: number): Promise<Checkpoint>;
}

export type TransportFailure =
  | 'no connection'
  | 'not signed in'
  | 'program too old'
  | 'office fault'
  | 'scope not granted';

/** Every failure of a transport; only `no connection` and `office fault` are worth another try by themselves. */
export class TransportError extends Error {
  readonly failure: TransportFailure;

  constructor(failure: TransportFailure, message: string, cause?: unknown) {
    super(`${failure}: ${message}`, cause === undefined ? undefined : { cause });
    this.name = 'TransportError';
    this.failure = failure;
  }
}
