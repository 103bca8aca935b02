import type { Laboratories } from '@combside/contract/laboratories';
import type { LaboratoryLimitsBody } from '@combside/record/kinds/laboratory-limits';
import { languages } from '@combside/words/language';
import { loadWords } from '@combside/words/load-words';
import { afterEach, describe, expect, test } from 'vitest';
import { firstInstant } from '../../../stage/day.ts';
import { raiseDesk } from '../../../stage/desk-stage.tsx';
import { inspector } from '../../../stage/inspector.ts';
import { desks, looksRight } from '../../../stage/looks.ts';
import { strike } from '../../../stage/raise.tsx';
import type { StageScreen } from '../../../stage/screens.ts';
import { allQuestions } from './all-questions.ts';

const written = {
  entry: '01900000-0000-7000-8000-000000000501',
  by: inspector.person,
  device: '01900000-0000-7000-8000-000000000502',
  at: firstInstant,
  clock: '1',
};
const limits: LaboratoryLimitsBody = {
  laboratory: 'Landesuntersuchungsamt Quillmoor (invented)',
  method: 'culture',
  material: 'brood-nest honey',
  unit: 'g',
  statedOn: '2026-05-01',
  source: 'letter of that day',
  classes: [
    { name: 'few', from: 0 },
    { name: 'many', from: 1000 },
  ],
  countable: null,
};
/** One laboratory, whose limits were corrected once. */
const kept: Laboratories = {
  laboratories: [
    {
      about: { type: 'laboratory', id: written.device },
      foldVersion: 1,
      notes: [],
      unknown: [],
      erased: [],
      clockFlagged: [],
      limits: [
        { written, body: limits, original: limits, corrections: [{ written, reason: 'misread', body: limits }] },
      ],
    },
  ],
  people: [{ person: inspector.person, name: inspector.name, role: 'inspector', active: true }],
};
/** Other limits of the same day are stated: then what is kept was wrong, and why is asked for. */
const limitsStated = new URLSearchParams({
  unit: limits.unit,
  laboratory: limits.laboratory,
  method: limits.method,
  material: limits.material,
  statedOn: limits.statedOn,
  source: limits.source,
  classes: '0 few\n100 some\n1000 many',
});

interface Asked {
  readonly screen: StageScreen;
  readonly question: string;
  /** What is stated, in the address. */
  readonly stated: string;
  /** What stands in the answer's place: the answer, or what is still asked. */
  readonly shows: '.answer' | '.asks';
}

const asked: readonly Asked[] = [
  {
    screen: 'desk/how-many-to-open',
    question: 'how-many-to-open',
    stated: 'colonies=40&sensitivity=0.8',
    shows: '.answer',
  },
  {
    screen: 'desk/finding-none',
    question: 'finding-none',
    stated: 'colonies=40&opened=12&sensitivity=0.8',
    shows: '.answer',
  },
  {
    screen: 'desk/how-frequent',
    question: 'how-frequent',
    stated: 'positives=45&tested=150&reading=known&sensitivity=0.96&specificity=0.89',
    shows: '.answer',
  },
  {
    screen: 'desk/free-since',
    question: 'free-since',
    stated: 'introduction=0.01&round=0.8&first=2024-05-01',
    shows: '.answer',
  },
  {
    screen: 'desk/do-two-agree',
    question: 'do-two-agree',
    stated: 'both=19&firstOnly=10&secondOnly=6&neither=256',
    shows: '.answer',
  },
  {
    screen: 'desk/laboratory-number',
    question: 'laboratory-number',
    stated:
      'load=240&unit=g&laboratory=Quillmoor+laboratory+(invented)&method=culture&material=brood-nest+honey' +
      '&statedOn=2026-05-01&source=letter+of+that+day&classes=0+few%0A100+some%0A1000+many',
    shows: '.answer',
  },
  {
    screen: 'desk/laboratory-plates',
    question: 'laboratory-number',
    stated: 'report=plates&plates=1+0.1+12%0A1:10+0.1+2&suspension=20&amount=10&unit=bee&parts=5',
    shows: '.answer',
  },
  {
    screen: 'desk/burn-and-bury',
    question: 'burn-and-bury',
    stated:
      'beesDead=yes&hives=4&length=50&width=40&height=80&pitWidth=1&stacking=0.5&remains=0.2&cover=0.61' +
      '&fuel=dry+wood&fuelPerHive=12&atOnce=2&hoursPerFire=2',
    shows: '.answer',
  },
  {
    screen: 'desk/hypochlorite',
    question: 'burn-and-bury',
    stated: 'way=hypochlorite&beesDead=yes',
    shows: '.asks',
  },
  { screen: 'desk/when-laid', question: 'when-laid', stated: 'stage=capped&seenOn=2026-06-21', shows: '.answer' },
  { screen: 'desk/earliest-sign', question: 'earliest-sign', stated: 'exposedOn=2026-05-01', shows: '.answer' },
  {
    screen: 'desk/this-season',
    question: 'this-season',
    stated: 'countedFrom=2026-07-01&firstLookAfterDays=40&looks=2&daysBetweenLooks=30&lastEggsOn=2026-08-01',
    shows: '.answer',
  },
  {
    screen: 'desk/colony-strength',
    question: 'colony-strength',
    stated: 'frame=Langstroth+deep&covered=8&beesPerArea=130&error=0.15&capped=0.35&cellsPerArea=4',
    shows: '.answer',
  },
];

afterEach(strike);

test('every question is asked here', () => {
  expect(new Set(asked.map(({ question }) => question))).toEqual(new Set(allQuestions.map(({ id }) => id)));
});

describe.each(languages)('the questions in %s', (language) => {
  test.each(asked)('$screen looks right', async ({ question, stated, shows }) => {
    await raiseDesk(`/questions/${question}?${stated}`, language, {});
    const words = await loadWords(language, ['questions']);
    await expect
      .poll(() => document.querySelector('.question-page h2')?.textContent, { timeout: 15_000 })
      .toBe(words.say(`questions.${question}` as never));
    await expect.poll(() => document.querySelector(shows), { timeout: 15_000 }).not.toBeNull();
    // Nothing of what the address states is left out.
    expect(document.querySelector('[role="alert"]')).toBeNull();
    await looksRight(language, desks);
  });

  test('desk/kept-limits', async () => {
    await raiseDesk(`/questions/laboratory-number?${limitsStated}`, language, { laboratories: kept });
    await expect.poll(() => document.querySelector('section > .rows > li .button'), { timeout: 15_000 }).not.toBeNull();
    await looksRight(language, desks);
  });

  test('desk/questions', async () => {
    await raiseDesk('/questions', language, {});
    await expect.poll(() => document.querySelectorAll('.questions-list li').length).toBe(allQuestions.length);
    await looksRight(language, desks);
  });
});

test('an answer is said in German', async () => {
  await raiseDesk('/questions/free-since?introduction=0.01&round=0.8&first=2024-05-01', 'de', {});
  await expect
    .poll(() => document.querySelector('.answer')?.textContent, { timeout: 15_000 })
    .toContain('hält sie seit Runde 2');
});
