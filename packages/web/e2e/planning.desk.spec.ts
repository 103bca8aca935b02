import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Locator, Page } from '@playwright/test';
import { day, dayBefore, written } from './day.ts';
import { expect, installed, judge, picture, test } from './journey.ts';
import { startPlantedServer } from './planted-server.ts';
import { signIn } from './sign-in.ts';
import { archiveOfOneTile } from './tile-archive.ts';

/** Names of the apiaries that the office marks as suspect and that have a place. */
async function suspectsOf(page: Page): Promise<string[]> {
  const listed = (await (await page.request.get('/api/apiaries?limit=500')).json()) as {
    apiaries: { name: string; mark: string | null; latitude: number | null }[];
  };
  return listed.apiaries.filter((one) => one.mark === 'suspect' && one.latitude !== null).map((one) => one.name);
}

/** An apiary in the list of the desk; duties and visits there are links of the same name while there are any. */
const inTheList = (page: Page, name: string) => page.getByRole('link', { name }).and(page.locator('.place-line'));

/** Points in a ranking or in one of its lines, from the top. */
async function pointsIn(shown: Page | Locator): Promise<number[]> {
  const texts = await shown.locator('.points strong').allTextContents();
  return texts.map((text) => Number.parseInt(text, 10));
}

/** The number that stands in a row of the figures. */
async function figure(page: Page, row: string): Promise<number> {
  const link = page.getByRole('row', { name: row, exact: false }).getByRole('link').first();
  const [first = ''] = ((await link.textContent()) ?? '').split(' ');
  return Number(first.replaceAll(',', ''));
}

/** Colony opened and nothing seen, in two taps. */
async function nothingSeen(page: Page, label: string): Promise<void> {
  await page.getByRole('button', { name: /^(Nothing seen|No scale)/ }).click();
  await page.getByRole('button', { name: `Close colony ${label}` }).click();
  await expect(page.getByRole('radio', { name: 'Plan' })).toBeVisible();
}

// A phone is carried off the network here, and the desk's map is.
test.use({ serviceWorkers: 'allow' });

