import { isUnsettled } from '@combside/casework/register/settle';
import type { ApiaryState, ColonyState, KeeperState } from '@combside/record/states';
import type { FoldedState } from '@combside/record/store';
import type {
  ApiarySummary,
  ColonySummary,
  KeeperSummary,
  LaboratorySummary,
  MovementSummary,
  VisitSummary,
} from '@combside/record/summary';

/** What a state's row carries for lists, search and the map. Null where the type has no such thing. */
export interface Columns {
  readonly district: string | null;
  readonly keeper: string | null;
  readonly apiary: string | null;
  readonly inspector: string | null;
  /** Where a movement went; `apiary` is where it came from. */
  readonly other_apiary: string | null;
  readonly merged_into: string | null;
  readonly name: string | null;
  readonly search: string | null;
  /** Whether a contested value or a proposed change waits for somebody's word. */
  readonly unsettled: boolean;
  /** `(longitude,latitude)`, as PostgreSQL writes a point. */
  readonly place: string | null;
  readonly happened_at: string | null;
  /** The word last stated about a colony. */
  readonly last_result: string | null;
  /** Visits that examined this colony, each with the result last stated. */
  readonly visits: readonly { readonly visit: string; readonly result: string | null }[];
  /** Hashes of the photographs it speaks of. */
  readonly photographs: readonly string[];
  /** Examinations of this colony, for the figures. */
  readonly examined: readonly Examined[];
  /** Photographs taken at its combs. */
  readonly combs: readonly CombPhotographed[];
}

/** One row of `combside.comb_photographs`, without its colony. */
export interface CombPhotographed {
  readonly hash: string;
  readonly visit: string;
  readonly apiary: string;
  readonly taken_at: string;
  readonly caption: string;
  /** Of the reading kept of it; null where none is. */
  readonly accepted: boolean | null;
}

/** One row of `combside.examined`, without its colony. */
export interface Examined {
  readonly examination: string;
  readonly visit: string;
  readonly apiary: string;
  readonly observed_at: string | null;
  readonly depth: string;
  readonly hive_state: string;
  readonly frames_seen: number;
  readonly frames_held: number;
  readonly result: string | null;
  readonly suspected: readonly string[];
  readonly basis: string | null;
  readonly finds: readonly string[];
}

const none: Columns = {
  district: null,
  keeper: null,
  apiary: null,
  inspector: null,
  other_apiary: null,
  merged_into: null,
  name: null,
  search: null,
  unsettled: false,
  place: null,
  happened_at: null,
  last_result: null,
  visits: [],
  photographs: [],
  examined: [],
  combs: [],
};

/** Draws the columns of a folded state. */
export function columnsOf(kept: FoldedState): Columns {
  switch (kept.summary.about.type) {
    case 'keeper': {
      const summary = kept.summary as KeeperSummary;
      const body = (kept.state as KeeperState).keeper.current?.body;
      return {
        ...none,
        merged_into: summary.mergedInto,
        name: storable(summary.name),
        search: storable(
          [summary.name, summary.number, body?.addressWords, body?.telephone, digitsOf(body?.telephone), body?.email]
            .filter(Boolean)
            .join('\n'),
        ),
        unsettled: isUnsettled(kept.state as KeeperState),
      };
    }
    case 'apiary': {
      const summary = kept.summary as ApiarySummary;
      const body = (kept.state as ApiaryState).apiary.current?.body;
      const { latitude, longitude } = summary;
      return {
        ...none,
        district: storable(summary.district),
        keeper: summary.keeper,
        merged_into: summary.mergedInto,
        name: storable(summary.name),
        search: storable([summary.name, summary.number, body?.addressWords].filter(Boolean).join('\n')),
        unsettled: isUnsettled(kept.state as ApiaryState),
        place: latitude === null || longitude === null ? null : `(${longitude},${latitude})`,
        photographs: distinct((kept.state as ApiaryState).photographs.map((one) => one.body.hash)),
      };
    }
    case 'colony': {
      const summary = kept.summary as ColonySummary;
      const state = kept.state as ColonyState;
      const readings = state.examinations.flatMap((one) => [one.body, one.original]);
      return {
        ...none,
        apiary: summary.apiary,
        name: storable(summary.label),
        happened_at: instantOrNull(summary.lastExaminedAt),
        last_result: storable(summary.lastResult),
        unsettled: isUnsettled(state),
        examined: examinedIn(state),
        combs: combsIn(state),
        visits: distinct(readings.map((body) => body.visit)).map((visit) => ({
          visit,
          // Newest first, so the first one found is the one last stated.
          result: storable(state.assessments.find((one) => one.body.visit === visit)?.body.result ?? null),
        })),
        photographs: distinct([
          ...readings.flatMap((body) => body.photographs.map((photograph) => photograph.hash)),
          ...state.combReadings.map((one) => one.body.photograph.hash),
        ]),
      };
    }
    case 'visit': {
      const summary = kept.summary as VisitSummary;
      return {
        ...none,
        apiary: summary.apiary,
        inspector: summary.inspector,
        happened_at: instantOrNull(summary.startedAt ?? summary.plannedFor),
      };
    }
    case 'movement': {
      const summary = kept.summary as MovementSummary;
      const latest = summary.latest === null ? null : `${summary.latest}T00:00:00.000Z`;
      return { ...none, apiary: summary.from, other_apiary: summary.to, happened_at: instantOrNull(latest) };
    }
    case 'laboratory':
      return { ...none, name: storable((kept.summary as LaboratorySummary).name) };
    default:
      return none;
  }
}

