import type { KeeperPage } from '@combside/contract/keeper-page';
import type { Keepers, KeepersAsked } from '@combside/contract/keepers';
import { sql } from 'kysely';
import type { Database } from '../database.ts';
import { ServerError } from '../errors.ts';
import { stateOf } from '../folded-states.ts';
import { newestArrival } from '../newest-arrival.ts';
import { peopleIn } from '../people.ts';
import { districtsAsked, type Rights } from '../rights.ts';
import { apiariesOfKeeper } from './apiaries.ts';
import { apiariesAtEnds, apiaryNames, movementsAt } from './movements.ts';
import { pageMark, readPageMark } from './paging.ts';
import { keeperIn } from './register-search.ts';

/** Keepers by name, a page at a time. */
export async function keepersListed(database: Database, rights: Rights, asked: KeepersAsked): Promise<Keepers> {
  const mark = readPageMark(asked.after, 2);
  const after = mark ? sql`(state.name, state.entity_id) > (${mark[0]}, ${mark[1]}::uuid)` : sql`true`;
  const found = await sql<{ id: string; name: string; number: string | null; apiaries: number }>`
    with page as (
      select state.entity_id, state.name, state.summary from combside.states state
      where state.entity_type = 'keeper' and state.merged_into is null and state.name is not null
        and ${keeperIn(districtsAsked(rights, undefined))} and ${after}
      order by state.name, state.entity_id limit ${asked.limit + 1}
    )
    select page.entity_id as id, page.name, page.summary->>'number' as number,
      (select count(*) from combside.states site where site.entity_type = 'apiary' and site.keeper = page.entity_id
        and site.merged_into is null)::int as apiaries
    from page order by page.name, page.entity_id`.execute(database.sql);
  const rows = found.rows.slice(0, asked.limit);
  const last = rows.at(-1);
  return {
    keepers: rows.map(({ id, ...row }) => ({ keeper: id, ...row })),
    next: found.rows.length > asked.limit && last ? pageMark([last.name, last.id]) : null,
  };
}

/**
 * A keeper with the apiaries one may read.
 *
 * @throws ServerError `not-found`, also for a keeper none of whose apiaries may be read
 */
export async function keeperPageOf(database: Database, rights: Rights, keeper: string): Promise<KeeperPage> {
  const position = await newestArrival(database);
  const state = await stateOf(database, 'keeper', keeper);
  if (!state) throw new ServerError('not-found');
  const apiaries = await apiariesOfKeeper(database, rights, keeper);
  if (rights.districts !== 'all' && apiaries.length === 0) {
    const readable = await sql<{ one: number }>`
      select 1 as one from combside.states state
      where state.entity_type = 'keeper' and state.entity_id = ${keeper}::uuid and (
        ${keeperIn(rights.districts)} or exists (select 1 from combside.memberships member
          where member.entity_type = 'keeper' and member.entity_id = state.entity_id
            and member.scope = any(${rights.districts.map((district) => `district/${district}`)}::text[])))`.execute(
      database.sql,
    );
    if (readable.rows.length === 0) throw new ServerError('not-found');
  }
  const merged = await database.sql
    .selectFrom('combside.states')
    .select(['entity_id', 'name'])
    .where('merged_into', '=', keeper)
    .where('entity_type', '=', 'keeper')
    .execute();
  const movements = await movementsAt(
    database,
    apiaries.map(({ apiary }) => apiary),
  );
  return {
    keeper: state,
    apiaries,
    movements,
    otherEnds: await apiaryNames(database, rights, apiariesAtEnds(movements)),
    mergedHere: merged.map((row) => ({ id: row.entity_id, name: row.name ?? '' })),
    people: [...(await peopleIn(database, [state, ...movements], []))],
    position,
  } as KeeperPage;
}
