import type { Person } from '@combside/contract/people';
import type { StateBase } from '@combside/record/states';
import { districtScope } from '@combside/record/transport';
import { sql } from 'kysely';
import type { Database } from './database.ts';
import { everyDistrict, type Rights } from './rights.ts';

/** What is written down about a person the record names. */
export interface PersonWritten extends Person {
  readonly account: string | null;
  /** Districts granted; `['*']` for all of them. */
  readonly districts: readonly string[];
}

/**
 * The directory as far as it concerns the asker: who is granted a district that he is granted, who made a visit that
 * stands in one (also when long gone), and the office itself.
 */
export async function peopleFor(database: Database, rights: Rights): Promise<readonly Person[]> {
  const all = database.sql.selectFrom('combside.people').select(['person', 'name', 'role', 'active']).orderBy('name');
  if (rights.districts === 'all') return all.execute();
  const granted = [everyDistrict, ...rights.districts];
  const scopes = rights.districts.map(districtScope);
  return all
    .where(
      sql<boolean>`(person = ${rights.person}::uuid or role = 'server'
      or exists (select from combside.grants where grants.person = people.person and district = any(${granted}))
      or exists (select from combside.states
        join combside.memberships using (entity_type, entity_id)
        where states.inspector = people.person and scope = any(${scopes})))`,
    )
    .execute();
}

/** Those of the directory that are named here. */
export async function peopleNamed(database: Database, ids: Iterable<string>): Promise<readonly Person[]> {
  const wanted = [...new Set(ids)];
  if (wanted.length === 0) return [];
  return database.sql
    .selectFrom('combside.people')
    .select(['person', 'name', 'role', 'active'])
    .where('person', 'in', wanted)
    .orderBy('name')
    .execute();
}

/** Everybody who wrote anything in these states, and whoever else is named. */
export function peopleIn(
  database: Database,
  states: readonly (StateBase | null)[],
  others: readonly string[],
): Promise<readonly Person[]> {
  const named = new Set(others);
  const walk = (value: unknown): void => {
    if (Array.isArray(value)) for (const one of value) walk(one);
    else if (value !== null && typeof value === 'object') {
      const written = (value as { written?: { by?: unknown } }).written;
      if (typeof written?.by === 'string') named.add(written.by);
      for (const [key, inner] of Object.entries(value)) if (key !== 'body' && key !== 'original') walk(inner);
    }
  };
  walk(states);
  return peopleNamed(database, named);
}

/** Rights of the person behind a sign-in account, or null where there is none or he is no longer active. */
export async function rightsOfAccount(database: Database, account: string): Promise<Rights | null> {
  const found = await sql<{ person: string; name: string; role: Rights['role']; districts: string[] }>`
    select person, name, role, array(select district from combside.grants where grants.person = people.person
      order by district) as districts
    from combside.people where account = ${account} and active`.execute(database.sql);
  const row = found.rows[0];
  if (!row) return null;
  return { ...row, districts: row.districts.includes(everyDistrict) ? 'all' : row.districts };
}

/** Rights of a person by the identifier entries carry, signed in or not. */
export async function rightsOfPerson(database: Database, person: string): Promise<Rights | null> {
  const found = await sql<{ person: string; name: string; role: Rights['role']; districts: string[] }>`
    select person, name, role, array(select district from combside.grants where grants.person = people.person
      order by district) as districts
    from combside.people where person = ${person}::uuid and active`.execute(database.sql);
  const row = found.rows[0];
  if (!row) return null;
  return { ...row, districts: row.districts.includes(everyDistrict) ? 'all' : row.districts };
}

/** Writes a person down, or what changed about him; grants become exactly those given. */
export async function writePerson(database: Database, person: PersonWritten, at: Date): Promise<void> {
  const { districts, name, role, account, active } = person;
  const row = { person: person.person, name, role, account, active };
  await database.sql.transaction().execute(async (transaction) => {
    await transaction
      .insertInto('combside.people')
      .values(row)
      .onConflict((conflict) => conflict.column('person').doUpdateSet(row))
      .execute();
    await transaction.deleteFrom('combside.grants').where('person', '=', person.person).execute();
    for (const district of districts) {
      await transaction
        .insertInto('combside.grants')
        .values({ person: person.person, district, granted_at: at.toISOString() })
        .execute();
    }
  });
}
