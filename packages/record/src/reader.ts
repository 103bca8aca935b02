import type { About, Entry } from './entry.ts';
import { byClock, flaggedIn, fold, foldVersionOf, summarise } from './fold.ts';
import { type Kinds, kinds as knownKinds } from './kinds/registry.ts';
import type { StateBase, StateByType } from './states.ts';
import { aboutKey, type Change, type EntryStore, type FoldedState, type StoredEntry } from './store.ts';
import type { FoldedType, SummaryByType, SummaryFilter } from './summary.ts';

/** Reading the record: the same on a phone and at the office. */
export interface Reader {
  /** The folded state; null when nothing was written about the entity here. */
  state<T extends keyof StateByType>(about: { readonly type: T; readonly id: string }): Promise<StateByType[T] | null>;
  /** States of a group, in the order of their identifiers. */
  states<T extends keyof StateByType>(type: T, where: SummaryFilter): Promise<StateByType[T][]>;
  summaries<T extends FoldedType>(type: T, where?: SummaryFilter): Promise<SummaryByType[T][]>;
  /** Entries that count about one entity, in the order of their clocks. */
  history(about: About): Promise<StoredEntry[]>;
}

/** Opens a store for reading. States made by another version of the fold are never shown: they are folded anew. */
export function openReader(store: EntryStore<Change>, kinds: Kinds = knownKinds): Reader {
  const version = foldVersionOf(kinds);

  async function statesOf(abouts: readonly About[]): Promise<Map<string, StateBase>> {
    const kept = await store.states(abouts);
    const missing = abouts.filter((about) => kept.get(aboutKey(about))?.foldVersion !== version);
    if (missing.length === 0) return kept;
    const entries = await store.entriesAbout(missing);
    for (const about of missing) {
      const own = entries.get(aboutKey(about));
      if (own === undefined) kept.delete(aboutKey(about));
      else kept.set(aboutKey(about), fold(about, own.map(entryOf), kinds));
    }
    return kept;
  }

  return {
    async state<T extends keyof StateByType>(about: { readonly type: T; readonly id: string }) {
      return ((await statesOf([about])).get(aboutKey(about)) as StateByType[T] | undefined) ?? null;
    },
    async states<T extends keyof StateByType>(type: T, where: SummaryFilter) {
      const rows = await store.summaries(type, where);
      const abouts = rows.map(({ about }) => about).sort((a, b) => (a.id < b.id ? -1 : 1));
      const found = await statesOf(abouts);
      return abouts.flatMap((about) => (found.get(aboutKey(about)) as StateByType[T] | undefined) ?? []);
    },
    summaries: (type, where) => store.summaries(type, where),
    async history(about) {
      const found = (await store.entriesAbout([about])).get(aboutKey(about)) ?? [];
      const order = byClock(flaggedIn(found.map(entryOf), kinds));
      return found.sort((a, b) => order(a.entry, b.entry));
    },
  };
}

/** Folds one entity's entries into what a store keeps. */
export function folded(about: About, entries: readonly Entry[], kinds: Kinds): FoldedState {
  const state = fold(about, entries, kinds);
  return { state, summary: summarise(state) };
}

/**
 * Folds entities anew whose states another version of the program made, a batch at a time, so that an edge can do it
 * between visits and in the background.
 *
 * @returns how many were folded; 0 when none is left
 */
export async function refoldStale(
  store: EntryStore<Change>,
  limit: number,
  kinds: Kinds = knownKinds,
): Promise<number> {
  return store.exclusive(async (inside) => {
    const abouts = await inside.stale(foldVersionOf(kinds), limit);
    if (abouts.length === 0) return 0;
    const entries = await inside.entriesAbout(abouts);
    const states = abouts.map((about) => folded(about, (entries.get(aboutKey(about)) ?? []).map(entryOf), kinds));
    await inside.commit({ states });
    return abouts.length;
  });
}

function entryOf(kept: StoredEntry): Entry {
  return kept.entry;
}
