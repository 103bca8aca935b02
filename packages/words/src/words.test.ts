import { describe, expect, expectTypeOf, test } from 'vitest';
import { loadWords } from './load-words.ts';
import type { WordId, WordPattern } from './rooms.ts';
import { createWords, type Words } from './words.ts';

const made = {
  'always.back': 'Back',
  'x.colonies': '{count, plural, offset:1 =0 {no colony} one {{place} and # other} other {{place} and # others}}',
  'x.turn': '{n, selectordinal, one {#st} two {#nd} few {#rd} other {#th}}',
  'x.state': '{state, select, living {living} dead {dead} other {not written}}',
  'x.plain': 'It said "{what}", {n} times',
  'x.date': '{when, date, short}',
  'x.broken': '{open',
};
const say = (id: string, values?: Record<string, string | number>, language: 'en' | 'de' = 'en') =>
  (createWords(language, [made]).say as (id: string, values?: Record<string, string | number>) => string)(id, values);

describe('speaking a message', () => {
  // Expected texts follow the Unicode rules: CLDR plural rules of English and German, ICU MessageFormat `offset` and `=n`.
  test('counts with the plural rules of the language, offset and exact cases', () => {
    expect(say('x.colonies', { count: 0, place: 'Hazel Bank' })).toBe('no colony');
    expect(say('x.colonies', { count: 2, place: 'Hazel Bank' })).toBe('Hazel Bank and 1 other');
    expect(say('x.colonies', { count: 1235, place: 'Hazel Bank' })).toBe('Hazel Bank and 1,234 others');
    expect(say('x.colonies', { count: 1235, place: 'Hazel Bank' }, 'de')).toBe('Hazel Bank and 1.234 others');
  });

  test.each([
    [1, '1st'],
    [2, '2nd'],
    [3, '3rd'],
    [11, '11th'],
    [22, '22nd'],
  ])('orders %i as %s', (n, text) => {
    expect(say('x.turn', { n })).toBe(text);
  });

  test('selects by word, and falls back to other', () => {
    expect(say('x.state', { state: 'dead' })).toBe('dead');
    expect(say('x.state', { state: 'gone' })).toBe('not written');
  });

  test('writes numbers as the language does, and leaves text alone', () => {
    expect(say('x.plain', { what: '1000.5', n: 1000.5 })).toBe('It said "1000.5", 1,000.5 times');
    expect(say('x.plain', { what: '1000.5', n: 1000.5 }, 'de')).toBe('It said "1000.5", 1.000,5 times');
  });

  test('names what is wrong', () => {
    expect(() => say('x.nowhere')).toThrow('no word "x.nowhere" in en; is its room loaded?');
    expect(() => say('x.plain', { what: 'a' })).toThrow('needs a value for {n}; given: what');
    expect(() => say('x.plain', { what: 'a', n: Number.NaN })).toThrow('NaN is not a number a person can read');
    expect(() => say('x.colonies', { count: 'three', place: 'y' })).toThrow('it needs a number and not "three"');
    expect(() => say('x.date', { when: 1 })).toThrow('write {when} and hand in the formatted text');
    expect(() => say('x.broken', { open: 1 })).toThrow('message "x.broken" is not a readable ICU message');
    expect(() => createWords('en', [made, made])).toThrow('two catalogues hold the word "always.back"');
  });

  test('in the field a missing word shows its id instead of losing the screen', () => {
    const words = createWords('en', [], 'show the id');
    expect(words.say('always.back')).toBe('always.back');
    expect(words.sayOne('always.*', 'back')).toBeNull();
  });
});

describe('loading', () => {
  test('fetches one language of the rooms asked for', async () => {
    const words = await loadWords('de', ['always']);
    expect(words.language).toBe('de');
    expect(words.say('always.back')).toBe('Zurück');
    expect(words.say('always.colony', { count: 2 })).toBe('2 Völker');
    expect(words.sayOne('always.*', 'colony', { count: 1 })).toBe('1 Volk');
    expect(words.sayOne('always.*', 'something-new')).toBeNull();
  });

  test('a misspelt id does not compile, nor do words of too few rooms', () => {
    expectTypeOf<'always.back'>().toExtend<WordId>();
    expectTypeOf<'always.bakc'>().not.toExtend<WordId>();
    expectTypeOf<WordPattern<'signs', 'signs.sign.*.name'>>().toEqualTypeOf<'signs.sign.*.name'>();
    expectTypeOf<WordPattern<'signs', 'signs.sing.*.name'>>().toBeNever();
    expectTypeOf<WordPattern<'always', 'signs.sign.*.name'>>().toBeNever();
    expectTypeOf<Words>().toExtend<Words<'always'>>();
    expectTypeOf<Words<'always'>>().not.toExtend<Words<'always' | 'signs'>>();
  });
});
