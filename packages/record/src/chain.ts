/**
 * How entries are sealed, and how anybody can check that nothing was changed, slipped in or taken out.
 *
 * THE SEAL. An entry is an envelope, a salt and a body.
 *   bodyHash  = SHA-256( salt || canonical(body) )          16 random bytes of salt
 *   link      = SHA-256( canonical(envelope without signature) )
 *   signature = ECDSA P-256 with SHA-256 over canonical(envelope without signature), raw r || s
 *   prev      = link of the envelope before it in the same chain, null on the first
 * "canonical" is RFC 8785 in UTF-8. The link leaves the signature out because ECDSA gives another signature each time:
 * an entry's name must not change when it is signed again. The salt keeps a short body ("name: ...") from being guessed
 * from its hash; it is erased with the body, and what then remains says nothing about the person.
 *
 * THE CHAIN. Each device writes one chain: seq 1, 2, 3... The first entry is of kind `device`, is about the device
 * itself, carries its public key and the person who signs with it, and is signed with that same key. It proves only
 * that the key's holder wrote it; that the person is who they say is the office's word, a `countersignature` entry in
 * the office's own chain. The office's key is known to a copy from its first contact.
 *
 * WHEN AN ENTRY IS VALID. Depth "entry": the body matches its hash, and the signature matches the key of the chain's
 * first entry. A missing body is valid only where an erasure names it, or where the office refused the entry and kept
 * just its envelope. Depth "chain": seq runs without gap or fork, each prev is the link before, the first entry is a
 * `device` entry. Depth "copy": what is held is what the office said it gave out (checkpoint.ts).
 *
 * WHAT A CHAIN CANNOT SHOW. Entries missing at its end: only a checkpoint, signed later by the office, shows that. A
 * copy of one district holds chains with holes by design; only its digest can be checked (running digest below). A
 * stolen key signs validly; what it wrote stands in a chain of its own and can be told apart.
 *
 * AFTER A CLONE. Two phones with one key fork a chain: same seq, other link. Whoever sends second is told so, takes a
 * new device identity and seals its unsent entries again under it: same identifier, salt, body and time, new place. The
 * identifier names the fact, the link names the envelope; a fact sealed twice counts once.
 *
 * THE RUNNING DIGEST of a list of links: d(0) = 64 zeros, d(n) = SHA-256( d(n-1) || link(n) ).
 */
import { fromBase64Url, fromHex, joined, toBase64Url, toHex } from './bytes.ts';
import { canonicalBytes } from './canonical.ts';
import { instantAt, tick } from './clock.ts';
import { type Entry, type Envelope, entry as entryShape, envelopeFormat, type Proposal } from './entry.ts';
import { RecordError } from './errors.ts';
import { newIdentifier } from './identifier.ts';
import { deviceBody } from './kinds/device.ts';
import type { Chance, Hasher, Signer, Verifier, WallClock } from './ports.ts';
import type { Head, StoredEntry } from './store.ts';

const saltBytes = 16;

/** The bytes that are signed and linked: the canonical envelope without its signature. */
export function signedBytes(envelope: Envelope): Uint8Array<ArrayBuffer> {
  const { signature: _, ...rest } = envelope;
  return canonicalBytes(rest);
}

/** The envelope's link: SHA-256 of `signedBytes`, hexadecimal. Equal links mean equal envelopes but for the signature. */
export async function linkOf(hasher: Hasher, envelope: Envelope): Promise<string> {
  return toHex(await hasher.sha256(signedBytes(envelope)));
}

/** SHA-256 of salt and canonical body, hexadecimal. @throws RecordError `bad bytes` */
export async function bodyHashOf(hasher: Hasher, salt: string, body: unknown): Promise<string> {
  return toHex(await hasher.sha256(joined(fromBase64Url(salt), canonicalBytes(body))));
}

export interface SealPorts {
  readonly hasher: Hasher;
  readonly signer: Signer;
  readonly clock: WallClock;
  readonly chance: Chance;
}

