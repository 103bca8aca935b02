import { bodyMatches, chainBeginning, linkOf } from '../chain.ts';
import { type Entry, entry as entryShape, identifier } from '../entry.ts';
import type { Hasher, Verifier } from '../ports.ts';
import { beginsItsChain } from '../trust.ts';

/** An entry as it was sent, with what can be told of it by itself. */
export interface SentEntry {
  readonly id: string;
  readonly entry: Entry;
  readonly hash: string;
  readonly bodyHolds: boolean;
  /** May begin a chain, and holds by itself. */
  readonly begins: boolean;
}

/** What was sent and is no entry. */
export interface Unreadable {
  readonly id: string;
  readonly entry: null;
}

/** Answered where what was sent bears no readable identifier (RFC 9562, section 5.9). */
const nobody = '00000000-0000-0000-0000-000000000000';

/** Reads one of the things sent. Never throws for what was sent. */
export async function readSentEntry(
  { hasher, verifier }: { readonly hasher: Hasher; readonly verifier: Verifier },
  raw: unknown,
): Promise<SentEntry | Unreadable> {
  const read = entryShape.safeParse(raw);
  if (!read.success) {
    const id = identifier.safeParse((raw as { envelope?: { id?: unknown } } | null)?.envelope?.id);
    return { id: id.success ? id.data : nobody, entry: null };
  }
  const entry: Entry = { ...read.data, body: read.data.body ?? null };
  return {
    id: entry.envelope.id,
    entry,
    hash: await linkOf(hasher, entry.envelope),
    bodyHolds: entry.salt === null || (await bodyMatches(hasher, entry)),
    begins: chainBeginning(entry) !== null && (await beginsItsChain(hasher, verifier, entry)),
  };
}
