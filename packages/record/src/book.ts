import { checkedProposals, contentFault, namedBy } from './admission.ts';
import { bodyMatches, chainBeginning, linkOf, reseal, seal, signatureMatches } from './chain.ts';
import { instantAt, observe } from './clock.ts';
import { effectOf } from './effect.ts';
import { type About, type Entry, entry as entryShape, type Proposal } from './entry.ts';
import { RecordError } from './errors.ts';
import { newIdentifier } from './identifier.ts';
import type { DeviceBody } from './kinds/device.ts';
import { type Kinds, kinds as knownKinds } from './kinds/registry.ts';
import type { ResealingBody } from './kinds/resealing.ts';
import type { Chance, Hasher, Keys, Verifier, WallClock } from './ports.ts';
import { openReader, type Reader, refoldStale } from './reader.ts';
import type { Change, DeviceStore, Identity, OfficeKey, StoredEntry, Superseded } from './store.ts';
import { beginsItsChain, trustedDevices } from './trust.ts';

export interface BookPorts {
  readonly store: DeviceStore;
  readonly hasher: Hasher;
  readonly keys: Keys;
  readonly verifier: Verifier;
  readonly clock: WallClock;
  readonly chance: Chance;
}

export interface BookOptions {
  /** The person who signs. */
  readonly person: string;
  /** What the person calls the device. */
  readonly deviceName?: string;
  /** The kinds this program knows; tests give others to play older and newer programs. */
  readonly kinds?: Kinds;
}

export interface WriteOptions {
  /** Drafts that this write completes; they go in the same transaction. */
  readonly closes?: readonly string[];
  /**
   * Told after each entry that was sealed, how many there are so far, for a write of thousands. What it throws ends the
   * write before anything is stored.
   */
  readonly sealed?: (count: number) => void;
  /** Told now and then how many entries are written so far, all of which stand only together. What it throws ends the write with nothing stored. */
  readonly stored?: (count: number) => void;
}

/** An entry as it comes from elsewhere. */
export interface Arriving {
  readonly entry: Entry;
  /** When the office received it; null when it does not come from the office. */
  readonly receivedAt: string | null;
}

/** What became of entries that came from elsewhere, by identifier. */
export interface Reception {
  /** New here and counted. */
  readonly taken: readonly string[];
  /** Here already. */
  readonly known: readonly string[];
  /** Kept until their device is known, or until the same fact's own copy has its answer. */
  readonly held: readonly string[];
  /** Not kept: they do not verify. The good ones beside them are. */
  readonly rejected: readonly { readonly id: string; readonly reason: string }[];
  /** Another device wrote under this device's name; this one has taken a new identity. */
  readonly newIdentity: boolean;
}

/** The office's answer to an own entry. */
export interface Receipt {
  readonly hash: string;
  readonly receivedAt: string;
  readonly refused: string | null;
}

/**
 * The one object through which an edge writes and reads the record on a device. Everything a screen acknowledges as
 * saved has come back from `write`.
 */
export interface Book extends Reader {
  /** The device identity this book writes under. It changes when a clone of the device was noticed. */
  identity(): Promise<Identity>;
  /** A fresh identifier, for entities and for entries that others of the same write must name. */
  newId(): string;
  /**
   * Seals and stores proposals as consecutive entries, all or nothing, durable when it returns.
   * @throws RecordError `unknown kind`, `wrong body`, `wrong about`, `unknown entry`, `entry clash`
   */
  write(proposals: readonly Proposal[], options?: WriteOptions): Promise<Entry[]>;
  /** Calls back after each change made through this book, with the entities it touched. @returns the way to stop it */
  subscribe(listener: (changed: readonly About[]) => void): () => void;
  /** Takes entries made elsewhere: verifies, stores and folds them. Duplicates are harmless, order does not matter. */
  receive(arriving: readonly Arriving[]): Promise<Reception>;
  /** Notes what the office said about own entries. A refused entry is kept and no longer counts. */
  acknowledge(receipts: readonly Receipt[]): Promise<void>;
  /**
   * Remembers the office from the first contact on.
   * @throws RecordError `wrong server` when another office was met before
   */
  meetOffice(office: OfficeKey): Promise<void>;
  /** Begins a new chain under a new identity and seals all unsent entries again in it. Nothing is dropped. */
  takeNewIdentity(reason: string): Promise<Identity>;
  /** Folds states of an older program anew, at most `limit`. @returns how many; 0 when none is left */
  refold(limit: number): Promise<number>;
}

