import type { About, Entry } from './entry.ts';
import type { StateBase } from './states.ts';
import type { FoldedType, Summary, SummaryByType, SummaryFilter } from './summary.ts';

/**
 * Ports to whatever keeps the record: memory, the phone's IndexedDB, the office's PostgreSQL. A store knows places in
 * chains, identifiers and groups; it never looks into a body, never verifies, never folds. Suites: `acceptance/`.
 *
 * All changes go through `commit`: one description, one transaction, all of it or nothing, durable when it returns.
 * Whoever reads in order to commit does both inside `exclusive`, which admits one writer at a time over all tabs and
 * processes that share the store.
 */

/** The newest place of a device's chain. `hash` is SHA-256 of the canonical envelope without its signature. */
export interface Head {
  readonly device: string;
  readonly seq: number;
  readonly hash: string;
}

/**
 * An entry as kept. The envelope's hash names this very envelope; the identifier names the fact, and at most one entry
 * that counts bears it (a fact sealed twice after a phone was cloned counts once).
 */
export interface StoredEntry {
  readonly entry: Entry;
  /** SHA-256 of the canonical envelope without its signature, hexadecimal. */
  readonly hash: string;
  /** When the office received it, by the office's clock; null while it is only here. */
  readonly receivedAt: string | null;
  /** Why the office refused it; null for an entry that counts. A refused entry holds its place in the chain, but no fold sees it. */
  readonly refused: string | null;
}

/** A folded state with its summary; both carry the version of the fold that made them. */
export interface FoldedState {
  readonly state: StateBase;
  readonly summary: Summary;
}

/** One atomic change to a store. Every part is optional. */
export interface Change {
  /** Commit only if the chain of this device ends here (null: has no entry yet); else RecordError `head moved`. */
  readonly expected?: { readonly device: string; readonly head: Head | null };
  /**
   * New entries. RecordError `entry clash`, and nothing stored, when an entry stands already at the same device and seq,
   * or when two entries that count would share an identifier.
   */
  readonly entries?: readonly StoredEntry[];
  /** States to keep, replacing older ones of the same entity. */
  readonly states?: readonly FoldedState[];
  /** Entries the office has received, or refused and why. */
  readonly receipts?: readonly {
    readonly hash: string;
    readonly receivedAt: string;
    readonly refused: string | null;
  }[];
  /** Hashes of entries whose body and salt are to be forgotten for good; the envelope stays. */
  readonly erase?: readonly string[];
  /** The newest hybrid clock reading of this side. */
  readonly clock?: string;
}

/** What phone and office stores have in common. */
export interface EntryStore<C extends Change = Change> {
  /** Runs `work` while no other writer of this store runs. `inside` is the store to use within; not re-entrant. */
  exclusive<T>(work: (inside: this) => Promise<T>): Promise<T>;
  commit(change: C): Promise<void>;

  clock(): Promise<string | null>;
  head(device: string): Promise<Head | null>;
  /** Heads of all chains, sorted by device. */
  heads(): Promise<Head[]>;
  /** Entries by envelope hash, refused ones too; key is the hash; unknown ones are left out. */
  byHash(hashes: readonly string[]): Promise<Map<string, StoredEntry>>;
  /** Entries that count, by identifier; unknown ones are left out. */
  byId(ids: readonly string[]): Promise<Map<string, StoredEntry>>;
  /** Entries of one chain from `seq` on, in order, refused ones too, at most `limit`. */
  chain(device: string, seq: number, limit: number): Promise<StoredEntry[]>;
  /** Every entry that counts (not refused) about each of these entities; key is `aboutKey`. Entities without one are left out. Any order. */
  entriesAbout(abouts: readonly About[]): Promise<Map<string, StoredEntry[]>>;

  /**
   * Kept states; key is `aboutKey`; entities without a kept state are left out. A store may drop states (never
   * summaries): the book then folds them again from the entries.
   */
  states(abouts: readonly About[]): Promise<Map<string, StateBase>>;
  /** Summaries of a type, all of them or those of one group. Any order. */
  summaries<T extends FoldedType>(type: T, where?: SummaryFilter): Promise<SummaryByType[T][]>;
  /** Entities whose summary was made by another fold version, at most `limit`. */
  stale(foldVersion: number, limit: number): Promise<About[]>;
}

export interface Identity {
  readonly device: string;
  readonly person: string;
}

/** How far a scope was read. `digest` runs over the envelope hashes of its entries in order: see chain.ts. */
export interface Cursor {
  readonly scope: string;
  readonly position: number;
  readonly digest: string;
}

/** An own entry taken out of its chain because another device writes under the same name; kept as evidence. */
export interface EntrySetAside {
  readonly kept: StoredEntry;
  readonly reason: string;
  readonly setAsideAt: string;
}

export interface StoredDraft {
  readonly key: string;
  /** Anything JSON can say. */
  readonly value: unknown;
  readonly savedAt: string;
}

