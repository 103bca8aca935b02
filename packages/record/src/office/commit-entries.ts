import { seal } from '../chain.ts';
import { instantAt, observe } from '../clock.ts';
import { effectOf } from '../effect.ts';
import type { Proposal } from '../entry.ts';
import type { OfficeStore, StoredEntry } from '../store.ts';
import type { OfficeContext } from './office.ts';
import { placeEntries } from './place-entries.ts';
import { entitiesPlaced, type ScopeGrowth } from './scope-growth.ts';

/** What is to be stored in one change. */
export interface EntriesToCommit {
  /** What came in. */
  readonly received: readonly StoredEntry[];
  /** What the office writes in its own chain. */
  readonly proposals: readonly Proposal[];
  /** Whom the office's entries name as author. */
  readonly by: string;
  /** To which what came in has been added already. */
  readonly growth: ScopeGrowth;
}

/**
 * Stores what came in and what the office writes, folds and places both. Inside `exclusive`.
 *
 * @returns the office's own entries
 */
export async function commitEntries(
  { hasher, signer, clock, chance, kinds, key }: OfficeContext,
  inside: OfficeStore,
  { received, proposals, by, growth }: EntriesToCommit,
): Promise<readonly StoredEntry[]> {
  const now = clock.now();
  let reading = await inside.clock();
  for (const { entry, refused } of received) {
    if (refused === null) reading = observe(reading, entry.envelope.clock, now);
  }
  const head = await inside.head(key.device);
  const end = { device: key.device, by, head, clock: reading };
  const sealed = await seal({ hasher, signer, clock, chance }, end, proposals);
  const written = sealed.kept.map((kept): StoredEntry => ({ ...kept, receivedAt: instantAt(now) }));
  const effect = await effectOf(inside, { added: [...received, ...written] }, kinds);
  const counting = effect.added.filter(({ refused }) => refused === null);
  await growth.load(written.flatMap(({ entry }) => entitiesPlaced(entry, kinds)));
  for (const kept of written) await growth.add(kept);
  await inside.commit({
    expected: { device: key.device, head },
    entries: effect.added,
    erase: effect.erase,
    states: effect.states,
    placements: await placeEntries(inside, hasher, counting, growth),
    memberships: growth.gained,
    follows: growth.follows,
    ...(sealed.clock === null ? {} : { clock: sealed.clock }),
  });
  return written;
}
