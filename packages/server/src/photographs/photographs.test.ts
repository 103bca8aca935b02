import { createHash, randomBytes } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { largestPhotograph } from '@combside/contract/photograph';
import { visitPage } from '@combside/contract/visit-page';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { newId, phoneOf, type TestHouse, testHouse, testPeople, type Visitor } from '../acceptance/test-house.ts';
import { apiaryProposal, colonyProposal, examinationProposal, visitProposal } from '../acceptance/test-proposals.ts';

let house: TestHouse;
let north: Visitor;
let south: Visitor;
let office: Visitor;
beforeAll(async () => {
  house = await testHouse();
  north = await house.signIn(testPeople.north);
  south = await house.signIn(testPeople.south);
  office = await house.signIn(testPeople.office);
});
afterAll(() => house.tearDown());

const hashOf = (bytes: Buffer): string => createHash('sha256').update(bytes).digest('hex');
const base64 = (text: string): string => Buffer.from(text).toString('base64');
const tus = { 'tus-resumable': '1.0.0' };

async function begin(visitor: Visitor, bytes: number, hash: string, mediaType = 'image/jpeg'): Promise<Response> {
  return house.app.request('/api/uploads', {
    method: 'POST',
    headers: {
      ...visitor.headers,
      ...tus,
      'upload-length': String(bytes),
      'upload-metadata': `hash ${base64(hash)},mediaType ${base64(mediaType)}`,
    },
  });
}

async function send(visitor: Visitor, address: string, offset: number, bytes: Buffer): Promise<Response> {
  return house.app.request(address, {
    method: 'PATCH',
    headers: {
      ...visitor.headers,
      ...tus,
      'upload-offset': String(offset),
      'content-type': 'application/offset+octet-stream',
      'content-length': String(bytes.length),
    },
    body: new Uint8Array(bytes),
  });
}

async function upload(visitor: Visitor, bytes: Buffer): Promise<number> {
  const begun = await begin(visitor, bytes.length, hashOf(bytes));
  expect(begun.status).toBe(201);
  return (await send(visitor, begun.headers.get('location') ?? '', 0, bytes)).status;
}

const photograph = (bytes: Buffer) => ({
  hash: hashOf(bytes),
  mediaType: 'image/jpeg',
  bytes: bytes.length,
  takenAt: '2026-05-04T08:31:05.120Z',
  caption: 'comb 4, side a',
});

