import type { About } from './entry.ts';

/**
 * The short row of one entity: what lists show and sort by, small enough to hold tens of thousands of them. Made from
 * the folded state by `summarise` (fold.ts) and kept beside it, so that a list never opens states or entries.
 */
export interface SummaryBase {
  readonly about: About;
  readonly foldVersion: number;
  /** True while concurrent changes wait to be settled. */
  readonly contested: boolean;
  /** True when a newer program wrote something here that this one cannot read. */
  readonly writtenByNewer: boolean;
}

export interface DeviceSummary extends SummaryBase {
  readonly person: string | null;
  readonly name: string;
  readonly predecessor: string | null;
  readonly countersigned: boolean;
}

export interface KeeperSummary extends SummaryBase {
  readonly name: string;
  readonly number: string | null;
  /** The keeper of which this record is read as part, or null. */
  readonly mergedInto: string | null;
}

export interface ApiarySummary extends SummaryBase {
  readonly name: string;
  readonly number: string | null;
  readonly district: string | null;
  readonly keeper: string | null;
  readonly latitude: number | null;
  readonly longitude: number | null;
  readonly uncertaintyMetres: number | null;
  readonly coloniesRegistered: number | null;
  readonly lastConfirmedOn: string | null;
  /** Proposed changes written down so far, settled or not. */
  readonly proposals: number;
  /** The apiary of which this record is read as part, or null. */
  readonly mergedInto: string | null;
}

export interface ColonySummary extends SummaryBase {
  readonly apiary: string | null;
  readonly label: string;
  readonly hiveType: string | null;
  readonly hiveState: string | null;
  readonly examinations: number;
  readonly lastExaminedAt: string | null;
  /** Visit of the newest examination. */
  readonly lastVisit: string | null;
  readonly lastClaim: string | null;
  /** The word of the newest assessment, as casework knows it, and what it suspects. */
  readonly lastResult: string | null;
  readonly suspected: readonly string[];
}

export interface VisitSummary extends SummaryBase {
  readonly apiary: string | null;
  readonly inspector: string | null;
  readonly reason: string | null;
  readonly plannedFor: string | null;
  readonly startedAt: string | null;
  readonly endedAt: string | null;
  readonly handedOver: boolean;
}

export interface MovementSummary extends SummaryBase {
  readonly from: string | null;
  readonly to: string | null;
  readonly what: string | null;
  readonly quantity: number | null;
  readonly how: string | null;
  /** The last day on which it can have happened. */
  readonly latest: string | null;
  /** False where the entry was taken back: then it is no contact. */
  readonly happened: boolean;
}

export interface LaboratorySummary extends SummaryBase {
  /** As the newest statement writes it. */
  readonly name: string;
}

/** Summaries and states by entity type. An entity of a type this program does not know has neither. */
export interface SummaryByType {
  readonly device: DeviceSummary;
  readonly keeper: KeeperSummary;
  readonly apiary: ApiarySummary;
  readonly colony: ColonySummary;
  readonly visit: VisitSummary;
  readonly movement: MovementSummary;
  readonly laboratory: LaboratorySummary;
}
export type FoldedType = keyof SummaryByType;
export type Summary = SummaryByType[FoldedType] | SummaryBase;

/**
 * Which entities of a type are wanted. Stores must answer each of these without reading every row:
 * apiaries `of district` or `of keeper`, colonies `of apiary`, visits `of apiary` or `of inspector`, movements `of apiary` at
 * either end.
 */
export type SummaryFilter =
  | { readonly district: string }
  | { readonly keeper: string }
  | { readonly apiary: string }
  | { readonly inspector: string };

/** The groups a summary stands in, as one text each: `apiary of district north`. Stores index these. */
export function groupsOf(summary: Summary): string[] {
  const groups: string[] = [];
  for (const field of ['district', 'keeper', 'apiary', 'inspector'] as const) {
    const value = (summary as Partial<Record<typeof field, unknown>>)[field];
    if (typeof value === 'string') groups.push(groupName(summary.about.type, field, value));
  }
  if (summary.about.type === 'movement') {
    const { from, to } = summary as MovementSummary;
    for (const end of new Set([from, to])) if (end !== null) groups.push(groupName('movement', 'apiary', end));
  }
  return groups;
}

/** The group that a question names; equal to one of `groupsOf` of every summary that answers it. */
export function groupFiltered(type: FoldedType, where: SummaryFilter): string {
  for (const [field, value] of Object.entries(where)) return groupName(type, field, value);
  throw new TypeError('a question without a field: give one of district, keeper, apiary, inspector');
}

function groupName(type: string, field: string, value: string): string {
  return `${type} of ${field} ${value}`;
}