test('a round planned at the desk stands on the phone’s Today, is made without a network, and the figures change', async ({
  page,
  browser,
  server,
}) => {
  test.setTimeout(300_000);
  // The phone is there before the round is.
  const pocket = await browser.newContext({
    baseURL: server.address,
    viewport: { width: 390, height: 844 },
    deviceScaleFactor: 2,
    hasTouch: true,
    isMobile: true,
  });
  const phone = await pocket.newPage();
  await phone.goto('/');
  await signIn(phone, 'tobin@quillmoor.example');
  await phone.getByRole('link', { name: 'At the hive' }).click();
  await expect(phone.getByText('1 visit planned')).toBeVisible({ timeout: 60_000 });
  await expect(phone.getByText('at the office')).toBeVisible({ timeout: 60_000 });
  await installed(phone);
  await pocket.setOffline(true);

  // The desk: what is owed by time, the apiaries beside it.
  await page.goto('/');
  await signIn(page, 'wilda@quillmoor.example');
  await expect(page.getByRole('heading', { name: 'What is owed' })).toBeVisible({ timeout: 60_000 });
  await expect(page.getByRole('heading', { name: /^Late \d/ })).toBeVisible();
  await expect(page.getByRole('heading', { name: /^Today \d/ })).toBeVisible();
  await expect(page.getByRole('link', { name: /^Hazel Bank Planned/ })).toBeVisible();
  // At which apiaries of the story something is suspect hangs on the season in which they were visited.
  const suspects = await suspectsOf(page);
  expect(suspects.length).toBeGreaterThan(0);
  for (const name of suspects) await expect(inTheList(page, name)).toHaveAccessibleName(new RegExp(`^${name} suspect`));

  // Figures as they are before.
  await page.getByRole('link', { name: 'Figures' }).click();
  const row = 'Examinations, every brood frame';
  await expect(page.getByRole('row', { name: row })).toBeVisible({ timeout: 30_000 });
  await expect(page.locator('.month-plot svg')).toBeVisible();
  const before = await figure(page, row);
  expect(before).toBeGreaterThan(100);

  // Each number opens its records, which are as many as it says; both are saved as CSV.
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the figures as CSV' }).click();
  const saved = await readFile(await (await download).path(), 'utf8');
  expect(saved).toContain(`examinations|full,"Examinations, every brood frame",${before},`);
  const suspected = await figure(page, 'American foulbrood: colonies, every brood frame');
  expect(suspected).toBeGreaterThan(0);
  await page.getByRole('row', { name: 'American foulbrood: colonies, every brood frame' }).getByRole('link').click();
  await expect(page.getByRole('heading', { name: /records?$/ })).toBeVisible();
  // Colonies suspected at several looks stand there several times.
  const colonies = await page
    .getByRole('row')
    .evaluateAll(
      (rows) => new Set(rows.slice(1).map((one) => one.querySelectorAll('a')[1]?.getAttribute('href'))).size,
    );
  expect(colonies).toBe(suspected);
  const listed = await page.getByRole('row').getByRole('link').allTextContents();
  const suspect = suspects.find((name) => listed.includes(name));
  if (!suspect) throw new Error(`of ${suspects.join(', ')} none stands among the records of the figure`);
  await page.getByRole('row').getByRole('link', { name: suspect, exact: true }).first().click();
  await expect(page.getByRole('heading', { level: 2, name: suspect })).toBeVisible();
  await expect(page.getByText('send a specimen to the laboratory').first()).toBeVisible();

  // Somebody telephones about another apiary: written down, it waits for a day.
  await page.getByLabel('Search apiaries, keepers, colonies, visits, addresses, numbers').fill('mallow garth');
  await page.getByRole('link', { name: /^Mallow Garth Apiary/ }).click();
  await page.getByText('Somebody asks for a visit').click();
  await page.getByRole('radio', { name: 'asked for by the keeper' }).click();
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.getByText(/Written down/)).toBeVisible();
  await expect(page.getByRole('heading', { name: /^Without a day/ })).toBeVisible({ timeout: 30_000 });

  // The ranking says why; a weight of nothing changes it, and the address keeps it.
  await page.getByRole('link', { name: 'Planning' }).click();
  const hazel = page.getByRole('article', { name: 'Hazel Bank' });
  await expect(hazel).toContainText('bees or combs went between here and Thyme Dell');
  await expect(hazel).toContainText('Open 6 of 6 colonies');
  await expect(hazel).toContainText('Chance to find one diseased colony: 80%');
  // Most points first; who leads hangs on how long ago each was seen.
  const ranked = await pointsIn(page);
  expect(ranked.length).toBeGreaterThan(10);
  expect(ranked).toEqual([...ranked].sort((a, b) => b - a));
  const [withContact = 0] = await pointsIn(hazel);
  await page.getByLabel('Bees or combs to or from a suspicion').fill('0');
  await expect(hazel).not.toContainText('bees or combs went');
  const [withoutContact = 0] = await pointsIn(hazel);
  expect(withoutContact).toBeGreaterThan(0);
  expect(withoutContact).toBeLessThan(withContact);
  await expect(page).toHaveURL(/weights=40%2C30%2C30%2C0%2C/);
  await page.reload();
  await expect(page.getByLabel('Bees or combs to or from a suspicion')).toHaveValue('0');
  await page.getByRole('button', { name: 'Back to the usual points' }).click();
  await page.getByLabel('one in twenty, ten at least').check();
  await expect(page.getByText(/Florida Administrative Code/)).toBeVisible();
  await page.getByLabel('all of ten or fewer, half of more').check();

  // The round: the asked-for visit and one more, for Tobin, today.
  const garth = page.getByRole('article', { name: 'Mallow Garth' });
  await expect(garth).toContainText('a visit was asked for');
  await page.getByLabel('Take into the round: Mallow Garth').check();
  await page.getByLabel('Take into the round: Bramble Lea').check();
  await expect(page.getByRole('combobox', { name: 'Reason at Mallow Garth' })).toHaveValue('request');
  await expect(page.getByRole('combobox', { name: 'Reason at Bramble Lea' })).toHaveValue('contact');
  await expect(page.getByRole('button', { name: 'Choose an inspector first' })).toBeDisabled();
  await page.getByRole('combobox', { name: 'Inspector', exact: true }).selectOption({ label: 'Tobin Vexley' });
  await page.getByLabel('Arrives at the first at').fill('15:00');
  await page.getByRole('button', { name: 'Put these 2 visits on the Today of Tobin Vexley' }).click();
  await expect(page.getByText(/^2 visits planned for Tobin Vexley.*At the office[.]$/)).toBeVisible({
    timeout: 60_000,
  });
  await expect(garth).toContainText(/Planned for .*15:00, Tobin Vexley/);
  await expect(garth).not.toContainText('a visit was asked for');

  // The phone has no network: nothing yet. It finds one, then loses it again, and the round is there.
  await expect(phone.getByText('1 visit planned')).toBeVisible();
  await pocket.setOffline(false);
  await expect(phone.getByText('3 visits planned')).toBeVisible({ timeout: 60_000 });
  await pocket.setOffline(true);
  await phone.reload();
  await expect(phone.getByText('no signal')).toBeVisible();
  await expect(phone.getByRole('link', { name: /^Mallow Garth/ })).toContainText('asked for by the keeper');
  await picture(phone, 'round-on-the-phone');

  // The visit is made without a network; what the looks could find so far stands beside the number opened.
  await phone.getByRole('link', { name: /^Mallow Garth/ }).click();
  await phone.getByRole('button', { name: '3, as registered' }).click();
  await phone.getByRole('radio', { name: 'with consent', exact: true }).click();
  await phone.getByRole('button', { name: 'keeper', exact: true }).click();
  await phone.getByRole('button', { name: 'Start the visit' }).click();
  await expect(phone.getByText('0 of 3')).toBeVisible();
  for (const label of ['1', '2', '3']) {
    await phone.getByRole('button', { name: `Open colony ${label}` }).click();
    await nothingSeen(phone, label);
    if (label === '1') {
      // One tap deep; one of three opened in full, 8 times in 10: 27 of 100.
      await expect(phone.getByText('%')).toBeHidden();
      await phone.getByText('How much the looks so far could find').click();
      await expect(phone.getByText('Opened so far: chance 27% to have found one diseased colony')).toBeVisible();
      await judge(phone, 'phone/chance-so-far/en');
    }
  }
  await phone.getByRole('link', { name: 'End the visit' }).click();
  const cleanDown = phone.getByRole('link', { name: 'Clean down before you leave' });
  if (await cleanDown.isVisible()) {
    await cleanDown.click();
    for (const name of ['Changed', 'Flamed', 'Wiped']) {
      await phone.getByRole('radio', { name, exact: true }).first().click();
    }
    await phone.getByRole('button', { name: 'Keep and go on' }).click();
  }
  await phone.getByRole('button', { name: 'End it and make the written result' }).click();
  await expect(phone.getByRole('heading', { name: 'Written result' })).toBeVisible();

  // At the desk the figures change by themselves when the phone finds a network.
  await page.getByRole('link', { name: 'Figures' }).click();
  await expect(page.getByRole('row', { name: row })).toBeVisible();
  expect(await figure(page, row)).toBe(before);
  await pocket.setOffline(false);
  await expect.poll(() => figure(page, row), { timeout: 90_000 }).toBe(before + 3);
  await page.getByRole('link', { name: 'Desk' }).click();
  await page
    .getByRole('link', { name: /^Mallow Garth Ended.*3 nothing seen/s })
    .first()
    .click();
  await expect(page.getByText('Reason: asked for by the keeper')).toBeVisible();
  await picture(page, 'visit-page');
  await pocket.close();
});

