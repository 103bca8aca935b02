import { coloniesFound } from '@combside/contract/colonies';
import { figureRecords, figures } from '@combside/contract/figures';
import { mapAnswer, mapExtent } from '@combside/contract/map';
import { owed } from '@combside/contract/owed';
import { planning } from '@combside/contract/planning';
import { visits } from '@combside/contract/visits';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { newId, phoneOf, type TestHouse, testHouse, testPeople, type Visitor } from '../acceptance/test-house.ts';
import {
  apiaryProposal,
  assessmentProposal,
  colonyProposal,
  examinationProposal,
  visitProposal,
} from '../acceptance/test-proposals.ts';

let house: TestHouse;
let north: Visitor;
let south: Visitor;
let office: Visitor;
const ids = {
  ill: newId(),
  near: newId(),
  unplaced: newId(),
  elsewhere: newId(),
  colonies: [newId(), newId()],
  visit: newId(),
  asked: newId(),
  planned: newId(),
  examination: newId(),
} as const;

beforeAll(async () => {
  house = await testHouse();
  north = await house.signIn(testPeople.north);
  south = await house.signIn(testPeople.south);
  office = await house.signIn(testPeople.office);
  const phone = phoneOf(testPeople.north.person);
  const [first = '', second = ''] = ids.colonies;
  const visit = visitProposal(ids.visit, ids.ill, testPeople.north.person);
  const entries = await phone.write(
    apiaryProposal(ids.ill, 'north'),
    // A hundredth of a degree of latitude north: 1.1 km.
    apiaryProposal(ids.near, 'north', {
      name: 'Near Lane',
      position: { latitude: 55.91, longitude: 2.9, uncertaintyMetres: 10, how: 'from a map' },
    }),
    apiaryProposal(ids.unplaced, 'north', { name: 'Nowhere Yet', position: null }),
    colonyProposal(first, ids.ill, '10'),
    colonyProposal(second, ids.ill, '9'),
    { ...visit, body: { ...visit.body, endedAt: '2026-05-04T11:00:00.000Z' } },
    { ...examinationProposal(first, ids.visit, ids.ill), id: ids.examination },
    assessmentProposal(first, ids.visit, ids.examination),
    examinationProposal(second, ids.visit, ids.ill),
    {
      ...visitProposal(ids.asked, ids.near, testPeople.north.person),
      body: { ...visit.body, apiary: ids.near, reason: 'request', startedAt: null, coloniesCounted: null },
    },
    {
      ...visitProposal(ids.planned, ids.near, testPeople.north.person),
      body: {
        ...visit.body,
        apiary: ids.near,
        startedAt: null,
        plannedFor: '2026-06-01T08:00:00.000Z',
        coloniesCounted: null,
      },
    },
  );
  expect((await north.push(entries)).map((one) => one.outcome)).toEqual(entries.map(() => 'received'));
  const southern = phoneOf(testPeople.south.person);
  const there = await southern.write(apiaryProposal(ids.elsewhere, 'south', { name: 'South Bank' }));
  expect((await south.push(there)).map((one) => one.outcome)).toEqual(there.map(() => 'received'));
});
afterAll(() => house.tearDown());

const ask = async (visitor: Visitor, path: string): Promise<unknown> => {
  const answer = await visitor.get(path);
  expect(answer.status, path).toBe(200);
  return answer.json();
};

describe('what is owed', () => {
  test('visits not ended, and duties that the suspicion started under the law of the place', async () => {
    const answer = owed.parse(await ask(north, '/api/owed'));
    expect(answer.visits.map((one) => one.visit).sort()).toEqual([ids.asked, ids.planned].sort());
    expect(answer.duties.length).toBeGreaterThan(0);
    expect(new Set(answer.duties.map((one) => one.apiary))).toEqual(new Set([ids.ill]));
    expect(answer.duties[0]).toMatchObject({ condition: 'american-foulbrood', apiaryName: 'Hazel Bank' });
  });

  test('of another district is not told', async () => {
    expect(owed.parse(await ask(south, '/api/owed'))).toMatchObject({ visits: [], duties: [] });
    expect((await south.get('/api/owed?district=north')).status).toBe(403);
  });
});

