import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type TestDatabase, testDatabase } from './acceptance/test-database.ts';
import { migrate, migrations } from './migrate.ts';

let database: TestDatabase;
beforeEach(async () => {
  database = await testDatabase();
});
afterEach(() => database.drop());

describe('migrations', () => {
  test('are numbered without a gap, and a fresh database has them all', async () => {
    const known = await migrations();
    expect(known.map((one) => one.number)).toEqual(known.map((_, index) => index + 1));
    const { rows } = await database.pool.query('select number, name from combside.migrations order by number');
    expect(rows).toEqual(known.map(({ number, name }) => ({ number, name })));
  });

  test('run once: again they do nothing', async () => {
    expect(await migrate(database.pool)).toEqual([]);
  });

  test('four processes at once apply each file once', async () => {
    await database.pool.query('drop schema combside cascade; drop extension pg_trgm');
    const others = await Promise.all(
      Array.from({ length: 4 }, () => database.again().catch((error: unknown) => error)),
    );
    expect(others.filter((one) => one instanceof Error)).toEqual([]);
    const { rows } = await database.pool.query('select count(*)::int as count from combside.migrations');
    expect(rows).toEqual([{ count: (await migrations()).length }]);
  });

  test('refuse a database of a newer program, and a file edited after it was applied', async () => {
    await database.pool.query("insert into combside.migrations values (9999, '9999-later.sql', 'x')");
    await expect(migrate(database.pool)).rejects.toMatchObject({ code: 'database-newer', where: '9999-later.sql' });
    await database.pool.query('delete from combside.migrations where number = 9999');
    await database.pool.query("update combside.migrations set hash = 'x' where number = 1");
    await expect(migrate(database.pool)).rejects.toMatchObject({ code: 'migration-changed', where: '0001-record.sql' });
  });
});
