import { largestMessage } from '@combside/contract/push';
import { seal } from '@combside/record/chain';
import type { Entry } from '@combside/record/entry';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  newId,
  type Phone,
  phoneOf,
  type TestHouse,
  testHouse,
  testPeople,
  type Visitor,
} from '../acceptance/test-house.ts';
import {
  apiaryProposal,
  assessmentProposal,
  colonyProposal,
  correctionProposal,
  examinationProposal,
  keeperProposal,
  noteProposal,
  visitProposal,
} from '../acceptance/test-proposals.ts';
import { newSigner } from '../store/keys.ts';
import { chance, hasher } from '../store/node-ports.ts';

let house: TestHouse;
let north: Visitor;
let south: Visitor;
let office: Visitor;
const nell = testPeople.north.person;
const sander = testPeople.south.person;

beforeAll(async () => {
  house = await testHouse();
  north = await house.signIn(testPeople.north);
  south = await house.signIn(testPeople.south);
  office = await house.signIn(testPeople.office);
});
afterAll(() => house.tearDown());

const outcomes = (results: readonly { outcome: string; reason?: string }[]): string[] =>
  results.map((result) => (result.reason === undefined ? result.outcome : `${result.outcome}: ${result.reason}`));

/** The entry with something of it changed and nothing signed again. */
const tampered = (entry: Entry, change: Partial<Entry['envelope']>, body = entry.body): Entry => ({
  envelope: { ...entry.envelope, ...change },
  salt: entry.salt,
  body,
});

describe('pushing what is not one’s own', () => {
  test('entries of somebody else’s device are not taken, and leave no trace', async () => {
    const entries = await phoneOf(nell).write(apiaryProposal(newId(), 'north'));
    expect(outcomes(await south.push(entries))).toEqual(['broken: not your device', 'gap']);
    expect(outcomes(await north.push(entries))).toEqual(['received', 'received']);
  });

  test('an entry that names another author is refused by its own chain', async () => {
    const phone = phoneOf(nell);
    const [beginning] = await phone.write();
    const head = phone.head();
    const forged = await seal(
      { hasher, signer: phone.signer, chance, clock: { now: () => Date.now() } },
      { device: phone.device, by: sander, head, clock: null },
      [apiaryProposal(newId(), 'north')],
    );
    const sent = [beginning, forged.kept[0]?.entry];
    expect(outcomes(await north.push(sent))).toEqual(['received', 'refused: wrong author']);
    // The envelope is kept, so the chain goes on; the body is not.
    const row = await house.database.pool.query('select refused, body from combside.entries where hash = $1', [
      forged.kept[0]?.hash,
    ]);
    expect(row.rows).toEqual([{ refused: 'wrong author', body: null }]);
  });

  test('a signature by another key, a changed body and a changed envelope do not pass', async () => {
    const phone = phoneOf(nell);
    const [beginning, entry] = (await phone.write(noteProposal('apiary', newId(), 'as written'))) as [Entry, Entry];
    const other = await seal(
      { hasher, signer: newSigner(), chance, clock: { now: () => Date.now() } },
      {
        device: phone.device,
        by: nell,
        head: { device: phone.device, seq: 1, hash: entry.envelope.prev ?? '' },
        clock: null,
      },
      [noteProposal('apiary', newId(), 'forged')],
    );
    expect(outcomes(await north.push([beginning, other.kept[0]?.entry]))).toEqual([
      'received',
      'broken: wrong signature',
    ]);
    expect(outcomes(await north.push([tampered(entry, { kind: 'keeper' })]))).toEqual(['broken: wrong signature']);
    expect(outcomes(await north.push([tampered(entry, {}, { text: 'changed on the way' })]))).toEqual([
      'broken: wrong body hash',
    ]);
    // Damaged on the way, for all the office knows: the true one still goes through.
    expect(outcomes(await north.push([entry]))).toEqual(['received']);
  });

  test('an inspector writes in no district that is not granted, and moves nothing into one', async () => {
    const apiary = newId();
    const colony = newId();
    const site = (await phoneOf(sander).write(
      apiaryProposal(apiary, 'south'),
      colonyProposal(colony, apiary, '1'),
    )) as Entry[];
    expect(outcomes(await south.push(site))).toEqual(['received', 'received', 'received']);

    const strange = await phoneOf(nell).write(
      apiaryProposal(newId(), 'south'),
      apiaryProposal(apiary, 'north', {}, [site[1]?.envelope.id ?? '']),
      examinationProposal(colony, newId(), apiary),
      noteProposal('colony', colony, 'nothing to do with me'),
      apiaryProposal(newId(), 'north'),
    );
    expect(outcomes(await north.push(strange))).toEqual([
      'received',
      'refused: not your district',
      'refused: not your district',
      'refused: not your district',
      'refused: not your district',
      'received',
    ]);
    const page = (await (await office.get(`/api/apiaries/${apiary}`)).json()) as {
      apiary: { apiary: { current: { body: { district: string } } } };
    };
    expect(page.apiary.apiary.current.body.district).toBe('south');
  });

  test('an inspector writes no visit of another, and nothing that only the office says', async () => {
    const apiary = newId();
    const phone = phoneOf(nell);
    const entries = await phone.write(
      apiaryProposal(apiary, 'north'),
      visitProposal(newId(), apiary, sander),
      {
        kind: 'countersignature',
        version: 1,
        about: { type: 'device', id: phone.device },
        body: { entry: newId(), envelopeHash: 'a'.repeat(64) },
        replaces: [],
      },
      noteProposal('device', newId(), 'about the device of another'),
    );
    expect(outcomes(await north.push(entries))).toEqual([
      'received',
      'received',
      'refused: visit of another inspector',
      'refused: not yours to write',
      'refused: not yours to write',
    ]);
  });
});

