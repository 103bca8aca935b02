import type { IDBPDatabase, IDBPTransaction, StoreNames } from 'idb';
import type { DeviceSchema } from './schema.ts';

/** One step in the life of the database's shape. A step that was ever shipped is never edited. */
export interface Migration {
  readonly name: string;
  change(
    database: IDBPDatabase<DeviceSchema>,
    transaction: IDBPTransaction<DeviceSchema, StoreNames<DeviceSchema>[], 'versionchange'>,
  ): void;
}

/** The database's version is the number of steps. */
export const migrations: readonly Migration[] = [
  {
    name: 'first shape',
    change(database) {
      database.createObjectStore('meta');
      database.createObjectStore('keys', { keyPath: 'device' });
      database.createObjectStore('heads', { keyPath: 'device' });
      const entries = database.createObjectStore('entries', { keyPath: 'hash' });
      entries.createIndex('place', 'place', { unique: true });
      entries.createIndex('id', 'id', { unique: true });
      entries.createIndex('about', 'about');
      entries.createIndex('refused', 'refused');
      const packs = database.createObjectStore('packs', { autoIncrement: true });
      packs.createIndex('hashes', 'hashes', { multiEntry: true });
      packs.createIndex('places', 'places', { multiEntry: true });
      packs.createIndex('ids', 'ids', { multiEntry: true });
      packs.createIndex('abouts', 'abouts', { multiEntry: true });
      database.createObjectStore('states', { keyPath: 'key' });
      database.createObjectStore('summaries', { keyPath: 'key' });
      database.createObjectStore('summaryPacks', { autoIncrement: true });
      database.createObjectStore('outbox', { keyPath: 'place' });
      database.createObjectStore('cursors', { keyPath: 'scope' });
      const sequences = database.createObjectStore('sequences', { autoIncrement: true });
      sequences.createIndex('scope', 'scope');
      database.createObjectStore('held', { keyPath: 'id' });
      database.createObjectStore('setAside', { autoIncrement: true });
      database.createObjectStore('drafts', { keyPath: 'key' });
      const photographs = database.createObjectStore('photographs', { keyPath: 'hash' });
      photographs.createIndex('waiting', 'waiting');
    },
  },
];
