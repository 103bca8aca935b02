import { type ChildProcess, spawn } from 'node:child_process';
import { chmodSync, existsSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { demoAccounts, demoPassword } from './demo/plant.ts';
import { startServer } from './start.ts';
import { testClusters, testDatabase } from './store/acceptance/test-database.ts';

let folder = '';
const children: ChildProcess[] = [];
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'combside-start-'));
  // As root, PostgreSQL runs as another user, who must be able to pass.
  chmodSync(folder, 0o755);
});
afterEach(() => {
  for (const child of children.splice(0)) child.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
});

interface Running {
  readonly child: ChildProcess;
  readonly lines: string[];
  readonly address: string;
  readonly ended: Promise<number | null>;
}

/** Runs the entry file as `npm start` does, until it says that it is open. */
async function run(...args: string[]): Promise<Running> {
  const entry = join(import.meta.dirname, 'start.ts');
  const child = spawn(process.execPath, ['--import', 'tsx', entry, '--data', join(folder, 'data'), ...args], {
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, LANG: 'C', LC_ALL: 'C' },
  });
  children.push(child);
  const lines: string[] = [];
  const ended = new Promise<number | null>((done) => child.once('exit', (code) => done(code)));
  const address = await new Promise<string>((done, fail) => {
    let text = '';
    const hear = (chunk: Buffer): void => {
      text += chunk.toString();
      lines.splice(0, lines.length, ...text.split('\n'));
      const found = /is open at (\S+)/.exec(text)?.[1];
      if (found) done(found);
    };
    child.stdout?.on('data', hear);
    child.stderr?.on('data', hear);
    child.once('exit', (code) => fail(new Error(`ended with ${code}:\n${text}`)));
  });
  return { child, lines, address, ended };
}

interface Greeted {
  readonly server: { readonly publicKey: string };
  readonly now: string;
}
const hello = async (address: string): Promise<Greeted> =>
  (await (await fetch(`${address}/api/hello`)).json()) as Greeted;

describe('the server from its entry file', () => {
  test('takes the next port when one is taken, says so, stops when asked, and is the same server again', async () => {
    const taken = createServer();
    const port = await new Promise<number>((done) =>
      taken.listen(0, '127.0.0.1', () => done((taken.address() as { port: number }).port)),
    );
    const first = await run('--port', String(port));
    taken.close();
    expect(first.address).not.toContain(`:${port}`);
    expect(first.lines.join('\n')).toContain(`Port ${port} is taken by another program`);
    const before = await hello(first.address);
    const socket = join(folder, 'data/socket');
    expect(existsSync(socket)).toBe(true);
    for (const name of ['keys', 'postgres']) {
      expect(statSync(join(folder, 'data', name)).mode & 0o077, name).toBe(0);
    }
    first.child.kill('SIGTERM');
    expect(await first.ended).toBe(0);
    expect(existsSync(join(folder, 'data/postgres/postmaster.pid'))).toBe(false);

    const second = await run('--port', '0');
    expect((await hello(second.address)).server).toEqual(before.server);
    // Killed without a word: the next one finds the database running and goes on.
    second.child.kill('SIGKILL');
    await second.ended;
    const third = await run('--port', '0');
    expect((await hello(third.address)).server).toEqual(before.server);
    third.child.kill('SIGINT');
    expect(await third.ended).toBe(0);
  }, 120_000);

  test('says what is wrong with an option, and leaves with 2', async () => {
    await expect(run('--port', 'many')).rejects.toThrow(/ended with 2:[\s\S]*--port[\s\S]*Usage/);
    await expect(run('--nonsense')).rejects.toThrow(/ended with 2:[\s\S]*There is no option --nonsense/);
  });

  test('believes in a rehearsal that it is the instant given, and goes on from there', async () => {
    const began = '2028-02-29T08:59:59.000Z';
    const server = await run('--port', '0', '--clock', began);
    expect(server.lines.join('\n')).toContain('For a rehearsal: this server believes that it is 2028-02-29T09:');
    const [before, after] = [(await hello(server.address)).now, (await hello(server.address)).now];
    expect(before > began).toBe(true);
    expect(after >= before).toBe(true);
    expect(after.slice(0, 10)).toBe('2028-02-29');
    server.child.kill('SIGTERM');
    expect(await server.ended).toBe(0);
  }, 120_000);
});

