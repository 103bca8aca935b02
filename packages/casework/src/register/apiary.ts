import { type ApiaryBody, apiary, apiaryBody } from '@combside/record/kinds/apiary';
import type { PhotographReference } from '@combside/record/kinds/examination';
import { photograph } from '@combside/record/kinds/photograph';
import { reason as reasonKind } from '@combside/record/kinds/reason';
import type { ApiaryState, ColonyState } from '@combside/record/states';
import { type Act, done, finding, refused } from '../act.ts';
import { saysSuspect } from '../result/results-by-gravity.ts';
import { changedFields, firstFault } from './change.ts';
import { seen } from './seen.ts';
import { standingAt } from './standing-at.ts';

/** Enters an apiary in the register. `id` is a new identifier made by the edge. */
export function newApiary(id: string, body: ApiaryBody): Act {
  const fault = firstFault(apiaryBody, body);
  if (fault) return refused('casework.refused.shape', { field: fault });
  return done([{ kind: apiary.kind, version: apiary.version, about: { type: 'apiary', id }, body, replaces: [] }]);
}

/** Changes what the register says about an apiary. The district changes by `moveApiary` alone. */
export function changeApiary(
  state: ApiaryState,
  change: Partial<Omit<ApiaryBody, 'district'>>,
): Act<{ readonly changed: string[] }> {
  const before = state.apiary.current?.body;
  if (!before) return refused('casework.refused.not-in-register');
  const body = { ...before, ...change };
  const fault = firstFault(apiaryBody, body);
  if (fault) return refused('casework.refused.shape', { field: fault });
  const changed = changedFields(before, body);
  if (changed.length === 0) return refused('casework.refused.nothing-changed');
  const proposal = {
    kind: apiary.kind,
    version: apiary.version,
    about: state.about,
    body,
    replaces: seen(state.apiary),
  };
  return { ...done([proposal]), changed };
}

/** Where an apiary goes, and why. */
export interface MoveApiary {
  readonly district: string;
  /** Where it stands now; null keeps the position as it is. */
  readonly position: ApiaryBody['position'];
  readonly reason: string;
  /** A fresh identifier for the changed entry, since the reason has to name it. */
  readonly entryId: string;
}

/**
 * Moves an apiary into another district: the office that keeps it changes, with the reason, and a suspicion that stands
 * there travels with it, which is said.
 *
 * @param colonies those that stand there, for their suspicions
 */
export function moveApiary(state: ApiaryState, colonies: readonly ColonyState[], move: MoveApiary): Act {
  const { district, position, reason, entryId } = move;
  const before = state.apiary.current?.body;
  if (!before) return refused('casework.refused.not-in-register');
  if (before.district === district) return refused('casework.refused.same-district', { district });
  if (reason.trim() === '') return refused('casework.refused.reason-missing');
  const body: ApiaryBody = { ...before, district, position: position ?? before.position };
  const fault = firstFault(apiaryBody, body);
  if (fault) return refused('casework.refused.shape', { field: fault });
  const suspects = standingAt(state.about.id, colonies).filter((one) =>
    one.assessments.some((made) => saysSuspect(made.body.result)),
  );
  return done(
    [
      {
        id: entryId,
        kind: apiary.kind,
        version: apiary.version,
        about: state.about,
        body,
        replaces: seen(state.apiary),
      },
      {
        kind: reasonKind.kind,
        version: reasonKind.version,
        about: state.about,
        body: { explains: entryId, text: reason.trim() },
        replaces: [],
      },
    ],
    suspects.length > 0
      ? [finding('casework.register.case-travels', 'warns', { count: suspects.length, district }, state.about)]
      : [],
  );
}

/** A site found at the roadside: a position, perhaps photographs, and no owner needed. */
export interface UnregisteredSite {
  readonly id: string;
  readonly name: string;
  readonly district: string;
  readonly position: NonNullable<ApiaryBody['position']> | null;
  readonly addressWords: string;
  readonly coloniesCounted: number | null;
  readonly seenOn: string;
  readonly photographs?: readonly PhotographReference[];
}

/** Enters an unregistered site. Refused without a position: a place nobody can find again is not recorded. */
export function unregisteredSite(input: UnregisteredSite): Act {
  if (input.position === null) return refused('casework.refused.position-missing');
  const entered = newApiary(input.id, {
    name: input.name,
    number: null,
    keeper: null,
    district: input.district,
    position: input.position,
    addressWords: input.addressWords,
    lastConfirmedOn: input.seenOn,
    coloniesRegistered: input.coloniesCounted,
    plan: null,
  });
  if (!entered.ok) return entered;
  const about = { type: 'apiary', id: input.id };
  const { kind, version } = photograph;
  const pictures = (input.photographs ?? []).map((body) => ({ kind, version, about, body, replaces: [] }));
  return done([...entered.proposals, ...pictures], [finding('casework.register.owner-not-known', 'tells', {}, about)]);
}
