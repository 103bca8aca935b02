import { type EntriesOfOne, entriesOfOne } from '@combside/contract/entries-of-one';
import { type KeeperPage, keeperPage } from '@combside/contract/keeper-page';
import type { Keepers } from '@combside/contract/keepers';
import { type RegisterRows, registerRows } from '@combside/contract/register-rows';
import type { RegisterHits } from '@combside/contract/register-search';
import type { Unsettled } from '@combside/contract/unsettled';
import { merge } from '@combside/record/kinds/merge';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { newId, phoneOf, type TestHouse, testHouse, testPeople, type Visitor } from '../acceptance/test-house.ts';
import { apiaryProposal, keeperProposal } from '../acceptance/test-proposals.ts';

let house: TestHouse;
let office: Visitor;
let north: Visitor;
const ids = { ann: newId(), anna: newId(), mill: newId(), ford: newId(), south: newId(), southern: newId() };

async function answered<T>(who: Visitor, path: string): Promise<T> {
  const answer = await who.get(path);
  expect([path, answer.status]).toEqual([path, 200]);
  return (await answer.json()) as T;
}

beforeAll(async () => {
  house = await testHouse();
  [office, north] = await Promise.all([house.signIn(testPeople.office), house.signIn(testPeople.north)]);
  const phone = phoneOf(testPeople.office.person);
  const ann = keeperProposal(ids.ann, 'Ann Bell');
  const anna = keeperProposal(ids.anna, 'Anna Bell');
  const southern = keeperProposal(ids.southern, 'Southern Keeper');
  const first = await phone.write(
    { ...ann, body: { ...ann.body, addressWords: '', number: 'QM-12', telephone: '030 / 123 45 67' } },
    { ...anna, body: { ...anna.body, addressWords: '' } },
    { ...southern, body: { ...southern.body, addressWords: '' } },
    apiaryProposal(ids.mill, 'north', { name: 'Mill_100%', keeper: ids.ann, number: 'S-7' }),
    apiaryProposal(ids.ford, 'north', { name: 'Ford', keeper: ids.anna, addressWords: 'beyond the mill' }),
    apiaryProposal(ids.south, 'south', { name: 'Southern Mill', keeper: ids.southern }),
  );
  const ford = first.find(({ envelope }) => envelope.about.id === ids.ford)?.envelope.id ?? '';
  const second = await phone.write(
    apiaryProposal(ids.ford, 'north', { name: 'Ford one', keeper: ids.anna }, [ford]),
    apiaryProposal(ids.ford, 'north', { name: 'Ford two', keeper: ids.anna }, [ford]),
  );
  for (const entries of [first, second]) {
    expect((await office.push(entries)).filter(({ outcome }) => outcome !== 'received')).toEqual([]);
  }
});
afterAll(() => house.tearDown());

describe('search', () => {
  const found = async (who: Visitor, text: string) =>
    (await answered<RegisterHits>(who, `/api/register/search?text=${encodeURIComponent(text)}`)).hits.map(
      ({ name }) => name,
    );

  test.each([
    ['a part of a name', 'ell', ['Ann Bell', 'Anna Bell']],
    ['words in any order', 'bell anna', ['Anna Bell']],
    ['a number', 's-7', ['Mill_100%']],
    ['a telephone number, however it is written', '0301234567', ['Ann Bell']],
    ['signs that SQL would take for a pattern', '_100%', ['Mill_100%']],
    ['a quotation mark', "'; drop table", []],
    ['two letters, at the beginning', 'an', ['Ann Bell', 'Anna Bell']],
    ['nothing', ' ', []],
  ])('by %s', async (_, text, names) => {
    expect((await found(office, text)).sort()).toEqual(names);
  });

  test('a name that begins with the words comes first', async () => {
    expect(await found(office, 'mill')).toEqual(['Mill_100%', 'Southern Mill']);
  });

  test('shows nothing of a district that is not granted', async () => {
    expect(await found(north, 'southern')).toEqual([]);
    expect(await found(north, 'mill')).toEqual(['Mill_100%']);
    expect((await north.get('/api/register/search?text=mill&district=south')).status).toBe(403);
  });
});

describe('the register as rows', () => {
  test('page by page, everything once, with the entries that stand there', async () => {
    const seen: string[] = [];
    for (let after = ''; ; ) {
      const page: RegisterRows = await answered(office, `/api/register/rows?type=apiary&limit=1${after}`);
      registerRows.parse(page);
      seen.push(...page.rows.map(({ id }) => id));
      if (!page.next) break;
      after = `&after=${encodeURIComponent(page.next)}`;
    }
    expect(seen).toEqual([ids.mill, ids.ford, ids.south].sort());
    const all: RegisterRows = await answered(office, '/api/register/rows?type=apiary');
    expect(all.rows.find(({ id }) => id === ids.ford)?.standing).toHaveLength(2);
  });

  test('keepers of the districts granted only', async () => {
    const rows: RegisterRows = await answered(north, '/api/register/rows?type=keeper');
    expect(rows.rows.map(({ id }) => id).sort()).toEqual([ids.ann, ids.anna].sort());
  });
});

test('what is contested waits to be settled', async () => {
  const waiting: Unsettled = await answered(north, '/api/register/unsettled');
  expect(waiting.lines).toMatchObject([{ type: 'apiary', id: ids.ford, contested: true, proposals: 0 }]);
  const south: Unsettled = await answered(office, '/api/register/unsettled?district=south');
  expect(south.lines).toEqual([]);
});

test('the page of a keeper holds the apiaries; who has none of the districts does not see it', async () => {
  const page: KeeperPage = await answered(north, `/api/keepers/${ids.ann}`);
  expect(keeperPage.parse(page).apiaries.map(({ name }) => name)).toEqual(['Mill_100%']);
  expect((await north.get(`/api/keepers/${ids.southern}`)).status).toBe(404);
  expect((await north.get('/api/keepers/nobody')).status).toBe(404);
});

test('entries of one thing are given to whoever may read it', async () => {
  const given: EntriesOfOne = await answered(north, `/api/register/entries/apiary/${ids.ford}`);
  expect(entriesOfOne.parse(given).items).toHaveLength(3);
  expect((await north.get(`/api/register/entries/apiary/${ids.south}`)).status).toBe(404);
});

test('a record that is read as part of another leaves the lists, and is named on the other’s page', async () => {
  const [kept, other] = [ids.ann, ids.anna].sort() as [string, string];
  const body = { other: kept, verdict: 'same', reason: 'one person' };
  const entries = await phoneOf(testPeople.office.person).write({
    ...{ kind: merge.kind, version: merge.version, about: { type: 'keeper', id: other } },
    ...{ body, replaces: [] },
  });
  await office.push(entries);
  const list: Keepers = await answered(office, '/api/keepers');
  expect(list.keepers.map(({ keeper }) => keeper)).not.toContain(other);
  const page: KeeperPage = await answered(office, `/api/keepers/${kept}`);
  expect(page.mergedHere.map(({ id }) => id)).toEqual([other]);
  expect((await office.get(`/api/keepers/${other}`)).status).toBe(200);
});