describe('naming what is not one’s own', () => {
  test('a keeper of another district is neither read nor written by naming him in an apiary of one’s own', async () => {
    const keeper = newId();
    const theirs = await phoneOf(sander).write(
      apiaryProposal(newId(), 'south', { keeper }),
      keeperProposal(keeper, 'Invented Southerner'),
    );
    expect(outcomes(await south.push(theirs))).toEqual(['received', 'received', 'received']);
    const planted = await phoneOf(nell).write(
      apiaryProposal(newId(), 'north', { keeper }),
      keeperProposal(keeper, 'Overwritten'),
    );
    expect(outcomes(await north.push(planted))).toEqual([
      'received',
      'refused: not your district',
      'refused: not your district',
    ]);
    expect(JSON.stringify(await pullAll(north, 'district/north'))).not.toContain('Invented Southerner');
  });

  test('nor by a correction that names him', async () => {
    const [keeper, apiary] = [newId(), newId()];
    await south.push(await phoneOf(sander).write(apiaryProposal(newId(), 'south', { keeper })));
    const site = apiaryProposal(apiary, 'north');
    const phone = phoneOf(nell);
    const [beginning, own] = (await phone.write(site)) as [Entry, Entry];
    const { version, body } = apiaryProposal(apiary, 'north', { keeper });
    const corrected = correctionProposal(site, own.envelope.id, version, body);
    expect(outcomes(await north.push([beginning, own, ...(await phone.write(corrected))]))).toEqual([
      'received',
      'received',
      'refused: not your district',
    ]);
  });

  test('findings name no visit and no apiary of another district; visit, apiary and colony agree', async () => {
    const [apiary, visit, colony] = [newId(), newId(), newId()];
    await south.push(
      await phoneOf(sander).write(
        apiaryProposal(apiary, 'south'),
        visitProposal(visit, apiary, sander),
        colonyProposal(colony, apiary, '1'),
      ),
    );
    const own = { apiary: newId(), other: newId(), visit: newId(), colony: newId() };
    const phone = phoneOf(nell);
    const entries = await phone.write(
      apiaryProposal(own.apiary, 'north'),
      apiaryProposal(own.other, 'north'),
      colonyProposal(own.colony, own.apiary, '1'),
      visitProposal(own.visit, own.apiary, nell),
      examinationProposal(own.colony, visit, own.apiary),
      examinationProposal(own.colony, own.visit, apiary),
      examinationProposal(own.colony, own.visit, own.other),
      assessmentProposal(own.colony, visit, newId()),
      examinationProposal(own.colony, own.visit, own.apiary),
    );
    expect(outcomes(await north.push(entries))).toEqual([
      ...Array<string>(5).fill('received'),
      'refused: not your district',
      'refused: not your district',
      'refused: places disagree',
      'refused: not your district',
      'received',
    ]);
  });

  test('nobody corrects or takes over what a colleague of the same district found', async () => {
    const [apiary, visit, colony] = [newId(), newId(), newId()];
    const site = [apiaryProposal(apiary, 'north'), colonyProposal(colony, apiary, '1')];
    const visited = visitProposal(visit, apiary, nell);
    const examined = examinationProposal(colony, visit, apiary);
    const phone = phoneOf(nell);
    const entries = await phone.write(...site, visited, examined);
    const sealed = entries.at(-1)?.envelope.id ?? '';
    const [assessed] = await phone.write(assessmentProposal(colony, visit, sealed));
    await north.push([...entries, assessed]);

    const correct = (by: Phone) =>
      by.write(
        correctionProposal(visited, entries.at(-2)?.envelope.id ?? '', 1, visitProposal(visit, apiary, by.person).body),
        correctionProposal(examined, sealed, examined.version, examined.body),
        correctionProposal(examined, assessed?.envelope.id ?? '', 3, assessmentProposal(colony, visit, sealed).body),
        assessmentProposal(colony, visit, sealed),
      );
    const refused = 'refused: visit of another inspector';
    // The office may plan the visits of others; what they found is theirs.
    const desk = phoneOf(testPeople.office.person);
    const atDesk = [...(await desk.write()), ...(await correct(desk))];
    expect(outcomes(await office.push(atDesk))).toEqual(['received', refused, refused, refused, refused]);

    const colleague = await house.signIn(testPeople.colleague);
    const other = phoneOf(testPeople.colleague.person);
    const taken = [
      ...(await other.write(visitProposal(visit, apiary, testPeople.colleague.person))),
      ...(await correct(other)),
    ];
    expect(outcomes(await colleague.push(taken))).toEqual(['received', refused, refused, refused, refused, refused]);
    const own = await correct(phone);
    expect(outcomes(await north.push(own))).toEqual(['received', 'received', 'received', 'received']);
  });
});