test('the map draws what the list says, by pointer and by keyboard, and its land without a network', async ({
  page,
  context,
}) => {
  test.setTimeout(180_000);
  await page.goto('/');
  await signIn(page, 'wilda@quillmoor.example');
  await page.getByRole('radio', { name: 'Map' }).click();
  await expect(page).toHaveURL(/show=map/);
  const frame = page.locator('.map-frame');
  await expect(frame).toHaveAttribute('data-shown', '59', { timeout: 60_000 });
  await expect(page.getByText(/^59 apiaries in this window[.] Suspicions at \d+ of them[.]$/)).toBeVisible();
  await expect(page.getByText('1 apiary has no position and stands in the list only.')).toBeVisible();

  // Not `load`, but what was really drawn.
  const drawn = (layer: string) =>
    frame.evaluate((element, name) => {
      const { map } = element as unknown as {
        map: { queryRenderedFeatures(options: object): { properties: object }[] };
      };
      return map.queryRenderedFeatures({ layers: [name] }).map((one) => one.properties as Record<string, unknown>);
    }, layer);
  await expect.poll(async () => (await drawn('marks')).length, { timeout: 30_000 }).toBe(59);
  const marks = await drawn('marks');
  const suspects = await suspectsOf(page);
  expect(suspects).toContain('Thyme Dell');
  expect(
    marks
      .filter((one) => one.image === 'mark suspect')
      .map((one) => one.name)
      .sort(),
  ).toEqual(suspects.sort());

  // A mark opens its page.
  const at = await frame.evaluate((element) => {
    const { map } = element as unknown as {
      map: {
        queryRenderedFeatures(
          options: object,
        ): { properties: { name: string }; geometry: { coordinates: [number, number] } }[];
        project(at: [number, number]): { x: number; y: number };
      };
    };
    const one = map.queryRenderedFeatures({ layers: ['marks'] }).find((mark) => mark.properties.name === 'Thyme Dell');
    return one ? map.project(one.geometry.coordinates) : null;
  });
  const box = await frame.boundingBox();
  if (!at || !box) throw new Error('Thyme Dell is not on the map');
  await page.mouse.click(box.x + at.x, box.y + at.y);
  await expect(page.getByRole('heading', { level: 2, name: 'Thyme Dell' })).toBeVisible();
  await expect(page).toHaveURL(/apiary.*show=map/);
  await expect.poll(async () => (await drawn('chosen')).length).toBe(1);

  // Keyboard: the map itself has the focus, and takes plus and minus.
  const zoom = () => frame.evaluate((element) => (element as unknown as { map: { getZoom(): number } }).map.getZoom());
  const before = await zoom();
  await page.locator('.map-frame canvas').focus();
  await page.keyboard.press('-');
  await expect.poll(zoom).toBeLessThan(before);
  for (let step = 0; step < 5; step++) {
    await page.keyboard.press('-');
    await page.waitForTimeout(400);
  }
  await expect.poll(async () => (await drawn('land')).length, { timeout: 30_000 }).toBeGreaterThan(0);

  await installed(page);
  await expect(frame).toHaveAttribute('data-shown', '59', { timeout: 60_000 });
  // Without a network what was fetched stays, and says so; opened anew, land and borders are still there.
  await context.setOffline(true);
  await page.locator('.map-frame canvas').focus();
  await page.keyboard.press('+');
  await expect(page.getByText('No connection: these are the apiaries as last fetched.')).toBeVisible();
  await page.reload();
  await expect(page.getByText('No connection: the apiaries could not be fetched.')).toBeVisible({
    timeout: 60_000,
  });
  await expect.poll(async () => (await drawn('land')).length, { timeout: 30_000 }).toBeGreaterThan(0);
  await picture(page, 'map-without-network');
  await context.setOffline(false);
});

