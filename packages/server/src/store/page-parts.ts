import type { Person } from '@combside/contract/people';
import type { PhotographShown } from '@combside/contract/photograph';
import { foldVersion } from '@combside/record/fold';
import type { ExaminationBody } from '@combside/record/kinds/examination';
import { openReader } from '@combside/record/reader';
import type { Folded, StateBase, StateByType } from '@combside/record/states';
import { sql } from 'kysely';
import { combStandings } from './comb-photographs.ts';
import type { Database } from './database.ts';
import { ServerError } from './errors.ts';
import { openOfficeStore } from './office-store.ts';
import { peopleNamed } from './people.ts';
import { mayRead, type Rights } from './rights.ts';

/** One folded state, or null where nothing is known about the entity. */
export async function stateOf<T extends keyof StateByType>(
  database: Database,
  type: T,
  id: string,
): Promise<StateByType[T] | null> {
  return (await statesOf(database, type, [id]))[0] ?? null;
}

/**
 * Folded states by identifier; unknown ones are left out. A state made by another version of the fold is never shown: it
 * is folded anew from its entries, as the background will do for good.
 */
export async function statesOf<T extends keyof StateByType>(
  database: Database,
  type: T,
  ids: readonly string[],
): Promise<StateByType[T][]> {
  if (ids.length === 0) return [];
  const rows = await database.sql
    .selectFrom('combside.states')
    .select(['entity_id', 'fold_version', 'state'])
    .where('entity_type', '=', type)
    .where('entity_id', 'in', [...new Set(ids)])
    .execute();
  const reader = openReader(openOfficeStore(database));
  const states = await Promise.all(
    rows.map((row) => (row.fold_version === foldVersion ? row.state : reader.state({ type, id: row.entity_id }))),
  );
  return states.filter((state) => state !== null) as StateByType[T][];
}

/**
 * The newest arrival, read before a page is gathered: a live event beyond it may not be on the page yet.
 */
export async function newestArrival(database: Database): Promise<number> {
  const found = await sql<{ last: number }>`
    select coalesce(max(arrival), 0) as last from combside.placements`.execute(database.sql);
  return found.rows[0]?.last ?? 0;
}

/**
 * Refuses a page that lies in a district not granted, with the same words as one that does not exist. What stands at no
 * known site may be read by its author and by whoever reads every district.
 */
export function assertReadable(rights: Rights, district: string | null, author: string | null): void {
  const open = district === null ? rights.districts === 'all' || author === rights.person : mayRead(rights, district);
  if (!open) throw new ServerError('not-found');
}

/** Photographs of examinations, each marked whether its bytes have arrived and how the comb on it stands. */
export async function photographsShown(
  database: Database,
  examinations: readonly { readonly colony: string; readonly examination: Folded<ExaminationBody> }[],
): Promise<PhotographShown[]> {
  const shown = new Map<string, Omit<PhotographShown, 'held' | 'comb'>>();
  for (const { colony, examination } of examinations) {
    for (const photograph of examination.body.photographs) shown.set(photograph.hash, { ...photograph, colony });
  }
  if (shown.size === 0) return [];
  const all = [...shown.values()];
  const rows = await database.sql
    .selectFrom('combside.photographs')
    .select('hash')
    .where('hash', 'in', [...shown.keys()])
    .execute();
  const held = new Set(rows.map((row) => row.hash));
  const standing = await combStandings(
    database,
    all.map(({ colony, hash }) => ({ colony, hash })),
  );
  return all.map((photograph) => ({
    ...photograph,
    held: held.has(photograph.hash),
    comb: standing(photograph.colony, photograph.hash),
  }));
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
