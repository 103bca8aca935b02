import type { About, Entry } from './entry.ts';
import type { CorrectionBody } from './kinds/correction.ts';
import type { Kind } from './kinds/kind.ts';
import { lift } from './kinds/lift.ts';
import { type Kinds, kinds as knownKinds } from './kinds/registry.ts';
import type {
  ApiaryState,
  ColonyState,
  DeviceState,
  Folded,
  KeeperState,
  LaboratoryState,
  MovementState,
  Register,
  StateBase,
  VisitState,
  Written,
} from './states.ts';
import type {
  ApiarySummary,
  ColonySummary,
  DeviceSummary,
  KeeperSummary,
  LaboratorySummary,
  MovementSummary,
  Summary,
  SummaryBase,
  VisitSummary,
} from './summary.ts';

/** Raise by one whenever the code of the fold or of a summary changes what comes out. */
const logicVersion = 1;

/**
 * The version stamped on every state and summary. It grows with the code and with each new kind or version, so that
 * what an older program could not read is folded again after its update.
 */
export function foldVersionOf(kinds: Kinds): number {
  let versions = 0;
  for (const kind of kinds.values()) versions += kind.version;
  return logicVersion * 10_000 + versions;
}

export const foldVersion = foldVersionOf(knownKinds);

interface Read {
  readonly entry: Entry;
  readonly written: Written;
  readonly kind: Kind;
  readonly body: unknown;
}

/**
 * The state of one entity, from the set of entries about it. The order in which they are given does not matter, nor
 * does one given twice: the result is a function of the set. Refused entries must not be among them.
 *
 * A register's `current` is a value that no other entry `replaces`. Several such values did not see each other: the
 * later by clock is current (an entry flagged for its clock loses), the others are `contested` until an entry replaces
 * them all. A correction changes how its entry reads; the original stays beside it.
 */
export function fold(about: About, entries: readonly Entry[], kinds: Kinds = knownKinds): StateBase {
  const unique = new Map(entries.map((entry) => [entry.envelope.id, entry]));
  const unknown: StateBase['unknown'][number][] = [];
  const erased: StateBase['erased'][number][] = [];
  const clockFlagged: StateBase['clockFlagged'][number][] = [];
  const registers = new Map<string, Read[]>();
  const lists = new Map<string, Read[]>();
  const corrections = new Map<string, Read[]>();
  const gone = new Map<string, Set<string>>();

  const flags = flaggedIn([...unique.values()], kinds);
  for (const entry of [...unique.values()].sort(byClock(flags))) {
    const { envelope } = entry;
    const written = writtenOf(entry);
    if (entry.salt === null) {
      erased.push({ written, kind: envelope.kind });
      const folding = kinds.get(envelope.kind)?.fold;
      // What an erased entry superseded stays superseded: forgetting a name must not bring the older one back.
      if (folding?.as === 'register') {
        const replaced = gone.get(folding.into) ?? new Set();
        for (const id of envelope.replaces) replaced.add(id);
        gone.set(folding.into, replaced);
      }
      continue;
    }
    const read = lift(kinds, envelope.kind, envelope.version, entry.body);
    if (read.fault !== null) {
      unknown.push({ written, kind: envelope.kind, version: envelope.version });
      continue;
    }
    const item: Read = { entry, written, kind: read.kind, body: read.body };
    const { fold: folding } = read.kind;
    if (folding.as === 'register') push(registers, folding.into, item);
    else if (folding.as === 'list') push(lists, folding.into, item);
    else if (folding.as === 'correction') push(corrections, (read.body as CorrectionBody).corrects, item);
    else if (folding.as === 'clock flag') clockFlagged.push(read.body as { entry: string; aheadMilliseconds: number });
  }

  const folded = (read: Read) => withCorrections(read, corrections.get(read.entry.envelope.id) ?? [], kinds, unknown);
  const fields: Record<string, unknown> = {};
  for (const kind of kinds.values()) {
    if (kind.about !== 'any' && !(kind.about as readonly string[]).includes(about.type)) continue;
    const folding = kind.fold;
    if (folding.as === 'register') {
      fields[folding.into] = register(registers.get(folding.into) ?? [], gone.get(folding.into) ?? new Set(), folded);
    } else if (folding.as === 'list') {
      const list = (lists.get(folding.into) ?? []).map(folded);
      const key = folding.newestFirstBy?.bind(folding);
      fields[folding.into] = key === undefined ? list : newestFirst(list, key);
    }
  }
  return {
    notes: [],
    ...fields,
    about: { type: about.type, id: about.id },
    foldVersion: foldVersionOf(kinds),
    unknown,
    erased,
    clockFlagged,
  };
}

