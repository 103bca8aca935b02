import { instantOf, millisecondsOf } from '@combside/calendar/instant';
import type { Proposal } from '@combside/record/entry';
import type { ApiaryState, VisitState } from '@combside/record/states';
import { type Act, done, refused } from '../act.ts';
import type { VisitReason } from '../vocabulary.ts';
import type { VisitGround } from './planning-settings.ts';
import type { GroundHeld } from './rank-apiaries.ts';
import { planVisit } from './today.ts';

/** One stop of a round. */
export interface Stop {
  readonly apiary: ApiaryState;
  readonly reason: string;
  /** Identifier of the visit. */
  readonly visit: string;
  /** What was asked for and gets its day now; null for a new visit. */
  readonly asked: VisitState | null;
}

export interface PlanRound {
  /** In the order in which they are visited. */
  readonly stops: readonly Stop[];
  readonly inspector: string;
  /** When the inspector arrives at the first. */
  readonly firstAt: string;
  readonly minutesBetween: number;
}

/**
 * Plans the visits of one inspector's round, one behind the other. All of them or none: what one stop refuses refuses the
 * round.
 */
export function planRound(round: PlanRound): Act {
  if (round.stops.length === 0) return refused('casework.refused.round-empty');
  const first = millisecondsOf(round.firstAt);
  const proposals: Proposal[] = [];
  for (const [place, stop] of round.stops.entries()) {
    const act = planVisit({
      visit: stop.visit,
      planned: stop.asked,
      apiary: stop.apiary,
      inspector: round.inspector,
      reason: stop.reason,
      plannedFor: instantOf(first + place * round.minutesBetween * 60_000),
    });
    if (!act.ok) return act;
    proposals.push(...act.proposals);
  }
  return done(proposals);
}

const reasons: Readonly<Record<VisitGround, VisitReason>> = {
  'suspicion reported': 'suspicion reported',
  'case nearby': 'contact',
  'owner link': 'contact',
  trade: 'contact',
  request: 'request',
  'time since last visit': 'routine',
  'unconfirmed site': 'routine',
};

/** The reason that the weightiest ground gives for a visit; routine where nothing speaks for it. */
export function reasonFor(grounds: readonly GroundHeld[]): VisitReason {
  const first = grounds[0];
  return first ? reasons[first.ground] : 'routine';
}
