import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { matchesScope } from '@combside/record/checkpoint';
import pg from 'pg';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type TestDatabase, testDatabase } from './acceptance/test-database.ts';
import { keysIn } from './keys.ts';
import { hasher, wallClock } from './node-ports.ts';
import { openOfficeStore } from './office-store/open-office-store.ts';
import { openServerOffice } from './open-server-office.ts';

const scope = 'district/north';
const pushes = 12;

let database: TestDatabase;
let keys = '';
const children: ChildProcess[] = [];
beforeEach(async () => {
  database = await testDatabase();
  keys = mkdtempSync(join(tmpdir(), 'combside-keys-'));
  // Slow transactions of uneven length: each placed entry sleeps up to 12 ms before its transaction can commit.
  await database.pool.query(`
    create function combside.dawdle() returns trigger language plpgsql as $$
      begin perform pg_sleep(random() * 0.012); return new; end $$;
    create trigger dawdle before insert on combside.placements for each row execute function combside.dawdle()`);
});
afterEach(async () => {
  for (const child of children.splice(0)) child.kill('SIGKILL');
  await database.drop();
  rmSync(keys, { recursive: true, force: true });
});

/** Starts a server process that writes; `received` are the entries it was told the office has. */
function startWriter(person: number): {
  readonly child: ChildProcess;
  readonly received: Set<string>;
  readonly ended: Promise<number | null>;
} {
  const { cluster, name } = database.address;
  const words = [
    cluster.socketFolder,
    cluster.user,
    name,
    keys,
    `01900000-0000-7000-8000-00000000000${person}`,
    String(pushes),
  ];
  const script = join(import.meta.dirname, '../acceptance/writing-process.ts');
  const child = spawn(process.execPath, ['--import', 'tsx', script, ...words], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  children.push(child);
  const received = new Set<string>();
  let rest = '';
  child.stdout?.on('data', (chunk: Buffer) => {
    const lines = (rest + chunk.toString()).split('\n');
    rest = lines.pop() ?? '';
    for (const line of lines) received.add(line);
  });
  return { child, received, ended: new Promise((done) => child.once('exit', (code) => done(code))) };
}

describe('several server processes over one record', () => {
  test('the danger is real: with a mere sequence a reader skips the slow writer', async () => {
    const { cluster, name } = database.address;
    const connect = async () => {
      const client = new pg.Client({ host: cluster.socketFolder, user: cluster.user, database: name });
      await client.connect();
      return client;
    };
    const [slow, quick] = [await connect(), await connect()];
    await slow.query('create table naive (position serial primary key, who text)');
    await slow.query('begin');
    await slow.query(`insert into naive (who) values ('slow')`);
    await quick.query(`insert into naive (who) values ('quick')`);
    const seen = (await quick.query('select position, who from naive where position > 0')).rows;
    await slow.query('commit');
    const later = (await quick.query('select who from naive where position > $1', [seen.at(-1).position])).rows;
    expect([seen, later]).toEqual([[{ position: 2, who: 'quick' }], []]);
    await Promise.all([slow.end(), quick.end()]);
  });

  test('two writing at once: a reader who follows its cursor misses nothing, and the digest agrees', async () => {
    const { office } = await openServerOffice(database, keysIn(keys), wallClock);
    const writers = [startWriter(1), startWriter(2)];
    let running = true;
    const ended = Promise.all(writers.map((writer) => writer.ended)).then((codes) => {
      running = false;
      return codes;
    });

    const positions: number[] = [];
    const seen: string[] = [];
    const links: string[] = [];
    let readings = 0;
    const store = openOfficeStore(database);
    for (let last = false; !last; ) {
      last = !running;
      for (const { placement, kept } of await store.placed(scope, positions.at(-1) ?? 0, 7)) {
        positions.push(placement.position);
        links.push(placement.hash);
        seen.push(kept.entry.envelope.id);
        last = false;
      }
      readings += 1;
      await pause(3);
    }
    expect(await ended).toEqual([0, 0]);

    const expected = 2 * 2 * pushes * 2;
    expect(positions).toEqual(Array.from({ length: expected }, (_, index) => index + 1));
    expect(new Set(seen).size).toBe(expected);
    for (const { received } of writers) {
      // The first entry of each chain names its device and stands in the scope of everyone.
      expect([...received].filter((id) => !seen.includes(id))).toHaveLength(2);
    }
    // The reader really read while they wrote, not once at the end.
    expect(readings).toBeGreaterThan(20);
    const signed = await office.checkpoint(scope, expected);
    expect(await matchesScope(hasher, signed, links)).toBe(true);
  });

  test('one killed in the middle of a transaction: the other goes on, nothing told as received is lost', async () => {
    const { office } = await openServerOffice(database, keysIn(keys), wallClock);
    const [doomed, other] = [startWriter(1), startWriter(2)];
    while (doomed.received.size < 10) await pause(5);
    doomed.child.kill('SIGKILL');
    expect(await other.ended).toBe(0);
    await doomed.ended;

    const store = openOfficeStore(database);
    const placed = [...(await store.placed(scope, 0, 10_000)), ...(await store.placed('everyone', 0, 10_000))];
    const stored = new Set(placed.map(({ kept }) => kept.entry.envelope.id));
    for (const { received } of [doomed, other]) expect([...received].filter((id) => !stored.has(id))).toEqual([]);
    const positions = (await store.placed(scope, 0, 10_000)).map(({ placement }) => placement.position);
    expect(positions).toEqual(positions.map((_, index) => index + 1));
    const links = (await store.placed(scope, 0, 10_000)).map(({ placement }) => placement.hash);
    expect(await matchesScope(hasher, await office.checkpoint(scope, links.length), links)).toBe(true);
  });
});