test('anything is found and opened by keyboard alone', async ({ page }) => {
  await page.goto('/');
  await signIn(page, 'wilda@quillmoor.example');
  const search = page.getByLabel('Search apiaries, keepers, colonies, visits, addresses, numbers');
  await expect(search).toBeVisible({ timeout: 60_000 });
  for (let step = 0; step < 60; step++) {
    if (await search.evaluate((element) => element === document.activeElement)) break;
    await page.keyboard.press('Tab');
  }
  await page.keyboard.type('hazel 3');
  await expect(page).toHaveURL(/search=hazel/);
  const hit = page.getByRole('link', { name: /^Colony 3 Colony.*Hazel Bank/s });
  await expect(hit).toBeVisible();
  await page.keyboard.press('Tab');
  await expect(hit).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 2, name: 'Colony 3' })).toBeVisible();
  await expect(page).toHaveURL(/colony.*search=hazel/);
  await expect(search).toHaveValue('hazel 3');
  await page.getByRole('link', { name: 'At Hazel Bank', exact: true }).press('Enter');
  await expect(page.getByRole('heading', { level: 2, name: 'Hazel Bank' })).toBeVisible();
  await expect(page.getByText(/nuclei, sold, from Thyme Dell to here/)).toBeVisible();

  // A visit is found by the day, the place, the inspector and the result, in any order.
  const { visits } = (await (await page.request.get('/api/visits?limit=200')).json()) as {
    visits: {
      startedAt: string;
      endedAt: string | null;
      apiaryName: string;
      inspectorName: string;
      results: { result: string }[];
    }[];
  };
  const made = visits.find(
    ({ endedAt, inspectorName, results }) =>
      endedAt !== null &&
      inspectorName === 'Tobin Vexley' &&
      results.every(({ result }) => result.startsWith('nothing seen')),
  );
  if (!made) throw new Error('Tobin made no visit at which nothing was seen');
  const on = written(made.startedAt.slice(0, 10));
  await search.fill(`${on} nothing ${made.apiaryName.toLowerCase()} tobin`);
  const visit = page.getByRole('link', {
    name: new RegExp(`^${made.apiaryName} Visit, ${on}.*Tobin Vexley.*nothing seen`, 's'),
  });
  await expect(visit).toBeVisible();
  await expect(page.getByRole('link', { name: /Visit, / })).toHaveCount(1);
  await picture(page, 'search-visits');
  await search.press('Tab');
  await expect(visit).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(new RegExp(`visit.*search=${on.split(' ')[0]}`));
  await expect(page.getByRole('heading', { level: 2, name: made.apiaryName })).toBeVisible();
});

