// Playwright's own test, not the journeys': these need a browser but no server.
import { createHash } from 'node:crypto';
import { expect, type Page, test } from '@playwright/test';
import { bundled, openBundled } from './bundled.ts';
import type { Acceptance } from './record-acceptance.page.ts';

type InPage = typeof globalThis & { readonly acceptance: Acceptance };

let code = '';
test.beforeAll(async () => {
  code = await bundled('record-acceptance.page.ts');
});
test.beforeEach(({ page }) => openBundled(page, code));

async function anotherTab(page: Page): Promise<Page> {
  const tab = await page.context().newPage();
  await openBundled(tab, code);
  return tab;
}

test('the acceptance suites of the record hold in the browser', async ({ page }) => {
  const names = await page.evaluate(() => (globalThis as InPage).acceptance.names());
  expect(names.length).toBeGreaterThan(20);
  for (const [suite, name] of names) {
    await test.step(`${suite}: ${name}`, () =>
      page.evaluate(([s, n]) => (globalThis as InPage).acceptance.run(s, n), [suite, name] as const));
  }
});

test('two tabs appending a thousand entries leave one chain', async ({ page }) => {
  const other = await anotherTab(page);
  const [here, there] = await Promise.all(
    [page, other].map((tab) => tab.evaluate(() => (globalThis as InPage).acceptance.append('two tabs', 500))),
  );
  const { chain, devices, outbox } = await page.evaluate(() =>
    (globalThis as InPage).acceptance.wholeChain('two tabs'),
  );
  expect(devices).toBe(1);
  expect(outbox).toBe(1001);
  expect(chain.map(({ seq }) => seq)).toEqual(Array.from({ length: 1001 }, (_, i) => i + 1));
  for (const [i, link] of chain.entries()) expect(link.prev).toBe(i === 0 ? null : chain[i - 1]?.hash);
  const written = new Set(chain.map(({ id }) => id));
  for (const id of [...(here ?? []), ...(there ?? [])]) expect(written.has(id)).toBe(true);
  expect(written.size).toBe(1001);
  // Both tabs really wrote at the same time: neither wrote all of its entries before the other.
  const mine = new Set(here);
  const turns = chain.slice(1).filter(({ id }, i, list) => i > 0 && mine.has(id) !== mine.has(list[i - 1]?.id ?? ''));
  expect(turns.length).toBeGreaterThan(10);
});

// Each tap as it is stored and after, and the closing as it is stored and after: twenty-six points.
const steps = [
  ...Array.from({ length: 12 }, (_, i) => [`tapping ${i + 1}`, `tapped ${i + 1}`]).flat(),
  'closing',
  'closed',
];

test('the page is killed at every step of an examination: nothing acknowledged is lost, the draft comes back', async ({
  context,
}) => {
  for (const [number, step] of steps.entries()) {
    await test.step(`killed at: ${step}`, async () => {
      const name = `killed ${number}`;
      const page = await context.newPage();
      let acknowledgedTaps = 0;
      let closed = false;
      const killed = new Promise<void>((resolve) => {
        page.on('crash', () => resolve());
      });
      const session = await context.newCDPSession(page);
      await page.exposeFunction('acknowledged', (told: string) => {
        if (told.startsWith('tapped')) acknowledgedTaps = Number(told.slice('tapped '.length));
        if (told === 'closed') closed = true;
        // A killed page answers nothing more, not even this.
        if (told === step) void session.send('Page.crash').catch(() => undefined);
        return told === step ? new Promise<void>(() => {}) : undefined;
      });
      await openBundled(page, code);
      page.evaluate((n) => (globalThis as InPage).acceptance.examine(n), name).catch(() => undefined);
      await killed;
      await page.close();

      const next = await context.newPage();
      await openBundled(next, code);
      const found = await next.evaluate((n) => (globalThis as InPage).acceptance.afterKill(n), name);
      await next.close();
      expect(found.outbox).toBe(found.chain);
      if (closed) expect(found.written).toHaveLength(1);
      if (found.written.length === 1) {
        // Sealed: all twelve taps, and the draft is gone with it.
        expect(found.written).toEqual(['1 2 3 4 5 6 7 8 9 10 11 12']);
        expect(found.taps).toBe(0);
      } else {
        expect(found.written).toEqual([]);
        expect(found.taps).toBeGreaterThanOrEqual(acknowledgedTaps);
      }
    });
  }
});

test('an older tab lets go when a newer program changes the shape of the database', async ({ page }) => {
  const old = await anotherTab(page);
  await old.evaluate(() => (globalThis as InPage).acceptance.openOlder('shape'));
  expect(await page.evaluate(() => (globalThis as InPage).acceptance.openNewer('shape'))).toBe(2);
  expect(await old.evaluate(() => (globalThis as InPage).acceptance.closedBecause())).toBe('newer program');
});

test('a tab that will not let go is told of, and opening goes on once it does', async ({ page }) => {
  await page.evaluate(() => (globalThis as InPage).acceptance.holdFast('held'));
  expect(await page.evaluate(() => (globalThis as InPage).acceptance.openTold('held'))).toEqual(['blocked', 'opened']);
});

test('the signing key cannot be read out', async ({ page }) => {
  const answer = await page.evaluate(() => (globalThis as InPage).acceptance.keyCannotBeRead('keys'));
  expect(answer).toBe('InvalidAccessError');
});

test('a photograph is kept once under its hash, waits until it is sent, and stays', async ({ page }) => {
  const found = await page.evaluate(() => (globalThis as InPage).acceptance.photograph('photographs'));
  expect(found.kept.hash).toBe(sha256('010203fa'));
  expect(found).toMatchObject({
    same: true,
    bytes: [1, 2, 3, 250],
    upload: '/api/uploads/1',
    stillThere: 4,
    nobody: null,
  });
  expect(found.waiting).toEqual([found.kept.hash]);
  expect(found.waitingAfter).toEqual([]);
});

test('what another tab writes shows in this one', async ({ page }) => {
  const seen = await page.evaluate(() => (globalThis as InPage).acceptance.seesElsewhere('elsewhere'));
  expect(seen).toEqual({ told: true, rows: 1, label: '1' });
});

function sha256(hex: string): string {
  return createHash('sha256').update(Buffer.from(hex, 'hex')).digest('hex');
}
