import type { About } from '@combside/record/entry';
import { aboutKey, type Placement, type StoredEntry } from '@combside/record/store';
import { type Kysely, type Selectable, sql } from 'kysely';
import type { Tables } from '../tables.ts';
import { askedEntities, distinct } from './asked-entities.ts';
import { storedEntryOf } from './read-entries.ts';

/** See `OfficeStore.tail`. */
export async function tailOf(db: Kysely<Tables>, scope: string): Promise<Placement | null> {
  const row = await db
    .selectFrom('combside.placements')
    .selectAll()
    .where('scope', '=', scope)
    .orderBy('position', 'desc')
    .limit(1)
    .executeTakeFirst();
  return placementOf(row);
}

/** See `OfficeStore.placement`. */
export async function placementAt(db: Kysely<Tables>, scope: string, position: number): Promise<Placement | null> {
  const row = await db
    .selectFrom('combside.placements')
    .selectAll()
    .where('scope', '=', scope)
    .where('position', '=', position)
    .executeTakeFirst();
  return placementOf(row);
}

/** See `OfficeStore.placed`. */
export async function placedAfter(
  db: Kysely<Tables>,
  scope: string,
  position: number,
  limit: number,
): Promise<{ placement: Placement; kept: StoredEntry }[]> {
  const rows = await db
    .selectFrom('combside.placements as placed')
    .innerJoin('combside.entries as entry', 'entry.hash', 'placed.hash')
    .selectAll('entry')
    .select(['placed.scope', 'placed.position', 'placed.digest'])
    .where('placed.scope', '=', scope)
    .where('placed.position', '>', position)
    .orderBy('placed.position')
    .limit(limit)
    .execute();
  return rows.map((row) => ({
    placement: { scope: row.scope, position: row.position, hash: row.hash, digest: row.digest },
    kept: storedEntryOf(row),
  }));
}

/** See `OfficeStore.placedAlready`. */
export async function placedAlready(
  db: Kysely<Tables>,
  scope: string,
  hashes: readonly string[],
): Promise<Set<string>> {
  if (hashes.length === 0) return new Set();
  const rows = await sql<{ hash: string }>`
    select hash from combside.placements where scope = ${scope} and hash = any(${distinct(hashes)}::text[])`.execute(
    db,
  );
  return new Set(rows.rows.map((row) => row.hash));
}

/** See `OfficeStore.memberships`. */
export async function membershipsOf(db: Kysely<Tables>, abouts: readonly About[]): Promise<Map<string, string[]>> {
  const found = new Map<string, string[]>();
  if (abouts.length === 0) return found;
  const rows = await sql<{ type: string; id: string; scope: string }>`
    select asked.type, asked.id, member.scope from ${askedEntities(abouts)}
    join combside.memberships member on member.entity_type = asked.type and member.entity_id = asked.id`.execute(db);
  for (const row of rows.rows) {
    const key = aboutKey(row);
    found.set(key, [...(found.get(key) ?? []), row.scope]);
  }
  return found;
}

/** See `OfficeStore.followers`. */
export async function followersOf(db: Kysely<Tables>, parents: readonly About[]): Promise<About[]> {
  if (parents.length === 0) return [];
  const rows = await sql<About>`
    select distinct follow.child_type as type, follow.child_id as id from ${askedEntities(parents)}
    join combside.follows follow on follow.parent_type = asked.type and follow.parent_id = asked.id`.execute(db);
  return rows.rows;
}

/** See `OfficeStore.parents`. */
export async function parentsOf(db: Kysely<Tables>, children: readonly About[]): Promise<Map<string, About[]>> {
  const found = new Map<string, About[]>();
  if (children.length === 0) return found;
  const rows = await sql<{ type: string; id: string; parent_type: string; parent_id: string }>`
    select asked.type, asked.id, follow.parent_type, follow.parent_id from ${askedEntities(children)}
    join combside.follows follow on follow.child_type = asked.type and follow.child_id = asked.id`.execute(db);
  for (const row of rows.rows) {
    const key = aboutKey(row);
    found.set(key, [...(found.get(key) ?? []), { type: row.parent_type, id: row.parent_id }]);
  }
  return found;
}

function placementOf(row: Selectable<Tables['combside.placements']> | undefined): Placement | null {
  return row ? { scope: row.scope, position: row.position, hash: row.hash, digest: row.digest } : null;
}
