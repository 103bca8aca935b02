import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { filesOf } from '../tree.ts';
import { emptyNames, looseVersions, type Misplacement, roomsWithoutPage, workplaceNamesIn } from './rooms.ts';

const house = join(import.meta.dirname, '../..');
const paths = filesOf(house);
const read = (path: string) => readFileSync(join(house, path), 'utf8');
const told = ({ path, remedy }: Misplacement) => `${path}: ${remedy}`;

describe('the rooms of the house', () => {
  test('were seen', () => {
    expect(paths.length).toBeGreaterThan(150);
    expect(paths.filter((path) => /^packages[/][a-z]+[/]package[.]json$/.test(path)).length).toBe(12);
  });

  test('have their page', () => {
    expect(roomsWithoutPage(paths, (path) => read(path).trimEnd().split('\n').length).map(told)).toEqual([]);
  });

  test('have names that say something, and no barrels', () => {
    expect(emptyNames(paths).map(told)).toEqual([]);
  });

  test('speak to their reader, not of the place where they were written', () => {
    const texts = paths.filter((path) =>
      /[.](ts|tsx|mjs|js|json|md|css|html|txt|yml|yaml|R|py|sql|svg)$|[.]ci/.test(path),
    );
    const written = texts.filter((path) => path !== 'package-lock.json' && path !== 'NOTICE.md');
    expect(written.flatMap((path) => workplaceNamesIn(path, read(path))).map(told)).toEqual([]);
  });

  test('pin their dependencies', () => {
    const manifests = paths.filter((path) => path.endsWith('package.json') && !path.includes('/offenders/'));
    expect(manifests.flatMap((path) => looseVersions(path, JSON.parse(read(path)))).map(told)).toEqual([]);
  });
});

describe('the offenders', () => {
  test('a package and a room without page, a page too long, a page that says nothing', () => {
    const offenders = [
      'packages/words/src/language.ts',
      'packages/science/README.md',
      'packages/science/src/sampling/sample-size.ts',
      'packages/science/src/sampling/pools.ts',
      'packages/science/src/sampling/acceptance/suite.ts',
      'packages/science/src/sampling/acceptance/case.ts',
      'packages/science/src/spread/README.md',
      'packages/science/src/brood/README.md',
      'packages/words/src/en/always.ts',
      'packages/words/src/en/hive.ts',
      'packages/words/src/deep/down/one.ts',
      'packages/words/src/deep/down/two.ts',
      'packages/words/src/alone/one.ts',
    ];
    const lines: Record<string, number> = {
      'packages/science/src/spread/README.md': 61,
      'packages/science/src/brood/README.md': 1,
    };
    expect(roomsWithoutPage(offenders, (path) => lines[path] ?? 20).map(({ path }) => path)).toEqual([
      'packages/science/src/brood/README.md',
      'packages/science/src/sampling',
      'packages/science/src/spread/README.md',
      'packages/words',
      'packages/words/src/deep/down',
    ]);
  });

  test.each([
    'packages/web/src/utils/tap.ts',
    'packages/record/src/helpers.ts',
    'packages/web/src/ui/index.ts',
    'packages/server/src/sync-manager.ts',
    'checks/common/x.ts',
  ])('%s says nothing', (path) => expect(emptyNames([path])).toHaveLength(1));

  test.each([
    'packages/web/index.html',
    'packages/web/src/device/service-worker.ts',
    'packages/science/src/sampling/sample-size.ts',
  ])('%s is a good name', (path) => expect(emptyNames([path])).toEqual([]));

  test('a word of the workplace, and a loose version', () => {
    expect(workplaceNamesIn('a.md', `see ../shared/${'reference'}/x`)).toHaveLength(1);
    expect(workplaceNamesIn('a.md', 'a worker at the farm')).toEqual([]);
    expect(
      looseVersions('package.json', {
        dependencies: { a: '^1.2.3', b: '1.2.3', c: '18.4.0-beta.17', d: 'npm:other@1.2.3', e: 'npm:other@^1.2.3' },
      }),
    ).toHaveLength(2);
  });
});
