import { type RawBuilder, sql } from 'kysely';
import type { Database } from '../database.ts';
import { patternAnywhere } from './paging.ts';

/**
 * A word that stands in more apiaries than this is common: then the visits are walked from the newest on, and the first
 * ones are soon found. Of rarer words the apiaries are found first, and their visits from them.
 */
const commonFrom = 2000;

/** Words of a question that count, and those of them that may name an inspector. */
const mostWords = 8;
const mostNaming = 3;

/**
 * The condition on `visit` and `apiary` that each word of a question stands in the name, number or address of the apiary
 * or in the name of the inspector; null where nothing can fit.
 *
 * @param here the condition on `state` by which an apiary may be read
 */
export async function visitsWorded(
  database: Database,
  text: string,
  here: RawBuilder<unknown>,
): Promise<RawBuilder<unknown> | null> {
  const words = text.replaceAll('\u0000', '').trim().split(/\s+/).filter(Boolean).slice(0, mostWords);
  if (words.length === 0) return null;
  const people = await sql<{ person: string; name: string }>`
    select person, name from combside.people where name ilike any(${words.map(patternAnywhere)}::text[])`.execute(
    database.sql,
  );
  const names = people.rows.map(({ person, name }) => ({ person, name: name.toLowerCase() }));
  const naming = words
    .filter((word) => names.some(({ name }) => name.includes(word.toLowerCase())))
    .slice(0, mostNaming);
  const readings: RawBuilder<unknown>[] = [];
  // A word may name the inspector or the apiary, so every way of sharing them out is one reading of the question.
  for (let set = 0; set < 2 ** naming.length; set++) {
    const ofPerson = naming.filter((_, at) => set & (1 << at));
    const ofPlace = words.filter((word) => !ofPerson.includes(word));
    const reading: RawBuilder<unknown>[] = [];
    if (ofPerson.length > 0) {
      const persons = names
        .filter(({ name }) => ofPerson.every((word) => name.includes(word.toLowerCase())))
        .map(({ person }) => person);
      if (persons.length === 0) continue;
      reading.push(sql`visit.inspector = any(${persons}::uuid[])`);
    }
    if (ofPlace.length > 0) {
      const placed = await apiariesWorded(database, ofPlace, here);
      if (placed === null) continue;
      reading.push(placed);
    }
    readings.push(sql`(${sql.join(reading, sql` and `)})`);
  }
  return readings.length === 0 ? null : sql`(${sql.join(readings, sql` or `)})`;
}

async function apiariesWorded(
  database: Database,
  words: readonly string[],
  here: RawBuilder<unknown>,
): Promise<RawBuilder<unknown> | null> {
  // A word of fewer than three letters has no trigram: standing alone it is looked for at the beginning of names.
  const isShort = words.every((word) => [...word].length < 3);
  const start = patternAnywhere(words.join(' ').toLowerCase()).slice(1);
  const matching = (table: 'state' | 'apiary') =>
    isShort
      ? sql`lower(${sql.ref(`${table}.name`)}) like ${start}`
      : sql.join(
          words.map((word) => sql`${sql.ref(`${table}.search`)} ilike ${patternAnywhere(word)}`),
          sql` and `,
        );
  const found = await sql<{ id: string }>`
    select state.entity_id as id from combside.states state
    where state.entity_type = 'apiary' and ${matching('state')} and ${here}
    limit ${commonFrom}`.execute(database.sql);
  if (found.rows.length === 0) return null;
  return found.rows.length < commonFrom
    ? sql`visit.apiary = any(${found.rows.map(({ id }) => id)}::uuid[])`
    : matching('apiary');
}
