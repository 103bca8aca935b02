import { createHash } from 'node:crypto';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { correctedReading } from '@combside/casework/comb/corrected-reading';
import { combReadingProposed, combReadingsTold } from '@combside/contract/comb-readings';
import { readerVersion } from '@combside/science/comb/reading/reader-version';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type TestHouse, testHouse, testPeople, type Visitor } from '../acceptance/test-house.ts';
import { wallClock } from '../store/node-ports.ts';
import { openCombReadings } from './comb-readings.ts';
import { type ReadingThread, readingThread } from './reading-thread.ts';

const reference = (name: string) =>
  readFile(fileURLToPath(new URL(`../../../science/src/comb/reference/${name}`, import.meta.url)));
const hashOf = (bytes: Buffer): string => createHash('sha256').update(bytes).digest('hex');
const never = new AbortController().signal;

let house: TestHouse;
let north: Visitor;
let south: Visitor;
beforeAll(async () => {
  house = await testHouse();
  north = await house.signIn(testPeople.north);
  south = await house.signIn(testPeople.south);
});
afterAll(() => house.tearDown());

/** A photograph as the upload leaves it: bytes under their hash, and a row. */
async function store(bytes: Buffer, by = testPeople.north.person): Promise<string> {
  const hash = hashOf(bytes);
  const path = house.photographs.pathOf(hash);
  await mkdir(dirname(path), { recursive: true });
  await writeFile(path, bytes);
  await house.database.sql
    .insertInto('combside.photographs')
    .values({
      hash,
      bytes: bytes.length,
      media_type: 'image/jpeg',
      uploaded_by: by,
      received_at: '2026-05-04T08:31:05.120Z',
    })
    .execute();
  return hash;
}

const ask = async (visitor: Visitor, ...photographs: string[]) =>
  combReadingsTold.parse(await (await visitor.post('/api/comb-readings', { photographs })).json());

const proposed = async (visitor: Visitor, hash: string) =>
  combReadingProposed.parse(await (await visitor.get(`/api/comb-readings/${hash}`)).json());

/** Readings over the same tables, by a thread of the test's own making. */
function readingsBy(thread: ReadingThread, complaints: unknown[] = [], stopping = never) {
  const { pathOf } = house.photographs;
  const complain = (error: unknown) => complaints.push(error);
  const { database, photographs } = house;
  return openCombReadings({ database, photographs, pathOf, thread, clock: wallClock, stopping, complain });
}

const refusedBy = (why: string): ReadingThread => ({
  read: async () => ({ state: 'refused', reasons: [why] }),
  end: async () => undefined,
});

