import { type LiveEvent, liveEvent } from '@combside/contract/live';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { newId, phoneOf, type TestHouse, testHouse, testPeople, type Visitor } from '../acceptance/test-house.ts';
import { apiaryProposal, noteProposal } from '../acceptance/test-proposals.ts';

let house: TestHouse;
let north: Visitor;
let south: Visitor;
beforeAll(async () => {
  house = await testHouse();
  north = await house.signIn(testPeople.north);
  south = await house.signIn(testPeople.south);
});
afterAll(() => house.tearDown());

/** Reads events until `enough` says so. */
async function listen(
  ask: () => Promise<Response> | Response,
  enough: (events: readonly LiveEvent[]) => boolean,
  ready: () => Promise<void> = async () => undefined,
): Promise<LiveEvent[]> {
  const answer = await ask();
  expect(answer.headers.get('content-type')).toContain('text/event-stream');
  expect(answer.headers.get('content-encoding')).toBeNull();
  const reader = (answer.body as ReadableStream<Uint8Array>).getReader();
  const events: LiveEvent[] = [];
  let text = '';
  let opened = false;
  const decoder = new TextDecoder();
  while (!enough(events)) {
    const { value, done } = await reader.read();
    if (done) break;
    text += decoder.decode(value, { stream: true });
    const parts = text.split('\n\n');
    text = parts.pop() ?? '';
    for (const part of parts) {
      const field = (name: string) =>
        part
          .split('\n')
          .find((line) => line.startsWith(`${name}: `))
          ?.slice(name.length + 2) ?? '';
      if (field('event') === 'open' && !opened) {
        opened = true;
        await ready();
      }
      if (field('event') !== 'entry') continue;
      const event = liveEvent.parse(JSON.parse(field('data')));
      expect(field('id')).toBe(String(event.position));
      events.push(event);
    }
  }
  await reader.cancel();
  return events;
}

describe('live arrivals', () => {
  test('what is pushed while one listens arrives, in order, and only from scopes granted', async () => {
    const apiary = newId();
    const entries = await phoneOf(testPeople.north.person).write(
      apiaryProposal(apiary, 'north'),
      noteProposal('apiary', apiary, 'the last of this push'),
    );
    const last = entries.at(-1)?.envelope.id;
    const arrived = await listen(
      () => north.get('/api/live'),
      (events) => events.some((event) => event.entry === last),
      async () => {
        const other = newId();
        await south.push(await phoneOf(testPeople.south.person).write(apiaryProposal(other, 'south')));
        await north.push(entries);
      },
    );
    expect(arrived.every((event) => event.scope === 'everyone' || event.scope === 'district/north')).toBe(true);
    expect(arrived.filter((event) => event.scope === 'district/north').map((event) => event.kind)).toEqual([
      'apiary',
      'note',
    ]);
    const positions = arrived.map((event) => event.position);
    expect(positions).toEqual([...positions].sort((a, b) => a - b));
    expect(arrived.find((event) => event.kind === 'apiary')).toMatchObject({ apiary, by: testPeople.north.person });
  });

  test('a listener that was away misses nothing and hears nothing twice', async () => {
    const apiary = newId();
    const phone = phoneOf(testPeople.north.person);
    await north.push(await phone.write(apiaryProposal(apiary, 'north')));
    const { rows } = await house.database.pool.query<{ last: number }>(
      'select max(arrival) as last from combside.placements',
    );
    const before = rows[0]?.last ?? 0;
    const notes = await phone.write(noteProposal('apiary', apiary, '1'), noteProposal('apiary', apiary, '2'));
    await north.push(notes.slice(0, 1));
    await north.push(notes.slice(1));
    const headers = { ...north.headers, 'last-event-id': String(before) };
    const first = await listen(
      () => house.app.request('/api/live', { headers }),
      (events) => events.length === 2,
    );
    expect(first.map((event) => event.entry)).toEqual(notes.map((entry) => entry.envelope.id));
    const resumed = await listen(
      () => north.get(`/api/live?after=${first[0]?.position}`),
      (events) => events.length === 1,
    );
    expect(resumed.map((event) => event.entry)).toEqual([notes[1]?.envelope.id]);
  });

  test('what another process stores is heard here', async () => {
    const second = await house.another();
    const there = await second.signIn(testPeople.north);
    const apiary = newId();
    const entries = await phoneOf(testPeople.north.person).write(apiaryProposal(apiary, 'north'));
    const arrived = await listen(
      () => north.get('/api/live'),
      (events) => events.some((event) => event.apiary === apiary),
      async () => {
        await there.push(entries);
      },
    );
    expect(arrived.filter((event) => event.apiary === apiary)).toHaveLength(1);
  });

  test('a grant taken away ends what is heard', async () => {
    const apiary = newId();
    const phone = phoneOf(testPeople.south.person);
    await south.push(await phone.write(apiaryProposal(apiary, 'south')));
    const arrived = await listen(
      () => south.get('/api/live'),
      (events) => events.some((event) => event.scope === 'everyone'),
      async () => {
        await house.database.pool.query('delete from combside.grants where person = $1', [testPeople.south.person]);
        const office = await house.signIn(testPeople.office);
        await office.push(
          await phoneOf(testPeople.office.person).write(noteProposal('apiary', apiary, 'not for Sander any more')),
        );
      },
    );
    expect(arrived.filter((event) => event.scope === 'district/south')).toEqual([]);
  });
});