/**
 * Opens the record of one person on one device. The first opening makes the device identity: a key, and the entry of
 * kind `device` that begins the chain.
 *
 * @throws RecordError `wrong person` when the store belongs to somebody else
 */
export async function openBook(ports: BookPorts, options: BookOptions): Promise<Book> {
  const { store, hasher, verifier, clock, chance } = ports;
  const kinds = options.kinds ?? knownKinds;
  const listeners = new Set<(changed: readonly About[]) => void>();
  const newId = () => newIdentifier(clock, chance);

  const first = await store.identity();
  if (first !== null && first.person !== options.person) {
    throw new RecordError('wrong person', `the store of ${first.person} was opened by ${options.person}`);
  }
  if (first === null) {
    await store.exclusive(async (inside) => {
      if ((await inside.identity()) === null) await beginChain(inside, null, [], 'first opening');
    });
  }

  async function identityIn(inside: DeviceStore): Promise<Identity> {
    const identity = await inside.identity();
    if (identity === null) throw new RecordError('no identity', 'the store was emptied while the book was open');
    return identity;
  }

  /** New identity, its first entries, and the unsent entries of the predecessor sealed again behind them. */
  async function beginChain(
    inside: DeviceStore,
    predecessor: string | null,
    unsent: readonly StoredEntry[],
    reason: string,
  ): Promise<{ identity: Identity; touched: readonly About[] }> {
    const identity: Identity = { device: newId(), person: options.person };
    const signer = await ports.keys.signerFor(identity.device);
    const about: About = { type: 'device', id: identity.device };
    const body: DeviceBody = {
      publicKey: signer.publicKey,
      person: options.person,
      predecessor,
      name: options.deviceName ?? '',
    };
    const beginning: Proposal[] = [{ kind: 'device', version: 1, about, replaces: [], body }];
    if (predecessor !== null) {
      const originals = unsent.map(({ entry: { envelope }, hash }) => ({
        entry: envelope.id,
        seq: envelope.seq,
        envelopeHash: hash,
      }));
      const naming: ResealingBody = { predecessor, originals };
      beginning.push({ kind: 'resealing', version: 1, about, replaces: [], body: naming });
    }
    const sealPorts = { hasher, signer, clock, chance };
    const end = { device: identity.device, by: options.person, head: null, clock: await inside.clock() };
    const opening = await seal(sealPorts, end, beginning);
    const last = opening.kept.at(-1);
    if (last === undefined) throw new TypeError('a chain begins with at least one entry');
    const head = { device: identity.device, seq: last.entry.envelope.seq, hash: last.hash };
    const resealed = await reseal(
      sealPorts,
      { device: identity.device, head },
      unsent.map(({ entry }) => entry),
    );
    const effect = await effectOf(inside, { added: [...opening.kept, ...resealed], gone: unsent }, kinds);
    const setAsideAt = instantAt(clock.now());
    await inside.commit({
      expected: { device: identity.device, head: null },
      identity,
      setAside: unsent.map((kept): Superseded => ({ kept, reason, setAsideAt })),
      entries: effect.added,
      erase: effect.erase,
      states: effect.states,
      dropStates: effect.dropStates,
      outbox: effect.added.map(({ hash }) => hash),
      ...clockChange(opening.clock),
    });
    return { identity, touched: effect.touched };
  }

  async function renewIn(inside: DeviceStore, reason: string) {
    const { device } = await identityIn(inside);
    const unsent: StoredEntry[] = [];
    for (let left = await inside.outboxSize(); left > 0; left = 0) unsent.push(...(await inside.outbox(left)));
    // The predecessor's own first entry cannot move to another chain; it stays as evidence only.
    const movable = unsent.filter(({ entry }) => entry.envelope.device === device && entry.envelope.kind !== 'device');
    return beginChain(inside, device, movable, reason);
  }

  function notify(changed: readonly About[]): void {
    if (changed.length > 0) for (const listener of listeners) listener(changed);
  }

  async function receive(arriving: readonly Arriving[]): Promise<Reception> {
    const retried = (await store.held()).map((entry): Arriving => ({ entry, receivedAt: null }));
    const sorted = await sortedOut({ store, hasher, verifier, kinds }, [...arriving, ...retried]);
    const touched: About[] = [];
    const reception = await store.exclusive(async (inside) => {
      const settled = await settle(inside, sorted);
      touched.push(...settled.touched);
      return settled.reception;
    });
    notify(touched);
    return reception;
  }

  async function settle(inside: DeviceStore, sorted: SortedOut): Promise<{ reception: Reception; touched: About[] }> {
    const touched: About[] = [];
    const known = [...sorted.known];
    const held = [...sorted.held];
    const rejected = [...sorted.rejected];
    let newIdentity = false;

    const stored = await inside.byHash(sorted.good.map(({ hash }) => hash));
    const fresh = sorted.good.filter((kept) => !stored.has(kept.hash));
    for (const { entry, hash } of sorted.good) if (stored.has(hash)) known.push(entry.envelope.id);

    const own = await identityIn(inside);
    if (await clashesWithUnsent(inside, own.device, fresh)) {
      touched.push(...(await renewIn(inside, 'another device wrote under the same name')).touched);
      newIdentity = true;
    }

    const sameFact = await inside.byId(fresh.map(({ entry }) => entry.envelope.id));
    const coming: StoredEntry[] = [];
    const seen = new Set<string>();
    for (const kept of fresh) {
      const { id, bodyHash } = kept.entry.envelope;
      const here = sameFact.get(id);
      if (here === undefined && !seen.has(id)) coming.push(kept);
      else if (here?.receivedAt === null && here.entry.envelope.bodyHash === bodyHash) held.push(kept.entry);
      else rejected.push({ id, reason: 'identifier taken' });
      seen.add(id);
    }

    const taken: StoredEntry[] = [];
    const stays = new Set(held.map(({ envelope }) => envelope.id));
    const release = (await inside.held()).map(({ envelope }) => envelope.id).filter((id) => !stays.has(id));
    const now = clock.now();
    const accept = async (batch: readonly StoredEntry[]) => {
      const effect = await effectOf(inside, { added: batch }, kinds);
      const before = await inside.clock();
      let reading = before;
      for (const { entry } of batch) reading = observe(reading, entry.envelope.clock, now);
      const receipts = known.length === 0 ? [] : receiptsOf(sorted, stored);
      await inside.commit({
        entries: effect.added,
        erase: effect.erase,
        states: effect.states,
        dropStates: effect.dropStates,
        receipts,
        ...(reading === before ? {} : clockChange(reading)),
      });
      taken.push(...batch);
      touched.push(...effect.touched);
    };
    try {
      await accept(coming);
    } catch (error) {
      if (!isClash(error)) throw error;
      // Something in the batch forks a chain: take one at a time, so that it does not stand in the way of the others.
      for (const kept of coming) {
        try {
          await accept([kept]);
        } catch (cause) {
          if (!isClash(cause)) throw cause;
          rejected.push({ id: kept.entry.envelope.id, reason: 'clash' });
        }
      }
    }
    if (held.length > 0 || release.length > 0) await inside.commit({ hold: held, release });
    const reception: Reception = {
      taken: taken.map(({ entry }) => entry.envelope.id),
      known,
      held: held.map(({ envelope }) => envelope.id),
      rejected,
      newIdentity,
    };
    return { reception, touched };
  }

  return {
    ...openReader(store, kinds),
    identity: () => identityIn(store),
    newId,
    async write(proposals, writeOptions = {}) {
      const checked = checkedProposals(proposals, kinds);
      const { entries, touched } = await store.exclusive(async (inside) => {
        const identity = await identityIn(inside);
        const named = namedBy(checked, kinds);
        const found = await inside.byId(named);
        for (const id of named) if (!found.has(id)) throw new RecordError('unknown entry', id);
        const head = await inside.head(identity.device);
        const signer = await ports.keys.signerFor(identity.device);
        const end = { device: identity.device, by: identity.person, head, clock: await inside.clock() };
        const sealed = await seal({ hasher, signer, clock, chance }, end, checked, writeOptions.sealed);
        const effect = await effectOf(inside, { added: sealed.kept }, kinds);
        const change = {
          expected: { device: identity.device, head },
          entries: effect.added,
          states: effect.states,
          outbox: sealed.kept.map(({ hash }) => hash),
          removeDrafts: writeOptions.closes ?? [],
          ...clockChange(sealed.clock),
        };
        await inside.commit(change, writeOptions.stored);
        return { entries: sealed.kept.map(({ entry }) => entry), touched: effect.touched };
      });
      notify(touched);
      return entries;
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    receive,
    async acknowledge(receipts) {
      const touched = await store.exclusive(async (inside) => {
        const found = await inside.byHash(receipts.filter(({ refused }) => refused !== null).map(({ hash }) => hash));
        const gone = [...found.values()].filter((kept) => kept.refused === null);
        const effect = await effectOf(inside, { added: [], gone }, kinds);
        await inside.commit({ receipts, states: effect.states, dropStates: effect.dropStates });
        return effect.touched;
      });
      notify(touched);
      if (receipts.some(({ refused }) => refused !== null)) await receive([]);
    },
    async meetOffice(office) {
      const met = await store.office();
      if (met === null) await store.commit({ office });
      else if (met.device !== office.device || met.publicKey !== office.publicKey) {
        throw new RecordError('wrong server', `office ${office.device}, known is ${met.device}`);
      }
    },
    async takeNewIdentity(reason) {
      const { identity, touched } = await store.exclusive((inside) => renewIn(inside, reason));
      notify(touched);
      return identity;
    },
    refold: (limit) => refoldStale(store, limit, kinds),
  };
}

interface SortedOut {
  readonly good: readonly StoredEntry[];
  readonly known: readonly string[];
  readonly held: readonly Entry[];
  readonly rejected: readonly { readonly id: string; readonly reason: string }[];
}

interface SortingPorts {
  readonly store: DeviceStore;
  readonly hasher: Hasher;
  readonly verifier: Verifier;
  readonly kinds: Kinds;
}

/**
 * Verifies what arrived, outside any lock. Devices come first, then the office's countersignatures, then the rest, so
 * that one batch may bring a device together with what it wrote.
 */
async function sortedOut(ports: SortingPorts, arriving: readonly Arriving[]): Promise<SortedOut> {
  const { store, hasher, verifier, kinds } = ports;
  const rejected: { id: string; reason: string }[] = [];
  const candidates = new Map<string, StoredEntry>();
  for (const { entry, receivedAt } of arriving) {
    if (!entryShape.safeParse(entry).success) {
      rejected.push({ id: String((entry as Partial<Entry> | null)?.envelope?.id ?? 'none'), reason: 'wrong shape' });
      continue;
    }
    const kept: StoredEntry = { entry, hash: await linkOf(hasher, entry.envelope), receivedAt, refused: null };
    const twin = candidates.get(kept.hash);
    if (twin === undefined || twin.receivedAt === null) candidates.set(kept.hash, kept);
  }
  const stored = await store.byHash([...candidates.keys()]);
  const known = [...stored.values()].map(({ entry }) => entry.envelope.id);
  // A known own entry that comes back from the office carries its receipt: settle it with the rest.
  const good: StoredEntry[] = [...candidates.values()].filter(({ hash, receivedAt }) => {
    const here = stored.get(hash);
    return here !== undefined && here.receivedAt === null && receivedAt !== null;
  });
  const unknown = [...candidates.values()].filter(({ hash }) => !stored.has(hash));

  const office = await store.office();
  const held: Entry[] = [];
  const fails = (kept: StoredEntry, reason: string) => rejected.push({ id: kept.entry.envelope.id, reason });
  const checked = async (kept: StoredEntry, publicKey: string, person: string | null): Promise<boolean> => {
    const { entry } = kept;
    if (entry.salt !== null && !(await bodyMatches(hasher, entry))) return !fails(kept, 'wrong body hash');
    if (!(await signatureMatches(verifier, entry.envelope, publicKey))) return !fails(kept, 'wrong signature');
    if (person !== null && entry.envelope.by !== person) return !fails(kept, 'wrong author');
    const fault = contentFault(entry, entry.envelope.device === office?.device, kinds);
    if (fault !== null) return !fails(kept, fault);
    good.push(kept);
    return true;
  };

  const beginnings = unknown.filter(({ entry }) => chainBeginning(entry) !== null);
  const rest = unknown.filter(({ entry }) => chainBeginning(entry) === null);
  const begun: Entry[] = [];
  await Promise.all(
    beginnings.map(async (kept) => {
      if (!(await beginsItsChain(hasher, verifier, kept.entry))) fails(kept, 'wrong signature');
      else if (contentFault(kept.entry, false, kinds) !== null) fails(kept, 'bad clock');
      else {
        good.push(kept);
        begun.push(kept.entry);
      }
    }),
  );

  const fromOffice = rest.filter(({ entry }) => entry.envelope.device === office?.device);
  const vouching: Entry[] = [];
  await Promise.all(
    fromOffice.map(async (kept) => {
      if (await checked(kept, office?.publicKey ?? '', null)) vouching.push(kept.entry);
    }),
  );

  const others = rest.filter(({ entry }) => entry.envelope.device !== office?.device);
  const trusted = await trustedDevices(
    { store, hasher, verifier },
    office,
    others.map(({ entry }) => entry.envelope.device),
    [...begun, ...vouching],
  );
  await Promise.all(
    others.map(async (kept) => {
      const device = trusted.get(kept.entry.envelope.device);
      if (device === undefined) held.push(kept.entry);
      else await checked(kept, device.publicKey, device.person);
    }),
  );
  return { good, known, held, rejected };
}

/** Whether one of these entries stands where an own unsent entry stands: another device uses our name. */
async function clashesWithUnsent(inside: DeviceStore, device: string, fresh: readonly StoredEntry[]): Promise<boolean> {
  for (const { entry, hash } of fresh) {
    if (entry.envelope.device !== device) continue;
    const [here] = await inside.chain(device, entry.envelope.seq, 1);
    if (here?.entry.envelope.seq === entry.envelope.seq && here.hash !== hash && here.receivedAt === null) return true;
  }
  return false;
}

function receiptsOf(sorted: SortedOut, stored: ReadonlyMap<string, StoredEntry>): Receipt[] {
  return sorted.good.flatMap(({ hash, receivedAt }) => {
    const here = stored.get(hash);
    return here !== undefined && here.receivedAt === null && receivedAt !== null
      ? [{ hash, receivedAt, refused: null }]
      : [];
  });
}

function isClash(error: unknown): boolean {
  return error instanceof RecordError && error.code === 'entry clash';
}

function clockChange(clock: string | null): Pick<Change, 'clock'> {
  return clock === null ? {} : { clock };
}
