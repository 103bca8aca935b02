import type { About, Entry, Proposal } from '../entry.ts';
import type { Kinds } from '../kinds/registry.ts';
import type { Chance, Hasher, Keys, Verifier, WallClock } from '../ports.ts';
import type { Reader } from '../reader.ts';
import type { DeviceStore, Identity, OfficeKey } from '../store.ts';

export interface BookPorts {
  readonly store: DeviceStore;
  readonly hasher: Hasher;
  readonly keys: Keys;
  readonly verifier: Verifier;
  readonly clock: WallClock;
  readonly chance: Chance;
}

export interface BookOptions {
  /** The person who signs. */
  readonly person: string;
  /** What the person calls the device. */
  readonly deviceName?: string;
  /** The kinds this program knows; tests give others to play older and newer programs. */
  readonly kinds?: Kinds;
}

/** What the functions of this room share: the ports, and whose book it is. */
export interface BookContext extends BookPorts {
  readonly kinds: Kinds;
  readonly person: string;
  readonly deviceName: string;
}

export interface WriteOptions {
  /** Drafts that this write completes; they go in the same transaction. */
  readonly closes?: readonly string[];
  /**
   * Told after each entry that was sealed, how many there are so far, for a write of thousands. What it throws ends the
   * write before anything is stored.
   */
  readonly sealed?: (count: number) => void;
  /** Told now and then how many entries are written so far, all of which stand only together. What it throws ends the write with nothing stored. */
  readonly stored?: (count: number) => void;
}

/** An entry as it comes from elsewhere. */
export interface Arriving {
  readonly entry: Entry;
  /** When the office received it; null when it does not come from the office. */
  readonly receivedAt: string | null;
}

/** What became of entries that came from elsewhere, by identifier. */
export interface Reception {
  /** New here and counted. */
  readonly taken: readonly string[];
  /** Here already. */
  readonly known: readonly string[];
  /** Kept until their device is known, or until the same fact's own copy has its answer. */
  readonly held: readonly string[];
  /** Not kept: they do not verify. The good ones beside them are. */
  readonly rejected: readonly { readonly id: string; readonly reason: string }[];
  /** Another device wrote under this device's name; this one has taken a new identity. */
  readonly newIdentity: boolean;
}

/** The office's answer to an own entry. */
export interface Receipt {
  readonly hash: string;
  readonly receivedAt: string;
  readonly refused: string | null;
}

/**
 * The one object through which an edge writes and reads the record on a device. Everything a screen acknowledges as
 * saved has come back from `write`.
 */
export interface Book extends Reader {
  /** The device identity this book writes under. It changes when a clone of the device was noticed. */
  identity(): Promise<Identity>;
  /** A fresh identifier, for entities and for entries that others of the same write must name. */
  newId(): string;
  /**
   * Seals and stores proposals as consecutive entries, all or nothing, durable when it returns.
   * @throws RecordError `unknown kind`, `wrong body`, `wrong about`, `unknown entry`, `entry clash`
   */
  write(proposals: readonly Proposal[], options?: WriteOptions): Promise<Entry[]>;
  /** Calls back after each change made through this book, with the entities it touched. @returns the way to stop it */
  subscribe(listener: (changed: readonly About[]) => void): () => void;
  /** Takes entries made elsewhere: verifies, stores and folds them. Duplicates are harmless, order does not matter. */
  receive(arriving: readonly Arriving[]): Promise<Reception>;
  /** Notes what the office said about own entries. A refused entry is kept and no longer counts. */
  acknowledge(receipts: readonly Receipt[]): Promise<void>;
  /**
   * Remembers the office from the first contact on.
   * @throws RecordError `wrong server` when another office was met before
   */
  meetOffice(office: OfficeKey): Promise<void>;
  /** Begins a new chain under a new identity and seals all unsent entries again in it. Nothing is dropped. */
  takeNewIdentity(reason: string): Promise<Identity>;
  /** Folds states of an older program anew, at most `limit`. @returns how many; 0 when none is left */
  refold(limit: number): Promise<number>;
}
