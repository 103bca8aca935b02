import type { Calculation } from '../distributions/calculation.ts';
import { combineTwoTestsCalculation } from '../laboratory/combine-two-tests.ts';
import { meaningOfLoadCalculation } from '../laboratory/laboratory-limits.ts';
import { meaningOfResultCalculation } from '../laboratory/meaning-of-result.ts';
import { multipleHypothesesCalculation } from '../laboratory/multiple-hypotheses.ts';
import { plateCountCalculation, sporesAssumingRecoveryCalculation } from '../laboratory/plate-count.ts';
import { chanceOfCarrierInSampleCalculation, loadInPoolCalculation } from '../laboratory/pooled-load.ts';
import { postTestProbabilityCalculation, predictiveValuesCalculation } from '../laboratory/predictive-values.ts';

/** Every calculation on laboratory numbers and what they mean. */
export const ofLaboratory: readonly Calculation[] = [
  plateCountCalculation,
  sporesAssumingRecoveryCalculation,
  loadInPoolCalculation,
  chanceOfCarrierInSampleCalculation,
  meaningOfLoadCalculation,
  combineTwoTestsCalculation,
  predictiveValuesCalculation,
  meaningOfResultCalculation,
  postTestProbabilityCalculation,
  multipleHypothesesCalculation,
];
