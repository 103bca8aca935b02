import type { ApiaryPage } from '@combside/contract/apiary-page';
import type { ColonySummary } from '@combside/record/summary';
import { sql } from 'kysely';
import type { Database } from '../database.ts';
import { ServerError } from '../errors.ts';
import { stateOf } from '../folded-states.ts';
import { newestArrival } from '../newest-arrival.ts';
import { peopleIn } from '../people.ts';
import { assertReadable, type Rights } from '../rights.ts';
import { apiariesAtEnds, apiaryNames, movementsAt } from './movements.ts';
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
  const movements = await movementsAt(database, [apiary]);
  const ends = apiariesAtEnds(movements).filter((end) => end !== apiary);
  const otherEnds = await apiaryNames(database, rights, ends);
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
