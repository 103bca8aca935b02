import type { Page } from '@playwright/test';
import { dayBefore } from './day.ts';
import { expect, judge, test } from './journey.ts';
import { signIn } from './sign-in.ts';

// Opened once, with a network: nothing is stored for use without one.
test.use({ serviceWorkers: 'block' });

async function atColony(page: Page, apiary: RegExp): Promise<void> {
  await page.goto('/');
  await signIn(page, 'ines@quillmoor.example');
  await page.getByRole('link', { name: 'At the hive' }).click();
  await page.getByRole('link', { name: apiary }).click({ timeout: 60_000 });
  await page.getByRole('button', { name: /as registered$/ }).click();
  await page.getByRole('radio', { name: 'with consent', exact: true }).click();
  await page.getByRole('button', { name: 'keeper', exact: true }).click();
  await page.getByRole('button', { name: 'Start the visit' }).click();
  await page.getByRole('button', { name: /^Open colony/ }).click();
}

test('the reasoning at the comb: order, why, what next, what was missed, what was known, what the law asks', async ({
  page,
}) => {
  test.setTimeout(240_000);
  await atColony(page, /^Hazel Bank/);
  await page.getByRole('button', { name: 'Signs', exact: true }).click();
  await page.getByRole('tab', { name: 'Cappings' }).click();
  await page.getByRole('button', { name: /^Sunken cappings not looked/ }).click();
  await page.getByRole('radio', { name: '11–100' }).click();
  await page.getByRole('tab', { name: 'Contents' }).click();
  await page.getByRole('button', { name: /^Coffee-brown remains not looked/ }).click();
  const line = page.locator('.reasoning-line');
  await expect(line).toContainText('American foulbrood');
  await expect(line).toContainText('Next: Rope test');
  await line.click();

  // The line stays in sight; the page is in words, with no number and nothing of other keepers on it.
  await expect(line).toContainText('American foulbrood');
  await expect(page.getByRole('heading', { name: 'What it could be, in order' })).toBeVisible({ timeout: 30_000 });
  await expect(page.getByRole('heading', { name: 'For it' })).toBeVisible();
  await expect(page.getByRole('heading', { name: 'What this look could have missed' })).toBeVisible();
  await expect(page.getByRole('heading', { name: 'What the law says follows' })).toBeVisible();
  await expect(page.getByText('Invented jurisdiction: these rules hold nowhere.')).toBeVisible();
  await expect(page.getByText('%')).toHaveCount(0);
  await expect(page.getByText(/in the district|one with a case/)).toHaveCount(0);
  await expect(page.locator('.check-step').first().locator('svg')).toBeVisible();

  // Numbers one tap deeper, each marked.
  await page.getByRole('button', { name: 'Show the numbers' }).click();
  await expect(page.getByText('expert band', { exact: true })).toBeVisible();
  await expect(page.locator('.condition-bar')).toHaveCount(14);
  await expect(page.locator('.condition-bars')).not.toContainText(/\b100%|\(0%/);
  await judge(page, 'phone/reasoning-numbers/en');
  await page.getByRole('button', { name: 'Hide the numbers' }).click();

  // Sources one tap away.
  const sources = page.getByRole('button', { name: 'Sources' }).first();
  await sources.click();
  await expect(sources).toHaveAttribute('aria-expanded', 'true');
  await expect(page.locator('ul.quiet li').first()).toContainText(/\w+ .*\(/);

  // What was known; what concerns others a tap further; and a change with its reason, as a tap that can be undone.
  await page.getByText('What was known before the look').click();
  await expect(page.getByText(/of this apiary is (on record as )?suspect|this apiary is not known/)).toBeVisible();
  await page.getByText('What concerns other keepers').click();
  await expect(page.getByText('Not for the keeper’s eyes, and on no paper handed over.')).toBeVisible();
  await page.getByText('Change what is believed beforehand').click();
  await page.getByLabel('Condition').selectOption('chalkbrood');
  await expect(page.getByRole('button', { name: 'Change it' })).toBeDisabled();
  await page.getByLabel('Chance before the look, per cent').fill('40');
  await page.getByLabel('Why', { exact: true }).fill('Cold, wet spring in this valley');
  await judge(page, 'phone/reasoning-known/en');
  await page.getByRole('button', { name: 'Change it' }).click();
  await expect(page.getByText('Changed: Cold, wet spring in this valley')).toBeVisible();
  await page.getByRole('button', { name: 'Take the change of Chalkbrood back' }).click();
  await expect(page.getByText('Changed: Cold, wet spring in this valley')).toBeHidden();
  await page.getByRole('radio', { name: 'Spores found' }).click();
  await expect(
    page.getByText('Spores of American foulbrood were found in honey or bees of this operation.'),
  ).toBeVisible();

  // What would follow, were it suspected: duties with their times.
  await page.getByText('What would follow, were American foulbrood suspected here').click();
  await expect(page.getByText('report to the authority')).toBeVisible();

  // A kit read here, with batch and expiry; an expired one says that it does not count.
  await page.getByRole('button', { name: /^Back to colony/ }).click();
  await page.getByRole('button', { name: 'Rope test, finds, photographs' }).click();
  await page.getByRole('radio', { name: 'Pen-side kit, American foulbrood' }).click();
  await page.getByRole('radio', { name: 'positive', exact: true }).click();
  await page.getByLabel('Batch, as printed on the kit').fill('INV-0042');
  await page.getByLabel('Last day of use printed on the kit').fill(dayBefore(1));
  await expect(page.getByText(/past its last day/)).toBeVisible();
  await judge(page, 'phone/test-read-here/en');
  await page.getByRole('button', { name: 'Keep this test' }).click();
  await expect(page.getByText(/batch INV-0042 · use by/)).toBeVisible();
  await page.getByRole('button', { name: /^Back to colony/ }).click();
  await line.click();
  await page.getByText(/^Entered, and not counted/).click();
  await expect(page.getByText(/^Pen-side kit, American foulbrood: not counted/)).toBeVisible();
});