test('an office in which nothing stands yet says so', async ({ page }) => {
  const empty: Record<string, object> = {
    owed: { visits: [], more: false, duties: [], now: `${day}T08:00:00.000Z`, position: 0 },
    apiaries: { apiaries: [], next: null },
    visits: { visits: [], next: null },
    planning: { apiaries: [], ranked: 0, today: day, position: 0 },
    figures: { figures: [], from: dayBefore(365), to: day, countedAt: `${day}T08:00:00.000Z`, position: 0 },
    'map/extent': { box: null, unplaced: 0 },
    map: { points: [], heaps: [], apiaries: 0 },
  };
  for (const [name, body] of Object.entries(empty)) {
    await page.route(new RegExp(`/api/${name}([?]|$)`), (route) => route.fulfill({ json: body }));
  }
  await page.goto('/');
  await signIn(page, 'wilda@quillmoor.example');
  await expect(page.getByText('Nothing is owed.')).toBeVisible({ timeout: 60_000 });
  await expect(page.getByText('No apiary is on the register yet. The first one appears here by itself.')).toBeVisible();
  await page.getByRole('radio', { name: 'Map' }).click();
  await expect(page.getByText('No apiary in this window.')).toBeVisible({ timeout: 60_000 });
  await page.getByRole('link', { name: 'Planning' }).click();
  await expect(page.getByText('No apiary is on the register yet.')).toBeVisible();
  await page.getByRole('link', { name: 'Figures' }).click();
  await expect(page.getByText(/no colony was looked at/)).toBeVisible();
});

test('while the office is silent the desk shows what it said last and when, and a wrong address is not its fault', async ({
  page,
}) => {
  await page.goto('/');
  await signIn(page, 'wilda@quillmoor.example');
  await inTheList(page, 'Alder End').click({ timeout: 60_000 });
  await expect(page.getByRole('heading', { level: 2, name: 'Alder End' })).toBeVisible();
  await page.getByRole('link', { name: 'Planning', exact: true }).click();
  await expect(page.getByText(/of 60 apiaries/)).toBeVisible();
  await page.route('**/api/**', (route) => route.abort());
  await page.getByRole('link', { name: 'Desk', exact: true }).click();
  const said = page.getByRole('alert').filter({ hasText: /^The office did not answer. Shown is what it said on \d/ });
  await expect(said.first()).toBeVisible();
  await expect(inTheList(page, 'Alder End')).toBeVisible();
  await inTheList(page, 'Alder End').click();
  await expect(page.getByRole('heading', { level: 2, name: 'Alder End' })).toBeVisible();
  await judge(page, 'desk/office-silent/en');
  await inTheList(page, 'Alder Bank').click();
  await expect(page.getByRole('main').getByText('The office did not answer.', { exact: true })).toBeVisible();
  await page.unroute('**/api/**');
  await page.goto('/district/figures?from=2026-99-99');
  await expect(page.getByRole('alert')).toHaveText(/^This address asks for something/);
});

test('an office lays its own archive of tiles behind the map', async ({ browser }) => {
  test.setTimeout(240_000);
  const folder = await mkdtemp(join(tmpdir(), 'combside-tiles-'));
  const path = join(folder, 'land.pmtiles');
  await writeFile(path, archiveOfOneTile(await readFile(new URL('../public/icon-192.png', import.meta.url))));
  const own = await startPlantedServer(['--map', path]);
  try {
    const context = await browser.newContext({ baseURL: own.address, viewport: { width: 1440, height: 900 } });
    const page = await context.newPage();
    await page.goto('/');
    await signIn(page, 'wilda@quillmoor.example');
    const part = page.waitForResponse((answer) => answer.url().endsWith('/tiles.pmtiles') && answer.status() === 206);
    await page.getByRole('radio', { name: 'Map' }).click();
    await part;
    const frame = page.locator('.map-frame');
    await expect(frame).toHaveAttribute('data-shown', '59', { timeout: 60_000 });
    const laid = () =>
      frame.evaluate((element) => {
        const { map } = element as unknown as {
          map: { getLayer(id: string): object | undefined; isSourceLoaded(id: string): boolean };
        };
        return map.getLayer('background') !== undefined && map.isSourceLoaded('background');
      });
    await expect.poll(laid, { timeout: 30_000 }).toBe(true);
    await expect(page.getByText('The background could not be fetched.')).toBeHidden();
    await picture(page, 'map-own-background');
    await context.close();
  } finally {
    await own.remove();
    await rm(folder, { recursive: true, force: true });
  }
});
