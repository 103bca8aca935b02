import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { dayBefore, written } from './day.ts';
import { expect, judge, picture, test } from './journey.ts';
import { signIn } from './sign-in.ts';

async function atTheDesk(page: Page): Promise<void> {
  await page.goto('/');
  await signIn(page, 'wilda@quillmoor.example');
  await expect(page.getByRole('link', { name: 'Register', exact: true })).toBeVisible({ timeout: 30_000 });
}

async function open(page: Page, tab: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Register' }).getByRole('link', { name: tab, exact: true }).click();
}

async function choose(page: Page, name: string, buffer: Buffer): Promise<void> {
  await page.getByLabel('Choose a file').setInputFiles({ name, mimeType: 'text/csv', buffer });
}

/** So many days before the journeys' own, as a German office writes it: `4.5.2026`. */
const inGerman = (days: number) => dayBefore(days).split('-').reverse().map(Number).join('.');

/** Everything an invented office ever did to a file: old encoding, other separator, open quotes, mixed-up columns. */
const hostile = Buffer.from(
  [
    'Imker-Nr.;Name;Telefon;Standort;Breite;Länge;Völker;Bestätigt am;Bemerkung',
    `K-1;Jörg Müßig;030 / 111 22 33;Obere Weide;56,101;3,201;7;${inGerman(29)};`,
    `K-2;"Ann; ""die Große""";;Untere Weide;56,102;3,202;12;${inGerman(28)};`,
    `K-3;Ben Öd;;Hang;3,203;56,103;4;${inGerman(27)};`,
    'K-8;Emil Au;;Au;56,108;3,208;3;;',
    'K-4;Cora Tal;;Talgrund;56,104;;viele;31.4.2026;',
    'K-5;Dora "offen;;Furt;0;0;2;;',
    '',
    ';;;;;;;;nur eine Bemerkung',
    'K-1;Jörg Müssig;030 / 111 22 33;Obere Weide;56,101;3,201;7;;',
    'K-6;"nie geschlossen;;Bach;56,106;3,206;1;;',
    "K-7;'=SUMME(A1);;Steg;56,107;3,207;1;;",
  ].join('\r\n'),
  'latin1',
);

const clean = Buffer.from(
  [
    'keeper number,keeper name,telephone,apiary name,latitude,longitude,colonies',
    'N-1,Ansel Wether,030 555 1111,North Lea,56.3001,3.4001,5',
    'N-2,Bryony Wether,030 555 2222,South Lea,56.3101,3.4101,6',
    ',Ansel Wethr,+49 30 5551111,North Ley,56.3002,3.4001,',
  ].join('\n'),
);

test('the register is searched, a record changed with its reason, and the change stands in its history', async ({
  page,
}) => {
  await atTheDesk(page);
  await page.getByRole('link', { name: 'Register', exact: true }).click();
  await expect(page.getByRole('list', { name: 'Apiaries' }).getByRole('link').first()).toBeVisible();

  await page.getByRole('searchbox').fill('bank hazel');
  await page.getByRole('link', { name: /^Hazel Bank/ }).click();
  await expect(page.getByRole('heading', { name: 'Hazel Bank' })).toBeVisible();
  await expect(page.getByText(/to within \d+\sm; (measured on site|from a map|told)/)).toBeVisible();

  await page.getByRole('button', { name: 'Change this record' }).click();
  await page.getByLabel('Colonies registered').fill('9');
  await page.getByLabel('Why (stays with the change)').fill('three nuclei made in May');
  await page.getByRole('button', { name: 'Write the change' }).click();
  await expect(page.getByText('9 colonies registered')).toBeVisible({ timeout: 30_000 });
  await expect(page.getByText('Colonies registered: 6 → 9')).toBeVisible();
  await expect(page.getByText('Why: three nuclei made in May')).toBeVisible();

  await page.getByRole('link', { name: /^Keeper: / }).click();
  await expect(page.getByRole('heading', { name: 'Apiaries' })).toBeVisible();

  await open(page, 'To settle');
  await expect(page.getByRole('heading', { name: 'To settle' })).toBeVisible();
  await expect(page.getByText('Fetching…')).toHaveCount(0);
  const waiting = page.getByRole('list', { name: 'To settle' }).getByRole('link');
  const before = await waiting.count();
  await waiting.first().click();
  await expect(page.getByText(/the register says .* proposed is/)).toBeVisible();
  await page.getByRole('button', { name: /^The register shall say/ }).click();
  await expect(page.getByText(/the register says .* proposed is/)).toHaveCount(0, { timeout: 30_000 });
  await expect(page.getByText('Written, and at the office.')).toBeVisible({ timeout: 30_000 });
  await open(page, 'To settle');
  await expect(waiting).toHaveCount(before - 1, { timeout: 30_000 });
});

