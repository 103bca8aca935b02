import type { About } from '@combside/record/entry';
import type { StateBase } from '@combside/record/states';
import { aboutKey } from '@combside/record/store';
import type { FoldedType, SummaryByType, SummaryFilter } from '@combside/record/summary';
import { type Kysely, sql } from 'kysely';
import { storable } from '../columns.ts';
import type { Tables } from '../tables.ts';
import { askedEntities } from './asked-entities.ts';

/** The columns by which summaries are filtered. */
type FilterColumns = Pick<Tables['combside.states'], 'district' | 'keeper' | 'apiary' | 'inspector'>;

/** See `EntryStore.states`. */
export async function statesOf(db: Kysely<Tables>, abouts: readonly About[]): Promise<Map<string, StateBase>> {
  const found = new Map<string, StateBase>();
  if (abouts.length === 0) return found;
  const rows = await sql<{ state: StateBase }>`
    select states.state from ${askedEntities(abouts)}
    join combside.states on states.entity_type = asked.type and states.entity_id = asked.id`.execute(db);
  for (const { state } of rows.rows) found.set(aboutKey(state.about), state);
  return found;
}

/** See `EntryStore.summaries`. A movement is found by either of its ends. */
export async function summariesOf<T extends FoldedType>(
  db: Kysely<Tables>,
  type: T,
  where?: SummaryFilter,
): Promise<SummaryByType[T][]> {
  let query = db.selectFrom('combside.states').select('summary').where('entity_type', '=', type);
  for (const [field, value] of Object.entries(where ?? {}) as [keyof FilterColumns, string][]) {
    query =
      type === 'movement' && field === 'apiary'
        ? query.where((at) => at.or([at('apiary', '=', value), at('other_apiary', '=', value)]))
        : query.where(field, '=', storable(value));
  }
  return (await query.execute()).map((row) => row.summary as SummaryByType[T]);
}

/** See `EntryStore.stale`. */
export async function staleEntities(db: Kysely<Tables>, foldVersion: number, limit: number): Promise<About[]> {
  const rows = await db
    .selectFrom('combside.states')
    .select(['entity_type', 'entity_id'])
    .where('fold_version', '!=', foldVersion)
    .limit(limit)
    .execute();
  return rows.map((row) => ({ type: row.entity_type, id: row.entity_id }));
}
