import { walkthrough } from '@combside/casework/demo/walkthrough';
import type { Tap } from '@combside/casework/draft/tap';
import { languages } from '@combside/words/language';
import { loadWords } from '@combside/words/load-words';
import { afterEach, describe, expect, inject, test, vi } from 'vitest';
import { type PhoneOtherwise, raiseHive, refusedEntry, thousandVisits } from '../../stage/hive-stage.tsx';
import { headAndFootInSight, looksRight, phones } from '../../stage/looks.ts';
import { press } from '../../stage/press.ts';
import { lit, strike } from '../../stage/raise.tsx';
import type { StageScreen } from '../../stage/screens.ts';
import { draftKey } from './colony/use-colony-draft.ts';
import { hiveRooms } from './hive-screens.tsx';

const { running, planned } = inject('record');
const colonyOf = (label: string) => running.colonies[label] ?? '';
const visit = `/visit/${running.visit}`;
const open = `${visit}/colony/${colonyOf('6')}`;
const closed = `${visit}/colony/${colonyOf('4')}`;
const correcting = `${visit}/correct/${colonyOf('4')}`;

/** The colony not opened yet, with these taps in its draft. */
function tapped(taps: readonly Tap[]): PhoneOtherwise {
  return { before: (device) => device.drafts.change(draftKey(running.visit, colonyOf('6')), () => taps) };
}

/** What the story taps at its suspect colony: signs of many groups, cells, a rope test, finds. */
const tapsOfTheStory = walkthrough.flatMap((step) => (step.step === 'colony' && step.label === '4' ? step.taps : []));
const muchSeen = tapped(tapsOfTheStory);
/** The same, suspected, with one more rope test begun and not kept. */
const suspected = tapped([
  ...tapsOfTheStory,
  {
    tap: 'rope form',
    form: {
      tissue: 'moist brown',
      stick: 'rough and dry',
      threadMillimetres: null,
      snapsBack: null,
      colour: null,
      place: null,
    },
  },
  { tap: 'suspects', conditions: ['american-foulbrood'] },
]);
const nothingSeen = tapped([{ tap: 'everything looked at' }]);
const stonebrood = tapped([{ tap: 'sign', sign: 'con.mummy_stone', outcome: 'seen' }]);

/** Nothing was seen at it, and what is written finds no room on the phone. */
const withoutRoom: PhoneOtherwise = {
  async before(device) {
    await nothingSeen.before?.(device);
    const full = () => Promise.reject(new DOMException('no room', 'QuotaExceededError'));
    vi.spyOn(device.book, 'write').mockImplementation(full);
  },
};

interface Shown {
  readonly screen: StageScreen;
  readonly path: string;
  /** Id of the title, with its values: what tells this screen from one that says it is opening, or that nothing is there. */
  readonly title: string;
  readonly values?: Readonly<Record<string, string>>;
  /** What stands on it once it is drawn whole. */
  readonly shows: string;
  readonly phone?: PhoneOtherwise;
}

const colony = { title: 'hive.colony.title', values: { label: '6' } };
const signs = { title: 'hive.signs.title', values: { label: '6' } };
const correction = { title: 'hive.correct.title', values: { label: '4' } };

