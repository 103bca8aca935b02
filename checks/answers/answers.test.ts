import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { filesOf } from '../tree.ts';
import { rawQuestionsIn, unparsedIn } from './answers.ts';

const house = join(import.meta.dirname, '../..');

/** Code that takes in what was written elsewhere: the screens, the command line, the server, and the ways tests speak to it. */
const sources = filesOf(house).filter(
  (path) => /^packages[/](web|cli|server)[/]src[/].*[.]tsx?$/.test(path) && !/[.]test[.]tsx?$/.test(path),
);

describe('what comes over the wire or out of a store of text', () => {
  test('is parsed, not believed', () => {
    expect(sources.length).toBeGreaterThan(250);
    const believed = sources.flatMap((path) => unparsedIn(path, readFileSync(join(house, path), 'utf8')));
    expect(believed, 'parse it with its schema (packages/contract): it may come from another version').toEqual([]);
  });
});

/** Files of the program itself, fetched as they were built; they are no answers of the office. */
const ownFiles = ['packages/web/src/district/map/base-map.ts', 'packages/web/src/hive/result/paper-fonts.ts'];

describe('a question of the screens to the office', () => {
  test('goes the one way', () => {
    const screens = sources.filter((path) => path.startsWith('packages/web/'));
    expect(screens.length).toBeGreaterThan(150);
    const raw = screens.flatMap((path) => rawQuestionsIn(path, readFileSync(join(house, path), 'utf8')));
    expect(
      [...new Set(raw.map(({ path }) => path))].sort(),
      'ask with `ask(schema, address)` (packages/web/src/device/ask): it reads the answer and names what failed',
    ).toEqual(ownFiles);
  });

  test.each(["void fetch('/api/owed');", 'const answer = await window.fetch(address, { signal });'])(
    '%s is caught',
    (text) => expect(rawQuestionsIn('offender.ts', text)).toEqual([{ path: 'offender.ts', line: 1 }]),
  );

  test.each(["const owed = ask(schema, '/api/owed');", 'const names = await fetchNames(database);'])(
    '%s is left in peace',
    (text) => expect(rawQuestionsIn('good.ts', text)).toEqual([]),
  );
});

describe('the offenders', () => {
  test.each([
    'const page = (await answer.json()) as Page;',
    'const page = await (answer.json() as Promise<Page>);',
    'const page = <Page>JSON.parse(text);',
    'const page: Page = await answer.json();',
    'const page: Page = JSON.parse(text);',
    'const { items } = JSON.parse(text ?? "{}") as Page;',
  ])('%s is caught', (text) => expect(unparsedIn('offender.ts', text)).toEqual([{ path: 'offender.ts', line: 1 }]));

  test.each([
    'const page = visitPage.parse(await answer.json());',
    'const page: unknown = JSON.parse(text);',
    'const page = (await answer.json()) as unknown;',
    'const settings = { json: true } as Settings;',
  ])('%s is left in peace', (text) => expect(unparsedIn('good.ts', text)).toEqual([]));
});
