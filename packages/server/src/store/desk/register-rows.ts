import type { RegisterRows, RegisterRowsAsked } from '@combside/contract/register-rows';
import { foldVersion, mergedInto } from '@combside/record/fold';
import { openReader } from '@combside/record/reader';
import type { ApiaryState, KeeperState } from '@combside/record/states';
import { sql } from 'kysely';
import type { Database } from '../database.ts';
import { openOfficeStore } from '../office-store/open-office-store.ts';
import { districtsAsked, type Rights } from '../rights.ts';
import { pageMark, readPageMark } from './paging.ts';
import { apiaryIn, keeperIn } from './register-search.ts';

/** The register as it stands, by identifier, a page at a time: for import, export and the search for duplicates. */
export async function registerRowsListed(
  database: Database,
  rights: Rights,
  asked: RegisterRowsAsked,
): Promise<RegisterRows> {
  const districts = districtsAsked(rights, asked.district);
  const mark = readPageMark(asked.after, 1);
  const readable = asked.type === 'apiary' ? apiaryIn(districts) : keeperIn(districts);
  const found = await sql<{ entity_id: string; fold_version: number; state: ApiaryState | KeeperState }>`
    select state.entity_id, state.fold_version, state.state from combside.states state
    where state.entity_type = ${asked.type} and ${readable}
      and (${mark?.[0] ?? null}::uuid is null or state.entity_id > ${mark?.[0] ?? null}::uuid)
    order by state.entity_id limit ${asked.limit + 1}`.execute(database.sql);
  const page = found.rows.slice(0, asked.limit);
  const reader = openReader(openOfficeStore(database));
  const rows: RegisterRows['rows'] = [];
  for (const { entity_id, fold_version, state: kept } of page) {
    const state =
      fold_version === foldVersion
        ? kept
        : ((await reader.state({ type: asked.type, id: entity_id })) as ApiaryState | KeeperState | null);
    const row = state && rowOf(state);
    if (row) rows.push(row);
  }
  const last = page.at(-1);
  return { rows, next: found.rows.length > asked.limit && last ? pageMark([last.entity_id]) : null };
}

function rowOf(state: ApiaryState | KeeperState): RegisterRows['rows'][number] | null {
  const apart = state.merges.filter(({ body }) => body.verdict === 'two').map(({ body }) => body.other);
  const base = { id: state.about.id, notTheSame: [...new Set(apart)] };
  if ('apiary' in state) {
    const { current, contested } = state.apiary;
    if (!current) return null;
    const standing = [current, ...contested].map(({ written }) => written.entry);
    return { ...base, type: 'apiary', standing, mergedInto: mergedInto(state), body: current.body };
  }
  const { current, contested } = state.keeper;
  if (!current) return null;
  const standing = [current, ...contested].map(({ written }) => written.entry);
  return { ...base, type: 'keeper', standing, mergedInto: mergedInto(state), body: current.body };
}
