import { stateLimits } from '@combside/casework/laboratory/limits';
import { entriesOfOne } from '@combside/contract/entries-of-one';
import { laboratories } from '@combside/contract/laboratories';
import type { LaboratoryLimitsBody } from '@combside/record/kinds/laboratory-limits';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { newId, phoneOf, type TestHouse, testHouse, testPeople, type Visitor } from '../acceptance/test-house.ts';

let house: TestHouse;
let north: Visitor;
let south: Visitor;
beforeAll(async () => {
  house = await testHouse();
  north = await house.signIn(testPeople.north);
  south = await house.signIn(testPeople.south);
});
afterAll(() => house.tearDown());

const limits: LaboratoryLimitsBody = {
  laboratory: 'Invented laboratory',
  method: 'culture',
  material: 'brood-nest honey',
  unit: 'g',
  statedOn: '2026-01-10',
  source: 'letter of that day, invented',
  classes: [{ name: 'any', from: 0 }],
  countable: null,
};
const listed = async (visitor: Visitor) => {
  const answer = await visitor.get('/api/laboratories');
  expect(answer.status).toBe(200);
  return laboratories.parse(await answer.json());
};

test('what one district wrote of a laboratory is read, dated and signed, in every other', async () => {
  expect((await listed(south)).laboratories).toEqual([]);
  const phone = phoneOf(testPeople.north.person);
  const id = newId();
  const act = stateLimits({ limits, standing: [], newLaboratory: id });
  if (!act.ok) throw new Error(act.reason);
  const sealed = await phone.write(...act.proposals);
  expect((await north.push(sealed)).map((one) => one.outcome)).toEqual(sealed.map(() => 'received'));

  const there = await listed(south);
  expect(there.laboratories.map((one) => one.about.id)).toEqual([id]);
  expect(there.laboratories[0]?.limits[0]).toMatchObject({ body: limits, written: { by: testPeople.north.person } });
  expect(there.people).toContainEqual(
    expect.objectContaining({ person: testPeople.north.person, name: testPeople.north.name }),
  );
  const pulled = await south.post('/api/pull', { scope: 'everyone', after: 0, limit: 100 });
  expect(await pulled.text()).toContain(limits.source);

  // A desk of another district corrects it, once it has the entry.
  const one = await south.get(`/api/register/entries/laboratory/${id}`);
  const [known] = entriesOfOne.parse(await one.json()).items;
  const other = phoneOf(testPeople.south.person);
  const corrected = await other.write({
    kind: 'correction',
    version: 1,
    about: { type: 'laboratory', id },
    body: {
      corrects: known?.entry.envelope.id,
      reason: 'typed wrong',
      version: 1,
      body: { ...limits, source: 'letter of the day before, invented' },
    },
    replaces: [],
  });
  expect((await south.push(corrected)).map((one) => one.outcome)).toEqual(corrected.map(() => 'received'));
  const [now] = (await listed(north)).laboratories;
  expect(now?.limits[0]).toMatchObject({ original: limits, body: { source: 'letter of the day before, invented' } });
});

test('limits that are not whole, or about something else, are refused, and nothing of them is shown', async () => {
  const phone = phoneOf(testPeople.north.person);
  const before = await listed(north);
  const proposal = { kind: 'laboratory-limits', version: 1, replaces: [] };
  const sealed = await phone.write(
    { ...proposal, about: { type: 'laboratory', id: newId() }, body: { ...limits, classes: [] } },
    { ...proposal, about: { type: 'apiary', id: newId() }, body: limits },
  );
  expect((await north.push(sealed)).map((one) => one.outcome)).toEqual(['received', 'refused', 'refused']);
  expect(await listed(south)).toEqual(before);
});

test('nobody reads them without signing in', async () => {
  expect((await house.app.request('/api/laboratories')).status).toBe(401);
});
