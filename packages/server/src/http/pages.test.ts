import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliCompressSync, brotliDecompressSync, gunzipSync, gzipSync } from 'node:zlib';
import { Hono } from 'hono';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { webPages } from './pages.ts';
import { securityHeaders } from './security.ts';

const script = 'console.log("a page of ours");\n'.repeat(200);
let folder = '';
const app = new Hono();
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'combside-pages-'));
  mkdirSync(join(folder, 'dist/assets'), { recursive: true });
  writeFileSync(join(folder, 'secret.txt'), 'not for you');
  writeFileSync(join(folder, 'dist/.built-from'), 'nor this');
  writeFileSync(join(folder, 'dist/index.html'), '<!doctype html><title>Combside</title>');
  writeFileSync(join(folder, 'dist/sw.js'), '// the service worker');
  writeFileSync(join(folder, 'dist/assets/start-4f2a.js'), script);
  writeFileSync(join(folder, 'dist/assets/start-4f2a.js.br'), brotliCompressSync(script));
  writeFileSync(join(folder, 'dist/assets/start-4f2a.js.gz'), gzipSync(script));
  writeFileSync(join(folder, 'dist/assets/reader-9c.wasm'), Buffer.alloc(9 * 1024 * 1024));
  symlinkSync(join(folder, 'secret.txt'), join(folder, 'dist/link.txt'));
  app.use(securityHeaders(false));
  app.route('/', webPages(join(folder, 'dist')));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const ask = (path: string, headers: Record<string, string> = {}) => app.request(path, { headers });

describe('the built web app', () => {
  test('files whose name carries their hash are kept for a year; the service worker and the page are asked for again', async () => {
    const caching = async (path: string) => (await ask(path)).headers.get('cache-control');
    expect(await caching('/assets/start-4f2a.js')).toBe('public, max-age=31536000, immutable');
    expect(await caching('/sw.js')).toBe('no-cache');
    expect(await caching('/')).toBe('no-cache');
    const tag = (await ask('/sw.js')).headers.get('etag') ?? '';
    expect((await ask('/sw.js', { 'if-none-match': tag })).status).toBe(304);
    writeFileSync(join(folder, 'dist/sw.js'), '// a new service worker');
    const again = await ask('/sw.js', { 'if-none-match': tag });
    expect([again.status, await again.text()]).toEqual([200, '// a new service worker']);
  });

  test('an address that names no file is the app’s own; a file that is not there is missed', async () => {
    for (const path of ['/', '/hive', '/district/visits/0190']) {
      const answer = await ask(path);
      expect([path, answer.status, answer.headers.get('content-type')]).toEqual([
        path,
        200,
        'text/html; charset=utf-8',
      ]);
    }
    expect((await ask('/assets/gone-1.js')).status).toBe(404);
    expect((await app.request('/hive', { method: 'POST' })).status).toBe(405);
  });

  test('travels packed as the reader wishes, and comes out the same', async () => {
    const bytes = async (encodings: string) => {
      const answer = await ask('/assets/start-4f2a.js', { 'accept-encoding': encodings });
      return [answer.headers.get('content-encoding'), Buffer.from(await answer.arrayBuffer())] as const;
    };
    const [br, packed] = await bytes('gzip, deflate, br');
    expect([br, brotliDecompressSync(packed).toString()]).toEqual(['br', script]);
    expect(packed.length).toBeLessThan(script.length / 10);
    const [gz, zipped] = await bytes('gzip');
    expect([gz, gunzipSync(zipped).toString()]).toEqual(['gzip', script]);
    expect((await bytes(''))[1].toString()).toBe(script);
    const large = await ask('/assets/reader-9c.wasm');
    expect((await large.arrayBuffer()).byteLength).toBe(9 * 1024 * 1024);
  });

  test('asked for its head alone, says what would come and sends nothing', async () => {
    const headers = { 'accept-encoding': 'br' };
    for (const path of ['/sw.js', '/assets/start-4f2a.js', '/district']) {
      const [head, whole] = await Promise.all([
        app.request(path, { method: 'HEAD', headers }),
        app.request(path, { headers }),
      ]);
      expect([path, head.status, (await head.arrayBuffer()).byteLength]).toEqual([path, 200, 0]);
      for (const name of ['content-type', 'content-length', 'content-encoding', 'cache-control', 'vary']) {
        expect([path, name, head.headers.get(name)]).toEqual([path, name, whole.headers.get(name)]);
      }
    }
  });

  test('the page of the app is never kept, whatever its address', async () => {
    for (const path of ['/hive', '/assets/nothing']) {
      expect([path, (await ask(path)).headers.get('cache-control')]).toEqual([path, 'no-cache']);
    }
    expect((await ask('/assets/gone-1.js')).headers.get('cache-control')).toBeNull();
  });

  test('nothing outside its folder is given out', async () => {
    const paths = [
      '/../secret.txt',
      '/..%2fsecret.txt',
      '/%2e%2e/secret.txt',
      '/assets/..%2f..%2fsecret.txt',
      '/link.txt',
    ];
    for (const path of [...paths, '/.built-from', '/%00', '/..%5csecret.txt', '/%', '//etc/passwd.txt']) {
      const answer = await ask(path);
      const text = await answer.text();
      expect([path, text.includes('not for you') || text.includes('nor this')]).toEqual([path, false]);
    }
  });

  test('every answer says what a page may do', async () => {
    for (const path of ['/', '/assets/start-4f2a.js', '/gone.js']) {
      const { headers } = await ask(path);
      expect(headers.get('content-security-policy')).toContain("default-src 'self'");
      expect(headers.get('content-security-policy')).not.toContain("script-src 'self' 'unsafe-inline'");
      expect(headers.get('x-content-type-options')).toBe('nosniff');
      expect(headers.get('x-frame-options')).toBe('DENY');
      expect(headers.get('referrer-policy')).toBe('no-referrer');
      expect(headers.get('permissions-policy')).toContain('camera=(self)');
    }
  });
});
