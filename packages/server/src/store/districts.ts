import type { Districts } from '@combside/contract/districts';
import { sql } from 'kysely';
import type { Database } from './database.ts';
import { newestArrival } from './newest-arrival.ts';
import type { Rights } from './rights.ts';

/** Every district the register or the settings know, by name. */
export async function districtsKnown(database: Database): Promise<readonly string[]> {
  const found = await sql<{ district: string }>`
    select district from combside.districts
    union select distinct district from combside.states where entity_type = 'apiary' and district is not null
    order by district`.execute(database.sql);
  return found.rows.map((row) => row.district);
}

type Counted = Districts['districts'][number];

/** The counts of every district, as of an arrival: they are counted anew only when something has arrived since. */
const countedLast = new WeakMap<
  Database,
  { readonly arrival: number; readonly counts: ReadonlyMap<string, Counted> }
>();

/** The districts granted, with what stands in each now. */
export async function districtsGranted(database: Database, rights: Rights): Promise<Districts> {
  const counts = await countedNow(database);
  const granted = rights.districts === 'all' ? [...counts.keys()] : rights.districts;
  const nothing = { invented: false, apiaries: 0, colonies: 0, visits: 0 };
  return { districts: [...granted].sort().map((district) => counts.get(district) ?? { district, ...nothing }) };
}

async function countedNow(database: Database): Promise<ReadonlyMap<string, Counted>> {
  const arrival = await newestArrival(database);
  const last = countedLast.get(database);
  if (last?.arrival === arrival) return last.counts;
  const found = await sql<Counted>`
    with sites as (
      select district, count(*)::int as apiaries from combside.states
      where entity_type = 'apiary' and district is not null group by district),
    others as (
      select apiary.district, count(*) filter (where other.entity_type = 'colony')::int as colonies,
        count(*) filter (where other.entity_type = 'visit')::int as visits
      from combside.states other
      join combside.states apiary on apiary.entity_type = 'apiary' and apiary.entity_id = other.apiary
      where other.entity_type in ('colony', 'visit') and apiary.district is not null group by apiary.district)
    select district, coalesce(known.invented, false) as invented, coalesce(sites.apiaries, 0) as apiaries,
      coalesce(others.colonies, 0) as colonies, coalesce(others.visits, 0) as visits
    from combside.districts known full join sites using (district) left join others using (district)`.execute(
    database.sql,
  );
  const counts = new Map(found.rows.map((row) => [row.district, row]));
  countedLast.set(database, { arrival, counts });
  return counts;
}

/** Writes a district down before anything stands in it. */
export async function writeDistrict(database: Database, district: string, invented: boolean): Promise<void> {
  countedLast.delete(database);
  await database.sql
    .insertInto('combside.districts')
    .values({ district, invented })
    .onConflict((conflict) => conflict.column('district').doUpdateSet({ invented }))
    .execute();
}

/** True when every district there is was invented for the demo. */
export async function onlyInvented(database: Database): Promise<boolean> {
  const found = await database.sql.selectFrom('combside.districts').select('invented').execute();
  return found.length > 0 && found.every((row) => row.invented);
}
