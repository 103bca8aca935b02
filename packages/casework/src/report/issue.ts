import type { ColonyState, VisitState } from '@combside/record/states';
import { examinationAt } from '../examine/walk.ts';

/** Which issue of a visit's written result this is: a corrected record is handed over anew, under the next number. */
export interface Issue {
  /** 1 for the first. */
  readonly number: number;
  /** When the issue was handed over that this one replaces; null for the first. */
  readonly replaces: string | null;
  /** Whether this very issue has been handed over. */
  readonly handedOver: boolean;
}

/**
 * The issue that a record of this content is. A result in somebody's hand stands as long as no examination of the visit
 * was corrected after it was handed over, whatever else changes in the register meanwhile.
 *
 * @param contentHash fingerprint of the record as it reads now
 */
export function issueOf(visit: VisitState, colonies: readonly ColonyState[], contentHash: string): Issue {
  const given = inOrder(visit.handovers);
  const last = given.at(-1);
  const standing =
    last !== undefined && (last.body.contentHash === contentHash || outdatedSince(visit, colonies) === null);
  const earlier = standing ? given.filter((one) => one.body.contentHash !== last.body.contentHash) : given;
  return {
    number: new Set(earlier.map((one) => one.body.contentHash)).size + 1,
    replaces: earlier.at(-1)?.body.handedOverAt ?? null,
    handedOver: standing,
  };
}

/** When the result was last handed over, if an examination of these colonies was corrected after that; else null. */
export function outdatedSince(visit: VisitState, colonies: readonly ColonyState[]): string | null {
  const last = inOrder(visit.handovers).at(-1);
  if (!last) return null;
  const corrected = colonies.some((colony) =>
    examinationAt(colony, visit.about.id)?.corrections.some(({ written }) => written.clock > last.written.clock),
  );
  return corrected ? last.body.handedOverAt : null;
}

/** The hybrid clock orders what one device wrote and what came after what it saw, whatever the wall clocks say. */
function inOrder(handovers: VisitState['handovers']): VisitState['handovers'] {
  return [...handovers].sort((a, b) => (a.written.clock < b.written.clock ? -1 : 1));
}
