import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { allBans } from './bans.ts';
import { findImpurities, type Impurity, type Leave } from './purity.ts';

const house = join(import.meta.dirname, '../..');
const offenders = join(import.meta.dirname, 'offenders');

/**
 * The floors without clock, chance, locale or machine. Of these only `words` may format, and then names the language; only
 * `words` and `calendar` may count days with Date.
 */
const pureFloors = ['calendar', 'sources', 'words', 'science', 'record', 'law', 'casework', 'contract'];

const options: ts.CompilerOptions = {
  target: ts.ScriptTarget.ES2023,
  module: ts.ModuleKind.ESNext,
  moduleResolution: ts.ModuleResolutionKind.Bundler,
  lib: ['lib.es2023.d.ts'],
  types: [],
  allowImportingTsExtensions: true,
  resolveJsonModule: true,
  noEmit: true,
  skipLibCheck: true,
};

function sourcesOf(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => /[.]tsx?$/.test(path) && !/[.]test[.]tsx?$/.test(path) && !path.split('/').includes('acceptance'))
    .map((path) => join(folder, path));
}

/** Files of a package, and offenders that stand for one. */
const inside = (name: string) => (file: string) =>
  file.includes(`/packages/${name}/`) || basename(file).startsWith(`${name}.`);
const leave: Leave = {
  toFormat: inside('words'),
  toReckon: (file) => inside('words')(file) || inside('calendar')(file),
};

function told({ file, line, ban, remedy }: Impurity): string {
  return `${file.slice(house.length + 1)}:${line} ${ban}\n    ${remedy}`;
}

test('the pure floors touch no clock, chance, locale or machine', () => {
  const files = pureFloors.flatMap((name) => sourcesOf(join(house, 'packages', name, 'src')));
  expect(files.length).toBeGreaterThan(60);
  expect(findImpurities(files, options, leave).map(told)).toEqual([]);
});

test('the server asks what time it is in its one port only', () => {
  const folder = join(house, 'packages/server/src');
  const reads = findImpurities(sourcesOf(folder), options, { toFormat: () => true, toReckon: () => true })
    .filter(({ ban }) => ban === 'date-without-instant')
    .map(({ file }) => file.slice(folder.length + 1));
  // The port itself is found too, so a check that has gone blind fails.
  expect(reads).toEqual(['store/node-ports.ts']);
});

test('no statement of the server asks the database what time it is, but for the day of a migration', () => {
  const folder = join(house, 'packages/server/src');
  const asks =
    /(?<![.\w])now\(\)|\b(current_(date|time|timestamp)|localtime(stamp)?|(clock|statement|transaction)_timestamp)\b/i;
  const statements = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((path) => path.endsWith('.sql'));
  expect(statements.length).toBeGreaterThan(5);
  const files = [...sourcesOf(folder), ...statements.map((path) => join(folder, path))];
  const asking = files.filter((file) => asks.test(readFileSync(file, 'utf8')));
  expect(asking.map((file) => file.slice(folder.length + 1))).toEqual(['store/migrate.ts']);
});

describe('the offenders', () => {
  const found = findImpurities(sourcesOf(offenders), options, leave);
  const caughtIn = (file: string) => [
    ...new Set(found.filter((one) => basename(one.file) === file).map(({ ban }) => ban)),
  ];
  const files = readdirSync(offenders);

  test.each(allBans.map(({ name }) => name))('%s is caught', (ban) => {
    const own = files.filter((file) => banOf(file) === ban);
    expect(own.length, `no offender for ${ban}`).toBeGreaterThan(0);
    for (const file of own) expect(caughtIn(file), file).toEqual([ban]);
  });

  test('every offender is named after a ban, and the innocent are left in peace', () => {
    const names = new Set(allBans.map(({ name }) => name));
    const innocent = files.filter((file) => !names.has(banOf(file)));
    expect(innocent.sort()).toEqual(['calendar.innocent.ts', 'innocent.ts', 'words.innocent.ts']);
    for (const file of innocent) expect(caughtIn(file), file).toEqual([]);
  });
});

/** An offender is named `<ban>.ts`, `<ban>.<which>.ts`, or `words.<ban>.ts` (`calendar.`) when it stands under that leave. */
function banOf(file: string): string {
  return file.replace(/^(words|calendar)[.]/, '').split('.')[0] ?? '';
}
