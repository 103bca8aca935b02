import { mkdtempSync, rmSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from '@playwright/test';
import { browserFlags, findBrowser } from './browser.ts';
import { moveClock, setClock } from './day.ts';
import { scriptsOfFirstLoad } from './first-load.ts';
import { expect, installed, test } from './journey.ts';
import { signIn } from './sign-in.ts';

/*
 * The page is killed in the middle of everything. A phone has three ways to do it: the browser ends the page, the system
 * ends the browser, the battery ends the system. The first two are played here, without any handler being run: the
 * renderer crashes, or the whole browser does and is started again on what it had written to disk.
 *
 * What counts is what the person was told: after "saved here" stood on the screen, it must be there again.
 */

/** A browser with a disk of its own, as a phone has it, and the one page that is open. */
class Phone {
  readonly #folder = mkdtempSync(join(tmpdir(), 'combside-phone-'));
  readonly #address: string;
  #context: BrowserContext | undefined;
  #page: Page | undefined;
  #hasSignal = true;

  constructor(address: string) {
    this.#address = address;
  }

  get page(): Page {
    if (!this.#page) throw new Error('the phone is off');
    return this.#page;
  }

  get context(): BrowserContext {
    if (!this.#context) throw new Error('the phone is off');
    return this.#context;
  }

  async switchOn(): Promise<void> {
    const { viewport, deviceScaleFactor, hasTouch, isMobile, locale, timezoneId, actionTimeout } =
      test.info().project.use;
    this.#context = await chromium.launchPersistentContext(this.#folder, {
      executablePath: await findBrowser(),
      args: browserFlags(),
      baseURL: this.#address,
      ...Object.fromEntries(
        Object.entries({ viewport, deviceScaleFactor, hasTouch, isMobile, locale, timezoneId }).filter(
          ([, value]) => value !== undefined,
        ),
      ),
    });
    await setClock(this.#context);
    this.#context.setDefaultTimeout(actionTimeout ?? 30_000);
    await this.#context.setOffline(!this.#hasSignal);
    this.#page = this.#context.pages()[0] ?? (await this.#context.newPage());
  }

  async signal(has: boolean): Promise<void> {
    this.#hasSignal = has;
    await this.context.setOffline(!has);
  }

  /** The renderer dies; the person opens the same address again. */
  async killPage(address = this.page.url()): Promise<void> {
    const dying = this.page;
    const crashed = dying.waitForEvent('crash');
    const session = await this.context.newCDPSession(dying);
    session.send('Page.crash').catch(() => undefined);
    await crashed;
    this.#page = await this.context.newPage();
    await dying.close();
    await this.page.goto(address);
  }

  /** The whole browser dies with everything it had not written yet; it is started again on the same disk. */
  async killBrowser(address = this.page.url()): Promise<void> {
    const dead = this.context.waitForEvent('close');
    const browser = this.context.browser();
    if (!browser) throw new Error('the phone’s browser cannot be reached');
    const session = await browser.newBrowserCDPSession();
    session.send('Browser.crash').catch(() => undefined);
    await dead;
    await this.switchOn();
    await this.page.goto(address);
  }

  async throwAway(): Promise<void> {
    await this.#context?.close().catch(() => undefined);
    rmSync(this.#folder, { recursive: true, force: true, maxRetries: 5 });
  }
}

const phoneTest = test.extend<{ phone: Phone }>({
  phone: async ({ server }, use) => {
    const phone = new Phone(server.address);
    await phone.switchOn();
    await use(phone);
    await phone.throwAway();
  },
});

const saved = (page: Page) => expect(page.getByRole('status').filter({ hasText: 'saved here' })).toBeVisible();
const radio = (page: Page, group: string | RegExp, name: string) =>
  page.getByRole('radiogroup', { name: group }).first().getByRole('radio', { name, exact: true });
const more = (page: Page, label: string | RegExp) =>
  page
    .getByRole('group', { name: label })
    .first()
    .getByRole('button', { name: /: More$/ });

/** Signs in, lets the district arrive and the program install itself, and starts a visit without a network. */
async function visitBegun(phone: Phone, apiary: RegExp, count: string): Promise<string> {
  const { page } = phone;
  await page.goto('/');
  await signIn(page, 'ines@quillmoor.example');
  await page.getByRole('link', { name: 'At the hive' }).click();
  await expect(page.getByText(/visits? planned/)).toBeVisible({ timeout: 60_000 });
  await expect(page.getByText('at the office')).toBeVisible({ timeout: 60_000 });
  await installed(page);
  await phone.signal(false);
  await page.getByRole('link', { name: apiary }).click();
  await page.getByRole('button', { name: `${count}, as registered` }).click();
  await page.getByRole('radio', { name: 'with consent', exact: true }).click();
  await page.getByRole('button', { name: 'Start the visit' }).click();
  await expect(page.getByText(`0 of ${count}`)).toBeVisible();
  return page.url().replace(/\/(plan|walk)$/, '');
}

type Kill = 'page' | 'browser';

interface Step {
  readonly what: string;
  /** Part of the colony's screens where it is tapped and read again. */
  readonly view: 'look' | 'less' | 'signs' | 'more' | 'close';
  /** What is killed once the screen said that it is saved: each kind once in each view. */
  readonly kills?: readonly Kill[];
  readonly tap: (page: Page) => Promise<void>;
  readonly stands: (page: Page) => Promise<void>;
}

const cappings = (page: Page) => page.getByRole('tab', { name: /^Cappings/ }).click();
const checked = (page: Page, group: string | RegExp, name: string) =>
  expect(radio(page, group, name)).toHaveAttribute('aria-checked', 'true');

/**
 * A whole examination, in the order of the hand. Every step stands after the last kill; the store's own suite kills at
 * every tap (`record-acceptance.desk.spec.ts`).
 */
const examination: readonly Step[] = [
  {
    what: 'the hive is dead',
    view: 'look',
    kills: ['browser'],
    tap: (page) => radio(page, 'This hive', 'Dead').click(),
    stands: (page) => checked(page, 'This hive', 'Dead'),
  },
  {
    what: 'undone: the hive lives',
    view: 'look',
    kills: ['page'],
    tap: (page) => radio(page, 'This hive', 'Living').click(),
    stands: (page) => checked(page, 'This hive', 'Living'),
  },
  {
    what: 'frames looked at',
    view: 'less',
    tap: (page) => more(page, /^Brood frames looked at/).click(),
    stands: (page) =>
      expect(page.getByRole('group', { name: /^Brood frames looked at/ }).first()).toContainText(/\d+ of \d+/),
  },
  {
    what: 'both sides',
    view: 'less',
    kills: ['page'],
    tap: (page) => radio(page, 'Sides of each frame', 'Both').click(),
    stands: (page) => checked(page, 'Sides of each frame', 'Both'),
  },
  {
    what: 'bees shaken off',
    view: 'less',
    kills: ['browser'],
    tap: (page) => radio(page, 'Bees shaken off', 'Yes').click(),
    stands: (page) => checked(page, 'Bees shaken off', 'Yes'),
  },
  {
    what: 'hold of the frame',
    view: 'less',
    tap: (page) => radio(page, 'How the frame was held', 'Top bar toward me').click(),
    stands: (page) => checked(page, 'How the frame was held', 'Top bar toward me'),
  },
  {
    what: 'light',
    view: 'less',
    tap: (page) => radio(page, 'Light', 'Torch').click(),
    stands: (page) => checked(page, 'Light', 'Torch'),
  },
  {
    what: 'sealed brood',
    view: 'less',
    tap: (page) =>
      more(page, /^Sealed brood/)
        .first()
        .click(),
    stands: (page) => expect(page.getByRole('group', { name: /^Sealed brood/ }).getByRole('status')).toHaveText('1'),
  },
  {
    what: 'a sign seen',
    view: 'signs',
    kills: ['browser'],
    tap: async (page) => {
      await cappings(page);
      await page.getByRole('button', { name: /^Sunken cappings not looked/ }).click();
    },
    stands: async (page) => {
      await cappings(page);
      await expect(page.getByRole('button', { name: /^Sunken cappings seen/ })).toHaveAttribute('aria-pressed', 'true');
    },
  },
  {
    what: 'how many cells',
    view: 'signs',
    tap: async (page) => {
      await cappings(page);
      await page.getByRole('radio', { name: '11–100', exact: true }).click();
    },
    stands: async (page) => {
      await cappings(page);
      await expect(page.getByRole('radio', { name: '11–100', exact: true })).toHaveAttribute('aria-checked', 'true');
    },
  },
  {
    what: 'cells at a place',
    view: 'signs',
    kills: ['page'],
    tap: async (page) => {
      await cappings(page);
      await page.getByRole('button', { name: 'Box, frame and side' }).click();
      await page.getByRole('button', { name: 'Cells opened: More 10' }).click();
      await page.getByRole('button', { name: 'of these affected: More', exact: true }).click();
    },
    stands: async (page) => {
      await cappings(page);
      await expect(page.getByText(/frame 1, side A: 1 affected of 1 opened/i)).toBeVisible();
    },
  },
  {
    what: 'the rest not seen',
    view: 'signs',
    tap: async (page) => {
      await cappings(page);
      await page
        .getByRole('button', { name: /^All others in this group/ })
        .last()
        .click();
    },
    stands: async (page) => {
      await cappings(page);
      await expect(page.getByRole('button', { name: /cappings not looked/i })).toHaveCount(0);
    },
  },
  {
    what: 'a rope test',
    view: 'more',
    tap: async (page) => {
      await page.getByRole('radio', { name: 'Moist, brown', exact: true }).click();
      await page.getByRole('radio', { name: 'Rough and dry', exact: true }).click();
      for (let step = 0; step < 5; step++)
        await page.getByRole('button', { name: 'Thread when it broke: More' }).click();
      await page.getByRole('button', { name: 'Keep this rope test' }).click();
    },
    stands: (page) => expect(page.getByText('20 mm')).toBeVisible(),
  },
  {
    what: 'a find at the same opening',
    view: 'more',
    tap: (page) => radio(page, /^small hive beetle/, 'slight').click(),
    stands: (page) => checked(page, /^small hive beetle/, 'slight'),
  },
  {
    what: 'what the keeper says of medicine',
    view: 'more',
    tap: (page) => radio(page, /^Medicine given/, 'None').click(),
    stands: (page) => checked(page, /^Medicine given/, 'None'),
  },
  {
    what: 'what the keeper says of combs',
    view: 'more',
    tap: (page) => radio(page, /^Combs renewed/, 'Not known').click(),
    stands: (page) => checked(page, /^Combs renewed/, 'Not known'),
  },
  {
    what: 'a photograph',
    view: 'more',
    kills: ['browser'],
    tap: async (page) => {
      await page.setInputFiles('input[type=file]', {
        name: 'comb.png',
        mimeType: 'image/png',
        buffer: await readFile(new URL('../public/icon-192.png', import.meta.url)),
      });
      await expect(page.getByText('1 photograph')).toBeVisible();
    },
    stands: (page) => expect(page.getByText('1 photograph')).toBeVisible(),
  },
  {
    what: 'a remark, still being typed',
    view: 'more',
    kills: ['page'],
    tap: (page) => page.getByLabel('Remarks').pressSequentially('wet cappings, lower box'),
    stands: (page) => expect(page.getByLabel('Remarks')).toHaveValue('wet cappings, lower box'),
  },
  {
    what: 'an undo',
    view: 'more',
    tap: async (page) => {
      await radio(page, /^wax moth/, 'marked').click();
      await page.getByRole('button', { name: 'Undo: wax moth' }).click();
    },
    stands: (page) => expect(radio(page, /^wax moth/, 'marked')).toHaveAttribute('aria-checked', 'false'),
  },
  {
    what: 'what the inspector suspects, before closing',
    view: 'close',
    kills: ['page', 'browser'],
    tap: (page) => page.getByRole('radio', { name: 'American foulbrood', exact: true }).click(),
    stands: async (page) => {
      await expect(page.getByRole('radio', { name: 'American foulbrood', exact: true })).toHaveAttribute(
        'aria-checked',
        'true',
      );
      await expect(page.getByRole('button', { name: 'I suspect American foulbrood' })).toBeVisible();
    },
  },
];

/** The colony's address without the view. */
async function openColony(page: Page, label: string): Promise<string> {
  await page.getByRole('button', { name: `Open colony ${label}` }).click();
  await expect(page.getByRole('heading', { name: `Colony ${label}` })).toBeVisible();
  return page.url();
}

phoneTest(
  'killed in every view of an examination, nothing that was said to be saved is lost',
  async ({ phone, server }) => {
    test.setTimeout(400_000);
    const visit = await visitBegun(phone, /^Hazel Bank/, '6');
    // Killed with the visit just begun.
    await phone.killBrowser();
    await expect(phone.page.getByText('0 of 6')).toBeVisible();
    const colony = await openColony(phone.page, '1');
    const at = (view: Step['view']) => (view === 'look' ? colony : `${colony}/${view}`);

    const killed: string[] = [];
    for (const step of examination) {
      await test.step(step.what, async () => {
        if (phone.page.url() !== new URL(at(step.view), phone.page.url()).href) await phone.page.goto(at(step.view));
        await step.tap(phone.page);
        await saved(phone.page);
        for (const kind of step.kills ?? []) {
          await (kind === 'browser' ? phone.killBrowser(at(step.view)) : phone.killPage(at(step.view)));
          killed.push(`${step.view}, ${kind}`);
        }
        await step.stands(phone.page);
      });
    }
    const views = new Set(examination.map(({ view }) => view));
    expect(killed.sort()).toEqual([...views].flatMap((view) => [`${view}, browser`, `${view}, page`]).sort());

    // All of it together, once more, and the person is told why it stands there.
    await phone.page.goto(colony);
    await expect(
      phone.page.getByText('This draft was open when the phone stopped. Everything tapped is here.'),
    ).toBeVisible();
    const overtaken = ['the hive is dead', 'a sign seen'];
    for (const step of examination.filter(({ what }) => !overtaken.includes(what))) {
      if (phone.page.url() !== new URL(at(step.view), phone.page.url()).href) await phone.page.goto(at(step.view));
      await test.step(`still: ${step.what}`, () => step.stands(phone.page));
    }

    // Closed, said to be closed, killed: closed it is, and no draft is left.
    await phone.page.goto(at('close'));
    await phone.page.getByRole('button', { name: 'I suspect American foulbrood' }).click();
    await expect(phone.page.getByText('Colony 1 is closed.')).toBeVisible({ timeout: 30_000 });
    await phone.killBrowser(colony);
    await expect(phone.page.getByText('Colony 1 is closed.')).toBeVisible();
    await expect(phone.page.getByText('20 mm')).toBeVisible();
    await phone.page.goto(visit);
    await expect(phone.page.getByText('1 of 6')).toBeVisible();

    // Killed within the closing itself, at once and a little later: either it is still open, with its draft, or it is closed.
    let closedAtOnce = 0;
    for (const [label, wait] of [
      ['2', 0],
      ['3', 60],
    ] as const) {
      await test.step(`closing colony ${label} is cut after ${wait} ms`, async () => {
        await phone.page.goto(visit);
        await phone.page
          .getByRole('button', { name: /clean down/i })
          .or(phone.page.getByRole('button', { name: /^Open colony/ }))
          .first()
          .waitFor();
        const row = await colonyAddress(phone.page, visit, label);
        await phone.page.goto(row);
        await phone.page.getByRole('button', { name: /^Nothing seen/ }).click();
        await phone.page.getByRole('button', { name: `Close colony ${label}` }).click();
        await new Promise((resolve) => setTimeout(resolve, wait));
        await phone.killPage(row);
        const closed = phone.page.getByText(`Colony ${label} is closed.`);
        const open = phone.page.getByRole('button', { name: /^Nothing seen/ });
        await expect(closed.or(open)).toBeVisible();
        if (await closed.isVisible()) closedAtOnce += 1;
        else {
          await open.click();
          await phone.page.getByRole('button', { name: `Close colony ${label}` }).click();
          await expect(phone.page.getByText(/\d of 6/)).toBeVisible();
        }
      });
    }
    test.info().annotations.push({ type: 'closed although cut', description: `${closedAtOnce} of 2` });

    // With a network again the office has each closed colony exactly once, and the photograph.
    // The browser writes its cookies now and then: after such an end the office may ask for the password again. Here it
    // always does, so that this way is walked each time.
    await phone.context.clearCookies();
    await phone.signal(true);
    await phone.page.goto(visit);
    await phone.page.getByRole('link', { name: 'Sign in again to send' }).click({ timeout: 60_000 });
    await signIn(phone.page, 'ines@quillmoor.example');
    await expect(phone.page.getByRole('link', { name: /^Hazel Bank/ })).toBeVisible();
    await expect(phone.page.getByText('at the office')).toBeVisible({ timeout: 60_000 });
    const id = visit.split('/').at(-1);
    const seen = await phone.page.request.get(`${server.address}/api/visits/${id}`);
    expect(seen.ok()).toBe(true);
    const { colonies } = (await seen.json()) as {
      colonies: {
        label: string;
        examinations: { body: { remarks: string; photographs: unknown[] } }[];
        assessments: unknown[];
      }[];
    };
    const examined = colonies.filter((one) => one.examinations.length > 0);
    expect(examined.map((one) => one.label).sort()).toEqual(['1', '2', '3']);
    for (const one of examined) {
      expect(one.examinations, `examinations of colony ${one.label}`).toHaveLength(1);
      expect(one.assessments, `assessments of colony ${one.label}`).toHaveLength(1);
    }
    expect(examined.find((one) => one.label === '1')?.examinations[0]?.body).toMatchObject({
      beesShaken: true,
      light: 'torch',
      hold: 'top bar toward the viewer',
      sealedBroodCombSides: 1,
      remarks: 'wet cappings, lower box',
      ropeTests: [{ threadMillimetres: 20 }],
      medicines: { answer: 'none' },
      combChanges: { answer: 'not known' },
      finds: [{ find: 'small-hive-beetle', outcome: 'seen', amount: 'slight' }],
      photographs: [{ mediaType: 'image/png' }],
    });
  },
);

/** Address of a colony of this visit, read from the walking order. */
async function colonyAddress(page: Page, visit: string, label: string): Promise<string> {
  await page.goto(`${visit}/walk`);
  await page.getByRole('button', { name: new RegExp(`^Colony ${label}\\b`) }).click();
  await page.waitForURL(/\/(colony|clean-down)\//);
  const owed = /[?]next=(.+)$/.exec(page.url());
  return owed ? `${visit}/colony/${owed[1]}` : page.url();
}

test('fourteen days later without a network the hive still opens and works', async ({ page, context }) => {
  test.setTimeout(180_000);
  await page.goto('/');
  await signIn(page, 'ines@quillmoor.example');
  await page.getByRole('link', { name: 'At the hive' }).click();
  await expect(page.getByText('at the office')).toBeVisible({ timeout: 60_000 });
  await installed(page);
  await context.setOffline(true);
  await page.close();

  const later = await context.newPage();
  await later.addInitScript(moveClock, 14 * 86_400_000);
  await later.goto('/hive');
  // Whichever visit no other journey has begun.
  const planned = later.getByRole('link', { name: /was planned for/ }).first();
  await planned.click();
  await later.getByRole('button', { name: /as registered$/ }).click();
  await later.getByRole('radio', { name: 'with consent', exact: true }).click();
  await later.getByRole('button', { name: 'Start the visit' }).click();
  await later.getByRole('button', { name: /^Open colony/ }).click();
  await later.getByRole('button', { name: /^Nothing seen/ }).click();
  await later.getByRole('button', { name: /^Close colony/ }).click();
  await expect(later.getByText(/^1 of \d+$/)).toBeVisible();
  await later.reload();
  await expect(later.getByText(/^1 of \d+$/)).toBeVisible();
});

/** Largest allowed first load of the hive side: all its script, as gzip, in bytes. */
const mostScript = 250_000;

test('the first load of the hive side sends at most 250 kB of script', async ({ page, context }) => {
  await page.goto('/');
  await signIn(page, 'ines@quillmoor.example');
  await expect(page.getByRole('link', { name: 'At the hive' })).toBeVisible();
  const signedIn = await context.storageState({ indexedDB: true });
  const browser = context.browser();
  if (!browser) throw new Error('no browser to open a second time');

  // A phone that was never here, but for being signed in; what the service worker keeps for later is not the first load.
  const fresh = await browser.newContext({ storageState: signedIn, serviceWorkers: 'block' });
  const first = await fresh.newPage();
  const loaded = await scriptsOfFirstLoad(first, new URL('/hive', page.url()).href, async () => {
    await expect(first.getByText(/visits? planned/)).toBeVisible({ timeout: 60_000 });
  });
  const sizes = [...loaded.values()];
  const total = sizes.reduce((sum, size) => sum + size, 0);
  console.log(
    `script of the first load of the hive side, as gzip: ${(total / 1000).toFixed(1)} kB in ${sizes.length} files`,
  );
  expect(sizes.length).toBeGreaterThan(2);
  expect([...loaded.keys()].some((address) => address.includes('worker'))).toBe(true);
  expect(Math.min(...sizes)).toBeGreaterThan(0);
  expect(total).toBeLessThanOrEqual(mostScript);
  await fresh.close();
});
