import type { Apiaries, ApiariesAsked, ApiaryLine } from '@combside/contract/apiaries';
import type { ApiarySummary } from '@combside/record/summary';
import { type RawBuilder, sql } from 'kysely';
import type { Database } from '../database.ts';
import { ServerError } from '../errors.ts';
import { districtsAsked, type Rights } from '../rights.ts';
import { pageMark, patternAnywhere, readPageMark } from './paging.ts';
import { gravestFirst } from './result-order.ts';

interface Row {
  readonly summary: ApiarySummary;
  readonly name: string;
  readonly keeper_name: string | null;
  readonly mark: string | null;
}

/** The gravest word last stated about the colonies of `apiary`, a row of `combside.states`. */
export const gravestResult = sql<string | null>`(select colony.last_result from combside.states colony
  where colony.apiary = apiary.entity_id and colony.entity_type = 'colony' and colony.last_result is not null
  order by ${gravestFirst(sql`colony.last_result`)} limit 1)`;

const columns = sql`apiary.summary, apiary.name, (select keeper.name from combside.states keeper
  where keeper.entity_type = 'keeper' and keeper.entity_id = apiary.keeper) as keeper_name, ${gravestResult} as mark`;

/** Apiaries by name, a page at a time; every filter has an index, so a quarter of a million stay usable. */
export async function apiariesListed(database: Database, rights: Rights, asked: ApiariesAsked): Promise<Apiaries> {
  const districts = districtsAsked(rights, asked.district);
  const conditions: RawBuilder<unknown>[] = [sql`apiary.entity_type = 'apiary'`, sql`apiary.merged_into is null`];
  if (districts !== 'all') {
    conditions.push(
      districts.length === 1
        ? sql`apiary.district = ${districts[0]}`
        : sql`apiary.district = any(${districts}::text[])`,
    );
  }
  const search = asked.search?.trim();
  if (search) {
    const pattern = patternAnywhere(search);
    conditions.push(sql`(apiary.search ilike ${pattern} or apiary.keeper = any(array(
      select keeper.entity_id from combside.states keeper
      where keeper.entity_type = 'keeper' and keeper.search ilike ${pattern} limit 1000)))`);
  }
  if (asked.box) conditions.push(insideBox(asked.box));
  const mark = readPageMark(asked.after, 2);
  if (mark) conditions.push(sql`(apiary.name, apiary.entity_id) > (${mark[0]}, ${mark[1]}::uuid)`);

  const found = await sql<Row>`
    select ${columns} from combside.states apiary where ${sql.join(conditions, sql` and `)}
    order by apiary.name, apiary.entity_id limit ${asked.limit + 1}`.execute(database.sql);
  const rows = found.rows.slice(0, asked.limit);
  const last = rows.at(-1);
  return {
    apiaries: rows.map(lineOf),
    next: found.rows.length > asked.limit && last ? pageMark([last.name, last.summary.about.id]) : null,
  };
}

/** Apiaries of one keeper that may be read, by name. */
export async function apiariesOfKeeper(database: Database, rights: Rights, keeper: string): Promise<ApiaryLine[]> {
  const readable =
    rights.districts === 'all' ? sql`true` : sql`apiary.district = any(${[...rights.districts]}::text[])`;
  const found = await sql<Row>`
    select ${columns} from combside.states apiary
    where apiary.entity_type = 'apiary' and apiary.keeper = ${keeper}::uuid and apiary.merged_into is null and ${readable}
    order by apiary.name, apiary.entity_id`.execute(database.sql);
  return found.rows.map(lineOf);
}

/** One line, or null where the apiary's own entry has not arrived. Rights are the caller's to check. */
export async function apiaryLineOf(database: Database, apiary: string): Promise<ApiaryLine | null> {
  const found = await sql<Row>`
    select ${columns} from combside.states apiary
    where apiary.entity_type = 'apiary' and apiary.entity_id = ${apiary}::uuid`.execute(database.sql);
  const row = found.rows[0];
  return row && row.summary.district !== null ? lineOf(row) : null;
}

/** Lines of those that are known, by identifier. Rights are the caller's to check. */
export async function apiaryLinesOf(database: Database, apiaries: readonly string[]): Promise<Map<string, ApiaryLine>> {
  const found = await sql<Row>`
    select ${columns} from combside.states apiary
    where apiary.entity_type = 'apiary' and apiary.entity_id = any(${[...new Set(apiaries)]}::uuid[])`.execute(
    database.sql,
  );
  return new Map(
    found.rows.filter((row) => row.summary.district !== null).map((row) => [row.summary.about.id, lineOf(row)]),
  );
}

function lineOf(row: Row): ApiaryLine {
  const { summary } = row;
  return {
    apiary: summary.about.id,
    name: summary.name,
    number: summary.number,
    district: summary.district ?? '',
    keeper: summary.keeper,
    keeperName: row.keeper_name,
    latitude: summary.latitude,
    longitude: summary.longitude,
    uncertaintyMetres: summary.uncertaintyMetres,
    lastConfirmedOn: summary.lastConfirmedOn,
    coloniesRegistered: summary.coloniesRegistered,
    mark: row.mark,
  };
}

/** Apiaries whose position lies in a box `west,south,east,north`. @throws ServerError `bad-request` */
export function insideBox(text: string): RawBuilder<unknown> {
  const [west, south, east, north] = text.split(',').map(Number) as [number, number, number, number];
  if (south > north) throw new ServerError('bad-request', 'box: south lies north of north');
  const part = (from: number, to: number): RawBuilder<unknown> =>
    sql`apiary.place <@ box(point(${from}, ${south}), point(${to}, ${north}))`;
  return west <= east ? part(west, east) : sql`(${part(west, 180)} or ${part(-180, east)})`;
}
