import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import { type BrowserContext, test as base, expect, type Page } from '@playwright/test';
import { now, setClock } from './day.ts';
import { startPlantedServer } from './planted-server.ts';
import type { Screen } from './screens.ts';
import type { RunningServer } from './server.ts';

const pictures = join(import.meta.dirname, '../test-results/pictures');

/** The server of the spec file whose journeys a worker is making. */
class ServerOfFile {
  #file = '';
  #server: RunningServer | undefined;

  async of(file: string): Promise<RunningServer> {
    if (this.#server && this.#file === file) return this.#server;
    await this.remove();
    this.#server = await startPlantedServer();
    this.#file = file;
    return this.#server;
  }

  async remove(): Promise<void> {
    const ending = this.#server;
    this.#server = undefined;
    await ending?.remove();
  }
}

/**
 * The test function of every browser journey; use it in place of Playwright's own. `server` is a real one of the file's
 * own, with the district as it was planted when its first journey begins, and relative addresses point at it. Server and
 * pages stand on the journeys' day (`day.ts`).
 */
export const test = base.extend<{ server: RunningServer }, { serverOfFile: ServerOfFile }>({
  serverOfFile: [
    // Playwright reads the first parameter's pattern to learn what a fixture leans on; this one leans on nothing.
    // biome-ignore lint/correctness/noEmptyPattern: the form Playwright asks for
    async ({}, use) => {
      const server = new ServerOfFile();
      await use(server);
      await server.remove();
    },
    { scope: 'worker' },
  ],
  server: [async ({ serverOfFile }, use, { file }) => use(await serverOfFile.of(file)), { timeout: 240_000 }],
  baseURL: async ({ server }, use) => use(server.address),
  browser: [
    async ({ browser }, use) => {
      // Also for the second phone or desk that a journey opens by itself.
      const opened = browser.newContext.bind(browser);
      browser.newContext = async (options) => {
        const context = await opened(options);
        // Both at once would count the way to the journeys' day twice.
        if (clockInHand) await context.clock.install({ time: now() });
        else await setClock(context);
        return context;
      };
      await use(browser);
    },
    { scope: 'worker' },
  ],
});

export { expect };

let clockInHand = false;

/**
 * Opens pages whose clock stands at the journeys' day and is pushed on by the journey (`page.clock`), in place of one that
 * goes by itself.
 */
export async function withClockInHand(open: () => Promise<BrowserContext>): Promise<BrowserContext> {
  clockInHand = true;
  try {
    return await open();
  } finally {
    clockInHand = false;
  }
}

/**
 * Demands that the page shows a screen in its language, and that the accessibility rules of WCAG 2.2 A and AA, and axe's
 * own best practices, find nothing on it as it stands. Takes its picture where pictures are asked for.
 *
 * @param screen each of the table is judged once in a run
 * @throws the assertion's error, naming each rule, what it is about and the elements that break it
 */
export async function judge(page: Page, screen: Screen): Promise<void> {
  await picture(page, screen);
  await expect(page.locator('html')).toHaveAttribute('lang', screen.slice(-2));
  // Head and foot stay in sight while the rest moves under them; axe would judge a button half under the foot as small.
  const before = page.viewportSize();
  const height = await page.evaluate(() => document.documentElement.scrollHeight);
  if (before && height > before.height) await page.setViewportSize({ width: before.width, height });
  const { violations, passes } = await new AxeBuilder({ page })
    // Passed rules are counted, not listed element by element.
    .options({ resultTypes: ['violations'] })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  if (before) await page.setViewportSize(before);
  const told = violations.map(
    ({ id, help, nodes }) => `${id}: ${help}\n${nodes.map(({ html }) => `    ${html}`).join('\n')}`,
  );
  expect(told, `accessibility of ${screen} at ${page.url()}`).toEqual([]);
  expect(passes.length, 'axe looked at nothing').toBeGreaterThan(0);
}

/**
 * Where pictures are asked for (`COMBSIDE_PICTURES=1`), takes that of the whole page into `test-results/pictures/`, for a
 * person to look at.
 *
 * @param name what the picture shows, in lower case with hyphens
 */
export async function picture(page: Page, name: string): Promise<void> {
  if (!process.env.COMBSIDE_PICTURES) return;
  mkdirSync(pictures, { recursive: true });
  const path = join(pictures, `${name.replaceAll('/', '-')}.png`);
  await page.screenshot({ path, fullPage: true, animations: 'disabled' });
}

/** Sets the text of the page to twice its size, as a person with weak eyes would. */
export async function doubleTheText(page: Page): Promise<void> {
  await page.addStyleTag({ content: 'html { font-size: 200% !important; }' });
}

/** Waits until the program is installed on this page, and holds it: from here on it opens without a network. */
export async function installed(page: Page): Promise<void> {
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
  await page.reload();
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
}