/** What a draft becomes, worked out from what stands there. */
export interface DraftChange {
  readonly key: string;
  readonly savedAt: string;
  /** Given the value that stands there, or null; returns the value to stand there, or null for none. Must not wait. */
  readonly become: (value: unknown) => unknown;
}

/** One atomic change on a phone. */
export interface DeviceChange extends Change {
  readonly identity?: Identity;
  /** Own entries to send, by envelope hash; they leave the outbox with their receipt, or when they are set aside. */
  readonly outbox?: readonly string[];
  readonly cursor?: Cursor;
  /** Envelope hashes that the page added to the cursor's scope, in order; a cursor at position 0 empties the list. */
  readonly sequence?: readonly string[];
  /** Own unsent entries to take out of the log. Applied before `entries`, so that the same identifiers may come back re-sealed. */
  readonly setAside?: readonly EntrySetAside[];
  /** States to forget, of entities about which no entry that counts is left. */
  readonly dropStates?: readonly About[];
  /** Entries that cannot be verified yet because their device is not known here. */
  readonly hold?: readonly Entry[];
  /** Held entries to let go, by identifier of the entry. */
  readonly release?: readonly string[];
  /** The office this copy belongs to: its device and key, known from the first contact on. */
  readonly office?: OfficeKey;
  readonly saveDrafts?: readonly StoredDraft[];
  readonly removeDrafts?: readonly string[];
}

export interface OfficeKey {
  readonly device: string;
  readonly publicKey: string;
}

/** The store of one person on one device. */
export interface DeviceStore extends EntryStore<DeviceChange> {
  /**
   * @param stored told now and then how many entries of the change are written so far, for a change of thousands; what it
   *   throws gives the whole change up, and nothing of it is stored
   */
  commit(change: DeviceChange, stored?: (count: number) => void): Promise<void>;
  identity(): Promise<Identity | null>;
  office(): Promise<OfficeKey | null>;
  /** Own entries without receipt, in chain order, at most `limit`. */
  outbox(limit: number): Promise<StoredEntry[]>;
  outboxSize(): Promise<number>;
  cursor(scope: string): Promise<Cursor | null>;
  cursors(): Promise<Cursor[]>;
  sequence(scope: string): Promise<string[]>;
  held(): Promise<Entry[]>;
  setAside(): Promise<EntrySetAside[]>;
  /** Own entries the office refused, oldest first. */
  refused(): Promise<StoredEntry[]>;
  draft(key: string): Promise<StoredDraft | null>;
  /** Drafts whose key begins with `prefix`, sorted by key. */
  drafts(prefix: string): Promise<StoredDraft[]>;
  /**
   * Changes one draft in one stroke: between the reading and the storing nobody else writes it, whatever tab or handle
   * they come from. Durable when it returns. Does not wait for `exclusive`: a tap never stands behind an exchange.
   *
   * @param alongside further drafts stored in the same stroke
   */
  changeDraft(change: DraftChange, alongside?: readonly StoredDraft[]): Promise<void>;
}

/** An entry's place in a scope. Positions of a scope run 1, 2, 3... without a gap, in commit order. */
export interface Placement {
  readonly scope: string;
  readonly position: number;
  /** Envelope hash of the entry. */
  readonly hash: string;
  readonly digest: string;
}

/** One atomic change at the office. */
export interface OfficeChange extends Change {
  readonly placements?: readonly Placement[];
  /** From now on everything about the entity goes to this scope. */
  readonly memberships?: readonly { readonly about: About; readonly scope: string }[];
  /** From now on `child` goes wherever `parent` goes. */
  readonly follows?: readonly { readonly child: About; readonly parent: About }[];
}

/**
 * The store of the office. Whoever has read a scope up to position p never later finds a new entry at p or below:
 * placements are only committed inside `exclusive`, and nothing is visible before its commit.
 */
export interface OfficeStore extends EntryStore<OfficeChange> {
  /** Last placement of a scope, or null while it is empty. */
  tail(scope: string): Promise<Placement | null>;
  placement(scope: string, position: number): Promise<Placement | null>;
  /** Entries after `position`, in order, at most `limit`. */
  placed(scope: string, position: number, limit: number): Promise<{ placement: Placement; kept: StoredEntry }[]>;
  /** Which of these entries stand in the scope already. */
  placedAlready(scope: string, hashes: readonly string[]): Promise<Set<string>>;
  /** Scopes of each entity; key is `aboutKey`; entities without one are left out. */
  memberships(abouts: readonly About[]): Promise<Map<string, string[]>>;
  /** Entities that follow any of these. */
  followers(parents: readonly About[]): Promise<About[]>;
  /** Entities that each of these follows; key is `aboutKey`; entities that follow none are left out. */
  parents(children: readonly About[]): Promise<Map<string, About[]>>;
}

/** The key of an entity in maps and indexes: `colony/0190...`. */
export function aboutKey(about: About): string {
  return `${about.type}/${about.id}`;
}
