import type { Keepers } from '@combside/contract/keepers';
import type { RegisterHits } from '@combside/contract/register-search';
import type { Unsettled } from '@combside/contract/unsettled';
import type { ApiaryState, Folded } from '@combside/record/states';
import { languages } from '@combside/words/language';
import { afterEach, describe, expect, inject, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { type Office, raiseDesk } from '../../../stage/desk-stage.tsx';
import { desks, looksRight } from '../../../stage/looks.ts';
import { officeOf } from '../../../stage/office-answers.ts';
import {
  apiaryOfStory,
  colonyOfStory,
  keeperOfStory,
  officeOfStory,
  pageOfApiary,
  pageOfKeeper,
} from '../../../stage/office-of-story.ts';
import { press } from '../../../stage/press.ts';
import { strike } from '../../../stage/raise.tsx';
import type { StageScreen } from '../../../stage/screens.ts';

const { running } = inject('record');
const apiary = `/register/apiaries/${running.apiary}`;
const keeper = `/register/keepers/${keeperOfStory.about.id}`;
const keepers: Keepers = {
  keepers: [{ keeper: keeperOfStory.about.id, name: 'Tamsin Oakendale (invented)', number: null, apiaries: 1 }],
  next: 'more',
};
const hits: RegisterHits = {
  hits: [
    { type: 'apiary', id: running.apiary, name: running.name, number: 'QM-1001', district: 'quillmoor', at: 'Tamsin' },
    { type: 'keeper', id: keeperOfStory.about.id, name: 'Tamsin Oakendale', number: null, district: null, at: null },
  ],
  more: true,
};
const unsettled: Unsettled = {
  lines: [
    {
      type: 'apiary',
      id: running.apiary,
      name: running.name,
      district: 'quillmoor',
      apiary: null,
      contested: true,
      proposals: 2,
    },
    {
      type: 'colony',
      id: colonyOfStory.about.id,
      name: '4',
      district: 'quillmoor',
      apiary: running.apiary,
      contested: false,
      proposals: 1,
    },
  ],
  next: null,
};
const office: Office = {
  ...officeOfStory,
  keepers,
  'register/search': hits,
  'register/unsettled': unsettled,
};

const { current } = apiaryOfStory.apiary;
if (!current) throw new Error('the apiary of the story is not on the register');
const otherId = '01900000-0000-7000-8000-0000000000c1';

/** The same value as another hand wrote it without having seen this one. */
const alsoSaid: typeof current = {
  ...current,
  written: { ...current.written, entry: otherId },
  body: { ...current.body, name: 'Ober den Schulgartenwiesen am Mühlenbach', coloniesRegistered: 12 },
};
const contested: ApiaryState = { ...apiaryOfStory, apiary: { ...apiaryOfStory.apiary, contested: [alsoSaid] } };

const change = { visit: null, field: 'coloniesRegistered', from: 6, to: 9, reason: 'counted at the visit' };
const proposal: Folded<typeof change> = {
  written: { ...current.written, entry: otherId, clock: `${current.written.clock}~` },
  body: change,
  original: change,
  corrections: [],
};
const proposed: ApiaryState = { ...apiaryOfStory, proposals: [proposal] };

const verdict = { other: '00000000-0000-7000-8000-000000000001', verdict: 'same' as const, reason: 'one telephone' };
const merged: Folded<typeof verdict> = { ...proposal, body: verdict, original: verdict, corrections: [] };

/** The office with the page of the apiary otherwise. */
const withApiary = (state: ApiaryState): Office => ({
  ...officeOfStory,
  [`apiaries/${running.apiary}`]: pageOfApiary(state),
});

/** A file with lines of every fault, as an office may have it. Invented. */
const faulty = [
  'Imker-Nr.;Name;Telefon;Standort;Breite;Länge;Völker;Bestätigt am',
  'K-1;Jörg Müßig;030 / 111 22 33;Obere Schulgartenwiese am Mühlenbach;56,101;3,201;7;4.5.2026',
  'K-3;Ben Öd;;Hang;3,203;56,103;4;4.5.2026',
  'K-4;Cora Tal;;Talgrund;56,104;;viele;31.4.2026',
  'K-5;Dora;;Furt;0;0;2;',
].join('\r\n');
const clean = faulty.split('\r\n').slice(0, 2).join('\r\n');

async function choose(text: string): Promise<void> {
  await expect.poll(() => document.querySelector('input[type=file]'), { timeout: 8_000 }).not.toBeNull();
  const input = document.querySelector<HTMLInputElement>('input[type=file]');
  if (!input) return;
  const chosen = new DataTransfer();
  chosen.items.add(new File([text], 'altes-verzeichnis.csv', { type: 'text/csv' }));
  input.files = chosen.files;
  input.dispatchEvent(new Event('change', { bubbles: true }));
}

interface Shown {
  readonly screen: StageScreen;
  readonly path: string;
  readonly office?: Office;
  /** What a person does before the screen stands. */
  readonly before?: () => Promise<void>;
  readonly shows: string;
}

const columns = () => choose(faulty);
const columnsToPreview = '.buttons .button.act';
const preview = (text: string) => async () => {
  await choose(text);
  await expect.poll(() => document.querySelector('.register-work select'), { timeout: 15_000 }).not.toBeNull();
  await press(columnsToPreview);
};

const screens: readonly Shown[] = [
  { screen: 'desk/register', path: '/register', shows: '.register-list .office-line' },
  {
    screen: 'desk/register-none',
    path: '/register',
    office: officeOf(0, String),
    shows: '.register-list > .quiet',
  },
  { screen: 'desk/register-silent', path: '/register', office: 'silent', shows: '.register-list .caution' },
  {
    screen: 'desk/register-too-much',
    path: '/register',
    office: officeOf(
      1000,
      (number) => `Oberunterwaldwiesenbrückenmühlenbach am Honigbienenschutzgebietsrand ${number}`,
    ),
    shows: '.register-list li:nth-child(1000)',
  },
  {
    screen: 'desk/register-search',
    path: '/register',
    before: () => type('.register-list input', 'tamsin'),
    shows: '.register-list > .rows + .quiet',
  },
  { screen: 'desk/register-apiary', path: apiary, shows: '.history li' },
  { screen: 'desk/register-change', path: apiary, before: () => press('.facts + div button'), shows: '.change-form' },
  { screen: 'desk/register-contested', path: apiary, office: withApiary(contested), shows: '.side-by-side' },
  { screen: 'desk/register-proposed', path: apiary, office: withApiary(proposed), shows: '.caution .buttons' },
  { screen: 'desk/register-keeper', path: keeper, shows: '.history li' },
  {
    screen: 'desk/register-merged',
    path: keeper,
    office: {
      ...officeOfStory,
      [`keepers/${keeperOfStory.about.id}`]: pageOfKeeper({ ...keeperOfStory, merges: [merged] }),
    },
    before: () => press('.office-page .caution button'),
    shows: '.office-page [role=alert]',
  },
  { screen: 'desk/register-colony', path: `/register/colonies/${colonyOfStory.about.id}`, shows: '.history li' },
  {
    screen: 'desk/movement-form',
    path: apiary,
    before: async () => {
      await press('[aria-labelledby=movements-title] div > .button');
      // What is missing is named.
      await press('.change-form .button.act');
    },
    shows: '.change-form [role=alert]',
  },
  {
    screen: 'desk/movement-history',
    path: apiary,
    before: async () => {
      await press('[aria-labelledby=movements-title] li summary');
      await press('[aria-labelledby=movements-title] li details details summary');
    },
    shows: '[aria-labelledby=movements-title] .history li',
  },
  { screen: 'desk/register-settle', path: '/register/settle', shows: '.register-work .office-line' },
  { screen: 'desk/duplicates-not-asked', path: '/register/duplicates', shows: '.register-work .button' },
  {
    screen: 'desk/duplicates',
    path: '/register/duplicates',
    before: () => press('.register-work .button'),
    shows: 'table.compare',
  },
  { screen: 'desk/import-choose', path: '/register/import', shows: '.file-choice' },
  { screen: 'desk/import-columns', path: '/register/import', before: columns, shows: '[aria-labelledby$=columns]' },
  {
    screen: 'desk/import-faults',
    path: '/register/import',
    before: preview(faulty),
    shows: '[aria-labelledby$=faults] table',
  },
  {
    screen: 'desk/import-preview',
    path: '/register/import',
    before: preview(clean),
    shows: '[aria-labelledby$=would]',
  },
  { screen: 'desk/export', path: '/register/export', shows: '.register-work select' },
];

/** Writes into a field as a person does. */
async function type(selector: string, text: string): Promise<void> {
  await expect.poll(() => document.querySelector(selector), { timeout: 8_000 }).not.toBeNull();
  await userEvent.fill(document.querySelector(selector) as Element, text);
}

afterEach(strike);

describe.each(languages)('at the register in %s', (language) => {
  test.each(screens)('$screen looks right', async ({ path, office: other = office, before, shows }) => {
    await raiseDesk(path, language, other);
    await before?.();
    await expect.poll(() => document.querySelector(shows), { timeout: 15_000 }).not.toBeNull();
    await looksRight(language, desks);
  });
});
