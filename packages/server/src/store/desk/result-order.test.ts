import { gravityOf, resultWords, saysSuspect, suspectWords } from '@combside/casework/result/results-by-gravity';
import { sql } from 'kysely';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type TestDatabase, testDatabase } from '../acceptance/test-database.ts';
import { gravestFirst, isSuspect } from './result-order.ts';

const newer = 'a word of a newer version';

let database: TestDatabase;
beforeAll(async () => {
  database = await testDatabase();
});
afterAll(() => database.drop());

describe('the words of a result in SQL', () => {
  test('stand in the order they have in TypeScript, a word of a newer version last', async () => {
    const mixed = [newer, ...[...resultWords].sort()];
    const { rows } = await sql<{ word: string }>`select word from unnest(${mixed}::text[]) as word
      order by ${gravestFirst(sql`word`)}`.execute(database.sql);
    const told = rows.map(({ word }) => word);
    expect(told).toEqual([...resultWords, newer]);
    expect(told).toEqual([...mixed].sort((a, b) => gravityOf(b) - gravityOf(a)));
  });

  test('count as a suspicion where they do in TypeScript', async () => {
    const { rows } = await sql<{ word: string; suspect: boolean }>`select word, ${isSuspect(sql`word`)} as suspect
      from unnest(${[...resultWords, newer]}::text[]) as word`.execute(database.sql);
    expect(rows.length).toBe(resultWords.length + 1);
    for (const { word, suspect } of rows) expect(suspect, word).toBe(saysSuspect(word));
  });

  test.each(['states_suspect', 'examined_suspect'])('are the words that the index %s is made over', async (name) => {
    const { rows } = await sql<{ definition: string }>`select indexdef as definition from pg_indexes
      where schemaname = 'combside' and indexname = ${name}`.execute(database.sql);
    const condition = rows[0]?.definition.split('result')[1] ?? '';
    const named = [...condition.matchAll(/'([^']+)'/g)].map(([, word]) => word);
    expect(named).toEqual([...suspectWords]);
  });
});
