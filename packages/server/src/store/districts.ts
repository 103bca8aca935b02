import type { Districts } from '@combside/contract/districts';
import { sql } from 'kysely';
import type { Database } from './database.ts';
import type { Rights } from './rights.ts';

/** Every district the register or the settings know, by name. */
export async function districtsKnown(database: Database): Promise<readonly string[]> {
  const found = await sql<{ district: string }>`
    select district from combside.districts
    union select distinct district from combside.states where entity_type = 'apiary' and district is not null
    order by district`.execute(database.sql);
  return found.rows.map((row) => row.district);
}

/** The districts granted, with what stands in each. */
export async function districtsGranted(database: Database, rights: Rights): Promise<Districts> {
  const granted = rights.districts === 'all' ? await districtsKnown(database) : rights.districts;
  const found = await sql<Districts['districts'][number]>`
    select asked.district, coalesce(known.invented, false) as invented,
      (select count(*) from combside.states apiary
        where apiary.entity_type = 'apiary' and apiary.district = asked.district)::int as apiaries,
      (select count(*) from combside.states apiary join combside.states colony
          on colony.apiary = apiary.entity_id and colony.entity_type = 'colony'
        where apiary.entity_type = 'apiary' and apiary.district = asked.district)::int as colonies,
      (select count(*) from combside.states apiary join combside.states visit
          on visit.apiary = apiary.entity_id and visit.entity_type = 'visit'
        where apiary.entity_type = 'apiary' and apiary.district = asked.district)::int as visits
    from unnest(${granted}::text[]) as asked (district)
    left join combside.districts known on known.district = asked.district
    order by asked.district`.execute(database.sql);
  return { districts: found.rows };
}

/** Writes a district down before anything stands in it. */
export async function writeDistrict(database: Database, district: string, invented: boolean): Promise<void> {
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
