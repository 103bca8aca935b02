import { daysBetween } from '@combside/calendar/instant';
import type { Proposal } from '@combside/record/entry';
import { type MovementBody, movement, movementBody } from '@combside/record/kinds/movement';
import type { ApiaryState, ColonyState, MovementState } from '@combside/record/states';
import { type Act, done, type Refused, refused } from '../act.ts';
import { changedFields, firstFault } from './change.ts';
import { changeColony } from './colony.ts';
import { seen } from './seen.ts';

/** The apiaries a movement names, as the register knows them; null where the other end is not in the register. */
export interface MovementEnds {
  readonly from: ApiaryState | null;
  readonly to: ApiaryState | null;
}

/**
 * Enters a movement of bees or of what they lived in. `id` is a new identifier made by the edge.
 *
 * Refused when neither end is known, when both ends are the same apiary, when an end is not in the register, when the
 * earliest day lies after the latest, or when fewer are said to have gone than are named one by one.
 */
export function newMovement(id: string, body: MovementBody, ends: MovementEnds): Act {
  return (
    faultOf(body, ends) ??
    done([{ kind: movement.kind, version: movement.version, about: { type: 'movement', id }, body, replaces: [] }])
  );
}

/** What has to be known of the register before a movement is recorded. */
export interface MovementSurroundings {
  readonly ends: MovementEnds;
  /** The colonies that the movement names one by one, in any order. */
  readonly named: readonly ColonyState[];
  /** Every colony that stands where the movement went. */
  readonly there: readonly ColonyState[];
  /** The day of writing, `YYYY-MM-DD`. */
  readonly today: string;
}

/**
 * Records a movement as the office is told of it, and takes the colonies that are named one by one along: the register
 * then says that they stand where they went or, when that is not in the register, that they are gone.
 *
 * Refused as `newMovement` is, and when the day is still to come, when a named colony does not stand where the movement
 * began, or when its label is used already where it went.
 */
export function recordMovement(id: string, body: MovementBody, around: MovementSurroundings): Act {
  const { ends, named, there, today } = around;
  const act = newMovement(id, body, ends);
  if (!act.ok) return act;
  if (daysBetween(today, body.latest) > 0) return refused('casework.refused.day-to-come');
  const taken: Proposal[] = [];
  for (const colonyId of body.colonies) {
    const state = named.find((one) => one.about.id === colonyId);
    const before = state?.colony.current?.body;
    if (!state || !before) return refused('casework.refused.not-in-register');
    if (before.apiary !== body.from) return refused('casework.refused.colony-elsewhere');
    if (before.hiveState === 'gone') return refused('casework.refused.colony-gone');
    const went = changeColony(state, body.to === null ? { hiveState: 'gone' } : { apiary: body.to }, there);
    if (!went.ok) return went;
    taken.push(...went.proposals);
  }
  return done([...act.proposals, ...taken]);
}

/**
 * Changes what the register says about a movement, because it was entered wrongly or more is known now. Colonies named
 * one by one stay as they are: where they stand is changed at the colony.
 */
export function changeMovement(
  state: MovementState,
  change: Partial<MovementBody>,
  { ends, today }: Pick<MovementSurroundings, 'ends' | 'today'>,
): Act<{ readonly changed: string[] }> {
  const before = state.movement.current?.body;
  if (!before) return refused('casework.refused.not-in-register');
  const body = { ...before, ...change };
  const fault = faultOf(body, ends);
  if (fault) return fault;
  if (daysBetween(today, body.latest) > 0) return refused('casework.refused.day-to-come');
  const changed = changedFields(before, body);
  if (changed.length === 0) return refused('casework.refused.nothing-changed');
  const proposal = {
    kind: movement.kind,
    version: movement.version,
    about: state.about,
    body,
    replaces: seen(state.movement),
  };
  return { ...done([proposal]), changed };
}

/**
 * Takes back a movement that was entered in error, or says that it did happen after all. Colonies named one by one stay
 * where the register has them: where they stand is changed at the colony.
 */
export function sayWhetherItHappened(state: MovementState, happened: boolean): Act {
  const before = state.movement.current?.body;
  if (!before) return refused('casework.refused.not-in-register');
  if (before.happened === happened) return refused('casework.refused.nothing-changed');
  return done([
    {
      kind: movement.kind,
      version: movement.version,
      about: state.about,
      body: { ...before, happened },
      replaces: seen(state.movement),
    },
  ]);
}

function faultOf(body: MovementBody, ends: MovementEnds): Refused | null {
  const fault = firstFault(movementBody, body);
  if (fault) return refused('casework.refused.shape', { field: fault });
  if (body.from === null && body.to === null) return refused('casework.refused.movement-nowhere');
  if (body.from === body.to) return refused('casework.refused.movement-nowhere');
  for (const [named, state] of [
    [body.from, ends.from],
    [body.to, ends.to],
  ] as const) {
    if (named !== (state?.about.id ?? null) || (state && !state.apiary.current)) {
      return refused('casework.refused.not-in-register');
    }
  }
  if (daysBetween(body.earliest, body.latest) < 0) return refused('casework.refused.days-exchanged');
  if (body.quantity !== null && body.quantity < body.colonies.length) {
    return refused('casework.refused.fewer-than-named', { named: body.colonies.length });
  }
  return null;
}
