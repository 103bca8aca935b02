import { describe, expect, test } from 'vitest';
import { languages } from './language.ts';
import { argumentsOf, type Message, readMessage } from './message.ts';
import { loadCatalogue, type Room, rooms } from './rooms.ts';
import { unsayableIn } from './unsayable.ts';

const names = Object.keys(rooms) as Room[];

/** Rooms that only those who run the program read. */
const readAtTerminal: ReadonlySet<Room> = new Set<Room>(['server', 'demo']);

// The plural forms each language has (Unicode CLDR, plural rules chart): both have `one` and `other` for counting.
const pluralForms = { en: new Set(['one', 'other']), de: new Set(['one', 'other']) };

describe.each(names)('words of %s', (room) => {
  test.each(languages)('%s: every message is readable, not empty and fit to be read', async (language) => {
    const catalogue = await loadCatalogue(language, room);
    expect(Object.keys(catalogue).length).toBeGreaterThan(0);
    for (const [id, text] of Object.entries(catalogue)) {
      expect(id.startsWith(`${room}.`), `the id "${id}" starts with its room "${room}."`).toBe(true);
      expect(text.trim(), `"${id}" in ${language} is empty or has blanks at its ends`).toBe(text);
      expect(text.length, `"${id}" in ${language} is empty`).toBeGreaterThan(0);
      const faults = unsayableIn(language, text)
        .filter((one) => !(one.fitAtTerminal && readAtTerminal.has(room)))
        .map((one) => `${one.pattern}: ${one.why}`);
      expect(faults, `"${id}" in ${language} says "${text}"`).toEqual([]);
      checkForms(id, readMessage(id, text), pluralForms[language]);
    }
  });

  test.each(languages)('%s has the ids of the reference, with the same arguments', async (language) => {
    const reference = await loadCatalogue('en', room);
    const catalogue = await loadCatalogue(language, room);
    expect(Object.keys(catalogue).sort()).toEqual(Object.keys(reference).sort());
    for (const [id, text] of Object.entries(catalogue)) {
      const ours = [...argumentsOf(readMessage(id, text)).keys()].sort();
      const theirs = [...argumentsOf(readMessage(id, reference[id] as string)).keys()].sort();
      expect(ours, `arguments of "${id}" in ${language}`).toEqual(theirs);
    }
  });
});

function checkForms(id: string, message: Message, forms: ReadonlySet<string>): void {
  for (const token of message) {
    if (!('cases' in token)) continue;
    const keys = token.cases.map((one) => one.key);
    expect(keys, `"${id}" has no case "other" for {${token.arg}}`).toContain('other');
    if (token.type === 'plural') {
      const unknown = keys.filter((key) => !key.startsWith('=') && !forms.has(key));
      expect(unknown, `"${id}" counts in forms the language has not`).toEqual([]);
    }
    for (const one of token.cases) checkForms(id, one.tokens, forms);
  }
}

test('the check of wordings catches what it is for', () => {
  expect(unsayableIn('en', 'The colony is healthy')).toHaveLength(1);
  expect(unsayableIn('en', 'Colony 7 cleared')).toHaveLength(1);
  expect(unsayableIn('en', 'Tool disinfected with washing soda')).toHaveLength(1);
  expect(unsayableIn('en', 'Washing soda cleans but does not kill spores')).toHaveLength(0);
  expect(unsayableIn('en', 'Make the exit clearly seen')).toHaveLength(0);
  expect(unsayableIn('de', 'Das Volk ist gesund')).toHaveLength(1);
  expect(unsayableIn('de', 'Stockmeißel mit Soda desinfiziert')).toHaveLength(1);
  expect(unsayableIn('de', 'Ein Gesundheitszeugnis')).toHaveLength(0);
});

test('a message in another language with another argument is caught', () => {
  const roles = argumentsOf(readMessage('x', '{count, plural, one {# in {place}} other {# in {place}}} {count}'));
  expect([...roles.keys()]).toEqual(['count', 'place']);
  expect([...(roles.get('count') ?? [])]).toEqual(['plural', 'text']);
});