test('what goes to everybody is of a closed list of kinds, and whoever was granted nothing writes nothing', async () => {
  const phone = phoneOf(nell);
  const laboratory = newId();
  const noise = await phone.write(
    noteProposal('laboratory', laboratory, 'noise for every phone'),
    noteProposal('device', phone.device, 'noise for every phone'),
    { kind: 'from-the-future', version: 1, about: { type: 'laboratory', id: laboratory }, body: {}, replaces: [] },
  );
  const refused = 'refused: not yours to write';
  expect(outcomes(await north.push(noise))).toEqual(['received', refused, refused, refused]);

  const stranger = testPeople.colleague;
  const visitor = await house.signIn(stranger);
  await house.database.pool.query('delete from combside.grants where person = $1', [stranger.person]);
  const written = await phoneOf(stranger.person).write(noteProposal('apiary', newId(), 'belongs nowhere yet'));
  expect(outcomes(await visitor.push(written))).toEqual(['received', 'refused: not your district']);
});

describe('pushing what is broken', () => {
  test('the same message twice is stored once', async () => {
    const entries = await phoneOf(nell).write(apiaryProposal(newId(), 'north'));
    const first = await north.push(entries);
    expect(await north.push(entries)).toEqual(first);
    expect(await north.push([...entries, ...entries])).toEqual([...first, ...first]);
    const { rows } = await house.database.pool.query(
      'select count(*)::int as count from combside.entries where device = $1',
      [entries[0]?.envelope.device],
    );
    expect(rows).toEqual([{ count: entries.length }]);
  });

  test('older after newer asks for what is missing; a fork is told', async () => {
    const phone = phoneOf(nell);
    const [one, two, three] = await phone.write(
      noteProposal('apiary', newId(), '2'),
      noteProposal('apiary', newId(), '3'),
    );
    expect(await north.push([three])).toMatchObject([{ outcome: 'gap', from: 1 }]);
    expect(outcomes(await north.push([one]))).toEqual(['received']);
    expect(await north.push([three])).toMatchObject([{ outcome: 'gap', from: 2 }]);
    expect(outcomes(await north.push([two, three]))).toEqual(['received', 'received']);
    const fork = await seal(
      { hasher, signer: phone.signer, chance, clock: { now: () => Date.now() } },
      {
        device: phone.device,
        by: nell,
        head: { device: phone.device, seq: 1, hash: two?.envelope.prev ?? '' },
        clock: null,
      },
      [noteProposal('apiary', newId(), 'the clone')],
    );
    expect(outcomes(await north.push([fork.kept[0]?.entry]))).toEqual(['clash']);
  });

  test('poison among good ones stops none of them, and what PostgreSQL cannot search comes back whole', async () => {
    const apiary = newId();
    const text = `'; drop table combside.entries; -- \u0000 "quotes" 🐝 \\u0000`;
    const entries = await phoneOf(nell).write(
      apiaryProposal(apiary, 'north', { name: text, addressWords: text }),
      noteProposal('apiary', apiary, text),
      {
        kind: 'from-the-future',
        version: 7,
        about: { type: 'apiary', id: apiary },
        body: { [text]: text },
        replaces: [],
      },
      { ...noteProposal('apiary', apiary, ''), body: { text: '' } },
      noteProposal('apiary', apiary, 'the last one'),
    );
    const results = await north.push(entries);
    expect(outcomes(results)).toEqual([
      'received',
      'received',
      'received',
      'received',
      'refused: wrong body',
      'received',
    ]);
    const page = (await (await office.get(`/api/apiaries/${apiary}`)).json()) as {
      apiary: { apiary: { current: { body: { name: string } } }; notes: unknown[]; unknown: { kind: string }[] };
    };
    expect(page.apiary.apiary.current.body.name).toBe(text);
    expect(page.apiary.notes).toHaveLength(2);
    expect(page.apiary.unknown.map((one) => one.kind)).toEqual(['from-the-future']);
    const pulled = await pullAll(north, 'district/north');
    const names = new Set(entries.map((entry) => entry.envelope.id));
    const back = pulled.filter((entry) => names.has(entry.envelope.id));
    expect(back).toEqual(entries.filter((entry) => entry.envelope.about.id === apiary && entry !== entries[4]));
    expect((await office.get(`/api/apiaries?search=${encodeURIComponent("'; drop")}`)).status).toBe(200);
  });

  test('a clock years ahead is kept and flagged by the server', async () => {
    const apiary = newId();
    const year = 365 * 86_400_000;
    const entries = await phoneOf(nell, 3 * year).write(apiaryProposal(apiary, 'north'));
    expect(outcomes(await north.push(entries))).toEqual(['received', 'received']);
    const page = (await (await office.get(`/api/apiaries/${apiary}`)).json()) as {
      apiary: { clockFlagged: { entry: string; aheadMilliseconds: number }[] };
    };
    expect(page.apiary.clockFlagged).toHaveLength(1);
    expect(page.apiary.clockFlagged[0]?.aheadMilliseconds).toBeGreaterThan(2.9 * year);
    // A later entry of the office itself is not dragged into the future.
    const { rows } = await house.database.pool.query('select reading from combside.office_clock');
    expect(Number((rows[0] as { reading: string }).reading.split('.')[0])).toBeLessThan(Date.now() + year);
  });

  test('what is no message is refused with where, never with what', async () => {
    const wrong = await north.post('/api/pull', { scope: 'everyone', after: 'hunter2', limit: 1 });
    expect(wrong.status).toBe(400);
    const said = await wrong.text();
    expect(said).toContain('after: ');
    expect(said).not.toContain('hunter2');
    const raw = (body: string) => house.app.request('/api/push', { method: 'POST', headers: north.headers, body });
    expect((await raw('{')).status).toBe(400);
    expect((await raw('[]')).status).toBe(400);
    expect((await raw('{"entries":[],"__proto__":{"role":"office"}}')).status).toBe(400);
    expect((await raw('{"entries":[],"more":1}')).status).toBe(400);
  });

  test('too much at once is refused before it is read', async () => {
    const answer = await house.app.request('/api/push', {
      method: 'POST',
      headers: north.headers,
      body: `{"entries":[],"x":"${'a'.repeat(largestMessage)}"}`,
    });
    expect([answer.status, ((await answer.json()) as { code: string }).code]).toEqual([413, 'too-large']);
    const many = await north.post('/api/push', { entries: Array.from({ length: 501 }, () => null) });
    expect(many.status).toBe(400);
  });
});

