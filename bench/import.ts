/**
 * A whole register read in on this machine: `npx tsx bench/import.ts [rows]`. Build the web app first.
 *
 * First the pure steps in Node. Then the same file in Chromium, as a person at the desk does it: read, columns, preview,
 * signing, storing together, and the way to the office; an embedded PostgreSQL keeps it. One run each.
 */
import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { proposeDuplicates } from '../packages/casework/src/register/duplicates.ts';
import { guessColumns } from '../packages/casework/src/register/import/columns.ts';
import { planImport } from '../packages/casework/src/register/import/plan-import.ts';
import { readLines } from '../packages/casework/src/register/import/read-lines.ts';
import { readSeparatedText } from '../packages/casework/src/register/import/separated-text.ts';
import type { ApiaryBody } from '../packages/record/src/kinds/apiary.ts';
import type { KeeperBody } from '../packages/record/src/kinds/keeper.ts';
import { seeded } from '../packages/science/src/random/seeded.ts';
import { newId } from '../packages/server/src/acceptance/test-house.ts';
import { startServer } from '../packages/server/src/start.ts';
import { browserFlags, findBrowser } from '../packages/web/e2e/browser.ts';
import { signIn } from '../packages/web/e2e/sign-in.ts';

const rows = Number(process.argv[2] ?? 100_000);
const text = invented(rows);

function report(what: string, milliseconds: number, note = ''): void {
  console.log(`${what.padEnd(52)} ${(milliseconds / 1000).toFixed(1).padStart(8)} s  ${note}`);
}

inNode();
await inTheBrowser();

/** An invented register: every third keeper has two apiaries. */
function invented(count: number): string {
  const chance = seeded(7);
  const lines = ['keeper number;keeper name;telephone;apiary number;apiary name;latitude;longitude;colonies;confirmed'];
  for (let n = 0; n < count; n++) {
    const keeper = Math.floor((n * 3) / 4);
    const at = (middle: number, spread: number) =>
      chance
        .between(middle - spread, middle + spread)
        .toFixed(5)
        .replace('.', ',');
    lines.push(
      `B-${keeper};Keeper ${keeper} of Invented;030 ${1_000_000 + keeper};S-${n};Stand ${n};${at(55, 3)};${at(4, 3)};${1 + chance.integer(20)};${1 + chance.integer(28)}.${1 + chance.integer(12)}.2025`,
    );
  }
  return `${lines.join('\r\n')}\r\n`;
}

function inNode(): void {
  console.log(`${rows} rows, ${(text.length / 1e6).toFixed(1)} MB; in Node:`);
  let since = performance.now();
  const lap = (what: string, note = '') => {
    report(what, performance.now() - since, note);
    since = performance.now();
  };
  const table = readSeparatedText(text);
  lap('  text to table');
  const said = readLines(table, guessColumns(table.header), { dateOrder: null, today: '2027-05-04' });
  lap('  table to statements', `${said.faults.length} faults`);
  const settings = { district: 'bench', language: 'en', uncertaintyMetres: 100, reason: 'bench' };
  const plan = planImport({ lines: said.lines, held: { keepers: [], apiaries: [] }, settings, newId });
  lap('  statements to entries', `${plan.proposals.length} entries, ${plan.faults.length} faults`);
  const held = {
    keepers: plan.proposals
      .filter(({ kind }) => kind === 'keeper')
      .map(({ about, body }) => standing(about.id, body as KeeperBody)),
    apiaries: plan.proposals
      .filter(({ kind }) => kind === 'apiary')
      .map(({ about, body }) => standing(about.id, body as ApiaryBody)),
  };
  since = performance.now();
  const again = planImport({ lines: said.lines, held, settings, newId });
  lap('  the same again, against the register', `${again.proposals.length} entries`);
  const pairs = proposeDuplicates(held);
  lap('  duplicates among them', `${pairs.length} pairs`);
}

function standing<Body>(id: string, body: Body) {
  return { id, standing: [id], mergedInto: null, notTheSame: [], body };
}

async function inTheBrowser(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'combside-bench-'));
  chmodSync(folder, 0o755);
  const file = join(folder, 'register.csv');
  writeFileSync(file, text);
  const server = await startServer({ data: join(folder, 'data'), port: 0 });
  const account = { email: 'bench@office.example', password: 'a long enough password' };
  const person = '01900000-0000-7000-8000-00000000000b';
  await server.accounts.addPerson({ ...account, person, name: 'Bench', role: 'office', districts: 'all' }, new Date());
  const browser = await chromium.launch({ executablePath: await findBrowser(), args: browserFlags() });
  try {
    const context = await browser.newContext({ baseURL: server.address, viewport: { width: 1440, height: 900 } });
    const page = await context.newPage();
    page.setDefaultTimeout(3_600_000);
    await page.goto('/');
    await signIn(page, account.email);
    await page.getByRole('link', { name: 'Register', exact: true }).click();
    await page.getByRole('link', { name: 'Read in a file' }).click();
    console.log('in Chromium, with the office:');
    let since = performance.now();
    const lap = (what: string, note = '') => {
      report(what, performance.now() - since, note);
      since = performance.now();
    };
    await page.getByLabel('Choose a file').setInputFiles(file);
    await page.getByRole('heading', { name: 'What do the columns mean?' }).waitFor();
    lap('  read');
    await page.getByLabel('District of the apiaries').selectOption('');
    await page.getByLabel('Name of the district').fill('bench');
    since = performance.now();
    await page.getByRole('button', { name: 'See what would happen' }).click();
    await page.getByRole('heading', { name: 'What would happen' }).waitFor();
    lap('  planned');
    await page.getByRole('button', { name: /^Write .* into the register/ }).click();
    await page
      .getByText(/Signing/)
      .first()
      .waitFor();
    await page.getByText(/^Storing /).waitFor();
    lap('  signed');
    await page.getByText(/records written on this device/).waitFor();
    lap('  stored', await heap(page));
    await page.getByText('All of it is at the office.').waitFor();
    lap('  at the office');
  } finally {
    await browser.close();
    await server.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

async function heap(page: import('@playwright/test').Page): Promise<string> {
  const used = await page.evaluate(
    () => (performance as unknown as { memory?: { usedJSHeapSize: number } }).memory?.usedJSHeapSize ?? 0,
  );
  return `${Math.round(used / 1e6)} MB of script memory`;
}
