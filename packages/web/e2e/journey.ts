import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import { test as base, expect, type Page } from '@playwright/test';
import { type RunningServer, startServer } from './server.ts';

const pictures = join(import.meta.dirname, '../test-results/pictures');

/** What a journey is given: the page, and a server of its own worker, at which relative addresses point. */
interface WorkerFixtures {
  /**
   * Whom the server stands for. A spec that needs the district as it was planted says so with its own name
   * (`test.use({ servedFor: 'kill' })`) and gets a server of its own; the others share one.
   */
  readonly servedFor: string;
  readonly server: RunningServer;
}

/** The test function of every browser journey. Use it in place of Playwright's own. */
export const test = base.extend<object, WorkerFixtures>({
  servedFor: ['every journey', { scope: 'worker', option: true }],
  server: [
    // Playwright reads the first parameter's pattern to learn what a fixture leans on; this one leans on nothing.
    // biome-ignore lint/correctness/noEmptyPattern: the form Playwright asks for
    async ({}, use) => {
      const server = await startServer();
      await use(server);
      await server.remove();
    },
    { scope: 'worker', timeout: 240_000 },
  ],
  baseURL: async ({ server }, use) => use(server.address),
});

export { expect };

/**
 * Demands that the accessibility rules of WCAG 2.2 A and AA, and axe's own best practices, find nothing on the page as it
 * stands.
 *
 * @throws the assertion's error, naming each rule, what it is about and the elements that break it
 */
export async function expectNoAxeViolations(page: Page): Promise<void> {
  // Head and foot stay in sight while the rest moves under them; axe would judge a button half under the foot as small.
  const before = page.viewportSize();
  const height = await page.evaluate(() => document.documentElement.scrollHeight);
  if (before && height > before.height) await page.setViewportSize({ width: before.width, height });
  const { violations, passes } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  if (before) await page.setViewportSize(before);
  const told = violations.map(
    ({ id, help, nodes }) => `${id}: ${help}\n${nodes.map(({ html }) => `    ${html}`).join('\n')}`,
  );
  expect(told, `accessibility of ${page.url()}`).toEqual([]);
  expect(passes.length, 'axe looked at nothing').toBeGreaterThan(0);
}

/**
 * Takes the picture of a whole page, named `<project>-<name>.png`, into `test-results/pictures/`, for a person to look at.
 *
 * @param name what the picture shows, in lower case with hyphens
 */
export async function picture(page: Page, name: string): Promise<void> {
  mkdirSync(pictures, { recursive: true });
  const path = join(pictures, `${base.info().project.name}-${name}.png`);
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