describe('photographs of combs read by the server', () => {
  test('are read in a thread while requests are answered, and stand as proposals of the machine', async () => {
    const comb = await store(await reference('a-open-white-comb.jpg'));
    const hand = await store(await reference('f-frame-in-hand.jpg'));
    const told = await ask(north, comb, hand);
    expect(told.unknown).toEqual([]);
    expect(told.readings.map((one) => [one.state, one.readerVersion])).toEqual([
      ['waiting', readerVersion],
      ['waiting', readerVersion],
    ]);
    expect((await proposed(north, comb)).part).toBeNull();

    let isOver = false;
    const work = house.combReadings.work(60_000).finally(() => {
      isOver = true;
    });
    expect((await north.get('/api/health')).status).toBe(200);
    expect((await north.get('/api/districts')).status).toBe(200);
    expect(isOver).toBe(false);
    expect(await work).toBe(2);

    const read = await proposed(north, comb);
    expect(read).toMatchObject({ state: 'read', readerVersion });
    expect(read.reasons).toContain('never-a-diagnosis');
    const { width, height } = await sharp(house.photographs.pathOf(comb)).metadata();
    expect(read.part?.reader.picture).toEqual({ width, height });
    const standing = correctedReading({ cells: read.part?.cells ?? { count: 0, packed: '' }, corrections: [] });
    // The command line finds as many on this picture: 61 labelled cells away from the edge, 86 in all.
    expect(standing?.reading.cells).toBeGreaterThan(75);
    expect(standing?.reading.coarseCounts.open).toBeGreaterThan(45);

    const refused = await proposed(north, hand);
    expect(refused).toMatchObject({ state: 'refused', part: null });
    expect(['no-comb', 'under-bees', 'cells-too-small']).toContain(refused.reasons[0]);

    // Nothing of it is in the record.
    const entries = await house.database.sql
      .selectFrom('combside.entries')
      .select('id')
      .where('kind', '=', 'comb-reading')
      .execute();
    expect(entries).toEqual([]);
  }, 60_000);

  test('are told again, not read again, when asked for again', async () => {
    const comb = hashOf(await reference('a-open-white-comb.jpg'));
    const before = await proposed(north, comb);
    expect((await ask(north, comb)).readings).toMatchObject([{ state: 'read', finishedAt: before.finishedAt }]);
    expect(await house.combReadings.work(1000)).toBe(0);
  });

  test('that somebody may not see, or that never arrived, are unknown to them', async () => {
    const comb = hashOf(await reference('a-open-white-comb.jpg'));
    const absent = 'ab'.repeat(32);
    expect(await ask(south, comb, absent)).toEqual({ readings: [], unknown: [comb, absent] });
    expect((await south.get(`/api/comb-readings/${comb}`)).status).toBe(404);
    expect((await north.get('/api/comb-readings/nonsense')).status).toBe(404);
    expect((await house.app.request(`/api/comb-readings/${comb}`)).status).toBe(401);
    expect((await north.post('/api/comb-readings', { photographs: [] })).status).toBe(400);
    expect((await north.post('/api/comb-readings', { photographs: ['x'] })).status).toBe(400);
  });

  test('that are no picture, or broken ones, are refused with the reason', async () => {
    const jpeg = await reference('a-open-white-comb.jpg');
    const text = await store(Buffer.from('not a picture'));
    const half = await store(Buffer.from(jpeg.subarray(0, jpeg.length >> 1)));
    await ask(north, text, half);
    expect(await house.combReadings.work(60_000)).toBe(2);
    expect((await proposed(north, text)).reasons).toEqual(['not-a-picture']);
    expect((await proposed(north, half)).reasons).toEqual(['damaged']);
  }, 60_000);

  test('whose bytes are gone are given up after three attempts, and the others are read', async () => {
    const gone = await store(Buffer.from('soon gone'));
    await ask(north, gone);
    const complaints: unknown[] = [];
    let attempts = 0;
    const readings = readingsBy(
      {
        read: async () => {
          attempts++;
          throw new Error('the thread died');
        },
        end: async () => undefined,
      },
      complaints,
    );
    const other = await store(Buffer.from('another one'));
    await ask(north, other);
    await readings.work(10_000);
    expect(attempts).toBe(6);
    expect(complaints).toHaveLength(6);
    expect(await proposed(north, gone)).toMatchObject({ state: 'failed', reasons: ['reader-failed'] });
  });

  test('of a process that died are taken up by another when their time is over, not before', async () => {
    const left = await store(Buffer.from('left behind'));
    await ask(north, left);
    const begun = (until: string) =>
      house.database.sql
        .updateTable('combside.comb_readings')
        .set({ state: 'reading', begun_until: until })
        .where('photograph', '=', left)
        .execute();
    await begun('2999-01-01T00:00:00.000Z');
    expect(await readingsBy(refusedBy('no-comb')).work(1000)).toBe(0);
    await begun('2020-01-01T00:00:00.000Z');
    expect(await readingsBy(refusedBy('no-comb')).work(1000)).toBe(1);
    expect((await proposed(north, left)).state).toBe('refused');
  });

  test('are read once, by whichever of two processes comes first', async () => {
    const hashes: string[] = [];
    for (let n = 0; n < 12; n++) hashes.push(await store(Buffer.from(`shared ${n}`)));
    await ask(north, ...hashes);
    const read: string[] = [];
    const watching: ReadingThread = {
      read: async ({ path }) => {
        read.push(path);
        await new Promise((done) => setImmediate(done));
        return { state: 'refused', reasons: ['no-comb'] };
      },
      end: async () => undefined,
    };
    const done = await Promise.all([readingsBy(watching).work(10_000), readingsBy(watching).work(10_000)]);
    expect(done[0] + done[1]).toBe(12);
    expect(new Set(read).size).toBe(12);
  });

  test('wait again when the server stops in the middle', async () => {
    const waiting = await store(Buffer.from('in the middle'));
    await ask(north, waiting);
    const stop = new AbortController();
    const complaints: unknown[] = [];
    const stopped = readingsBy(
      {
        read: async () => {
          stop.abort();
          throw new Error('ended');
        },
        end: async () => undefined,
      },
      complaints,
      stop.signal,
    );
    await stopped.work(10_000);
    expect(complaints).toEqual([]);
    expect((await proposed(north, waiting)).state).toBe('waiting');
    expect(await readingsBy(refusedBy('no-comb')).work(1000)).toBe(1);
  });
});

describe('the thread', () => {
  test('that dies says so, and the next photograph gets a fresh one', async () => {
    const thread = readingThread();
    await expect(thread.read({ path: '/nowhere/at/all.jpg' })).rejects.toThrow(/ENOENT/);
    const comb = house.photographs.pathOf(hashOf(await reference('a-open-white-comb.jpg')));
    expect((await thread.read({ path: comb })).state).toBe('read');
    await thread.end();
  }, 60_000);
});
