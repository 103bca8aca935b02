import { chanceToFindOne, coloniesToOpen } from '@combside/casework/plan/colonies-to-open';
import { openingRule } from '@combside/casework/plan/opening-rules';
import { planningWith } from '@combside/casework/plan/planning-settings';
import {
  type ApiaryToRank,
  type CaseSite,
  type MovementBetween,
  type RankedApiary,
  rankApiaries,
} from '@combside/casework/plan/rank-apiaries';
import type { Planning, PlanningAsked, RankedLine } from '@combside/contract/planning';
import type { Pack } from '@combside/law/pack';
import type { ApiarySummary, ColonySummary, MovementSummary, VisitSummary } from '@combside/record/summary';
import { sql } from 'kysely';
import type { Database } from '../database.ts';
import { newestArrival } from '../newest-arrival.ts';
import { districtsAsked, type Rights } from '../rights.ts';
import { apiaryLinesOf } from './apiaries.ts';
import { isResult, isSuspect } from './result-order.ts';

interface Site {
  readonly id: string;
  readonly summary: ApiarySummary;
  readonly last_visited: string | null;
}

/**
 * Apiaries by how much speaks for a visit, the first of them in full. Cases and movements count as far as they may be
 * read: a case in a district that is not granted adds nothing.
 */
export async function planningListed(
  database: Database,
  rights: Rights,
  asked: PlanningAsked,
  { pack, today }: { readonly pack: Pack; readonly today: string },
): Promise<Planning> {
  const position = await newestArrival(database);
  const districts = districtsAsked(rights, asked.district);
  const all = districts === 'all';
  const inDistricts = all ? sql`true` : sql`apiary.district = any(${districts}::text[])`;
  const sites = await sql<Site>`
    select apiary.entity_id as id, apiary.summary, looked.last_visited
    from combside.states apiary
    left join (select seen.apiary, to_char(max(seen.observed_at) at time zone 'UTC', 'YYYY-MM-DD') as last_visited
      from combside.examined seen group by seen.apiary) looked on looked.apiary = apiary.entity_id
    where apiary.entity_type = 'apiary' and apiary.merged_into is null and apiary.name is not null
      and ${inDistricts}`.execute(database.sql);
  const cases = await casesIn(database, rights, pack);
  const open = await openVisits(database);
  const settings = planningWith(asked.weights?.split(',').map(Number) ?? [], asked.sensitivity);
  const ranked = rankApiaries({
    apiaries: sites.rows.map((site) => toRank(site, open)),
    cases,
    movements: await movementsAt(
      database,
      cases.map((one) => one.apiary),
    ),
    settings,
    today,
  });
  const first = ranked.slice(0, asked.limit);
  const visited = new Map(sites.rows.map((site) => [site.id, site.last_visited]));
  const rule = openingRule(asked.rule ?? '');
  const suspects = new Set(cases.map((one) => one.apiary));
  const standing = await coloniesAt(
    database,
    first.map((one) => one.apiary),
  );
  const lines = await apiaryLinesOf(database, [
    ...first.map((one) => one.apiary),
    ...first.flatMap((one) => one.grounds.flatMap((ground) => ground.from ?? [])),
  ]);
  const apiaries = first.flatMap((one): RankedLine[] => {
    const line = lines.get(one.apiary);
    if (!line) return [];
    const colonies = standing.get(one.apiary) ?? line.coloniesRegistered ?? 0;
    const suspect = suspects.has(one.apiary);
    const toOpen = coloniesToOpen(rule, colonies, suspect);
    const here = open.get(one.apiary) ?? [];
    return [
      {
        ...line,
        points: one.points,
        grounds: groundsNamed(one, (id) => lines.get(id)?.name ?? null),
        lastVisitedOn: visited.get(one.apiary) ?? null,
        colonies,
        suspect,
        toOpen,
        chance: chanceToFindOne(colonies, toOpen, settings.lookSensitivity.value),
        planned: here.flatMap(({ summary, inspectorName }) =>
          summary.plannedFor === null
            ? []
            : [
                {
                  visit: summary.about.id,
                  inspectorName,
                  plannedFor: summary.plannedFor,
                  reason: summary.reason ?? '',
                },
              ],
        ),
        asked: here.flatMap(({ summary }) =>
          summary.plannedFor === null ? [{ visit: summary.about.id, reason: summary.reason ?? '' }] : [],
        ),
      },
    ];
  });
  return { apiaries, ranked: ranked.length, today, position };
}

function groundsNamed(one: RankedApiary, nameOf: (id: string) => string | null): RankedLine['grounds'] {
  return one.grounds.map((ground) => ({ ...ground, fromName: ground.from === null ? null : nameOf(ground.from) }));
}

