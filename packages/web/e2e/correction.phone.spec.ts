import type { Page } from '@playwright/test';
import { doubleTheText, expect, judge, picture, test, withClockInHand } from './journey.ts';
import { signIn } from './sign-in.ts';

const choose = async (page: Page, ...names: string[]) => {
  for (const name of names) await page.getByRole('radio', { name, exact: true }).first().click();
};

test('a closed colony is corrected with a reason, and both readings are shown in the field and at the office', async ({
  page,
  browser,
  server,
}) => {
  test.setTimeout(240_000);
  await page.goto('/');
  await signIn(page, 'ines@quillmoor.example');
  await page.getByRole('link', { name: 'At the hive' }).click();
  await expect(page.getByText('at the office')).toBeVisible({ timeout: 60_000 });
  await page.getByRole('link', { name: /^Hazel Bank/ }).click();
  await page.getByRole('button', { name: '6, as registered' }).click();
  await choose(page, 'with consent');
  await page.getByRole('button', { name: 'Start the visit' }).click();
  await page.getByRole('button', { name: 'Open colony 1' }).click();
  await page.getByRole('button', { name: /^Nothing seen/ }).click();
  await page.getByRole('button', { name: 'Close colony 1' }).click();
  await expect(page.getByText('1 of 6')).toBeVisible();
  const visit = page.url().replace(/\/(plan|walk)$/, '');

  // A note on the visit: what is typed is there again after a stop, and it needs words.
  await page.getByRole('button', { name: 'Add a note' }).click();
  await page.getByRole('button', { name: 'Keep this note' }).click();
  await expect(page.getByText('Write the note first.')).toBeVisible();
  await page.getByLabel('Note').pressSequentially('The gate sticks (invented)');
  await expect(page.getByRole('status').filter({ hasText: 'saved here' })).toBeVisible();
  await page.reload();
  await expect(page.getByLabel('Note')).toHaveValue('The gate sticks (invented)');
  await page.getByRole('button', { name: 'Keep this note' }).click();
  await expect(page.getByRole('list', { name: 'Notes' })).toContainText('The gate sticks (invented)');
  await judge(page, 'phone/note-on-visit/en');

  // The closed colony, prefilled on the screens it was made on.
  await page.goto(`${visit}/walk`);
  await page.getByRole('button', { name: /^Colony 1 nothing seen/ }).click();
  const colony = page.url();
  await page.getByRole('link', { name: 'Correct this record' }).click();
  await expect(page.getByRole('heading', { name: 'Correct colony 1' })).toBeVisible();
  await expect(page.getByRole('radio', { name: 'Both', exact: true }).first()).toHaveAttribute('aria-checked', 'true');
  await expect(page.getByRole('radio', { name: 'Yes', exact: true }).first()).toHaveAttribute('aria-checked', 'true');
  await page.getByRole('button', { name: /^Signs/ }).click();
  await page.getByRole('tab', { name: /^Cappings/ }).click();
  await page
    .getByRole('button', { name: /^Sunken cappings looked for|^Sunken cappings not seen/ })
    .first()
    .click();
  await choose(page, '1–10');
  await page.getByRole('button', { name: 'Back to colony 1' }).click();

  // Stopped in the middle: the correction is there again, and the colony is closed all the while.
  await page.reload();
  await expect(page.getByText(/^This correction was open when the phone stopped/)).toBeVisible();
  await page.goto(visit);
  await expect(page.getByText('1 of 6')).toBeVisible();
  await page.goto(colony);
  await page.getByRole('link', { name: 'Correct this record' }).click();
  await page.getByRole('button', { name: 'Why it is corrected' }).click();
  const write = page.getByRole('button', { name: 'Write the correction' });
  await expect(write).toBeDisabled();
  await choose(page, 'Forgot to enter it');
  await write.click();

  // Both stand there, with who and why.
  await expect(page.getByText(/^Corrected by Ines Marrowby, .*: Forgot to enter it$/)).toBeVisible({ timeout: 30_000 });
  await expect(page.getByText('Sunken cappings: was looked for and not seen, is seen, 1 to 10 cells')).toBeVisible();
  await expect(
    page.getByText('Result: was nothing seen with this look, is signs seen, cause not settled'),
  ).toBeVisible();
  await page.getByRole('button', { name: 'Add a note' }).click();
  await page.getByLabel('Note').fill('Queen marked white (invented)');
  await page.getByRole('button', { name: 'Keep this note' }).click();
  await expect(page.getByRole('list', { name: 'Notes' })).toContainText('Queen marked white (invented)');
  await judge(page, 'phone/corrected/en');
  await doubleTheText(page);
  await picture(page, 'corrected-double');
  expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);

  // The same in German.
  await page.evaluate(() => localStorage.setItem('combside.preferences', JSON.stringify({ language: 'de' })));
  await page.goto(colony);
  await expect(page.getByText(/^Berichtigt von Ines Marrowby/)).toBeVisible();
  await judge(page, 'phone/corrected/de');
  await page.getByRole('link', { name: 'Diesen Eintrag berichtigen' }).click();
  await page.getByRole('button', { name: 'Warum berichtigt wird' }).click();
  await expect(page.getByRole('button', { name: 'Berichtigung eintragen' })).toBeDisabled();
  await page.evaluate(() => localStorage.setItem('combside.preferences', JSON.stringify({ language: 'en' })));

  // Nothing changed is no correction.
  await page.goto(colony);
  await page.getByRole('link', { name: 'Correct this record' }).click();
  await page.getByRole('button', { name: 'Why it is corrected' }).click();
  await page.getByLabel('In your own words').fill('for no reason');
  await write.click();
  await expect(page.getByText('Nothing was changed.')).toBeVisible({ timeout: 30_000 });
  await page.getByRole('button', { name: 'Back to colony 1' }).click();
  await page.getByRole('button', { name: 'Leave it as it was' }).click();
  await expect(page.getByText('Colony 1 is closed.')).toBeVisible();

  // The office sees before and after, and the notes.
  await page.goto(visit);
  await expect(page.getByText('at the office')).toBeVisible({ timeout: 60_000 });
  const desk = await browser.newContext({ baseURL: server.address, viewport: { width: 1440, height: 900 } });
  const office = await desk.newPage();
  await office.goto('/');
  await signIn(office, 'wilda@quillmoor.example');
  await expect(office.getByRole('link', { name: 'Questions' })).toBeVisible({ timeout: 60_000 });
  await office.goto(`/district/visit/${visit.split('/').at(-1)}`);
  await expect(office.getByText(/^Corrected by Ines Marrowby, .*: Forgot to enter it$/)).toBeVisible({
    timeout: 30_000,
  });
  await expect(office.getByText('Sunken cappings: was looked for and not seen, is seen, 1 to 10 cells')).toBeVisible();
  await expect(office.getByText('Queen marked white (invented)')).toBeVisible();
  await expect(office.getByText('The gate sticks (invented)')).toBeVisible();
  await judge(office, 'desk/office-corrected/en');
  await desk.close();
});

