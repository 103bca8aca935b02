import { dayOf } from '@combside/calendar/instant';
import type { ExaminedRow, Registered } from '@combside/casework/programme/examined';
import { type Figure, programmeFigures } from '@combside/casework/programme/figures';
import type { FigureRecords, FigureRecordsAsked, Figures, FiguresAsked } from '@combside/contract/figures';
import type { VisitSummary } from '@combside/record/summary';
import { sql } from 'kysely';
import type { Database } from '../database.ts';
import { newestArrival } from '../newest-arrival.ts';
import { districtsAsked, type Rights } from '../rights.ts';
import { isResult } from './result-order.ts';

/** Records shown behind one number. */
const recordsShown = 5000;

/** The programme's figures of a period, as casework counts them. */
export async function figuresCounted(
  database: Database,
  rights: Rights,
  asked: FiguresAsked,
  now: string,
): Promise<Figures> {
  const position = await newestArrival(database);
  const { figures } = await counted(database, rights, asked);
  return {
    figures: figures.map(({ examinations: _, id, ...figure }) => ({ id: [...id], ...figure })),
    from: asked.from,
    to: asked.to,
    countedAt: now,
    position,
  };
}

/** The examinations behind one number; none where no number has that id. */
export async function figureRecordsListed(
  database: Database,
  rights: Rights,
  asked: FigureRecordsAsked,
): Promise<FigureRecords> {
  const { figures, rows } = await counted(database, rights, asked);
  const behind = new Set(figures.find((one) => one.id.join('|') === asked.figure)?.examinations);
  const records = rows.filter((row) => behind.has(row.examination));
  return {
    count: records.length,
    records: records.slice(0, recordsShown).map((row) => ({
      examination: row.examination,
      colony: row.colony,
      colonyLabel: row.colony_label,
      visit: row.visit,
      apiary: row.apiary,
      apiaryName: row.apiary_name,
      observedAt: row.observed_at?.toISOString() ?? null,
      depth: row.depth,
      hiveState: row.hive_state,
      reason: row.visit_summary?.reason ?? null,
      result: row.result,
      suspected: row.suspected,
      basis: row.basis,
    })),
  };
}

interface Row {
  readonly examination: string;
  readonly colony: string;
  readonly colony_label: string | null;
  readonly visit: string;
  readonly visit_summary: VisitSummary | null;
  readonly apiary: string;
  readonly apiary_name: string | null;
  readonly keeper: string | null;
  readonly observed_at: Date | null;
  readonly depth: string;
  readonly hive_state: string;
  readonly result: string | null;
  readonly suspected: string[];
  readonly basis: string | null;
  readonly finds: string[];
}

async function counted(
  database: Database,
  rights: Rights,
  asked: FiguresAsked,
): Promise<{ figures: readonly Figure[]; rows: readonly Row[] }> {
  const districts = districtsAsked(rights, asked.district);
  const here = districts === 'all' ? sql`true` : sql`apiary.district = any(${districts}::text[])`;
  // A suspicion that remains names no disease anew: it is counted under the disease named before.
  const found = await sql<Row>`
    select seen.examination, seen.colony, colony.name as colony_label, seen.visit, visit.summary as visit_summary,
      seen.apiary, apiary.name as apiary_name, apiary.keeper, seen.observed_at, seen.depth, seen.hive_state,
      seen.result, seen.basis, seen.finds,
      case when ${isResult(sql`seen.result`, ['remains suspect'])} and cardinality(seen.suspected) = 0 then coalesce((
        select before.suspected from combside.examined before
        where before.colony = seen.colony and before.observed_at <= seen.observed_at
          and cardinality(before.suspected) > 0
        order by before.observed_at desc limit 1), '{}') else seen.suspected end as suspected
    from combside.examined seen
    join combside.states apiary on apiary.entity_type = 'apiary' and apiary.entity_id = seen.apiary
    left join combside.states colony on colony.entity_type = 'colony' and colony.entity_id = seen.colony
    left join combside.states visit on visit.entity_type = 'visit' and visit.entity_id = seen.visit
    where ${here} and seen.observed_at >= ${asked.from}::date and seen.observed_at < ${asked.to}::date + 1
    order by seen.observed_at, seen.examination`.execute(database.sql);
  const keeperOf = new Map(found.rows.flatMap((row) => (row.keeper === null ? [] : [[row.apiary, row.keeper]])));
  const register = await sql<Omit<Registered, 'keeperOf'>>`
    select count(*)::int as apiaries, count(distinct apiary.keeper)::int as keepers,
      (select count(*) from combside.states colony join combside.states apiary
        on apiary.entity_type = 'apiary' and apiary.entity_id = colony.apiary
        where colony.entity_type = 'colony' and ${here} and colony.summary->>'hiveState' <> 'gone')::int as colonies
    from combside.states apiary
    where apiary.entity_type = 'apiary' and apiary.merged_into is null and apiary.name is not null
      and ${here}`.execute(database.sql);
  const registered = register.rows[0] ?? { apiaries: 0, keepers: 0, colonies: 0 };
  return {
    figures: programmeFigures(found.rows.flatMap(asExamined), {
      ...registered,
      keeperOf: keeperOf as Map<string, string>,
    }),
    rows: found.rows,
  };
}

function asExamined(row: Row): ExaminedRow[] {
  if (!row.observed_at) return [];
  return [
    {
      examination: row.examination,
      colony: row.colony,
      apiary: row.apiary,
      visit: row.visit,
      on: dayOf(row.observed_at.toISOString()),
      depth: row.depth,
      reason: row.visit_summary?.reason ?? null,
      result: row.result,
      suspected: row.suspected,
      basis: row.basis,
      finds: row.finds,
    },
  ];
}
