import type { RegisterHit, RegisterHits, RegisterSearched } from '@combside/contract/register-search';
import { type RawBuilder, sql } from 'kysely';
import type { Database } from '../database.ts';
import { districtsAsked, type Rights } from '../rights.ts';
import { patternAnywhere } from './paging.ts';

/**
 * The most rows that are put in order. A word that stands in more of them than this (a county's name) is answered with
 * the first that the index finds, and the answer says that there are more.
 */
const mostSorted = 2000;

/** Words of a question that count; further ones are left out. */
const mostWords = 8;

/**
 * Apiaries and keepers in whose names, numbers, addresses, telephone or mail every word of the question stands, those
 * whose name begins with it first. Each word goes to the trigram index; one of fewer than three letters, which has no
 * trigram, is looked for at the beginning of names when it stands alone, and else only narrows what the others found.
 */
export async function registerSearched(
  database: Database,
  rights: Rights,
  asked: RegisterSearched,
): Promise<RegisterHits> {
  const districts = districtsAsked(rights, asked.district);
  const words = asked.text.replaceAll('\u0000', '').trim().split(/\s+/).filter(Boolean).slice(0, mostWords);
  if (words.length === 0) return { hits: [], more: false };
  const [apiaries, keepers] = await Promise.all([
    found(database, 'apiary', words, apiaryIn(districts), asked.limit),
    found(database, 'keeper', words, keeperIn(districts), asked.limit),
  ]);
  // Turn and turn about, so that many apiaries of one name do not push its keeper off the page.
  const hits: RegisterHit[] = [];
  for (let place = 0; place < asked.limit; place++) {
    for (const list of [apiaries, keepers]) {
      const hit = list[place];
      if (hit && hits.length < asked.limit) hits.push(hit);
    }
  }
  return { hits, more: apiaries.length + keepers.length > hits.length };
}

async function found(
  database: Database,
  type: 'apiary' | 'keeper',
  words: readonly string[],
  readable: RawBuilder<unknown>,
  limit: number,
): Promise<RegisterHit[]> {
  const text = words.join(' ');
  const start = `${patternAnywhere(text.toLowerCase()).slice(1)}`;
  const matches = words.every((word) => [...word].length < 3)
    ? sql`lower(state.name) like ${start}`
    : sql.join(
        words.map((word) => sql`state.search ilike ${patternAnywhere(word)}`),
        sql` and `,
      );
  const rows = await sql<{
    id: string;
    name: string | null;
    district: string | null;
    number: string | null;
    at: string | null;
  }>`
    with candidates as materialized (
      select state.entity_id, state.name, state.district, state.keeper, state.summary
      from combside.states state
      where state.entity_type = ${type} and ${matches} and state.merged_into is null and ${readable}
      limit ${mostSorted}
    ), first as (
      select * from candidates
      order by lower(name) like ${start} desc, name, entity_id limit ${limit + 1}
    )
    select first.entity_id as id, first.name, first.district, first.summary->>'number' as number,
      (select keeper.name from combside.states keeper
        where keeper.entity_type = 'keeper' and keeper.entity_id = first.keeper) as at
    from first order by lower(first.name) like ${start} desc, first.name, first.entity_id`.execute(database.sql);
  return rows.rows.map((row) => ({ ...row, type, name: row.name ?? '' }));
}

export function apiaryIn(districts: 'all' | readonly string[]): RawBuilder<unknown> {
  return districts === 'all' ? sql`true` : sql`state.district = any(${[...districts]}::text[])`;
}

/** Keepers of an apiary there; one without any apiary is shown to whoever reads every district. */
export function keeperIn(districts: 'all' | readonly string[]): RawBuilder<unknown> {
  return districts === 'all'
    ? sql`true`
    : sql`exists (select 1 from combside.states site where site.entity_type = 'apiary' and site.keeper = state.entity_id
        and site.district = any(${[...districts]}::text[]))`;
}