function push<K, V>(map: Map<K, V[]>, key: K, value: V): void {
  const list = map.get(key);
  if (list === undefined) map.set(key, [value]);
  else list.push(value);
}

function writtenOf({ envelope }: Entry): Written {
  return {
    entry: envelope.id,
    by: envelope.by,
    device: envelope.device,
    at: envelope.at,
    clock: envelope.clock,
  };
}

/** Entries of this set that the office flagged for a clock far ahead. */
export function flaggedIn(entries: readonly Entry[], kinds: Kinds = knownKinds): Set<string> {
  const flags = new Set<string>();
  for (const { envelope, body } of entries) {
    if (kinds.get(envelope.kind)?.fold.as !== 'clock flag') continue;
    const named = (body as { entry?: unknown } | null)?.entry;
    if (typeof named === 'string') flags.add(named);
  }
  return flags;
}

/** The total order of entries: flagged clocks first (so that they lose), then clock, device and place in the chain. */
export function byClock(flags: ReadonlySet<string>): (a: Entry, b: Entry) => number {
  return ({ envelope: a }, { envelope: b }) => {
    const flagged = Number(flags.has(b.id)) - Number(flags.has(a.id));
    if (flagged !== 0) return flagged;
    if (a.clock !== b.clock) return a.clock < b.clock ? -1 : 1;
    if (a.device !== b.device) return a.device < b.device ? -1 : 1;
    return a.seq - b.seq;
  };
}

function withCorrections(
  read: Read,
  corrections: readonly Read[],
  kinds: Kinds,
  unknown: StateBase['unknown'][number][],
): Folded<unknown> {
  const made: { written: Written; reason: string; body: unknown }[] = [];
  for (const { written, body } of corrections) {
    const correction = body as CorrectionBody;
    const corrected = lift(kinds, read.kind.kind, correction.version, correction.body);
    if (corrected.fault === null) made.push({ written, reason: correction.reason, body: corrected.body });
    else unknown.push({ written, kind: read.kind.kind, version: correction.version });
  }
  return { written: read.written, body: made.at(-1)?.body ?? read.body, original: read.body, corrections: made };
}

function register(
  reads: readonly Read[],
  alsoReplaced: ReadonlySet<string>,
  folded: (read: Read) => Folded<unknown>,
): Register<unknown> {
  const replaced = new Set(alsoReplaced);
  for (const { entry } of reads) {
    for (const id of entry.envelope.replaces) if (id !== entry.envelope.id) replaced.add(id);
  }
  const history = reads.map(folded);
  let standing = history.filter(({ written }) => !replaced.has(written.entry));
  // Entries that replace each other in a circle can only be written on purpose; none of them may vanish for it.
  if (standing.length === 0 && alsoReplaced.size === 0) standing = history;
  return { current: standing.at(-1) ?? null, contested: standing.slice(0, -1), history };
}

function newestFirst<Body>(list: readonly Folded<Body>[], key: (body: Body) => string): Folded<Body>[] {
  const keyed = list.map((item, place) => ({ item, place, at: key(item.body) }));
  keyed.sort((a, b) => (a.at === b.at ? b.place - a.place : a.at < b.at ? 1 : -1));
  return keyed.map(({ item }) => item);
}

/** The short row of a state, for lists. */
export function summarise(state: StateBase): Summary {
  const base: SummaryBase = {
    about: state.about,
    foldVersion: state.foldVersion,
    contested: Object.values(state).some((field) => (field as Register<unknown> | null)?.contested?.length),
    writtenByNewer: state.unknown.length > 0,
  };
  switch (state.about.type) {
    case 'device':
      return deviceSummary(base, state as DeviceState);
    case 'keeper':
      return keeperSummary(base, state as KeeperState);
    case 'apiary':
      return apiarySummary(base, state as ApiaryState);
    case 'colony':
      return colonySummary(base, state as ColonyState);
    case 'visit':
      return visitSummary(base, state as VisitState);
    case 'movement':
      return movementSummary(base, state as MovementState);
    case 'laboratory':
      return laboratorySummary(base, state as LaboratoryState);
    default:
      return base;
  }
}

