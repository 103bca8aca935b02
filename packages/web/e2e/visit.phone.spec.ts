import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { expect, installed, judge, picture, test } from './journey.ts';
import { signIn } from './sign-in.ts';

async function choose(page: Page, ...names: string[]): Promise<void> {
  for (const name of names) await page.getByRole('radio', { name, exact: true }).first().click();
}

/** Colony opened and nothing seen: two taps after choosing it. */
async function nothingSeen(page: Page, label: string): Promise<void> {
  await page.getByRole('button', { name: /^(Nothing seen|No scale)/ }).click();
  await page.getByRole('button', { name: `Close colony ${label}` }).click();
  await expect(page.getByRole('button', { name: 'Plan' }).or(page.getByRole('radio', { name: 'Plan' }))).toBeVisible();
}

test('an inspector examines an apiary without a network, and the office sees it when there is one', async ({
  page,
  context,
  browser,
  server,
}) => {
  test.setTimeout(360_000);
  await page.goto('/');
  await signIn(page, 'ines@quillmoor.example');
  await page.getByRole('link', { name: 'At the hive' }).click();
  await expect(page.getByText(/^\d visits? planned$/)).toBeVisible({ timeout: 60_000 });
  await expect(page.getByText('at the office')).toBeVisible({ timeout: 60_000 });
  await installed(page);

  // The office stops and the phone has no signal, from here to the exit.
  await server.stop();
  await context.setOffline(true);
  await page.reload();
  await expect(page.getByText('no signal')).toBeVisible();

  // Start the visit: site read back, colonies counted.
  await page.getByRole('link', { name: /^Hazel Bank/ }).click();
  await expect(page.getByRole('button', { name: 'Start the visit' })).toBeDisabled();
  await page.getByRole('button', { name: '6, as registered' }).click();
  await choose(page, 'with consent');
  await page.getByRole('button', { name: 'keeper', exact: true }).click();
  await page.getByRole('button', { name: 'Start the visit' }).click();
  await expect(page.getByText('0 of 6')).toBeVisible();
  await page.getByRole('link', { name: 'Stings and working alone' }).click();
  await expect(page.getByRole('heading', { name: 'If something happens' })).toBeVisible();
  await page.getByRole('button', { name: 'Back' }).click();

  // Two colonies with nothing seen.
  await page.getByRole('button', { name: /^Open colony/ }).click();
  await nothingSeen(page, '1');
  await expect(page.getByText('1 of 6')).toBeVisible();
  await page.getByRole('button', { name: 'Open colony 2' }).click();
  await nothingSeen(page, '2');

  // Colony 3 is suspect. First sign in three taps: open, Signs, the sign.
  await page.getByRole('button', { name: 'Open colony 3' }).click();
  await page.getByRole('button', { name: 'Signs', exact: true }).click();
  await page.getByRole('tab', { name: 'Cappings' }).click();
  await page.getByRole('button', { name: /^Sunken cappings not looked/ }).click();
  await choose(page, '11–100');
  await expect(page.locator('.status')).toContainText('Hazel Bank');

  // The page is killed in the middle: everything tapped is there again.
  await page.reload();
  await page.goto(page.url().replace(/\/signs$/, ''));
  await expect(page.getByText('This draft was open when the phone stopped.')).toBeVisible();
  await page.getByRole('button', { name: 'Signs: 1 seen' }).click();
  await page.getByRole('tab', { name: 'Lower wall' }).click();
  await page
    .getByRole('button', { name: /^Dark scale/ })
    .first()
    .click();
  await expect(page.locator('.reasoning-line')).toContainText('American foulbrood');
  await page.getByRole('button', { name: 'Back to colony 3' }).click();

  // A rope test, and undo.
  await page.getByRole('button', { name: 'Rope test, finds, photographs' }).click();
  await choose(page, 'Moist, brown', 'Rough and dry');
  await page.getByRole('button', { name: 'Thread when it broke: More' }).click();
  // Stopped half way through: what was tapped is there again, and is no rope test yet.
  await expect(page.getByRole('status').filter({ hasText: 'saved here' })).toBeVisible();
  await page.reload();
  await expect(page.getByRole('radio', { name: 'Moist, brown' })).toBeChecked();
  await expect(page.getByRole('radio', { name: 'Rough and dry' })).toBeChecked();
  await expect(page.locator('.kept-line')).toHaveCount(0);
  for (let step = 0; step < 4; step++) await page.getByRole('button', { name: 'Thread when it broke: More' }).click();
  await page.getByRole('button', { name: 'Keep this rope test' }).click();
  await expect(page.locator('.kept-line')).toContainText('20 mm');
  await page.getByRole('button', { name: 'Undo: Rope test' }).click();
  await expect(page.locator('.kept-line')).toHaveCount(0);
  await page.setInputFiles('input[type=file]', {
    name: 'comb.png',
    mimeType: 'image/png',
    buffer: await readFile(new URL('../public/icon-192.png', import.meta.url)),
  });
  await expect(page.getByText('1 photograph')).toBeVisible();
  await page.getByRole('button', { name: 'Back to colony 3' }).click();

  // Why, then the inspector's own suspicion.
  await page.locator('.reasoning-line').click();
  await expect(page.getByRole('heading', { name: 'For it' })).toBeVisible({ timeout: 30_000 });
  await picture(page, 'reasons');
  await expect(page.getByText('%')).toHaveCount(0);
  await page.getByRole('button', { name: 'Show the numbers' }).click();
  await expect(page.getByText(/Expert bands, not measured rates/)).toBeVisible();
  await page.getByRole('button', { name: 'Back to colony 3' }).click();
  await page.getByRole('button', { name: 'Close colony 3' }).click();
  const frames = page.getByRole('button', { name: /^Brood frames looked at.*: More$/ });
  for (let box = 0; box < (await frames.count()); box++) await frames.nth(box).click();
  const both = page.getByRole('radio', { name: 'Both', exact: true });
  for (let box = 0; box < (await both.count()); box++) await both.nth(box).click();
  await choose(page, 'Yes', 'Top bar toward me');
  await choose(page, 'American foulbrood');
  await expect(page.getByText('A test was begun and not kept. If you close now, it is left out.')).toBeVisible();
  await page.getByRole('button', { name: 'I suspect American foulbrood' }).click();
  await expect(page.getByText('First: close the hive, move nothing, take a specimen.')).toBeVisible({
    timeout: 30_000,
  });

  // Clean down before the next colony, each answered.
  await page.getByRole('button', { name: 'Clean down before the next colony' }).click();
  await expect(page.getByRole('button', { name: 'Keep and go on' })).toBeDisabled();
  await choose(page, 'Changed', 'Flamed', 'Wiped');
  await expect(page.locator('.status')).toContainText('Hazel Bank · Colony 3');
  await page.getByRole('button', { name: 'Keep and go on' }).click();
  await expect(page.getByText('3 of 6')).toBeVisible();
  // Beside a suspicion no number reassures.
  await expect(page.getByText('How much the looks so far could find')).toBeHidden();
  await page.getByRole('radio', { name: 'Walking order' }).click();

  // The dead hive: the scale is the sign.
  await page.getByRole('button', { name: 'Open colony 4' }).click();
  await expect(page.getByText(/You go from suspect colony 3 to colony 4/)).toBeVisible();
  await choose(page, 'Dead');
  await page
    .getByRole('button', { name: /^(No scale|Signs)/ })
    .last()
    .click();
  await expect(page.getByRole('tab', { name: 'Lower wall' })).toHaveAttribute('aria-selected', 'true');
  await page
    .getByRole('button', { name: /^Dark scale/ })
    .first()
    .click();
  await page.getByRole('button', { name: 'Back to colony 4' }).click();
  await page.getByRole('button', { name: 'Close colony 4' }).click();
  for (let box = 0; box < (await frames.count()); box++) await frames.nth(box).click();
  for (let box = 0; box < (await both.count()); box++) await both.nth(box).click();
  await choose(page, 'Top bar toward me', 'American foulbrood');
  await page.getByRole('button', { name: 'I suspect American foulbrood' }).click();
  await page.getByRole('button', { name: 'Clean down before the next colony' }).click();
  await choose(page, 'Not changed', 'Replaced', 'Wiped');
  await page.getByRole('button', { name: 'Keep and go on' }).click();

  await page.getByRole('button', { name: 'Open colony 5' }).click();
  await nothingSeen(page, '5');
  // Less than that: three frames of the box, bees left on.
  await page.getByRole('button', { name: 'Open colony 6' }).click();
  await page.getByRole('button', { name: 'Less than that' }).click();
  await page
    .getByRole('button', { name: /^Brood frames looked at.*: More$/ })
    .first()
    .click();
  for (let step = 0; step < 4; step++)
    await page
      .getByRole('button', { name: /^Brood frames looked at.*: Less$/ })
      .first()
      .click();
  for (let box = 1; box < (await frames.count()); box++) await frames.nth(box).click();
  for (let box = 0; box < (await both.count()); box++) await both.nth(box).click();
  await choose(page, 'No');
  await page.getByRole('button', { name: 'Close colony 6' }).click();
  await expect(page.getByText(/^Nothing seen: \d+ of \d+ frames.*not shaken/)).toBeVisible();
  await page.getByRole('button', { name: 'Close colony 6' }).click();
  await expect(page.getByText('6 of 6')).toBeVisible();

  // The end: what is open is said, and the exit asks for its own clean-down.
  await page.getByRole('link', { name: 'End the visit' }).click();
  await expect(page.locator('.status')).toContainText('Hazel Bank');
  await page.getByRole('button', { name: 'End it and make the written result' }).click();
  await expect(page.getByRole('alert')).toBeVisible();
  await page.getByRole('link', { name: 'Clean down before you leave' }).click();
  await choose(page, 'Changed', 'Flamed', 'Wiped');
  await page.getByRole('button', { name: 'Keep and go on' }).click();
  await page.getByRole('button', { name: 'End it and make the written result' }).click();

  // The written result, as paper and large on the screen, signed there.
  await expect(page.getByRole('heading', { name: 'Written result' })).toBeVisible();
  await page.getByRole('button', { name: 'Make the paper' }).click();
  const download = page.waitForEvent('download');
  await page.getByRole('link', { name: 'Save it on the phone' }).click({ timeout: 60_000 });
  const pdf = await readFile(await (await download).path());
  expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
  expect(pdf.length).toBeGreaterThan(20_000);
  await choose(page, 'Signed on the screen');
  const pad = page.locator('.signature');
  await pad.scrollIntoViewIfNeeded();
  const box = await pad.boundingBox();
  if (!box) throw new Error('the place to sign is not on the screen');
  await page.mouse.move(box.x + 20, box.y + 50);
  await page.mouse.down();
  await page.mouse.move(box.x + 120, box.y + 20, { steps: 6 });
  await page.mouse.up();
  await judge(page, 'phone/result-signed/en');
  const words = (await page.getByRole('article').textContent()) ?? '';
  expect(words).not.toMatch(/\d %|\d%|healthy|expert band/i);
  await page.getByRole('button', { name: 'Handed over', exact: true }).click();
  await expect(page.getByText(/^Handed over at/)).toBeVisible();

  // Reloaded without a network it is all still here.
  await page.reload();
  await expect(page.getByText(/^Handed over at/)).toBeVisible();
  await expect(page.getByText(/entries wait for a network|no signal/).first()).toBeVisible();

  // A colony is corrected after the paper was given: both screens say that it is older, and the new one says what it
  // replaces.
  await page.goto(page.url().replace(/result$/, 'walk'));
  await page.getByRole('button', { name: /^Colony 5 / }).click();
  await page.getByRole('link', { name: 'Correct this record' }).click();
  await choose(page, 'Torch');
  await page.getByRole('button', { name: 'Why it is corrected' }).click();
  await choose(page, 'Forgot to enter it');
  await page.getByRole('button', { name: 'Write the correction' }).click();
  await expect(page.getByText(/^The result handed over on .* is older than this record\.$/)).toBeVisible({
    timeout: 30_000,
  });
  await picture(page, 'corrected-after-handing-over');
  await page.getByRole('link', { name: 'To the written result' }).click();
  await expect(page.getByText(/The paper in hand is older than the record/)).toBeVisible();
  await expect(page.getByRole('article')).toContainText('Result no. 2, corrected. It replaces the result handed over');
  await picture(page, 'result-outdated');
  await choose(page, 'Read out');
  await page.getByRole('button', { name: 'Handed over', exact: true }).click();
  await expect(page.getByText(/^Handed over at/)).toBeVisible();
  await expect(page.getByText(/The paper in hand is older than the record/)).toBeHidden();
  await expect(page.getByRole('article')).toContainText('Result no. 2, corrected.');

  // Network again: the office sees it, without anybody pressing anything.
  await server.startAgain();
  await context.setOffline(false);
  await expect(page.getByText('at the office')).toBeVisible({ timeout: 90_000 });
  const desk = await browser.newContext({ baseURL: server.address, viewport: { width: 1440, height: 900 } });
  const office = await desk.newPage();
  await office.goto('/');
  await signIn(office, 'wilda@quillmoor.example');
  await office
    .getByRole('link', { name: /Hazel Bank.*2 suspect/s })
    .first()
    .click();
  await expect(office.getByRole('heading', { name: 'Colony 3: suspect' })).toBeVisible();
  await expect(office.getByText('Dark scale stuck to the lower wall').first()).toBeVisible();
  await expect(office.getByRole('heading', { name: /Colony 4: suspect/ })).toBeVisible();
  await expect(office.getByRole('img', { name: /Photograph of colony 3/ })).toBeVisible({ timeout: 30_000 });
  await judge(office, 'desk/office-visit/en');
  await desk.close();
});
