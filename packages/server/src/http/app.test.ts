import { apiaries } from '@combside/contract/apiaries';
import { apiaryPage } from '@combside/contract/apiary-page';
import { colonyPage } from '@combside/contract/colony-page';
import { districts } from '@combside/contract/districts';
import { greeting } from '@combside/contract/greeting';
import { health, hello } from '@combside/contract/hello';
import { me, people } from '@combside/contract/people';
import { pullAnswer } from '@combside/contract/pull';
import { oldestServed, protocolVersion } from '@combside/contract/version';
import { visitPage } from '@combside/contract/visit-page';
import { visits } from '@combside/contract/visits';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { newId, phoneOf, type TestHouse, testHouse, testPeople, type Visitor } from '../acceptance/test-house.ts';
import {
  apiaryProposal,
  assessmentProposal,
  colonyProposal,
  examinationProposal,
  keeperProposal,
  visitProposal,
} from '../acceptance/test-proposals.ts';
import { peopleFor } from '../store/people.ts';

let house: TestHouse;
let north: Visitor;
let office: Visitor;
const ids = {
  keeper: newId(),
  apiary: newId(),
  colonies: [newId(), newId()],
  visit: newId(),
  examination: newId(),
} as const;

beforeAll(async () => {
  house = await testHouse();
  north = await house.signIn(testPeople.north);
  office = await house.signIn(testPeople.office);
  const phone = phoneOf(testPeople.north.person);
  const [first = '', second = ''] = ids.colonies;
  const entries = await phone.write(
    keeperProposal(ids.keeper, 'Aldith Ashlock'),
    apiaryProposal(ids.apiary, 'north', { keeper: ids.keeper }),
    colonyProposal(first, ids.apiary, '10'),
    colonyProposal(second, ids.apiary, '9'),
    visitProposal(ids.visit, ids.apiary, testPeople.north.person),
    { ...examinationProposal(first, ids.visit, ids.apiary), id: ids.examination },
    assessmentProposal(first, ids.visit, ids.examination),
    examinationProposal(second, ids.visit, ids.apiary),
  );
  const results = await north.push(entries);
  expect(results.map((result) => result.outcome)).toEqual(entries.map(() => 'received'));
});
afterAll(() => house.tearDown());

describe('what everybody may ask', () => {
  test('hello says the protocol and the server, and health that the database answers', async () => {
    const greeted = hello.parse(await (await house.app.request('/api/hello')).json());
    expect(greeted).toMatchObject({
      protocol: protocolVersion,
      oldestServed,
      invented: false,
      server: house.office.key,
    });
    const well = await house.app.request('/api/health');
    expect(well.status).toBe(200);
    expect(health.parse(await well.json())).toMatchObject({ well: true, staleStates: 0 });
  });

  test('everything else below /api asks who you are', async () => {
    const paths = ['me', 'people', 'greeting', 'live', 'districts', 'apiaries', 'visits', `visits/${ids.visit}`];
    for (const path of [...paths, `photographs/${'a'.repeat(64)}`, 'uploads', 'nothing-here']) {
      const answer = await house.app.request(`/api/${path}`);
      expect([path, answer.status]).toEqual([path, 401]);
      expect(await answer.json()).toMatchObject({ code: 'not-signed-in' });
    }
    for (const path of ['push', 'pull', 'checkpoint', 'photographs/held']) {
      expect((await house.app.request(`/api/${path}`, { method: 'POST', body: '{}' })).status).toBe(401);
    }
  });
});

