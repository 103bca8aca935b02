import { RecordError } from '@combside/record/errors';
import type { Placement } from '@combside/record/store';
import { type Kysely, sql } from 'kysely';
import type { Tables } from '../tables.ts';
import { distinct } from './asked-entities.ts';
import { asClash } from './insert-entries.ts';

/** PostgreSQL's channel on which every commit that placed entries says so. */
export const arrivalChannel = 'combside_arrivals';

/** Gives entries their positions and says so. @throws RecordError `entry clash` where a position is taken or left out */
export async function insertPlacements(db: Kysely<Tables>, placements: readonly Placement[]): Promise<void> {
  await expectNoGap(db, placements);
  await sql`
    insert into combside.placements (scope, position, hash, digest)
    select r.scope, r.position, r.hash, r.digest from jsonb_to_recordset(${JSON.stringify(placements)}::jsonb)
      as r (scope text, position integer, hash text, digest text)
    order by r.scope, r.position`
    .execute(db)
    .catch(asClash);
  await sql`select pg_notify(${arrivalChannel}, '')`.execute(db);
}

/** Positions go on where the scope ends. Two writers who both see the same end meet at the primary key. */
async function expectNoGap(db: Kysely<Tables>, placements: readonly Placement[]): Promise<void> {
  const scopes = distinct(placements.map((placement) => placement.scope));
  const found = await sql<{ scope: string; last: number | null }>`
    select asked.scope, (select max(position) from combside.placements placed where placed.scope = asked.scope) as last
    from unnest(${scopes}::text[]) as asked (scope)`.execute(db);
  for (const { scope, last } of found.rows) {
    const positions = placements.filter((placement) => placement.scope === scope).map(({ position }) => position);
    positions.sort((a, b) => a - b);
    for (const [index, position] of positions.entries()) {
      const expected = (last ?? 0) + 1 + index;
      if (position !== expected) {
        throw new RecordError('entry clash', `position ${position} of ${scope}, where ${expected} comes next`);
      }
    }
  }
}
