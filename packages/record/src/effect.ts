import type { About, Entry } from './entry.ts';
import type { ErasureBody } from './kinds/erasure.ts';
import type { Kinds } from './kinds/registry.ts';
import { folded } from './reader.ts';
import { aboutKey, type Change, type EntryStore, type FoldedState, type StoredEntry } from './store.ts';

/** What comes and goes in a store. */
export interface EntriesMoved {
  readonly added: readonly StoredEntry[];
  /** Entries that stop counting: set aside, or refused. */
  readonly gone?: readonly StoredEntry[];
}

/** What a change does to the entities it touches. */
export interface Effect {
  /** The added entries, without the bodies that an erasure has named, whichever came first. */
  readonly added: readonly StoredEntry[];
  /** Envelope hashes of stored entries whose bodies are now erased. */
  readonly erase: readonly string[];
  readonly states: readonly FoldedState[];
  readonly dropStates: readonly About[];
  readonly touched: readonly About[];
}

/** Works out the effect of entries coming and going. Call it inside `exclusive`, and commit what it returns there. */
export async function effectOf(store: EntryStore<Change>, coming: EntriesMoved, kinds: Kinds): Promise<Effect> {
  const touched = new Map<string, About>();
  const arriving = new Map<string, StoredEntry[]>();
  for (const kept of coming.added) {
    if (kept.refused !== null) continue;
    const key = aboutKey(kept.entry.envelope.about);
    touched.set(key, kept.entry.envelope.about);
    const list = arriving.get(key);
    if (list === undefined) arriving.set(key, [kept]);
    else list.push(kept);
  }
  for (const { entry } of coming.gone ?? []) touched.set(aboutKey(entry.envelope.about), entry.envelope.about);

  const leaving = new Set((coming.gone ?? []).map(({ hash }) => hash));
  const before = await store.entriesAbout([...touched.values()]);
  const stripped = new Map<string, StoredEntry>();
  const erase: string[] = [];
  const states: FoldedState[] = [];
  const dropStates: About[] = [];
  for (const [key, about] of touched) {
    const staying = (before.get(key) ?? []).filter(({ hash }) => !leaving.has(hash));
    const all = [...staying, ...(arriving.get(key) ?? [])];
    if (all.length === 0) {
      dropStates.push(about);
      continue;
    }
    const erased = erasedIn(all, kinds);
    const entries = all.map((kept) => {
      const { envelope, salt } = kept.entry;
      if (salt === null || !erased.has(envelope.id) || !mayBeErased(kept.entry, kinds)) return kept.entry;
      if (before.get(key)?.includes(kept)) erase.push(kept.hash);
      else stripped.set(kept.hash, { ...kept, entry: withoutBody(kept.entry) });
      return withoutBody(kept.entry);
    });
    states.push(folded(about, entries, kinds));
  }
  return {
    added: coming.added.map((kept) => stripped.get(kept.hash) ?? kept),
    erase,
    states,
    dropStates,
    touched: [...touched.values()],
  };
}

/** Identifiers that erasure entries of one entity name. */
function erasedIn(entries: readonly StoredEntry[], kinds: Kinds): Set<string> {
  const erased = new Set<string>();
  for (const { entry } of entries) {
    if (kinds.get(entry.envelope.kind)?.fold.as !== 'erasure') continue;
    for (const id of (entry.body as ErasureBody).entries) erased.add(id);
  }
  return erased;
}

/** Whether the body may be missing: only in kinds that hold personal data. Of a kind not known here the office decides. */
export function mayBeErased(entry: Entry, kinds: Kinds): boolean {
  const kind = kinds.get(entry.envelope.kind);
  return kind === undefined || kind.erasable !== false;
}

function withoutBody(entry: Entry): Entry {
  return { envelope: entry.envelope, salt: null, body: null };
}
