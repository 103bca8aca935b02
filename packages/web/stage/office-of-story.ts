import type { Apiaries, ApiaryLine } from '@combside/contract/apiaries';
import type { ApiaryPage } from '@combside/contract/apiary-page';
import type { ColonyPage } from '@combside/contract/colony-page';
import type { KeeperPage } from '@combside/contract/keeper-page';
import type { VisitPage } from '@combside/contract/visit-page';
import type {
  ApiaryState,
  ColonyState,
  EntityState,
  Folded,
  KeeperState,
  MovementState,
  Register,
  VisitState,
} from '@combside/record/states';
import { inject } from 'vitest';
import { firstInstant } from './day.ts';
import { inspector } from './inspector.ts';

const { states, running } = inject('record');

/** The states of one type that the planted record holds. */
function statesOf<State extends EntityState>(type: string): readonly State[] {
  return states.filter(({ summary }) => summary.about.type === type).map(({ state }) => state as unknown as State);
}

function found<State extends EntityState>(type: string, id: string): State {
  const state = statesOf<State>(type).find(({ about }) => about.id === id);
  if (!state) throw new Error(`the planted record holds no ${type} ${id}`);
  return state;
}

/** The apiary of the story's main journey, its keeper, a colony of it that is suspect, and the visit of the morning. */
export const apiaryOfStory = found<ApiaryState>('apiary', running.apiary);
export const keeperOfStory = found<KeeperState>('keeper', apiaryOfStory.apiary.current?.body.keeper ?? '');
export const colonyOfStory = found<ColonyState>('colony', running.colonies['4'] ?? '');
export const visitOfStory = found<VisitState>('visit', running.visit);

const colonies = Object.values(running.colonies).map((id) => found<ColonyState>('colony', id));
const people = [{ person: inspector.person, name: inspector.name, role: 'inspector' as const, active: true }];

/** Colonies went to an apiary outside the register, and two nuclei came. Invented. */
const movements: readonly MovementState[] = [
  movement(1, { from: running.apiary, to: null, what: 'colonies', quantity: 1, how: 'sold' }),
  movement(2, { from: null, to: running.apiary, what: 'nuclei', quantity: 2, how: 'not known' }),
];

const lineOfApiary: ApiaryLine = {
  apiary: running.apiary,
  name: running.name,
  number: 'QM-1001',
  district: 'quillmoor',
  keeper: keeperOfStory.about.id,
  keeperName: keeperOfStory.keeper.current?.body.name ?? '',
  latitude: 56.4,
  longitude: 3.4,
  uncertaintyMetres: 8,
  lastConfirmedOn: '2026-01-10',
  coloniesRegistered: 6,
  mark: 'suspect',
};

const visitMade = {
  visit: running.visit,
  apiary: running.apiary,
  apiaryName: running.name,
  district: 'quillmoor',
  inspector: inspector.person,
  inspectorName: inspector.name,
  reason: 'routine',
  plannedFor: firstInstant,
  startedAt: firstInstant,
  endedAt: null,
  colonies: 6,
  results: [{ result: 'suspect', colonies: 1 }],
};

/** The page of the story's apiary. @param state otherwise than the record holds it */
export function pageOfApiary(state: ApiaryState = apiaryOfStory): ApiaryPage {
  return {
    apiary: wire(state),
    keeper: wire(keeperOfStory),
    colonies: colonies.map((one) => ({
      colony: one.about.id,
      label: one.colony.current?.body.label ?? '',
      hiveType: one.colony.current?.body.hiveType ?? null,
      hiveState: one.colony.current?.body.hiveState ?? null,
      lastExaminedAt: one.examinations[0]?.body.observedAt ?? null,
      lastResult: one.assessments[0]?.body.result ?? null,
    })),
    visits: [visitMade],
    movements: wire(movements),
    otherEnds: [],
    mergedHere: [],
    people,
    position: 1,
  };
}

/** The page of its keeper. @param state otherwise than the record holds it */
export function pageOfKeeper(state: KeeperState = keeperOfStory): KeeperPage {
  return {
    keeper: wire(state),
    apiaries: [lineOfApiary],
    movements: wire(movements),
    otherEnds: [{ apiary: running.apiary, name: running.name }],
    mergedHere: [{ id: '01900000-0000-7000-8000-0000000000b1', name: 'Tamsin Oakndale (invented)' }],
    people,
    position: 1,
  };
}

/** The page of its suspect colony. @param state otherwise than the record holds it */
export function pageOfColony(state: ColonyState = colonyOfStory): ColonyPage {
  return {
    colony: wire(state),
    apiary: lineOfApiary,
    movements: wire(movements.map((one) => withBody(one, { colonies: [state.about.id] }))),
    otherEnds: [{ apiary: running.apiary, name: running.name }],
    photographs: [],
    people,
    position: 1,
  };
}

/** The page of the visit of the morning. */
export function pageOfVisit(): VisitPage {
  return {
    visit: wire(visitOfStory),
    apiary: lineOfApiary,
    keeper: wire(keeperOfStory),
    colonies: colonies.map((one) => ({
      colony: one.about.id,
      label: one.colony.current?.body.label ?? '',
      hiveType: one.colony.current?.body.hiveType ?? null,
      examinations: wire(one.examinations.filter(({ body }) => body.visit === running.visit)),
      assessments: wire(one.assessments),
      notes: wire(one.notes),
    })),
    photographs: [],
    people,
    arrivedAt: firstInstant,
    position: 1,
  };
}

/** What an office answers that holds the story. */
export const officeOfStory: Readonly<Record<string, unknown>> = {
  apiaries: { apiaries: [lineOfApiary], next: null } satisfies Apiaries,
  [`apiaries/${running.apiary}`]: pageOfApiary(),
  [`keepers/${keeperOfStory.about.id}`]: pageOfKeeper(),
  [`colonies/${colonyOfStory.about.id}`]: pageOfColony(),
  [`visits/${running.visit}`]: pageOfVisit(),
};

/** A value as it is after a wire: the record's types are read-only, the contract's are not. */
function wire<Value>(value: Value): Loose<Value> {
  return JSON.parse(JSON.stringify(value));
}
type Loose<T> = T extends readonly (infer One)[]
  ? Loose<One>[]
  : T extends object
    ? { -readonly [Field in keyof T]: Loose<T[Field]> }
    : T;

type MovementBody = MovementState['movement'] extends Register<infer Body> ? Body : never;

function movement(
  number: number,
  body: Pick<MovementBody, 'from' | 'to' | 'what' | 'quantity' | 'how'>,
): MovementState {
  const id = `01900000-0000-7000-8000-0000000001${String(number).padStart(2, '0')}`;
  const whole: MovementBody = {
    ...body,
    colonies: [],
    earliest: '2026-03-01',
    latest: '2026-03-31',
    knownBy: 'told by the keeper',
    happened: true,
  };
  const written = { entry: id, by: inspector.person, device: id, at: firstInstant, clock: '1' };
  const folded: Folded<MovementBody> = { written, body: whole, original: whole, corrections: [] };
  return {
    about: { type: 'movement', id },
    foldVersion: 1,
    notes: [],
    unknown: [],
    erased: [],
    clockFlagged: [],
    movement: { current: folded, contested: [], history: [folded] },
    reasons: [],
  };
}

function withBody(state: MovementState, body: Partial<MovementBody>): MovementState {
  const { current } = state.movement;
  if (!current) return state;
  return { ...state, movement: { ...state.movement, current: { ...current, body: { ...current.body, ...body } } } };
}
