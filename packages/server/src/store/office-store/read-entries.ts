import type { About, Entry } from '@combside/record/entry';
import { aboutKey, type Head, type StoredEntry } from '@combside/record/store';
import { type Kysely, type Selectable, sql } from 'kysely';
import type { Tables } from '../tables.ts';
import { askedEntities, distinct } from './asked-entities.ts';

type EntryRow = Selectable<Tables['combside.entries']>;

/** See `EntryStore.clock`. */
export async function clockReading(db: Kysely<Tables>): Promise<string | null> {
  return (await db.selectFrom('combside.office_clock').select('reading').executeTakeFirst())?.reading ?? null;
}

/** See `EntryStore.head`. */
export async function headOf(db: Kysely<Tables>, device: string): Promise<Head | null> {
  const found = await db
    .selectFrom('combside.heads')
    .select(['device', 'seq', 'hash'])
    .where('device', '=', device)
    .executeTakeFirst();
  return found ?? null;
}

/** See `EntryStore.heads`. */
export function headsOfAll(db: Kysely<Tables>): Promise<Head[]> {
  return db.selectFrom('combside.heads').select(['device', 'seq', 'hash']).orderBy('device').execute();
}

/** See `EntryStore.byHash`. */
export async function entriesByHash(db: Kysely<Tables>, hashes: readonly string[]): Promise<Map<string, StoredEntry>> {
  if (hashes.length === 0) return new Map();
  const rows = await sql<EntryRow>`
    select * from combside.entries where hash = any(${distinct(hashes)}::text[])`.execute(db);
  return new Map(rows.rows.map((row) => [row.hash, storedEntryOf(row)]));
}

/** See `EntryStore.byId`. */
export async function entriesById(db: Kysely<Tables>, ids: readonly string[]): Promise<Map<string, StoredEntry>> {
  if (ids.length === 0) return new Map();
  const rows = await sql<EntryRow>`
    select * from combside.entries where refused is null and id = any(${distinct(ids)}::uuid[])`.execute(db);
  return new Map(rows.rows.map((row) => [row.id, storedEntryOf(row)]));
}

/** See `EntryStore.chain`. */
export async function chainFrom(
  db: Kysely<Tables>,
  device: string,
  seq: number,
  limit: number,
): Promise<StoredEntry[]> {
  const rows = await db
    .selectFrom('combside.entries')
    .selectAll()
    .where('device', '=', device)
    .where('seq', '>=', seq)
    .orderBy('seq')
    .limit(limit)
    .execute();
  return rows.map(storedEntryOf);
}

/** See `EntryStore.entriesAbout`. */
export async function entriesAbout(db: Kysely<Tables>, abouts: readonly About[]): Promise<Map<string, StoredEntry[]>> {
  const wanted = new Map(abouts.map((about) => [aboutKey(about), [] as StoredEntry[]]));
  if (abouts.length === 0) return wanted;
  const rows = await sql<EntryRow>`
    select entries.* from ${askedEntities(abouts)}
    join combside.entries on entries.about_type = asked.type and entries.about_id = asked.id
    where entries.refused is null`.execute(db);
  for (const row of rows.rows) wanted.get(aboutKey(row.envelope.about))?.push(storedEntryOf(row));
  for (const [key, found] of wanted) if (found.length === 0) wanted.delete(key);
  return wanted;
}

/** The entry that a row holds. */
export function storedEntryOf(row: EntryRow): StoredEntry {
  const entry: Entry = { envelope: row.envelope, salt: row.salt, body: row.body };
  return {
    entry,
    hash: row.hash,
    receivedAt: row.received_at?.toISOString() ?? null,
    refused: row.refused,
  };
}
