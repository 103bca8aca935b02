import type { Book, BookOptions } from '../book/book.ts';
import { openBook } from '../book/open-book.ts';
import type { Kinds } from '../kinds/registry.ts';
import { memoryDeviceStore, memoryOfficeStore } from '../memory-store.ts';
import type { Office } from '../office/office.ts';
import { openOffice } from '../office/open-office.ts';
import type { Keys } from '../ports.ts';
import type { DeviceStore, OfficeStore } from '../store.ts';
import { exchange, type SyncReport } from '../sync.ts';
import { districtScope, type Transport } from '../transport.ts';
import { loopback } from './loopback.ts';
import {
  type HandClock,
  handClock,
  nodeHasher,
  nodeKeys,
  nodeSigner,
  nodeVerifier,
  seededChance,
} from './node-ports.ts';

/** An office and a few phones in memory, with clocks moved by hand: the stage of most tests of the record. */
export interface SmallWorld {
  readonly office: Office;
  readonly officeStore: OfficeStore;
  readonly officeClock: HandClock;
  phone(options?: PhoneOptions): Promise<SmallPhone>;
}

export interface PhoneOptions {
  readonly person?: string;
  readonly districts?: readonly string[];
  readonly kinds?: Kinds;
  readonly store?: DeviceStore;
  readonly keys?: Keys;
  /** Milliseconds by which its clock is ahead of the office's. */
  readonly skew?: number;
}

export interface SmallPhone {
  readonly book: Book;
  readonly store: DeviceStore;
  readonly keys: Keys;
  readonly clock: HandClock;
  readonly person: string;
  readonly transport: Transport;
  sync(): Promise<SyncReport>;
}

export const worldStart = 1_777_883_465_120;

export async function smallWorld(
  options: { readonly kinds?: Kinds; readonly seed?: number } = {},
): Promise<SmallWorld> {
  const officeStore = memoryOfficeStore();
  const officeClock = handClock(worldStart);
  const seed = options.seed ?? 1;
  const ports = { hasher: nodeHasher, verifier: nodeVerifier };
  const office = await openOffice(
    { ...ports, store: officeStore, signer: nodeSigner(), clock: officeClock, chance: seededChance(seed) },
    {
      device: '01900000-0ff1-7000-8000-000000000001',
      person: '01900000-0ff1-7000-8000-000000000002',
      name: 'office',
      ...(options.kinds === undefined ? {} : { kinds: options.kinds }),
    },
  );
  let count = 0;
  return {
    office,
    officeStore,
    officeClock,
    async phone(asked = {}) {
      const number = ++count;
      const store = asked.store ?? memoryDeviceStore();
      const keys = asked.keys ?? nodeKeys();
      const clock = handClock(worldStart + (asked.skew ?? 0));
      const person = asked.person ?? `01900000-0e0e-7000-8000-${String(number).padStart(12, '0')}`;
      const bookOptions: BookOptions = { person, ...(asked.kinds === undefined ? {} : { kinds: asked.kinds }) };
      const chance = seededChance(seed * 1000 + number);
      const book = await openBook({ ...ports, store, keys, clock, chance }, bookOptions);
      const districts = asked.districts ?? ['north'];
      const transport = loopback(
        () => office,
        person,
        () => districts.map(districtScope),
      );
      const sync = () => exchange({ ...ports, book, store, transport });
      return { book, store, keys, clock, person, transport, sync };
    },
  };
}
