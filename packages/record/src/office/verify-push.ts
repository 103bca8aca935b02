import { instantAt } from '../clock.ts';
import type { Entry, Proposal } from '../entry.ts';
import type { OfficeStore, StoredEntry } from '../store.ts';
import type { PushResult } from '../transport.ts';
import type { OfficeContext } from './office.ts';
import type { PushContext } from './push-context.ts';
import { startProgress } from './push-progress.ts';
import type { SentEntry } from './read-sent-entry.ts';
import { remarksOnEntry } from './remarks-on-entry.ts';
import type { ScopeGrowth } from './scope-growth.ts';
import { answerFor, verifySentEntry } from './verify-sent-entry.ts';

/** A push, verified and not yet stored. */
export interface VerifiedPush {
  readonly results: ReadonlyMap<SentEntry, PushResult>;
  /** What is to be stored: entries that count, and envelopes of refused ones. */
  readonly received: readonly StoredEntry[];
  /** What the office writes about them. */
  readonly proposals: readonly Proposal[];
  /** How belonging has grown with them. */
  readonly growth: ScopeGrowth;
}

/** Verifies the entries of a push, each upon what the ones before it left standing. Inside `exclusive`; stores nothing. */
export async function verifyPush(
  { clock, kinds }: OfficeContext,
  inside: OfficeStore,
  readable: readonly SentEntry[],
  context: PushContext,
): Promise<VerifiedPush> {
  const now = clock.now();
  const receivedAt = instantAt(now);
  const results = new Map<SentEntry, PushResult>();
  const proposals: Proposal[] = [];
  const progress = await startProgress(inside, readable, kinds);
  for (const item of [...readable].sort((a, b) => byPlace(a.entry, b.entry))) {
    const verdict = await verifySentEntry(item, context, progress, kinds);
    if (verdict.answer !== null) {
      results.set(item, verdict.answer);
      continue;
    }
    const { refused } = verdict;
    const entry = refused === null ? item.entry : envelopeAlone(item.entry);
    const kept: StoredEntry = { entry, hash: item.hash, receivedAt, refused };
    await progress.add(kept);
    results.set(item, answerFor(kept));
    proposals.push(...remarksOnEntry(kept, now));
  }
  return { results, received: progress.received, proposals, growth: progress.growth };
}

/** All that is kept of a refused entry: the chain goes on, what it says is forgotten. */
function envelopeAlone(entry: Entry): Entry {
  return { envelope: entry.envelope, salt: null, body: null };
}

/** By device, and within a chain in its order: a push may bring its entries in any. */
function byPlace(a: Entry, b: Entry): number {
  if (a.envelope.device !== b.envelope.device) return a.envelope.device < b.envelope.device ? -1 : 1;
  return a.envelope.seq - b.envelope.seq;
}
