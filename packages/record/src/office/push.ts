/**
 * What becomes of what a device sends.
 *
 * A PUSH ends for each entry in one of five ways. "received": it counts, now or since earlier. "refused": its signature
 * and its place in the chain hold, but it may not count; the office keeps the envelope alone, marked, so that the chain
 * goes on, and says why in its own chain. "gap": entries before it are missing. "clash": another entry stands at its
 * place. "broken": signature, body or link does not hold, or it is not this person's to send. The last three store
 * nothing, so nobody can spoil another person's chain, and what was damaged on the way can be sent again: only what its
 * author signed as it stands is refused for good.
 *
 * What can be told of an entry by itself (shape, hashes, signatures) is worked out before the store is locked; what
 * depends on its neighbours is verified, and stored, inside `exclusive`.
 */
import { batchLimit, type PushResult } from '../transport.ts';
import type { Author } from './author.ts';
import { commitEntries } from './commit-entries.ts';
import type { OfficeContext } from './office.ts';
import { preparePush } from './push-context.ts';
import { readSentEntry, type SentEntry } from './read-sent-entry.ts';
import { verifyPush } from './verify-push.ts';

/** See `Office.push`. @throws RangeError over `batchLimit` entries */
export async function push(office: OfficeContext, raw: readonly unknown[], author: Author): Promise<PushResult[]> {
  if (raw.length > batchLimit) throw new RangeError(`a push holds at most ${batchLimit} entries, not ${raw.length}`);
  const sent = await Promise.all(raw.map((one) => readSentEntry(office, one)));
  const readable = sent.filter((item): item is SentEntry => item.entry !== null);
  const context = await preparePush(office, readable, author);
  const results = await office.store.exclusive(async (inside) => {
    const verified = await verifyPush(office, inside, readable, context);
    if (verified.received.length > 0) await commitEntries(office, inside, { ...verified, by: office.person });
    return verified.results;
  });
  return sent.map((item) =>
    item.entry === null
      ? { id: item.id, outcome: 'broken', reason: 'wrong shape' }
      : (results.get(item) ?? { id: item.id, outcome: 'broken', reason: 'not judged' }),
  );
}
