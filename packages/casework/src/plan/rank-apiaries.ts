import { daysBetween } from '@combside/calendar/instant';
import { metresBetween, type Point } from '../register/distance.ts';
import { type PlanningSettings, type VisitGround, visitGrounds } from './planning-settings.ts';

/** What planning knows of one apiary. */
export interface ApiaryToRank {
  readonly apiary: string;
  /** Null where the position is not known: then no distance counts. */
  readonly position: Point | null;
  readonly keeper: string | null;
  /** Day on which an inspector was last there; null when nobody ever was. */
  readonly lastVisitedOn: string | null;
  readonly lastConfirmedOn: string | null;
  /** What was asked for and has no day yet. */
  readonly asked: readonly ('suspicion reported' | 'request')[];
}

/** An apiary in which a suspicion of a notifiable disease was stated, and has not been lifted. */
export interface CaseSite {
  readonly apiary: string;
  readonly position: Point | null;
  readonly keeper: string | null;
  /** Day of the oldest and of the newest look that stated it. */
  readonly since: string;
  readonly lastOn: string;
}

/** Bees or combs that went between two apiaries, with the last day on which it can have been. */
export interface MovementBetween {
  readonly from: string;
  readonly to: string;
  readonly latest: string;
}

/** One ground as it holds here: how far (0 to 1), what it adds, and what it rests on. */
export interface GroundHeld {
  readonly ground: VisitGround;
  readonly held: number;
  readonly points: number;
  /** The other apiary that it comes from; null where it comes from none. */
  readonly from: string | null;
  readonly metres: number | null;
  readonly days: number | null;
}

export interface RankedApiary {
  readonly apiary: string;
  readonly points: number;
  /** Those that add something, heaviest first. */
  readonly grounds: readonly GroundHeld[];
}

/** What a ranking is made from. */
export interface ApiariesToRank {
  readonly apiaries: readonly ApiaryToRank[];
  readonly cases: readonly CaseSite[];
  readonly movements: readonly MovementBetween[];
  readonly settings: PlanningSettings;
  /** The day it is, YYYY-MM-DD. */
  readonly today: string;
}

/**
 * Apiaries by how much speaks for a visit, each with the grounds it got its points by.
 *
 * Distance: in full at the site, nothing at the setting's radius, in proportion between; the nearest case counts. Owner
 * link: another apiary of the same keeper is a case. Trade: a movement to or from a case, from the look-back before its
 * suspicion until today. Time since the last visit grows in proportion; never visited counts in full. An apiary that is
 * a case itself gets no points from its own suspicion: what is owed there is a duty, not a matter of ranking.
 *
 * @returns most points first, equals by identifier
 * @throws RangeError when a day cannot be read
 */
export function rankApiaries({ apiaries, cases, movements, settings, today }: ApiariesToRank): RankedApiary[] {
  const live = cases.filter((one) => daysBetween(one.lastOn, today) <= settings.caseWithinDays.value);
  const near = nearestOf(live, settings.caseWithinMetres.value);
  const casesOfKeeper = groupBy(live, (one) => one.keeper);
  const traded = tradeLinks(live, movements, settings.tradeWithinDays.value);
  return apiaries
    .map((one): RankedApiary => {
      const found = new Map<VisitGround, Omit<GroundHeld, 'ground' | 'points'>>();
      const nothing = { from: null, metres: null, days: null };
      for (const asked of one.asked) found.set(asked, { ...nothing, held: 1 });

      const nearest = near(one);
      if (nearest) {
        const held = 1 - nearest.metres / settings.caseWithinMetres.value;
        found.set('case nearby', { held, from: nearest.apiary, metres: nearest.metres, days: null });
      }
      const linked = one.keeper === null ? undefined : other(casesOfKeeper.get(one.keeper), one.apiary);
      if (linked) found.set('owner link', { ...nothing, held: 1, from: linked.apiary });
      const partner = traded.get(one.apiary);
      if (partner !== undefined) {
        found.set('trade', { held: 1, from: partner.with, metres: null, days: daysBetween(partner.on, today) });
      }
      const days = one.lastVisitedOn === null ? null : daysBetween(one.lastVisitedOn, today);
      const rest = days === null ? 1 : Math.min(1, Math.max(0, days) / settings.visitWithinDays.value);
      found.set('time since last visit', { ...nothing, held: rest, days });
      const confirmed = one.lastConfirmedOn === null ? null : daysBetween(one.lastConfirmedOn, today);
      if (confirmed === null || confirmed > settings.confirmedWithinDays.value) {
        found.set('unconfirmed site', { ...nothing, held: 1, days: confirmed });
      }

      const grounds = visitGrounds
        .flatMap((ground): GroundHeld[] => {
          const held = found.get(ground);
          return held ? [{ ground, ...held, points: held.held * settings.weights[ground].value }] : [];
        })
        .filter((held) => held.points > 0)
        .sort((a, b) => b.points - a.points);
      return { apiary: one.apiary, points: grounds.reduce((sum, held) => sum + held.points, 0), grounds };
    })
    .sort((a, b) => b.points - a.points || (a.apiary < b.apiary ? -1 : 1));
}

function other(sites: readonly CaseSite[] | undefined, apiary: string): CaseSite | undefined {
  return sites?.find((site) => site.apiary !== apiary);
}

/** Cases lie sorted by latitude, so that only those in a narrow band are measured. */
function nearestOf(cases: readonly CaseSite[], radius: number) {
  const placed = cases
    .flatMap((one) => (one.position ? [{ apiary: one.apiary, position: one.position }] : []))
    .sort((a, b) => a.position.latitude - b.position.latitude);
  const latitudes = placed.map((one) => one.position.latitude);
  // A degree of latitude is 111.2 km on the sphere that distances are measured on.
  const band = radius / 111_000;
  return ({ apiary, position }: ApiaryToRank): { apiary: string; metres: number } | null => {
    if (!position) return null;
    let best: { apiary: string; metres: number } | null = null;
    for (let at = firstAtLeast(latitudes, position.latitude - band); at < placed.length; at += 1) {
      const one = placed[at] as (typeof placed)[number];
      if (one.position.latitude > position.latitude + band) break;
      if (one.apiary === apiary) continue;
      const metres = metresBetween(position, one.position);
      if (metres < radius && (best === null || metres < best.metres)) best = { apiary: one.apiary, metres };
    }
    return best;
  };
}

function firstAtLeast(sorted: readonly number[], least: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] as number) < least) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** For each apiary the newest movement that links it with a case, with the case and the day. */
function tradeLinks(cases: readonly CaseSite[], movements: readonly MovementBetween[], lookBack: number) {
  const byApiary = new Map(cases.map((one) => [one.apiary, one]));
  const links = new Map<string, { readonly with: string; readonly on: string }>();
  for (const move of movements) {
    for (const [end, partner] of [
      [move.from, move.to],
      [move.to, move.from],
    ] as const) {
      const site = byApiary.get(end);
      if (!site || end === partner || daysBetween(move.latest, site.since) > lookBack) continue;
      const known = links.get(partner);
      if (!known || move.latest > known.on) links.set(partner, { with: end, on: move.latest });
    }
  }
  return links;
}

function groupBy<T>(all: readonly T[], keyOf: (one: T) => string | null): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const one of all) {
    const key = keyOf(one);
    if (key !== null) groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return groups;
}
