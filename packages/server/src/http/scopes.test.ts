import { apiaryPage } from '@combside/contract/apiary-page';
import type { Entry } from '@combside/record/entry';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { newId, phoneOf, type TestHouse, testHouse, testPeople, type Visitor } from '../acceptance/test-house.ts';
import {
  apiaryProposal,
  colonyProposal,
  examinationProposal,
  keeperProposal,
  movementProposal,
  noteProposal,
  visitProposal,
} from '../acceptance/test-proposals.ts';

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

/** A copy of one district that follows its cursor. */
function copyOf(visitor: Visitor, scope: string) {
  const entries: Entry[] = [];
  let after = 0;
  return {
    entries,
    ids: () => new Set(entries.map((entry) => entry.envelope.id)),
    pull: async () => {
      for (;;) {
        const answer = await visitor.post('/api/pull', { scope, after, limit: 2 });
        const page = (await answer.json()) as { items: { position: number; entry: Entry }[]; more: boolean };
        for (const { position, entry } of page.items) {
          expect(position).toBe(after + 1);
          after = position;
          entries.push(entry);
        }
        if (!page.more) return;
      }
    },
  };
}

const idsOf = (entries: readonly Entry[]): string[] => entries.map((entry) => entry.envelope.id);

describe('what belongs to which district', () => {
  test('an apiary moved to another district brings all it ever had, behind the cursor of whoever read already', async () => {
    const [keeper, apiary, colony, visit] = [newId(), newId(), newId(), newId()];
    const phone = phoneOf(testPeople.north.person);
    const before = await phone.write(
      keeperProposal(keeper, 'Berta Lind'),
      apiaryProposal(apiary, 'north', { keeper }),
      colonyProposal(colony, apiary, '1'),
      visitProposal(visit, apiary, testPeople.north.person),
      examinationProposal(colony, visit, apiary),
    );
    await north.push(before);
    const copy = copyOf(south, 'district/south');
    await south.push(await phoneOf(testPeople.south.person).write(apiaryProposal(newId(), 'south')));
    await copy.pull();
    expect(copy.entries).toHaveLength(1);
    expect((await south.get(`/api/apiaries/${apiary}`)).status).toBe(404);

    const desk = phoneOf(testPeople.office.person);
    const moved = await desk.write(apiaryProposal(apiary, 'south', { keeper }, [before[2]?.envelope.id ?? '']));
    expect((await office.push(moved)).map((result) => result.outcome)).toEqual(['received', 'received']);
    await copy.pull();
    const brought = [...idsOf(before.slice(1)), moved[1]?.envelope.id ?? ''];
    expect(brought.filter((id) => !copy.ids().has(id))).toEqual([]);
    expect((await south.get(`/api/apiaries/${apiary}`)).status).toBe(200);

    // What is written afterwards goes where the apiary stands, and to where it stood.
    const later = await desk.write(noteProposal('colony', colony, 'arrived well'));
    await office.push(later);
    await copy.pull();
    expect(copy.ids().has(later[0]?.envelope.id ?? '')).toBe(true);
  });

  test('what is sent before its apiary is known is placed when the apiary comes', async () => {
    const [apiary, colony, visit] = [newId(), newId(), newId()];
    const phone = phoneOf(testPeople.north.person);
    const early = await phone.write(
      colonyProposal(colony, apiary, '1'),
      visitProposal(visit, apiary, testPeople.north.person),
      examinationProposal(colony, visit, apiary),
    );
    expect((await north.push(early)).map((result) => result.outcome)).toEqual(early.map(() => 'received'));
    const copy = copyOf(north, 'district/north');
    await copy.pull();
    expect(idsOf(early.slice(1)).filter((id) => copy.ids().has(id))).toEqual([]);
    // Its author sees the visit already, nobody else of a district does.
    expect((await north.get(`/api/visits/${visit}`)).status).toBe(200);
    expect((await south.get(`/api/visits/${visit}`)).status).toBe(404);

    const other = phoneOf(testPeople.office.person);
    const site = await other.write(apiaryProposal(apiary, 'north'));
    await office.push(site);
    await copy.pull();
    expect([...idsOf(early.slice(1)), ...idsOf(site.slice(1))].filter((id) => !copy.ids().has(id))).toEqual([]);
  });

  test('a movement across a border is written from either end, seen at both, and from nowhere else', async () => {
    const [here, there, away, movement, strange] = [newId(), newId(), newId(), newId(), newId()];
    const desk = phoneOf(testPeople.office.person);
    await office.push(
      await desk.write(
        apiaryProposal(here, 'north', { name: 'Hazel Bank' }),
        apiaryProposal(there, 'south', { name: 'Sallow End' }),
        apiaryProposal(away, 'east', { name: 'Far Edge' }),
      ),
    );
    const sent = await phoneOf(testPeople.north.person).write(
      movementProposal(movement, here, there),
      movementProposal(strange, there, away),
    );
    expect((await north.push(sent)).map((result) => result.outcome)).toEqual(['received', 'received', 'refused']);
    const page = async (visitor: Visitor, apiary: string) =>
      apiaryPage.parse(await (await visitor.get(`/api/apiaries/${apiary}`)).json());
    for (const [visitor, apiary] of [
      [north, here],
      [south, there],
    ] as const) {
      const shown = await page(visitor, apiary);
      expect(shown.movements.map((one) => one.about.id)).toEqual([movement]);
      // The name at the other end is told only to who may read there.
      expect(shown.otherEnds).toEqual([]);
    }
    expect((await page(office, here)).otherEnds).toEqual([{ apiary: there, name: 'Sallow End' }]);
    expect(await house.office.summaries('movement', { apiary: there })).toHaveLength(1);
    expect(await house.office.summaries('movement', { apiary: here })).toHaveLength(1);
  });

  test('an apiary read as part of another is named on its page', async () => {
    // The older record, by its identifier, is the one that stays.
    const [kept = '', merged = ''] = [newId(), newId()].sort();
    const desk = phoneOf(testPeople.office.person);
    await office.push(
      await desk.write(apiaryProposal(kept, 'north'), apiaryProposal(merged, 'north', { name: 'Hazel Bnak' }), {
        kind: 'merge',
        version: 1,
        about: { type: 'apiary', id: merged },
        body: { other: kept, verdict: 'same', reason: 'a slip of the pen' },
        replaces: [],
      }),
    );
    const page = apiaryPage.parse(await (await office.get(`/api/apiaries/${kept}`)).json());
    expect(page.mergedHere).toEqual([{ id: merged, name: 'Hazel Bnak' }]);
  });

  test('a district granted later is read from its start', async () => {
    const apiary = newId();
    const phone = phoneOf(testPeople.office.person);
    await office.push(await phone.write(apiaryProposal(apiary, 'west'), noteProposal('apiary', apiary, 'one')));
    expect((await north.post('/api/pull', { scope: 'district/west', after: 0, limit: 10 })).status).toBe(403);
    await house.database.pool.query(`insert into combside.grants values ($1, 'west', now())`, [
      testPeople.north.person,
    ]);
    const copy = copyOf(north, 'district/west');
    await copy.pull();
    expect(copy.entries.map((entry) => entry.envelope.kind)).toEqual(['apiary', 'note']);
  });
});
