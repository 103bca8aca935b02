import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, installed, judge, test } from './journey.ts';
import { startPlantedServer } from './planted-server.ts';
import type { RunningServer } from './server.ts';
import { signIn } from './sign-in.ts';

const built = join(import.meta.dirname, '../dist');

/** The program as the office serves it, in a folder of its own, where a newer version can be put in its place. */
class Program {
  readonly folder = mkdtempSync(join(tmpdir(), 'combside-program-'));

  constructor() {
    cpSync(built, this.folder, { recursive: true, filter: (name) => !name.endsWith('.map') });
  }

  /** A newer version: the page says which it is, and the service worker lists the changed page. */
  renew(version: string): void {
    this.#change('index.html', (page) => page.replace('</head>', `<meta name="version" content="${version}"></head>`));
    this.#change('sw.js', (worker) => {
      const listed = /(\{[^{}]*index[.]html[^{}]*\})/.exec(worker)?.[1] ?? '';
      return worker.replace(
        listed,
        listed.replace(/revision"?:\s*"[^"]+"/, (said) => said.replace(/"[^"]+"$/, `"${version}"`)),
      );
    });
  }

  #change(name: string, change: (text: string) => string): void {
    const path = join(this.folder, name);
    const before = readFileSync(path, 'utf8');
    const after = change(before);
    if (after === before) throw new Error(`${name} could not be made newer`);
    writeFileSync(path, after);
    // A build lays the packed forms of its own files; without them a file is sent as it is.
    for (const packed of ['.br', '.gz']) rmSync(`${path}${packed}`, { force: true });
  }

  remove(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}

const versionOf = (page: Page) =>
  page.evaluate(() => document.querySelector('meta[name=version]')?.getAttribute('content') ?? 'first');

/** Has the browser look for a newer program now. @returns what became of the one it found */
const lookForNewer = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    const found = new Promise<string>((resolve) => {
      registration.addEventListener('updatefound', () => {
        const worker = registration.installing;
        worker?.addEventListener('statechange', () => resolve(worker.state));
      });
    });
    await registration.update().catch(() => undefined);
    return Promise.race([found, new Promise<string>((resolve) => setTimeout(() => resolve('nothing newer'), 10_000))]);
  });

const waiting = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    return registration.waiting !== null || registration.installing !== null;
  });

const versionTest = test.extend<{ program: Program; own: RunningServer }>({
  // biome-ignore lint/correctness/noEmptyPattern: the form Playwright asks for
  program: async ({}, use) => {
    const program = new Program();
    await use(program);
    program.remove();
  },
  own: [
    async ({ program }, use) => {
      const server = await startPlantedServer(['--web', program.folder]);
      await use(server);
      await server.remove();
    },
    { timeout: 240_000 },
  ],
});

versionTest(
  'a newer program never takes over while a visit is open, and is offered when it has ended',
  async ({ page, context, program, own }) => {
    test.setTimeout(180_000);
    await page.goto(own.address);
    await signIn(page, 'ines@quillmoor.example');
    await page.getByRole('link', { name: 'At the hive' }).click();
    await expect(page.getByText('at the office')).toBeVisible({ timeout: 60_000 });
    await installed(page);
    await page.getByRole('link', { name: /^Hazel Bank/ }).click();
    await page.getByRole('button', { name: '6, as registered' }).click();
    await page.getByRole('radio', { name: 'with consent', exact: true }).click();
    await page.getByRole('button', { name: 'Start the visit' }).click();
    await expect(page.getByText('0 of 6')).toBeVisible();
    const visit = page.url().replace(/\/(plan|walk)$/, '');
    // The worker is told of the open visit a moment after the screen.
    await expect
      .poll(() => page.evaluate(async () => (await caches.open('combside-flags')).match('/visit-open').then(Boolean)))
      .toBe(true);

    // The office puts a newer program in place. The browser finds it, and it is turned away.
    program.renew('second');
    expect(await lookForNewer(page)).toBe('redundant');
    expect(await waiting(page)).toBe(false);
    await page.reload();
    await expect(page.getByText('0 of 6')).toBeVisible();
    expect(await versionOf(page)).toBe('first');

    // Not even when the page is closed and opened again, which would let a waiting program take over.
    await page.close();
    const again = await context.newPage();
    await again.goto(visit);
    await expect(again.getByText('0 of 6')).toBeVisible();
    expect(await versionOf(again)).toBe('first');
    // Opening the page makes the browser look again; what it found is turned away once more, which takes a moment.
    await expect.poll(() => waiting(again), { timeout: 30_000 }).toBe(false);
    expect(await versionOf(again)).toBe('first');
    await again.getByRole('button', { name: 'Open colony 1' }).click();
    await again.getByRole('button', { name: /^Nothing seen/ }).click();
    await again.getByRole('button', { name: 'Close colony 1' }).click();
    await expect(again.getByText('1 of 6')).toBeVisible();
    await expect(again.getByText('A new version is ready.')).toBeHidden();

    // The visit ends: now it is offered, and still not taken by itself.
    await again.getByRole('link', { name: 'End the visit' }).click();
    const rain = again.getByRole('radio', { name: 'Weather', exact: true });
    await expect(rain.first()).toBeVisible();
    for (let place = 0; place < (await rain.count()); place++) await rain.nth(place).click();
    await again.getByRole('button', { name: 'End it and make the written result' }).click();
    await expect(again.getByRole('heading', { name: 'Written result' })).toBeVisible();
    const take = again.getByRole('button', { name: 'Change to it now' });
    await expect(take).toBeVisible({ timeout: 30_000 });
    expect(await versionOf(again)).toBe('first');
    await judge(again, 'phone/new-version/en');

    // Taken when pressed; what was recorded is there.
    await take.click();
    await expect.poll(() => versionOf(again).catch(() => 'changing'), { timeout: 30_000 }).toBe('second');
    await expect(again.getByRole('heading', { name: 'Written result' })).toBeVisible();
    await again.goto(visit);
    await expect(again.getByText('1 of 6')).toBeVisible();
  },
);
