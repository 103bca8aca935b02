/** Runs in the browser for bench/record.ts, bench/sync.ts and bench/hive.ts: the device's own parts, timed. */
import { sampleBodies } from '../packages/record/src/acceptance/golden-bodies.ts';
import { loopback } from '../packages/record/src/acceptance/loopback.ts';
import {
  sampleApiary,
  sampleColony,
  sampleId,
  sampleState,
  sampleStoredEntry,
} from '../packages/record/src/acceptance/samples.ts';
import { openBook } from '../packages/record/src/book/open-book.ts';
import type { Proposal } from '../packages/record/src/entry.ts';
import { apiary } from '../packages/record/src/kinds/apiary.ts';
import { examination } from '../packages/record/src/kinds/examination.ts';
import { memoryOfficeStore } from '../packages/record/src/memory-store.ts';
import type { Office } from '../packages/record/src/office/office.ts';
import { openOffice } from '../packages/record/src/office/open-office.ts';
import { exchange } from '../packages/record/src/sync.ts';
import { districtScope, type Transport } from '../packages/record/src/transport.ts';
import { keptKeys } from '../packages/web/src/device/keys/kept-keys.ts';
import { webChance, webClock, webHasher, webVerifier } from '../packages/web/src/device/keys/web-ports.ts';
import { openDatabase } from '../packages/web/src/device/store/database.ts';
import { openIndexedStore } from '../packages/web/src/device/store/indexed-store.ts';

const person = sampleId(9, 1);
const examinationBody = sampleBodies[`examination.${examination.version}`]?.body;

async function deviceNamed(name: string) {
  const database = await openDatabase(name);
  const store = await openIndexedStore(database);
  const ports = { store, hasher: webHasher, verifier: webVerifier, clock: webClock, chance: webChance };
  const book = await openBook({ ...ports, keys: keptKeys(database) }, { person });
  return { store, book, database };
}

function examinationOf(colony: string): Proposal {
  const about = { type: 'colony', id: colony };
  return { kind: 'examination', version: examination.version, about, replaces: [], body: examinationBody };
}

async function timed(count: number, work: (turn: number) => Promise<unknown>): Promise<number[]> {
  const times: number[] = [];
  for (let turn = 0; turn < count; turn++) {
    const begun = performance.now();
    await work(turn);
    times.push(performance.now() - begun);
  }
  return times;
}

let office: Office | null = null;
let inOffice = 0;

/** The office in this page, with the time spent in it counted apart. */
function countedTransport(): Transport {
  const wire = loopback(
    () => office as Office,
    person,
    () => [districtScope('north')],
  );
  const counted =
    <A extends unknown[], R>(ask: (...asked: A) => Promise<R>) =>
    async (...asked: A): Promise<R> => {
      const begun = performance.now();
      try {
        return await ask(...asked);
      } finally {
        inOffice += performance.now() - begun;
      }
    };
  return {
    greet: counted(wire.greet),
    push: counted(wire.push),
    pull: counted(wire.pull),
    checkpoint: counted(wire.checkpoint),
  };
}

