/** What one change writes beside the folded states: entries singly or as packs, receipts, cursors, drafts. */
import { RecordError } from '@combside/record/errors';
import {
  aboutKey,
  type DeviceChange,
  type Head,
  type Identity,
  type OfficeKey,
  type StoredEntry,
} from '@combside/record/store';
import type { IDBPTransaction, StoreNames } from 'idb';
import type { DeviceSchema, PackRecord, SingleRecord } from './schema.ts';

/** From so many entries on a commit makes a pack. */
export const packFrom = 50;

export type WriteTransaction = IDBPTransaction<DeviceSchema, StoreNames<DeviceSchema>[], 'readwrite'>;

/** The object stores a change needs; fewer stores let other transactions run beside it. */
export function storesOf(change: DeviceChange): StoreNames<DeviceSchema>[] {
  const stores = new Set<StoreNames<DeviceSchema>>(['heads']);
  const needs = (condition: unknown, ...names: StoreNames<DeviceSchema>[]) => {
    if (condition) for (const name of names) stores.add(name);
  };
  needs(change.entries?.length || change.receipts?.length || change.erase?.length, 'entries', 'packs', 'outbox');
  needs(change.setAside?.length, 'entries', 'packs', 'setAside', 'outbox');
  needs(change.states?.length || change.dropStates?.length, 'states', 'summaries', 'summaryPacks');
  needs(change.outbox?.length, 'outbox', 'entries');
  needs(change.clock !== undefined || change.identity || change.office, 'meta');
  needs(change.cursor, 'cursors', 'sequences');
  needs(change.hold?.length || change.release?.length, 'held');
  needs(change.saveDrafts?.length || change.removeDrafts?.length, 'drafts');
  return [...stores];
}

/**
 * Writes everything of a change but the folded states, each part to its own object store.
 *
 * @param stored told how many entries stand in the transaction so far; what it throws comes out
 * @throws RecordError `head moved`, `entry clash`, `unknown entry`; then the transaction must be given up
 */
export async function writeChange(
  transaction: WriteTransaction,
  change: DeviceChange,
  stored?: (count: number) => void,
): Promise<void> {
  await checkHead(transaction, change);
  await setAside(transaction, change);
  await addEntries(transaction, change, stored);
  await noteReceipts(transaction, change);
  await erase(transaction, change);
  await keepTheRest(transaction, change);
  await keepCursor(transaction, change);
}

async function checkHead(transaction: WriteTransaction, { expected }: DeviceChange): Promise<void> {
  if (expected === undefined) return;
  const head = await transaction.objectStore('heads').get(expected.device);
  if ((head?.seq ?? 0) !== (expected.head?.seq ?? 0) || (head?.hash ?? null) !== (expected.head?.hash ?? null)) {
    throw new RecordError('head moved', `device ${expected.device} stands at ${head?.seq ?? 0}`);
  }
}

async function setAside(transaction: WriteTransaction, change: DeviceChange): Promise<void> {
  if (!change.setAside?.length) return;
  const devices = new Set<string>();
  for (const aside of change.setAside) {
    const { device, seq } = aside.kept.entry.envelope;
    devices.add(device);
    await transaction.objectStore('entries').delete(aside.kept.hash);
    await transaction.objectStore('outbox').delete([device, seq]);
    await transaction.objectStore('setAside').add(aside);
  }
  for (const device of devices) {
    const range = IDBKeyRange.bound([device, 0], [device, Number.MAX_SAFE_INTEGER]);
    const [single, packed] = await Promise.all([
      transaction.objectStore('entries').index('place').openCursor(range, 'prev'),
      transaction.objectStore('packs').index('places').openCursor(range, 'prev'),
    ]);
    const heads: Head[] = [];
    if (single) heads.push({ device, seq: single.value.place[1], hash: single.value.hash });
    for (const kept of packed?.value.kept ?? []) {
      const { envelope } = kept.entry;
      if (envelope.device === device) heads.push({ device, seq: envelope.seq, hash: kept.hash });
    }
    const newest = heads.sort((a, b) => b.seq - a.seq)[0];
    if (newest === undefined) await transaction.objectStore('heads').delete(device);
    else await transaction.objectStore('heads').put(newest);
  }
}

