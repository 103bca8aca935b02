import type { Page } from '@playwright/test';
import { expect, picture, test } from './journey.ts';
import { signIn } from './sign-in.ts';

async function atTheDesk(page: Page): Promise<void> {
  await page.goto('/');
  await signIn(page, 'wilda@quillmoor.example');
  await expect(page.getByRole('link', { name: 'Questions' })).toBeVisible({ timeout: 60_000 });
}

/**
 * An examination of the demo district in which something was seen, but neither a scale nor the thread of a rope test, so
 * that both can be tried on a copy; by its address.
 */
async function examinationWithSigns(page: Page): Promise<string> {
  const found = await page.evaluate(async () => {
    const { visits } = await (await fetch('/api/visits?limit=50')).json();
    for (const { visit } of visits) {
      const { colonies } = await (await fetch(`/api/visits/${visit}`)).json();
      for (const { colony, examinations } of colonies) {
        for (const { written, body } of examinations) {
          const seen = body.signs.filter((one: { outcome: string }) => one.outcome === 'seen');
          const isRopy = body.ropeTests.some((one: { threadMillimetres: number }) => one.threadMillimetres > 0);
          if (seen.length > 0 && !isRopy && !seen.some((one: { sign: string }) => one.sign.startsWith('scale.'))) {
            return `/district/reasoning/colony/${colony}/examination/${written.entry}`;
          }
        }
      }
    }
    return null;
  });
  expect(found, 'the demo district holds an examination with signs').not.toBeNull();
  return found as string;
}

test('the office reads the same reasoning on an examination of the past, and tries another answer that records nothing', async ({
  page,
}) => {
  test.setTimeout(240_000);
  await atTheDesk(page);
  const address = await examinationWithSigns(page);
  await page.goto(address);
  await expect(page.getByRole('heading', { name: 'What it could be, in order' })).toBeVisible({ timeout: 30_000 });
  await expect(page.getByText(/^What follows was computed now: reasoning version \d/)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Change it' })).toHaveCount(0);
  await page.getByText('What was known before the look').click();
  await picture(page, 'reasoning-office-known');

  // A copy to think with. Every request it makes is watched: none writes.
  const writes: string[] = [];
  page.on('request', (request) => {
    if (request.method() !== 'GET') writes.push(`${request.method()} ${request.url()}`);
  });
  const before = await page.locator('.reasoning-page .rows').first().textContent();
  await page.getByRole('button', { name: 'Try another answer' }).click();
  await expect(page.getByText('A copy to think with. Nothing of it is recorded.')).toBeVisible();
  await page.getByLabel('Rope test: thread in mm, on moist brown remains').selectOption('25');
  await page.getByLabel('Sign', { exact: true }).selectOption('scale.hard_lower');
  await page.getByRole('group', { name: 'Signs' }).getByLabel('seen', { exact: true }).check();
  await expect(page.getByText('2 answers changed.')).toBeVisible();
  await expect(page.getByText(/^With the copy: .*American foulbrood.*As recorded: /)).toBeVisible({ timeout: 30_000 });
  await page.getByRole('button', { name: 'Back to what was recorded' }).click();
  await expect(page.locator('.reasoning-page .rows').first()).toHaveText(before ?? '');
  expect(writes).toEqual([]);

  // The address stands by itself and in German; a stranger's address says so.
  await page.evaluate(() => localStorage.setItem('combside.preferences', JSON.stringify({ language: 'de' })));
  await page.reload();
  await expect(page.getByRole('heading', { name: 'Was es sein könnte, der Reihe nach' })).toBeVisible({
    timeout: 30_000,
  });
  expect(await page.getByRole('main').textContent()).not.toMatch(/\b(signs|reasoning|casework)\.[a-z]/);
  await page.goto(address.replace(/[^/]+$/, '01900000-0000-7000-8000-000000000000'));
  await expect(page.getByText(/^Eine solche Untersuchung ist nicht angekommen/)).toBeVisible();
});

test('the note of a colony leads to the whole reasoning, and back', async ({ page }) => {
  await atTheDesk(page);
  const address = await examinationWithSigns(page);
  const colony = /colony\/([^/]+)/.exec(address)?.[1];
  await page.goto(`/district/colony/${colony}`);
  await page.getByRole('link', { name: 'The whole reasoning on this look' }).first().click();
  await expect(page).toHaveURL(/\/district\/reasoning\/colony\//);
  await page.getByRole('link', { name: 'Back to the visit' }).click();
  await expect(page).toHaveURL(/\/district\/visit\//);
});
