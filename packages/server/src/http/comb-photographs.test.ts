import { createHash } from 'node:crypto';
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { colonyPage } from '@combside/contract/colony-page';
import { type CombPhotographs, combPhotographs } from '@combside/contract/comb-photographs';
import { combReadingsTold } from '@combside/contract/comb-readings';
import { visitPage } from '@combside/contract/visit-page';
import { sampleBodies } from '@combside/record/acceptance/golden-bodies';
import type { Proposal } from '@combside/record/entry';
import type { CombReadingBody } from '@combside/record/kinds/comb-reading';
import type { PhotographReference } from '@combside/record/kinds/examination';
import { readerVersion } from '@combside/science/comb/reading/reader-version';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { newId, phoneOf, type TestHouse, testHouse, testPeople, type Visitor } from '../acceptance/test-house.ts';
import { apiaryProposal, colonyProposal, examinationProposal, visitProposal } from '../acceptance/test-proposals.ts';

const photographed = (name: string, minute: number): PhotographReference => ({
  hash: createHash('sha256').update(name).digest('hex'),
  mediaType: 'image/jpeg',
  bytes: name.length,
  takenAt: `2026-05-04T08:${String(minute).padStart(2, '0')}:00.000Z`,
  caption: name,
});
const first = photographed('first', 31);
const second = photographed('second', 32);
const third = photographed('third', 33);
const elsewhere = photographed('elsewhere', 34);
const notHere = photographed('on its way', 35);

const ids = {
  apiary: newId(),
  other: newId(),
  colonies: [newId(), newId(), newId()],
  visit: newId(),
  otherVisit: newId(),
} as const;
const [one = '', two = '', far = ''] = ids.colonies;

let house: TestHouse;
let north: Visitor;
let south: Visitor;
let office: Visitor;
const phone = phoneOf(testPeople.north.person);
const southPhone = phoneOf(testPeople.south.person);

beforeAll(async () => {
  house = await testHouse();
  north = await house.signIn(testPeople.north);
  south = await house.signIn(testPeople.south);
  office = await house.signIn(testPeople.office);
  await north.push(
    await phone.write(
      apiaryProposal(ids.apiary, 'north'),
      colonyProposal(one, ids.apiary, '1'),
      colonyProposal(two, ids.apiary, '2'),
      visitProposal(ids.visit, ids.apiary, testPeople.north.person),
      examinationProposal(one, ids.visit, ids.apiary, [first, second]),
      examinationProposal(two, ids.visit, ids.apiary, [third, notHere]),
    ),
  );
  await south.push(
    await southPhone.write(
      apiaryProposal(ids.other, 'south', { name: 'Far Down' }),
      colonyProposal(far, ids.other, '9'),
      visitProposal(ids.otherVisit, ids.other, testPeople.south.person),
      examinationProposal(far, ids.otherVisit, ids.other, [elsewhere]),
    ),
  );
  for (const one of [first, second, third]) await store(Buffer.from(one.caption), one.hash, testPeople.north.person);
  await store(Buffer.from(elsewhere.caption), elsewhere.hash, testPeople.south.person);
});
afterAll(() => house.tearDown());

/** Bytes under a hash, as an upload leaves them. */
async function store(bytes: Buffer, hash: string, sender: string): Promise<void> {
  const path = house.photographs.pathOf(hash);
  await mkdir(dirname(path), { recursive: true });
  await writeFile(path, bytes);
  const row = { hash, bytes: bytes.length, media_type: 'image/jpeg', received_at: '2026-05-04T09:00:00.000Z' };
  await house.database.sql
    .insertInto('combside.photographs')
    .values({ ...row, uploaded_by: sender })
    .execute();
}

const listed = async (visitor: Visitor, query = ''): Promise<CombPhotographs> =>
  combPhotographs.parse(await (await visitor.get(`/api/comb-photographs${query}`)).json());
const captions = ({ photographs }: CombPhotographs): string[] => photographs.map((line) => line.caption);
const standings = ({ photographs }: CombPhotographs): string[] =>
  photographs.map((line) => `${line.caption}: ${line.standing}`);

/** What the machine made of a photograph, put where its thread would put it. */
const finished = (hash: string, state: 'read' | 'refused' | 'reading', reasons: readonly string[] = []) =>
  house.database.sql
    .updateTable('combside.comb_readings')
    .set({ state, reasons: [...reasons] })
    .where('photograph', '=', hash)
    .execute();

const keptReading = (photograph: PhotographReference, accepted: boolean): Proposal<CombReadingBody> => ({
  kind: 'comb-reading',
  version: 1,
  about: { type: 'colony', id: one },
  body: {
    ...(sampleBodies['comb-reading.1']?.body as CombReadingBody),
    visit: ids.visit,
    apiary: ids.apiary,
    observedAt: photograph.takenAt,
    photograph,
    accepted,
  },
  replaces: [],
});