function examinedIn(state: ColonyState): Examined[] {
  return state.examinations.map(({ written, body }) => {
    // Newest first, so the first one found is the one that holds.
    const stated = state.assessments.find((one) => one.body.examination === written.entry)?.body;
    return {
      examination: written.entry,
      visit: body.visit,
      apiary: body.apiary,
      observed_at: instantOrNull(body.observedAt),
      depth: body.depth,
      hive_state: body.hiveState,
      frames_seen: body.boxes.reduce((sum, box) => sum + box.framesSeen, 0),
      frames_held: body.boxes.reduce((sum, box) => sum + box.framesHeld, 0),
      result: storable(stated?.result ?? null),
      suspected: (stated?.suspected ?? []).map(storable),
      basis: stated?.basis ?? null,
      finds: body.finds.filter((one) => one.outcome === 'seen').map((one) => storable(one.find)),
    };
  });
}

/** Photographs of its examinations, and those whose reading was kept without one; of two readings the newer counts. */
function combsIn(state: ColonyState): CombPhotographed[] {
  const kept = new Map(state.combReadings.toReversed().map(({ body }) => [body.photograph.hash, body]));
  const taken = [
    ...[...kept.values()].map((body) => ({ of: body, photograph: body.photograph })),
    ...state.examinations.flatMap(({ body }) => body.photographs.map((photograph) => ({ of: body, photograph }))),
  ];
  const rows = taken.map(({ of, photograph }) => ({
    hash: storable(photograph.hash),
    visit: of.visit,
    apiary: of.apiary,
    // A time that is none (month 13) must still have a place in the list.
    taken_at: instantOrNull(photograph.takenAt) ?? instantOrNull(of.observedAt) ?? '1970-01-01T00:00:00.000Z',
    caption: storable(photograph.caption),
    accepted: kept.get(photograph.hash)?.accepted ?? null,
  }));
  // Each photograph once.
  return [...new Map(rows.map((row) => [row.hash, row])).values()];
}

/** Text as a column takes it: PostgreSQL has no U+0000. The entry itself keeps it. */
export function storable<T extends string | null>(text: T): T {
  return (text === null ? null : text.replaceAll('\u0000', '\uFFFD')) as T;
}

/** An instant as PostgreSQL takes it, or null where the text has the shape of one but names no moment (month 13). */
export function instantOrNull(text: string | null): string | null {
  return text === null || Number.isNaN(Date.parse(text)) ? null : text;
}

/** A telephone number as one types it without thinking of blanks and brackets. */
function digitsOf(telephone: string | undefined): string {
  return (telephone ?? '').replace(/\D+/g, '');
}

function distinct(values: readonly string[]): readonly string[] {
  return [...new Set(values)];
}
