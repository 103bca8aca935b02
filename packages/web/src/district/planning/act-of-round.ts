import type { Act } from '@combside/casework/act';
import { planRound, reasonFor } from '@combside/casework/plan/plan-round';
import type { VisitGround } from '@combside/casework/plan/planning-settings';
import { apiaryPage } from '@combside/contract/apiary-page';
import type { RankedLine } from '@combside/contract/planning';
import { visitPage } from '@combside/contract/visit-page';
import type { ApiaryState, VisitState } from '@combside/record/states';
import { ask } from '../../device/ask/ask.ts';
import { newId } from '../../device/keys/new-id.ts';

/** One apiary of the round that is being laid out. */
export interface Taken {
  readonly line: RankedLine;
  readonly reason: string;
}

/** An apiary as it enters the round: with the reason that its weightiest ground gives. */
export function taken(line: RankedLine): Taken {
  const grounds = line.grounds.map((one) => ({ ...one, ground: one.ground as VisitGround }));
  return { line, reason: line.asked[0]?.reason ?? reasonFor(grounds) };
}

export interface RoundInput {
  readonly stops: readonly Taken[];
  readonly inspector: string;
  readonly firstAt: string;
  readonly minutesBetween: number;
}

/**
 * The act of writing a round. The apiaries, and visits that were asked for, are fetched fresh from the office.
 *
 * @throws TransportError when the office does not answer for one of them
 */
export async function actOfRound({ stops, inspector, firstAt, minutesBetween }: RoundInput): Promise<Act> {
  const asked = await Promise.all(
    stops.map(async ({ line, reason }) => {
      const [waiting] = line.asked;
      const [page, wish] = await Promise.all([
        ask(apiaryPage, `/api/apiaries/${line.apiary}`),
        waiting ? ask(visitPage, `/api/visits/${waiting.visit}`) : null,
      ]);
      return {
        apiary: page.apiary as unknown as ApiaryState,
        reason,
        visit: waiting?.visit ?? newId(),
        asked: wish ? (wish.visit as unknown as VisitState) : null,
      };
    }),
  );
  return planRound({ stops: asked, inspector, firstAt, minutesBetween });
}
