/*
 * How fast 10,000 entries go up to the office and down to a phone.
 *
 *   npx tsx bench/sync.ts
 *
 * First with the device in Chromium (its IndexedDB and cryptography) and an office in the same page, whose time is
 * counted apart; then the office alone, on the embedded PostgreSQL, in Node.
 */
import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { cpus, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { sampleBodies } from '../packages/record/src/acceptance/golden-bodies.ts';
import { loopback } from '../packages/record/src/acceptance/loopback.ts';
import { nodeHasher, nodeKeys, nodeSigner, nodeVerifier } from '../packages/record/src/acceptance/node-ports.ts';
import { sampleApiary, sampleColony, sampleId } from '../packages/record/src/acceptance/samples.ts';
import { openBook } from '../packages/record/src/book/open-book.ts';
import type { Proposal } from '../packages/record/src/entry.ts';
import { apiary } from '../packages/record/src/kinds/apiary.ts';
import { examination } from '../packages/record/src/kinds/examination.ts';
import { memoryDeviceStore } from '../packages/record/src/memory-store.ts';
import { openOffice } from '../packages/record/src/office/open-office.ts';
import { exchange } from '../packages/record/src/sync.ts';
import { districtScope } from '../packages/record/src/transport.ts';
import { startCluster } from '../packages/server/src/store/cluster.ts';
import { openDatabase } from '../packages/server/src/store/database.ts';
import { chance, wallClock } from '../packages/server/src/store/node-ports.ts';
import { openOfficeStore } from '../packages/server/src/store/office-store/open-office-store.ts';
import { browserFlags, findBrowser } from '../packages/web/e2e/browser.ts';
import { bundled, openBundled } from '../packages/web/e2e/bundled.ts';
import type { RecordBench } from './record.page.ts';

const entries = 10_000;

function say(what: string, milliseconds: number): void {
  console.log(`${what.padEnd(72)} ${(milliseconds / 1000).toFixed(1).padStart(8)} s`);
}

async function inChromium(): Promise<void> {
  const code = await bundled('../../../bench/record.page.ts');
  const browser = await chromium.launch({ executablePath: await findBrowser(), args: browserFlags() });
  try {
    const page = await (await browser.newContext()).newPage();
    await openBundled(page, code);
    const { written, up, down } = (await page.evaluate(`globalThis.record.upAndDown(${entries})`)) as Awaited<
      ReturnType<RecordBench['upAndDown']>
    >;
    if (up.sent < written || down.fetched < written) throw new Error('not all entries went through');
    say(`Chromium: ${up.sent} entries up, and their echo read, whole`, up.whole);
    say('  of this on the device', up.device);
    say(`Chromium: ${down.fetched} entries down to a new phone, verified, whole`, down.whole);
    say('  of this on the device', down.device);
  } finally {
    await browser.close();
  }
}

async function onPostgres(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'combside-bench-'));
  chmodSync(folder, 0o755);
  const cluster = await startCluster({ folder: join(folder, 'postgres') });
  try {
    const database = await openDatabase({ cluster, name: 'bench' });
    const ports = { hasher: nodeHasher, verifier: nodeVerifier, clock: wallClock, chance };
    const office = await openOffice(
      { ...ports, store: openOfficeStore(database), signer: nodeSigner() },
      { device: sampleId(7, 1), person: sampleId(7, 2), name: 'office' },
    );
    const person = sampleId(9, 1);
    const transport = loopback(
      () => office,
      person,
      () => [districtScope('north')],
    );
    const phone = async () => {
      const store = memoryDeviceStore();
      return { store, book: await openBook({ ...ports, store, keys: nodeKeys() }, { person }) };
    };
    const writer = await phone();
    const site = writer.book.newId();
    const body = sampleBodies[`examination.${examination.version}`]?.body;
    const proposals: Proposal[] = [
      {
        kind: 'apiary',
        version: apiary.version,
        about: { type: 'apiary', id: site },
        replaces: [],
        body: sampleApiary('north'),
      },
    ];
    while (proposals.length < entries) {
      const about = { type: 'colony', id: writer.book.newId() };
      proposals.push({ kind: 'colony', version: 1, about, replaces: [], body: sampleColony(site, 'x') });
      for (let i = 0; i < 4; i++) {
        proposals.push({ kind: 'examination', version: examination.version, about, replaces: [], body });
      }
    }
    await writer.book.write(proposals);
    const step = async (device: typeof writer) => {
      const begun = performance.now();
      const report = await exchange({ ...device, transport, hasher: nodeHasher, verifier: nodeVerifier });
      if (report.faults.length > 0) throw new Error(JSON.stringify(report.faults));
      return { report, whole: performance.now() - begun };
    };
    const up = await step(writer);
    say(`PostgreSQL: ${up.report.sent} entries up from a phone in memory, and their echo read`, up.whole);
    const down = await step(await phone());
    say(`PostgreSQL: ${down.report.fetched} entries down to a phone in memory`, down.whole);
    await database.close();
  } finally {
    await cluster.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

console.log(
  `Node ${process.version}, ${cpus().length} processors, load ${loadavg()
    .map((one) => one.toFixed(1))
    .join(' ')}`,
);
await inChromium();
await onPostgres();