test('what was written elsewhere arrives within a minute while the screen is in sight, with nobody touching it', async ({
  browser,
  server,
}) => {
  test.setTimeout(180_000);
  const first = await withClockInHand(() => browser.newContext({ baseURL: server.address }));
  const page = await first.newPage();
  await page.goto('/');
  await signIn(page, 'ines@quillmoor.example');
  await page.getByRole('link', { name: 'At the hive' }).click();
  await expect(page.getByText('at the office')).toBeVisible({ timeout: 60_000 });
  await page.getByRole('link', { name: /^Damson End/ }).click();
  await page.getByRole('button', { name: /as registered$/ }).click();
  await choose(page, 'with consent');
  await page.getByRole('button', { name: 'Start the visit' }).click();
  await expect(page.getByText(/^0 of /)).toBeVisible();
  await page.clock.runFor(2_000);
  await expect(page.getByText('at the office')).toBeVisible({ timeout: 60_000 });
  const visit = new URL(page.url()).pathname;

  // A colleague of the same district on another phone.
  const second = await browser.newContext({ baseURL: server.address, viewport: { width: 390, height: 844 } });
  const other = await second.newPage();
  await other.goto('/');
  await signIn(other, 'tobin@quillmoor.example');
  await other.getByRole('link', { name: 'At the hive' }).click();
  await expect(other.getByText('at the office')).toBeVisible({ timeout: 60_000 });
  await other.goto(visit);
  await other.getByRole('button', { name: 'Add a note' }).click();
  await other.getByLabel('Note').fill('Written on the other phone (invented)');
  await other.getByRole('button', { name: 'Keep this note' }).click();
  // The list of notes is asked, not the page: the field it was typed into holds the same words.
  await expect(other.getByRole('list', { name: 'Notes' })).toContainText('Written on the other phone (invented)');
  await expect(other.getByText('at the office')).toBeVisible({ timeout: 60_000 });
  const atOffice = await other.request.get(`/api/visits/${visit.split('/').at(-1)}`);
  expect(await atOffice.text()).toContain('Written on the other phone (invented)');
  await second.close();

  const note = page.getByText('Written on the other phone (invented)');
  await expect(note).toBeHidden();
  await page.clock.runFor(61_000);
  await expect(note).toBeVisible({ timeout: 30_000 });
  // Named, also by a phone that asks nobody any more.
  await first.setOffline(true);
  await expect(page.getByRole('list', { name: 'Notes' })).toContainText('Tobin Vexley');
  await first.close();
});
