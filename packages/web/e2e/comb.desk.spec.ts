import type { Page } from '@playwright/test';
import { combPhotograph, frameUnderBees } from './comb-picture.ts';
import { expect, picture, test } from './journey.ts';
import { photographedVisit } from './photographed-visit.ts';
import { signIn } from './sign-in.ts';

const comb = (page: Page) => page.getByRole('application');
test('stored photographs of combs are read by the office’s machine, looked at, corrected by keys, and kept', async ({
  page,
  playwright,
  server,
}) => {
  const { file } = await combPhotograph(840, 1080);
  const phone = await playwright.request.newContext({ baseURL: server.address });
  const { visit, colony } = await photographedVisit(phone, server.address, [file, frameUnderBees()]);
  await phone.dispose();
  await page.goto('/');
  await signIn(page, 'wilda@quillmoor.example');
  await expect(page.getByRole('link', { name: 'Questions' })).toBeVisible({ timeout: 60_000 });

  // From the visit, where each photograph says how it stands, to the list.
  await page.goto(`/district/visit/${visit}`);
  await expect(page.getByText('Not read yet')).toHaveCount(2);
  await page.getByRole('link', { name: 'Photographs of combs of this visit' }).click();
  const lines = page.getByRole('list', { name: 'Photographs, newest first' }).getByRole('article');
  await expect(lines).toHaveCount(2);
  await page
    .getByRole('checkbox', { name: /^Choose the photograph of colony 1/ })
    .first()
    .check();
  await expect(page.getByRole('button', { name: 'Have 1 photograph read' })).toBeVisible();
  await page.getByRole('button', { name: 'Choose all not read yet' }).click();
  await page.getByRole('button', { name: 'Have 2 photographs read' }).click();

  // The page follows by itself.
  await expect(page.getByText(/This page follows by itself/)).toBeVisible();
  await expect(lines.filter({ hasText: 'Read by the machine, nobody has looked' })).toHaveCount(1, { timeout: 40_000 });
  await expect(lines.filter({ hasText: 'Cannot be read' })).toContainText('let the comb fill the picture', {
    timeout: 40_000,
  });
  await expect(page.getByText(/This page follows by itself/)).toHaveCount(0);
  await page.getByRole('button', { name: 'Choose all not read yet' }).click();
  await expect(page.getByText('There is none here that is not read yet.')).toBeVisible();
  await picture(page, 'combs');

  // Looked at: one cell corrected by keys. The page dies, and what was said is there again.
  await page.getByLabel('Show').selectOption('Read by the machine, nobody has looked');
  await expect(lines).toHaveCount(1);
  await lines.getByRole('link').click();
  await expect(comb(page)).toBeVisible({ timeout: 30_000 });
  await expect(page.getByText(/^Read by the office’s machine .* Nobody has looked at it/)).toBeVisible();
  await comb(page).focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('7');
  const inHand = page.locator('.comb-desk [role=status]').first();
  await expect(inHand).toContainText('Pollen, by your look.');
  await page.getByLabel('Frame').selectOption('4');
  await page.getByLabel('Side').selectOption('A');
  await expect(page.getByText('What you say stays on this computer until it is written.')).toBeVisible();
  await page.reload();
  await expect(page.getByText('What you said here before is back.')).toBeVisible();
  await expect(page.getByText('1 cell corrected by hand')).toBeVisible();
  await expect(page.getByLabel('Frame')).toHaveValue('4');
  await expect(comb(page)).toBeVisible();

  // Kept, and it stands at the colony.
  await page.getByLabel('I looked and agree').check();
  await page.getByRole('button', { name: 'Keep it, and let it count' }).click();
  await expect(page.getByText(/^Kept, photographed .* Kept by Wilda/)).toBeVisible({ timeout: 30_000 });
  await expect(page.getByText('1 cell corrected by hand')).toBeVisible();
  await expect(page.getByText('What you said here before is back.')).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Write the correction' })).toHaveCount(0);

  // A correction of what is kept is a draft too, until it is written.
  await comb(page).focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('7');
  await page.getByLabel('Why is it corrected?').fill('looked again');
  await expect(page.getByText('What you say stays on this computer until it is written.')).toBeVisible();
  await page.reload();
  await expect(page.getByLabel('Why is it corrected?')).toHaveValue('looked again');
  await page.getByRole('button', { name: 'Write the correction' }).click();
  await expect(page.getByText(/^Corrected by Wilda .*: looked again$/)).toBeVisible({ timeout: 30_000 });
  await expect(page.getByText('2 cells corrected by hand')).toBeVisible();

  await page.goto(`/district/colony/${colony}`);
  await expect(page.getByText('Reading kept, looked at and agreed to')).toBeVisible();
  await expect(page.getByText('Cannot be read')).toBeVisible();
  await picture(page, 'comb-at-colony');
});