const screens: readonly Shown[] = [
  { screen: 'phone/today', path: '/', title: 'hive.today.title', shows: '.visit-card' },
  {
    screen: 'phone/today-empty',
    path: '/',
    title: 'hive.today.title',
    shows: '.hive-body .quiet',
    phone: { isEmpty: true, storageKept: false },
  },
  {
    screen: 'phone/today-fetching',
    path: '/',
    title: 'hive.today.title',
    shows: '.hive-body p',
    phone: { isEmpty: true, sync: { lastExchangeAt: null } },
  },
  {
    screen: 'phone/today-offline',
    path: '/',
    title: 'hive.today.title',
    shows: '.hive-body a[href$="/not-taken"]',
    phone: { sync: { network: false, waiting: 12_345, refused: 2, failure: 'no connection' } },
  },
  {
    screen: 'phone/today-too-much',
    path: '/',
    title: 'hive.today.title',
    shows: '.rows li:nth-child(1000)',
    phone: { besides: thousandVisits() },
  },
  { screen: 'phone/find', path: '/find', title: 'hive.today.find', shows: '.hive-body li' },
  {
    screen: 'phone/find-too-much',
    path: '/find',
    title: 'hive.today.find',
    shows: '.rows li:nth-child(30)',
    phone: { besides: thousandVisits() },
  },
  { screen: 'phone/roadside', path: '/roadside', title: 'roadside.title', shows: '#photograph-title' },
  {
    screen: 'phone/not-taken',
    path: '/not-taken',
    title: 'hive.not-taken.title',
    shows: '.hive-body li',
    phone: { notTaken: [refusedEntry] },
  },
  { screen: 'phone/safety-card', path: `/safety/${running.apiary}`, title: 'hive.safety.title', shows: '.position' },
  {
    screen: 'phone/start-visit',
    path: `/start/visit/${planned.visit}/apiary/${planned.apiary}`,
    title: planned.name,
    shows: '.hive-foot button',
  },
  {
    screen: 'phone/start-unplanned',
    path: `/start/apiary/${planned.apiary}`,
    title: planned.name,
    shows: '.hive-foot button',
  },
  { screen: 'phone/plan', path: visit, title: running.name, shows: '.apiary-plan svg' },
  { screen: 'phone/walking-order', path: `${visit}/walk`, title: running.name, shows: '.colony-row' },
  { screen: 'phone/colony', path: open, ...colony, shows: '.reasoning-line' },
  { screen: 'phone/colony-less', path: `${open}/less`, ...colony, shows: '.stepper' },
  { screen: 'phone/signs', path: `${open}/signs`, ...signs, shows: '[role="tab"]' },
  { screen: 'phone/signs-seen', path: `${open}/signs`, ...signs, shows: '[data-outcome="seen"]', phone: muchSeen },
  { screen: 'phone/more', path: `${open}/more`, ...colony, shows: '.rope-how' },
  { screen: 'phone/rope-test', path: `${open}/more`, ...colony, shows: '.kept-line', phone: muchSeen },
  { screen: 'phone/reasoning', path: `${open}/why`, ...colony, shows: '.reasoning-page h2', phone: muchSeen },
  { screen: 'phone/close', path: `${open}/close`, ...colony, shows: '.hive-body .caution .button', phone: suspected },
  {
    screen: 'phone/close-nothing-seen',
    path: `${open}/close`,
    ...colony,
    shows: '.large-words',
    phone: nothingSeen,
  },
  { screen: 'phone/suspect', path: closed, title: 'hive.colony.title', values: { label: '4' }, shows: '.hive-foot a' },
  { screen: 'phone/correct-look', path: correcting, ...correction, shows: '.reasoning-line' },
  { screen: 'phone/correct-why', path: `${correcting}/close`, ...correction, shows: '.text-input' },
  {
    screen: 'phone/clean-down',
    path: `${visit}/clean-down/${colonyOf('4')}`,
    title: 'hive.clean.title',
    shows: '.hive-foot button',
  },
  {
    screen: 'phone/clean-down-exit',
    path: `${visit}/clean-down/exit`,
    title: 'hive.clean.title-exit',
    shows: '.hive-foot button',
  },
  { screen: 'phone/end', path: `${visit}/end`, title: 'hive.end.title', shows: '.hive-foot button' },
  { screen: 'phone/result', path: `${visit}/result`, title: 'hive.result.title', shows: 'article' },
];

afterEach(() => {
  strike();
  vi.restoreAllMocks();
});

describe.each(languages)('at the hive in %s', (language) => {
  const title = async ({ title: id, values = {} }: Shown) =>
    id.includes('.') ? (await loadWords(language, hiveRooms)).say(id as never, values as never) : id;

  test.each(screens)('$screen looks right', async (one) => {
    await raiseHive(one.path, language, one.phone);
    await expect.poll(() => document.querySelector('h1')?.textContent).toBe(await title(one));
    await expect.poll(() => document.querySelector(one.shows), { timeout: 15_000 }).not.toBeNull();
    await looksRight(language, phones);
    await headAndFootInSight();
  });

  test.each([
    ['phone/reasoning-dark', 'dark'],
    ['phone/reasoning-sun', 'sun'],
  ] as const)('%s', async (_screen, theme) => {
    await raiseHive(`${open}/why`, language, muchSeen);
    lit(theme);
    await expect.poll(() => document.querySelector('.reasoning-page h2'), { timeout: 15_000 }).not.toBeNull();
    await looksRight(language, phones);
  });

  test('phone/write-failed', async () => {
    await raiseHive(`${open}/close`, language, withoutRoom);
    const words = await loadWords(language, hiveRooms);
    await press('.hive-body:has(.large-words) ~ .hive-foot button');
    await expect
      .poll(() => document.querySelector('[role=alert]')?.textContent, { timeout: 8_000 })
      .toBe(words.say('always.write.failed.storage full'));
    await looksRight(language, phones);
    await headAndFootInSight();
  });

  test.each([
    ['phone/reasoning-failed', `${open}/why`, '.hive-body .caution'],
    ['phone/reasoning-line-failed', open, '.reasoning-line'],
  ] as const)('%s', async (_screen, path, shows) => {
    // What reckons beside the page is gone.
    vi.spyOn(Worker.prototype, 'postMessage').mockImplementation(() => {
      throw new Error('the reasoning stopped');
    });
    await raiseHive(path, language, stonebrood);
    const words = await loadWords(language, hiveRooms);
    await expect
      .poll(() => document.querySelector(shows)?.textContent, { timeout: 15_000 })
      .toContain(words.say('always.went-wrong'));
    await looksRight(language, phones);
    await headAndFootInSight();
  });

  // Its cautions stand before anything else.
  test('phone/reasoning-stonebrood', async () => {
    await raiseHive(`${open}/why`, language, stonebrood);
    const words = await loadWords(language, hiveRooms);
    await expect.poll(() => document.querySelector('.reasoning-page h2'), { timeout: 15_000 }).not.toBeNull();
    const cautions = [...document.querySelectorAll('.reasoning-page > section:first-child .caution')];
    expect(cautions.slice(0, 2).map((one) => one.textContent)).toEqual([
      words.say('signs.caution.respirator'),
      words.say('signs.caution.do-not-shake'),
    ]);
    await looksRight(language, phones);
  });
});
