import { Kysely, PostgresDialect } from 'kysely';
import pg from 'pg';
import { type Cluster, ownName } from './cluster.ts';
import { ServerError } from './errors.ts';
import { migrate } from './migrate.ts';
import type { Tables } from './tables.ts';

/** One pool of connections, and the same pool seen through Kysely. */
export interface Database {
  readonly pool: pg.Pool;
  readonly sql: Kysely<Tables>;
  /** Where it is, for the log: never with a password. */
  readonly where: string;
  /** A connection of its own outside the pool, for listening. */
  connect(): Promise<pg.Client>;
  close(): Promise<void>;
}

export type DatabaseAddress =
  | { readonly cluster: Pick<Cluster, 'socketFolder' | 'user'>; readonly name: string }
  | { readonly url: string };

const bigint = 20;
const types: pg.CustomTypesConfig = {
  getTypeParser: ((oid: number, format?: 'text' | 'binary') =>
    oid === bigint ? Number : pg.types.getTypeParser(oid, format as 'text')) as typeof pg.types.getTypeParser,
};

/**
 * Opens a database and migrates it. In a cluster of ours the database is made when it is missing.
 *
 * @throws ServerError `database-unreachable`, `database-newer` or `migration-changed`
 */
export async function openDatabase(address: DatabaseAddress, connections = 10): Promise<Database> {
  const common = { types, application_name: ownName };
  const settings: pg.ClientConfig =
    'url' in address
      ? { ...common, connectionString: address.url }
      : { ...common, host: address.cluster.socketFolder, user: address.cluster.user, database: address.name };
  if ('cluster' in address) await makeDatabase({ ...settings, database: 'postgres' }, address.name);
  const pool = new pg.Pool({ ...settings, max: connections, connectionTimeoutMillis: 20_000 });
  // A connection that is lost is replaced at the next use, and whatever it was asked fails. The pool hears of those that
  // are idle, each of those in use says it itself; without a listener either would end the process.
  pool.on('error', () => undefined);
  pool.on('connect', (client) => client.on('error', () => undefined));
  const where = 'url' in address ? withoutPassword(address.url) : `${address.cluster.socketFolder} (${address.name})`;
  try {
    await pool.query('select 1').catch((cause: unknown) => {
      throw new ServerError('database-unreachable', where, { cause });
    });
    await migrate(pool);
  } catch (error) {
    await pool.end();
    throw error;
  }
  const sql = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
  return {
    pool,
    sql,
    where,
    connect: async () => {
      const client = new pg.Client(settings);
      await client.connect();
      return client;
    },
    close: () => sql.destroy(),
  };
}

/** Runs `work` while no other process holds the same lock of this database. */
export async function withDatabaseLock<T>(database: Database, lock: number, work: () => Promise<T>): Promise<T> {
  const client = await database.pool.connect();
  try {
    await client.query('select pg_advisory_lock($1)', [lock]);
    return await work();
  } finally {
    await client.query('select pg_advisory_unlock($1)', [lock]).catch(() => undefined);
    client.release();
  }
}

async function makeDatabase(settings: pg.ClientConfig, name: string): Promise<void> {
  const client = new pg.Client(settings);
  await client.connect();
  try {
    const found = await client.query('select 1 from pg_database where datname = $1', [name]);
    if (found.rowCount === 0) {
      await client.query(`create database ${pg.escapeIdentifier(name)}`).catch((error: pg.DatabaseError) => {
        // Another process made it between the two statements.
        if (error.code !== '42P04' && error.code !== '23505') throw error;
      });
    }
  } finally {
    await client.end();
  }
}

function withoutPassword(url: string): string {
  try {
    const parsed = new URL(url);
    return `${parsed.hostname || 'socket'}${parsed.pathname}`;
  } catch {
    return 'the address given';
  }
}
