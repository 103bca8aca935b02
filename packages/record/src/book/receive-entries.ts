import type { About } from '../entry.ts';
import type { DeviceStore, StoredEntry } from '../store.ts';
import type { Arriving, BookContext, Receipt, Reception } from './book.ts';
import type { Changed } from './changed.ts';
import { commitArriving } from './commit-arriving.ts';
import { identityOf, renewIdentity } from './device-identity.ts';
import { bringsReceipt, type SortedArrivals, sortArriving } from './sort-arriving.ts';

/** See `Book.receive`. What was held back earlier is tried again with it. */
export async function receiveEntries(book: BookContext, arriving: readonly Arriving[]): Promise<Changed<Reception>> {
  const retried = (await book.store.held()).map((entry): Arriving => ({ entry, receivedAt: null }));
  const sorted = await sortArriving(book, [...arriving, ...retried]);
  return book.store.exclusive((inside) => settle(book, inside, sorted));
}

/** Stores what verified, upon what stands here now. Inside `exclusive`. */
async function settle(book: BookContext, inside: DeviceStore, sorted: SortedArrivals): Promise<Changed<Reception>> {
  const touched: About[] = [];
  const stored = await inside.byHash(sorted.good.map(({ hash }) => hash));
  const fresh = sorted.good.filter(({ hash }) => !stored.has(hash));
  const known = sorted.good.filter(({ hash }) => stored.has(hash));

  const own = await identityOf(inside);
  const newIdentity = await clashesWithUnsent(inside, own.device, fresh);
  if (newIdentity) {
    touched.push(...(await renewIdentity(book, inside, 'another device wrote under the same name')).touched);
  }

  const facts = await sortByFact(inside, fresh);
  const held = [...sorted.held, ...facts.held.map(({ entry }) => entry)];
  const stays = new Set(held.map(({ envelope }) => envelope.id));
  const release = (await inside.held()).map(({ envelope }) => envelope.id).filter((id) => !stays.has(id));
  const committed = await commitArriving(book, inside, facts.coming, receiptsAmong(known, stored));
  touched.push(...committed.touched);
  if (held.length > 0 || release.length > 0) await inside.commit({ hold: held, release });
  const refusedHere = [
    ...facts.rejected.map((kept) => ({ id: idOf(kept), reason: 'identifier taken' })),
    ...committed.answer.clashing.map((kept) => ({ id: idOf(kept), reason: 'clash' })),
  ];
  const reception: Reception = {
    taken: committed.answer.taken.map(idOf),
    known: [...sorted.known, ...known.map(idOf)],
    held: held.map(({ envelope }) => envelope.id),
    rejected: [...sorted.rejected, ...refusedHere],
    newIdentity,
  };
  return { answer: reception, touched };
}

/** Whether one of these entries stands where an own unsent entry stands: another device uses our name. */
async function clashesWithUnsent(inside: DeviceStore, device: string, fresh: readonly StoredEntry[]): Promise<boolean> {
  for (const { entry, hash } of fresh) {
    if (entry.envelope.device !== device) continue;
    const [here] = await inside.chain(device, entry.envelope.seq, 1);
    if (here?.entry.envelope.seq === entry.envelope.seq && here.hash !== hash && here.receivedAt === null) return true;
  }
  return false;
}

/** Which of these are new facts, which wait until the fact's own copy here has its answer, and which take its name. */
async function sortByFact(
  inside: DeviceStore,
  fresh: readonly StoredEntry[],
): Promise<Record<'coming' | 'held' | 'rejected', readonly StoredEntry[]>> {
  const sameFact = await inside.byId(fresh.map(idOf));
  const coming: StoredEntry[] = [];
  const held: StoredEntry[] = [];
  const rejected: StoredEntry[] = [];
  const seen = new Set<string>();
  for (const kept of fresh) {
    const { id, bodyHash } = kept.entry.envelope;
    const here = sameFact.get(id);
    if (here === undefined && !seen.has(id)) coming.push(kept);
    else if (here?.receivedAt === null && here.entry.envelope.bodyHash === bodyHash) held.push(kept);
    else rejected.push(kept);
    seen.add(id);
  }
  return { coming, held, rejected };
}

/** The office's receipts of own entries that came back with it. */
function receiptsAmong(known: readonly StoredEntry[], stored: ReadonlyMap<string, StoredEntry>): Receipt[] {
  return known.flatMap((kept) =>
    bringsReceipt(kept, stored.get(kept.hash)) && kept.receivedAt !== null
      ? [{ hash: kept.hash, receivedAt: kept.receivedAt, refused: null }]
      : [],
  );
}

function idOf(kept: StoredEntry): string {
  return kept.entry.envelope.id;
}
