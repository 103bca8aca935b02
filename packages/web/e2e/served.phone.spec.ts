import { readdirSync, readFileSync } from 'node:fs';
import { homedir, tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { expect, test } from './journey.ts';

const built = join(import.meta.dirname, '../dist');
const repository = join(import.meta.dirname, '../../..');

test('nothing that is served names a folder of the machine it was built on', async ({ page }) => {
  const files = readdirSync(built, { recursive: true, withFileTypes: true }).filter((one) => one.isFile());
  expect(files.length).toBeGreaterThan(20);
  expect(files.some(({ name }) => name.endsWith('.js.map'))).toBe(true);
  // The run's own temporary folder stands in the system's, in which the pages may have been built.
  const folders = [repository, homedir(), tmpdir(), dirname(tmpdir())]
    .filter((folder) => folder.length > 1)
    .map((folder) => `${folder}/`);
  const telling = files
    .map(({ parentPath, name }) => join(parentPath, name))
    .filter((path) => /[.](js|css|html|json|map|webmanifest|svg|txt)$/.test(path))
    .flatMap((path) => {
      const text = readFileSync(path, 'utf8');
      return folders
        .filter((folder) => text.includes(folder))
        .map((folder) => `${path.slice(built.length)}: ${folder}`);
    });
  expect(telling).toEqual([]);
  expect((await page.request.get('/sw.js')).status()).toBe(200);
  expect((await page.request.get('/sw.js.map')).status()).toBe(404);
});
