import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { maskedUntil } from './masking.ts';
import { readPack } from './pack.ts';
import { suspicionsByRule } from './suspicion.ts';

const packs = new URL('./packs/', import.meta.url);
const load = (name: string): unknown => JSON.parse(readFileSync(new URL(`${name}/pack.json`, packs), 'utf8'));
/** A pack before it was read: any field may be wrong. */
interface Loose {
  invented: unknown;
  rules: [{ id: unknown }, { id: unknown }];
}

const quillmoor = readPack(load('quillmoor'));

describe.each(readdirSync(packs))('%s', (name) => {
  test('can be read, and is named as its folder', () => {
    expect(readPack(load(name)).id).toBe(name);
  });

  test('says whether it is invented, and nothing real in it is', () => {
    const pack = readPack(load(name));
    const standings = [...pack.rules, ...pack.notifiable, ...pack.suspicion, ...pack.masking].map(
      (one) => one.standing,
    );
    expect(standings.every((one) => (one === 'invented') === pack.invented)).toBe(true);
    expect(pack.invented).toBe(/\(invented\)/.test(pack.jurisdiction));
  });
});

describe('a pack that cannot be right is refused with the place and the reason', () => {
  const broken = (change: (pack: Loose) => unknown): unknown => {
    const copy = structuredClone(load('quillmoor')) as Loose;
    change(copy);
    return copy;
  };
  test.each([
    [
      'a source that is not listed',
      ({ rules: [one] }: Loose) => Object.assign(one, { source: 'nowhere' }),
      /"nowhere" \(s\. 5\(1\)\) is not in/,
    ],
    [
      'two rules of one name',
      ({ rules: [one, two] }: Loose) => Object.assign(two, { id: one.id }),
      /two rules are called "report-suspicion"/,
    ],
    [
      'neither number nor word',
      ({ rules: [one] }: Loose) => Object.assign(one, { within: null }),
      /neither within what time nor/,
    ],
    [
      'invented rules in a real pack',
      (p: Loose) => Object.assign(p, { invented: false }),
      /is invented, but the pack says that it is not/,
    ],
    ['a misspelt field', ({ rules: [one] }: Loose) => Object.assign(one, { withn: 1 }), /rules\.0.*withn/],
    ['no rules', (p: Loose) => Object.assign(p, { rules: [] }), /rules/],
  ])('%s', (_, change, message) => {
    expect(() => readPack(broken(change))).toThrow(message);
  });
});

test('a pack suspects on a named sign or test, and on nothing else', () => {
  const none = { signs: [], threadsMillimetres: [], positiveTests: [] };
  expect(suspicionsByRule(none, quillmoor)).toEqual([]);
  expect(suspicionsByRule({ ...none, signs: ['cap.sunken'] }, quillmoor)).toEqual([]);
  expect(suspicionsByRule({ ...none, signs: ['scale.hard_lower'] }, quillmoor).map((one) => one.id)).toEqual([
    'hard-scale',
  ]);
  // Under 10 mm is not a positive thread [NZ-ROPE].
  expect(suspicionsByRule({ ...none, threadsMillimetres: [9] }, quillmoor)).toEqual([]);
  expect(suspicionsByRule({ ...none, threadsMillimetres: [10] }, quillmoor).map((one) => one.id)).toEqual([
    'rope-thread',
  ]);
});

test('masking runs from the last date; without a date it runs from the look', () => {
  const look = '2027-05-04T09:00:00.000Z';
  const masked = (events: Parameters<typeof maskedUntil>[0]) =>
    maskedUntil(events, 'american-foulbrood', quillmoor, look);
  expect(masked([])).toBeNull();
  expect(masked([{ what: 'medicine', lastOn: '2027-03-05' }])).toBeNull();
  expect(masked([{ what: 'medicine', lastOn: '2027-03-06' }])).toBe('2027-05-05T00:00:00.000Z');
  expect(masked([{ what: 'medicine', lastOn: null }])).toBe('2027-07-03T09:00:00.000Z');
  expect(masked([{ what: 'comb change', lastOn: '2027-04-20' }])).toBe('2027-05-20T00:00:00.000Z');
  expect(maskedUntil([{ what: 'medicine', lastOn: null }], 'chalkbrood', quillmoor, look)).toBeNull();
});
