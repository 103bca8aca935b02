import type { Entry, Proposal } from '../entry.ts';
import type { Kinds } from '../kinds/registry.ts';
import type { Chance, Hasher, Signer, Verifier, WallClock } from '../ports.ts';
import type { Reader } from '../reader.ts';
import type { OfficeKey, OfficeStore } from '../store.ts';
import type { Checkpoint, Greeting, Page, PushResult } from '../transport.ts';
import type { Author } from './author.ts';

export interface OfficePorts {
  readonly store: OfficeStore;
  readonly hasher: Hasher;
  readonly signer: Signer;
  readonly verifier: Verifier;
  readonly clock: WallClock;
  readonly chance: Chance;
}

export interface OfficeOptions {
  /** The office's own device identity; give the same at every start, with the same key. */
  readonly device: string;
  /** Whom the office's own entries name as author when no person wrote them. */
  readonly person: string;
  readonly name: string;
  readonly kinds?: Kinds;
}

/** What the functions of this room share: the ports, and who the office is. */
export interface OfficeContext extends OfficePorts {
  readonly kinds: Kinds;
  readonly key: OfficeKey;
  /** Whom the office's own entries name as author when no person wrote them. */
  readonly person: string;
}

export interface Office extends Reader {
  readonly key: OfficeKey;
  greet(scopes: readonly string[]): Greeting;
  /** At most `batchLimit` entries, in any order; one result for each, in the order given. Never throws for what was sent. */
  push(entries: readonly unknown[], author: Author): Promise<PushResult[]>;
  /** Whether the person may read the scope is for the caller to check. */
  pull(scope: string, after: number, limit: number): Promise<Page>;
  /** The office's word on a scope at `position`, or at its end when it is shorter; on the whole record when null. */
  checkpoint(scope: string | null, position: number): Promise<Checkpoint>;
  /** Writes at a desk, in the office's own chain. @throws RecordError as `Book.write` */
  write(proposals: readonly Proposal[], by: string): Promise<Entry[]>;
  /**
   * Forgets bodies for good, with the corrections of the same entries.
   * @throws RecordError `not erasable`, `unknown entry`
   */
  erase(ids: readonly string[], reason: string, by: string): Promise<Entry[]>;
  newId(): string;
  refold(limit: number): Promise<number>;
}
