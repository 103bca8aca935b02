/** Exchanges with the office beside the page, so that no tap ever waits for the network or for a thousand signatures. */
import { openBook } from '@combside/record/book/open-book';
import { keptKeys } from '../keys/kept-keys.ts';
import { webChance, webClock, webHasher, webVerifier } from '../keys/web-ports.ts';
import { keptPhotographs } from '../photographs/photographs.ts';
import { databaseName, openDatabase } from '../store/database.ts';
import { openIndexedStore } from '../store/indexed-store.ts';
import { exchangeTurn, refoldBetweenVisits } from './exchange-loop.ts';
import { httpTransport } from './http-transport.ts';
import type { MessageToPage, MessageToWorker } from './messages.ts';

let wanted = false;
let running = false;
let stopping = false;

function tell(message: MessageToPage): void {
  postMessage(message);
}

async function opened(person: string) {
  const stop = () => {
    stopping = true;
    tell({ told: 'closed' });
  };
  const database = await openDatabase(databaseName(person), { closed: stop });
  const store = await openIndexedStore(database);
  const ports = { store, hasher: webHasher, verifier: webVerifier };
  const book = await openBook({ ...ports, keys: keptKeys(database), clock: webClock, chance: webChance }, { person });
  return {
    database,
    store,
    book,
    ports: { ...ports, book, transport: httpTransport() },
    photographs: keptPhotographs(database),
  };
}

let device: ReturnType<typeof opened> | null = null;

async function run(person: string): Promise<void> {
  wanted = true;
  if (running) return;
  running = true;
  try {
    device ??= opened(person);
    const { database, book, ports, photographs } = await device;
    while (wanted && !stopping) {
      wanted = false;
      tell({ told: 'began' });
      const turn = await exchangeTurn(ports, database, photographs, () => stopping);
      tell({ told: 'ended', turn });
    }
    await refoldBetweenVisits(book, person, () => stopping || wanted);
  } catch (error) {
    device = null;
    const { name, code } = error as { name?: string; code?: string };
    tell({ told: 'failed', name: `${name ?? 'error'} ${code ?? ''}`.trim() });
  } finally {
    running = false;
  }
}

addEventListener('message', ({ data }: MessageEvent<MessageToWorker>) => {
  if (data.ask === 'run') void run(data.person);
  else {
    stopping = true;
    void device?.then(({ store }) => store.close());
    device = null;
  }
});
