/** Runs in the browser: the record's acceptance suites against the device's own parts. */
import { deviceStoreCases } from '@combside/record/acceptance/device-store';
import { entryStoreCases, type StoreSubject } from '@combside/record/acceptance/entry-store';
import { hasherCases } from '@combside/record/acceptance/hasher';
import { signerCases } from '@combside/record/acceptance/signer';
import { openBook } from '@combside/record/book/open-book';
import type { DeviceStore } from '@combside/record/store';
import { keptKeys } from '../src/device/keys/kept-keys.ts';
import { webChance, webClock, webHasher, webVerifier } from '../src/device/keys/web-ports.ts';
import { keptPhotographs } from '../src/device/photographs/photographs.ts';
import { openDatabase } from '../src/device/store/database.ts';
import { openIndexedStore } from '../src/device/store/indexed-store.ts';
import { migrations } from '../src/device/store/migrations.ts';

let made = 0;
let gaveUpBecause: string | null = null;

async function storeSubject(): Promise<StoreSubject<DeviceStore>> {
  const name = `acceptance ${++made} ${performance.timeOrigin}`;
  const open = async () => openIndexedStore(await openDatabase(name));
  return { store: await open(), again: open };
}

const suites = {
  hasher: hasherCases.map(({ name, check }) => ({ name, run: () => check(webHasher) })),
  signer: signerCases.map(({ name, check }) => ({
    name,
    run: async () => {
      const database = `acceptance keys ${++made} ${performance.timeOrigin}`;
      const open = async () => keptKeys(await openDatabase(database));
      await check({ keys: await open(), verifier: webVerifier, again: open });
    },
  })),
  entries: entryStoreCases.map(({ name, check }) => ({ name, run: async () => check(await storeSubject()) })),
  device: deviceStoreCases.map(({ name, check }) => ({ name, run: async () => check(await storeSubject()) })),
};

async function bookOf(name: string) {
  const database = await openDatabase(name);
  const store = await openIndexedStore(database);
  const ports = { store, hasher: webHasher, keys: keptKeys(database), verifier: webVerifier, clock: webClock };
  const book = await openBook({ ...ports, chance: webChance }, { person: '01900000-0e0e-7000-8000-000000000001' });
  return { book, store, database };
}