/** So many entries are asked to be written at a time: many thousands of open requests cost memory and cannot be stopped. */
const together = 1000;

async function addEntries(
  transaction: WriteTransaction,
  change: DeviceChange,
  stored: ((count: number) => void) | undefined,
): Promise<void> {
  const entries = change.entries ?? [];
  const toSend = new Set(change.outbox);
  const own = new Set(entries.map(({ hash }) => hash));
  for (const hash of toSend) {
    if (!own.has(hash)) throw new RecordError('unknown entry', `${hash} cannot go to the outbox`);
  }
  if (entries.length === 0) return;
  const stores = {
    packs: transaction.objectStore('packs'),
    singles: transaction.objectStore('entries'),
    outbox: transaction.objectStore('outbox'),
  };
  const heads = transaction.objectStore('heads');
  const before = new Map<string, number>();
  const after = new Map<string, Head>();
  for (const device of new Set(entries.map(({ entry }) => entry.envelope.device))) {
    const head = await heads.get(device);
    before.set(device, head?.seq ?? 0);
    if (head !== undefined) after.set(device, head);
  }
  checkAmongThemselves(entries);
  const asPack = entries.length >= packFrom && change.expected === undefined;
  for (let at = 0; at < entries.length; at += together) {
    const some = entries.slice(at, at + together);
    const asked = some.flatMap((kept) => clashesWithStored(stores, kept, before, asPack));
    for (const kept of some) {
      const { device, seq } = kept.entry.envelope;
      if (!asPack) asked.push(stores.singles.add(singleOf(kept)));
      if (toSend.has(kept.hash)) asked.push(stores.outbox.put({ place: [device, seq], hash: kept.hash }));
      if (seq > (after.get(device)?.seq ?? 0)) after.set(device, { device, seq, hash: kept.hash });
    }
    await Promise.all(asked);
    stored?.(at + some.length);
  }
  if (asPack) await stores.packs.add(packOf(entries));
  await Promise.all([...after.values()].map((head) => heads.put(head)));
}

/** @throws RecordError `entry clash` when two of them want one place, or two that count one identifier */
function checkAmongThemselves(entries: readonly StoredEntry[]): void {
  const places = new Set<string>();
  const ids = new Set<string>();
  for (const { entry, refused } of entries) {
    const { device, seq, id } = entry.envelope;
    const place = `${device} ${seq}`;
    if (places.has(place)) throw clash(place);
    places.add(place);
    if (refused !== null) continue;
    if (ids.has(id)) throw clash(`id ${id}`);
    ids.add(id);
  }
}

interface KeyIndex {
  getKey(key: string | [string, number]): Promise<unknown>;
}

/** What has to be asked before an entry may stand beside the stored ones. Unique indexes see to single ones by themselves. */
function clashesWithStored(
  stores: {
    readonly packs: { index(name: 'places' | 'ids'): KeyIndex };
    readonly singles: { index(name: 'place' | 'id'): KeyIndex };
  },
  { entry, refused }: StoredEntry,
  before: ReadonlyMap<string, number>,
  asPack: boolean,
): Promise<unknown>[] {
  const { device, seq, id } = entry.envelope;
  const none = (asked: Promise<unknown>, what: string) =>
    asked.then((key) => {
      if (key !== undefined) throw clash(what);
    });
  const checks: Promise<unknown>[] = [];
  // Nothing can stand behind the head, and most entries come in the order of their chain.
  if (seq <= (before.get(device) ?? 0)) {
    checks.push(none(stores.packs.index('places').getKey([device, seq]), `${device} ${seq}`));
    if (asPack) checks.push(none(stores.singles.index('place').getKey([device, seq]), `${device} ${seq}`));
  }
  if (refused === null) {
    checks.push(none(stores.packs.index('ids').getKey(id), `id ${id}`));
    if (asPack) checks.push(none(stores.singles.index('id').getKey(id), `id ${id}`));
  }
  return checks;
}

function clash(what: string): RecordError {
  return new RecordError('entry clash', what);
}

