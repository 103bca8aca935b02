import type { MovementState } from '@combside/record/states';
import { sql } from 'kysely';
import type { Database } from '../database.ts';
import { statesOf } from '../folded-states.ts';
import { mayRead, type Rights } from '../rights.ts';

/** So many movements a page shows at most. */
const most = 200;

/**
 * What came to any of these apiaries and what left them, the newest 200.
 *
 * @param colony only movements that name this colony
 */
export async function movementsAt(
  database: Database,
  apiaries: readonly string[],
  colony: string | null = null,
): Promise<MovementState[]> {
  if (apiaries.length === 0) return [];
  const at = sql`any(${[...new Set(apiaries)]}::uuid[])`;
  const named =
    colony === null
      ? sql`true`
      : sql`(state::jsonb->'movement'->'current'->'body'->'colonies') @> ${JSON.stringify([colony])}::jsonb`;
  const rows = await sql<{ id: string }>`
    select entity_id as id from combside.states
    where entity_type = 'movement' and (apiary = ${at} or other_apiary = ${at}) and ${named}
    order by happened_at desc nulls last, entity_id limit ${most}`.execute(database.sql);
  const ids = rows.rows.map((row) => row.id);
  const found = new Map((await statesOf(database, 'movement', ids)).map((state) => [state.about.id, state]));
  return ids.flatMap((id) => found.get(id) ?? []);
}

/** The apiaries at either end of movements, now or before a change, each once. */
export function apiariesAtEnds(movements: readonly MovementState[]): string[] {
  const ends = movements
    .flatMap(({ movement }) => movement.history.map(({ body }) => body))
    .flatMap(({ from, to }) => [from, to]);
  return [...new Set(ends)].filter((end) => end !== null);
}

/** Names of apiaries, as far as they may be read. */
export async function apiaryNames(
  database: Database,
  rights: Rights,
  ids: readonly string[],
): Promise<{ apiary: string; name: string }[]> {
  if (ids.length === 0) return [];
  const rows = await database.sql
    .selectFrom('combside.states')
    .select(['entity_id', 'name', 'district'])
    .where('entity_type', '=', 'apiary')
    .where('entity_id', 'in', [...new Set(ids)])
    .orderBy('name')
    .execute();
  return rows.flatMap(({ entity_id, name, district }) =>
    district !== null && mayRead(rights, district) ? [{ apiary: entity_id, name: name ?? '' }] : [],
  );
}
