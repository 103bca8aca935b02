import { dateOf } from '@combside/calendar/day';
import { dayOf, daysBetween } from '@combside/calendar/instant';
import type { Proposal } from '@combside/record/entry';
import { type AttendanceBody, attendance } from '@combside/record/kinds/attendance';
import { type ProposedChangeBody, proposedChange } from '@combside/record/kinds/proposed-change';
import { type VisitBody, visit } from '@combside/record/kinds/visit';
import type { ApiaryState, ColonyState, VisitState } from '@combside/record/states';
import { type Act, done, type Finding, finding, refused } from '../act.ts';
import type { FindingId } from '../findings.ts';
import { seen } from '../register/seen.ts';
import { standingAt } from '../register/standing-at.ts';
import { powers, roles, visitReasons } from '../vocabulary.ts';
import { usualSettings, type VisitSettings } from './settings.ts';

/** What stands in the register about the place, to be read back to the keeper on arrival. */
export interface ReadBack {
  readonly apiary: string;
  readonly name: string;
  readonly district: string;
  readonly addressWords: string;
  readonly position: NonNullable<ApiaryState['apiary']['current']>['body']['position'];
  readonly keeper: string | null;
  readonly lastConfirmedOn: string | null;
  /** Colonies by the register's own number, and by the colonies known one by one. */
  readonly coloniesRegistered: number | null;
  readonly coloniesKnown: number;
  readonly findings: readonly Finding[];
}

/** What the inspector sees of the weather and the place. `null` where nobody looked. */
export interface Conditions {
  readonly temperatureCelsius: number | null;
  readonly rain: boolean;
  readonly wind: boolean;
  readonly thunder: boolean;
  readonly foehn: boolean;
  readonly robbing: boolean;
  readonly dearth: boolean;
  /** Date on which honey was last taken, as the keeper says. */
  readonly honeyTakenOn: string | null;
}

export const calmConditions: Conditions = {
  temperatureCelsius: null,
  rain: false,
  wind: false,
  thunder: false,
  foehn: false,
  robbing: false,
  dearth: false,
  honeyTakenOn: null,
};

/**
 * The register's own words about an apiary, with what is doubtful about them.
 *
 * @param now the instant of arrival
 * @returns null when the register has no entry of the apiary
 */
export function readBack(
  apiary: ApiaryState,
  colonies: readonly ColonyState[],
  now: string,
  settings: VisitSettings = usualSettings,
): ReadBack | null {
  const known = apiary.apiary.current?.body;
  if (!known) return null;
  const about = apiary.about;
  const findings: Finding[] = [];
  const limit = settings.siteConfirmedWithinDays.value;
  if (known.lastConfirmedOn === null || daysBetween(known.lastConfirmedOn, now) > limit) {
    findings.push(
      finding(
        'casework.warning.not-confirmed-lately',
        'warns',
        { on: known.lastConfirmedOn === null ? 'never' : { day: known.lastConfirmedOn } },
        about,
      ),
    );
  }
  const metres = known.position?.uncertaintyMetres ?? null;
  if (metres === null || metres > settings.positionWithinMetres.value) {
    findings.push(finding('casework.warning.position-uncertain', 'warns', { metres: metres ?? 'none' }, about));
  }
  if (known.keeper === null) findings.push(finding('casework.register.owner-not-known', 'tells', {}, about));
  if (apiary.apiary.contested.length > 0) {
    findings.push(finding('casework.open.contested', 'tells', { count: apiary.apiary.contested.length + 1 }, about));
  }
  return {
    apiary: about.id,
    name: known.name,
    district: known.district,
    addressWords: known.addressWords,
    position: known.position,
    keeper: known.keeper,
    lastConfirmedOn: known.lastConfirmedOn,
    coloniesRegistered: known.coloniesRegistered,
    coloniesKnown: standingAt(about.id, colonies).length,
    findings,
  };
}

/**
 * Warnings of weather and season. They warn and never block: an inspector may have to open a dying hive.
 *
 * @param latitude of the site in degrees, so that the season is the right one; null is taken as northern
 */
export function warningsOnArrival(
  conditions: Conditions,
  now: string,
  latitude: number | null,
  settings: VisitSettings = usualSettings,
): Finding[] {
  const warn = (id: FindingId, values: Finding['values'] = {}): Finding => finding(id, 'warns', values);
  const found: Finding[] = [];
  const degrees = conditions.temperatureCelsius;
  if (degrees === null) found.push(warn('casework.warning.temperature-not-known'));
  else if (degrees < settings.noFlightBelowCelsius.value) {
    found.push(warn('casework.warning.bees-do-not-fly', { degrees, limit: settings.noFlightBelowCelsius.value }));
  } else if (degrees < settings.coldBelowCelsius.value) {
    found.push(warn('casework.warning.cold', { degrees, limit: settings.coldBelowCelsius.value }));
  }
  if (conditions.rain) found.push(warn('casework.warning.rain'));
  if (conditions.wind) found.push(warn('casework.warning.wind'));
  if (conditions.thunder) found.push(warn('casework.warning.thunder'));
  if (conditions.foehn) found.push(warn('casework.warning.foehn'));
  if (conditions.robbing) found.push(warn('casework.warning.robbing'));
  if (conditions.dearth) found.push(warn('casework.warning.dearth'));
  const since = conditions.honeyTakenOn === null ? null : daysBetween(conditions.honeyTakenOn, now);
  if (since !== null && since >= 0 && since <= settings.afterHoneyDays.value) {
    found.push(warn('casework.warning.honey-taken', { days: since }));
  }
  const month = monthOf(now);
  const northern = latitude === null || latitude >= 0 ? month : ((month + 5) % 12) + 1;
  if (northern < settings.broodFromMonth.value || northern > settings.broodToMonth.value) {
    found.push(warn('casework.warning.little-brood-season', { month }));
  }
  return found;
}

