import { type VisitBody, visit } from '@combside/record/kinds/visit';
import type { ApiaryState } from '@combside/record/states';
import { type Act, done, refused } from '../act.ts';

/** What somebody may ask a visit for before anybody has a day for it. */
export const askedReasons = ['suspicion reported', 'request', 'sale or migration'] as const;
export type AskedReason = (typeof askedReasons)[number];

export interface AskForVisit {
  readonly visit: string;
  readonly apiary: ApiaryState;
  /** Who took it down; planning puts the inspector in this place. */
  readonly takenBy: string;
  readonly reason: AskedReason;
}

/** Writes down that a visit was asked for: a visit without a day, until a round takes it up. */
export function askForVisit(input: AskForVisit): Act {
  if (!input.apiary.apiary.current) return refused('casework.refused.not-in-register');
  if (!askedReasons.includes(input.reason)) return refused('casework.refused.unknown-reason', { reason: input.reason });
  const body: VisitBody = {
    apiary: input.apiary.about.id,
    inspector: input.takenBy,
    reason: input.reason,
    power: 'consent',
    plannedFor: null,
    startedAt: null,
    endedAt: null,
    coloniesCounted: null,
    warnings: [],
    temperatureCelsius: null,
    leftOpen: [],
  };
  return done([
    { kind: visit.kind, version: visit.version, about: { type: 'visit', id: input.visit }, body, replaces: [] },
  ]);
}
