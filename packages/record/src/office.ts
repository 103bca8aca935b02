/**
 * The office's side of the record: takes what devices send, keeps it for everybody, gives it out in one order.
 *
 * A PUSH ends for each entry in one of five ways. "received": it counts, now or since earlier. "refused": its signature
 * and its place in the chain hold, but it may not count; the office keeps the envelope alone, marked, so that the chain
 * goes on, and says why in its own chain. "gap": entries before it are missing. "clash": another entry stands at its
 * place. "broken": signature, body or link does not hold, or it is not this person's to send. The last three store
 * nothing, so nobody can spoil another person's chain, and what was damaged on the way can be sent again: only what its
 * author signed as it stands is refused for good.
 *
 * WHAT THE OFFICE WRITES ITSELF, in its own chain: a countersignature for each new device, a clock flag for an entry
 * more than 24 hours ahead, a refusal, an erasure, and what people write at its desks.
 *
 * SCOPES. Each entry that counts is placed in the scopes its entity belongs to, at the next free position. An entity
 * that comes to belong to a further scope brings all its earlier entries along. Positions run without a gap and are
 * given inside `exclusive`, so whoever has read up to a position has read everything up to there, for good.
 */
import { dayMilliseconds } from '@combside/calendar/day';
import { checkedProposals, contentFault, namedBy } from './admission.ts';
import { bodyMatches, chainBeginning, emptyDigest, extendDigest, linkOf, seal, signatureMatches } from './chain.ts';
import { signCheckpoint } from './checkpoint.ts';
import { instantAt, millisecondsAt, observe, readClock } from './clock.ts';
import { effectOf } from './effect.ts';
import { type About, type Entry, entry as entryShape, identifier, type Proposal } from './entry.ts';
import { RecordError } from './errors.ts';
import { byClock } from './fold.ts';
import { newIdentifier } from './identifier.ts';
import { type Kinds, kinds as knownKinds } from './kinds/registry.ts';
import { placingOf } from './placing.ts';
import type { Chance, Hasher, Signer, Verifier, WallClock } from './ports.ts';
import { openReader, type Reader, refoldStale } from './reader.ts';
import {
  aboutKey,
  type Head,
  type OfficeChange,
  type OfficeKey,
  type OfficeStore,
  type Placement,
  type StoredEntry,
} from './store.ts';
import { batchLimit, type Checkpoint, countThatFits, type Greeting, type Page, type PushResult } from './transport.ts';
import { beginsItsChain, type TrustedDevice, trustedDevices } from './trust.ts';

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

