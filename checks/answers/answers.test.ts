import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { filesOf } from '../tree.ts';
import { unparsedIn } from './answers.ts';

const house = join(import.meta.dirname, '../..');

/** Production code that takes in what was written elsewhere: the screens and the command line. */
const sources = filesOf(house).filter(
  (path) => /^packages[/](web|cli)[/]src[/].*[.]tsx?$/.test(path) && !/[.]test[.]tsx?$|[/]acceptance[/]/.test(path),
);

/** Files that still believe an answer, with how many; none may be added, and what is mended comes off. */
const stillBelieved: Readonly<Record<string, number>> = {
  'packages/web/src/app/preferences.ts': 1,
  'packages/web/src/app/session.ts': 1,
  'packages/web/src/device/sync/fetch-entries.ts': 1,
  'packages/web/src/district/comb/ask-reading.ts': 1,
  'packages/web/src/district/comb/photographs-page.tsx': 1,
  'packages/web/src/district/desk/places-list.tsx': 1,
  'packages/web/src/district/desk/visits-ended.tsx': 1,
  'packages/web/src/district/map/background.ts': 1,
  'packages/web/src/district/map/base-map.ts': 1,
  'packages/web/src/district/map/map-view.tsx': 2,
  'packages/web/src/district/office/ask-page.ts': 1,
  'packages/web/src/district/office/use-office.ts': 2,
  'packages/web/src/district/register/fetch-rows.ts': 1,
  'packages/web/src/district/register/register-list.tsx': 1,
};

describe('what comes over the wire or out of a store of text', () => {
  test('is parsed, not believed', () => {
    expect(sources.length).toBeGreaterThan(150);
    const believed: Record<string, number> = {};
    for (const path of sources) {
      const { length } = unparsedIn(path, readFileSync(join(house, path), 'utf8'));
      if (length > 0) believed[path] = length;
    }
    expect(believed, 'parse it with its schema (packages/contract): it may come from another version').toEqual(
      stillBelieved,
    );
  });
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
