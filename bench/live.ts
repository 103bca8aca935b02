/**
 * From an entry to the screen of the desk, on this machine: `npx tsx bench/live.ts`. Build the web app first.
 *
 * The demo district is open in Chromium at 1440 x 900; a phone's entries are pushed over HTTP. Measured: from the push
 * until the desk shows what it says, and until the map has drawn a new apiary.
 */
import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { protocolHeader, protocolVersion } from '../packages/contract/src/version.ts';
import type { Proposal } from '../packages/record/src/entry.ts';
import { newId, phoneOf } from '../packages/server/src/acceptance/test-house.ts';
import { apiaryProposal, visitProposal } from '../packages/server/src/acceptance/test-proposals.ts';
import { startServer } from '../packages/server/src/start.ts';
import { browserFlags, findBrowser } from '../packages/web/e2e/browser.ts';
import { signIn } from '../packages/web/e2e/sign-in.ts';

const runs = 9;
const folder = mkdtempSync(join(tmpdir(), 'combside-bench-'));
chmodSync(folder, 0o755);
const server = await startServer({ data: join(folder, 'data'), port: 0 });

function report(what: string, times: readonly number[]): void {
  const sorted = [...times].sort((a, b) => a - b);
  const middle = sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
  const most = sorted.at(-1) ?? Number.NaN;
  console.log(`${what.padEnd(56)} ${middle.toFixed(0).padStart(6)} ms, at most ${most.toFixed(0)} ms`);
}

try {
  await server.plantDemo();
  const person = '01900000-0000-7000-8000-00000000000b';
  const account = { email: 'bench@office.example', password: 'a long enough password' };
  await server.accounts.addPerson(
    { ...account, person, name: 'Bench', role: 'inspector', districts: ['quillmoor'] },
    new Date(),
  );
  const answer = await fetch(`${server.address}/api/auth/sign-in/email`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin: server.address },
    body: JSON.stringify(account),
  });
  const cookie = answer.headers.getSetCookie()[0]?.split(';')[0] ?? '';
  const phone = phoneOf(person);
  const push = async (...proposals: Proposal[]): Promise<void> => {
    const pushed = await fetch(`${server.address}/api/push`, {
      method: 'POST',
      headers: { cookie, [protocolHeader]: String(protocolVersion), 'content-type': 'application/json' },
      body: JSON.stringify({ entries: await phone.write(...proposals) }),
    });
    const { results } = (await pushed.json()) as { results: { outcome: string }[] };
    if (results.some((one) => one.outcome !== 'received')) throw new Error('an entry was not received');
  };
  await push();

  const browser = await chromium.launch({ executablePath: await findBrowser(), args: browserFlags() });
  try {
    const context = await browser.newContext({ baseURL: server.address, viewport: { width: 1440, height: 900 } });
    const page = await context.newPage();
    await page.goto('/');
    await signIn(page, server.demo.accounts[0]?.email ?? '');
    await page.getByText('Live', { exact: true }).waitFor({ timeout: 60_000 });
    await page.getByRole('link', { name: /^Alder Bank/ }).waitFor();

    const list: number[] = [];
    const owed: number[] = [];
    const map: number[] = [];
    for (let run = 0; run < runs; run += 1) {
      const name = `Aaa Bench ${run}`;
      const apiary = newId();
      let since = performance.now();
      await Promise.all([
        push(apiaryProposal(apiary, 'quillmoor', { name })),
        page
          .getByRole('link', { name: new RegExp(`^${name} `) })
          .first()
          .waitFor(),
      ]);
      list.push(performance.now() - since);
      const visit = visitProposal(newId(), apiary, person);
      since = performance.now();
      await Promise.all([
        push(visit),
        page
          .getByRole('link', { name: new RegExp(`^${name} Under way`) })
          .first()
          .waitFor(),
      ]);
      owed.push(performance.now() - since);
    }
    await page.getByRole('radio', { name: 'Map' }).click();
    await page.locator('.map-frame[data-shown]').waitFor({ timeout: 60_000 });
    for (let run = 0; run < runs; run += 1) {
      const name = `Bbb Bench ${run}`;
      const position = {
        latitude: 56 + run * 0.01,
        longitude: 3,
        uncertaintyMetres: 8,
        how: 'measured on site',
      } as const;
      const since = performance.now();
      await Promise.all([
        push(apiaryProposal(newId(), 'quillmoor', { name, position })),
        page.waitForFunction(
          (wanted) => {
            const { map: shown } = document.querySelector('.map-frame') as unknown as {
              map?: { queryRenderedFeatures(options: object): { properties: { name: string } }[] };
            };
            return shown?.queryRenderedFeatures({ layers: ['marks'] }).some((one) => one.properties.name === wanted);
          },
          name,
          { polling: 20, timeout: 30_000 },
        ),
      ]);
      map.push(performance.now() - since);
    }
    report('a new apiary, from the push to the list', list);
    report('a visit begun, from the push to what is owed', owed);
    report('a new apiary, from the push to the map as drawn', map);
  } finally {
    await browser.close();
  }
} finally {
  await server.stop();
  rmSync(folder, { recursive: true, force: true });
}
