import type { Act } from '@combside/casework/act';
import { changeMovement, type MovementEnds, recordMovement } from '@combside/casework/register/movement';
import { type ApiaryPage, apiaryPage } from '@combside/contract/apiary-page';
import { colonyPage } from '@combside/contract/colony-page';
import type { MovementBody } from '@combside/record/kinds/movement';
import type { ApiaryState, ColonyState, MovementState } from '@combside/record/states';
import { ask } from '../../device/ask/ask.ts';
import { newId } from '../../device/keys/new-id.ts';
import type { Place } from './movement-end.tsx';

/** A movement as it is being entered: seen from an apiary, as a person tells it. */
export interface MovementDraft {
  /** The apiary from whose record it is told. */
  readonly here: string;
  readonly way: 'away' | 'here';
  readonly other: Place | null;
  readonly what: MovementBody['what'];
  readonly quantity: string;
  readonly named: readonly string[];
  readonly how: MovementBody['how'];
  readonly isExact: boolean;
  readonly first: string;
  readonly last: string;
  readonly knownBy: MovementBody['knownBy'] | '';
}

/** Parts without which nothing can be written, each the id of its label. */
export type Missing =
  | 'register.movement.where-to'
  | 'register.movement.where-from'
  | 'register.movement.day'
  | 'register.movement.first'
  | 'register.movement.last'
  | 'register.movement.who-says';

/** The body of the entry, or what is still missing for it. */
export function bodyOf(draft: MovementDraft): MovementBody | readonly Missing[] {
  const { here, way, other, what, quantity, how, isExact, first, last, knownBy } = draft;
  const missing: Missing[] = [];
  if (other === null) missing.push(way === 'away' ? 'register.movement.where-to' : 'register.movement.where-from');
  if (isExact && last === '') missing.push('register.movement.day');
  if (!isExact && first === '') missing.push('register.movement.first');
  if (!isExact && last === '') missing.push('register.movement.last');
  if (knownBy === '') missing.push('register.movement.who-says');
  if (missing.length > 0 || other === null || knownBy === '') return missing;
  const far = other === 'outside' ? null : other.apiary;
  const named = way === 'away' && what === 'colonies' ? draft.named : [];
  return {
    from: way === 'away' ? here : far,
    to: way === 'away' ? far : here,
    what,
    quantity: quantity.trim() !== '' ? Number(quantity) : named.length > 0 ? named.length : null,
    colonies: [...named],
    how,
    earliest: isExact ? last : first,
    latest: last,
    knownBy,
    happened: true,
  };
}

/** What the draft becomes when it is a change of a movement written before: as told from one of its ends. */
export function draftOf(body: MovementBody, here: string, nameOf: (apiary: string) => string): MovementDraft {
  const way = body.from === here ? 'away' : 'here';
  const far = way === 'away' ? body.to : body.from;
  return {
    here,
    way,
    other: far === null ? 'outside' : { apiary: far, name: nameOf(far) },
    what: body.what,
    quantity: body.quantity === null ? '' : String(body.quantity),
    named: body.colonies,
    how: body.how,
    isExact: body.earliest === body.latest,
    first: body.earliest,
    last: body.latest,
    knownBy: body.knownBy,
  };
}

/**
 * Asks the office for what the movement touches, and makes the act of it.
 *
 * @param written the movement that is changed; null for a new one
 * @throws TransportError when the office does not answer
 */
export async function actOf(body: MovementBody, written: MovementState | null, today: string): Promise<Act> {
  const [from, to] = await Promise.all([pageOf(body.from), pageOf(body.to)]);
  const ends: MovementEnds = { from: stateIn(from), to: stateIn(to) };
  if (written) return changeMovement(written, body, { ends, today });
  const named = await Promise.all(body.colonies.map(colonyOf));
  const labels = new Set(named.map((state) => state.colony.current?.body.label));
  // Only colonies of the same label can stand in the way, so only these are fetched whole.
  const alike = (to?.colonies ?? []).filter(({ label }) => labels.has(label));
  const there = await Promise.all(alike.map(({ colony }) => colonyOf(colony)));
  return recordMovement(newId(), body, { ends, named, there, today });
}

async function pageOf(apiary: string | null): Promise<ApiaryPage | null> {
  return apiary === null ? null : ask(apiaryPage, `/api/apiaries/${apiary}`);
}

function stateIn(page: ApiaryPage | null): ApiaryState | null {
  return page ? (page.apiary as ApiaryState) : null;
}

async function colonyOf(colony: string): Promise<ColonyState> {
  return (await ask(colonyPage, `/api/colonies/${colony}`)).colony as ColonyState;
}
