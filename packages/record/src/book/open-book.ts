import type { About } from '../entry.ts';
import { RecordError } from '../errors.ts';
import { newIdentifier } from '../identifier.ts';
import { kinds as knownKinds } from '../kinds/registry.ts';
import { openReader, refoldStale } from '../reader.ts';
import type { DeviceStore, OfficeKey } from '../store.ts';
import { acknowledgeReceipts } from './acknowledge-receipts.ts';
import type { Arriving, Book, BookContext, BookOptions, BookPorts } from './book.ts';
import type { Changed } from './changed.ts';
import { beginFirstChain, identityOf, renewIdentity } from './device-identity.ts';
import { receiveEntries } from './receive-entries.ts';
import { writeProposals } from './write-proposals.ts';

/**
 * Opens the record of one person on one device. The first opening makes the device identity: a key, and the entry of
 * kind `device` that begins the chain.
 *
 * @throws RecordError `wrong person` when the store belongs to somebody else
 */
export async function openBook(ports: BookPorts, options: BookOptions): Promise<Book> {
  const { store, clock, chance } = ports;
  const { person, deviceName = '', kinds = knownKinds } = options;
  const context: BookContext = { ...ports, kinds, person, deviceName };
  const listeners = new Set<(changed: readonly About[]) => void>();

  const first = await store.identity();
  if (first === null) await beginFirstChain(context);
  else if (first.person !== person) {
    throw new RecordError('wrong person', `the store of ${first.person} was opened by ${person}`);
  }

  /** Hands on the answer, once those who listen know which entities it touched. */
  function notifying<Answer>({ answer, touched }: Changed<Answer>): Answer {
    if (touched.length > 0) for (const listener of listeners) listener(touched);
    return answer;
  }
  const receive = async (arriving: readonly Arriving[]) => notifying(await receiveEntries(context, arriving));

  return {
    ...openReader(store, kinds),
    identity: () => identityOf(store),
    newId: () => newIdentifier(clock, chance),
    write: async (proposals, writing = {}) => notifying(await writeProposals(context, proposals, writing)),
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    receive,
    async acknowledge(receipts) {
      notifying(await acknowledgeReceipts(context, receipts));
      // A held copy of a refused fact may now have its turn.
      if (receipts.some(({ refused }) => refused !== null)) await receive([]);
    },
    meetOffice: (office) => meetOffice(store, office),
    takeNewIdentity: async (reason) =>
      notifying(await store.exclusive((inside) => renewIdentity(context, inside, reason))),
    refold: (limit) => refoldStale(store, limit, kinds),
  };
}

async function meetOffice(store: DeviceStore, office: OfficeKey): Promise<void> {
  const met = await store.office();
  if (met === null) await store.commit({ office });
  else if (met.device !== office.device || met.publicKey !== office.publicKey) {
    throw new RecordError('wrong server', `office ${office.device}, known is ${met.device}`);
  }
}
