import type { Page } from '@playwright/test';
import { combPhotograph, frameUnderBees } from './comb-picture.ts';
import { doubleTheText, expect, expectNoAxeViolations, picture, test } from './journey.ts';

test.use({ servedFor: 'comb' });

const saved = (page: Page) => expect(page.getByRole('status').filter({ hasText: 'saved here' })).toBeVisible();
const comb = (page: Page) => page.getByRole('application');

/** Taps a place of the upright photograph, in its pixels. */
async function tapAt(page: Page, at: { x: number; y: number }, width: number): Promise<void> {
  const box = await comb(page).boundingBox();
  if (!box) throw new Error('the comb is not in sight');
  const scale = box.width / width;
  await comb(page).tap({ position: { x: at.x * scale, y: at.y * scale } });
}

test('a comb photograph is read without a network, corrected, and kept', async ({ page }) => {
  test.setTimeout(180_000);
  const { file, painted, width } = await combPhotograph();
  await page.goto('/');
  await page.getByLabel('E-mail').fill('ines@quillmoor.example');
  await page.getByLabel('Password').fill('quillmoor-comb-7');
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.getByRole('link', { name: 'At the hive' }).click();
  await expect(page.getByText('at the office')).toBeVisible({ timeout: 60_000 });
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
  await page.reload();
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  await page.context().setOffline(true);
  await page.getByRole('link', { name: /^Hazel Bank/ }).click();
  await page.getByRole('button', { name: '6, as registered' }).click();
  await page.getByRole('radio', { name: 'with consent', exact: true }).click();
  await page.getByRole('button', { name: 'Start the visit' }).click();
  await page.getByRole('button', { name: 'Open colony 1' }).click();
  await page.getByRole('button', { name: 'Rope test, finds, photographs' }).click();
  const more = page.url();

  // A photograph nobody can read says what to do, and stays.
  await page.setInputFiles('input[type=file]', { name: 'hand.jpg', mimeType: 'image/jpeg', buffer: frameUnderBees() });
  await page.getByRole('link', { name: 'Read the comb' }).click();
  await expect(page.getByRole('alert')).toContainText('let the comb fill the picture, and take it again', {
    timeout: 60_000,
  });
  await picture(page, 'comb-refused');
  await expectNoAxeViolations(page);
  await page.getByRole('link', { name: 'Back to colony 1' }).click();

  await page.setInputFiles('input[type=file]', { name: 'comb.jpg', mimeType: 'image/jpeg', buffer: file });
  await expect(page.getByRole('heading', { name: /^2 photographs/ })).toBeVisible();
  await expect(page.getByRole('list', { name: 'Photographs' }).getByRole('img')).toHaveCount(2);
  await picture(page, 'comb-photographs');
  await expectNoAxeViolations(page);
  await page.getByRole('link', { name: 'Read the comb' }).last().click();
  await page.getByRole('button', { name: 'Stop reading' }).click();
  await expect(page.getByText('Stopped. Nothing was read')).toBeVisible();
  await expect(page.getByText('A measurement, not a diagnosis.')).toBeVisible();
  await picture(page, 'comb-stopped');
  await page.getByRole('button', { name: 'Read the comb' }).click();
  await expect(comb(page)).toBeVisible({ timeout: 60_000 });
  await saved(page);

  // What the screen says of sealed brood is what was painted, within a tenth.
  const sealed = painted.cells.filter((cell) => cell.class === 'sealed-worker-brood').length;
  const told = await page
    .getByRole('list', { name: 'Cells of each kind' })
    .getByRole('listitem')
    .filter({ hasText: 'Sealed worker brood' })
    .textContent();
  const counted = Number(told?.replace(/\D/g, ''));
  expect(Math.abs(counted - sealed)).toBeLessThan(0.1 * sealed);
  await expect(page.getByText(/^Solidness of sealed brood: \d+/)).toBeVisible();
  await page.getByText('How solidness is counted').click();
  await picture(page, 'comb-read');
  await expectNoAxeViolations(page);

  // One cell, known to be sealed, under the lens: what the machine read, what the person says, and back again.
  const one = painted.cells.find(
    (cell) =>
      cell.class === 'sealed-worker-brood' &&
      cell.covered === 0 &&
      Math.hypot(cell.x - 0.5 * width, cell.y - 0.6 * width) < 80,
  );
  if (!one) throw new Error('no sealed cell was painted near the middle');
  await tapAt(page, one, width);
  const lens = page.getByRole('region', { name: 'One cell, magnified' });
  const cell = lens.getByRole('status');
  await expect(cell).toContainText('Sealed worker brood. Read by the machine');
  await picture(page, 'comb-lens');
  await expectNoAxeViolations(page);
  await lens.getByRole('radio', { name: /^Pollen/ }).click();
  await expect(cell).toContainText('Pollen, by your look. The machine read: Sealed worker brood.');
  await page.getByRole('button', { name: 'Take back the last word on a cell' }).click();
  await expect(cell).toContainText('Read by the machine');
  await lens.getByRole('radio', { name: /^Pollen/ }).click();
  await saved(page);

  // The page dies; what was said is there again.
  const crashed = page.waitForEvent('crash');
  const session = await page.context().newCDPSession(page);
  session.send('Page.crash').catch(() => undefined);
  await crashed;
  const phone = await page.context().newPage();
  await page.close();
  await phone.goto(more);
  await phone.getByRole('link', { name: 'Go on with the comb reading' }).click();
  await expect(phone.getByText('This reading was begun before.')).toBeVisible();
  await expect(phone.getByText('1 cell corrected by hand')).toBeVisible();

  // Peeled off and back; a capping to look at again comes under the lens.
  const overlay = phone.getByRole('button', { name: 'Show what was read' });
  await expect(phone.locator('.comb-picture .comb-overlay .line').first()).toBeAttached();
  await overlay.click();
  await expect(phone.locator('.comb-picture .comb-overlay')).toHaveCount(0);
  await overlay.click();
  await phone.getByRole('button', { name: /^1: / }).click();
  await expect(phone.getByRole('region', { name: 'One cell, magnified' })).toBeVisible();
  await picture(phone, 'comb-second-look');
  await phone.getByRole('button', { name: 'Back to the whole comb' }).click();
  await phone
    .getByRole('group', { name: /^Frame/ })
    .getByRole('button', { name: /: More$/ })
    .click();
  await phone.getByRole('radio', { name: 'side A', exact: true }).click();
  await phone.getByRole('button', { name: 'I looked and agree' }).click();
  await saved(phone);
  await phone.getByRole('button', { name: 'Keep with this examination' }).click();
  await expect(phone.getByText('A person looked and agreed.')).toBeVisible();
  await expect(phone.getByText('1 cell corrected by hand')).toBeVisible();

  // Large text, dark, full sun, German.
  const kept = phone.url();
  for (const theme of ['dark', 'sun'] as const) {
    await phone.evaluate((value) => document.documentElement.setAttribute('data-theme', value), theme);
    await picture(phone, `comb-${theme}`);
    await expectNoAxeViolations(phone);
  }
  await doubleTheText(phone);
  await picture(phone, 'comb-double');
  expect(await phone.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
  await phone.evaluate(() => localStorage.setItem('combside.preferences', JSON.stringify({ language: 'de' })));
  await phone.goto(kept);
  await expect(phone.getByText('Von einem Menschen angesehen und bestätigt.')).toBeVisible();
  expect(await phone.getByRole('main').textContent()).not.toMatch(/\b(comb|casework|hive)\.[a-z]/);
  await picture(phone, 'comb-german');
  await expectNoAxeViolations(phone);
  await phone.evaluate(() => localStorage.setItem('combside.preferences', JSON.stringify({ language: 'en' })));
});