function deviceSummary(base: SummaryBase, state: DeviceState): DeviceSummary {
  const body = state.device.current?.body;
  return {
    ...base,
    person: body?.person ?? null,
    name: body?.name ?? '',
    predecessor: body?.predecessor ?? null,
    countersigned: state.countersignatures.length > 0,
  };
}

function keeperSummary(base: SummaryBase, state: KeeperState): KeeperSummary {
  const body = state.keeper.current?.body;
  return { ...base, name: body?.name ?? '', number: body?.number ?? null, mergedInto: mergedInto(state) };
}

function apiarySummary(base: SummaryBase, state: ApiaryState): ApiarySummary {
  const body = state.apiary.current?.body;
  return {
    ...base,
    name: body?.name ?? '',
    number: body?.number ?? null,
    district: body?.district ?? null,
    keeper: body?.keeper ?? null,
    latitude: body?.position?.latitude ?? null,
    longitude: body?.position?.longitude ?? null,
    uncertaintyMetres: body?.position?.uncertaintyMetres ?? null,
    coloniesRegistered: body?.coloniesRegistered ?? null,
    lastConfirmedOn: body?.lastConfirmedOn ?? null,
    proposals: state.proposals.length,
    mergedInto: mergedInto(state),
  };
}

function colonySummary(base: SummaryBase, state: ColonyState): ColonySummary {
  const body = state.colony.current?.body;
  const [examination] = state.examinations;
  const [assessment] = state.assessments;
  return {
    ...base,
    apiary: body?.apiary ?? null,
    label: body?.label ?? '',
    hiveType: body?.hiveType ?? null,
    hiveState: body?.hiveState ?? null,
    examinations: state.examinations.length,
    lastExaminedAt: examination?.body.observedAt ?? null,
    lastVisit: examination?.body.visit ?? null,
    lastClaim: examination?.body.claim ?? null,
    lastResult: assessment?.body.result ?? null,
    suspected: assessment?.body.suspected ?? [],
  };
}

function visitSummary(base: SummaryBase, state: VisitState): VisitSummary {
  const body = state.visit.current?.body;
  return {
    ...base,
    apiary: body?.apiary ?? null,
    inspector: body?.inspector ?? null,
    reason: body?.reason ?? null,
    plannedFor: body?.plannedFor ?? null,
    startedAt: body?.startedAt ?? null,
    endedAt: body?.endedAt ?? null,
    handedOver: state.handovers.length > 0,
  };
}

function laboratorySummary(base: SummaryBase, state: LaboratoryState): LaboratorySummary {
  return { ...base, name: state.limits[0]?.body.laboratory ?? '' };
}

function movementSummary(base: SummaryBase, state: MovementState): MovementSummary {
  const body = state.movement.current?.body;
  return {
    ...base,
    from: body?.from ?? null,
    to: body?.to ?? null,
    what: body?.what ?? null,
    quantity: body?.quantity ?? null,
    how: body?.how ?? null,
    latest: body?.latest ?? null,
    happened: body?.happened ?? true,
  };
}

/**
 * The record as part of which this one is read: the last one it was found to be the same as, unless a later word took
 * that back. Only an older record (by identifier, which sorts by time of making) can be one, whatever was written: so
 * two offices that merge the same two records the other way round never make a circle in which both vanish.
 */
export function mergedInto(state: Pick<KeeperState | ApiaryState, 'about' | 'merges'>): string | null {
  const verdicts = new Map<string, string>();
  for (const { body } of state.merges) {
    verdicts.delete(body.other);
    verdicts.set(body.other, body.verdict);
  }
  const same = [...verdicts].filter(([other, verdict]) => verdict === 'same' && other < state.about.id);
  return same.at(-1)?.[0] ?? null;
}
