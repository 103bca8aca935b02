import type { Page } from '@playwright/test';
import { expect, test } from './journey.ts';
import { signIn } from './sign-in.ts';

async function atTheHive(page: Page): Promise<void> {
  await page.goto('/');
  await signIn(page, 'ines@quillmoor.example');
  await page.getByRole('link', { name: 'At the hive' }).click();
  await expect(page.getByText('at the office')).toBeVisible({ timeout: 60_000 });
}

test('a second tap starts no second visit, and two tabs of one colony lose nothing of each other', async ({
  page,
  context,
}) => {
  test.setTimeout(180_000);
  await atTheHive(page);

  // Two taps at once, before the screen can be drawn again.
  await page.getByRole('link', { name: /^Hazel Bank/ }).click();
  await page.getByRole('button', { name: '6, as registered' }).click();
  await page.getByRole('radio', { name: 'with consent', exact: true }).click();
  await page.getByRole('button', { name: 'Start the visit' }).evaluate((button: HTMLButtonElement) => {
    button.click();
    button.click();
  });
  await expect(page.getByText('0 of 6')).toBeVisible();
  await expect(page.getByText('at the office')).toBeVisible({ timeout: 60_000 });
  const visit = new URL(page.url()).pathname.split('/').at(-1);
  const answer = await page.request.get(`/api/visits/${visit}`);
  expect(answer.ok()).toBe(true);
  const { visit: state } = (await answer.json()) as { visit: { visit: { contested: unknown[]; current: unknown } } };
  expect(state.visit.current).not.toBeNull();
  expect(state.visit.contested).toEqual([]);

  // Planned by nobody: the same again, and one visit more, not two.
  const visitsOf = async (apiary: string | undefined) => {
    const asked = await page.request.get(`/api/visits?apiary=${apiary}&limit=50`);
    expect(asked.ok()).toBe(true);
    return ((await asked.json()) as { visits: unknown[] }).visits.length;
  };
  await page.goto('/hive/find');
  await page.locator('a[href*="/start/apiary/"]').first().click();
  await page.waitForURL(/\/start\/apiary\//);
  const apiary = new URL(page.url()).pathname.split('/').at(-1);
  const before = await visitsOf(apiary);
  await page.getByRole('button', { name: 'Or count: More', exact: true }).click();
  await page.getByRole('radio', { name: 'routine visit', exact: true }).click();
  await page.getByRole('radio', { name: 'with consent', exact: true }).click();
  await page.getByRole('button', { name: 'Start the visit' }).evaluate((button: HTMLButtonElement) => {
    button.click();
    button.click();
  });
  await expect(page.getByText(/^0 of \d+$/)).toBeVisible();
  await expect(page.getByText('at the office')).toBeVisible({ timeout: 60_000 });
  expect(await visitsOf(apiary)).toBe(before + 1);

  // Two tabs of one colony: what is tapped in one stands in the other.
  await page.goto(`/hive/visit/${visit}`);
  await page.getByRole('button', { name: 'Open colony 1' }).click();
  await expect(page.getByRole('button', { name: /^Nothing seen/ })).toBeVisible();
  const colony = page.url();
  const other = await context.newPage();
  await other.goto(`${colony}/close`);
  await expect(other.getByRole('button', { name: 'Close colony 1' })).toBeVisible();

  await page.goto(`${colony}/signs`);
  await page.getByRole('tab', { name: 'Cappings' }).click();
  await page.getByRole('button', { name: /^Sunken cappings not looked/ }).click();
  await expect(page.getByRole('status').filter({ hasText: 'saved here' })).toBeVisible();
  // The other tab does not say "nothing seen" any more: it asks what the sign makes one suspect.
  await expect(other.getByRole('radio', { name: 'American foulbrood', exact: true })).toBeVisible();

  // And the other way round, within one list: each adds to what stands.
  await other.goto(`${colony}/signs`);
  await other.getByRole('tab', { name: 'Cappings' }).click();
  await other
    .getByRole('button', { name: /^All others in this group/ })
    .last()
    .click();
  await expect(other.getByRole('status').filter({ hasText: 'saved here' })).toBeVisible();
  await page.reload();
  await page.getByRole('tab', { name: 'Cappings' }).click();
  await expect(page.getByRole('button', { name: /^Sunken cappings seen/ })).toHaveAttribute('aria-pressed', 'true');
  await expect(page.getByRole('button', { name: /cappings not looked/i })).toHaveCount(0);
});
