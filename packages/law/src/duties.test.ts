import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { duties, type Fact } from './duties.ts';
import { readPack } from './pack.ts';

const packs = new URL('./packs/', import.meta.url);
const read = (path: string): unknown => JSON.parse(readFileSync(new URL(path, packs), 'utf8'));

// Each case is a pair of files: what was written down (and "now"), and exactly what is then owed. The expected files were
// written by hand from the articles they name; no flag rewrites them.
const cases = readdirSync(packs).flatMap((pack) =>
  readdirSync(new URL(`${pack}/cases/`, packs))
    .filter((file) => file.endsWith('.facts.json'))
    .map((file) => ({ pack, name: file.replace('.facts.json', '') })),
);

interface CaseFacts {
  readonly why: string;
  readonly now: string;
  readonly facts: readonly Fact[];
}

test('there are cases for every pack', () => {
  expect([...new Set(cases.map((one) => one.pack))].sort()).toEqual(readdirSync(packs).sort());
});

describe.each(cases)('$pack: $name', ({ pack, name }) => {
  const rules = readPack(read(`${pack}/pack.json`));
  const given = read(`${pack}/cases/${name}.facts.json`) as CaseFacts;
  const expected = read(`${pack}/cases/${name}.duties.json`) as Record<string, unknown>[];

  test('facts in, duties out', () => {
    const owed = duties(given.facts, rules, given.now);
    expect(
      owed.map(({ rule, duty, colony, notBefore, due, promptness, met, times, state, article }) => ({
        rule,
        duty,
        colony,
        notBefore,
        due,
        promptness,
        met,
        times,
        state,
        article,
      })),
    ).toEqual(expected);
  });

  test('the order in which facts arrive does not matter', () => {
    const once = duties(given.facts, rules, given.now);
    fc.assert(
      fc.property(fc.shuffledSubarray([...given.facts], { minLength: given.facts.length }), (shuffled) => {
        expect(duties(shuffled, rules, given.now)).toEqual(once);
      }),
      { seed: 7, numRuns: 25 },
    );
  });
});

test('ids are unique and say rule, place and start', () => {
  const rules = readPack(read('quillmoor/pack.json'));
  const at = '2027-05-04T09:00:00.000Z';
  const facts: Fact[] = ['a', 'b'].map((colony) => ({
    fact: 'suspicion',
    at,
    condition: 'american-foulbrood',
    apiary: 'x',
    colony,
  }));
  const owed = duties(facts, rules, at);
  expect(new Set(owed.map((one) => one.id)).size).toBe(owed.length);
  expect(owed.filter((one) => one.duty === 'specimen').map((one) => one.colony)).toEqual(['a', 'b']);
  expect(owed.filter((one) => one.duty === 'notify')).toHaveLength(1);
});

test('a condition that is not notifiable starts nothing', () => {
  const rules = readPack(read('quillmoor/pack.json'));
  const fact: Fact = { fact: 'suspicion', at: '2027-05-04', condition: 'chalkbrood', apiary: 'x', colony: 'a' };
  expect(duties([fact], rules, '2027-05-04')).toEqual([]);
});
