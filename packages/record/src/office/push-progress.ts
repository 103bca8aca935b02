import type { About, Entry } from '../entry.ts';
import type { Kinds } from '../kinds/registry.ts';
import { aboutKey, type Head, type OfficeStore, type StoredEntry } from '../store.ts';
import type { SentEntry } from './read-sent-entry.ts';
import { entitiesPlaced, type ScopeGrowth, scopeGrowth } from './scope-growth.ts';

/** What stands when the next entry of a push is verified: stored before, or brought by this push. */
export interface PushProgress {
  /** Entries by envelope hash, refused ones too. */
  readonly byHash: ReadonlyMap<string, StoredEntry>;
  /** Entries that count, by identifier. */
  readonly byId: ReadonlyMap<string, StoredEntry>;
  readonly growth: ScopeGrowth;
  /** What this push has brought so far, in the order in which it will stand. */
  readonly received: readonly StoredEntry[];
  /** An entry that counts, by identifier. */
  find(id: string): Promise<Entry | undefined>;
  /** The entries about an entity that counted before this push. */
  about(about: About): Promise<readonly Entry[]>;
  /** Where the chain of a device ends; null when it has no entry yet. */
  headOf(device: string): Promise<Head | null>;
  /** Lets an entry stand at the end of its chain. */
  add(kept: StoredEntry): Promise<void>;
}

/** Reads what stands before a push. Inside `exclusive`. */
export async function startProgress(
  inside: OfficeStore,
  readable: readonly SentEntry[],
  kinds: Kinds,
): Promise<PushProgress> {
  const byHash = await inside.byHash(readable.map(({ hash }) => hash));
  const byId = await inside.byId(readable.map(({ id }) => id));
  const heads = new Map<string, Head | null>();
  const received: StoredEntry[] = [];
  const growth = scopeGrowth(inside, kinds);
  await growth.load(readable.flatMap(({ entry }) => entitiesPlaced(entry, kinds)));
  return {
    byHash,
    byId,
    growth,
    received,
    async find(id) {
      const kept = byId.get(id) ?? (await inside.byId([id])).get(id);
      return kept?.entry;
    },
    async about(about) {
      return ((await inside.entriesAbout([about])).get(aboutKey(about)) ?? []).map(({ entry }) => entry);
    },
    async headOf(device) {
      if (!heads.has(device)) heads.set(device, await inside.head(device));
      return heads.get(device) ?? null;
    },
    async add(kept) {
      const { device, seq, id } = kept.entry.envelope;
      received.push(kept);
      byHash.set(kept.hash, kept);
      heads.set(device, { device, seq, hash: kept.hash });
      if (kept.refused !== null) return;
      byId.set(id, kept);
      await growth.add(kept);
    },
  };
}