async function noteReceipts(transaction: WriteTransaction, change: DeviceChange): Promise<void> {
  const receipts = new Map((change.receipts ?? []).map((receipt) => [receipt.hash, receipt]));
  const changed = await changeEntries(transaction, [...receipts.keys()], (kept) => {
    const { receivedAt, refused } = receipts.get(kept.hash) ?? kept;
    return { ...kept, receivedAt, refused };
  });
  if (changed.length === 0) return;
  const outbox = transaction.objectStore('outbox');
  await Promise.all(changed.map(({ entry }) => outbox.delete([entry.envelope.device, entry.envelope.seq])));
}

async function erase(transaction: WriteTransaction, change: DeviceChange): Promise<void> {
  await changeEntries(transaction, change.erase ?? [], (kept) => ({
    ...kept,
    entry: { ...kept.entry, salt: null, body: null },
  }));
}

/** Rewrites what is known about entries, wherever they stand; each pack once. @returns the entries as they are now */
async function changeEntries(
  transaction: WriteTransaction,
  hashes: readonly string[],
  change: (kept: StoredEntry) => StoredEntry,
): Promise<StoredEntry[]> {
  if (hashes.length === 0) return [];
  const singles = transaction.objectStore('entries');
  const packs = transaction.objectStore('packs');
  const changed: StoredEntry[] = [];
  const inPacks = new Map<number, Set<string>>();
  await Promise.all(
    hashes.map(async (hash) => {
      const single = await singles.get(hash);
      if (single !== undefined) {
        const kept = change(single.kept);
        changed.push(kept);
        await singles.put(singleOf(kept));
        return;
      }
      const key = await packs.index('hashes').getKey(hash);
      if (key === undefined) return;
      const some = inPacks.get(key);
      if (some === undefined) inPacks.set(key, new Set([hash]));
      else some.add(hash);
    }),
  );
  for (const [key, some] of inPacks) {
    const pack = await packs.get(key);
    if (pack === undefined) continue;
    const list = pack.kept.map((kept) => {
      if (!some.has(kept.hash)) return kept;
      const now = change(kept);
      changed.push(now);
      return now;
    });
    await packs.put(packOf(list), key);
  }
  return changed;
}

async function keepCursor(transaction: WriteTransaction, change: DeviceChange): Promise<void> {
  const { cursor } = change;
  if (cursor === undefined) return;
  const sequences = transaction.objectStore('sequences');
  if (cursor.position === 0) {
    for (const key of await sequences.index('scope').getAllKeys(cursor.scope)) await sequences.delete(key);
  }
  if (change.sequence?.length) await sequences.add({ scope: cursor.scope, links: change.sequence });
  await transaction.objectStore('cursors').put(cursor);
}

async function keepTheRest(transaction: WriteTransaction, change: DeviceChange): Promise<void> {
  const asked: Promise<unknown>[] = [];
  const meta = (key: string, value: Identity | OfficeKey | string | undefined) => {
    if (value !== undefined) asked.push(transaction.objectStore('meta').put(value, key));
  };
  meta('clock', change.clock);
  meta('identity', change.identity);
  meta('office', change.office);
  for (const entry of change.hold ?? [])
    asked.push(transaction.objectStore('held').put({ id: entry.envelope.id, entry }));
  for (const id of change.release ?? []) asked.push(transaction.objectStore('held').delete(id));
  for (const draft of change.saveDrafts ?? []) asked.push(transaction.objectStore('drafts').put(draft));
  for (const key of change.removeDrafts ?? []) asked.push(transaction.objectStore('drafts').delete(key));
  await Promise.all(asked);
}

function singleOf(kept: StoredEntry): SingleRecord {
  const { device, seq, id, about } = kept.entry.envelope;
  const base = { hash: kept.hash, place: [device, seq] as [string, number], kept };
  return kept.refused === null ? { ...base, id, about: aboutKey(about) } : { ...base, refused: 1 };
}

function packOf(entries: readonly StoredEntry[]): PackRecord {
  const counting = entries.filter(({ refused }) => refused === null);
  return {
    hashes: entries.map(({ hash }) => hash),
    places: entries.map(({ entry }) => [entry.envelope.device, entry.envelope.seq]),
    ids: counting.map(({ entry }) => entry.envelope.id),
    abouts: [...new Set(counting.map(({ entry }) => aboutKey(entry.envelope.about)))],
    kept: entries,
  };
}
