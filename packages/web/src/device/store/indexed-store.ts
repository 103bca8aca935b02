/**
 * The device's store in IndexedDB.
 *
 * TWO FORMS OF AN ENTRY. An entry written here, or fetched among a few, is one record. A page of many entries fetched
 * from the office becomes one record, a pack: the cost of IndexedDB is in the number of records, not in their size.
 * Every question therefore looks among the singles and, through indexes with one key per entry, among the packs.
 *
 * STATES are kept for what was touched singly; after a bulk fetch they are dropped, and the reader folds them again from
 * the entries when a screen asks. SUMMARIES are always kept, in packs and single rows, and stand in memory while the
 * store is open; a single row stands above every pack, a later pack above an earlier one.
 *
 * EVERY COMMIT is one transaction with strict durability, and happens inside `exclusive`, which is a Web Lock over all
 * tabs and the worker of this origin. What changed is told to the other tabs over a BroadcastChannel; they read these
 * rows again.
 */
import type { About, Entry } from '@combside/record/entry';
import { RecordError } from '@combside/record/errors';
import type { StateBase } from '@combside/record/states';
import {
  aboutKey,
  type Cursor,
  type DeviceChange,
  type DeviceStore,
  type DraftChange,
  type EntrySetAside,
  type FoldedState,
  type Head,
  type Identity,
  type OfficeKey,
  type StoredDraft,
  type StoredEntry,
} from '@combside/record/store';
import type { FoldedType, Summary, SummaryByType, SummaryFilter } from '@combside/record/summary';
import type { IDBPTransaction } from 'idb';
import type { DeviceDatabase, DeviceSchema, PackRecord, SummaryRecord } from './schema.ts';
import { SummaryTable } from './summary-table.ts';
import { packFrom, storesOf, type WriteTransaction, writeChange } from './write-change.ts';

/** When the packs hold so many times more rows than there are entities, they are written anew. */
const stalePackRows = 3;

/** What other tabs are told after a commit. */
interface ChangeNotice {
  readonly keys: readonly string[] | 'all';
  readonly abouts: readonly About[];
  /** Keys of drafts; missing in what a tab of an older program tells. */
  readonly drafts?: readonly string[];
}

export interface IndexedStore extends DeviceStore {
  /** Calls back when another tab, or the worker, changed entities. @returns the way to stop it */
  onElsewhere(listener: (changed: readonly About[]) => void): () => void;
  /** Calls back when another tab changed drafts, with their keys. @returns the way to stop it */
  onDraftsElsewhere(listener: (keys: readonly string[]) => void): () => void;
  close(): void;
}

/** Opens the store over its database and reads the summaries into memory. */
export async function openIndexedStore(database: DeviceDatabase): Promise<IndexedStore> {
  const store = new IndexedDeviceStore(database);
  await store.load();
  return store;
}

class IndexedDeviceStore implements IndexedStore {
  readonly #database: DeviceDatabase;
  readonly #table = new SummaryTable();
  readonly #channel: BroadcastChannel;
  readonly #elsewhere = new Set<(changed: readonly About[]) => void>();
  readonly #draftsElsewhere = new Set<(keys: readonly string[]) => void>();
  /** Keys that stand as single rows above the packs. */
  readonly #singles = new Set<string>();
  #packRows = 0;
  #reading: Promise<void> = Promise.resolve();
  /** Counts what this store wrote itself, so that a reading begun before it is not put over it. */
  #ownChanges = 0;

  constructor(database: DeviceDatabase) {
    this.#database = database;
    this.#channel = new BroadcastChannel(database.name);
    this.#channel.onmessage = (event: MessageEvent<ChangeNotice>) => {
      const drafts = event.data.drafts ?? [];
      if (drafts.length > 0) for (const listener of this.#draftsElsewhere) listener(drafts);
      if (event.data.keys.length === 0) return;
      // One after the other: a slow reading of everything must not end after a quick one that began later.
      this.#reading = this.#reading.then(() => this.#readAgain(event.data)).catch(() => undefined); // a closed database has nothing to read again
    };
  }

