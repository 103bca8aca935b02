import type { ApiaryPage } from '@combside/contract/apiary-page';
import type { MovementState } from '@combside/record/states';
import type { ColonySummary } from '@combside/record/summary';
import { sql } from 'kysely';
import type { Database } from './database.ts';
import { ServerError } from './errors.ts';
import { assertReadable, newestArrival, peopleIn, stateOf, statesOf } from './page-parts.ts';
import { mayRead, type Rights } from './rights.ts';
import { visitsListed } from './visits.ts';

/**
 * A site with its keeper, its colonies and its newest visits.
 *
 * @throws ServerError `not-found`, also for a site in a district that is not granted
 */
export async function apiaryPageOf(database: Database, rights: Rights, apiary: string): Promise<ApiaryPage> {
  const position = await newestArrival(database);
  const state = await stateOf(database, 'apiary', apiary);
  const body = state?.apiary.current?.body;
  if (!state || !body) throw new ServerError('not-found');
  assertReadable(rights, body.district, null);

  const found = await sql<{ summary: ColonySummary }>`
    select summary from combside.states where apiary = ${apiary}::uuid and entity_type = 'colony'`.execute(
    database.sql,
  );
  const colonies = found.rows
    .map(({ summary }) => ({
      colony: summary.about.id,
      label: summary.label,
      hiveType: summary.hiveType,
      hiveState: summary.hiveState,
      lastExaminedAt: summary.lastExaminedAt,
      lastResult: summary.lastResult,
    }))
    .sort((a, b) => a.label.localeCompare(b.label, 'en', { numeric: true }) || (a.colony < b.colony ? -1 : 1));
  const keeper = body.keeper ? await stateOf(database, 'keeper', body.keeper) : null;
  const { visits } = await visitsListed(database, rights, { apiary, limit: 50 });
  const movements = await movementsAt(database, apiary);
  const otherEnds = await namesOf(
    database,
    rights,
    movements
      .flatMap(({ movement }) => [movement.current?.body.from, movement.current?.body.to])
      .filter((end) => end !== apiary),
  );
  const mergedHere = await database.sql
    .selectFrom('combside.states')
    .select(['entity_id as id', 'name'])
    .where('merged_into', '=', apiary)
    .orderBy('name')
    .execute();
  const people = await peopleIn(
    database,
    [state, keeper, ...movements],
    visits.map((visit) => visit.inspector),
  );
  return {
    apiary: state,
    keeper,
    colonies,
    visits,
    movements,
    otherEnds,
    mergedHere: mergedHere.map(({ id, name }) => ({ id, name: name ?? '' })),
    people: [...people],
    position,
  } as ApiaryPage;
}

/** What came here and what left, the newest 200. */
async function movementsAt(database: Database, apiary: string): Promise<MovementState[]> {
  const rows = await sql<{ id: string }>`
    select entity_id as id from combside.states
    where entity_type = 'movement' and (apiary = ${apiary}::uuid or other_apiary = ${apiary}::uuid)
    order by happened_at desc nulls last, entity_id limit 200`.execute(database.sql);
  const ids = rows.rows.map((row) => row.id);
  const found = new Map((await statesOf(database, 'movement', ids)).map((state) => [state.about.id, state]));
  return ids.flatMap((id) => found.get(id) ?? []);
}

/** Names of apiaries, as far as they may be read. */
async function namesOf(
  database: Database,
  rights: Rights,
  ids: readonly (string | null | undefined)[],
): Promise<{ apiary: string; name: string }[]> {
  const asked = ids.filter((id) => typeof id === 'string');
  if (asked.length === 0) return [];
  const rows = await database.sql
    .selectFrom('combside.states')
    .select(['entity_id', 'name', 'district'])
    .where('entity_type', '=', 'apiary')
    .where('entity_id', 'in', [...new Set(asked)])
    .orderBy('name')
    .execute();
  return rows.flatMap(({ entity_id, name, district }) =>
    district !== null && mayRead(rights, district) ? [{ apiary: entity_id, name: name ?? '' }] : [],
  );
}
