import { type ChainEnd, reseal, seal } from '../chain.ts';
import { instantAt } from '../clock.ts';
import { effectOf } from '../effect.ts';
import type { About, Proposal } from '../entry.ts';
import { RecordError } from '../errors.ts';
import { newIdentifier } from '../identifier.ts';
import type { DeviceBody } from '../kinds/device.ts';
import type { ResealingBody } from '../kinds/resealing.ts';
import type { DeviceStore, EntrySetAside, Identity, StoredEntry } from '../store.ts';
import type { BookContext } from './book.ts';
import { type Changed, clockChange } from './changed.ts';

/** @throws RecordError `no identity` */
export async function identityOf(store: DeviceStore): Promise<Identity> {
  const identity = await store.identity();
  if (identity === null) throw new RecordError('no identity', 'the store was emptied while the book was open');
  return identity;
}

/** Begins the chain of a device that has none yet, unless another tab was faster. */
export async function beginFirstChain(book: BookContext): Promise<void> {
  await book.store.exclusive(async (inside) => {
    if ((await inside.identity()) === null) await beginChain(book, inside, null, [], 'first opening');
  });
}

/**
 * Begins a new chain under a new identity; the unsent entries of the old one are set aside and sealed again in it.
 * Inside `exclusive`.
 */
export async function renewIdentity(
  book: BookContext,
  inside: DeviceStore,
  reason: string,
): Promise<Changed<Identity>> {
  const { device } = await identityOf(inside);
  const waiting = await inside.outboxSize();
  const unsent = waiting === 0 ? [] : await inside.outbox(waiting);
  // The predecessor's own first entry cannot move to another chain; it stays as evidence only.
  const movable = unsent.filter(({ entry }) => entry.envelope.device === device && entry.envelope.kind !== 'device');
  return beginChain(book, inside, device, movable, reason);
}

/** New identity, its first entries, and the unsent entries of the predecessor sealed again behind them. */
async function beginChain(
  book: BookContext,
  inside: DeviceStore,
  predecessor: string | null,
  unsent: readonly StoredEntry[],
  reason: string,
): Promise<Changed<Identity>> {
  const { hasher, keys, clock, chance, kinds, person } = book;
  const identity: Identity = { device: newIdentifier(clock, chance), person };
  const signer = await keys.signerFor(identity.device);
  const sealPorts = { hasher, signer, clock, chance };
  const end: ChainEnd = { device: identity.device, by: person, head: null, clock: await inside.clock() };
  const beginning = [
    deviceProposal(book, identity, signer.publicKey, predecessor),
    ...(predecessor === null ? [] : [resealingProposal(identity, predecessor, unsent)]),
  ];
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
    setAside: unsent.map((kept): EntrySetAside => ({ kept, reason, setAsideAt })),
    entries: effect.added,
    erase: effect.erase,
    states: effect.states,
    dropStates: effect.dropStates,
    outbox: effect.added.map(({ hash }) => hash),
    ...clockChange(opening.clock),
  });
  return { answer: identity, touched: effect.touched };
}

function deviceProposal(
  { person, deviceName }: BookContext,
  { device }: Identity,
  publicKey: string,
  predecessor: string | null,
): Proposal {
  const body: DeviceBody = { publicKey, person, predecessor, name: deviceName };
  return { kind: 'device', version: 1, about: aboutDevice(device), replaces: [], body };
}

/** Names the originals of what is sealed again, so that a later reader can follow each. */
function resealingProposal({ device }: Identity, predecessor: string, unsent: readonly StoredEntry[]): Proposal {
  const originals = unsent.map(({ entry: { envelope }, hash }) => ({
    entry: envelope.id,
    seq: envelope.seq,
    envelopeHash: hash,
  }));
  const body: ResealingBody = { predecessor, originals };
  return { kind: 'resealing', version: 1, about: aboutDevice(device), replaces: [], body };
}

function aboutDevice(id: string): About {
  return { type: 'device', id };
}
