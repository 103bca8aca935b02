import type { Pack } from '@combside/law/pack';
import type { Proposal } from '@combside/record/entry';
import {
  type AssessmentBody,
  assessment,
  type CircumstancesKnown,
  type PriorChanged,
} from '@combside/record/kinds/assessment';
import { type Assessed, scienceVersion } from './assess-examination.ts';

/**
 * The entry that states an assessment: the word of the result, who suspects and why, what the reasoning said at that
 * moment, and by which versions of reasoning and pack.
 *
 * @param examination id of the examination entry it rests on
 * @param known what was known before the look, as the reasoning took it
 */
export function proposeAssessment(
  assessed: Assessed,
  colony: string,
  visit: string,
  examination: string,
  statedAt: string,
  pack: Pack,
  known: CircumstancesKnown | null = null,
  priorChanges: readonly PriorChanged[] = [],
): Proposal<AssessmentBody> {
  const { reasoning } = assessed;
  const suspected =
    assessed.suspicion?.conditions ??
    (assessed.result === 'remains suspect' ? assessed.stillSuspect?.conditions : null);
  return {
    kind: assessment.kind,
    version: assessment.version,
    about: { type: 'colony', id: colony },
    body: {
      examination,
      visit,
      statedAt,
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
      circumstances: known,
      priorChanges: [...priorChanges],
      combReadings: [...assessed.combReadings],
      scienceVersion,
      pack: { id: pack.id, version: pack.version },
    },
    replaces: [],
  };
}