describe('the server in this process', () => {
  test('plants the demo once, also when that was broken off; its people sign in and see their district', async () => {
    const server = await startServer({ data: join(folder, 'data'), port: 0 });
    try {
      const [first] = demoAccounts;
      if (!first) throw new Error('the demo has no people');
      await server.accounts.addPerson({ ...first, password: demoPassword }, new Date());
      let begun = 0;
      const entries = await server.plantDemo(() => {
        begun += 1;
      });
      expect(entries).toBeGreaterThan(1000);
      const [closed] = demoAccounts;
      await server.database.pool.query('update combside.people set active = false where person = $1', [closed?.person]);
      expect(await server.plantDemo()).toBe(0);
      expect(begun).toBe(1);
      const woken = 'update combside.people set active = true where not active returning person';
      expect((await server.database.pool.query(woken)).rows).toEqual([{ person: closed?.person }]);
      expect((await (await fetch(`${server.address}/api/hello`)).json()) as object).toMatchObject({ invented: true });
      for (const { email, name } of demoAccounts) {
        const signedIn = await fetch(`${server.address}/api/auth/sign-in/email`, {
          method: 'POST',
          headers: { 'content-type': 'application/json' },
          body: JSON.stringify({ email, password: demoPassword }),
        });
        const cookie = signedIn.headers.getSetCookie()[0]?.split(';')[0] ?? '';
        const own = await (await fetch(`${server.address}/api/me`, { headers: { cookie } })).json();
        expect(own).toMatchObject({ name, email, districts: ['quillmoor'] });
        const found = (await (await fetch(`${server.address}/api/districts`, { headers: { cookie } })).json()) as {
          districts: { apiaries: number; colonies: number; visits: number }[];
        };
        expect(found.districts).toMatchObject([{ invented: true, apiaries: 60, colonies: 400 }]);
        expect(found.districts[0]?.visits).toBeGreaterThan(50);
      }
    } finally {
      await server.stop();
    }
  }, 180_000);

  test('plants nothing into a record in which people write, and gives nobody an account there', async () => {
    const server = await startServer({ data: join(folder, 'own'), port: 0 });
    try {
      const own = { person: '01900000-0000-7000-8000-000000000001', name: 'Nell', email: 'nell@office.example' };
      const role = { role: 'inspector', districts: ['north'] } as const;
      await server.accounts.addPerson({ ...own, ...role, password: 'a long enough password' }, new Date());
      expect(await server.plantDemo()).toBeNull();
      const { rows } = await server.database.pool.query('select name from combside.people order by name');
      expect(rows).toEqual([{ name: 'Combside' }, { name: 'Nell' }]);
      expect((await server.database.pool.query('select district from combside.districts')).rows).toEqual([]);
    } finally {
      await server.stop();
    }
  }, 60_000);

  test('states of an older fold are never shown, and are folded again in the background', async () => {
    const server = await startServer({ data: join(folder, 'data'), port: 0 });
    try {
      const about = { type: 'apiary', id: server.office.newId() } as const;
      await server.office.write(
        [{ kind: 'note', version: 1, about, body: { text: 'kept' }, replaces: [] }],
        '01900000-0000-7000-8000-000000000001',
      );
      await server.database.pool.query(
        `update combside.states set fold_version = 1,
           state = jsonb_set(jsonb_set(state::jsonb, '{notes}', '[]'), '{foldVersion}', '1')::json`,
      );
      const stale = async () =>
        ((await (await fetch(`${server.address}/api/health`)).json()) as { staleStates: number }).staleStates;
      expect(await stale()).toBeGreaterThan(0);
      expect((await server.office.state(about))?.notes).toHaveLength(1);
      while ((await server.office.refold(100)) > 0);
      expect(await stale()).toBe(0);
    } finally {
      await server.stop();
    }
  });

  const debian = testClusters().find((cluster) => cluster.name.startsWith('debian'));
  test.skipIf(debian?.skipped !== null)(
    'keeps the record in an agency’s own PostgreSQL when one is given',
    async () => {
      const database = await testDatabase(debian);
      const { cluster, name } = database.address;
      const url = `postgresql://${cluster.user}@/${name}?host=${encodeURIComponent(cluster.socketFolder)}`;
      const server = await startServer({ data: join(folder, 'data'), port: 0, databaseUrl: url });
      try {
        expect(existsSync(join(folder, 'data/postgres'))).toBe(false);
        const { rows } = await database.pool.query('select count(*)::int as count from combside.entries');
        expect(rows).toEqual([{ count: 1 }]);
      } finally {
        await server.stop();
      }
      // Without the key in its data folder another server does not speak in its name.
      await expect(startServer({ data: join(folder, 'other'), port: 0, databaseUrl: url })).rejects.toMatchObject({
        code: 'key-missing',
      });
      await database.drop();
    },
  );
});

test('the entry file is what npm start runs', () => {
  const script = readFileSync(join(import.meta.dirname, '../../../scripts/start-combside.mjs'), 'utf8');
  expect(script).toContain('packages/server/src/start.ts');
});
