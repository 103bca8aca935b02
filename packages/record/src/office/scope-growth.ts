import type { About, Entry } from '../entry.ts';
import type { Kinds } from '../kinds/registry.ts';
import { placingOf } from '../placing.ts';
import { aboutKey, type OfficeStore, type StoredEntry } from '../store.ts';

/** How belonging grows while entries come in: answers from the store, with what came in this change on top. */
export interface ScopeGrowth {
  /** All scopes of each entity asked about so far. */
  readonly scopes: ReadonlyMap<string, ReadonlySet<string>>;
  readonly gained: readonly { readonly about: About; readonly scope: string }[];
  readonly follows: readonly { readonly child: About; readonly parent: About }[];
  /** Reads the belonging of many entities at once, before they are asked for one by one. */
  load(abouts: readonly About[]): Promise<void>;
  scopesOf(about: About): Promise<string[]>;
  /** Whom the entity follows, and ever followed. */
  parentsOf(about: About): Promise<About[]>;
  /** Scopes the entity would have with this entry. */
  scopesWith(entry: Entry): Promise<string[]>;
  add(kept: StoredEntry): Promise<void>;
}

/** Begins with what the store says. Inside `exclusive`. */
export function scopeGrowth(inside: OfficeStore, kinds: Kinds): ScopeGrowth {
  const scopes = new Map<string, Set<string>>();
  const parents = new Map<string, About[]>();
  const childless = new Set<string>();
  const gained: { about: About; scope: string }[] = [];
  const follows: { child: About; parent: About }[] = [];

  async function load(abouts: readonly About[]): Promise<void> {
    const missing = abouts.filter((about) => !scopes.has(aboutKey(about)));
    if (missing.length === 0) return;
    const found = await inside.memberships(missing);
    for (const about of missing) scopes.set(aboutKey(about), new Set(found.get(aboutKey(about)) ?? []));
    // Most entities of a batch have no followers: one question settles it for all of them.
    if ((await inside.followers(missing)).length === 0) for (const about of missing) childless.add(aboutKey(about));
  }
  const scopesOf = async (about: About) => {
    await load([about]);
    return [...(scopes.get(aboutKey(about)) ?? [])];
  };

  async function parentsOf(about: About): Promise<About[]> {
    const key = aboutKey(about);
    const stored = parents.get(key) ?? (await inside.parents([about])).get(key) ?? [];
    parents.set(key, stored);
    const fresh = follows.filter(({ child }) => aboutKey(child) === key).map(({ parent }) => parent);
    return [...stored, ...fresh];
  }

  async function join(about: About, scope: string): Promise<void> {
    await load([about]);
    const own = scopes.get(aboutKey(about));
    if (own === undefined || own.has(scope)) return;
    own.add(scope);
    gained.push({ about, scope });
    const stored = childless.has(aboutKey(about)) ? [] : await inside.followers([about]);
    const fresh = follows.filter(({ parent }) => aboutKey(parent) === aboutKey(about)).map(({ child }) => child);
    for (const child of [...stored, ...fresh]) await join(child, scope);
  }

  async function scopesWith(entry: Entry): Promise<string[]> {
    const placing = placingOf(entry, kinds);
    const all = new Set([...(await scopesOf(entry.envelope.about)), ...placing.scopes]);
    for (const { child, parent } of placing.follows) {
      if (aboutKey(child) !== aboutKey(entry.envelope.about)) continue;
      for (const scope of await scopesOf(parent)) all.add(scope);
    }
    return [...all];
  }

  async function add({ entry }: StoredEntry): Promise<void> {
    const placing = placingOf(entry, kinds);
    for (const follow of placing.follows) {
      follows.push(follow);
      for (const scope of await scopesOf(follow.parent)) await join(follow.child, scope);
    }
    for (const scope of placing.scopes) await join(entry.envelope.about, scope);
  }

  return { scopes, gained, follows, load, scopesOf, parentsOf, scopesWith, add };
}

/** The entities whose belonging an entry touches or asks for. */
export function entitiesPlaced(entry: Entry, kinds: Kinds): About[] {
  return [entry.envelope.about, ...placingOf(entry, kinds).follows.flatMap(({ child, parent }) => [child, parent])];
}
