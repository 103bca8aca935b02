import type { VisitLine, Visits, VisitsAsked } from '@combside/contract/visits';
import type { VisitSummary } from '@combside/record/summary';
import { type RawBuilder, sql } from 'kysely';
import type { Database } from '../database.ts';
import { districtsAsked, type Rights } from '../rights.ts';
import { pageMark, readPageMark } from './paging.ts';
import { apiaryIn } from './register-search.ts';
import { visitsWorded } from './visits-worded.ts';

interface Row {
  readonly summary: VisitSummary;
  readonly happened_at: Date | null;
  readonly apiary_name: string | null;
  readonly district: string | null;
  readonly inspector_name: string | null;
  readonly results: VisitLine['results'] | null;
}

/** Visits, newest first, a page at a time. One to a site not known yet is shown to its inspector and to whoever sees all. */
export async function visitsListed(
  database: Database,
  rights: Rights,
  asked: VisitsAsked,
  which: 'all' | 'not ended' = 'all',
): Promise<Visits> {
  const districts = districtsAsked(rights, asked.district);
  const conditions: RawBuilder<unknown>[] = [sql`visit.entity_type = 'visit'`, sql`visit.inspector is not null`];
  if (districts !== 'all') {
    const inDistrict = sql`apiary.district = any(${districts}::text[])`;
    conditions.push(
      asked.district === undefined
        ? sql`(${inDistrict} or (apiary.district is null and visit.inspector = ${rights.person}::uuid))`
        : inDistrict,
    );
  }
  if (which === 'not ended') conditions.push(sql`visit.summary->>'endedAt' is null`);
  if (asked.inspector) conditions.push(sql`visit.inspector = ${asked.inspector}::uuid`);
  if (asked.apiary) conditions.push(sql`visit.apiary = ${asked.apiary}::uuid`);
  if (asked.from) conditions.push(sql`visit.happened_at >= ${asked.from}::timestamptz`);
  if (asked.to) conditions.push(sql`visit.happened_at < ${asked.to}::timestamptz`);
  if (asked.text !== undefined) {
    const worded = await visitsWorded(database, asked.text, apiaryIn(districts));
    if (worded === null) return { visits: [], next: null };
    conditions.push(worded);
  }
  if (asked.results) {
    conditions.push(sql`exists (select 1 from combside.visit_colonies seen
      where seen.visit = visit.entity_id and seen.result = any(${asked.results.split('|')}::text[]))`);
  }
  const mark = readPageMark(asked.after, 2);
  if (mark) {
    const [at, id] = mark;
    conditions.push(
      at === null
        ? sql`(visit.happened_at is null and visit.entity_id < ${id}::uuid)`
        : sql`(visit.happened_at is null or (visit.happened_at, visit.entity_id) < (${at}::timestamptz, ${id}::uuid))`,
    );
  }
  const found = await sql<Row>`
    select visit.summary, visit.happened_at, apiary.name as apiary_name, apiary.district,
      (select people.name from combside.people where people.person = visit.inspector) as inspector_name,
      (select json_agg(counted order by counted.result) from (
        select coalesce(seen.result, 'not assessed') as result, count(*)::int as colonies
        from combside.visit_colonies seen where seen.visit = visit.entity_id group by 1) as counted) as results
    from combside.states visit
    left join combside.states apiary on apiary.entity_type = 'apiary' and apiary.entity_id = visit.apiary
    where ${sql.join(conditions, sql` and `)}
    order by visit.happened_at desc nulls last, visit.entity_id desc limit ${asked.limit + 1}`.execute(database.sql);
  const rows = found.rows.slice(0, asked.limit);
  const last = rows.at(-1);
  return {
    visits: rows.flatMap(lineOf),
    next:
      found.rows.length > asked.limit && last
        ? pageMark([last.happened_at?.toISOString() ?? null, last.summary.about.id])
        : null,
  };
}

function lineOf(row: Row): VisitLine[] {
  const { summary } = row;
  if (summary.apiary === null || summary.inspector === null || summary.reason === null) return [];
  const results = row.results ?? [];
  return [
    {
      visit: summary.about.id,
      apiary: summary.apiary,
      apiaryName: row.apiary_name,
      district: row.district,
      inspector: summary.inspector,
      inspectorName: row.inspector_name,
      reason: summary.reason,
      plannedFor: summary.plannedFor,
      startedAt: summary.startedAt,
      endedAt: summary.endedAt,
      colonies: results.reduce((sum, one) => sum + one.colonies, 0),
      results,
    },
  ];
}