describe('reading what is not granted', () => {
  test('an office account cannot become somebody else, nor set a password or a name', async () => {
    for (const path of ['admin/impersonate-user', 'admin/set-user-password', 'admin/list-users', 'update-user']) {
      const tried = await house.app.request(`http://127.0.0.1/api/auth/${path}`, {
        method: 'POST',
        headers: {
          'content-type': 'application/json',
          cookie: office.headers.cookie ?? '',
          origin: 'http://127.0.0.1',
        },
        body: JSON.stringify({ userId: testPeople.north.person, newPassword: 'a long enough password', name: 'New' }),
      });
      expect([path, tried.status]).toEqual([path, 404]);
    }
  });

  test('another district’s scope, checkpoint, lists and pages stay shut', async () => {
    const apiary = newId();
    const visit = newId();
    const colony = newId();
    await south.push(
      await phoneOf(sander).write(
        apiaryProposal(apiary, 'south'),
        colonyProposal(colony, apiary, '1'),
        visitProposal(visit, apiary, sander),
        examinationProposal(colony, visit, apiary),
      ),
    );
    const code = async (answer: Response) => [answer.status, ((await answer.json()) as { code: string }).code];
    const scope = 'district/south';
    expect(await code(await north.post('/api/pull', { scope, after: 0, limit: 10 }))).toEqual([403, 'not-granted']);
    expect(await code(await north.post('/api/checkpoint', { scope, position: 1 }))).toEqual([403, 'not-granted']);
    for (const forged of ['district/south\u0000', 'district/*', "district/north' or '1'='1", 'DISTRICT/SOUTH', 'x']) {
      expect((await north.post('/api/pull', { scope: forged, after: 0, limit: 10 })).status, forged).toBe(403);
    }
    expect(await code(await north.get('/api/apiaries?district=south'))).toEqual([403, 'not-granted']);
    expect(await code(await north.get('/api/visits?district=south'))).toEqual([403, 'not-granted']);
    for (const path of [`apiaries/${apiary}`, `visits/${visit}`, `colonies/${colony}`]) {
      expect(await code(await north.get(`/api/${path}`)), path).toEqual([404, 'not-found']);
      expect((await south.get(`/api/${path}`)).status, path).toBe(200);
    }
    const lists = await (await north.get(`/api/visits?apiary=${apiary}`)).json();
    expect(lists).toEqual({ visits: [], next: null });
    const mine = (await (await north.get('/api/districts')).json()) as { districts: { district: string }[] };
    expect(mine.districts.map((one) => one.district)).toEqual(['north']);
  });

  test('identifiers that are none do not reach the database', async () => {
    for (const path of ['visits/1', "visits/'%20or%201=1", 'colonies/..%2F..%2Fetc', `apiaries/${'0'.repeat(36)}`]) {
      expect((await office.get(`/api/${path}`)).status, path).toBe(404);
    }
  });
});

async function pullAll(visitor: Visitor, scope: string): Promise<Entry[]> {
  const found: Entry[] = [];
  for (let after = 0; ; ) {
    const page = (await (await visitor.post('/api/pull', { scope, after, limit: 500 })).json()) as {
      items: { position: number; entry: Entry }[];
      more: boolean;
    };
    found.push(...page.items.map((item) => item.entry));
    after = page.items.at(-1)?.position ?? after;
    if (!page.more) return found;
  }
}
