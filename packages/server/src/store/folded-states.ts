import { foldVersion } from '@combside/record/fold';
import { openReader } from '@combside/record/reader';
import type { StateByType } from '@combside/record/states';
import type { Database } from './database.ts';
import { openOfficeStore } from './office-store/open-office-store.ts';

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
