import { type CombPhotographs, combPhotographLine } from '@combside/contract/comb-photographs';
import type { CombReadingProposed } from '@combside/contract/comb-readings';
import { languages } from '@combside/words/language';
import { afterEach, describe, expect, inject, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { combFile, combKept, combTaken } from '../../../stage/comb-photograph.ts';
import { firstInstant } from '../../../stage/day.ts';
import { type Office, raiseDesk } from '../../../stage/desk-stage.tsx';
import { desks, looksRight } from '../../../stage/looks.ts';
import { colonyOfStory, pageOfColony, pageOfVisit } from '../../../stage/office-of-story.ts';
import { strike } from '../../../stage/raise.tsx';
import type { StageScreen } from '../../../stage/screens.ts';

const { part } = inject('comb');
const { running } = inject('record');
const colony = colonyOfStory.about.id;
const [kept, another] = [combKept(0), combKept(1)];

/** One photograph in every standing. */
const photographs: CombPhotographs = {
  photographs: combPhotographLine.shape.standing.options.map((standing, number) => ({
    hash: combTaken.hash.replace(/^../, `1${number}`),
    colony,
    label: '4',
    visit: running.visit,
    apiary: running.apiary,
    apiaryName: 'Oberunterwaldwiesenbrückenmühlenbach am Honigbienenschutzgebietsrand',
    takenAt: firstInstant,
    caption: 'frame 4, side A',
    standing,
    reasons: standing === 'refused' ? ['under-bees'] : [],
  })),
  next: 'more',
  waiting: 2,
  reading: 1,
};
const none: CombPhotographs = { photographs: [], next: null, waiting: 0, reading: 0 };

const [examined] = colonyOfStory.examinations;
if (!examined) throw new Error('nobody looked at the suspect colony of the story');
const withPhotograph = {
  ...colonyOfStory,
  examinations: [{ ...examined, body: { ...examined.body, photographs: [combTaken] } }],
};

/** The office with the colony, its photograph, and what is kept of it. */
function officeWith(combReadings: typeof colonyOfStory.combReadings, besides: Office = {}): Office {
  return {
    [`colonies/${colony}`]: {
      ...pageOfColony({ ...withPhotograph, combReadings }),
      photographs: [{ ...combTaken, colony, held: true, comb: 'read' }],
    },
    [`visits/${running.visit}`]: pageOfVisit(),
    [`photographs/${combTaken.hash}`]: combFile,
    [`photographs/${another.body.photograph.hash}`]: combFile,
    ...(besides as object),
  };
}

const told: CombReadingProposed = {
  photograph: combTaken.hash,
  readerVersion: part.reader.version,
  state: 'read',
  askedAt: firstInstant,
  finishedAt: firstInstant,
  reasons: [],
  part,
};
const reading = `comb-readings/${combTaken.hash}`;
const refused: CombReadingProposed = { ...told, state: 'refused', reasons: ['under-bees'], part: null };

interface Shown {
  readonly screen: StageScreen;
  readonly path: string;
  readonly office: Office;
  /** What a person does before the screen stands. */
  readonly before?: () => Promise<void>;
  readonly shows: string;
}

const comb = `/comb/colony/${colony}/photograph/${combTaken.hash}`;
const overlay = '.comb-picture .comb-overlay .line';

async function setBeside(): Promise<void> {
  await expect.poll(() => document.querySelector('[aria-labelledby=compared-title] select')).not.toBeNull();
  const choice = document.querySelector('[aria-labelledby=compared-title] select') as HTMLSelectElement;
  await userEvent.selectOptions(choice, another.written.entry);
}

const screens: readonly Shown[] = [
  {
    screen: 'desk/combs',
    path: '/combs',
    office: { 'comb-photographs': photographs },
    shows: '.comb-lines > li:nth-child(9)',
  },
  { screen: 'desk/combs-none', path: '/combs', office: { 'comb-photographs': none }, shows: '.comb-photographs > p' },
  { screen: 'desk/combs-silent', path: '/combs', office: 'silent', shows: '.office-page .caution' },
  { screen: 'desk/comb-not-read', path: comb, office: officeWith([]), shows: '.comb-desk .button.act' },
  {
    screen: 'desk/comb-refused',
    path: comb,
    office: officeWith([], { [reading]: refused }),
    shows: '.comb-desk .caution[role=alert] p + p',
  },
  { screen: 'desk/comb-proposed', path: comb, office: officeWith([], { [reading]: told }), shows: overlay },
  { screen: 'desk/comb-kept', path: comb, office: officeWith([kept]), shows: overlay },
  {
    screen: 'desk/comb-compared',
    path: comb,
    office: officeWith([kept, another]),
    before: setBeside,
    shows: 'table.numbers',
  },
];

afterEach(strike);

describe.each(languages)('combs at the desk in %s', (language) => {
  test.each(screens)('$screen looks right', async ({ path, office, before, shows }) => {
    await raiseDesk(path, language, office);
    await before?.();
    await expect.poll(() => document.querySelector(shows), { timeout: 30_000 }).not.toBeNull();
    await looksRight(language, desks);
  });
});