/** What is said when the visit begins. */
export interface StartVisit {
  /** Id of the visit: that of the planned visit, or a new one. */
  readonly visit: string;
  /** The planned visit, or null when nobody planned it. */
  readonly planned: VisitState | null;
  readonly apiary: ApiaryState;
  readonly colonies: readonly ColonyState[];
  readonly inspector: string;
  readonly reason: string;
  readonly power: string;
  readonly startedAt: string;
  readonly conditions: Conditions;
  /** What the inspector answered to each warning, by its id. */
  readonly answers: Readonly<Record<string, string>>;
  readonly people: AttendanceBody['people'];
  /** How many colonies stand there today; null when nobody counted yet. */
  readonly coloniesCounted: number | null;
  readonly settings?: VisitSettings;
}

/**
 * Begins a visit. A count that differs from the register becomes a proposed change, never a silent overwrite.
 *
 * Refused when the place is not in the register, the words are unknown, the visit runs already, has ended, or is planned
 * for somebody else or somewhere else.
 */
export function startVisit(input: StartVisit): Act {
  const known = input.apiary.apiary.current?.body;
  if (!known) return refused('casework.refused.not-in-register');
  if (!(visitReasons as readonly string[]).includes(input.reason)) {
    return refused('casework.refused.unknown-reason', { reason: input.reason });
  }
  if (!(powers as readonly string[]).includes(input.power)) {
    return refused('casework.refused.unknown-power', { power: input.power });
  }
  const stranger = input.people.find((one) => !(roles as readonly string[]).includes(one.role));
  if (stranger) return refused('casework.refused.unknown-word', { word: stranger.role });
  const counted = input.coloniesCounted;
  if (counted !== null && !(Number.isInteger(counted) && counted >= 0)) {
    return refused('casework.refused.number-out-of-range', { what: 'colonies', low: 0, high: 100_000 });
  }
  const before = input.planned?.visit.current?.body ?? null;
  if (input.planned && before) {
    if (before.endedAt !== null) return refused('casework.refused.visit-ended');
    if (before.startedAt !== null) return refused('casework.refused.visit-running');
    if (before.inspector !== input.inspector) return refused('casework.refused.visit-not-yours');
    if (before.apiary !== input.apiary.about.id) return refused('casework.refused.visit-elsewhere');
  }
  const warnings = warningsOnArrival(
    input.conditions,
    input.startedAt,
    known.position?.latitude ?? null,
    input.settings ?? usualSettings,
  );
  const unanswered = warnings
    .filter((one) => !input.answers[one.id])
    .map((one) => finding('casework.warning.not-answered', 'tells', { warning: one.id }));
  const body: VisitBody = {
    apiary: input.apiary.about.id,
    inspector: input.inspector,
    reason: input.reason,
    power: input.power,
    plannedFor: before?.plannedFor ?? null,
    startedAt: input.startedAt,
    endedAt: null,
    coloniesCounted: counted,
    warnings: warnings.map((one) => ({ warning: one.id, answer: input.answers[one.id] ?? '' })),
    temperatureCelsius: input.conditions.temperatureCelsius,
    leftOpen: [],
  };
  const about = { type: 'visit', id: input.visit };
  const proposals: Proposal[] = [
    { kind: visit.kind, version: visit.version, about, body, replaces: input.planned ? seen(input.planned.visit) : [] },
  ];
  if (input.people.length > 0) {
    proposals.push({
      kind: attendance.kind,
      version: attendance.version,
      about,
      body: { people: input.people } satisfies AttendanceBody,
      replaces: input.planned ? seen(input.planned.attendance) : [],
    });
  }
  const count = countAgainstRegister(input.apiary, counted, input.visit);
  if (count.proposal) proposals.push(count.proposal);
  return done(proposals, [...warnings, ...unanswered, ...count.findings]);
}

/**
 * Sets the count beside the register's number.
 *
 * @returns a proposed change and a finding where they differ; nothing where they agree or nobody counted
 */
export function countAgainstRegister(
  apiary: ApiaryState,
  counted: number | null,
  visitId: string,
): { readonly proposal: Proposal<ProposedChangeBody> | null; readonly findings: readonly Finding[] } {
  const registered = apiary.apiary.current?.body.coloniesRegistered ?? null;
  if (counted === null || counted === registered) return { proposal: null, findings: [] };
  return {
    proposal: {
      kind: proposedChange.kind,
      version: proposedChange.version,
      about: apiary.about,
      body: {
        visit: visitId,
        field: 'coloniesRegistered',
        from: registered,
        to: counted,
        reason: 'counted on arrival',
      },
      replaces: [],
    },
    findings: [
      registered === null
        ? finding('casework.count.never-registered', 'tells', { counted }, apiary.about)
        : finding('casework.count.differs', 'tells', { registered, counted }, apiary.about),
    ],
  };
}

function monthOf(instant: string): number {
  return dateOf(dayOf(instant)).month;
}
