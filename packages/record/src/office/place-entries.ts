/**
 * SCOPES. Each entry that counts is placed in the scopes its entity belongs to, at the next free position. An entity
 * that comes to belong to a further scope brings all its earlier entries along. Positions run without a gap and are
 * given inside `exclusive`, so whoever has read up to a position has read everything up to there, for good.
 */
import { emptyDigest, extendDigest } from '../chain.ts';
import { byClock } from '../fold.ts';
import type { Hasher } from '../ports.ts';
import { aboutKey, type OfficeStore, type Placement, type StoredEntry } from '../store.ts';
import type { ScopeGrowth } from './scope-growth.ts';

/** Positions for new entries, and for the earlier entries of entities that come to belong to a further scope. */
export async function placeEntries(
  inside: OfficeStore,
  hasher: Hasher,
  counting: readonly StoredEntry[],
  growth: ScopeGrowth,
): Promise<Placement[]> {
  const placements: Placement[] = [];
  for (const [scope, hashes] of await hashesByScope(inside, counting, growth)) {
    const tail = await inside.tail(scope);
    let position = tail?.position ?? 0;
    let digest = tail?.digest ?? emptyDigest;
    for (const hash of hashes) {
      position++;
      digest = await extendDigest(hasher, digest, hash);
      placements.push({ scope, position, hash, digest });
    }
  }
  return placements;
}

/** Which envelope goes into which scope, in the order in which they are placed: what was there earlier goes first. */
async function hashesByScope(
  inside: OfficeStore,
  counting: readonly StoredEntry[],
  { gained, scopes }: ScopeGrowth,
): Promise<Map<string, Set<string>>> {
  const hashes = new Map<string, Set<string>>();
  const into = (scope: string, { hash }: StoredEntry) => {
    hashes.set(scope, (hashes.get(scope) ?? new Set<string>()).add(hash));
  };
  if (gained.length > 0) {
    const earlier = await inside.entriesAbout(gained.map(({ about }) => about));
    const order = byClock(new Set());
    for (const { about, scope } of gained) {
      const list = [...(earlier.get(aboutKey(about)) ?? [])].sort((a, b) => order(a.entry, b.entry));
      for (const kept of list) into(scope, kept);
    }
  }
  for (const kept of counting) {
    for (const scope of scopes.get(aboutKey(kept.entry.envelope.about)) ?? []) into(scope, kept);
  }
  return hashes;
}