describe('colonies', () => {
  test('are found by their whole label, with or without words of the apiary, and only where granted', async () => {
    const search = async (visitor: Visitor, text: string) =>
      coloniesFound
        .parse(await ask(visitor, `/api/colonies?text=${encodeURIComponent(text)}`))
        .colonies.map((one) => one.label);
    expect(await search(north, '10')).toEqual(['10']);
    expect(await search(north, 'hazel 9')).toEqual(['9']);
    expect(await search(north, '9 bank')).toEqual(['9']);
    expect(await search(north, '1')).toEqual([]);
    expect(await search(north, 'elsewhere 9')).toEqual([]);
    expect(await search(south, '10')).toEqual([]);
  });
});

describe('visits', () => {
  const found = async (visitor: Visitor, query: string) =>
    visits.parse(await ask(visitor, `/api/visits?${query}`)).visits.map((one) => one.visit);

  test('are found by words of the apiary and of the inspector, in any order and mixed', async () => {
    const [inspector = ''] = testPeople.north.name.split(' ');
    expect(await found(north, 'text=hazel')).toEqual([ids.visit]);
    expect((await found(north, 'text=near')).sort()).toEqual([ids.asked, ids.planned].sort());
    expect(await found(north, `text=${encodeURIComponent(`${inspector} hazel`)}`)).toEqual([ids.visit]);
    expect((await found(north, `text=${inspector}`)).sort()).toEqual([ids.visit, ids.asked, ids.planned].sort());
    expect(await found(north, 'text=hazel%20nobody')).toEqual([]);
    expect(await found(north, 'text=%20')).toEqual([]);
  });

  test('are found by result and by day, and only where granted', async () => {
    const day = 'from=2026-05-04T00:00:00.000Z&to=2026-05-05T00:00:00.000Z';
    expect(await found(north, 'results=suspect%7Cremains%20suspect')).toEqual([ids.visit]);
    expect(await found(north, 'results=masked,%20no%20conclusion')).toEqual([]);
    expect(await found(north, `${day}&text=hazel&results=suspect`)).toEqual([ids.visit]);
    expect(await found(north, `${day}&text=near`)).toEqual([]);
    expect(await found(south, 'text=hazel')).toEqual([]);
    expect(await found(office, 'text=hazel')).toEqual([ids.visit]);
  });
});

describe('the map', () => {
  test('shows apiaries with the word of their gravest colony, and only those granted', async () => {
    const window = '/api/map?box=-10,50,10,60&zoom=6';
    const answer = mapAnswer.parse(await ask(north, window));
    expect(answer.points.map((one) => [one.apiary, one.mark]).sort()).toEqual(
      [
        [ids.ill, 'suspect'],
        [ids.near, null],
      ].sort(),
    );
    expect(mapAnswer.parse(await ask(office, window)).apiaries).toBe(3);
    expect(mapAnswer.parse(await ask(north, '/api/map?box=10,50,20,60&zoom=6')).points).toEqual([]);
    expect(mapExtent.parse(await ask(north, '/api/map/extent'))).toEqual({
      box: { west: 2.9, south: 55.9, east: 2.9, north: 55.91 },
      unplaced: 1,
    });
  });

  test('gathers many apiaries into heaps that lose none, each with its suspects', async () => {
    const phone = phoneOf(testPeople.north.person);
    const many = Array.from({ length: 700 }, (_, index) =>
      apiaryProposal(newId(), 'north', {
        name: `Row ${index}`,
        position: {
          latitude: 40 + (index % 30) / 10,
          longitude: -20 + Math.floor(index / 30) / 10,
          uncertaintyMetres: 10,
          how: 'imported',
        },
      }),
    );
    for (let start = 0; start < many.length; start += 400) {
      await north.push(await phone.write(...many.slice(start, start + 400)));
    }
    const answer = mapAnswer.parse(await ask(north, '/api/map?box=-180,-85,180,85&zoom=3'));
    expect(answer.points).toEqual([]);
    expect(answer.heaps.reduce((sum, heap) => sum + heap.apiaries, 0)).toBe(702);
    expect(answer.heaps.reduce((sum, heap) => sum + heap.suspect, 0)).toBe(1);
    expect(answer.heaps.length).toBeLessThan(60);
  });

  test('a window that is none is refused', async () => {
    expect((await north.get('/api/map?box=1,2,3&zoom=3')).status).toBe(400);
    expect((await north.get('/api/map?box=0,60,10,50&zoom=3')).status).toBe(400);
  });
});

