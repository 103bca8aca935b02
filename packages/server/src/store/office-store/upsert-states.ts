import { aboutKey, type FoldedState } from '@combside/record/store';
import { type Kysely, sql } from 'kysely';
import { columnsOf, storable } from '../columns.ts';
import type { Tables } from '../tables.ts';

/** A state's row, and the rows it brings to the tables beside. */
type StateRows = ReturnType<typeof rowsOf>;

/** Keeps folded states with their columns, and the tables that the office's questions read beside them. */
export async function upsertStates(db: Kysely<Tables>, states: readonly FoldedState[]): Promise<void> {
  const newest = new Map(states.map((kept) => [aboutKey(kept.summary.about), kept]));
  const rows = [...newest.values()].map(rowsOf);
  await upsertStateRows(db, rows);
  await upsertVisitColonies(db, rows);
  await replaceExamined(db, rows);
  await replaceCombPhotographs(db, rows);
  await insertPhotographReferences(db, rows);
}

function rowsOf(kept: FoldedState) {
  const { visits, photographs, examined, combs, ...columns } = columnsOf(kept);
  const row = {
    entity_type: storable(kept.summary.about.type),
    entity_id: kept.summary.about.id,
    fold_version: kept.summary.foldVersion,
    state: JSON.stringify(kept.state),
    summary: JSON.stringify(kept.summary),
    ...columns,
  };
  return { row, visits, photographs, examined, combs };
}

async function upsertStateRows(db: Kysely<Tables>, rows: readonly StateRows[]): Promise<void> {
  await sql`
    insert into combside.states (entity_type, entity_id, fold_version, state, summary, district, keeper, apiary,
      inspector, other_apiary, merged_into, name, search, unsettled, place, happened_at, last_result)
    select r.entity_type, r.entity_id, r.fold_version, r.state::json, r.summary::json, r.district, r.keeper, r.apiary,
      r.inspector, r.other_apiary, r.merged_into, r.name, r.search, r.unsettled, r.place::point, r.happened_at, r.last_result
    from jsonb_to_recordset(${JSON.stringify(rows.map(({ row }) => row))}::jsonb) as r (entity_type text, entity_id uuid,
      fold_version integer, state text, summary text, district text, keeper uuid, apiary uuid, inspector uuid,
      other_apiary uuid, merged_into uuid, name text, search text, unsettled boolean, place text, happened_at timestamptz,
      last_result text)
    on conflict (entity_type, entity_id) do update set fold_version = excluded.fold_version, state = excluded.state,
      summary = excluded.summary, district = excluded.district, keeper = excluded.keeper, apiary = excluded.apiary,
      inspector = excluded.inspector, other_apiary = excluded.other_apiary, merged_into = excluded.merged_into,
      name = excluded.name, search = excluded.search, place = excluded.place,
      unsettled = excluded.unsettled, happened_at = excluded.happened_at, last_result = excluded.last_result`.execute(
    db,
  );
}

async function upsertVisitColonies(db: Kysely<Tables>, rows: readonly StateRows[]): Promise<void> {
  const visits = rows.flatMap(({ row, visits }) => visits.map((one) => ({ ...one, colony: row.entity_id })));
  if (visits.length === 0) return;
  await sql`
    insert into combside.visit_colonies (visit, colony, result)
    select r.visit, r.colony, r.result from jsonb_to_recordset(${JSON.stringify(visits)}::jsonb)
      as r (visit uuid, colony uuid, result text)
    on conflict (visit, colony) do update set result = excluded.result`.execute(db);
}

async function replaceExamined(db: Kysely<Tables>, rows: readonly StateRows[]): Promise<void> {
  const colonies = coloniesAmong(rows);
  if (colonies.length === 0) return;
  const looks = rows.flatMap(({ row, examined }) => examined.map((one) => ({ ...one, colony: row.entity_id })));
  await sql`delete from combside.examined where colony = any(${colonies}::uuid[])`.execute(db);
  await sql`
    insert into combside.examined (examination, colony, visit, apiary, observed_at, depth, hive_state, frames_seen,
      frames_held, result, suspected, basis, finds)
    select r.examination, r.colony, r.visit, r.apiary, r.observed_at, r.depth, r.hive_state, r.frames_seen,
      r.frames_held, r.result, r.suspected, r.basis, r.finds
    from jsonb_to_recordset(${JSON.stringify(looks)}::jsonb) as r (examination uuid, colony uuid, visit uuid,
      apiary uuid, observed_at timestamptz, depth text, hive_state text, frames_seen integer, frames_held integer,
      result text, suspected text[], basis text, finds text[])
    on conflict (examination) do nothing`.execute(db);
}

async function replaceCombPhotographs(db: Kysely<Tables>, rows: readonly StateRows[]): Promise<void> {
  const colonies = coloniesAmong(rows);
  if (colonies.length === 0) return;
  const combs = rows.flatMap(({ row, combs }) => combs.map((one) => ({ ...one, colony: row.entity_id })));
  await sql`delete from combside.comb_photographs where colony = any(${colonies}::uuid[])`.execute(db);
  await sql`
    insert into combside.comb_photographs (colony, hash, visit, apiary, taken_at, caption, accepted)
    select r.colony, r.hash, r.visit, r.apiary, r.taken_at, r.caption, r.accepted
    from jsonb_to_recordset(${JSON.stringify(combs)}::jsonb) as r (colony uuid, hash text, visit uuid, apiary uuid,
      taken_at timestamptz, caption text, accepted boolean)`.execute(db);
}

async function insertPhotographReferences(db: Kysely<Tables>, rows: readonly StateRows[]): Promise<void> {
  const references = rows.flatMap(({ row, photographs }) =>
    photographs.map((hash) => ({ hash, type: row.entity_type, id: row.entity_id })),
  );
  if (references.length === 0) return;
  await sql`
    insert into combside.photograph_references (hash, entity_type, entity_id)
    select r.hash, r.type, r.id from jsonb_to_recordset(${JSON.stringify(references)}::jsonb)
      as r (hash text, type text, id uuid)
    on conflict do nothing`.execute(db);
}

function coloniesAmong(rows: readonly StateRows[]): string[] {
  return rows.filter(({ row }) => row.entity_type === 'colony').map(({ row }) => row.entity_id);
}