/** Who sends, and what they may write. */
export interface Author {
  readonly person: string;
  /**
   * @param scopes where the entity belonged before this entry, and after it
   * @returns null when this person may write it, else the reason as an id without personal data
   */
  mayWrite(
    entry: Entry,
    scopes: { readonly before: readonly string[]; readonly after: readonly string[] },
  ): string | null;
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

/** Opens the office over its store. The first opening begins the office's own chain. Any number of processes may. */
export async function openOffice(ports: OfficePorts, options: OfficeOptions): Promise<Office> {
  const { store, hasher, signer, verifier, clock, chance } = ports;
  const kinds = options.kinds ?? knownKinds;
  const key: OfficeKey = { device: options.device, publicKey: signer.publicKey };
  const sealPorts = { hasher, signer, clock, chance };

  if ((await store.head(options.device)) === null) {
    const about: About = { type: 'device', id: options.device };
    const body = { publicKey: signer.publicKey, person: options.person, predecessor: null, name: options.name };
    await store.exclusive(async (inside) => {
      if ((await inside.head(options.device)) !== null) return;
      await take(
        inside,
        [],
        [{ kind: 'device', version: 1, about, replaces: [], body }],
        options.person,
        growthOf(inside, kinds),
      );
    });
  }
  const [own] = await store.chain(options.device, 1, 1);
  if (own !== undefined && chainBeginning(own.entry)?.publicKey !== signer.publicKey) {
    throw new RecordError('wrong server', `the store of ${options.device} was opened with another key`);
  }

  /**
   * Stores what comes in and what the office writes about it, folds, and places both. Inside `exclusive`.
   * @param growth to which what comes in has been added already
   */
  async function take(
    inside: OfficeStore,
    coming: readonly StoredEntry[],
    proposals: readonly Proposal[],
    by: string,
    growth: Growth,
  ): Promise<readonly StoredEntry[]> {
    const now = clock.now();
    let reading = await inside.clock();
    for (const { entry, refused } of coming) {
      if (refused === null) reading = observe(reading, entry.envelope.clock, now);
    }
    const head = await inside.head(options.device);
    const sealed = await seal(sealPorts, { device: options.device, by, head, clock: reading }, proposals);
    const written = sealed.kept.map((kept): StoredEntry => ({ ...kept, receivedAt: instantAt(now) }));
    const effect = await effectOf(inside, { added: [...coming, ...written] }, kinds);
    const counting = effect.added.filter(({ refused }) => refused === null);
    await growth.load(written.flatMap(({ entry }) => namedPlaces(entry, kinds)));
    for (const kept of written) await growth.add(kept);
    const placing = await placementsOf(inside, counting, growth);
    const change: OfficeChange = {
      expected: { device: options.device, head },
      entries: effect.added,
      erase: effect.erase,
      states: effect.states,
      ...placing,
      ...(sealed.clock === null ? {} : { clock: sealed.clock }),
    };
    await inside.commit(change);
    return written;
  }

  /** Positions for new entries, and for the earlier entries of entities that come to belong to a further scope. */
  async function placementsOf(
    inside: OfficeStore,
    counting: readonly StoredEntry[],
    growth: Growth,
  ): Promise<Pick<OfficeChange, 'placements' | 'memberships' | 'follows'>> {
    const place = new Map<string, Map<string, StoredEntry>>();
    const into = (scope: string, kept: StoredEntry) => {
      const list = place.get(scope) ?? new Map<string, StoredEntry>();
      list.set(kept.hash, kept);
      place.set(scope, list);
    };
    if (growth.gained.length > 0) {
      const earlier = await inside.entriesAbout(growth.gained.map(({ about }) => about));
      const order = byClock(new Set());
      for (const { about, scope } of growth.gained) {
        const list = [...(earlier.get(aboutKey(about)) ?? [])].sort((a, b) => order(a.entry, b.entry));
        for (const kept of list) into(scope, kept);
      }
    }
    for (const kept of counting) {
      for (const scope of growth.scopes.get(aboutKey(kept.entry.envelope.about)) ?? []) into(scope, kept);
    }
    const placements: Placement[] = [];
    for (const [scope, list] of place) {
      const tail = await inside.tail(scope);
      let position = tail?.position ?? 0;
      let digest = tail?.digest ?? emptyDigest;
      for (const hash of list.keys()) {
        position++;
        digest = await extendDigest(hasher, digest, hash);
        placements.push({ scope, position, hash, digest });
      }
    }
    return { placements, memberships: growth.gained, follows: growth.follows };
  }

  async function push(raw: readonly unknown[], author: Author): Promise<PushResult[]> {
    if (raw.length > batchLimit) throw new RangeError(`a push holds at most ${batchLimit} entries, not ${raw.length}`);
    const sent = await Promise.all(raw.map(examined));
    const results = new Map<Sent, PushResult>();
    const readable = sent.filter((item): item is SentEntry => item.entry !== null);
    const begun = readable.filter(({ begins }) => begins).map(({ entry }) => entry);
    const devices = readable.map(({ entry }) => entry.envelope.device);
    const trusted = await trustedDevices({ store, hasher, verifier }, key, devices, []);
    for (const entry of begun) {
      const beginning = chainBeginning(entry);
      if (beginning !== null && !trusted.has(entry.envelope.device)) trusted.set(entry.envelope.device, beginning);
    }
    const signedWell = new Set<SentEntry>();
    await Promise.all(
      readable.map(async (item) => {
        const device = trusted.get(item.entry.envelope.device);
        if (device !== undefined && (await signatureMatches(verifier, item.entry.envelope, device.publicKey))) {
          signedWell.add(item);
        }
      }),
    );
    await store.exclusive((inside) => judge(inside, readable, { trusted, signedWell, author, results }));
    return sent.map(
      (item) =>
        results.get(item) ?? {
          id: item.id,
          outcome: 'broken',
          reason: item.entry === null ? 'wrong shape' : 'not judged',
        },
    );
  }

  async function examined(raw: unknown): Promise<Sent> {
    const read = entryShape.safeParse(raw);
    if (!read.success) {
      const id = identifier.safeParse((raw as { envelope?: { id?: unknown } } | null)?.envelope?.id);
      return { id: id.success ? id.data : nobody, entry: null };
    }
    const entry: Entry = { ...read.data, body: read.data.body ?? null };
    return {
      id: entry.envelope.id,
      entry,
      hash: await linkOf(hasher, entry.envelope),
      bodyHolds: entry.salt === null || (await bodyMatches(hasher, entry)),
      begins: chainBeginning(entry) !== null && (await beginsItsChain(hasher, verifier, entry)),
    };
  }

  async function judge(inside: OfficeStore, readable: readonly SentEntry[], court: Court): Promise<void> {
    const { results } = court;
    const now = clock.now();
    const receivedAt = instantAt(now);
    const stored = await inside.byHash(readable.map(({ hash }) => hash));
    const sameFact = await inside.byId(readable.map(({ id }) => id));
    const heads = new Map<string, Head | null>();
    const ordered = [...readable].sort((a, b) => byPlace(a.entry, b.entry));
    const coming: StoredEntry[] = [];
    const proposals: Proposal[] = [];
    const accepted = new Map<string, StoredEntry>();
    const facts = new Map<string, StoredEntry>(sameFact);
    const growth = growthOf(inside, kinds);
    await growth.load(readable.flatMap(({ entry }) => namedPlaces(entry, kinds)));

    for (const item of ordered) {
      const { entry, hash, id } = item;
      const { device, seq, prev } = entry.envelope;
      const known = stored.get(hash) ?? accepted.get(hash);
      if (known !== undefined) {
        results.set(item, resultFor(id, known));
        continue;
      }
      if (!heads.has(device)) heads.set(device, await inside.head(device));
      const head = heads.get(device) ?? null;
      const next = (head?.seq ?? 0) + 1;
      // Before its place is judged: a damaged number must not look like another device's entry.
      if (court.trusted.has(device) && !court.signedWell.has(item)) {
        results.set(item, { id, outcome: 'broken', reason: 'wrong signature' });
        continue;
      }
      if (seq < next) {
        results.set(item, { id, outcome: 'clash' });
        continue;
      }
      if (seq > next) {
        results.set(item, { id, outcome: 'gap', from: next });
        continue;
      }
      const fault = linkFault(item, head, prev, court);
      if (fault !== null) {
        results.set(item, { id, outcome: 'broken', reason: fault });
        continue;
      }

      let refused = contentRefusal(item, court, facts);
      if (item.begins && refused !== null) {
        // A chain whose first entry does not count could never be trusted: it must not begin.
        results.set(item, { id, outcome: 'broken', reason: refused });
        continue;
      }
      if (refused === null && !item.begins) {
        const before = await growth.scopesOf(entry.envelope.about);
        const after = await growth.scopesWith(entry);
        refused = court.author.mayWrite(entry, { before, after });
      }
      const kept: StoredEntry =
        refused === null
          ? { entry, hash, receivedAt, refused }
          : { entry: { envelope: entry.envelope, salt: null, body: null }, hash, receivedAt, refused };
      coming.push(kept);
      accepted.set(hash, kept);
      heads.set(device, { device, seq, hash });
      results.set(item, resultFor(id, kept));
      if (refused === null) {
        facts.set(id, kept);
        await growth.add(kept);
      }
      proposals.push(...officeWords(kept, now));
    }
    if (coming.length > 0) await take(inside, coming, proposals, options.person, growth);
  }

  function linkFault(item: SentEntry, head: Head | null, prev: string | null, court: Court): string | null {
    const device = court.trusted.get(item.entry.envelope.device);
    if (device === undefined) return 'no device entry';
    if (device.person !== court.author.person) return 'not your device';
    if (prev !== (head?.hash ?? null)) return 'does not follow';
    if (head === null && !item.begins) return 'no device entry';
    if (!item.bodyHolds) return 'wrong body hash';
    return null;
  }

  /** Why an entry of a sound chain does not count, as far as the record itself can say. */
  function contentRefusal(item: SentEntry, court: Court, facts: ReadonlyMap<string, StoredEntry>): string | null {
    const { entry } = item;
    if (entry.envelope.by !== court.author.person) return 'wrong author';
    const fault = contentFault(entry, false, kinds);
    if (fault !== null) return fault;
    const same = facts.get(item.id);
    if (same === undefined) return null;
    return same.entry.envelope.bodyHash === entry.envelope.bodyHash ? 'written already' : 'identifier taken';
  }

  /** What the office writes about an entry it has just received. */
  function officeWords({ entry: { envelope }, hash, refused }: StoredEntry, now: number): Proposal[] {
    const device: About = { type: 'device', id: envelope.device };
    if (refused !== null) {
      const body = { entry: envelope.id, seq: envelope.seq, envelopeHash: hash, reason: refused };
      return [{ kind: 'refusal', version: 1, about: device, replaces: [], body }];
    }
    const words: Proposal[] = [];
    if (envelope.kind === 'device') {
      const body = { entry: envelope.id, envelopeHash: hash };
      words.push({ kind: 'countersignature', version: 1, about: device, replaces: [], body });
    }
    const ahead = Math.max(readClock(envelope.clock).milliseconds, millisecondsAt(envelope.at)) - now;
    if (ahead > dayMilliseconds) {
      const body = { entry: envelope.id, aheadMilliseconds: ahead };
      words.push({ kind: 'clock-flag', version: 1, about: envelope.about, replaces: [], body });
    }
    return words;
  }

  async function write(proposals: readonly Proposal[], by: string): Promise<Entry[]> {
    const checked = checkedProposals(proposals, kinds);
    const written = await store.exclusive(async (inside) => {
      const named = namedBy(checked, kinds);
      const found = await inside.byId(named);
      for (const id of named) if (!found.has(id)) throw new RecordError('unknown entry', id);
      return take(inside, [], checked, by, growthOf(inside, kinds));
    });
    return written.map(({ entry }) => entry);
  }

  return {
    ...openReader(store, kinds),
    key,
    greet: (scopes) => ({
      office: key.device,
      publicKey: key.publicKey,
      now: instantAt(clock.now()),
      scopes: [...scopes],
    }),
    push,
    async pull(scope, after, limit) {
      const asked = Math.max(1, Math.min(limit, batchLimit));
      const found = await store.placed(scope, after, asked + 1);
      const given = found.slice(0, asked);
      const items = given.slice(0, countThatFits(given.map(({ kept }) => kept.entry))).map(({ placement, kept }) => ({
        position: placement.position,
        entry: kept.entry,
        receivedAt: kept.receivedAt ?? instantAt(0),
      }));
      return { scope, items, more: found.length > items.length };
    },
    async checkpoint(scope, position) {
      const at = instantAt(clock.now());
      if (scope === null) {
        const heads = await store.heads();
        let digest = emptyDigest;
        for (const { hash } of heads) digest = await extendDigest(hasher, digest, hash);
        const content = { scope, position: heads.length, digest, heads, at, office: key.device };
        return signCheckpoint(signer, content);
      }
      const reached = position === 0 ? null : ((await store.placement(scope, position)) ?? (await store.tail(scope)));
      const content = { position: reached?.position ?? 0, digest: reached?.digest ?? emptyDigest };
      return signCheckpoint(signer, { scope, ...content, heads: null, at, office: key.device });
    },
    write,
    async erase(ids, reason, by) {
      const found = await store.byId(ids);
      const byEntity = new Map<string, { about: About; ids: string[] }>();
      for (const id of ids) {
        const kept = found.get(id);
        if (kept === undefined) throw new RecordError('unknown entry', id);
        const { kind, about } = kept.entry.envelope;
        if (kinds.get(kind)?.erasable !== true) throw new RecordError('not erasable', `${kind} ${id}`);
        const group = byEntity.get(aboutKey(about)) ?? { about, ids: [] };
        group.ids.push(id);
        byEntity.set(aboutKey(about), group);
      }
      const around = await store.entriesAbout([...byEntity.values()].map(({ about }) => about));
      const proposals: Proposal[] = [];
      for (const [entity, group] of byEntity) {
        // A correction repeats the body it corrects, so it has to go with it.
        for (const { entry } of around.get(entity) ?? []) {
          const { corrects } = (entry.body ?? {}) as { corrects?: string };
          if (kinds.get(entry.envelope.kind)?.fold.as === 'correction' && group.ids.includes(corrects ?? '')) {
            group.ids.push(entry.envelope.id);
          }
        }
        proposals.push({
          kind: 'erasure',
          version: 1,
          about: group.about,
          replaces: [],
          body: { entries: [...new Set(group.ids)], reason },
        });
      }
      return write(proposals, by);
    },
    newId: () => newIdentifier(clock, chance),
    refold: (limit) => refoldStale(store, limit, kinds),
  };
}

/** Answered where what was sent bears no readable identifier (RFC 9562, section 5.9). */
const nobody = '00000000-0000-0000-0000-000000000000';

type Sent = SentEntry | { readonly id: string; readonly entry: null };

interface SentEntry {
  readonly id: string;
  readonly entry: Entry;
  readonly hash: string;
  readonly bodyHolds: boolean;
  /** May begin a chain, and holds by itself. */
  readonly begins: boolean;
}

interface Court {
  readonly trusted: ReadonlyMap<string, TrustedDevice>;
  readonly signedWell: ReadonlySet<SentEntry>;
  readonly author: Author;
  readonly results: Map<Sent, PushResult>;
}

function resultFor(id: string, kept: StoredEntry): PushResult {
  const receivedAt = kept.receivedAt ?? instantAt(0);
  return kept.refused === null
    ? { id, outcome: 'received', receivedAt }
    : { id, outcome: 'refused', receivedAt, reason: kept.refused };
}

function byPlace(a: Entry, b: Entry): number {
  if (a.envelope.device !== b.envelope.device) return a.envelope.device < b.envelope.device ? -1 : 1;
  return a.envelope.seq - b.envelope.seq;
}

/** How belonging grows while entries come in: answers from the store, with what came in this batch on top. */
interface Growth {
  /** All scopes of each entity asked about so far. */
  readonly scopes: ReadonlyMap<string, ReadonlySet<string>>;
  readonly gained: readonly { readonly about: About; readonly scope: string }[];
  readonly follows: readonly { readonly child: About; readonly parent: About }[];
  /** Reads the belonging of many entities at once, before they are asked for one by one. */
  load(abouts: readonly About[]): Promise<void>;
  scopesOf(about: About): Promise<string[]>;
  /** Scopes the entity would have with this entry. */
  scopesWith(entry: Entry): Promise<string[]>;
  add(kept: StoredEntry): Promise<void>;
}

function growthOf(inside: OfficeStore, kinds: Kinds): Growth {
  const scopes = new Map<string, Set<string>>();
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

  return { scopes, gained, follows, load, scopesOf, scopesWith, add };
}

/** The entities whose belonging an entry touches or asks for. */
function namedPlaces(entry: Entry, kinds: Kinds): About[] {
  return [entry.envelope.about, ...placingOf(entry, kinds).follows.flatMap(({ child, parent }) => [child, parent])];
}

/**
 * The usual rule of who may write where: whoever was granted one of the districts the entity belongs to, before the
 * entry (when it belonged anywhere) and after it. A device speaks only for itself.
 *
 * @param districts scopes granted, or `all`
 */
export function writesIn(districts: readonly string[] | 'all'): Author['mayWrite'] {
  const granted = (scopes: readonly string[]) => scopes.some((scope) => districts.includes(scope));
  return ({ envelope }, { before, after }) => {
    if (envelope.about.type === 'device') return envelope.about.id === envelope.device ? null : 'not your device';
    if (districts === 'all') return null;
    if (after.length === 0) return 'place not known';
    return granted(after) && (before.length === 0 || granted(before)) ? null : 'not your district';
  };
}
