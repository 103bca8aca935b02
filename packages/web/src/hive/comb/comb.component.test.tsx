import type { ColonyState } from '@combside/record/states';
import { languages } from '@combside/words/language';
import { afterEach, describe, expect, inject, test } from 'vitest';
import { combFile, combKept, combTaken } from '../../../stage/comb-photograph.ts';
import { type PhoneOtherwise, raiseHive } from '../../../stage/hive-stage.tsx';
import { headAndFootInSight, looksRight, phones } from '../../../stage/looks.ts';
import { press } from '../../../stage/press.ts';
import { lit, strike } from '../../../stage/raise.tsx';
import type { StageScreen } from '../../../stage/screens.ts';
import { draftKey } from '../colony/use-colony-draft.ts';
import type { HiveDevice } from '../hive-device.tsx';
import { combDraftPrefix, type SaidOfComb } from './use-comb-draft.ts';

const { part } = inject('comb');
const { running, states } = inject('record');
const [open, closed] = ['6', '4'].map((label) => running.colonies[label] ?? '');
if (open === undefined || closed === undefined) throw new Error('the story has no such colonies');
const visit = `/visit/${running.visit}`;
const comb = `${visit}/comb/${open}/${combTaken.hash}`;

const said: SaidOfComb = {
  corrections: [{ cell: 0, class: 'pollen' }],
  place: { box: 'brood box 1', frame: null, side: null },
  accepted: false,
  corners: null,
  reason: '',
};

/** The photograph was taken at the open colony, and its bytes are on the phone. */
async function taken({ drafts, photographs }: HiveDevice, bytes = combFile): Promise<string> {
  const kept = await photographs.keep(bytes, combTaken.takenAt);
  await drafts.change(draftKey(running.visit, open ?? ''), () => [{ tap: 'photograph', photograph: kept }]);
  return kept.hash;
}

const photographed: PhoneOtherwise = { before: async (device) => void (await taken(device)) };

/** It was read, and a cell of it corrected. */
const read: PhoneOtherwise = {
  async before(device) {
    const key = combDraftPrefix(running.visit, open ?? '') + (await taken(device));
    await device.drafts.change(`${key}/said`, () => said, { [`${key}/part`]: part });
  },
};

/** The closed colony, with a reading of its comb in the record; corrected anew, and not written yet. */
const kept = combKept(0);
const ofClosed = states.find(({ summary }) => summary.about.id === closed);
if (!ofClosed) throw new Error('the story does not hold its suspect colony');
const state = { ...(ofClosed.state as unknown as ColonyState), combReadings: [kept] };
const onRecord: PhoneOtherwise = {
  besides: [{ ...ofClosed, state: state as unknown as typeof ofClosed.state }],
  async before({ drafts, photographs }) {
    await photographs.keep(combFile, combTaken.takenAt);
    const changed = { ...said, ...kept.body, corrections: [...kept.body.corrections, { cell: 1, class: 'nectar' }] };
    const { corrections, place, accepted } = changed;
    await drafts.change(`comb-correction/${kept.written.entry}/1/said`, () => ({
      ...said,
      corrections,
      place,
      accepted,
    }));
  },
};

/** A file that is no picture. */
const noPicture = new Blob(['no picture'], { type: 'image/jpeg' });
const hashOfNoPicture = [...new Uint8Array(await crypto.subtle.digest('SHA-256', await noPicture.arrayBuffer()))]
  .map((byte) => byte.toString(16).padStart(2, '0'))
  .join('');

interface Shown {
  readonly screen: StageScreen;
  readonly path: string;
  readonly phone: PhoneOtherwise;
  /** What a person does before the screen stands. */
  readonly does?: () => Promise<void>;
  readonly shows: string;
}

const overlay = '.comb-picture .comb-overlay .line';

const screens: readonly Shown[] = [
  {
    screen: 'phone/comb-photographs',
    path: `${visit}/colony/${open}/more`,
    phone: photographed,
    shows: '.comb-photographs img',
  },
  { screen: 'phone/comb', path: comb, phone: read, shows: overlay },
  {
    screen: 'phone/comb-lens',
    path: comb,
    phone: read,
    does: () => press('ol.comb-classes button'),
    shows: '.comb-steps',
  },
  { screen: 'phone/comb-corners', path: `${comb}/corners`, phone: photographed, shows: '[aria-valuetext]' },
  {
    screen: 'phone/comb-refused',
    path: `${visit}/comb/${open}/${hashOfNoPicture}`,
    phone: { before: async (device) => void (await taken(device, noPicture)) },
    shows: '.caution[role=alert] p + p',
  },
  { screen: 'phone/comb-elsewhere', path: comb, phone: {}, shows: '.hive-body p' },
  { screen: 'phone/comb-kept', path: `${visit}/comb/${closed}/${combTaken.hash}`, phone: onRecord, shows: overlay },
  {
    screen: 'phone/comb-why',
    path: `${visit}/comb/${closed}/${combTaken.hash}/reason`,
    phone: onRecord,
    shows: '.hive-body [role=radio]',
  },
];

afterEach(strike);

describe.each(languages)('a comb at the hive in %s', (language) => {
  test.each(screens)('$screen looks right', async ({ path, phone, does, shows }) => {
    await raiseHive(path, language, phone);
    await does?.();
    await expect.poll(() => document.querySelector(shows), { timeout: 30_000 }).not.toBeNull();
    await looksRight(language, phones);
    await headAndFootInSight();
  });

  test.each([
    ['phone/comb-dark', 'dark'],
    ['phone/comb-sun', 'sun'],
  ] as const)('%s', async (_screen, theme) => {
    await raiseHive(comb, language, read);
    lit(theme);
    await expect.poll(() => document.querySelector(overlay), { timeout: 30_000 }).not.toBeNull();
    await looksRight(language, phones);
  });
});