/** Where a chain stands and who writes it. */
export interface ChainEnd {
  readonly device: string;
  readonly by: string;
  readonly head: Head | null;
  /** Newest hybrid clock reading of this side. */
  readonly clock: string | null;
}

export interface Sealed {
  readonly kept: readonly StoredEntry[];
  readonly clock: string | null;
}

/**
 * Seals proposals as the next entries of a chain, in the given order. Stores nothing.
 *
 * @param told after each entry, how many are sealed; what it throws ends the sealing
 */
export async function seal(
  ports: SealPorts,
  end: ChainEnd,
  proposals: readonly Proposal[],
  told: (count: number) => void = () => undefined,
): Promise<Sealed> {
  const kept: StoredEntry[] = [];
  let { head, clock } = end;
  for (const proposal of proposals) {
    const wall = ports.clock.now();
    clock = tick(clock, wall);
    const salt = toBase64Url(ports.chance.bytes(saltBytes));
    const next = await signed(ports, head, {
      format: envelopeFormat,
      id: proposal.id ?? newIdentifier(ports.clock, ports.chance),
      kind: proposal.kind,
      version: proposal.version,
      about: { type: proposal.about.type, id: proposal.about.id },
      by: end.by,
      device: end.device,
      at: instantAt(wall),
      clock,
      replaces: [...proposal.replaces],
      bodyHash: await bodyHashOf(ports.hasher, salt, proposal.body),
    });
    kept.push({ entry: { envelope: next.envelope, salt, body: proposal.body }, hash: next.link, ...onlyHere });
    head = { device: end.device, seq: next.envelope.seq, hash: next.link };
    told(kept.length);
  }
  return { kept, clock };
}

/** Seals entries again as the next of another chain: same identifier, salt, body, author and time; new place and signature. */
export async function reseal(
  ports: Pick<SealPorts, 'hasher' | 'signer'>,
  end: Pick<ChainEnd, 'device' | 'head'>,
  originals: readonly Entry[],
): Promise<StoredEntry[]> {
  const kept: StoredEntry[] = [];
  let head = end.head;
  for (const original of originals) {
    const { signature: _signature, prev: _prev, seq: _seq, ...content } = original.envelope;
    const next = await signed(ports, head, { ...content, device: end.device });
    kept.push({ entry: { ...original, envelope: next.envelope }, hash: next.link, ...onlyHere });
    head = { device: end.device, seq: next.envelope.seq, hash: next.link };
  }
  return kept;
}

const onlyHere = { receivedAt: null, refused: null } as const;

async function signed(
  ports: Pick<SealPorts, 'hasher' | 'signer'>,
  head: Head | null,
  content: Omit<Envelope, 'seq' | 'prev' | 'signature'>,
): Promise<{ envelope: Envelope; link: string }> {
  const unsigned = { ...content, seq: (head?.seq ?? 0) + 1, prev: head?.hash ?? null };
  const bytes = canonicalBytes(unsigned);
  const signature = toBase64Url(await ports.signer.sign(bytes));
  return { envelope: { ...unsigned, signature }, link: toHex(await ports.hasher.sha256(bytes)) };
}

export interface VerifyPorts {
  readonly hasher: Hasher;
  readonly verifier: Verifier;
}

/** What can be wrong with one entry taken by itself. */
export type EntryFault = 'wrong shape' | 'wrong body hash' | 'wrong signature' | 'body missing';

/**
 * Depth "entry": does the body match its hash and the signature the key.
 *
 * @param publicKey key of the entry's device, base64url
 * @returns the faults found, none when it holds. `body missing` is a fault only where no erasure or refusal explains it:
 * the caller knows.
 */