describe('photographs of combs', () => {
  test('are listed newest first, of one visit or apiary, and none of a district not granted', async () => {
    expect(captions(await listed(north))).toEqual(['on its way', 'third', 'second', 'first']);
    expect(captions(await listed(south))).toEqual(['elsewhere']);
    expect(captions(await listed(office))).toEqual(['on its way', 'elsewhere', 'third', 'second', 'first']);
    expect(captions(await listed(office, '?district=south'))).toEqual(['elsewhere']);
    expect(captions(await listed(office, `?apiary=${ids.other}`))).toEqual(['elsewhere']);
    expect(captions(await listed(north, `?apiary=${ids.other}`))).toEqual([]);
    expect(captions(await listed(north, `?visit=${ids.visit}&limit=2`))).toEqual(['on its way', 'third']);
    expect((await north.get('/api/comb-photographs?district=south')).status).toBe(403);
    expect((await house.app.request('/api/comb-photographs')).status).toBe(401);
    expect((await listed(north)).photographs[3]).toMatchObject({
      colony: one,
      label: '1',
      visit: ids.visit,
      apiary: ids.apiary,
      apiaryName: 'Hazel Bank',
      takenAt: first.takenAt,
    });
  });

  test('come a page at a time, each once', async () => {
    const all: string[] = [];
    for (let after: string | null = ''; after !== null; ) {
      const page = await listed(office, `?limit=2${after && `&after=${encodeURIComponent(after)}`}`);
      all.push(...captions(page));
      after = page.next;
    }
    expect(all).toEqual(['on its way', 'elsewhere', 'third', 'second', 'first']);
  });

  test('say how each stands while the server reads, and can be taken back while they wait', async () => {
    expect(standings(await listed(north))).toEqual([
      'on its way: not-held',
      'third: not-read',
      'second: not-read',
      'first: not-read',
    ]);
    const ask = (address: string, ...photographs: string[]) =>
      north.post(address, { photographs }).then(async (answer) => combReadingsTold.parse(await answer.json()));
    await ask('/api/comb-readings', first.hash, second.hash, third.hash);
    await finished(first.hash, 'reading');
    await finished(third.hash, 'refused', ['too-dark']);
    const under = await listed(north);
    expect(standings(under)).toEqual(['on its way: not-held', 'third: refused', 'second: waiting', 'first: reading']);
    expect(under.photographs[1]?.reasons).toEqual(['too-dark']);
    expect([under.waiting, under.reading]).toEqual([1, 1]);
    expect([(await listed(south)).waiting, (await listed(office)).waiting]).toEqual([0, 1]);
    expect(captions(await listed(north, '?standing=waiting'))).toEqual(['second']);

    // Another district takes nothing back; what is being read stays; what waits is as if never asked for.
    expect((await south.post('/api/comb-readings/cancel', { photographs: [second.hash] })).status).toBe(200);
    expect((await listed(north)).waiting).toBe(1);
    const left = await ask('/api/comb-readings/cancel', first.hash, second.hash, elsewhere.hash);
    expect(left.readings.map((told) => [told.photograph, told.state])).toEqual([[first.hash, 'reading']]);
    expect(left.unknown).toEqual([elsewhere.hash]);
    expect(captions(await listed(north, '?standing=not-read'))).toEqual(['second']);
    expect((await north.post('/api/comb-readings/cancel', { photographs: ['x'] })).status).toBe(400);

    await finished(first.hash, 'read');
    expect(captions(await listed(north, '?standing=read'))).toEqual(['first']);
    const shown = visitPage.parse(await (await north.get(`/api/visits/${ids.visit}`)).json()).photographs;
    expect(shown.map((photograph) => `${photograph.caption}: ${photograph.comb}`).sort()).toEqual([
      'first: read',
      'on its way: not-held',
      'second: not-read',
      'third: refused',
    ]);
  });

  test('that another version of the reader read are not read by this one', async () => {
    await house.database.sql
      .insertInto('combside.comb_readings')
      .values({
        photograph: second.hash,
        reader_version: readerVersion + 1,
        state: 'read',
        asked_at: '2026-05-04T09:00:00.000Z',
      })
      .execute();
    expect(captions(await listed(north, '?standing=not-read'))).toEqual(['second']);
  });

  test('whose reading a person kept say so, whatever the machine says', async () => {
    await north.push(await phone.write(keptReading(first, false), keptReading(second, true)));
    expect(standings(await listed(north, `?visit=${ids.visit}`)).slice(2)).toEqual(['second: accepted', 'first: kept']);
    const page = colonyPage.parse(await (await north.get(`/api/colonies/${one}`)).json());
    expect(page.photographs.map((photograph) => photograph.comb).sort()).toEqual(['accepted', 'kept']);
  });

  test('are sent small and upright to whoever may see them, and only such as are pictures', async () => {
    const { width, height } = { width: 1600, height: 900 };
    const picture = await sharp({ create: { width, height, channels: 3, background: '#806020' } })
      .withMetadata({ orientation: 6 })
      .jpeg()
      .toBuffer();
    const large = photographed('large', 40);
    await store(picture, large.hash, testPeople.north.person);
    await north.push(await phone.write(examinationProposal(two, ids.visit, ids.apiary, [large])));
    const answer = await north.get(`/api/photographs/${large.hash}/small`);
    expect(answer.headers.get('content-type')).toBe('image/jpeg');
    expect(answer.headers.get('cache-control')).toContain('immutable');
    const small = await sharp(Buffer.from(await answer.arrayBuffer())).metadata();
    expect([small.width, small.height]).toEqual([360, 640]);
    expect((await south.get(`/api/photographs/${large.hash}/small`)).status).toBe(404);
    expect((await north.get(`/api/photographs/${first.hash}/small`)).status).toBe(404);
    expect((await north.get('/api/photographs/nonsense/small')).status).toBe(404);
  });
});