const acceptance = {
  names: () => Object.entries(suites).flatMap(([suite, cases]) => cases.map(({ name }) => [suite, name] as const)),
  async run(suite: string, name: string): Promise<void> {
    const found = suites[suite as keyof typeof suites].find((one) => one.name === name);
    if (found === undefined) throw new Error(`no case ${name}`);
    await found.run();
  },
  /** Appends notes in this tab. @returns the identifiers */
  async append(name: string, count: number): Promise<string[]> {
    const { book } = await bookOf(name);
    const ids: string[] = [];
    const about = { type: 'apiary', id: '01900000-00aa-7000-8000-000000000001' };
    for (let i = 0; i < count; i++) {
      const [entry] = await book.write([
        { kind: 'note', version: 1, about, replaces: [], body: { text: `note ${i}` } },
      ]);
      if (entry !== undefined) ids.push(entry.envelope.id);
    }
    return ids;
  },
  async wholeChain(name: string) {
    const { book, store } = await bookOf(name);
    const { device } = await book.identity();
    const chain = await store.chain(device, 1, 100_000);
    return {
      devices: (await store.heads()).length,
      outbox: await store.outboxSize(),
      chain: chain.map(({ entry, hash }) => ({
        id: entry.envelope.id,
        seq: entry.envelope.seq,
        prev: entry.envelope.prev,
        hash,
      })),
    };
  },
  /** A tab of an older program, which knows only so many steps of the database's shape. */
  async openOlder(name: string): Promise<string> {
    await openDatabase(name, {
      closed: (why) => {
        gaveUpBecause = why;
      },
    });
    return 'open';
  },
  closedBecause: () => gaveUpBecause,
  /** A newer program, with one step more. */
  async openNewer(name: string): Promise<number> {
    const step = { name: 'one more', change: () => {} };
    const database = await openDatabase(name, {}, [...migrations, step]);
    const { version } = database;
    database.close();
    return version;
  },
  /** A tab that holds the database and will not let go. */
  async holdFast(name: string): Promise<void> {
    await new Promise<void>((resolve, reject) => {
      const asked = indexedDB.open(name, 1);
      asked.onupgradeneeded = () => {};
      asked.onsuccess = () => {
        (globalThis as unknown as { held: IDBDatabase }).held = asked.result;
        resolve();
      };
      asked.onerror = () => reject(asked.error);
    });
  },
  letGo: () => (globalThis as unknown as { held: IDBDatabase }).held.close(),
  async openTold(name: string): Promise<string[]> {
    const told: string[] = [];
    const step = { name: 'one more', change: () => {} };
    const opening = openDatabase(name, { blocked: () => told.push('blocked') }, [...migrations, step]);
    for (let i = 0; i < 100 && told.length === 0; i++) await new Promise((resolve) => setTimeout(resolve, 20));
    acceptance.letGo();
    (await opening).close();
    told.push('opened');
    return told;
  },
  /** Keeps a photograph twice, reads it again after the database was closed, and notes it as sent. */
  async photograph(name: string) {
    const first = await openDatabase(name);
    const file = new Blob([new Uint8Array([1, 2, 3, 250])], { type: 'image/jpeg' });
    const taken = '2026-05-04T08:31:05.120Z';
    const kept = await keptPhotographs(first).keep(file, taken);
    const again = await keptPhotographs(first).keep(file, taken);
    first.close();
    const photographs = keptPhotographs(await openDatabase(name));
    const bytes = await (await photographs.open(kept.hash))?.arrayBuffer();
    const waiting = await photographs.waiting(10);
    await photographs.noteUpload(kept.hash, '/api/uploads/1');
    const upload = await photographs.uploadOf(kept.hash);
    await photographs.noteSent(kept.hash, taken);
    return {
      kept,
      same: again.hash === kept.hash,
      bytes: [...new Uint8Array(bytes ?? new ArrayBuffer(0))],
      waiting,
      upload,
      waitingAfter: await photographs.waiting(10),
      stillThere: (await photographs.open(kept.hash))?.size,
      nobody: await photographs.open('ab'.repeat(32)),
    };
  },
  /** Another tab's change, as this tab's lists and listeners see it. */
  async seesElsewhere(name: string) {
    const [here, there] = [await bookOf(name), await bookOf(name)];
    const heard = new Promise<string[]>((resolve) => {
      here.store.onElsewhere((changed) => resolve(changed.map(({ id }) => id)));
    });
    const apiary = '01900000-00aa-7000-8000-0000000000f1';
    const about = { type: 'colony', id: there.book.newId() } as const;
    const body = {
      apiary,
      label: '1',
      hiveType: 'langstroth-deep',
      broodBoxes: [],
      hiveState: 'living',
    };
    await there.book.write([{ kind: 'colony', version: 1, about, replaces: [], body }]);
    const ids = await heard;
    const rows = await here.book.summaries('colony', { apiary });
    const state = await here.book.state(about);
    return { told: ids.includes(about.id), rows: rows.length, label: state?.colony.current?.body.label };
  },
  /**
   * One examination as the screen makes it: twelve taps, each saved in the draft, then the colony closed. Tells after
   * each step that it is acknowledged; whoever listens may kill this page at that moment.
   */
  async examine(name: string): Promise<void> {
    const { acknowledged } = globalThis as unknown as { acknowledged(step: string): Promise<void> };
    const { book, store } = await bookOf(name);
    const about = { type: 'colony', id: '01900000-00aa-7000-8000-0000000000c1' };
    const taps: number[] = [];
    for (let tap = 1; tap <= 12; tap++) {
      taps.push(tap);
      const saving = store.commit({ saveDrafts: [{ key: 'examination/c1', value: taps, savedAt: String(tap) }] });
      void acknowledged(`tapping ${tap}`); // the screen shows the tap before it is stored: killed here, it may be gone
      await saving;
      await acknowledged(`tapped ${tap}`);
    }
    const closing = book.write([{ kind: 'note', version: 1, about, replaces: [], body: { text: taps.join(' ') } }], {
      closes: ['examination/c1'],
    });
    void acknowledged('closing');
    await closing;
    await acknowledged('closed');
  },
  /** What the next start finds. */
  async afterKill(name: string) {
    const { book, store } = await bookOf(name);
    const draft = await store.draft('examination/c1');
    const { device } = await book.identity();
    const state = await book.state({ type: 'colony', id: '01900000-00aa-7000-8000-0000000000c1' });
    return {
      taps: (draft?.value as number[] | undefined)?.length ?? 0,
      written: state?.notes.map(({ body }) => body.text) ?? [],
      chain: (await store.chain(device, 1, 100)).length,
      outbox: await store.outboxSize(),
    };
  },
  async keyCannotBeRead(name: string): Promise<string> {
    const database = await openDatabase(name);
    const device = '01900000-0001-7000-8000-000000000009';
    await keptKeys(database).signerFor(device);
    const record = await database.get('keys', device);
    try {
      await crypto.subtle.exportKey('pkcs8', record?.privateKey as CryptoKey);
      return 'read';
    } catch (error) {
      return (error as Error).name;
    }
  },
};
export type Acceptance = typeof acceptance;

Object.assign(globalThis, { acceptance, ready: true });
