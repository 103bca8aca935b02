import { millisecondsOf } from '@combside/calendar/instant';
import { type VisitBody, visit } from '@combside/record/kinds/visit';
import type { ApiaryState, VisitState } from '@combside/record/states';
import { type Act, done, refused } from '../act.ts';
import { seen } from '../register/seen.ts';
import { visitReasons } from '../vocabulary.ts';

/** One line of Today. */
export interface TodayVisit {
  readonly visit: string;
  readonly apiary: string;
  readonly name: string;
  readonly addressWords: string;
  readonly reason: string;
  readonly plannedFor: string | null;
  readonly startedAt: string | null;
  /** `running`: begun and not ended; `late`: planned for a day that has passed; `today`, `later`: as planned. */
  readonly state: 'running' | 'late' | 'today' | 'later';
  readonly coloniesRegistered: number | null;
}

/** The edges of the inspector's own day, as instants, worked out by the edge that knows the time zone. */
export interface DayEdges {
  readonly start: string;
  readonly end: string;
}

/**
 * The visits an inspector still has to make: running ones first, then late ones, then by the hour planned. Ended visits
 * are not in it.
 */
export function visitsToMake({
  visits,
  apiaries,
  inspector,
  day,
}: {
  readonly visits: readonly VisitState[];
  readonly apiaries: readonly ApiaryState[];
  readonly inspector: string;
  readonly day: DayEdges;
}): TodayVisit[] {
  const places = new Map(apiaries.map((one) => [one.about.id, one.apiary.current?.body ?? null]));
  const start = millisecondsOf(day.start);
  const end = millisecondsOf(day.end);
  const rank = { running: 0, late: 1, today: 2, later: 3 };
  return visits
    .flatMap((one): TodayVisit[] => {
      const body = one.visit.current?.body;
      if (!body || body.inspector !== inspector || body.endedAt !== null) return [];
      if (body.startedAt === null && body.plannedFor === null) return [];
      const planned = body.plannedFor === null ? start : millisecondsOf(body.plannedFor);
      const place = places.get(body.apiary) ?? null;
      return [
        {
          visit: one.about.id,
          apiary: body.apiary,
          name: place?.name ?? '',
          addressWords: place?.addressWords ?? '',
          reason: body.reason,
          plannedFor: body.plannedFor,
          startedAt: body.startedAt,
          state: body.startedAt !== null ? 'running' : planned < start ? 'late' : planned < end ? 'today' : 'later',
          coloniesRegistered: place?.coloniesRegistered ?? null,
        },
      ];
    })
    .sort(
      (a, b) =>
        rank[a.state] - rank[b.state] ||
        compare(a.plannedFor ?? '', b.plannedFor ?? '') ||
        compare(a.name, b.name) ||
        compare(a.visit, b.visit),
    );
}

export interface PlanVisit {
  readonly visit: string;
  /** The visit as it stands, when it is planned anew. */
  readonly planned: VisitState | null;
  readonly apiary: ApiaryState;
  readonly inspector: string;
  readonly reason: string;
  readonly plannedFor: string;
}

/** Plans a visit, or plans it anew. Refused for an unknown place or reason, and once the visit has begun. */
export function planVisit(input: PlanVisit): Act {
  if (!input.apiary.apiary.current) return refused('casework.refused.not-in-register');
  if (!(visitReasons as readonly string[]).includes(input.reason)) {
    return refused('casework.refused.unknown-reason', { reason: input.reason });
  }
  const before = input.planned?.visit.current?.body;
  if (before?.endedAt) return refused('casework.refused.visit-ended');
  if (before?.startedAt) return refused('casework.refused.visit-running');
  const body: VisitBody = {
    apiary: input.apiary.about.id,
    inspector: input.inspector,
    reason: input.reason,
    // By what right the inspector is there is known only on arrival; until then the keeper is taken to consent.
    power: 'consent',
    plannedFor: input.plannedFor,
    startedAt: null,
    endedAt: null,
    coloniesCounted: null,
    warnings: [],
    temperatureCelsius: null,
    leftOpen: [],
  };
  return done([
    {
      kind: visit.kind,
      version: visit.version,
      about: { type: 'visit', id: input.visit },
      body,
      replaces: input.planned ? seen(input.planned.visit) : [],
    },
  ]);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
