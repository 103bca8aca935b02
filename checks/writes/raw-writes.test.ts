import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { filesOf } from '../tree.ts';
import { rawWrites } from './raw-writes.ts';

const house = join(import.meta.dirname, '../..');
const theOneWay = 'packages/web/src/device/write/write-proposals.ts';
const remedy = 'write by `useWrite` (web/device/write): busy, refused, failed and sent are said there';

test('a screen writes into the record in one way only', () => {
  const files = filesOf(house).filter(
    (path) => /^packages\/web\/src\/.*[.]tsx?$/.test(path) && !/[.]test[.]tsx?$/.test(path),
  );
  expect(files.length).toBeGreaterThan(150);
  const told = files
    .filter((path) => path !== theOneWay)
    .flatMap((path) =>
      rawWrites(path, readFileSync(join(house, path), 'utf8')).map(
        ({ line, text }) => `${path}:${line} ${text}\n    ${remedy}`,
      ),
    );
  expect(told).toEqual([]);
  expect(rawWrites(theOneWay, readFileSync(join(house, theOneWay), 'utf8')).length).toBeGreaterThan(0);
});

const offenders = join(import.meta.dirname, 'offenders');
test.each(readdirSync(offenders))('%s is judged rightly', (name) => {
  const found = rawWrites(name, readFileSync(join(offenders, name), 'utf8'));
  expect(found.length > 0).toBe(!name.startsWith('innocent'));
});
