import type { ColoniesFound, ColoniesSearched, ColonyHit } from '@combside/contract/colonies';
import { sql } from 'kysely';
import type { Database } from '../database.ts';
import { districtsAsked, type Rights } from '../rights.ts';
import { patternAnywhere } from './paging.ts';

/**
 * Colonies whose label is one of the words, at an apiary in whose name, number or address the other words stand. The
 * label must be whole: "3" does not find "13".
 */
export async function coloniesSearchedFor(
  database: Database,
  rights: Rights,
  asked: ColoniesSearched,
): Promise<ColoniesFound> {
  const districts = districtsAsked(rights, undefined);
  const here = districts === 'all' ? sql`true` : sql`apiary.district = any(${districts}::text[])`;
  const words = asked.text.replaceAll('\u0000', '').trim().split(/\s+/).filter(Boolean).slice(0, 8);
  if (words.length === 0) return { colonies: [], more: false };
  const readings = words.map((label, at) => {
    const others = words
      .filter((_, place) => place !== at)
      .map((word) => sql`apiary.search ilike ${patternAnywhere(word)}`);
    const labels = [label, label.toUpperCase(), label.toLowerCase()];
    return sql`(${sql.join([sql`colony.name = any(${labels}::text[])`, ...others], sql` and `)})`;
  });
  const found = await sql<ColonyHit>`
    select colony.entity_id as colony, colony.name as label, apiary.entity_id as apiary, apiary.name as "apiaryName",
      colony.last_result as "lastResult"
    from combside.states colony
    join combside.states apiary on apiary.entity_type = 'apiary' and apiary.entity_id = colony.apiary
    where colony.entity_type = 'colony' and ${here} and (${sql.join(readings, sql` or `)})
    order by apiary.name, colony.name, colony.entity_id limit ${asked.limit + 1}`.execute(database.sql);
  return { colonies: found.rows.slice(0, asked.limit), more: found.rows.length > asked.limit };
}
