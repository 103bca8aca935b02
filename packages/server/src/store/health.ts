import type { Health } from '@combside/contract/hello';
import { sql } from 'kysely';
import type { Database } from './database.ts';

/** Whether the database answers, how far the record has come, and how much waits for the new fold. */
export async function healthOf(database: Database, foldVersion: number): Promise<Health> {
  try {
    const found = await sql<{ position: number; stale: number }>`
      select (select coalesce(max(arrival), 0) from combside.placements) as position,
        (select count(*)::int from combside.states where fold_version <> ${foldVersion}) as stale`.execute(
      database.sql,
    );
    const row = found.rows[0];
    return { well: true, database: 'answers', position: row?.position ?? 0, staleStates: row?.stale ?? 0 };
  } catch {
    return { well: false, database: 'silent', position: null, staleStates: null };
  }
}
