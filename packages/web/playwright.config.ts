import { defineConfig } from '@playwright/test';
import { browserFlags, findBrowser } from './e2e/browser.ts';
import { zone } from './e2e/day.ts';

/**
 * Browser journeys: `*.phone.spec.ts` run on the phone only, `*.desk.spec.ts` on the desk only, every other `*.spec.ts`
 * on both. Two spec files at a time, each with a server and a database of its own; they share nothing.
 */
export default defineConfig({
  testDir: 'e2e',
  outputDir: 'test-results/runs',
  globalSetup: './e2e/plant-once.ts',
  workers: 2,
  // No second try: a journey that passes only sometimes has found something.
  retries: 0,
  forbidOnly: true,
  timeout: 120_000,
  expect: { timeout: 15_000 },
  reporter: [
    ['list'],
    ['json', { outputFile: process.env.PLAYWRIGHT_JSON_OUTPUT_FILE ?? 'test-results/journeys.json' }],
  ],
  use: {
    launchOptions: { executablePath: await findBrowser(), args: browserFlags() },
    locale: 'en-GB',
    timezoneId: zone,
    screenshot: 'only-on-failure',
    // A trace keeps the page at every step, of every journey, to throw it away when it passed: only when asked for.
    trace: process.env.COMBSIDE_TRACE === '1' ? 'retain-on-failure' : 'off',
    actionTimeout: 30_000,
  },
  projects: [
    {
      name: 'phone',
      testIgnore: '**/*.desk.spec.ts',
      use: { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true },
    },
    {
      name: 'desk',
      testIgnore: '**/*.phone.spec.ts',
      // A desk has a network: the program is stored for use without one only where a journey cuts it (`planning.desk`).
      use: { viewport: { width: 1440, height: 900 }, serviceWorkers: 'block' },
    },
  ],
});
