import type { Book } from '@combside/record/book/book';
import { openBook } from '@combside/record/book/open-book';
import type { Hasher } from '@combside/record/ports';
import type { StoredEntry } from '@combside/record/store';
import { type Drafts, storedDrafts } from './drafts/stored-drafts.ts';
import { keptKeys } from './keys/kept-keys.ts';
import { webChance, webClock, webHasher, webVerifier } from './keys/web-ports.ts';
import { keptPhotographs, type Photographs } from './photographs/photographs.ts';
import { type StorageWatch, watchStorage } from './storage-watch.ts';
import { type DatabaseWatch, databaseName, openDatabase } from './store/database.ts';
import { openIndexedStore } from './store/indexed-store.ts';
import { keptNames } from './sync/fetch-names.ts';
import { type Sync, startSync } from './sync/start-sync.ts';

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
  return {
    book,
    hasher: webHasher,
    drafts: storedDrafts(store, store.onDraftsElsewhere.bind(store)),
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
