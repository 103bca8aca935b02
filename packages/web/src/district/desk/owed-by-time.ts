import { dayMilliseconds } from '@combside/calendar/day';
import type { DayEdges } from '@combside/casework/plan/today';
import type { DutyLine, Owed } from '@combside/contract/owed';
import type { VisitLine } from '@combside/contract/visits';

/** When something is owed, as the desk's left side reads. */
export const owedTimes = ['late', 'today', 'week', 'later', 'no-day'] as const;
export type OwedTime = (typeof owedTimes)[number];

/** Duties of one apiary that fall into the same stretch of time: one line. */
export interface OwedDuties {
  readonly apiary: string;
  readonly apiaryName: string | null;
  readonly duties: readonly DutyLine[];
  /** The earliest time by which one of them is due. */
  readonly due: string | null;
}

export interface OwedGroup {
  readonly time: OwedTime;
  readonly visits: readonly VisitLine[];
  readonly duties: readonly OwedDuties[];
}

const week = 7 * dayMilliseconds;

/**
 * What is owed, by time: visits by the day they are planned for, duties by when they are due. Duties of one apiary stand
 * together; what has to be reported or sent stands before looking again.
 *
 * @param day edges of the reader's own day
 */
export function owedByTime(owed: Owed, day: DayEdges): OwedGroup[] {
  const start = Date.parse(day.start);
  const end = Date.parse(day.end);
  const timeOf = (at: number): OwedTime =>
    at < start ? 'late' : at < end ? 'today' : at < start + week ? 'week' : 'later';
  const visitTime = (visit: VisitLine): OwedTime => {
    if (visit.startedAt !== null) return 'today';
    return visit.plannedFor === null ? 'no-day' : timeOf(Date.parse(visit.plannedFor));
  };
  const dutyTime = (duty: DutyLine): OwedTime =>
    duty.late ? 'late' : duty.due === null ? 'no-day' : timeOf(Date.parse(duty.due));
  return owedTimes.map((time) => ({
    time,
    visits: owed.visits
      .filter((visit) => visitTime(visit) === time)
      .sort((a, b) => compare(a.plannedFor ?? a.startedAt ?? '', b.plannedFor ?? b.startedAt ?? '')),
    duties: together(owed.duties.filter((duty) => dutyTime(duty) === time)),
  }));
}

function together(duties: readonly DutyLine[]): OwedDuties[] {
  const byApiary = new Map<string, DutyLine[]>();
  for (const duty of duties) byApiary.set(duty.apiary, [...(byApiary.get(duty.apiary) ?? []), duty]);
  return [...byApiary.values()]
    .map((here) => ({
      apiary: here[0]?.apiary ?? '',
      apiaryName: here[0]?.apiaryName ?? null,
      duties: here,
      due: here.reduce<string | null>((least, { due }) => (due && (!least || due < least) ? due : least), null),
    }))
    .sort((a, b) => pressing(b) - pressing(a) || compare(a.due ?? '~', b.due ?? '~') || compare(a.apiary, b.apiary));
}

function pressing({ duties }: OwedDuties): number {
  return duties.some((one) => one.duty !== 'look again') ? 1 : 0;
}

/** Kinds of duty at one apiary, each once, with the colonies it is about. */
export function dutiesOnce(duties: readonly DutyLine[]): { duty: string; colonies: string[] }[] {
  const kinds = new Map<string, Set<string>>();
  for (const { duty, colonyLabel } of duties) {
    const labels = kinds.get(duty) ?? new Set();
    if (colonyLabel !== null) labels.add(colonyLabel);
    kinds.set(duty, labels);
  }
  return [...kinds].map(([duty, labels]) => ({ duty, colonies: [...labels] }));
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
