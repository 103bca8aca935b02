import type { Page } from '@playwright/test';
import { day, now, zone } from './day.ts';
import { expect, test } from './journey.ts';
import { signIn } from './sign-in.ts';

/** Instant and zone as a page has them. */
const readIn = (page: Page) =>
  page.evaluate(() => ({ at: Date.now(), zone: Intl.DateTimeFormat().resolvedOptions().timeZone }));

test('server, page, worker and a second page opened on the way stand on the journeys’ day, and go on from there', async ({
  page,
  browser,
  server,
}) => {
  const began = now();
  expect(new Date(began).toISOString().slice(0, 10)).toBe(day);
  await page.goto('/');
  await signIn(page, 'ines@quillmoor.example');
  const started = page.waitForEvent('worker', (worker) => worker.url().includes('sync-worker'));
  await page.getByRole('link', { name: 'At the hive' }).click();
  const inWorker = await (await started).evaluate(() => Date.now());
  const inPage = await readIn(page);
  const second = await browser.newContext({ baseURL: server.address });
  const elsewhere = await second.newPage();
  await elsewhere.goto('/');
  const inSecond = await readIn(elsewhere);
  await second.close();
  const hello = (await (await page.request.get('/api/hello')).json()) as { now: string };
  const ended = now();

  expect([inPage.zone, inSecond.zone]).toEqual([zone, zone]);
  for (const [where, at] of Object.entries({ inWorker, inPage: inPage.at, inSecond: inSecond.at })) {
    expect(at, where).toBeGreaterThanOrEqual(began);
    expect(at, where).toBeLessThanOrEqual(ended);
  }
  // The server's clock begins a little later than the journeys', when its process does.
  expect(hello.now.slice(0, 10)).toBe(day);
  expect(Date.parse(hello.now)).toBeLessThanOrEqual(ended);
  // Without an argument a date is now, with one it is what was said.
  const dates = await page.evaluate(() => [new Date() instanceof Date, new Date(0).toISOString()]);
  expect(dates).toEqual([true, '1970-01-01T00:00:00.000Z']);
});
