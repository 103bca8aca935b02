/**
 * How a device and the office come to hold the same entries over a connection that may break at any moment.
 *
 * ONE RUN. Greet; send the outbox, oldest first, in batches; then read each granted scope from where its cursor stands,
 * page by page, the scope `everyone` first because it brings the devices by which the other entries are verified; then
 * let the office sign what it gave, and compare. A run may be cut anywhere and simply begun again.
 *
 * WHY NOTHING IS LOST OR DOUBLED. An entry leaves the outbox only with the office's receipt. Sending again is harmless:
 * the office knows an envelope by its hash. A cursor moves only after its page is stored; reading a page again is
 * harmless for the same reason. Positions run without a gap, so a page that does not begin right behind the cursor is
 * not taken. The order in which entries arrive never matters, because a state is folded from the set of its entries.
 *
 * A scope granted anew has no cursor, so it is read from its start. A scope no longer granted is left as it is.
 *
 * WHEN THE OFFICE SAYS "clash", another device writes under our name: this phone was cloned, or restored from a backup.
 * The phone takes a new identity and seals what it had not sent again, under the same identifiers (chain.ts). "gap"
 * means the office lost the end of our chain, or never had it: we send from there. "broken" means the office cannot
 * verify our own entry, and that it was not the wire (below): the chain cannot go on, so a new identity is taken, and it
 * is said loudly. "refused" is an answer, not a failure: the entry stays here, with the reason,
 * and no longer counts.
 *
 * WHAT THE WIRE DAMAGED is not ours. Before an answer "broken" is believed, our own copy is verified: when it holds, the
 * message was damaged on the way and is sent again, a few times. A body that is still damaged at the other end stays in
 * the outbox for the next run, under the same name: nothing is given up. A body that does not match its hash here either
 * is damaged in this store: its envelope goes alone, so that the office refuses it for good and the chain goes on. A
 * page with an entry that does not verify is read again as often, before it is believed.
 *
 * THE CHECK. The digest over all envelope hashes of a scope, in order, is kept with the cursor; the office signs its own
 * at the same position. When they differ, something was left out or slipped in: it is reported, and the scope is read
 * again from its start.
 */
import type { Book, Receipt } from './book/book.ts';
import { bodyMatches, chainBeginning, emptyDigest, extendDigest, linkOf, signatureMatches } from './chain.ts';
import { checkpointIsSigned } from './checkpoint.ts';
import type { Hasher, Verifier } from './ports.ts';
import type { Cursor, DeviceStore, OfficeKey, StoredEntry } from './store.ts';
import { batchLimit, countThatFits, everyoneScope, type Page, type PushResult, type Transport } from './transport.ts';

export interface SyncPorts {
  readonly book: Book;
  readonly store: DeviceStore;
  readonly transport: Transport;
  readonly hasher: Hasher;
  readonly verifier: Verifier;
}

/** Something that must be looked at by a person; never a mere lack of connection. */
export interface SyncFault {
  readonly fault:
    | 'own entry broken'
    | 'damaged on the way'
    | 'entry rejected'
    | 'page out of order'
    | 'copy differs'
    | 'no progress';
  /** What and where, without personal data. */
  readonly where: string;
}

export interface SyncReport {
  /** Entries the office has received in this run. */
  readonly sent: number;
  readonly refused: readonly { readonly id: string; readonly reason: string }[];
  /** Entries from elsewhere that are new here. */
  readonly fetched: number;
  /** Entries kept back until their device is known. */
  readonly held: number;
  /** Entries still waiting to be sent. */
  readonly waiting: number;
  readonly newIdentity: boolean;
  /** Scopes whose content the office's signature confirmed at the end of this run. */
  readonly confirmed: readonly string[];
  readonly faults: readonly SyncFault[];
}

/** More new identities than this in one run mean that something else is wrong. */
const mostIdentities = 3;

/** How often a message damaged on the way is sent or asked for again, one after the other. */
const mostRepeats = 3;

/** What the office or this device says of an entry that may have been damaged on the way. */
const mayBeDamage: readonly string[] = [
  'wrong shape',
  'wrong body hash',
  'wrong signature',
  'no device entry',
  'no answer',
];

/**
 * Exchanges everything with the office once.
 *
 * @param pageLimit entries asked for at a time, at most `batchLimit`
 * @param stopped asked between steps; when it answers true the run ends early and tells what was done
 * @throws TransportError when the connection or the office fails: what was done before it stands
 * @throws RecordError `wrong server` when another office answers than before
 */
