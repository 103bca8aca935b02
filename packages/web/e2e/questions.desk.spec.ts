import type { Page } from '@playwright/test';
import { dayBefore, written } from './day.ts';
import { expect, judge, picture, test } from './journey.ts';
import { signIn } from './sign-in.ts';

/** Day on which the invented laboratory stated its limits. */
const statedOn = dayBefore(143);

async function atTheDesk(page: Page): Promise<void> {
  await page.goto('/');
  await signIn(page, 'wilda@quillmoor.example');
  await expect(page.getByRole('link', { name: 'Questions' })).toBeVisible({ timeout: 60_000 });
}

/** Moves on by Tab until the control of that name has the focus. */
async function tabTo(page: Page, role: 'textbox' | 'slider' | 'radio' | 'link' | 'button', name: string | RegExp) {
  const wanted = page.getByRole(role, { name, exact: true });
  for (let step = 0; step < 90; step++) {
    if (await wanted.first().evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never reached ${role} ${name}`);
}

/** Types into fields one after the other, by keyboard alone. */
async function type(page: Page, fields: Readonly<Record<string, string>>): Promise<void> {
  for (const [name, text] of Object.entries(fields)) {
    await tabTo(page, 'textbox', name);
    await page.keyboard.press('Control+A');
    await page.keyboard.type(text);
  }
}

/** Chooses in a group of radios, by keyboard alone: the first by the space bar, others by arrow. */
async function pick(page: Page, group: string, down: number): Promise<void> {
  const radios = page.getByRole('group', { name: group }).getByRole('radio');
  for (let step = 0; step < 90; step++) {
    if (await radios.evaluateAll((all) => all.includes(document.activeElement as HTMLInputElement))) break;
    await page.keyboard.press('Tab');
  }
  await page.keyboard.press('Space');
  for (let step = 0; step < down; step++) await page.keyboard.press('ArrowDown');
}

async function ask(page: Page, title: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('link', { name: title }).press('Enter');
  await expect(page.getByRole('heading', { level: 2, name: title })).toBeVisible();
}

/** The first sentence, once the address has followed; then the link reopened in a new page must say the same. */
async function answerKeptByLink(page: Page, starts: string | RegExp): Promise<string> {
  const answer = page.locator('.answer');
  await expect(answer).toHaveText(starts);
  const text = (await answer.textContent()) ?? '';
  // The address follows a moment after the last key.
  let before = '';
  await expect
    .poll(
      async () => {
        const now = page.url();
        const settled = now === before && now.includes('?');
        before = now;
        return settled;
      },
      { intervals: [500] },
    )
    .toBe(true);
  const other = await page.context().newPage();
  await other.goto(page.url());
  await expect(other.locator('.answer')).toHaveText(text);
  await expect(other.locator('.figure svg').first()).toBeVisible();
  await other.close();
  return text;
}

test('the office asks its first seven questions by keyboard, and each link brings the same answer back', async ({
  page,
}) => {
  test.setTimeout(300_000);
  await atTheDesk(page);
  await page.getByRole('link', { name: 'Questions' }).press('Enter');
  await expect(page.getByText('Choose a question on the left.')).toBeVisible();

  await ask(page, 'How many colonies must I open?');
  await expect(page.locator('.asks')).toContainText('Chance that your look finds an affected colony');
  await expect(page.locator('.answer')).toHaveCount(0);
  await type(page, { 'Colonies on the site': '40', 'Chance that your look finds an affected colony': '80' });
  await answerKeptByLink(page, /^Open 26 of 40: if at least 4 are affected/);
  // The slider beside the number moves by arrow, and the number with it.
  await page.getByRole('slider', { name: 'Colonies on the site: slider' }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('textbox', { name: 'Colonies on the site' })).toHaveValue('41');
  await expect(page.locator('.answer')).toContainText('of 41');
  await page.getByRole('textbox', { name: 'Colonies on the site' }).fill('0');
  await expect(page.getByRole('alert')).toHaveText('A whole number from 1 to 100,000.');
  await expect(page.locator('.answer')).toContainText('of 41');
  await page.getByRole('textbox', { name: 'Colonies on the site' }).fill('40');
  await expect(page.getByRole('table')).toContainText('not even all');

  // Kept as a note: in the book of this desk, and from there at the office.
  await tabTo(page, 'button', 'Keep as a note');
  await page.keyboard.press('Enter');
  await type(page, { 'On which apiary? Any part of its name, or of its keeper’s': 'Hazel Bank' });
  const keep = page.getByRole('button', { name: /^Keep on Hazel Bank/ });
  await expect(keep).toBeEnabled({ timeout: 60_000 });
  await judge(page, 'desk/keep-note/en');
  const asked = page.waitForResponse((answer) => answer.url().includes('/api/apiaries?') && answer.ok());
  await page.getByLabel('On which apiary? Any part of its name, or of its keeper’s').fill('Hazel Ban');
  const { apiaries } = (await (await asked).json()) as { apiaries: { apiary: string; name: string }[] };
  const apiary = apiaries.find((one) => one.name === 'Hazel Bank');
  if (!apiary) throw new Error('Hazel Bank is not on the register');
  await expect(keep).toBeEnabled();
  await keep.press('Enter');
  await expect(page.getByText('Kept as a note on Hazel Bank, and at the office.')).toBeVisible({ timeout: 60_000 });
  await expect
    .poll(async () => (await page.request.get(`/api/apiaries/${apiary.apiary}`)).text(), { timeout: 60_000 })
    .toContain('Open 26 of 40: if at least 4 are affected');
  // The page of the apiary shows it, and its link brings the inputs back.
  await page.getByRole('link', { name: 'Open Hazel Bank' }).press('Enter');
  const notes = page.getByRole('list', { name: 'Notes' });
  await expect(notes).toContainText('Open 26 of 40: if at least 4 are affected');
  await judge(page, 'desk/note-on-apiary/en');
  await notes.getByRole('link', { name: 'Open this question again, with what was stated' }).press('Enter');
  await expect(page.locator('.answer')).toHaveText(/^Open 26 of 40: if at least 4 are affected/);
  await expect(page.getByRole('textbox', { name: 'Colonies on the site' })).toHaveValue('40');

  await ask(page, 'What did finding none tell me?');
  await type(page, {
    'Colonies on the site': '40',
    'Colonies opened, nothing found': '12',
    'Chance that your look finds an affected colony': '80',
  });
  await answerKeptByLink(page, /^Up to \d+ colonies of 40 .* may still be affected/);

  await ask(page, 'How common is it really?');
  await type(page, { Positive: '45', 'Tested or opened': '150' });
  await expect(page.locator('.answer')).toHaveText(/^45 of 150 are 30%/);
  await pick(page, 'What do you know of the test?', 1);
  await type(page, { 'Affected colonies it finds': '96', 'Unaffected colonies it lets be': '89' });
  await answerKeptByLink(page, /about 22% really affected, between 14% and 32%/);
  // The slow way waits for its button.
  await page.getByRole('radio', { name: 'How often it was right in a trial' }).press('Space');
  await expect(page.locator('.answer')).toHaveCount(0);
  await type(page, {
    'Trial: affected ones it found': '20',
    'Trial: affected ones tested': '22',
    'Trial: unaffected ones it let be': '89',
    'Trial: unaffected ones tested': '92',
  });
  await tabTo(page, 'button', 'Work it out');
  await page.keyboard.press('Enter');
  await expect(page.locator('.answer')).toHaveText(/^With a test known only from that trial/);

  await ask(page, 'Is the district free, and since when?');
  await type(page, {
    'Chance that disease came in, per round': '1',
    'Chance that one round would have found it': '80',
  });
  await page.getByLabel('Day of the first round').fill('2024-05-01');
  await answerKeptByLink(page, /98\.9%; it has kept the 95% aimed at since round 2, on 1 May 2025/);

  await ask(page, 'Do two inspectors agree?');
  await type(page, {
    'Both said affected': '19',
    'Only the first did': '10',
    'Only the second did': '6',
    'Neither did': '256',
  });
  await answerKeptByLink(page, /kappa\) is 0\.67, between 0\.52 and 0\.82/);

  await ask(page, 'What does this laboratory number mean?');
  await type(page, {
    'Load reported': '240',
    Laboratory: 'Quillmoor laboratory (invented)',
    'Method, as the report names it': 'culture',
    'Material, as the report names it': 'brood-nest honey',
  });
  await expect(page.locator('.asks')).toContainText('Colony-forming units per');
  await pick(page, 'Colony-forming units per', 0);
  await expect(page.locator('.asks')).toContainText('Its limits were stated on');
  await page.getByLabel('Its limits were stated on').fill(statedOn);
  await type(page, {
    'Where its limits are written': 'letter of that day',
    'Its classes': '0 few\n100 some\n1000 many',
  });
  await answerKeptByLink(page, /240 per gram is “some” by the limits of Quillmoor laboratory \(invented\)/);

  await ask(page, 'What do I need to destroy or disinfect?');
  const cautions = page.getByRole('region', { name: 'Before anything else' });
  await expect(cautions.getByRole('listitem').first()).toContainText('permit and local law decide');
  await expect(page.getByRole('radio', { name: /petrol/i })).toHaveCount(0);
  await pick(page, 'Are the bees dead?', 0);
  await type(page, {
    'Hives to burn': '4',
    'One hive, outside: length': '50',
    'One hive, outside: width': '40',
    'One hive, outside: height': '80',
    'Width of the pit': '1',
    'How high you stack in the pit': '0.5',
    'What will be left, height': '0.2',
    'Soil over what is left': '0.61',
  });
  await expect(page.locator('.asks')).toContainText('What feeds the fire');
  await pick(page, 'What feeds the fire', 1);
  await type(page, { 'Fuel for one hive': '12', 'Hives on one fire': '2', 'Until nothing glows, one fire': '2' });
  await expect(page.getByText('48 kg of fuel (Dry wood), 2 fires one after the other, about 4 hours')).toBeVisible();
  await answerKeptByLink(page, /^A pit 1\.6 m long, 1 m wide and 0\.81 m deep takes 4 hives/);
  await page.goto('/district/questions/burn-and-bury?fuel=petrol');
  await expect(page.getByRole('alert')).toContainText('left out: fuel=petrol');
});

test('an answer is kept on the case so far: the visit that left a suspicion', async ({ page }) => {
  await atTheDesk(page);
  const answer = await page.request.get('/api/apiaries?limit=500');
  const { apiaries } = (await answer.json()) as { apiaries: { name: string; mark: string | null }[] };
  const suspect = apiaries.find((one) => one.mark === 'suspect');
  if (!suspect) throw new Error('no apiary of the district is suspect');
  await page.goto('/district/questions/finding-none?colonies=20&opened=20&sensitivity=0.9');
  await page.getByRole('button', { name: 'Keep as a note' }).press('Enter');
  await page.getByLabel('On which apiary? Any part of its name, or of its keeper’s').fill(suspect.name);
  const keep = page.getByRole('button', { name: `Keep on the suspicion at ${suspect.name}` }).first();
  await expect(keep).toBeEnabled({ timeout: 60_000 });
  await picture(page, 'keep-on-case');
  await keep.press('Enter');
  await expect(page.getByRole('status').filter({ hasText: 'at the office.' })).toBeVisible({ timeout: 60_000 });
  await page.getByRole('link', { name: `Open ${suspect.name}` }).press('Enter');
  await expect(page.getByRole('list', { name: 'Notes' }).last()).toContainText('What did finding none tell me?');
});

test('limits of a laboratory are kept for every district, corrected with a reason, and read what plates show', async ({
  page,
}) => {
  await atTheDesk(page);
  const limits = {
    unit: 'g',
    laboratory: 'Quillmoor laboratory (invented)',
    method: 'culture',
    material: 'brood-nest honey',
    statedOn,
    source: 'letter of that day',
    classes: '0 few\n100 some\n1000 many',
  };
  await page.goto(`/district/questions/laboratory-number?${new URLSearchParams({ ...limits, load: '240' })}`);
  const keep = page.getByRole('button', { name: 'Keep these limits for every district' });
  await expect(keep).toBeEnabled({ timeout: 60_000 });
  await keep.press('Enter');
  await expect(page.getByText('Kept, and at the office: every district sees them.')).toBeVisible({ timeout: 60_000 });
  const kept = page.getByRole('button', {
    name: new RegExp(`^Quillmoor laboratory .* as stated on ${written(statedOn)}$`),
  });
  await expect(kept).toHaveCount(1);
  await expect(page.getByText('Written in: letter of that day. Entered by Wilda Harrowgate')).toBeVisible();
  await expect(keep).toHaveCount(0);

  // Another class for the same day: what was written down is corrected, and says so.
  await page.getByLabel('Its classes').fill('0 few\n200 some\n1000 many');
  await page.getByLabel(/Why is it wrong\?$/).fill('read the wrong line');
  await page.getByRole('button', { name: 'Correct what was written down' }).press('Enter');
  await expect(page.getByText(/Corrected by Wilda Harrowgate, .*: read the wrong line\./)).toBeVisible();

  // Kept by an earlier program on this desk alone: shown, and handed on.
  await page.evaluate(async () => {
    const found = (await indexedDB.databases()).find(({ name }) => name?.startsWith('combside'));
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const opening = indexedDB.open(found?.name ?? 'none');
      opening.onsuccess = () => resolve(opening.result);
      opening.onerror = () => reject(opening.error);
    });
    const writing = database.transaction('drafts', 'readwrite');
    writing.objectStore('drafts').put({
      key: 'laboratory-limits/Old laboratory',
      savedAt: '2020-01-01T00:00:00.000Z',
      value: {
        laboratory: 'Old laboratory (invented)',
        method: 'culture',
        material: 'adult bees',
        unit: 'bee',
        statedOn: '2020-03-01',
        source: 'its page',
        classes: '0 none\n5 some',
      },
    });
    await new Promise((resolve) => {
      writing.oncomplete = resolve;
    });
    database.close();
  });
  const plates = { report: 'plates', plates: '1 0.1 12\n1 0.1 15\n1 0.1 9', suspension: '20', amount: '10', unit: 'g' };
  await page.goto(`/district/questions/laboratory-number?${new URLSearchParams(plates)}`);
  await page.getByRole('button', { name: 'Keep this one for every district' }).press('Enter');
  await expect(
    page.getByRole('button', { name: /^Old laboratory \(invented\): culture, adult bees, per bee/ }),
  ).toBeVisible();
  await expect(page.getByText('Kept on this desk only')).toHaveCount(0);

  // Plates, read by the limits that the office holds.
  await expect(page.locator('.answer')).toHaveText(/^240 colony-forming units per gram, .* between 168 and 332/);
  await kept.press('Enter');
  await expect(page.getByText('240 per gram falls into no one class')).toBeVisible();
  await answerKeptByLink(page, /^240 colony-forming units per gram/);
  await picture(page, 'plates');
});

test('other ways than burning, the calendar and the strength of a colony answer by keyboard and by link', async ({
  page,
}) => {
  test.setTimeout(180_000);
  await atTheDesk(page);
  await page.goto('/district/questions/burn-and-bury');
  const cautions = page.getByRole('region', { name: 'Before anything else' });
  await pick(page, 'What is to be done', 0);
  await page.getByRole('radio', { name: 'Dip in hot wax' }).press('Space');
  await expect(cautions).toContainText('permit and local law decide');
  await expect(cautions).toContainText('paraffin');
  await expect(page.getByText('Permit, fire ban, ground water and local law decide.')).toBeVisible();
  await expect(page.locator('.answer')).toHaveCount(0);
  await pick(page, 'Are the bees dead?', 0);
  await pick(page, 'Is the wood scraped clean and dry?', 0);
  await pick(page, 'What is dipped', 0);
  await type(page, {
    'Boxes or pieces in all': '11',
    'Pieces in one dip': '2',
    'Temperature of the wax, with the pieces in it': '180',
  });
  await expect(page.getByRole('alert')).toHaveText('A whole number from 160 to 175.');
  await type(page, {
    'Temperature of the wax, with the pieces in it': '160',
    'Time of each dip': '10',
    'Wax that fills the vat': '200',
  });
  await expect(page.locator('.answer')).toHaveText(/^6 dips for 11 pieces: 60 minutes/);
  await picture(page, 'hot-wax');

  const ways = {
    scorch: 'accepted=yes&boxes=4&minutesPerBox=3',
    hypochlorite:
      'cleaned=yes&tankLength=100&tankWidth=50&liquidDepth=24&displaced=0&stockPercent=3&wantedPercent=0.5&bathMinutes=20',
    caustic: 'tankLength=100&tankWidth=50&liquidDepth=24&displaced=0&gramsPerLitre=12&bathMinutes=15',
    irradiate: 'freeOfHoney=yes&boxes=9&boxesPerUnit=2&boxKilograms=10&unitHeight=0.5&unitsPerLayer=4&leastDose=15',
  };
  for (const [way, inputs] of Object.entries(ways)) {
    await page.goto(`/district/questions/burn-and-bury?way=${way}&beesDead=yes&${inputs}`);
    await expect(page.locator('.answer')).toBeVisible();
    await expect(cautions).toContainText('permit and local law decide');
    await picture(page, `way-${way}`);
  }

  await ask(page, 'When was this cell laid, when will it emerge?');
  await pick(page, 'What is in it?', 2);
  await page.getByLabel('Seen on').fill('2026-06-21');
  await answerKeptByLink(page, 'Laid between 31 May 2026 and 12 June 2026.');

  await ask(page, 'When is the earliest sign after an exposure?');
  await page.getByLabel('Day on which spores may have come in').fill('2026-05-01');
  await answerKeptByLink(page, /between 6 May 2026 and 9 May 2026 at the earliest/);

  await ask(page, 'Can this case be released this season?');
  await type(page, {
    'Days until the first look': '40',
    'Looks without signs the law asks for': '2',
    'Days from look to look, at least': '30',
  });
  await page.getByLabel('Day from which the law counts').fill('2026-07-01');
  await page.getByLabel('Last day with fresh eggs this season').fill('2026-09-20');
  await answerKeptByLink(page, /^Yes, by the calendar: all 2 looks find brood this season/);

  await ask(page, 'How strong is this colony?');
  await pick(page, 'Which frames?', 0);
  await type(page, {
    'Comb sides covered with bees': '8',
    'Bees on 1 dm² fully covered': '130',
    'Error of judging by eye': '15',
    'Comb sides filled with capped brood': '0.35',
    'Cells on 1 cm² of one side': '4',
  });
  await expect(page.getByText('So much capped brood comes from about 102 eggs a day')).toBeVisible();
  await answerKeptByLink(page, /^About 9,058 bees on 8 comb sides/);
});
