import { dayOf, instantOf } from '@combside/calendar/instant';
import { inspectorOfTheDay } from '@combside/casework/demo/people';
import { visitsToMake } from '@combside/casework/plan/today';
import { loadPack } from '@combside/law/load-pack';
import { openBook } from '@combside/record/book/open-book';
import { memoryDeviceStore } from '@combside/record/memory-store';
import { exchange } from '@combside/record/sync';
import type { Transport } from '@combside/record/transport';
import { chance, hasher, keysInMemory, verifier } from '../node-ports.ts';
import { signInAt } from '../office-over-http.ts';
import { accountOf, type Stage } from './stage.ts';

/** A phone in memory, signed in as the inspector of the day. */
export async function openPhone({ server }: Stage) {
  const store = memoryDeviceStore();
  let clock = Date.now();
  const book = await openBook(
    { store, hasher, keys: keysInMemory(), verifier, clock: { now: () => clock }, chance },
    { person: inspectorOfTheDay.id, deviceName: 'phone of the demonstration' },
  );
  const account = accountOf(server, inspectorOfTheDay.id);
  const transport = await signInAt(server.address, account, server.demo.password);
  let connected = true;
  return {
    store,
    book,
    pack: await loadPack('quillmoor'),
    cutOff: () => {
      connected = false;
    },
    setClock: (to: number) => {
      clock = to;
    },
    /** Exchanges everything with the office; a phone that was cut off finds its network again here. */
    meetOffice: async () => {
      connected = true;
      return exchange({ book, store, transport: guarded(() => connected, transport), hasher, verifier });
    },
    today: async () => {
      const day = dayOf(instantOf(clock));
      const visits = await book.states('visit', { inspector: inspectorOfTheDay.id });
      const places = await Promise.all(
        visits.map((one) => book.state({ type: 'apiary', id: one.visit.current?.body.apiary ?? '' })),
      );
      const edges = { start: `${day}T00:00:00.000Z`, end: `${day}T23:59:59.999Z` };
      const lines = visitsToMake({
        visits,
        apiaries: places.filter((one) => one !== null),
        inspector: inspectorOfTheDay.id,
        day: edges,
      });
      return lines.filter((one) => one.state === 'today');
    },
  };
}

export type Phone = Awaited<ReturnType<typeof openPhone>>;

/** Refuses to speak while there is no network, so that a step that needs one without saying so fails. */
function guarded(connected: () => boolean, transport: Transport): Transport {
  const through = (): Transport => {
    if (!connected()) throw new Error('a step reached for the network while the phone was cut off');
    return transport;
  };
  return {
    greet: async () => through().greet(),
    push: async (entries) => through().push(entries),
    pull: async (scope, after, limit) => through().pull(scope, after, limit),
    checkpoint: async (scope, position) => through().checkpoint(scope, position),
  };
}
