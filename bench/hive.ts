/**
 * What an inspector waits for at the hive, on this machine: `npx tsx bench/hive.ts`. Build the web app first.
 *
 * A real server, a real Chromium at 390 x 844, the real program. Timed in the page itself: from the navigation until
 * today's visits stand on the screen, with 5,000 apiaries and 30,000 colonies more in the device's store, without a
 * network; and from a tap until the screen says "saved here", which it says after a strictly durable commit.
 * Goal: the hive side opens within 2 s at a quarter of the processor's speed.
 */
import { cpus, loadavg } from 'node:os';
import { type BrowserContext, chromium, type Page } from '@playwright/test';
import { browserFlags, findBrowser } from '../packages/web/e2e/browser.ts';
import { bundled } from '../packages/web/e2e/bundled.ts';
import { scriptsOfFirstLoad } from '../packages/web/e2e/first-load.ts';
import { serverFolder, startServer } from '../packages/web/e2e/server.ts';
import { signIn } from '../packages/web/e2e/sign-in.ts';
import type { RecordBench } from './record.page.ts';

const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, locale: 'en-GB' } as const;
const runs = 5;
const taps = 60;

function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

function say(what: string, value: string): void {
  console.log(`${what.padEnd(72)} ${value.padStart(12)}`);
}

const ms = (value: number) => `${value.toFixed(value < 10 ? 1 : 0)} ms`;

async function throttle(page: Page, rate: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate });
}

async function comeIn(page: Page): Promise<void> {
  await page.goto('/');
  await signIn(page, 'ines@quillmoor.example');
  await page.getByRole('link', { name: 'At the hive' }).waitFor();
}

const shown = (page: Page) => page.getByText(/visits? planned/).waitFor({ timeout: 120_000 });

/** Milliseconds from the navigation until today's visits are drawn, as the page's own clock has it. */
async function opening(context: BrowserContext, rate: number): Promise<number> {
  const page = await context.newPage();
  await throttle(page, rate);
  await page.addInitScript(() => {
    new MutationObserver((_, watch) => {
      if (!/visits? planned/.test(document.body?.textContent ?? '')) return;
      watch.disconnect();
      // The frame after the change is the one in which it is seen.
      requestAnimationFrame(() => Object.assign(globalThis, { shownAt: performance.now() }));
    }).observe(document, { childList: true, subtree: true, characterData: true });
  });
  await page.goto('/hive');
  await page.waitForFunction(() => 'shownAt' in globalThis, undefined, { timeout: 120_000 });
  const at = await page.evaluate(() => (globalThis as unknown as { shownAt: number }).shownAt);
  await page.close();
  return at;
}

/** Milliseconds from each of many taps until the screen says that it is saved. */
function acknowledgements(page: Page, count: number): Promise<number[]> {
  return page.evaluate(async (count) => {
    const keys = ['Torch', 'Shade'].map((name) => {
      const key = [...document.querySelectorAll('[role=radio]')].find((one) => one.textContent === name);
      if (!(key instanceof HTMLElement)) throw new Error(`no key ${name}`);
      return key;
    });
    const status = document.querySelector('.hive-head [role=status]');
    if (!status) throw new Error('no word on what is saved');
    const times: number[] = [];
    for (let turn = 0; turn < count; turn++) {
      const begun = performance.now();
      keys[turn % 2]?.click();
      // A pressed key is drawn when its handler has returned.
      await null;
      if (status.textContent === 'saved here') throw new Error('saved was said before it was stored');
      await new Promise<void>((resolve) => {
        const watch = new MutationObserver(() => {
          if (status.textContent !== 'saved here') return;
          watch.disconnect();
          resolve();
        });
        watch.observe(status, { characterData: true, childList: true, subtree: true });
      });
      times.push(performance.now() - begun);
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
    return times;
  }, count);
}

console.log(
  `Node ${process.version}, ${cpus().length} processors, load ${loadavg()
    .map((one) => one.toFixed(1))
    .join(' ')}`,
);
const server = await startServer(serverFolder(), () => ['--demo']);
const browser = await chromium.launch({ executablePath: await findBrowser(), args: browserFlags() });
try {
  const context = await browser.newContext({ ...phone, baseURL: server.address, bypassCSP: true });
  const page = await context.newPage();
  await comeIn(page);

  const fresh = await browser.newContext({
    ...phone,
    baseURL: server.address,
    serviceWorkers: 'block',
    storageState: await context.storageState({ indexedDB: true }),
  });
  const first = await fresh.newPage();
  const sizes = await scriptsOfFirstLoad(first, '/hive', () => shown(first));
  const bytes = [...sizes.values()].reduce((sum, size) => sum + size, 0);
  say(`script of the first load, as gzip, in ${sizes.size} files`, `${(bytes / 1000).toFixed(1)} kB`);
  await fresh.close();

  // The demo district arrives and the program installs itself; then the big district beside it.
  await page.goto('/hive');
  await shown(page);
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
  await page.reload();
  await shown(page);
  const person = await page.evaluate(
    async () => ((await (await fetch('/api/me')).json()) as { person: string }).person,
  );
  await context.setOffline(true);
  for (const rate of [1, 4]) {
    const times: number[] = [];
    for (let run = 0; run < runs; run++) times.push(await opening(context, rate));
    say(`hive side opened with the demo district alone, speed / ${rate}`, ms(quantile(times, 0.5)));
  }
  await page.goto('/front');
  await page.addScriptTag({ type: 'module', content: await bundled('../../../bench/record.page.ts') });
  await page.waitForFunction(() => 'ready' in globalThis);
  await page.evaluate(async (name) => {
    const { record } = globalThis as unknown as { record: RecordBench };
    await record.fillDistrict(5000, 6, name);
  }, `combside ${person}`);
  await page.close();
  for (const rate of [1, 4]) {
    const times: number[] = [];
    for (let run = 0; run < runs; run++) times.push(await opening(context, rate));
    say(`hive side opened, 5,000 apiaries and 30,000 colonies more, speed / ${rate}`, ms(quantile(times, 0.5)));
    say(`  slowest of ${runs}`, ms(Math.max(...times)));
  }

  const field = await context.newPage();
  await field.goto('/hive');
  await field.getByRole('link', { name: /^Hazel Bank/ }).click();
  await field.getByRole('button', { name: '6, as registered' }).click();
  await field.getByRole('radio', { name: 'with consent', exact: true }).click();
  await field.getByRole('button', { name: 'Start the visit' }).click();
  await field.getByRole('button', { name: 'Open colony 1' }).click();
  await field.getByRole('button', { name: 'Less than that' }).click();
  await field.getByRole('radio', { name: 'Torch', exact: true }).waitFor();
  for (const rate of [1, 4]) {
    await throttle(field, rate);
    const times = await acknowledgements(field, taps);
    say(`tap to "saved here" in that store, speed / ${rate}: median of ${taps}`, ms(quantile(times, 0.5)));
    say('  95th percentile', ms(quantile(times, 0.95)));
  }
} finally {
  await browser.close();
  await server.remove();
}
