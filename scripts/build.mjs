import { createHash } from 'node:crypto';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { house, run, spent } from './run.mjs';

/** What the built pages are made of: the packages the screens may import, and the recipe. */
const ingredients = [
  ...['calendar', 'sources', 'words', 'science', 'record', 'law', 'casework', 'papers', 'contract', 'web'].map(
    (name) => `packages/${name}/src`,
  ),
  'packages/web/public',
  'packages/web/index.html',
  'packages/web/vite.config.ts',
  'packages/web/precompressed.ts',
  'packages/web/without-json-schema.ts',
  'packages/web/package.json',
  'package-lock.json',
];

const stamp = join(house, 'packages/web/dist/.built-from');

/** True when the built pages were made from the sources as they are now. */
export function isBuilt() {
  return existsSync(stamp) && readFileSync(stamp, 'utf8') === fingerprint();
}

/**
 * Builds the pages when their sources changed since the last build.
 *
 * @returns {Promise<boolean>} true when the built pages are current afterwards
 */
export async function buildWhenStale({ quiet = false } = {}) {
  if (isBuilt()) return true;
  const before = fingerprint();
  const since = performance.now();
  const vite = join(house, 'node_modules/vite/bin/vite.js');
  // What bundles the service worker leaves its workings in the temporary folder: give it one that goes with the build.
  const temporary = mkdtempSync(join(tmpdir(), 'combside-build-'));
  const { code, output } = await run(process.execPath, [vite, 'build'], {
    cwd: join(house, 'packages/web'),
    env: { TMPDIR: temporary },
    quiet,
  });
  rmSync(temporary, { recursive: true });
  if (code !== 0) {
    if (quiet) console.error(output);
    if (/ENOSPC/.test(output)) console.error('The disk is full: make room, then run the command again.');
    return false;
  }
  writeFileSync(stamp, before);
  console.log(`Built the pages in ${spent(since)}.`);
  return true;
}

/** SHA-256 over the names and contents of all ingredients but tests. */
function fingerprint() {
  const hash = createHash('sha256');
  for (const ingredient of ingredients) {
    for (const path of filesUnder(join(house, ingredient))) {
      hash
        .update(`${relative(house, path)}\0`)
        .update(readFileSync(path))
        .update('\0');
    }
  }
  return hash.digest('hex');
}

function filesUnder(path) {
  if (!existsSync(path)) return [];
  const entries = readdirSyncOrFile(path);
  if (!entries) return [path];
  return entries
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) =>
      entry.isDirectory()
        ? filesUnder(join(path, entry.name))
        : /[.]test[.]tsx?$/.test(entry.name)
          ? []
          : [join(path, entry.name)],
    );
}

function readdirSyncOrFile(path) {
  try {
    return readdirSync(path, { withFileTypes: true });
  } catch (error) {
    if (error.code === 'ENOTDIR') return undefined;
    throw error;
  }
}