test('a sale and a movement are told at the desk, stand at both ends, and take the colonies named along', async ({
  page,
}) => {
  // The store of this desk opens late: nobody quick with the keyboard may press a button in vain.
  await page.addInitScript(() => {
    const request = navigator.locks.request.bind(navigator.locks) as (...all: unknown[]) => Promise<unknown>;
    const opened = new Promise<void>((resolve) => addEventListener('store-opens', () => resolve(), { once: true }));
    navigator.locks.request = ((...all: unknown[]) => opened.then(() => request(...all))) as LockManager['request'];
  });
  await atTheDesk(page);
  await page.goto('/district/register');
  const soldOn = dayBefore(30);
  const openApiary = async (name: string) => {
    await page.getByRole('searchbox').first().fill(name);
    await page.getByRole('link', { name: new RegExp(`^${name}`) }).click();
    await expect(page.getByRole('heading', { name, exact: true })).toBeVisible();
  };
  const movements = page.getByRole('list', { name: 'Movements and sales' });
  const write = page.getByRole('button', { name: 'Write the movement' });

  // By keyboard alone: what is missing is named, a day to come is refused, and nothing typed is lost by it.
  await openApiary('Knapweed Holt');
  await page.getByRole('button', { name: 'Record a movement or a sale' }).press('Enter');
  await write.press('Enter');
  await expect(page.getByRole('alert')).toContainText(
    'Where did it go, or who bought it? · On which day · Who says so',
  );
  await page.getByLabel('Search an apiary or a keeper').fill('hester mossgate');
  await page.getByRole('button', { name: /^Hester Mossgate/ }).press('Enter');
  await page.getByRole('button', { name: 'Bramble Field', exact: true }).press('Enter');
  await expect(page.getByText('Chosen: Bramble Field')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Choose another place' })).toBeFocused();
  await page.getByLabel('What', { exact: true }).selectOption('nuclei');
  await page.getByLabel('How many').fill('2');
  await page.getByLabel('How', { exact: true }).selectOption('sold');
  await page.getByLabel('On which day').fill(dayBefore(-1));
  await page.getByLabel('Who says so').selectOption('told by the keeper');
  await page.getByLabel('Why (stays with the change)').fill('the buyer rang up');
  await write.press('Enter');
  await expect(page.getByRole('alert')).toHaveText(/^This day is still to come/);
  await page.getByLabel('On which day').fill(soldOn);
  await write.press('Enter');
  await expect(page.getByText('Writing…')).toBeVisible();
  await page.evaluate(() => dispatchEvent(new Event('store-opens')));
  await expect(movements.getByText(`2 nuclei sold to Bramble Field, ${written(soldOn)}`)).toBeVisible({
    timeout: 30_000,
  });
  await expect(page.getByRole('button', { name: 'Record a movement or a sale' })).toBeFocused();

  // More is known later: the change stands with its reason beside what was said first.
  await page.getByText('What happened to this entry').click();
  await expect(movements.getByText('Why: the buyer rang up')).toBeVisible();
  await page.getByRole('button', { name: 'Change this movement' }).click();
  await page.getByLabel('How many').fill('3');
  await page.getByLabel('Why (stays with the change)').fill('the invoice says so');
  await page.getByRole('button', { name: 'Write the change' }).click();
  await expect(movements.getByText(`3 nuclei sold to Bramble Field, ${written(soldOn)}`)).toBeVisible({
    timeout: 30_000,
  });
  await page.getByText('What happened to this entry').click();
  await expect(movements.getByText('How many: 2 → 3')).toBeVisible();
  await expect(movements.getByText('Why: the invoice says so')).toBeVisible();
  await openApiary('Bramble Field');
  await expect(movements.getByText(`3 nuclei sold from Knapweed Holt, ${written(soldOn)}`)).toBeVisible();

  // From the keeper's record: one colony, named, goes to another of the keeper's own apiaries.
  await page.getByRole('searchbox').first().fill('tamsy inglemarsh');
  await page.getByRole('link', { name: /^Tamsy Inglemarsh/ }).click();
  await page.getByRole('button', { name: 'Record a movement or a sale' }).click();
  await page.getByLabel('Which apiary').selectOption('Ivy Field');
  const ticks = page.getByRole('group', { name: 'Which of them, if that is known' }).getByRole('checkbox');
  await ticks.first().check();
  const label = ((await ticks.first().locator('xpath=..').textContent()) ?? '').trim();
  await page.getByRole('button', { name: 'A place outside this register' }).click();
  await page.getByLabel('Who or where, as far as known').fill('a cousin over the border');
  await page.getByLabel('How', { exact: true }).selectOption('given');
  await page.getByText('Only known to lie between two days').click();
  await page.getByLabel('Not before').fill(dayBefore(61));
  await page.getByLabel('Not after').fill(dayBefore(62));
  await page.getByLabel('Who says so').selectOption('written by the keeper');
  await write.click();
  await expect(page.getByRole('alert')).toHaveText(/Exchange them/);
  await page.getByLabel('Not after').fill(dayBefore(54));
  await write.click();
  await expect(
    movements.getByText(
      `1 colony given from Ivy Field to a place outside this register, between ${written(dayBefore(61))} and ${written(dayBefore(54))}`,
    ),
  ).toBeVisible({ timeout: 30_000 });
  await page
    .getByRole('main')
    .getByRole('link', { name: /^Ivy Field/ })
    .click();
  await page.getByRole('link', { name: `Colony ${label}`, exact: true }).click();
  await expect(page.getByText('State of the hive: living → gone')).toBeVisible();
  await expect(page.getByText('Why: a cousin over the border').last()).toBeVisible();
  await expect(movements.getByText(/^1 colony given to a place outside/)).toBeVisible();

  // Entered in error: taken back with its reason, it stays in the register and leaves the case note.
  await openApiary('Bramble Field');
  await page.getByText('What happened to this entry').first().click();
  await page.getByText('Take this entry back: it did not happen').click();
  await page.getByLabel('Why (stays with the change)').fill('it was another Bramble Field');
  await page.getByRole('button', { name: 'Take it back' }).click();
  await expect(movements.getByText('Taken back: entered in error, it did not happen.')).toBeVisible({
    timeout: 30_000,
  });
  await expect(movements.getByText('Whether it happened: it happened → it did not happen')).toBeVisible();
  await picture(page, 'movement-taken-back');
});

test('a hostile file says what, where and what to do, and nothing of it goes in by halves', async ({ page }) => {
  await atTheDesk(page);
  await page.goto('/district/register/import');
  await expect(page.getByText('Choose a file')).toBeVisible();
  await choose(page, 'altes-register.csv', hostile);
  await expect(page.getByText(/altes-register\.csv: \d+ rows, 9 columns, Windows-1252/)).toBeVisible();
  await expect(page.getByLabel('Means: Länge')).toHaveValue('longitude');
  await page.getByRole('button', { name: 'See what would happen' }).click();
  await expect(page.getByRole('heading', { name: 'What would happen' })).toBeVisible({ timeout: 30_000 });
  const row = (line: number, says: string) =>
    expect(page.getByRole('row', { name: new RegExp(`^${line} .*${says}`) })).toBeVisible();
  await row(4, 'look exchanged');
  await row(6, 'Only one of latitude and longitude');
  await row(6, 'viele Not a number');
  await row(6, '31.4.2026 Not a date');
  await row(7, 'both 0');
  await row(9, 'Nothing in this line');
  await row(10, 'Line 2 of this file says otherwise');
  await row(11, 'opened and never closed');
  await expect(page.getByRole('button', { name: /^Write .* into the register/ })).toBeDisabled();
  await page.getByRole('button', { name: 'Cancel: nothing is written' }).click();
  await expect(page.getByText('Cancelled. Nothing was written.')).toBeVisible();

  // The matching is remembered, and the faulty lines can be left out on purpose.
  await choose(page, 'altes-register.csv', hostile);
  await expect(page.getByText('As you matched them the last time')).toBeVisible();
  await page.getByRole('button', { name: 'See what would happen' }).click();
  await page.getByLabel('Leave these lines out and read in the others').check();
  await page.getByRole('button', { name: /^Write .* into the register/ }).click();
  await expect(page.getByText('All of it is at the office.')).toBeVisible({ timeout: 60_000 });
  await page.goto('/district/register');
  await page.getByRole('searchbox').fill('müßig');
  await expect(page.getByRole('link', { name: /^Jörg Müßig/ })).toBeVisible();
});

test('a clean file goes in once, its duplicates are found and merged, and what is written out changes nothing', async ({
  page,
}) => {
  test.setTimeout(180_000);
  await atTheDesk(page);
  await page.goto('/district/register/import');
  await choose(page, 'clean.csv', clean);
  await page.getByRole('button', { name: 'See what would happen' }).click();
  await expect(page.getByText('Apiaries: 3 new, 0 changed, 0 as they are')).toBeVisible({ timeout: 30_000 });
  await expect(page.getByText('Keepers: 3 new, 0 changed, 0 as they are')).toBeVisible();
  await page.getByRole('button', { name: 'Write 6 records into the register' }).click();
  await expect(page.getByText('6 records written on this device.')).toBeVisible({ timeout: 30_000 });
  await expect(page.getByText('All of it is at the office.')).toBeVisible({ timeout: 60_000 });
  await judge(page, 'desk/import-done/en');

  await page.getByRole('button', { name: 'Read in another file' }).click();
  await choose(page, 'clean.csv', clean);
  await page.getByRole('button', { name: 'See what would happen' }).click();
  await expect(page.getByText('There is nothing to write.')).toBeVisible({ timeout: 30_000 });
  await expect(page.getByText('Apiaries: 0 new, 0 changed, 3 as they are')).toBeVisible();

  await open(page, 'Duplicates');
  await page.getByRole('button', { name: 'Look for duplicates' }).click();
  await expect(page.getByText(/pairs? to look at/)).toBeVisible({ timeout: 30_000 });
  const wethers = page.getByRole('article', { name: /Ansel Wether? and|Ansel Wethr and/ });
  while ((await wethers.count()) === 0) await page.getByRole('button', { name: 'Next pair' }).click();
  await expect(wethers.getByRole('heading')).toContainText('the same telephone');
  await page.getByRole('button', { name: 'They are one: merge' }).click();
  await expect(page.getByText('Merged. Both histories stay readable.')).toBeVisible({ timeout: 30_000 });

  await open(page, 'Keepers');
  await page.getByRole('searchbox').fill('ansel');
  await expect(page.getByRole('list', { name: /^Search/ }).getByRole('link')).toHaveCount(1, { timeout: 30_000 });
  await page
    .getByRole('list', { name: /^Search/ })
    .getByRole('link')
    .click();
  await expect(page.getByRole('heading', { name: 'Also recorded as' })).toBeVisible();
  await expect(page.getByRole('main').getByRole('link', { name: /^North Le[ay]/ })).toHaveCount(2);
  await expect(page.getByText('Why: read in from the file clean.csv').first()).toBeVisible();

  // A merge can be taken back, with its reason; both records stand by themselves again.
  await page.getByRole('heading', { name: 'Also recorded as' }).locator('xpath=..').getByRole('link').click();
  await expect(page.getByText('This record is read as part of another one.')).toBeVisible();
  await page.getByRole('button', { name: 'Stand by itself again' }).click();
  await expect(page.getByRole('alert')).toBeVisible();
  await page.getByLabel('Why (stays with the change)').fill('two brothers');
  await page.getByRole('button', { name: 'Stand by itself again' }).click();
  await expect(page.getByText('This record is read as part of another one.')).toHaveCount(0, { timeout: 30_000 });
  await expect(page.getByText('Why: two brothers')).toBeVisible();

  await open(page, 'Write out');
  await page.getByLabel('District').selectOption('quillmoor');
  const written = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Separated text (CSV)' }).click();
  const table = await readFile(await (await written).path());
  expect(table.toString('utf8')).toContain('Ansel Weth');
  const open2 = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Darwin Core, for the public' }).click();
  const open3 = (await readFile(await (await open2).path())).toString('utf8');
  expect(open3).toContain('dataGeneralizations');
  for (const secret of ['Ansel', 'Hazel Bank', '56.3001', 'QM-1000']) expect(open3).not.toContain(secret);

  await open(page, 'Read in a file');
  await choose(page, 'quillmoor-register.csv', table);
  await page.getByRole('button', { name: 'See what would happen' }).click();
  await expect(page.getByText('There is nothing to write.')).toBeVisible({ timeout: 30_000 });
});