describe('photographs', () => {
  test('arrive in pieces, go on after a cut, and stand under their hash', async () => {
    const bytes = randomBytes(300_000);
    const begun = await begin(north, bytes.length, hashOf(bytes));
    const address = begun.headers.get('location') ?? '';
    expect(address).toMatch(/^\/api\/uploads\/[0-9a-f]{32}$/);
    expect((await send(north, address, 0, bytes.subarray(0, 100_000))).status).toBe(204);

    const head = await house.app.request(address, { method: 'HEAD', headers: { ...north.headers, ...tus } });
    expect(head.headers.get('upload-offset')).toBe('100000');
    expect((await send(north, address, 50_000, bytes.subarray(50_000))).status).toBe(409);
    expect((await send(north, address, 100_000, bytes.subarray(100_000))).status).toBe(204);

    const answer = await north.get(`/api/photographs/${hashOf(bytes)}`);
    expect(answer.headers.get('content-type')).toBe('image/jpeg');
    expect(answer.headers.get('content-security-policy')).toContain('sandbox');
    expect(answer.headers.get('cache-control')).toContain('immutable');
    expect(hashOf(Buffer.from(await answer.arrayBuffer()))).toBe(hashOf(bytes));
    const held = await north.post('/api/photographs/held', { hashes: [hashOf(bytes), 'b'.repeat(64)] });
    expect(await held.json()).toEqual({ held: [hashOf(bytes)] });
    expect(readdirSync(join(house.data, 'photographs', 'arriving'))).toEqual([]);
  });

  test('whose bytes have another hash are refused and forgotten; the right ones may follow', async () => {
    const bytes = randomBytes(1000);
    const begun = await begin(north, bytes.length, hashOf(bytes));
    const refused = await send(north, begun.headers.get('location') ?? '', 0, Buffer.alloc(1000, 1));
    expect(refused.status).toBe(460);
    expect(await refused.json()).toMatchObject({ code: 'photograph-hash' });
    expect((await north.get(`/api/photographs/${hashOf(bytes)}`)).status).toBe(404);
    expect(await upload(north, bytes)).toBe(204);
    expect(await upload(north, bytes)).toBe(204);
    expect((await north.get(`/api/photographs/${hashOf(bytes)}`)).status).toBe(200);
  });

  test('are announced rightly or not at all', async () => {
    const hash = 'a'.repeat(64);
    expect((await begin(north, 10, hash, 'text/html')).status).toBe(400);
    expect((await begin(north, 10, '../../etc/passwd')).status).toBe(400);
    expect((await begin(north, 0, hash)).status).toBe(400);
    expect((await begin(north, largestPhotograph + 1, hash)).status).toBe(413);
    expect(readdirSync(join(house.data, 'photographs', 'arriving'))).toEqual([]);
  });

  test('do not open to somebody who only names their hash in an examination of his own', async () => {
    const bytes = randomBytes(1000);
    const [apiary, visit, colony] = [newId(), newId(), newId()];
    expect(await upload(south, bytes)).toBe(204);
    const named = await phoneOf(testPeople.north.person).write(
      apiaryProposal(apiary, 'north'),
      colonyProposal(colony, apiary, '1'),
      visitProposal(visit, apiary, testPeople.north.person),
      examinationProposal(colony, visit, apiary, [photograph(bytes)]),
    );
    expect((await north.push(named)).map(({ outcome }) => outcome)).toEqual(Array(5).fill('received'));
    expect((await north.get(`/api/photographs/${hashOf(bytes)}`)).status).toBe(404);
    expect((await south.get(`/api/photographs/${hashOf(bytes)}`)).status).toBe(200);
  });

  test('are seen by their sender, and by whoever may read an examination that shows them', async () => {
    const bytes = randomBytes(2000);
    const [apiary, colony, visit] = [newId(), newId(), newId()];
    expect(await upload(north, bytes)).toBe(204);
    expect((await south.get(`/api/photographs/${hashOf(bytes)}`)).status).toBe(404);
    const late = randomBytes(500);
    await north.push(
      await phoneOf(testPeople.north.person).write(
        apiaryProposal(apiary, 'north'),
        colonyProposal(colony, apiary, '1'),
        visitProposal(visit, apiary, testPeople.north.person),
        examinationProposal(colony, visit, apiary, [photograph(bytes), photograph(late)]),
      ),
    );
    expect((await office.get(`/api/photographs/${hashOf(bytes)}`)).status).toBe(200);
    expect((await south.get(`/api/photographs/${hashOf(bytes)}`)).status).toBe(404);
    const page = visitPage.parse(await (await office.get(`/api/visits/${visit}`)).json());
    expect(page.photographs.map((one) => [one.hash, one.held])).toEqual([
      [hashOf(bytes), true],
      [hashOf(late), false],
    ]);
  });

  test('an upload belongs to who began it, and its name leads nowhere else', async () => {
    const bytes = randomBytes(100);
    const begun = await begin(north, bytes.length, hashOf(bytes));
    const address = begun.headers.get('location') ?? '';
    expect((await send(south, address, 0, bytes)).status).toBe(404);
    const headers = { ...north.headers, ...tus };
    for (const name of [
      '..%2F..%2Fkeys%2Fsession-secret',
      '../keys',
      '%2e%2e/keys',
      'x'.repeat(32),
      `${'0'.repeat(32)}`,
    ]) {
      const answer = await house.app.request(`/api/uploads/${name}`, { method: 'HEAD', headers });
      expect([name, answer.status]).toEqual([name, 404]);
    }
    for (const name of [
      '..%2Fkeys%2Fsession-secret',
      '../../keys/session-secret',
      'a'.repeat(63),
      'A'.repeat(64),
      '%00',
    ]) {
      expect([name, (await north.get(`/api/photographs/${name}`)).status]).toEqual([name, 404]);
    }
  });

  test('that were whole when the server died are taken in at the next start', async () => {
    const bytes = randomBytes(4000);
    const begun = await begin(north, bytes.length, hashOf(bytes));
    const id = (begun.headers.get('location') ?? '').split('/').at(-1) ?? '';
    const path = join(house.data, 'photographs', 'arriving', id);
    writeFileSync(path, bytes);
    const old = await begin(north, 10, 'c'.repeat(64));
    const given = (old.headers.get('location') ?? '').split('/').at(-1) ?? '';
    await house.photographs.settle(new Date());
    expect(existsSync(path)).toBe(false);
    expect(readFileSync(join(house.data, 'photographs', hashOf(bytes).slice(0, 2), hashOf(bytes)))).toEqual(bytes);
    expect((await north.get(`/api/photographs/${hashOf(bytes)}`)).status).toBe(200);

    expect(existsSync(join(house.data, 'photographs', 'arriving', given))).toBe(true);
    await house.photographs.settle(new Date(Date.now() + 8 * 24 * 3600 * 1000));
    expect(readdirSync(join(house.data, 'photographs', 'arriving'))).toEqual([]);
  });
});
