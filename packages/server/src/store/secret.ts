import { randomBytes } from 'node:crypto';
import { link, mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';

/**
 * The secret with which sessions are signed: made at the first start, kept in a file its owner alone can read. Two
 * processes that start at once read the same one.
 */
export async function secretIn(path: string): Promise<string> {
  await mkdir(dirname(path), { recursive: true });
  const half = `${path}.${process.pid}`;
  await writeFile(half, randomBytes(48).toString('base64url'), { mode: 0o600, flush: true });
  await link(half, path).catch((error: NodeJS.ErrnoException) => {
    if (error.code !== 'EEXIST') throw error;
  });
  await rm(half, { force: true });
  return (await readFile(path, 'utf8')).trim();
}
