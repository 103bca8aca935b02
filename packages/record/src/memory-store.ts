import type { About, Entry } from './entry.ts';
import { RecordError } from './errors.ts';
import type { StateBase } from './states.ts';
import {
  aboutKey,
  type Cursor,
  type DeviceChange,
  type DeviceStore,
  type DraftChange,
  type EntrySetAside,
  type FoldedState,
  type Head,
  type Identity,
  type OfficeChange,
  type OfficeKey,
  type OfficeStore,
  type Placement,
  type StoredDraft,
  type StoredEntry,
} from './store.ts';
import { type FoldedType, groupFiltered, groupsOf, type SummaryByType, type SummaryFilter } from './summary.ts';

/** A device store that forgets everything when the program ends: for tests, the demo and the command line. */
export function memoryDeviceStore(): DeviceStore {
  return new MemoryStore();
}

/**
 * An office store that forgets everything when the program ends.
 *
 * @param pause awaited before every answer, so that a test can interleave several offices that share the store
 */
export function memoryOfficeStore(pause?: () => Promise<void>): OfficeStore {
  return new MemoryStore(pause);
}

/** The same store once more, sharing nothing with the first: what a cloned or restored phone holds. */
export function copyOfDeviceStore(store: DeviceStore): DeviceStore {
  if (!(store instanceof MemoryStore)) throw new TypeError('only a memory store can be copied');
  return store.copied();
}

class MemoryStore implements DeviceStore, OfficeStore {
  readonly #pause: (() => Promise<void>) | undefined;
  #queue: Promise<unknown> = Promise.resolve();
  #clock: string | null = null;
  #identity: Identity | null = null;
  #office: OfficeKey | null = null;
  readonly #byHash = new Map<string, StoredEntry>();
  readonly #byId = new Map<string, string>();
  /** Envelope hashes by seq; place 0 is never used. */
  readonly #chains = new Map<string, (string | undefined)[]>();
  readonly #abouts = new Map<string, Set<string>>();
  readonly #states = new Map<string, FoldedState>();
  readonly #groups = new Map<string, Set<string>>();
  readonly #outbox = new Set<string>();
  readonly #cursors = new Map<string, Cursor>();
  readonly #sequences = new Map<string, string[]>();
  readonly #held = new Map<string, Entry>();
  readonly #setAside: EntrySetAside[] = [];
  readonly #drafts = new Map<string, StoredDraft>();
  readonly #placements = new Map<string, Placement[]>();
  readonly #placedAlready = new Map<string, Set<string>>();
  readonly #memberships = new Map<string, Set<string>>();
  readonly #followers = new Map<string, Map<string, About>>();
  readonly #parents = new Map<string, Map<string, About>>();

  constructor(pause?: () => Promise<void>) {
    this.#pause = pause;
  }

