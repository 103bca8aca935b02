import { wordsOfMarks } from '@combside/casework/result/result-mark';
import type { FigureRecords } from '@combside/contract/figures';
import type { MapAnswer, MapBackground, MapExtent } from '@combside/contract/map';
import { languages } from '@combside/words/language';
import { loadWords } from '@combside/words/load-words';
import { afterEach, describe, expect, inject, test } from 'vitest';
import { type Office, raiseDesk } from '../../stage/desk-stage.tsx';
import { desks, looksRight } from '../../stage/looks.ts';
import { officeOf } from '../../stage/office-answers.ts';
import { colonyOfStory, officeOfStory } from '../../stage/office-of-story.ts';
import { press } from '../../stage/press.ts';
import { strike } from '../../stage/raise.tsx';
import type { StageScreen } from '../../stage/screens.ts';

const some = officeOf(6, (number) => `Alder Bank ${number}`);
const none = officeOf(0, String);
const tooMuch = officeOf(
  1000,
  (number) => `Oberunterwaldwiesenbrückenmühlenbach am Honigbienenschutzgebietsrand ${number}`,
);

const { running } = inject('record');
const story: Office = { ...some, ...officeOfStory };
const box = { west: 3.2, south: 56.2, east: 3.6, north: 56.6 };
const onTheMap: Office = {
  ...story,
  'map/extent': { box, unplaced: 2 } satisfies MapExtent,
  map: {
    points: wordsOfMarks.map((mark, number) => ({
      apiary: number === 0 ? running.apiary : `01900000-0000-7000-8000-0000000003${String(number).padStart(2, '0')}`,
      name: running.name,
      latitude: 56.3 + number / 100,
      longitude: 3.4,
      uncertaintyMetres: 8,
      mark,
    })),
    heaps: [{ latitude: 56.35, longitude: 3.3, apiaries: 1234, suspect: 3 }],
    apiaries: 1234 + wordsOfMarks.length,
  } satisfies MapAnswer,
  // Laid behind it is something that cannot be fetched, and that is said.
  'map/background': { kind: 'tiles', address: '/nowhere/{z}/{x}/{y}.png' } satisfies MapBackground,
};
const [examined] = colonyOfStory.examinations;
const records: FigureRecords = {
  records: [
    {
      examination: examined?.written.entry ?? '',
      colony: colonyOfStory.about.id,
      colonyLabel: '4',
      visit: running.visit,
      apiary: running.apiary,
      apiaryName: 'Oberunterwaldwiesenbrückenmühlenbach am Honigbienenschutzgebietsrand',
      observedAt: examined?.body.observedAt ?? null,
      depth: 'full',
      hiveState: 'living',
      reason: 'suspicion reported',
      result: 'suspect',
      suspected: ['american-foulbrood'],
      basis: 'pack rule',
    },
  ],
  count: 12,
};
const reasoning = `/reasoning/colony/${colonyOfStory.about.id}/examination/${examined?.written.entry}`;

interface Shown {
  readonly screen: StageScreen;
  readonly path: string;
  readonly office: Office;
  /** What a person does before the screen stands. */
  readonly before?: () => Promise<void>;
  readonly shows: string;
}

const screens: readonly Shown[] = [
  { screen: 'desk/desk', path: '/', office: some, shows: '.places a, .office-line' },
  { screen: 'desk/desk-empty', path: '/', office: none, shows: '.quiet' },
  { screen: 'desk/desk-too-much', path: '/', office: tooMuch, shows: '.rows li:nth-child(30)' },
  { screen: 'desk/desk-loading', path: '/', office: 'slow', shows: '.quiet' },
  { screen: 'desk/desk-silent', path: '/', office: 'silent', shows: '.caution' },
  {
    screen: 'desk/apiary-open',
    path: `/apiary/${running.apiary}`,
    office: story,
    shows: `a[href*="${running.colonies['1']}"]`,
  },
  { screen: 'desk/visit', path: `/visit/${running.visit}`, office: story, shows: '.office-page article' },
  {
    screen: 'desk/colony',
    path: `/colony/${colonyOfStory.about.id}`,
    office: story,
    shows: '.office-page .look-day',
  },
  { screen: 'desk/nothing-there', path: `/colony/${running.apiary}`, office: story, shows: '.office-page p' },
  {
    screen: 'desk/ask-for-visit',
    path: `/apiary/${running.apiary}`,
    office: story,
    before: () => press('.ask-for-visit summary'),
    shows: '.ask-for-visit .button.act',
  },
  { screen: 'desk/map', path: '/?show=map', office: onTheMap, shows: '.map-frame[data-shown="1239"]' },
  {
    screen: 'desk/map-beside-page',
    path: `/apiary/${running.apiary}?show=map`,
    office: onTheMap,
    shows: '.desk-parts.open:has(.office-page h2) .map-frame[data-shown="1239"]',
  },
  {
    screen: 'desk/map-none',
    path: '/?show=map',
    office: { ...none, 'map/extent': { box: null, unplaced: 0 }, map: { points: [], heaps: [], apiaries: 0 } },
    shows: '.map-frame[data-shown="0"]',
  },
  { screen: 'desk/map-silent', path: '/?show=map', office: 'silent', shows: '.map-told .finding' },
  { screen: 'desk/reasoning', path: reasoning, office: story, shows: '.reasoning-page h2' },
  {
    screen: 'desk/reasoning-what-if',
    path: reasoning,
    office: story,
    before: async () => {
      await press('.reasoning-desk button');
      await press('.what-if-answer:last-child input');
      await press('.what-if-answer:nth-of-type(1) input');
    },
    shows: '.what-if [role=status]',
  },
  {
    screen: 'desk/figure-records',
    path: '/figures?figure=prevalence|american-foulbrood|full',
    office: { ...some, 'figures/records': records },
    shows: '[aria-labelledby=records-title] table',
  },
  { screen: 'desk/planning', path: '/planning', office: some, shows: '.grounds' },
  { screen: 'desk/planning-none', path: '/planning', office: none, shows: '.planning-list .quiet' },
  { screen: 'desk/planning-too-much', path: '/planning', office: tooMuch, shows: '.rows > li:nth-child(100)' },
  { screen: 'desk/planning-silent', path: '/planning', office: 'silent', shows: '.planning .caution' },
  { screen: 'desk/figures', path: '/figures', office: some, shows: '.figures section table, .figures section' },
  { screen: 'desk/figures-none', path: '/figures', office: none, shows: '.figures p' },
  { screen: 'desk/figures-silent', path: '/figures', office: 'silent', shows: '.figures .caution' },
];

afterEach(strike);

describe.each(languages)('at the desk in %s', (language) => {
  test.each(screens)('$screen looks right', async ({ path, office, before, shows }) => {
    await raiseDesk(path, language, office);
    await before?.();
    await expect.poll(() => document.querySelector(shows), { timeout: 8_000 }).not.toBeNull();
    await looksRight(language, desks);
  });

  test.each([
    [401, 'district.signed-out'],
    [426, 'district.too-old'],
    [500, 'district.failed'],
  ] as const)('an answer %i is told by %s', async (status, id) => {
    const words = await loadWords(language, ['district']);
    await raiseDesk('/', language, status);
    await expect.poll(() => document.querySelector('[role="alert"]')?.textContent).toContain(words.say(id));
  });
});
