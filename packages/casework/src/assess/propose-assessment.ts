import type { Pack } from '@combside/law/pack';
import type { Proposal } from '@combside/record/entry';
import {
  type AssessmentBody,
  assessment,
  type CircumstancesKnown,
  type PriorChanged,
} from '@combside/record/kinds/assessment';
import { type Assessed, scienceVersion } from './assess-examination.ts';

/** What an assessment rests on. */
export interface AssessmentBasis {
  readonly colony: string;
  readonly visit: string;
  /** Id of the examination entry. */
  readonly examination: string;
  readonly statedAt: string;
  readonly pack: Pack;
  /** What was known before the look, as the reasoning took it. */
  readonly known: CircumstancesKnown | null;
  readonly priorChanges: readonly PriorChanged[];
}

/**
 * The entry that states an assessment: the word of the result, who suspects and why, what the reasoning said at that
 * moment, and by which versions of reasoning and pack.
 */
export function proposeAssessment(assessed: Assessed, basis: AssessmentBasis): Proposal<AssessmentBody> {
  const { pack } = basis;
  const { reasoning } = assessed;
  const suspected =
    assessed.suspicion?.conditions ??
    (assessed.result === 'remains suspect' ? assessed.stillSuspect?.conditions : null);
  return {
    kind: assessment.kind,
    version: assessment.version,
    about: { type: 'colony', id: basis.colony },
    body: {
      examination: basis.examination,
      visit: basis.visit,
      statedAt: basis.statedAt,
      result: assessed.result,
      suspected: [...(suspected ?? [])],
      basis: assessed.suspicion?.basis ?? 'inspector',
      rule: assessed.suspicion?.rule?.id ?? null,
      differential: reasoning.diseases.map((one) => ({
        condition: one.disease,
        probability: one.point,
        low: one.interval.low,
        high: one.interval.high,
      })),
      nextCheck: reasoning.next.atHive[0]?.check ?? reasoning.next.inLaboratory[0]?.check ?? null,
      circumstances: basis.known,
      priorChanges: [...basis.priorChanges],
      combReadings: [...assessed.combReadings],
      scienceVersion,
      pack: { id: pack.id, version: pack.version },
    },
    replaces: [],
  };
}
