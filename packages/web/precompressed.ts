import { readdirSync } from 'node:fs';
import { readFile, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';
import type { Plugin } from 'vite';

/**
 * What grows smaller when packed; pictures and web fonts are packed already, and the maps of the sources, three quarters of
 * all bytes, are asked for by nobody but who looks for a fault.
 */
const packed = /[.](html|m?js|css|json|webmanifest|svg|wasm|txt|ttf)$/;

const brotli = promisify(brotliCompress);
const zip = promisify(gzip);

/**
 * Lays beside each built file its packed forms (`.br`, `.gz`), for the server to send as they are. Stands last among the
 * plugins: the service worker is written when all else is.
 */
export function precompressed(): Plugin {
  let folder = '';
  return {
    name: 'precompressed',
    apply: 'build',
    enforce: 'post',
    configResolved(config) {
      folder = resolve(config.root, config.build.outDir);
    },
    closeBundle: {
      order: 'post',
      sequential: true,
      async handler() {
        const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => packed.test(name));
        await Promise.all(names.map((name) => pack(join(folder, name))));
      },
    },
  };
}

async function pack(path: string): Promise<void> {
  const plain = await readFile(path);
  const [br, gz] = await Promise.all([
    brotli(plain, { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } }),
    zip(plain, { level: 9 }),
  ]);
  await Promise.all([writeFile(`${path}.br`, br), writeFile(`${path}.gz`, gz)]);
}
