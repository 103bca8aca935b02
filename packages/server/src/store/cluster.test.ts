import { execFileSync, spawn } from 'node:child_process';
import { chmodSync, existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { startCluster } from './cluster.ts';
import { openDatabase } from './database.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'combside-cluster-'));
  chmodSync(folder, 0o755);
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const postmasterOf = (place: string): number =>
  Number(readFileSync(join(place, 'postmaster.pid'), 'utf8').split('\n')[0]);

describe('the embedded cluster', () => {
  test('starts once, is attached to by the second, and is stopped by whoever leaves last', async () => {
    const place = join(folder, 'postgres');
    const first = await startCluster({ folder: place, forgetful: true });
    const second = await startCluster({ folder: place, forgetful: true });
    expect([first.attached, second.attached]).toEqual([false, true]);

    // Another process, by its name; our own connections do not count.
    const stranger = new pg.Client({
      host: second.socketFolder,
      user: second.user,
      database: 'postgres',
      application_name: 'another process',
    });
    await stranger.connect();
    const own = await openDatabase({ cluster: second, name: 'combside' }, 1);
    expect(await first.stop()).toBe('left running for another process');
    await stranger.query('select 1');
    await stranger.end();
    while (
      (await own.pool.query(`select 1 from pg_stat_activity where application_name = 'another process'`)).rowCount
    );
    await own.close();
    expect(await second.stop()).toBe('stopped');
    expect(existsSync(join(place, 'postmaster.pid'))).toBe(false);
  });

  test('listens on no network address, and its socket is private', async () => {
    const cluster = await startCluster({ folder: join(folder, 'postgres'), forgetful: true });
    const database = await openDatabase({ cluster, name: 'combside' }, 1);
    const { rows } = await database.pool.query("select current_setting('listen_addresses') as addresses");
    expect(rows).toEqual([{ addresses: '' }]);
    expect(statSync(cluster.socketFolder).mode & 0o777).toBe(0o700);
    await database.close();
    await cluster.stop();
  });

  test('a process killed without a word leaves it running; the next one attaches and finds what was stored', async () => {
    const place = join(folder, 'postgres');
    const script = `
      import { startCluster } from ${JSON.stringify(join(import.meta.dirname, 'cluster.ts'))};
      import { openDatabase } from ${JSON.stringify(join(import.meta.dirname, 'database.ts'))};
      const cluster = await startCluster({ folder: ${JSON.stringify(place)} });
      const database = await openDatabase({ cluster, name: 'combside' }, 1);
      await database.pool.query("insert into combside.districts values ('kept', true)");
      process.kill(process.pid, 'SIGKILL');`;
    const file = join(import.meta.dirname, `killed-${process.pid}.mts`);
    writeFileSync(file, script);
    try {
      const child = spawn(process.execPath, ['--import', 'tsx', file], { stdio: 'ignore' });
      const signal = await new Promise((done) => child.once('exit', (_code, by) => done(by)));
      expect(signal).toBe('SIGKILL');
    } finally {
      rmSync(file);
    }
    const cluster = await startCluster({ folder: place });
    expect(cluster.attached).toBe(true);
    const database = await openDatabase({ cluster, name: 'combside' }, 1);
    expect((await database.pool.query('select district from combside.districts')).rows).toEqual([{ district: 'kept' }]);
    await database.close();
    await cluster.stop();
  });

  test('after the postmaster was killed it starts again, stale pid file or not', async () => {
    const place = join(folder, 'postgres');
    await startCluster({ folder: place });
    process.kill(postmasterOf(place), 'SIGKILL');
    const again = await startCluster({ folder: place });
    expect(again.attached).toBe(false);
    await again.stop();

    // A pid file whose number belongs to another program by now: this test's own.
    writeFileSync(join(place, 'postmaster.pid'), `${process.pid}\n${place}\n1\n5432\n\n\n\n`);
    const third = await startCluster({ folder: place });
    expect(third.attached).toBe(false);
    await third.stop();
  });

  const root = process.getuid?.() === 0;
  test.skipIf(!root)(
    'as root below a closed folder the files stand where the unprivileged user can reach them',
    async () => {
      chmodSync(folder, 0o700);
      const cluster = await startCluster({ folder: join(folder, 'postgres'), forgetful: true });
      expect(cluster.folder.startsWith('/var/lib/combside/')).toBe(true);
      const owner = execFileSync('stat', ['-c', '%u', cluster.folder]).toString().trim();
      expect(owner).toBe('65534');
      await cluster.stop();
      rmSync(join(cluster.folder, '..'), { recursive: true });
    },
  );
});
