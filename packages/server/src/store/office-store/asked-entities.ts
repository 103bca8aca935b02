import type { About } from '@combside/record/entry';
import { type RawBuilder, sql } from 'kysely';
import { storable } from '../columns.ts';

/** The entities asked for, as a table `asked (type, id)` of one parameter. */
export function askedEntities(abouts: readonly About[]): RawBuilder<unknown> {
  const rows = abouts.map(({ type, id }) => ({ type: storable(type), id }));
  return sql`(select distinct r.type, r.id from jsonb_to_recordset(${JSON.stringify(rows)}::jsonb)
    as r (type text, id uuid)) as asked`;
}

/** Each once: what is asked for twice is answered once. */
export function distinct(ids: readonly string[]): string[] {
  return [...new Set(ids)];
}