function toRank({ id, summary, last_visited }: Site, open: ReadonlyMap<string, readonly OpenVisit[]>): ApiaryToRank {
  const { latitude, longitude } = summary;
  const reasons = (open.get(id) ?? []).flatMap((one) => (one.summary.plannedFor === null ? one.summary.reason : []));
  return {
    apiary: id,
    position: latitude === null || longitude === null ? null : { latitude, longitude },
    keeper: summary.keeper,
    lastVisitedOn: last_visited,
    lastConfirmedOn: summary.lastConfirmedOn,
    asked: [
      ...(reasons.includes('suspicion reported') ? (['suspicion reported'] as const) : []),
      ...(reasons.some((one) => one !== 'suspicion reported') ? (['request'] as const) : []),
    ],
  };
}

/** Apiaries in which a suspicion of a notifiable disease was stated. One that remains names its disease no more. */
async function casesIn(database: Database, rights: Rights, pack: Pack): Promise<CaseSite[]> {
  const notifiable = pack.notifiable.map((one) => one.condition);
  const districts = rights.districts;
  const found = await sql<{ id: string; summary: ApiarySummary; since: string; last_on: string }>`
    select apiary.entity_id as id, apiary.summary, stated.since, stated.last_on
    from (select seen.apiary, to_char(min(seen.observed_at) at time zone 'UTC', 'YYYY-MM-DD') as since,
        to_char(max(seen.observed_at) at time zone 'UTC', 'YYYY-MM-DD') as last_on
      from combside.examined seen
      where ${isSuspect(sql`seen.result`)} and seen.observed_at is not null
        and (${isResult(sql`seen.result`, ['remains suspect'])} or seen.suspected && ${notifiable}::text[])
      group by seen.apiary) stated
    join combside.states apiary on apiary.entity_type = 'apiary' and apiary.entity_id = stated.apiary
    where ${districts === 'all' ? sql`true` : sql`apiary.district = any(${districts}::text[])`}`.execute(database.sql);
  return found.rows.map(({ id, summary, since, last_on }) => ({
    apiary: id,
    position:
      summary.latitude === null || summary.longitude === null
        ? null
        : { latitude: summary.latitude, longitude: summary.longitude },
    keeper: summary.keeper,
    since,
    lastOn: last_on,
  }));
}

interface OpenVisit {
  readonly summary: VisitSummary;
  readonly inspectorName: string | null;
}

/** Visits that were planned or asked for and have not begun, by apiary. */
async function openVisits(database: Database): Promise<Map<string, OpenVisit[]>> {
  const found = await sql<{ summary: VisitSummary; inspector_name: string | null }>`
    select visit.summary, (select people.name from combside.people where people.person = visit.inspector)
      as inspector_name
    from combside.states visit
    where visit.entity_type = 'visit' and visit.inspector is not null and visit.summary->>'startedAt' is null
      and visit.summary->>'endedAt' is null
    order by visit.happened_at nulls last, visit.entity_id`.execute(database.sql);
  const byApiary = new Map<string, OpenVisit[]>();
  for (const { summary, inspector_name } of found.rows) {
    if (summary.apiary === null) continue;
    const here = byApiary.get(summary.apiary) ?? [];
    here.push({ summary, inspectorName: inspector_name });
    byApiary.set(summary.apiary, here);
  }
  return byApiary;
}

async function movementsAt(database: Database, apiaries: readonly string[]): Promise<MovementBetween[]> {
  if (apiaries.length === 0) return [];
  const found = await sql<{ summary: MovementSummary }>`
    select move.summary from combside.states move
    where move.entity_type = 'movement'
      and (move.apiary = any(${apiaries}::uuid[]) or move.other_apiary = any(${apiaries}::uuid[]))`.execute(
    database.sql,
  );
  return found.rows.flatMap(({ summary: { from, to, latest, happened } }) =>
    happened === false || from === null || to === null || latest === null ? [] : [{ from, to, latest }],
  );
}

/** Hives that stand at each apiary, as far as they are known one by one. */
async function coloniesAt(database: Database, apiaries: readonly string[]): Promise<Map<string, number>> {
  const found = await sql<{ apiary: string; summary: ColonySummary }>`
    select apiary, summary from combside.states
    where entity_type = 'colony' and apiary = any(${apiaries}::uuid[])`.execute(database.sql);
  const counts = new Map<string, number>();
  for (const { apiary, summary } of found.rows) {
    if (summary.hiveState !== 'gone') counts.set(apiary, (counts.get(apiary) ?? 0) + 1);
  }
  return counts;
}