const record = {
  /** Milliseconds until a tap in a draft, and until an examination, is durable. */
  async acknowledgements(count: number) {
    const { store, book } = await deviceNamed('acknowledgements');
    const taps = Array.from({ length: 30 }, (_, i) => ({ tap: 'sign', sign: `sign-${i}`, outcome: 'not seen' }));
    const save = (turn: number) =>
      store.commit({
        saveDrafts: [{ key: `examination/${turn % 6}`, value: taps, savedAt: new Date().toISOString() }],
      });
    return {
      draft: await timed(count, save),
      examination: await timed(count, () => book.write([examinationOf(book.newId())])),
    };
  },

  /** Fills the store of a whole district as a fetch from the office would: in packs. @returns milliseconds */
  async fillDistrict(apiaries: number, coloniesEach: number, name = 'district'): Promise<number> {
    const store = await openIndexedStore(await openDatabase(name));
    const device = sampleId(1, 1);
    let seq = 0;
    const begun = performance.now();
    let batch: ReturnType<typeof sampleStoredEntry>[] = [];
    const flush = async () => {
      await store.commit({ entries: batch, states: batch.map((kept) => sampleState([kept])) });
      batch = [];
    };
    for (let a = 0; a < apiaries; a++) {
      const body = { ...sampleApiary('north'), name: `Stand ${a}` };
      const about = { type: 'apiary', id: sampleId(2, a) };
      batch.push(
        sampleStoredEntry({
          device,
          seq: ++seq,
          id: sampleId(3, seq),
          about,
          kind: 'apiary',
          body,
          version: apiary.version,
        }),
      );
      for (let c = 0; c < coloniesEach; c++) {
        const colony = { type: 'colony', id: sampleId(4, a * coloniesEach + c) };
        const hive = sampleColony(about.id, `${c + 1}`);
        batch.push(
          sampleStoredEntry({ device, seq: ++seq, id: sampleId(3, seq), about: colony, kind: 'colony', body: hive }),
        );
      }
      if (batch.length >= 490) await flush();
    }
    if (batch.length > 0) await flush();
    store.close();
    return performance.now() - begun;
  },

  /** Opens that store and answers what the first screens ask. */
  async openDistrict() {
    const begun = performance.now();
    const { book, store } = await deviceNamed('district');
    const opened = performance.now();
    const apiaries = await book.summaries('apiary', { district: 'north' });
    const names = apiaries.map(({ name }) => name).sort();
    const colonies = await book.summaries('colony');
    const listed = performance.now();
    const states = await book.states('colony', { apiary: sampleId(2, 77) });
    const stated = performance.now();
    store.close();
    if (names.length !== apiaries.length || states.length === 0) throw new Error('the lists are empty');
    return {
      apiaries: apiaries.length,
      colonies: colonies.length,
      open: opened - begun,
      list: listed - opened,
      coloniesOfOneApiary: stated - listed,
    };
  },

  /** One phone sends so many examinations to an office in this page; another fetches them. Milliseconds. */
  async upAndDown(count: number) {
    const pair = await crypto.subtle.generateKey({ name: 'ECDSA', namedCurve: 'P-256' }, false, ['sign', 'verify']);
    const signer = {
      publicKey: await import('../packages/web/src/device/keys/web-ports.ts').then(({ publicKeyText }) =>
        publicKeyText(pair.publicKey),
      ),
      sign: async (bytes: Uint8Array) =>
        new Uint8Array(
          await crypto.subtle.sign({ name: 'ECDSA', hash: 'SHA-256' }, pair.privateKey, bytes as BufferSource),
        ),
    };
    const ports = { hasher: webHasher, verifier: webVerifier, clock: webClock, chance: webChance };
    office = await openOffice(
      { ...ports, store: memoryOfficeStore(), signer },
      { device: sampleId(7, 1), person: sampleId(7, 2), name: 'office' },
    );
    const writer = await deviceNamed('writer');
    const site = writer.book.newId();
    await writer.book.write([
      {
        kind: 'apiary',
        version: apiary.version,
        about: { type: 'apiary', id: site },
        replaces: [],
        body: sampleApiary('north'),
      },
    ]);
    const colonies = Array.from({ length: Math.ceil(count / 5) }, () => writer.book.newId());
    let written = 1;
    for (let from = 0; from < colonies.length; from += 100) {
      const some = colonies.slice(from, from + 100);
      const hives = some.map((id): Proposal => {
        const about = { type: 'colony', id };
        return { kind: 'colony', version: 1, about, replaces: [], body: sampleColony(site, id.slice(-6)) };
      });
      await writer.book.write([...hives, ...some.flatMap((id) => Array.from({ length: 4 }, () => examinationOf(id)))]);
      written += some.length * 5;
    }
    const step = async (device: Awaited<ReturnType<typeof deviceNamed>>) => {
      inOffice = 0;
      const begun = performance.now();
      const report = await exchange({
        ...device,
        transport: countedTransport(),
        hasher: webHasher,
        verifier: webVerifier,
      });
      if (report.faults.length > 0) throw new Error(JSON.stringify(report.faults));
      const whole = performance.now() - begun;
      return { whole, device: whole - inOffice, sent: report.sent, fetched: report.fetched };
    };
    const up = await step(writer);
    const down = await step(await deviceNamed('reader'));
    return { written, up, down };
  },
};
export type RecordBench = typeof record;

Object.assign(globalThis, { record, ready: true });
