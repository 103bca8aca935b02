import { type Book, openBook } from '@combside/record/book';
import type { Hasher } from '@combside/record/ports';
import type { StoredEntry } from '@combside/record/store';
import { keptKeys } from './keys/kept-keys.ts';
import { webChance, webClock, webHasher, webVerifier } from './keys/web-ports.ts';
import { keptPhotographs, type Photographs } from './photographs/photographs.ts';
import { type StorageWatch, watchStorage } from './storage-watch.ts';
import { type DatabaseWatch, databaseName, openDatabase } from './store/database.ts';
import { openIndexedStore } from './store/indexed-store.ts';
import { keptNames } from './sync/fetch-names.ts';
import { type Sync, startSync } from './sync/start-sync.ts';

/** Drafts: what was tapped and not sealed yet. */
export interface Drafts {
  /** Null when there is none. */
  load(key: string): Promise<unknown>;
  /** Strictly durable when it returns. */
  save(key: string, value: unknown): Promise<void>;
  /** The same for several at once, by their keys: all of them, or none. */
  saveTogether(values: Readonly<Record<string, unknown>>): Promise<void>;
  remove(key: string): Promise<void>;
  /** Drafts whose key begins with `prefix`, by the rest of their key. */
  all(prefix: string): Promise<Record<string, unknown>>;
}

/** Everything of this device that a screen may use. */
export interface Device {
  readonly book: Book;
  readonly hasher: Hasher;
  readonly drafts: Drafts;
  readonly photographs: Photographs;
  readonly sync: Sync;
  readonly storage: StorageWatch;
  /** Own entries the office refused, oldest first, with the reason. */
  refused(): Promise<StoredEntry[]>;
  /** Names by person, as far as this device was told them. */
  names(): Promise<Readonly<Record<string, string>>>;
  /** Lets go of the store, so that another tab may change its shape. */
  close(): void;
}

/**
 * Opens this device for one person: the store, the book, and the exchange with the office in a worker.
 *
 * @param watch told when an older tab holds the store, and when this one had to give it up
 * @throws RecordError `wrong person`; DOMException when the browser gives no storage
 */
export async function openDevice(person: string, watch: DatabaseWatch = {}): Promise<Device> {
  let sync: Sync | null = null;
  const database = await openDatabase(databaseName(person), {
    ...watch,
    closed(why) {
      sync?.stop();
      watch.closed?.(why);
    },
  });
  const store = await openIndexedStore(database);
  const ports = { store, hasher: webHasher, verifier: webVerifier, clock: webClock, chance: webChance };
  const opened = await openBook({ ...ports, keys: keptKeys(database) }, { person });
  const storage = watchStorage();
  const started = startSync(person, store, database);
  sync = started;
  opened.subscribe(() => {
    started.wake();
    void storage.look();
  });
  void storage.look();

  const book: Book = {
    ...opened,
    // Screens do not care whether this tab, another one or the worker wrote.
    subscribe(listener) {
      const here = opened.subscribe(listener);
      const elsewhere = store.onElsewhere(listener);
      return () => {
        here();
        elsewhere();
      };
    },
  };
  const drafts: Drafts = {
    load: async (key) => (await store.draft(key))?.value ?? null,
    save: (key, value) => store.commit({ saveDrafts: [{ key, value, savedAt: new Date().toISOString() }] }),
    saveTogether(values) {
      const savedAt = new Date().toISOString();
      return store.commit({ saveDrafts: Object.entries(values).map(([key, value]) => ({ key, value, savedAt })) });
    },
    remove: (key) => store.commit({ removeDrafts: [key] }),
    async all(prefix) {
      const found = await store.drafts(prefix);
      return Object.fromEntries(found.map(({ key, value }) => [key.slice(prefix.length), value]));
    },
  };
  return {
    book,
    hasher: webHasher,
    drafts,
    photographs: keptPhotographs(database),
    sync: started,
    storage,
    refused: () => store.refused(),
    names: () => keptNames(database),
    close() {
      started.stop();
      store.close();
    },
  };
}
