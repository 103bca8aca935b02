import { readdirSync } from 'node:fs';
import { join } from 'node:path';

/** Folders that are made by tools or by running, never written by hand. */
const made = new Set(['node_modules', 'dist', 'data', 'test-results', 'playwright-report', '.cache', '.git']);

/**
 * Lists the files of the house as written by hand, without asking git (a downloaded copy has none).
 *
 * @param house folder to walk
 * @returns paths relative to it, with forward slashes, in order
 */
export function filesOf(house: string, under = ''): string[] {
  return readdirSync(join(house, under), { withFileTypes: true })
    .flatMap((entry) => {
      const path = under === '' ? entry.name : `${under}/${entry.name}`;
      if (entry.isDirectory()) return made.has(entry.name) ? [] : filesOf(house, path);
      return entry.isFile() ? [path] : [];
    })
    .sort();
}