export async function exchange(
  ports: SyncPorts,
  options: { readonly pageLimit?: number; readonly stopped?: () => boolean } = {},
): Promise<SyncReport> {
  const { book, store, transport } = ports;
  const stopped = options.stopped ?? (() => false);
  const tally = { sent: 0, fetched: 0, newIdentity: false };
  const refused: { id: string; reason: string }[] = [];
  const faults: SyncFault[] = [];

  const greeting = await transport.greet();
  const office: OfficeKey = { device: greeting.office, publicKey: greeting.publicKey };
  await book.meetOffice(office);

  let identities = 0;
  let resendFrom: number | null = null;
  let lastFailure = '';
  let damaged = '';
  let repeats = 0;
  /** Entries whose body no longer matches its hash here: only their envelopes are sent. */
  const withheld = new Set<string>();
  while (!stopped()) {
    const waiting: StoredEntry[] =
      resendFrom === null
        ? await store.outbox(batchLimit)
        : await store.chain((await book.identity()).device, resendFrom, batchLimit);
    if (waiting.length === 0) break;
    const batch = waiting.slice(0, countThatFits(waiting.map(({ entry }) => entry)));
    const results = await transport.push(
      batch.map(({ entry, hash }) =>
        withheld.has(hash) ? { envelope: entry.envelope, salt: null, body: null } : entry,
      ),
    );
    const answer = await noteAnswers(ports, batch, results, withheld);
    tally.sent += answer.received;
    refused.push(...answer.refused);
    faults.push(...answer.faults);
    const { stop } = answer;
    if (stop === null) {
      const last = batch.at(-1);
      resendFrom = resendFrom === null || last === undefined ? null : last.entry.envelope.seq + 1;
      continue;
    }
    if (stop.outcome === 'damaged') {
      repeats = stop.id === damaged ? repeats + 1 : 1;
      damaged = stop.id;
      if (stop.here === 'verifies here') {
        if (repeats <= mostRepeats) continue;
        // Another identity would not mend what happens to a body on the way; for a signature it may.
        if (stop.reason !== 'wrong signature' && stop.reason !== 'no device entry') {
          faults.push({ fault: 'damaged on the way', where: stop.where });
          break;
        }
      }
      faults.push({ fault: 'own entry broken', where: `${stop.where}, ${stop.here}` });
      if (stop.here === 'body damaged here' && !withheld.has(stop.hash)) {
        withheld.add(stop.hash);
        continue;
      }
    }
    const failure = `${stop.outcome} ${stop.id}`;
    if (answer.settled === 0 && failure === lastFailure) {
      faults.push({ fault: 'no progress', where: failure });
      break;
    }
    lastFailure = failure;
    if (stop.outcome === 'gap') {
      resendFrom = stop.from;
      continue;
    }
    resendFrom = null;
    if (++identities > mostIdentities) {
      faults.push({ fault: 'no progress', where: `${identities} new identities in one run` });
      break;
    }
    await book.takeNewIdentity(stop.outcome === 'clash' ? 'another device wrote under the same name' : 'chain broken');
    tally.newIdentity = true;
  }

  const confirmed: string[] = [];
  const scopes = [everyoneScope, ...greeting.scopes.filter((scope) => scope !== everyoneScope).sort()];
  for (const scope of scopes) {
    if (stopped()) break;
    const read = await readScope(ports, scope, options.pageLimit ?? batchLimit, stopped);
    tally.fetched += read.fetched;
    tally.newIdentity ||= read.newIdentity;
    faults.push(...read.faults);
    // An entry whose device came into being after `everyone` was read: read on there, and it is released.
    if ((await store.held()).length > 0 && scope !== everyoneScope && !stopped()) {
      const again = await readScope(ports, everyoneScope, options.pageLimit ?? batchLimit, stopped);
      tally.fetched += again.fetched;
      faults.push(...again.faults);
    }
    if (read.faults.length === 0 && !stopped() && (await confirms(ports, office, scope, faults))) confirmed.push(scope);
  }

  return {
    ...tally,
    refused,
    held: (await store.held()).length,
    waiting: await store.outboxSize(),
    confirmed,
    faults,
  };
}

interface Answers {
  readonly received: number;
  /** Entries that have their answer. */
  readonly settled: number;
  readonly refused: readonly { readonly id: string; readonly reason: string }[];
  readonly faults: readonly SyncFault[];
  /** The first answer behind which the chain cannot go on. */
  readonly stop: Extract<PushResult, { outcome: 'gap' | 'clash' | 'broken' }> | Damaged | null;
}

type OwnCopy = 'verifies here' | 'body damaged here' | 'envelope damaged here';

/** An entry that did not arrive as it was sent, or that is damaged here. */
interface Damaged {
  readonly outcome: 'damaged';
  readonly id: string;
  readonly hash: string;
  readonly reason: string;
  readonly where: string;
  readonly here: OwnCopy;
}