describe('planning', () => {
  test('ranks by grounds that are named, with how many to open and what that can find', async () => {
    const answer = planning.parse(await ask(north, '/api/planning?limit=2'));
    expect(answer.ranked).toBe(703);
    const near = answer.apiaries.find((one) => one.apiary === ids.near);
    expect(near?.grounds.map((one) => one.ground)).toEqual(
      expect.arrayContaining(['case nearby', 'request', 'time since last visit', 'unconfirmed site']),
    );
    expect(near?.grounds.find((one) => one.ground === 'case nearby')).toMatchObject({
      from: ids.ill,
      fromName: 'Hazel Bank',
    });
    expect(near).toMatchObject({ colonies: 2, toOpen: 2, chance: 0.8, asked: [{ visit: ids.asked }] });
    expect(near?.planned).toMatchObject([{ visit: ids.planned, inspectorName: 'Nell' }]);
  });

  test('takes other weights, another rule, another sensitivity', async () => {
    const answer = planning.parse(
      await ask(north, '/api/planning?weights=0,0,0,0,0,0,9&rule=every%20colony&sensitivity=0.5&limit=1'),
    );
    expect(answer.apiaries[0]).toMatchObject({ points: 9, grounds: [{ ground: 'unconfirmed site' }] });
    expect((await north.get('/api/planning?weights=a,b')).status).toBe(400);
    expect((await north.get('/api/planning?sensitivity=2')).status).toBe(400);
  });

  test('a case in another district adds nothing', async () => {
    const answer = planning.parse(await ask(south, '/api/planning'));
    expect(answer.apiaries.map((one) => one.apiary)).toEqual([ids.elsewhere]);
    expect(answer.apiaries[0]?.grounds.map((one) => one.ground)).not.toContain('case nearby');
  });
});

describe('figures', () => {
  const period = 'from=2026-05-01&to=2026-05-31';

  test('count the period, and each number opens its records', async () => {
    const answer = figures.parse(await ask(north, `/api/figures?${period}`));
    const number = answer.figures.find((one) => one.id.join() === 'prevalence,american-foulbrood,full');
    expect(number).toMatchObject({ count: 1, of: 2 });
    const opened = figureRecords.parse(
      await ask(
        north,
        `/api/figures/records?${period}&figure=${encodeURIComponent('prevalence|american-foulbrood|full')}`,
      ),
    );
    expect(opened).toMatchObject({
      count: 1,
      records: [{ examination: ids.examination, colonyLabel: '10', apiaryName: 'Hazel Bank', reason: 'routine' }],
    });
    expect(await ask(north, `/api/figures/records?${period}&figure=nothing`)).toEqual({ records: [], count: 0 });
  });

  test('outside the period, or of another district, are empty', async () => {
    const later = figures.parse(await ask(north, '/api/figures?from=2026-06-01&to=2026-06-30'));
    expect(later.figures.find((one) => one.id[0] === 'inspected')?.count).toBe(0);
    const elsewhere = figures.parse(await ask(south, `/api/figures?${period}`));
    expect(elsewhere.figures.find((one) => one.id[0] === 'inspected')?.count).toBe(0);
  });
});