  copied(): MemoryStore {
    const copy = new MemoryStore(this.#pause);
    copy.#clock = this.#clock;
    copy.#identity = this.#identity;
    copy.#office = this.#office;
    for (const kept of this.#byHash.values()) copy.#add(kept);
    for (const [key, kept] of this.#states) {
      copy.#states.set(key, kept);
      for (const group of groupsOf(kept.summary)) grouped(copy.#groups, group).add(key);
    }
    for (const hash of this.#outbox) copy.#outbox.add(hash);
    for (const [scope, cursor] of this.#cursors) copy.#cursors.set(scope, cursor);
    for (const [scope, sequence] of this.#sequences) copy.#sequences.set(scope, [...sequence]);
    for (const [id, entry] of this.#held) copy.#held.set(id, entry);
    copy.#setAside.push(...this.#setAside);
    for (const [key, draft] of this.#drafts) copy.#drafts.set(key, draft);
    return copy;
  }

  async exclusive<T>(work: (inside: this) => Promise<T>): Promise<T> {
    const before = this.#queue;
    const run = before.then(() => work(this));
    this.#queue = run.catch(() => undefined); // whoever waits behind must not fail with us
    return run;
  }

  async commit(change: DeviceChange & OfficeChange, stored?: (count: number) => void): Promise<void> {
    await this.#pause?.();
    this.#check(change);
    if (change.entries?.length) stored?.(change.entries.length);
    for (const aside of change.setAside ?? []) {
      this.#remove(aside.kept);
      this.#setAside.push(aside);
    }
    for (const kept of change.entries ?? []) this.#add(kept);
    for (const { hash, receivedAt, refused } of change.receipts ?? []) {
      const kept = this.#byHash.get(hash);
      if (kept === undefined) continue;
      this.#remove(kept);
      this.#add({ ...kept, receivedAt, refused });
      this.#outbox.delete(hash);
    }
    for (const hash of change.erase ?? []) {
      const kept = this.#byHash.get(hash);
      if (kept !== undefined) this.#byHash.set(hash, { ...kept, entry: { ...kept.entry, salt: null, body: null } });
    }
    for (const kept of change.states ?? []) this.#keepState(kept);
    for (const about of change.dropStates ?? []) this.#dropState(aboutKey(about));
    for (const hash of change.outbox ?? []) this.#outbox.add(hash);
    if (change.clock !== undefined) this.#clock = change.clock;
    if (change.identity !== undefined) this.#identity = change.identity;
    if (change.office !== undefined) this.#office = change.office;
    if (change.cursor !== undefined) {
      const { scope, position } = change.cursor;
      this.#cursors.set(scope, change.cursor);
      const before = position === 0 ? [] : (this.#sequences.get(scope) ?? []);
      this.#sequences.set(scope, [...before, ...(change.sequence ?? [])]);
    }
    for (const entry of change.hold ?? []) this.#held.set(entry.envelope.id, entry);
    for (const id of change.release ?? []) this.#held.delete(id);
    for (const draft of change.saveDrafts ?? []) this.#drafts.set(draft.key, structuredCopy(draft));
    for (const key of change.removeDrafts ?? []) this.#drafts.delete(key);
    this.#place(change);
  }

  #check(change: DeviceChange & OfficeChange): void {
    const { expected } = change;
    if (expected !== undefined) {
      const head = this.#headOf(expected.device);
      if ((head?.seq ?? 0) !== (expected.head?.seq ?? 0) || (head?.hash ?? null) !== (expected.head?.hash ?? null)) {
        throw new RecordError('head moved', `device ${expected.device} stands at ${head?.seq ?? 0}`);
      }
    }
    const leaving = new Set((change.setAside ?? []).map(({ kept }) => kept.hash));
    const places = new Set<string>();
    const ids = new Set<string>();
    for (const { entry, hash, refused } of change.entries ?? []) {
      const { device, seq, id } = entry.envelope;
      const place = `${device} ${seq}`;
      const there = this.#chains.get(device)?.[seq];
      if (places.has(place) || (there !== undefined && !leaving.has(there)) || this.#byHash.has(hash)) {
        throw new RecordError('entry clash', `device ${device}, seq ${seq}`);
      }
      places.add(place);
      if (refused !== null) continue;
      const named = this.#byId.get(id);
      if (ids.has(id) || (named !== undefined && !leaving.has(named))) throw new RecordError('entry clash', `id ${id}`);
      ids.add(id);
    }
    const next = new Map<string, number>();
    for (const { scope, position, hash } of change.placements ?? []) {
      const expectedPosition = next.get(scope) ?? (this.#placements.get(scope)?.length ?? 0) + 1;
      if (this.#placedAlready.get(scope)?.has(hash) || position !== expectedPosition) {
        throw new RecordError('entry clash', `scope ${scope}, position ${position}`);
      }
      next.set(scope, position + 1);
    }
  }

  #add(kept: StoredEntry): void {
    const { envelope } = kept.entry;
    this.#byHash.set(kept.hash, kept);
    let chain = this.#chains.get(envelope.device);
    if (chain === undefined) {
      chain = [];
      this.#chains.set(envelope.device, chain);
    }
    chain[envelope.seq] = kept.hash;
    if (kept.refused !== null) return;
    this.#byId.set(envelope.id, kept.hash);
    grouped(this.#abouts, aboutKey(envelope.about)).add(kept.hash);
  }

  #remove(kept: StoredEntry): void {
    const { envelope } = kept.entry;
    this.#byHash.delete(kept.hash);
    const chain = this.#chains.get(envelope.device);
    if (chain !== undefined) {
      chain[envelope.seq] = undefined;
      while (chain.length > 0 && chain.at(-1) === undefined) chain.pop();
    }
    if (this.#byId.get(envelope.id) === kept.hash) this.#byId.delete(envelope.id);
    this.#abouts.get(aboutKey(envelope.about))?.delete(kept.hash);
    this.#outbox.delete(kept.hash);
  }

  #keepState(kept: FoldedState): void {
    const key = aboutKey(kept.summary.about);
    this.#dropState(key);
    this.#states.set(key, kept);
    for (const group of groupsOf(kept.summary)) grouped(this.#groups, group).add(key);
  }

  #dropState(key: string): void {
    const before = this.#states.get(key);
    if (before !== undefined) for (const group of groupsOf(before.summary)) this.#groups.get(group)?.delete(key);
    this.#states.delete(key);
  }

  #place(change: OfficeChange): void {
    for (const placement of change.placements ?? []) {
      const list = this.#placements.get(placement.scope) ?? [];
      list.push(placement);
      this.#placements.set(placement.scope, list);
      grouped(this.#placedAlready, placement.scope).add(placement.hash);
    }
    for (const { about, scope } of change.memberships ?? []) grouped(this.#memberships, aboutKey(about)).add(scope);
    for (const { child, parent } of change.follows ?? []) {
      const key = aboutKey(parent);
      const children = this.#followers.get(key) ?? new Map<string, About>();
      children.set(aboutKey(child), child);
      this.#followers.set(key, children);
      const parents = this.#parents.get(aboutKey(child)) ?? new Map<string, About>();
      parents.set(key, parent);
      this.#parents.set(aboutKey(child), parents);
    }
  }

  #headOf(device: string): Head | null {
    const chain = this.#chains.get(device);
    const hash = chain?.at(-1);
    return chain === undefined || hash === undefined ? null : { device, seq: chain.length - 1, hash };
  }

  async clock(): Promise<string | null> {
    await this.#pause?.();
    return this.#clock;
  }

  async head(device: string): Promise<Head | null> {
    await this.#pause?.();
    return this.#headOf(device);
  }

  async heads(): Promise<Head[]> {
    await this.#pause?.();
    const heads = [...this.#chains.keys()].map((device) => this.#headOf(device));
    return heads.filter((head) => head !== null).sort((a, b) => (a.device < b.device ? -1 : 1));
  }

  async byHash(hashes: readonly string[]): Promise<Map<string, StoredEntry>> {
    await this.#pause?.();
    return new Map(hashes.flatMap((hash) => pairs(hash, this.#byHash.get(hash))));
  }

  async byId(ids: readonly string[]): Promise<Map<string, StoredEntry>> {
    await this.#pause?.();
    return new Map(ids.flatMap((id) => pairs(id, this.#byHash.get(this.#byId.get(id) ?? ''))));
  }

  async chain(device: string, seq: number, limit: number): Promise<StoredEntry[]> {
    await this.#pause?.();
    const hashes = (this.#chains.get(device) ?? []).slice(seq).filter((hash) => hash !== undefined);
    return hashes.slice(0, limit).flatMap((hash) => this.#byHash.get(hash) ?? []);
  }

  async entriesAbout(abouts: readonly About[]): Promise<Map<string, StoredEntry[]>> {
    await this.#pause?.();
    const found = new Map<string, StoredEntry[]>();
    for (const about of abouts) {
      const hashes = this.#abouts.get(aboutKey(about));
      if (hashes?.size)
        found.set(
          aboutKey(about),
          [...hashes].flatMap((hash) => this.#byHash.get(hash) ?? []),
        );
    }
    return found;
  }

  async states(abouts: readonly About[]): Promise<Map<string, StateBase>> {
    await this.#pause?.();
    return new Map(abouts.map(aboutKey).flatMap((key) => pairs(key, this.#states.get(key)?.state)));
  }

  async summaries<T extends FoldedType>(type: T, where?: SummaryFilter): Promise<SummaryByType[T][]> {
    await this.#pause?.();
    const keys = where === undefined ? this.#states.keys() : (this.#groups.get(groupFiltered(type, where)) ?? []);
    const rows: SummaryByType[T][] = [];
    for (const key of keys) {
      const summary = this.#states.get(key)?.summary;
      if (summary?.about.type === type) rows.push(summary as SummaryByType[T]);
    }
    return rows;
  }

  async stale(foldVersion: number, limit: number): Promise<About[]> {
    await this.#pause?.();
    const old = [...this.#states.values()].filter(({ summary }) => summary.foldVersion !== foldVersion);
    return old.slice(0, limit).map(({ summary }) => summary.about);
  }

  async identity(): Promise<Identity | null> {
    return this.#identity;
  }

  async office(): Promise<OfficeKey | null> {
    return this.#office;
  }

  async outbox(limit: number): Promise<StoredEntry[]> {
    const waiting = [...this.#outbox].flatMap((hash) => this.#byHash.get(hash) ?? []);
    waiting.sort((a, b) => a.entry.envelope.seq - b.entry.envelope.seq);
    return waiting.slice(0, limit);
  }

  async outboxSize(): Promise<number> {
    return this.#outbox.size;
  }

  async cursor(scope: string): Promise<Cursor | null> {
    return this.#cursors.get(scope) ?? null;
  }

  async cursors(): Promise<Cursor[]> {
    return [...this.#cursors.values()];
  }

  async sequence(scope: string): Promise<string[]> {
    return [...(this.#sequences.get(scope) ?? [])];
  }

  async held(): Promise<Entry[]> {
    return [...this.#held.values()];
  }

  async setAside(): Promise<EntrySetAside[]> {
    return [...this.#setAside];
  }

  async refused(): Promise<StoredEntry[]> {
    const own = this.#chains.get(this.#identity?.device ?? '') ?? [];
    return own.flatMap((hash) => this.#byHash.get(hash ?? '') ?? []).filter((kept) => kept.refused !== null);
  }

  async draft(key: string): Promise<StoredDraft | null> {
    return structuredCopy(this.#drafts.get(key) ?? null);
  }

  async drafts(prefix: string): Promise<StoredDraft[]> {
    const found = [...this.#drafts.values()].filter(({ key }) => key.startsWith(prefix));
    return found.sort((a, b) => (a.key < b.key ? -1 : 1)).map(structuredCopy);
  }

  async changeDraft({ key, savedAt, become }: DraftChange, alongside: readonly StoredDraft[] = []): Promise<void> {
    const value = become(structuredCopy(this.#drafts.get(key)?.value ?? null));
    if (value === null) this.#drafts.delete(key);
    else this.#drafts.set(key, structuredCopy({ key, value, savedAt }));
    for (const draft of alongside) this.#drafts.set(draft.key, structuredCopy(draft));
  }

  async tail(scope: string): Promise<Placement | null> {
    await this.#pause?.();
    return this.#placements.get(scope)?.at(-1) ?? null;
  }

  async placement(scope: string, position: number): Promise<Placement | null> {
    await this.#pause?.();
    return this.#placements.get(scope)?.[position - 1] ?? null;
  }

  async placed(scope: string, position: number, limit: number): Promise<{ placement: Placement; kept: StoredEntry }[]> {
    await this.#pause?.();
    const after = (this.#placements.get(scope) ?? []).slice(position, position + limit);
    return after.flatMap((placement) => {
      const kept = this.#byHash.get(placement.hash);
      return kept === undefined ? [] : [{ placement, kept }];
    });
  }

  async placedAlready(scope: string, hashes: readonly string[]): Promise<Set<string>> {
    await this.#pause?.();
    const placed = this.#placedAlready.get(scope);
    return new Set(hashes.filter((hash) => placed?.has(hash)));
  }

  async memberships(abouts: readonly About[]): Promise<Map<string, string[]>> {
    await this.#pause?.();
    const found = new Map<string, string[]>();
    for (const about of abouts) {
      const scopes = this.#memberships.get(aboutKey(about));
      if (scopes !== undefined) found.set(aboutKey(about), [...scopes]);
    }
    return found;
  }

  async followers(parents: readonly About[]): Promise<About[]> {
    await this.#pause?.();
    const found = new Map<string, About>();
    for (const parent of parents) {
      for (const [key, child] of this.#followers.get(aboutKey(parent)) ?? []) found.set(key, child);
    }
    return [...found.values()];
  }

  async parents(children: readonly About[]): Promise<Map<string, About[]>> {
    await this.#pause?.();
    const found = new Map<string, About[]>();
    for (const child of children) {
      const parents = this.#parents.get(aboutKey(child));
      if (parents !== undefined) found.set(aboutKey(child), [...parents.values()]);
    }
    return found;
  }
}

function grouped(groups: Map<string, Set<string>>, key: string): Set<string> {
  const found = groups.get(key) ?? new Set<string>();
  groups.set(key, found);
  return found;
}

function pairs<V>(key: string, value: V | undefined): [string, V][] {
  return value === undefined ? [] : [[key, value]];
}

/** A copy that shares nothing with the original, of what JSON can say. */
function structuredCopy<T>(value: T): T {
  return JSON.parse(JSON.stringify(value)) as T;
}
