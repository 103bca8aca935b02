import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type pg from 'pg';
import { ServerError } from './errors.ts';

const folder = fileURLToPath(new URL('./migrations/', import.meta.url));

/** One numbered SQL file. */
export interface Migration {
  readonly number: number;
  readonly name: string;
  readonly text: string;
  readonly hash: string;
}

/**
 * The migrations of this version, in order.
 *
 * @throws Error when numbers do not run 1, 2, 3 without a gap, as after a half-merged change
 */
export async function migrations(): Promise<readonly Migration[]> {
  const names = (await readdir(folder)).filter((name) => name.endsWith('.sql')).sort();
  return Promise.all(
    names.map(async (name, index) => {
      const number = Number(name.slice(0, 4));
      if (number !== index + 1) throw new Error(`store/migrations: expected number ${index + 1} and found ${name}`);
      const text = await readFile(new URL(name, `file://${folder}`), 'utf8');
      return { number, name, text, hash: createHash('sha256').update(text).digest('hex') };
    }),
  );
}

/** Any two processes that migrate one database at once wait for each other by this number (ours, chosen freely). */
const migrationLock = 3_301_402;

/**
 * Brings the database to this version, forward only: each file in a transaction of its own, written down in
 * `combside.migrations` with its hash.
 *
 * @returns the names applied now
 * @throws ServerError `database-newer` or `migration-changed`
 */
export async function migrate(pool: pg.Pool): Promise<readonly string[]> {
  const known = await migrations();
  const client = await pool.connect();
  try {
    await client.query('select pg_advisory_lock($1)', [migrationLock]);
    await client.query(
      `create schema if not exists combside;
       create table if not exists combside.migrations (
         number integer primary key, name text not null, hash text not null,
         applied_at timestamptz not null default now())`,
    );
    const applied = await client.query<Omit<Migration, 'text'>>(
      'select number, name, hash from combside.migrations order by number',
    );
    for (const row of applied.rows) {
      const file = known[row.number - 1];
      if (!file) throw new ServerError('database-newer', row.name);
      if (file.hash !== row.hash) throw new ServerError('migration-changed', row.name);
    }
    const due = known.slice(applied.rows.length);
    for (const { number, name, text, hash } of due) {
      await client.query('begin');
      try {
        await client.query(text);
        await client.query('insert into combside.migrations (number, name, hash) values ($1, $2, $3)', [
          number,
          name,
          hash,
        ]);
        await client.query('commit');
      } catch (error) {
        await client.query('rollback');
        throw error;
      }
    }
    return due.map((migration) => migration.name);
  } finally {
    await client.query('select pg_advisory_unlock($1)', [migrationLock]).catch(() => undefined);
    client.release();
  }
}