  async load(): Promise<void> {
    const before = this.#ownChanges;
    const reading = this.#database.transaction(['summaryPacks', 'summaries']);
    const [packs, rows] = await Promise.all([
      reading.objectStore('summaryPacks').getAll(),
      reading.objectStore('summaries').getAll(),
    ]);
    if (before !== this.#ownChanges) return this.load();
    this.#table.clear();
    this.#singles.clear();
    this.#packRows = 0;
    for (const pack of packs) {
      this.#packRows += pack.rows.length;
      for (const row of pack.rows) this.#table.put(row);
    }
    for (const record of rows) this.#putRecord(record);
  }

  #putRecord({ key, row }: SummaryRecord): void {
    this.#singles.add(key);
    if (row === null) this.#table.drop(key.slice(0, key.indexOf('/')), key);
    else this.#table.put(row);
  }

  async #readAgain(told: ChangeNotice): Promise<void> {
    if (told.keys === 'all') await this.load();
    else {
      const before = this.#ownChanges;
      const records = await Promise.all(told.keys.map((key) => this.#database.get('summaries', key)));
      // A row that is no single any more was packed meanwhile: then everything is read again.
      const stale = before !== this.#ownChanges || records.some((record) => record === undefined);
      if (stale) await this.load();
      else for (const record of records) if (record !== undefined) this.#putRecord(record);
    }
    for (const listener of this.#elsewhere) listener(told.abouts);
  }

  onElsewhere(listener: (changed: readonly About[]) => void): () => void {
    this.#elsewhere.add(listener);
    return () => this.#elsewhere.delete(listener);
  }

  onDraftsElsewhere(listener: (keys: readonly string[]) => void): () => void {
    this.#draftsElsewhere.add(listener);
    return () => this.#draftsElsewhere.delete(listener);
  }

  close(): void {
    this.#channel.close();
    this.#database.close();
  }

  exclusive<T>(work: (inside: this) => Promise<T>): Promise<T> {
    return navigator.locks.request(`${this.#database.name} record`, () => work(this)) as Promise<T>;
  }

  async commit(change: DeviceChange, stored?: (count: number) => void): Promise<void> {
    const transaction = this.#database.transaction(storesOf(change), 'readwrite', {
      durability: 'strict',
    }) as WriteTransaction;
    let told: ChangeNotice | null = null;
    try {
      await writeChange(transaction, change, stored);
      told = await this.#keepStates(transaction, change);
    } catch (error) {
      // A failed request has already aborted the transaction; a check of ours has not.
      try {
        transaction.abort();
      } catch {
        // it was aborted before
      }
      await transaction.done.catch(() => undefined);
      if (error instanceof DOMException && error.name === 'ConstraintError') {
        throw new RecordError('entry clash', 'the database already holds such an entry', error);
      }
      throw error;
    }
    await transaction.done;
    this.#applyToTable(change);
    const drafts = [...(change.saveDrafts ?? []).map(({ key }) => key), ...(change.removeDrafts ?? [])];
    const heard: ChangeNotice = { ...(told ?? { keys: [], abouts: [] }), drafts };
    if (told !== null || drafts.length > 0) this.#channel.postMessage(heard);
  }