describe('the office sees a visit as it arrived', () => {
  test('in the list, with its results', async () => {
    const { visits: lines } = visits.parse(await (await office.get('/api/visits?district=north')).json());
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatchObject({
      visit: ids.visit,
      apiaryName: 'Hazel Bank',
      inspectorName: 'Nell',
      colonies: 2,
      results: [
        { result: 'not assessed', colonies: 1 },
        { result: 'suspect', colonies: 1 },
      ],
    });
  });

  test('as a page: site, keeper, colonies in order of their labels, examinations with their reasons', async () => {
    const page = visitPage.parse(await (await office.get(`/api/visits/${ids.visit}`)).json());
    expect(page.apiary).toMatchObject({ apiary: ids.apiary, keeperName: 'Aldith Ashlock' });
    expect(page.keeper?.keeper.current?.body.number).toBe('K-17');
    expect(page.colonies.map((colony) => colony.label)).toEqual(['9', '10']);
    expect(page.colonies[1]?.examinations[0]?.body.signs[0]?.sign).toBe('cap.sunken');
    expect(page.colonies[1]?.assessments[0]?.body.suspected).toEqual(['american-foulbrood']);
    expect(page.people.map((person) => person.name)).toEqual(['Nell']);
    expect(Date.parse(page.arrivedAt)).toBeGreaterThan(Date.parse('2026-01-01'));
    expect(page.position).toBeGreaterThan(8);
  });

  test('and as the pages of the apiary and of a colony', async () => {
    const apiary = apiaryPage.parse(await (await office.get(`/api/apiaries/${ids.apiary}`)).json());
    expect(apiary.colonies.map((colony) => [colony.label, colony.lastResult])).toEqual([
      ['9', null],
      ['10', 'suspect'],
    ]);
    expect(apiary.visits).toHaveLength(1);
    const colony = colonyPage.parse(await (await office.get(`/api/colonies/${ids.colonies[0]}`)).json());
    expect(colony.colony.examinations).toHaveLength(1);
    expect(colony.apiary?.name).toBe('Hazel Bank');
  });

  test('by search over name, keeper and number, by place, and page by page', async () => {
    const find = async (query: string) => apiaries.parse(await (await office.get(`/api/apiaries?${query}`)).json());
    for (const search of ['hazel', 'CHAPEL', 'ashlock', 'k-17']) {
      expect((await find(`search=${search}`)).apiaries, search).toHaveLength(1);
    }
    for (const search of ['nobody', '%25', '_', '%27%3B%20drop%20table%20combside.states%3B--', '%00']) {
      const found = await find(`search=${search}`);
      // A pattern sign is plain text; a bare U+0000 is no text at all, and finds everything.
      expect(found.apiaries, search).toHaveLength(search === '%00' ? 1 : 0);
    }
    expect((await find('box=2,55,3,56')).apiaries).toHaveLength(1);
    expect((await find('box=3,55,4,56')).apiaries).toHaveLength(0);
    expect((await find('box=170,55,3,56')).apiaries).toHaveLength(1);
    expect((await office.get('/api/apiaries?box=1,2,3')).status).toBe(400);
    expect((await office.get('/api/apiaries?after=nonsense')).status).toBe(400);
  });

  test('with districts, names and rights', async () => {
    expect(districts.parse(await (await office.get('/api/districts')).json())).toEqual({
      districts: [{ district: 'north', invented: false, apiaries: 1, colonies: 2, visits: 1 }],
    });
    expect(me.parse(await (await north.get('/api/me')).json())).toMatchObject({
      name: 'Nell',
      districts: ['north'],
      pack: 'quillmoor',
    });
    const namesFor = async (who: typeof north) =>
      people.parse(await (await who.get('/api/people')).json()).people.map((person) => person.name);
    expect(await namesFor(office)).toEqual(['Combside', 'Nell', 'Nora', 'Otto', 'Sander']);
    // Sander works in the south only: nobody in the north needs the name.
    expect(await namesFor(north)).toEqual(['Combside', 'Nell', 'Nora', 'Otto']);
    // Who worked here once is still named, by the visits; who only asks about elsewhere does not learn of them.
    const { person } = testPeople.north;
    await house.database.pool.query('delete from combside.grants where person = $1', [person]);
    const seenFrom = async (district: string) =>
      (await peopleFor(house.database, { ...testPeople.south, districts: [district] })).map(({ name }) => name);
    expect(await seenFrom('north')).toContain('Nell');
    expect(await seenFrom('south')).not.toContain('Nell');
    await house.database.pool.query('insert into combside.grants values ($1, $2, now())', [person, 'north']);
  });
});

describe('the record’s four questions', () => {
  test('what was pushed comes back in commit order, signed for, page by page', async () => {
    const greeted = greeting.parse(await (await north.get('/api/greeting')).json());
    expect(greeted.scopes).toEqual(['everyone', 'district/north']);
    const seen: string[] = [];
    let after = 0;
    for (;;) {
      const page = pullAnswer.parse(
        await (await north.post('/api/pull', { scope: 'district/north', after, limit: 3 })).json(),
      );
      for (const item of page.items) {
        expect(item.position).toBe(after + 1);
        after = item.position;
        seen.push(item.entry.envelope.kind);
      }
      if (!page.more) break;
    }
    expect(seen.sort()).toEqual(
      ['keeper', 'apiary', 'colony', 'colony', 'visit', 'examination', 'assessment', 'examination'].sort(),
    );
    const signed = await (await north.post('/api/checkpoint', { scope: 'district/north', position: after })).json();
    expect(signed).toMatchObject({ scope: 'district/north', position: after, office: house.office.key.device });
  });

  test('a phone that speaks an older or newer protocol is told so', async () => {
    const asked = async (said: string | undefined) => {
      const headers: Record<string, string> = { cookie: north.headers.cookie ?? '' };
      if (said !== undefined) headers['combside-protocol'] = said;
      const answer = await house.app.request('/api/greeting', { headers });
      return [answer.status, ((await answer.json()) as { code?: string }).code];
    };
    expect(await asked(String(oldestServed - 1))).toEqual([426, 'protocol-too-old']);
    expect(await asked(String(protocolVersion + 1))).toEqual([409, 'protocol-too-new']);
    expect(await asked(undefined)).toEqual([400, 'bad-request']);
    expect(await asked('one')).toEqual([400, 'bad-request']);
  });
});
