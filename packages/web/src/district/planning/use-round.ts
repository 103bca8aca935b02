import type { Refused } from '@combside/casework/act';
import { planRound, reasonFor } from '@combside/casework/plan/plan-round';
import type { VisitGround } from '@combside/casework/plan/planning-settings';
import type { ApiaryPage } from '@combside/contract/apiary-page';
import type { RankedLine } from '@combside/contract/planning';
import type { VisitPage } from '@combside/contract/visit-page';
import type { ApiaryState, VisitState } from '@combside/record/states';
import type { Device } from '../../device/start.ts';

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

export type RoundWritten =
  | { readonly ok: true }
  | {
      readonly ok: false;
      readonly why: 'refused';
      readonly reason: Refused['reason'];
      readonly values: Refused['values'];
    }
  | { readonly ok: false; readonly why: 'not asked'; readonly name: string };

/**
 * Writes a round on this desk's own chain. The apiaries, and visits that were asked for, are fetched fresh from the office;
 * what a visit replaces must lie on this device, which its exchange with the office brings.
 */
export async function writeRound(device: Device, input: RoundInput): Promise<RoundWritten> {
  const stops = [];
  for (const { line, reason } of input.stops) {
    const waiting = line.asked[0];
    const [page, asked] = await Promise.all([
      fetchPage<ApiaryPage>(`/api/apiaries/${line.apiary}`),
      waiting ? fetchPage<VisitPage>(`/api/visits/${waiting.visit}`) : null,
    ]);
    if (page === null || (waiting && asked === null)) return { ok: false, why: 'not asked', name: line.name };
    stops.push({
      apiary: page.apiary as unknown as ApiaryState,
      reason,
      visit: waiting?.visit ?? device.book.newId(),
      asked: asked ? (asked.visit as unknown as VisitState) : null,
    });
  }
  const act = planRound({
    stops,
    inspector: input.inspector,
    firstAt: input.firstAt,
    minutesBetween: input.minutesBetween,
  });
  if (!act.ok) return { ok: false, why: 'refused', reason: act.reason, values: act.values };
  // A wish for a visit was written elsewhere: it has to lie here before an entry can replace it.
  if (act.proposals.some((one) => one.replaces.length > 0)) await device.sync.run();
  await device.book.write(act.proposals);
  return { ok: true };
}

async function fetchPage<T>(address: string): Promise<T | null> {
  try {
    const response = await fetch(address);
    return response.ok ? ((await response.json()) as T) : null;
  } catch {
    return null;
  }
}