  /** Writes states and summaries; memory follows only when the transaction has succeeded. */
  async #keepStates(transaction: WriteTransaction, change: DeviceChange): Promise<ChangeNotice | null> {
    const states = change.states ?? [];
    const dropped = change.dropStates ?? [];
    if (states.length + dropped.length === 0) return null;
    const abouts = [...states.map(({ summary }) => summary.about), ...dropped];
    const asked: Promise<unknown>[] = [];
    const bulk = states.length >= packFrom;
    const kept = transaction.objectStore('states');
    const rows = transaction.objectStore('summaries');
    const packs = transaction.objectStore('summaryPacks');
    if (bulk) {
      // Whatever was kept of these before is older now. The database is asked, not memory: another tab may have written.
      const before = new Set(await kept.getAllKeys());
      const singles = new Set(await rows.getAllKeys());
      for (const { summary } of states) {
        const key = aboutKey(summary.about);
        if (before.has(key)) asked.push(kept.delete(key));
        if (singles.has(key)) asked.push(rows.delete(key));
      }
      if (this.#packRows > stalePackRows * (this.#table.size + states.length)) {
        const fresh = new Map<string, Summary>();
        for (const pack of await packs.getAll()) for (const row of pack.rows) fresh.set(aboutKey(row.about), row);
        for (const { key, row } of await rows.getAll()) {
          if (row === null) fresh.delete(key);
          else fresh.set(key, row);
        }
        await packs.clear();
        for (const { summary } of states) fresh.set(aboutKey(summary.about), summary);
        for (const about of dropped) fresh.delete(aboutKey(about));
        await rows.clear();
        const all = [...fresh.values()];
        for (let i = 0; i < all.length; i += 1000) asked.push(packs.add({ rows: all.slice(i, i + 1000) }));
      } else {
        asked.push(packs.add({ rows: states.map(({ summary }) => summary) }));
      }
    } else {
      for (const { state, summary } of states) {
        const key = aboutKey(summary.about);
        asked.push(kept.put({ key, state }));
        asked.push(rows.put({ key, row: summary }));
      }
    }
    for (const about of dropped) {
      asked.push(kept.delete(aboutKey(about)));
      asked.push(rows.put({ key: aboutKey(about), row: null }));
    }
    await Promise.all(asked);
    return { keys: bulk ? 'all' : abouts.map(aboutKey), abouts };
  }

  #applyToTable(change: DeviceChange): void {
    this.#ownChanges += 1;
    const states: readonly FoldedState[] = change.states ?? [];
    const bulk = states.length >= packFrom;
    if (bulk && this.#packRows > stalePackRows * (this.#table.size + states.length)) {
      this.#packRows = this.#table.size;
      this.#singles.clear();
    }
    if (bulk) this.#packRows += states.length;
    for (const { summary } of states) {
      this.#table.put(summary);
      if (bulk) this.#singles.delete(aboutKey(summary.about));
      else this.#singles.add(aboutKey(summary.about));
    }
    for (const about of change.dropStates ?? []) {
      this.#table.drop(about.type, aboutKey(about));
      this.#singles.add(aboutKey(about));
    }
  }

  async clock(): Promise<string | null> {
    return ((await this.#database.get('meta', 'clock')) as string | undefined) ?? null;
  }

  async identity(): Promise<Identity | null> {
    return ((await this.#database.get('meta', 'identity')) as Identity | undefined) ?? null;
  }

  async office(): Promise<OfficeKey | null> {
    return ((await this.#database.get('meta', 'office')) as OfficeKey | undefined) ?? null;
  }

  async head(device: string): Promise<Head | null> {
    return (await this.#database.get('heads', device)) ?? null;
  }

  heads(): Promise<Head[]> {
    return this.#database.getAll('heads');
  }

  async byHash(hashes: readonly string[]): Promise<Map<string, StoredEntry>> {
    return firstOfEach(await this.#stored(hashes, 'hashes'));
  }

  async byId(ids: readonly string[]): Promise<Map<string, StoredEntry>> {
    return firstOfEach(await this.#stored(ids, 'ids'));
  }

  /**
   * The stored entries by their keys: single ones, and those in packs. A request for each key costs more than reading a
   * record; where there are fewer records than that, as on a phone that fetches its district for the first time, all are
   * read.
   */
  async #stored(keys: readonly string[], by: keyof typeof entryKeys): Promise<Map<string, StoredEntry[]>> {
    const wanted = new Set(keys);
    const found = new Map<string, StoredEntry[]>();
    if (wanted.size === 0) return found;
    const take = (kept: StoredEntry): void => {
      const key = entryKeys[by].of(kept);
      if (key === null || !wanted.has(key)) return;
      const list = found.get(key);
      if (list === undefined) found.set(key, [kept]);
      else list.push(kept);
    };
    const transaction = this.#database.transaction(['entries', 'packs']);
    const singles = transaction.objectStore('entries');
    const packs = transaction.objectStore('packs');
    const { single } = entryKeys[by];
    const among = single === null ? singles : singles.index(single);
    const isMany = wanted.size >= fewKeys;
    const [ofSingles, ofPacks] = isMany ? await Promise.all([singles.count(), packs.count()]) : [Infinity, Infinity];
    const each = [...wanted];
    const [records, keysOfPacks] = await Promise.all([
      ofSingles <= wanted.size ? singles.getAll() : Promise.all(each.map((key) => among.getAll(key))),
      ofPacks * keysWorthAPack <= wanted.size
        ? packs.getAllKeys()
        : Promise.all(each.map((key) => packs.index(by).getAllKeys(key))),
    ]);
    for (const { kept } of records.flat()) take(kept);
    for await (const pack of packsOf(transaction, new Set(keysOfPacks.flat())))
      for (const kept of pack.kept) take(kept);
    return found;
  }

  async chain(device: string, seq: number, limit: number): Promise<StoredEntry[]> {
    const transaction = this.#database.transaction(['entries', 'packs']);
    const range = IDBKeyRange.bound([device, seq], [device, Number.MAX_SAFE_INTEGER]);
    const [singles, packKeys] = await Promise.all([
      transaction.objectStore('entries').index('place').getAll(range, limit),
      transaction.objectStore('packs').index('places').getAllKeys(range, limit),
    ]);
    const found = singles.map(({ kept }) => kept);
    for await (const pack of packsOf(transaction, new Set(packKeys))) {
      for (const kept of pack.kept) {
        const { envelope } = kept.entry;
        if (envelope.device === device && envelope.seq >= seq) found.push(kept);
      }
    }
    return found.sort((a, b) => a.entry.envelope.seq - b.entry.envelope.seq).slice(0, limit);
  }

  entriesAbout(abouts: readonly About[]): Promise<Map<string, StoredEntry[]>> {
    return this.#stored(abouts.map(aboutKey), 'abouts');
  }

  async states(abouts: readonly About[]): Promise<Map<string, StateBase>> {
    const store = this.#database.transaction('states').store;
    const keys = [...new Set(abouts.map(aboutKey))];
    // As with entries: all of them where there are fewer than are asked for.
    const records =
      (await store.count()) <= keys.length
        ? await store.getAll()
        : await Promise.all(keys.map((key) => store.get(key)));
    const wanted = new Set(keys);
    const found = new Map<string, StateBase>();
    for (const record of records)
      if (record !== undefined && wanted.has(record.key)) found.set(record.key, record.state);
    return found;
  }

  async summaries<T extends FoldedType>(type: T, where?: SummaryFilter): Promise<SummaryByType[T][]> {
    return this.#table.ofType(type, where);
  }

  async stale(foldVersion: number, limit: number): Promise<About[]> {
    const found: About[] = [];
    for (const row of this.#table.all()) {
      if (row.foldVersion === foldVersion) continue;
      found.push(row.about);
      if (found.length === limit) break;
    }
    return found;
  }

  async outbox(limit: number): Promise<StoredEntry[]> {
    const waiting = await this.#database.getAll('outbox', null, limit);
    const found = await this.byHash(waiting.map(({ hash }) => hash));
    return waiting.flatMap(({ hash }) => found.get(hash) ?? []);
  }

  outboxSize(): Promise<number> {
    return this.#database.count('outbox');
  }

  async cursor(scope: string): Promise<Cursor | null> {
    return (await this.#database.get('cursors', scope)) ?? null;
  }

  cursors(): Promise<Cursor[]> {
    return this.#database.getAll('cursors');
  }

  async sequence(scope: string): Promise<string[]> {
    const pages = await this.#database.getAllFromIndex('sequences', 'scope', scope);
    return pages.flatMap(({ links }) => links);
  }

  async held(): Promise<Entry[]> {
    return (await this.#database.getAll('held')).map(({ entry }) => entry);
  }

  setAside(): Promise<EntrySetAside[]> {
    return this.#database.getAll('setAside');
  }

  async refused(): Promise<StoredEntry[]> {
    const identity = await this.identity();
    const records = await this.#database.getAllFromIndex('entries', 'refused', 1);
    const own = records.map(({ kept }) => kept).filter((kept) => kept.entry.envelope.device === identity?.device);
    return own.sort((a, b) => a.entry.envelope.seq - b.entry.envelope.seq);
  }

  async draft(key: string): Promise<StoredDraft | null> {
    return (await this.#database.get('drafts', key)) ?? null;
  }

  drafts(prefix: string): Promise<StoredDraft[]> {
    return this.#database.getAll('drafts', IDBKeyRange.bound(prefix, `${prefix}\uffff`));
  }

  async changeDraft({ key, savedAt, become }: DraftChange, alongside: readonly StoredDraft[] = []): Promise<void> {
    const transaction = this.#database.transaction('drafts', 'readwrite', { durability: 'strict' });
    const drafts = transaction.objectStore('drafts');
    try {
      const value = become((await drafts.get(key))?.value ?? null);
      const asked: Promise<unknown>[] = alongside.map((draft) => drafts.put(draft));
      asked.push(value === null ? drafts.delete(key) : drafts.put({ key, value, savedAt }));
      await Promise.all(asked);
    } catch (error) {
      // A failed request has already aborted the transaction; what `become` threw has not.
      try {
        transaction.abort();
      } catch {
        // it was aborted before
      }
      await transaction.done.catch(() => undefined);
      throw error;
    }
    await transaction.done;
    const heard: ChangeNotice = { keys: [], abouts: [], drafts: [key, ...alongside.map((draft) => draft.key)] };
    this.#channel.postMessage(heard);
  }
}

/** Whatever an entry is found by: its key, and the index of single entries by it (none: the store's own key). */
const entryKeys = {
  hashes: { of: (kept: StoredEntry) => kept.hash, single: null },
  // A refused entry counts as no fact any more, neither by its identifier nor about anything.
  ids: { of: (kept: StoredEntry) => (kept.refused === null ? kept.entry.envelope.id : null), single: 'id' },
  abouts: {
    of: (kept: StoredEntry) => (kept.refused === null ? aboutKey(kept.entry.envelope.about) : null),
    single: 'about',
  },
} as const;

/** Below so many keys nothing is counted first: a tap looks up two or three. A setting, not measured. */
const fewKeys = 50;

/** To read a pack is taken to cost as much as to ask the index for so many keys. Our estimate, not measured. */
const keysWorthAPack = 200;

/** An entry is stored once, so there is one at most. */
function firstOfEach(found: ReadonlyMap<string, readonly StoredEntry[]>): Map<string, StoredEntry> {
  return new Map([...found].flatMap(([key, [first]]) => (first === undefined ? [] : [[key, first] as const])));
}

/** Packs one at a time: each may be a megabyte. */
async function* packsOf(
  transaction: IDBPTransaction<DeviceSchema, ('entries' | 'packs')[], 'readonly'>,
  keys: ReadonlySet<number>,
): AsyncGenerator<PackRecord> {
  for (const key of keys) {
    const pack = await transaction.objectStore('packs').get(key);
    if (pack !== undefined) yield pack;
  }
}
