import type { About, EntityType, Entry, Proposal } from './entry.ts';
import type { Chance, Hasher, Keys, Verifier, WallClock } from './ports.ts';
import type { StateByType } from './states.ts';
import type { DeviceStore, Identity, Kept } from './store.ts';
import type { FoldedType, SummaryByType, Where } from './summary.ts';

export interface BookPorts {
  readonly store: DeviceStore;
  readonly hasher: Hasher;
  readonly keys: Keys;
  readonly verifier: Verifier;
  readonly clock: WallClock;
  readonly chance: Chance;
}

export interface WriteOptions {
  /** Drafts that this write completes; they go in the same transaction. */
  readonly closes?: readonly string[];
}

/** What became of entries that came from elsewhere. */
export interface Reception {
  /** New here and counted. */
  readonly taken: readonly string[];
  /** Here already. */
  readonly known: readonly string[];
  /** Kept until their device is known. */
  readonly held: readonly string[];
  /** Not kept: they do not verify. The good ones beside them are. */
  readonly rejected: readonly { readonly id: string; readonly reason: string }[];
}

/**
 * The one object through which an edge writes and reads the record. Everything a screen acknowledges as saved has come
 * back from `write`.
 */
export interface Book {
  readonly identity: Identity;
  /** A fresh identifier, for entities and for entries that others of the same write must name. */
  newId(): string;
  /**
   * Seals and stores proposals as consecutive entries, all or nothing, durable when it returns.
   * @throws RecordError `unknown kind`, `wrong body`, `wrong about`, `unknown entry`
   */
  write(proposals: readonly Proposal[], options?: WriteOptions): Promise<Entry[]>;
  /** The folded state; null when nothing was written about the entity here. */
  state<T extends keyof StateByType>(about: { readonly type: T; readonly id: string }): Promise<StateByType[T] | null>;
  states<T extends keyof StateByType>(type: T, where: Where): Promise<StateByType[T][]>;
  summaries<T extends FoldedType>(type: T, where?: Where): Promise<SummaryByType[T][]>;
  /** Entries about one entity in the order of their clocks, with their receipts. */
  history(about: About): Promise<Kept[]>;
  /** Calls back after each change with the entities it touched. @returns the way to stop it */
  subscribe(listener: (changed: readonly About[]) => void): () => void;
  /** Takes entries made elsewhere: verifies, stores and folds them. Duplicates are harmless, order does not matter. */
  receive(entries: readonly { readonly entry: Entry; readonly receivedAt: string | null }[]): Promise<Reception>;
}

export type { EntityType };
