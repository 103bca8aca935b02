import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { mapBackground } from '@combside/contract/map';
import { Hono } from 'hono';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { archiveOf, backgroundTold, foreignOrigin, readBackground } from './background.ts';
import { securityHeaders } from './security.ts';

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'combside-background-'));
  await writeFile(join(folder, 'land.pmtiles'), '0123456789');
});
afterAll(() => rm(folder, { recursive: true, force: true }));

describe('the setting of the map', () => {
  test('is nothing, a file, or an address of tiles; anything else is refused', () => {
    expect(readBackground(undefined)).toEqual({ kind: 'none' });
    expect(readBackground('/srv/land.pmtiles')).toEqual({ kind: 'archive', path: '/srv/land.pmtiles' });
    const address = 'https://tiles.example/{z}/{x}/{y}.png';
    expect(readBackground(address)).toEqual({ kind: 'tiles', address });
    for (const wrong of [
      'land.mbtiles',
      'https://tiles.example/{z}/{x}.png',
      'ftp://tiles.example/{z}/{x}/{y}',
      'https://tiles.example; script-src *//{z}/{x}/{y}',
      'https://{x}.example/{z}/{x}/{y}',
    ]) {
      expect(readBackground(wrong), wrong).toBeNull();
    }
  });

  test('opens the pages to that one server, and to nobody without it', async () => {
    const background = readBackground('https://tiles.example:8443/{z}/{x}/{y}.png');
    expect(background && foreignOrigin(background)).toBe('https://tiles.example:8443');
    const policy = async (from: string | null) => {
      const app = new Hono();
      app.use(securityHeaders(false, from));
      app.get('/', (context) => context.text(''));
      return (await app.request('/')).headers.get('content-security-policy') ?? '';
    };
    expect(await policy('https://tiles.example:8443')).toContain("connect-src 'self' https://tiles.example:8443;");
    expect(await policy(null)).toContain("connect-src 'self';");
    expect(await policy(null)).not.toContain('http');
  });
});

describe('an archive of tiles', () => {
  const ask = async (range?: string, name = 'land.pmtiles') => {
    const app = new Hono();
    app.get('/', (context) => archiveOf(context, { kind: 'archive', path: join(folder, name) }));
    return app.request('/', range === undefined ? {} : { headers: { range } });
  };

  test('is given out whole or by ranges, as RFC 9110 writes them', async () => {
    expect(await (await ask()).text()).toBe('0123456789');
    const part = await ask('bytes=2-5');
    expect([part.status, part.headers.get('content-range'), await part.text()]).toEqual([206, 'bytes 2-5/10', '2345']);
    const rest = await ask('bytes=8-');
    expect([rest.headers.get('content-range'), await rest.text()]).toEqual(['bytes 8-9/10', '89']);
    expect((await ask('bytes=8-99')).headers.get('content-range')).toBe('bytes 8-9/10');
    for (const wrong of ['bytes=10-11', 'bytes=5-2', 'bytes=-3', 'bytes=0-1,4-5', 'lines=1-2']) {
      const refused = await ask(wrong);
      expect([wrong, refused.status, refused.headers.get('content-range')]).toEqual([wrong, 416, 'bytes */10']);
    }
  });

  test('that is not there is not found', async () => {
    expect((await ask('bytes=0-1', 'gone.pmtiles')).status).toBe(404);
  });

  test('is told by its address, never by its path', () => {
    expect(mapBackground.parse(backgroundTold({ kind: 'archive', path: '/srv/land.pmtiles' }))).toEqual({
      kind: 'archive',
      address: '/api/map/tiles.pmtiles',
    });
    expect(backgroundTold({ kind: 'none' })).toEqual({ kind: 'none', address: null });
  });
});
