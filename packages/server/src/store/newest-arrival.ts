import { sql } from 'kysely';
import type { Database } from './database.ts';

/**
 * The newest arrival, read before a page is gathered: a live event beyond it may not be on the page yet.
 */
export async function newestArrival(database: Database): Promise<number> {
  const found = await sql<{ last: number }>`
    select coalesce(max(arrival), 0) as last from combside.placements`.execute(database.sql);
  return found.rows[0]?.last ?? 0;
}
