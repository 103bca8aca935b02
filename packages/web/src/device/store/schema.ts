import type { Entry } from '@combside/record/entry';
import type { StateBase } from '@combside/record/states';
import type {
  Cursor,
  EntrySetAside,
  Head,
  Identity,
  OfficeKey,
  StoredDraft,
  StoredEntry,
} from '@combside/record/store';
import type { Summary } from '@combside/record/summary';
import type { DBSchema, IDBPDatabase } from 'idb';

/** What the device's database holds, in its newest shape. The way there is in migrations.ts. */

/** One entry by itself. `id` and `about` are missing on a refused entry, so that the indexes do not see it. */
export interface SingleRecord {
  readonly hash: string;
  readonly place: [string, number];
  readonly id?: string;
  readonly about?: string;
  readonly refused?: 1;
  readonly kept: StoredEntry;
}

/** Several hundred entries in one value: writing them one by one takes a hundred times as long. */
export interface PackRecord {
  readonly hashes: readonly string[];
  readonly places: readonly [string, number][];
  readonly ids: readonly string[];
  readonly abouts: readonly string[];
  readonly kept: readonly StoredEntry[];
}

export interface SummaryPack {
  readonly rows: readonly Summary[];
}

/** A summary that stands above what the packs say; null when the entity has none any more. */
export interface SummaryRecord {
  readonly key: string;
  readonly row: Summary | null;
}

export interface SequenceRecord {
  readonly scope: string;
  readonly links: readonly string[];
}

export interface PhotographRecord {
  readonly hash: string;
  readonly mediaType: string;
  readonly bytes: number;
  readonly takenAt: string;
  readonly blob: Blob;
  /** When the office had it; null while it waits. */
  readonly sentAt: string | null;
  /** Where its upload was begun, while it is not finished. */
  readonly upload?: string;
  /** 1 while it waits to be sent: the index that finds those reads only these. */
  readonly waiting?: 1;
}

export interface KeyRecord {
  readonly device: string;
  readonly publicKey: string;
  readonly privateKey: CryptoKey;
}

export interface MetaRecord {
  identity: Identity;
  office: OfficeKey;
  clock: string;
  lastExchangeAt: string;
  /** Names by person. */
  names: Readonly<Record<string, string>>;
}

export interface DeviceSchema extends DBSchema {
  meta: { key: string; value: MetaRecord[keyof MetaRecord] };
  keys: { key: string; value: KeyRecord };
  heads: { key: string; value: Head };
  entries: {
    key: string;
    value: SingleRecord;
    indexes: { place: [string, number]; id: string; about: string; refused: number };
  };
  packs: {
    key: number;
    value: PackRecord;
    indexes: { hashes: string; places: [string, number]; ids: string; abouts: string };
  };
  states: { key: string; value: { readonly key: string; readonly state: StateBase } };
  summaries: { key: string; value: SummaryRecord };
  summaryPacks: { key: number; value: SummaryPack };
  outbox: { key: [string, number]; value: { readonly place: [string, number]; readonly hash: string } };
  cursors: { key: string; value: Cursor };
  sequences: { key: number; value: SequenceRecord; indexes: { scope: string } };
  held: { key: string; value: { readonly id: string; readonly entry: Entry } };
  setAside: { key: number; value: EntrySetAside };
  drafts: { key: string; value: StoredDraft };
  photographs: { key: string; value: PhotographRecord; indexes: { waiting: number } };
}

export type DeviceDatabase = IDBPDatabase<DeviceSchema>;
