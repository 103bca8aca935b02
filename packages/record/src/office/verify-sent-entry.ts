import { instantAt } from '../clock.ts';
import { contentFault } from '../content-check.ts';
import type { Kinds } from '../kinds/registry.ts';
import type { Head, StoredEntry } from '../store.ts';
import type { PushResult } from '../transport.ts';
import type { PushContext } from './push-context.ts';
import type { PushProgress } from './push-progress.ts';
import type { SentEntry } from './read-sent-entry.ts';
import { surroundingsOf } from './surroundings.ts';

/** Either the answer, with nothing to store; or the entry is to be stored, refused when a reason is given. */
type Verdict = { readonly answer: PushResult } | { readonly answer: null; readonly refused: string | null };

/** Verifies one entry of a push: is it here already, does it stand at the end of its chain, may it count. */
export async function verifySentEntry(
  item: SentEntry,
  context: PushContext,
  progress: PushProgress,
  kinds: Kinds,
): Promise<Verdict> {
  const known = progress.byHash.get(item.hash);
  if (known !== undefined) return { answer: answerFor(known) };
  const head = await progress.headOf(item.entry.envelope.device);
  const misplaced = placeFault(item, head, context);
  if (misplaced !== null) return { answer: misplaced };

  const fault = contentRefusal(item, context, progress.byId, kinds);
  if (item.begins) {
    // A chain whose first entry does not count could never be trusted: it must not begin.
    if (fault !== null) return { answer: { id: item.id, outcome: 'broken', reason: fault } };
    return { answer: null, refused: null };
  }
  if (fault !== null) return { answer: null, refused: fault };
  const surroundings = await surroundingsOf(item.entry, progress, kinds);
  return { answer: null, refused: context.author.mayWrite(item.entry, surroundings) };
}

/** What is answered for an entry that stands at the office. */
export function answerFor({ entry, receivedAt, refused }: StoredEntry): PushResult {
  const { id } = entry.envelope;
  const at = receivedAt ?? instantAt(0);
  return refused === null
    ? { id, outcome: 'received', receivedAt: at }
    : { id, outcome: 'refused', receivedAt: at, reason: refused };
}

/** Why an entry cannot stand next in its chain. */
function placeFault(item: SentEntry, head: Head | null, context: PushContext): PushResult | null {
  const { id } = item;
  const { device, seq } = item.entry.envelope;
  const next = (head?.seq ?? 0) + 1;
  // Whose signature holds was worked out in `push-context.ts`. Before its place is looked at: a damaged number must not look like another device's entry.
  if (context.trusted.has(device) && !context.signedWell.has(item)) {
    return { id, outcome: 'broken', reason: 'wrong signature' };
  }
  if (seq < next) return { id, outcome: 'clash' };
  if (seq > next) return { id, outcome: 'gap', from: next };
  const fault = linkFault(item, head, context);
  return fault === null ? null : { id, outcome: 'broken', reason: fault };
}

function linkFault(item: SentEntry, head: Head | null, context: PushContext): string | null {
  const { device: name, prev } = item.entry.envelope;
  const device = context.trusted.get(name);
  if (device === undefined) return 'no device entry';
  if (device.person !== context.author.person) return 'not your device';
  if (prev !== (head?.hash ?? null)) return 'does not follow';
  if (head === null && !item.begins) return 'no device entry';
  if (!item.bodyHolds) return 'wrong body hash';
  return null;
}

/** Why an entry of a sound chain does not count, as far as the record itself can say. */
function contentRefusal(
  { entry, id }: SentEntry,
  context: PushContext,
  byId: ReadonlyMap<string, StoredEntry>,
  kinds: Kinds,
): string | null {
  if (entry.envelope.by !== context.author.person) return 'wrong author';
  const fault = contentFault(entry, false, kinds);
  if (fault !== null) return fault;
  const same = byId.get(id);
  if (same === undefined) return null;
  return same.entry.envelope.bodyHash === entry.envelope.bodyHash ? 'written already' : 'identifier taken';
}
