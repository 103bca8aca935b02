import { assessLook, defaultSettings } from '@combside/science/diagnosis/assess';
import { checks } from '@combside/science/diagnosis/checks';
import { type Evidence, emptyEvidence, nothingKnown } from '@combside/science/diagnosis/evidence';
import type { Sentence, SentenceValue } from '@combside/science/diagnosis/sentence';
import { testIds } from '@combside/science/diagnosis/test-figures';
import { seeded } from '@combside/science/random/seeded';
import { conditions, diseases, signGroups, signs } from '@combside/science/signs/catalogue';
import { languages } from '@combside/words/language';
import { loadWords } from '@combside/words/load-words';
import type { WordId } from '@combside/words/rooms';
import { describe, expect, test } from 'vitest';

/** Everything the reasoning can say has words: the names by list, the sentences by trying many examinations. */

const chance = seeded(2026);
function pick<T>(from: readonly T[]): T {
  return from[chance.integer(from.length)] as T;
}

function randomEvidence(): Evidence {
  const given: Record<string, unknown> = {};
  for (const sign of signs) {
    if (chance.uniform() < 0.75) continue;
    const measure =
      sign.measure === 'cells'
        ? { count: pick(['1-10', '11-100', 'over 100']) }
        : sign.measure === 'degree'
          ? { amount: pick(['slight', 'marked']) }
          : {};
    given[sign.id] = chance.uniform() < 0.5 ? { outcome: 'not seen' } : { outcome: 'seen', ...measure };
  }
  const look = {
    depth: pick(['full', 'full', 'part', 'tops', 'outside'] as const),
    framesHeld: 10,
    framesSeen: pick([3, 10, null]),
    sides: pick(['both', 'one', null] as const),
    beesShaken: pick([true, false, null]),
    light: pick(['torch', 'poor', null] as const),
    hold: pick(['top bar toward the viewer', 'top bar away', null] as const),
    cellsOpened: pick([0, 10, null]),
    cellsSuspicious: pick([0, 900, null]),
    sealedBroodCombSides: pick([0, 0.2, 8, null]),
  };
  return {
    ...emptyEvidence(look, pick(['living', 'living', 'living', 'dead', 'stored combs'])),
    signs: chance.uniform() < 0.2 ? {} : (given as Evidence['signs']),
    ropeTests: Array.from({ length: chance.integer(3) }, () => ({
      tissue: pick(['too fresh', 'moist brown', 'part dry', 'dry scale'] as const),
      stick: pick(['rough and dry', 'smooth or wet'] as const),
      threadMillimetres: pick([0, 6, 15, 40]),
      snapsBack: pick([true, false, null]),
    })),
    tests: Array.from({ length: chance.integer(3) }, () => ({
      test: pick(testIds),
      result: pick(['positive', 'negative', 'failed'] as const),
      readOn: '2026-06-02',
      ...(chance.uniform() < 0.2 ? { expires: '2026-05-31' } : {}),
    })),
    ...(chance.uniform() < 0.4
      ? { measuredPattern: { solidness: chance.uniform(), standardError: 0.03, sides: pick([1, 3]) } }
      : {}),
    circumstances: {
      ...nothingKnown,
      ...(chance.uniform() < 0.2 ? { daysSinceMedicine: 5, maskingDays: 42 } : {}),
    },
    earlier: chance.uniform() < 0.2 ? [{ daysAgo: 9, suspect: true, answered: 'not yet' }] : [],
    suspicionStands: chance.uniform() < 0.2,
  };
}

/** Every sentence anywhere in an answer. */
function sentencesIn(value: unknown, found: Sentence<string>[] = []): Sentence<string>[] {
  if (Array.isArray(value)) for (const one of value) sentencesIn(one, found);
  else if (value && typeof value === 'object') {
    const { id, values } = value as Partial<Sentence<string>>;
    if (typeof id === 'string' && values && id.startsWith('signs.')) found.push(value as Sentence<string>);
    else for (const one of Object.values(value)) sentencesIn(one, found);
  }
  return found;
}

const spoken = Array.from({ length: 250 }, () =>
  sentencesIn(
    assessLook(randomEvidence(), {
      ...defaultSettings,
      draws: 40,
      checks: { ...defaultSettings.checks, kitsAtHand: chance.uniform() < 0.5 ? testIds : [] },
    }),
  ),
).flat();

describe.each(languages)('in %s', async (language) => {
  // An id without words throws, and names itself.
  const words = await loadWords(language, ['signs']);

  test('every group, sign, condition and check has its name, and every check says how it is done', () => {
    const ids = [
      ...signGroups.map((group) => `signs.group.${group}`),
      ...signs.map((sign) => `signs.sign.${sign.id}.name`),
      ...diseases.map((disease) => `signs.condition.${disease}.name`),
      ...conditions.filter((one) => one !== 'healthy').map((condition) => `signs.condition.${condition}.name`),
      ...checks.flatMap((check) => [`signs.check.${check.id}.name`, `signs.check.${check.id}.how`]),
      'signs.check.rope-test.name',
    ];
    for (const id of ids) expect(words.say(id as WordId<'signs'>)).not.toBe('');
  });

  test('every sentence that 250 examinations gave can be said', () => {
    const say = (id: string, values: Sentence<string>['values']): string => {
      const said = Object.entries(values).map(([key, value]: [string, SentenceValue]) => [
        key,
        typeof value === 'object' ? say(value.word, {}) : value,
      ]);
      return words.say(id as WordId<'signs'>, Object.fromEntries(said));
    };
    for (const { id, values } of spoken) {
      const text = say(id, values);
      expect(text).not.toMatch(/[{}]|\s\s|\s[.,]/);
    }
  });
});

test('the examinations gave many different sentences, so that the check sees something', () => {
  expect(new Set(spoken.map((one) => one.id)).size).toBeGreaterThan(90);
});
