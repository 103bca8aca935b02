import { expect, test } from 'vitest';
import { testDatabase } from './acceptance/test-database.ts';
import { withDatabaseLock } from './database.ts';

test('a connection lost while it is in use costs its own question and nothing else', async () => {
  const database = await testDatabase();
  try {
    const client = await database.pool.connect();
    const { rows } = await client.query<{ pid: number }>('select pg_backend_pid() as pid');
    const ended = new Promise<void>((done) => client.once('end', () => done()));
    await database.pool.query('select pg_terminate_backend($1)', [rows[0]?.pid]);
    // Nobody asks anything of it: what it says of its loss has to be heard all the same, or the process ends.
    expect(client.listenerCount('error')).toBeGreaterThan(0);
    await ended;
    await expect(client.query('select 1')).rejects.toThrow();
    client.release();
    expect(await withDatabaseLock(database, 1, async () => 'worked')).toBe('worked');
  } finally {
    await database.drop();
  }
});
