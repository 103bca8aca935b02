import { languages } from '@combside/words/language';
import { afterEach, describe, expect, inject, test } from 'vitest';
import { type Office, raiseDesk } from '../../stage/desk-stage.tsx';
import { desks, looksRight } from '../../stage/looks.ts';
import { officeOf } from '../../stage/office-answers.ts';
import { strike } from '../../stage/raise.tsx';
import type { StageScreen } from '../../stage/screens.ts';

const some = officeOf(6, (number) => `Alder Bank ${number}`);
const none = officeOf(0, String);
const tooMuch = officeOf(
  300,
  (number) => `Oberunterwaldwiesenbrückenmühlenbach am Honigbienenschutzgebietsrand ${number}`,
);

const { running, states } = inject('record');
const stateOf = (type: string) => (one: (typeof states)[number]) => one.summary.about.type === type;
/** The record of the apiary of the story, open. */
const opened: Office = {
  ...some,
  [`apiaries/${running.apiary}`]: {
    apiary: states.find((one) => one.summary.about.id === running.apiary)?.state,
    keeper: states.find(stateOf('keeper'))?.state,
    colonies: Object.entries(running.colonies).map(([label, colony]) => ({
      colony,
      label,
      hiveType: 'langstroth-deep',
      hiveState: 'living',
      lastExaminedAt: null,
      lastResult: 'too little brood to judge',
    })),
    visits: [],
    movements: [],
    otherEnds: [],
    mergedHere: [],
    people: [],
    position: 1,
  },
};

interface Shown {
  readonly screen: StageScreen;
  readonly path: string;
  readonly office: Office;
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
    office: opened,
    shows: `a[href*="${running.colonies['1']}"]`,
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
  test.each(screens)('$screen looks right', async ({ path, office, shows }) => {
    await raiseDesk(path, language, office);
    await expect.poll(() => document.querySelector(shows), { timeout: 8_000 }).not.toBeNull();
    await looksRight(language, desks);
  });
});