export async function verifyEntry(ports: VerifyPorts, entry: Entry, publicKey: string): Promise<EntryFault[]> {
  if (!entryShape.safeParse(entry).success) return ['wrong shape'];
  const faults: EntryFault[] = [];
  if (entry.salt === null) {
    faults.push('body missing');
  } else if (!(await bodyMatches(ports.hasher, entry))) {
    faults.push('wrong body hash');
  }
  if (!(await signatureMatches(ports.verifier, entry.envelope, publicKey))) faults.push('wrong signature');
  return faults;
}

export async function bodyMatches(hasher: Hasher, entry: Entry): Promise<boolean> {
  if (entry.salt === null) return false;
  try {
    return (await bodyHashOf(hasher, entry.salt, entry.body)) === entry.envelope.bodyHash;
  } catch (error) {
    if (error instanceof RecordError) return false; // a body that has no canonical form matches nothing
    throw error;
  }
}

export function signatureMatches(verifier: Verifier, envelope: Envelope, publicKey: string): Promise<boolean> {
  return verifier.verify(publicKey, signedBytes(envelope), fromBase64Url(envelope.signature));
}

/**
 * The key and person that an entry of kind `device` declares, when it may begin a chain: seq 1, no prev, about itself.
 * Says nothing about whether it is signed or countersigned. Null when it is no such entry.
 */
export function chainBeginning(entry: Entry): { publicKey: string; person: string; predecessor: string | null } | null {
  const { envelope } = entry;
  if (envelope.kind !== 'device' || envelope.seq !== 1 || envelope.prev !== null) return null;
  if (envelope.about.type !== 'device' || envelope.about.id !== envelope.device) return null;
  const body = deviceBody.safeParse(entry.body);
  if (!body.success || body.data.person !== envelope.by) return null;
  return body.data;
}

export interface ChainFinding {
  readonly device: string;
  readonly seq: number;
  readonly fault: EntryFault | 'no device entry' | 'gap' | 'fork' | 'wrong link' | 'wrong author';
}

export interface ChainContext {
  /** Identifiers that erasure entries name. */
  readonly erased: ReadonlySet<string>;
  /** The office's own device; at its desks several people write into one chain. */
  readonly office: string | null;
}

/**
 * Depth "chain": checks one whole chain from its first entry.
 *
 * @param chain entries of one device in any order, refused ones included
 */
export async function verifyChain(
  ports: VerifyPorts,
  chain: readonly StoredEntry[],
  context: ChainContext,
): Promise<ChainFinding[]> {
  const findings: ChainFinding[] = [];
  const ordered = [...chain].sort((a, b) => a.entry.envelope.seq - b.entry.envelope.seq);
  const first = ordered[0];
  if (first === undefined) return findings;
  const device = first.entry.envelope.device;
  const beginning = chainBeginning(first.entry);
  if (beginning === null) return [{ device, seq: first.entry.envelope.seq, fault: 'no device entry' }];
  let head: Head | null = null;
  for (const { entry, refused } of ordered) {
    const { envelope } = entry;
    const find = (fault: ChainFinding['fault']) => findings.push({ device, seq: envelope.seq, fault });
    const expected: number = (head?.seq ?? 0) + 1;
    if (envelope.device !== device || envelope.seq < expected) find('fork');
    else if (envelope.seq > expected) find('gap');
    else if (envelope.prev !== (head?.hash ?? null)) find('wrong link');
    for (const fault of await verifyEntry(ports, entry, beginning.publicKey)) {
      if (fault !== 'body missing' || !(refused !== null || context.erased.has(envelope.id))) find(fault);
    }
    if (envelope.by !== beginning.person && device !== context.office) find('wrong author');
    head = { device, seq: envelope.seq, hash: await linkOf(ports.hasher, envelope) };
  }
  return findings;
}

/** The digest of an empty list of links. */
export const emptyDigest = '0'.repeat(64);

/** The running digest after one more link. */
export async function extendDigest(hasher: Hasher, digest: string, link: string): Promise<string> {
  return toHex(await hasher.sha256(joined(fromHex(digest), fromHex(link))));
}