async function noteAnswers(
  ports: SyncPorts,
  batch: readonly StoredEntry[],
  results: readonly PushResult[],
  withheld: ReadonlySet<string>,
): Promise<Answers> {
  const receipts: Receipt[] = [];
  const refused: { id: string; reason: string }[] = [];
  const faults: SyncFault[] = [];
  let stop: Answers['stop'] = null;
  for (const [i, kept] of batch.entries()) {
    const { id, kind } = kept.entry.envelope;
    const result = results[i];
    const answered = result !== undefined && result.id === id;
    const reason = !answered ? 'no answer' : result.outcome === 'broken' ? result.reason : null;
    if (!answered || (reason !== null && mayBeDamage.includes(reason))) {
      stop ??= {
        outcome: 'damaged',
        id,
        hash: kept.hash,
        reason: reason ?? '',
        where: `${kind} ${id}: ${reason}`,
        here: await ownCopy(ports, kept),
      };
      continue;
    }
    if (result.outcome === 'received' && withheld.has(kept.hash)) {
      // A kind that may be erased passes without its body. What it said never left this device, and must not look sent.
      receipts.push({ hash: kept.hash, receivedAt: result.receivedAt, refused: 'body missing' });
      refused.push({ id, reason: 'body missing' });
    } else if (result.outcome === 'received') {
      receipts.push({ hash: kept.hash, receivedAt: result.receivedAt, refused: null });
    } else if (result.outcome === 'refused') {
      receipts.push({ hash: kept.hash, receivedAt: result.receivedAt, refused: result.reason });
      refused.push({ id: result.id, reason: result.reason });
      // These reasons mean that what left this very device was wrong: a fault of the program or of its store.
      if (['wrong body', 'wrong about', 'bad clock'].includes(result.reason)) {
        faults.push({ fault: 'own entry broken', where: `${kept.entry.envelope.kind} ${result.id}: ${result.reason}` });
      }
    } else {
      stop ??= result;
      if (result.outcome === 'broken' && stop === result) {
        faults.push({ fault: 'own entry broken', where: `${kind} ${id}: ${reason}, ${await ownCopy(ports, kept)}` });
      }
    }
  }
  if (receipts.length > 0) await ports.book.acknowledge(receipts);
  const received = receipts.filter((receipt) => receipt.refused === null).length;
  return { received, settled: receipts.length, refused, faults, stop };
}

async function ownCopy({ store, hasher, verifier }: SyncPorts, { entry }: StoredEntry): Promise<OwnCopy> {
  const [first] = await store.chain(entry.envelope.device, 1, 1);
  const beginning = first === undefined ? null : chainBeginning(first.entry);
  if (beginning === null || !(await signatureMatches(verifier, entry.envelope, beginning.publicKey))) {
    return 'envelope damaged here';
  }
  return (await bodyMatches(hasher, entry)) ? 'verifies here' : 'body damaged here';
}

async function readScope(
  ports: SyncPorts,
  scope: string,
  limit: number,
  stopped: () => boolean,
): Promise<{ fetched: number; newIdentity: boolean; faults: SyncFault[] }> {
  const { book, store, transport } = ports;
  const faults: SyncFault[] = [];
  let fetched = 0;
  let newIdentity = false;
  let cursor: Cursor = (await store.cursor(scope)) ?? { scope, position: 0, digest: emptyDigest };
  let repeats = 0;
  for (let more = true; more && !stopped(); ) {
    const page = await transport.pull(scope, cursor.position, limit);
    const disorder = disorderIn(page, cursor);
    if (disorder !== null) {
      faults.push({ fault: 'page out of order', where: `${scope}: ${disorder}` });
      break;
    }
    if (page.items.length === 0) break;
    const reception = await book.receive(page.items);
    fetched += reception.taken.length;
    newIdentity ||= reception.newIdentity;
    if (reception.rejected.some(({ reason }) => mayBeDamage.includes(reason)) && ++repeats <= mostRepeats) continue;
    repeats = 0;
    for (const { id, reason } of reception.rejected) {
      faults.push({ fault: 'entry rejected', where: `${scope}: ${id}: ${reason}` });
    }
    const links: string[] = [];
    let { digest } = cursor;
    for (const { entry } of page.items) {
      const link = await linkOf(ports.hasher, entry.envelope);
      links.push(link);
      digest = await extendDigest(ports.hasher, digest, link);
    }
    cursor = { scope, position: cursor.position + page.items.length, digest };
    await store.commit({ cursor, sequence: links });
    more = page.more;
  }
  return { fetched, newIdentity, faults };
}

function disorderIn(page: Page, cursor: Cursor): string | null {
  if (page.scope !== cursor.scope) return `a page of ${page.scope} came`;
  for (const [i, { position }] of page.items.entries()) {
    const expected = cursor.position + 1 + i;
    if (position !== expected) return `position ${position} came where ${expected} was due`;
  }
  return null;
}

async function confirms(ports: SyncPorts, office: OfficeKey, scope: string, faults: SyncFault[]): Promise<boolean> {
  const { store, transport, verifier } = ports;
  const cursor = (await store.cursor(scope)) ?? { scope, position: 0, digest: emptyDigest };
  const checkpoint = await transport.checkpoint(scope, cursor.position);
  const signed =
    checkpoint.office === office.device && (await checkpointIsSigned(verifier, checkpoint, office.publicKey));
  const equal =
    checkpoint.scope === scope && checkpoint.position === cursor.position && checkpoint.digest === cursor.digest;
  if (signed && equal) return true;
  const where = signed ? `${scope} at ${cursor.position}` : `${scope}: the checkpoint is not signed by the office`;
  faults.push({ fault: 'copy differs', where });
  if (signed) await store.commit({ cursor: { scope, position: 0, digest: emptyDigest } });
  return false;
}
