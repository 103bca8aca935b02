import { createHash } from 'node:crypto';
import { createReadStream, type Stats } from 'node:fs';
import { readFile, realpath, stat } from 'node:fs/promises';
import { extname, join, sep } from 'node:path';
import { Readable } from 'node:stream';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';
import type { Handler } from 'hono';
import { refuse } from './answers.ts';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.webp': 'image/webp',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.ttf': 'font/ttf',
  '.wasm': 'application/wasm',
  '.map': 'application/json',
  '.txt': 'text/plain; charset=utf-8',
  '.pmtiles': 'application/octet-stream',
};
const packed = new Set([
  '.html',
  '.js',
  '.mjs',
  '.css',
  '.json',
  '.webmanifest',
  '.svg',
  '.wasm',
  '.map',
  '.txt',
  '.ttf',
]);

/** Files up to this size are kept in memory, packed once: the whole program is a few megabytes. */
const keptInMemory = 8 * 1024 * 1024;

const brotli = promisify(brotliCompress);
const zip = promisify(gzip);

interface CachedFile {
  readonly changed: number;
  readonly tag: string;
  readonly plain: Buffer;
  readonly forms: Map<'br' | 'gzip', Promise<Buffer>>;
}

/**
 * The built web app. Files whose name carries their hash (`assets/`) never change and are kept for a year; everything
 * else, the service worker above all, is asked for again each time, by its tag. An address that names no file is one of
 * the app's own and gets its page.
 */
export function webPages(folder: string): Handler {
  const memory = new Map<string, CachedFile>();
  return async (context) => {
    if (context.req.method !== 'GET' && context.req.method !== 'HEAD') return refuse(context, 'method-not-allowed');
    const found = (await fileAt(folder, context.req.path)) ?? (await pageAt(folder, context.req.path));
    if (!found) return refuse(context, 'not-found');

    const { path, stats } = found;
    const extension = extname(path);
    const headers = new Headers({
      'content-type': types[extension] ?? 'application/octet-stream',
      'cache-control': path.includes(`${sep}assets${sep}`) ? 'public, max-age=31536000, immutable' : 'no-cache',
      vary: 'accept-encoding',
    });
    if (stats.size > keptInMemory) {
      headers.set('content-length', String(stats.size));
      const body = context.req.method === 'HEAD' ? null : Readable.toWeb(createReadStream(path));
      return new Response(body as ReadableStream | null, { headers });
    }
    const kept = await keep(memory, path, stats);
    headers.set('etag', kept.tag);
    if (context.req.header('if-none-match')?.includes(kept.tag)) return new Response(null, { status: 304, headers });
    const form = packed.has(extension) ? formAccepted(context.req.header('accept-encoding')) : undefined;
    const bytes = form ? await formOf(kept, form) : kept.plain;
    if (form) headers.set('content-encoding', form);
    headers.set('content-length', String(bytes.length));
    return new Response(context.req.method === 'HEAD' ? null : new Uint8Array(bytes), { headers });
  };
}

/** The file an address names, or null. An address never leads out of the folder, by dots or by links. */
async function fileAt(folder: string, address: string): Promise<{ path: string; stats: Stats } | null> {
  let name: string;
  try {
    name = decodeURIComponent(address);
  } catch {
    return null;
  }
  if (name.includes('\u0000') || name.split(/[/\\]/).some((part) => part.startsWith('.'))) return null;
  const root = await realpath(folder).catch(() => null);
  const path = root && (await realpath(join(root, name)).catch(() => null));
  if (!root || !path?.startsWith(root + sep)) return null;
  const stats = await stat(path);
  return stats.isFile() ? { path, stats } : null;
}

async function pageAt(folder: string, address: string): Promise<{ path: string; stats: Stats } | null> {
  return extname(address) === '' ? fileAt(folder, '/index.html') : null;
}

async function keep(memory: Map<string, CachedFile>, path: string, stats: Stats): Promise<CachedFile> {
  const known = memory.get(path);
  if (known?.changed === stats.mtimeMs) return known;
  const plain = await readFile(path);
  const tag = `"${createHash('sha256').update(plain).digest('base64url').slice(0, 22)}"`;
  const kept: CachedFile = { changed: stats.mtimeMs, tag, plain, forms: new Map() };
  memory.set(path, kept);
  return kept;
}

function formOf(kept: CachedFile, form: 'br' | 'gzip'): Promise<Buffer> {
  const known = kept.forms.get(form);
  if (known !== undefined) return known;
  const made =
    form === 'br'
      ? brotli(kept.plain, { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } })
      : zip(kept.plain, { level: 9 });
  kept.forms.set(form, made);
  return made;
}

function formAccepted(header: string | undefined): 'br' | 'gzip' | undefined {
  const accepted = (header ?? '').split(',').map((one) => one.trim().split(';')[0]);
  return accepted.includes('br') ? 'br' : accepted.includes('gzip') ? 'gzip' : undefined;
}
