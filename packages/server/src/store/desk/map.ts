import type { MapAnswer, MapAsked, MapExtent, MapHeap, MapPoint } from '@combside/contract/map';
import { sql } from 'kysely';
import type { Database } from '../database.ts';
import { districtsAsked, type Rights } from '../rights.ts';
import { gravestResult, insideBox } from './apiaries.ts';
import { isSuspect } from './result-order.ts';

/** So many apiaries are still drawn one by one. */
const drawnSingly = 600;

/** A heap is so many pixels wide on the map. */
const heapPixels = 72;

/** Pixels of the whole world at zoom 0, as web maps draw it. */
const worldPixels = 512;

/** What lies in a window of the map: single apiaries where they are few, heaps where they are many. */
export async function mapWindow(database: Database, rights: Rights, asked: MapAsked): Promise<MapAnswer> {
  const here = sql`apiary.entity_type = 'apiary' and apiary.merged_into is null and apiary.name is not null
    and apiary.place is not null and ${granted(rights, asked.district)} and ${insideBox(asked.box)}`;
  const found = await sql<Omit<MapPoint, 'uncertaintyMetres'> & { summary: { uncertaintyMetres: number | null } }>`
    select apiary.entity_id as apiary, apiary.name, apiary.place[1] as latitude, apiary.place[0] as longitude,
      apiary.summary
    from combside.states apiary where ${here} limit ${drawnSingly + 1}`.execute(database.sql);
  if (found.rows.length <= drawnSingly) {
    const marks = await marksOf(
      database,
      found.rows.map((row) => row.apiary),
    );
    const points = found.rows.map(({ summary, ...row }) => ({
      ...row,
      uncertaintyMetres: summary.uncertaintyMetres,
      mark: marks.get(row.apiary) ?? null,
    }));
    return { points, heaps: [], apiaries: points.length };
  }
  const size = (360 * heapPixels) / (worldPixels * 2 ** asked.zoom);
  const heaps = await sql<MapHeap>`
    with suspect as materialized (select distinct colony.apiary from combside.states colony
      where colony.entity_type = 'colony' and ${isSuspect(sql`colony.last_result`)})
    select avg(apiary.place[1]) as latitude, avg(apiary.place[0]) as longitude, count(*)::int as apiaries,
      count(suspect.apiary)::int as suspect
    from combside.states apiary left join suspect on suspect.apiary = apiary.entity_id
    where ${here}
    group by floor(apiary.place[0] / ${size}::float8), floor(apiary.place[1] / ${size}::float8)`.execute(database.sql);
  return { points: [], heaps: heaps.rows, apiaries: heaps.rows.reduce((sum, heap) => sum + heap.apiaries, 0) };
}

/** The window that holds every apiary granted. */
export async function mapExtentOf(database: Database, rights: Rights): Promise<MapExtent> {
  const found = await sql<{
    west: number | null;
    south: number;
    east: number;
    north: number;
    unplaced: number;
  }>`
    select min(apiary.place[0]) as west, min(apiary.place[1]) as south, max(apiary.place[0]) as east,
      max(apiary.place[1]) as north, count(*) filter (where apiary.place is null)::int as unplaced
    from combside.states apiary
    where apiary.entity_type = 'apiary' and apiary.merged_into is null and apiary.name is not null
      and ${granted(rights, undefined)}`.execute(database.sql);
  const row = found.rows[0];
  if (!row || row.west === null) return { box: null, unplaced: row?.unplaced ?? 0 };
  const { west, south, east, north, unplaced } = row;
  return { box: { west, south, east, north }, unplaced };
}

async function marksOf(database: Database, apiaries: readonly string[]): Promise<Map<string, string | null>> {
  const found = await sql<{ apiary: string; mark: string | null }>`
    select apiary.entity_id as apiary, ${gravestResult} as mark from combside.states apiary
    where apiary.entity_type = 'apiary' and apiary.entity_id = any(${apiaries}::uuid[])`.execute(database.sql);
  return new Map(found.rows.map((row) => [row.apiary, row.mark]));
}

function granted(rights: Rights, district: string | undefined) {
  const districts = districtsAsked(rights, district);
  return districts === 'all' ? sql`true` : sql`apiary.district = any(${districts}::text[])`;
}
