import { randomBytes } from 'node:crypto';
import { setTimeout as pause } from 'node:timers/promises';
import pg from 'pg';
import { inject } from 'vitest';
import { type Database, openDatabase } from '../database.ts';
import { type TestCluster, templateName } from './clusters.ts';

/** The clusters this run tests on, and those it leaves out with the reason. */
export function testClusters(): readonly TestCluster[] {
  return inject('clusters');
}

/** A database of a test's own: migrated, empty, dropped by `drop`. */
export interface TestDatabase extends Database {
  /** For a second process or handle: `openDatabase(address)`. */
  readonly address: {
    readonly cluster: { readonly socketFolder: string; readonly user: string };
    readonly name: string;
  };
  /** A second handle with its own connections, as another process would have; closed by `drop`. */
  readonly again: () => Promise<Database>;
  readonly drop: () => Promise<void>;
}

/** Copies the template. Without a cluster: on the embedded one. */
export async function testDatabase(cluster = testClusters()[0]): Promise<TestDatabase> {
  if (!cluster || cluster.socketFolder === null) throw new Error('this cluster is left out of the run');
  const { socketFolder, user } = cluster;
  const name = `test_${randomBytes(6).toString('hex')}`;
  const inServer = async (statement: string): Promise<void> => {
    const client = new pg.Client({ host: socketFolder, user, database: 'postgres' });
    await client.connect();
    await client.query(statement).finally(() => client.end());
  };
  await patiently(() => inServer(`create database ${name} template ${templateName}`));
  const address = { cluster: { socketFolder, user }, name };
  const opened = [await openDatabase(address, 6)];
  const first = opened[0] as Database;
  return {
    ...first,
    address,
    again: async () => {
      const another = await openDatabase(address, 6);
      opened.push(another);
      return another;
    },
    drop: async () => {
      for (const database of opened) await database.close();
      await inServer(`drop database ${name} with (force)`);
    },
  };
}

/** A template cannot be copied while somebody, for example the vacuum, is in it: PostgreSQL says 55006. */
async function patiently(work: () => Promise<void>): Promise<void> {
  for (let attempt = 1; ; attempt += 1) {
    try {
      return await work();
    } catch (error) {
      if ((error as pg.DatabaseError).code !== '55006' || attempt === 50) throw error;
      await pause(100);
    }
  }
}
