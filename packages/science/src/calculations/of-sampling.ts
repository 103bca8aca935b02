import type { Calculation } from '../distributions/calculation.ts';
import { kappaCalculation } from '../sampling/agreement.ts';
import {
  betaFromMeanCalculation,
  betaFromModeCalculation,
  betaFromRangeCalculation,
} from '../sampling/beta-from-opinion.ts';
import {
  cutPointRuleFinitePopulationCalculation,
  cutPointRuleLargePopulationCalculation,
  probabilityOfSoFewPositivesIfInfectedCalculation,
} from '../sampling/cut-point-rule.ts';
import {
  detectionProbabilityFiniteApproximationCalculation,
  detectionProbabilityFinitePopulationCalculation,
  detectionProbabilityLargePopulationCalculation,
  detectionVaryingSensitivityCalculation,
} from '../sampling/detection-probability.ts';
import {
  negativeRoundsNeededCalculation,
  plateauOfFreedomCalculation,
  probabilityOfFreedomOverTimeCalculation,
  sampleSizeForFreedomCalculation,
  sensitivityNeededForFreedomCalculation,
} from '../sampling/freedom.ts';
import {
  agrestiCoullCalculation,
  blakerCalculation,
  clopperPearsonCalculation,
  jeffreysCalculation,
  wilsonCalculation,
} from '../sampling/interval.ts';
import {
  pooledHerdTestCalculation,
  pooledPrevalenceImperfectTestCalculation,
  pooledPrevalencePerfectTestCalculation,
  pooledPrevalenceVariableSizeCalculation,
  pooledSurveySensitivityCalculation,
  poolsNeededCalculation,
} from '../sampling/pools.ts';
import { posteriorPrevalenceCalculation } from '../sampling/posterior-prevalence.ts';
import {
  riskBasedSampleSizeCalculation,
  riskBasedSensitivityCalculation,
  riskBasedSensitivityTwoFactorsCalculation,
} from '../sampling/risk-based.ts';
import {
  sampleSizeImperfectTestFinitePopulationCalculation,
  sampleSizeImperfectTestLargePopulationCalculation,
} from '../sampling/sample-size-imperfect-test.ts';
import {
  sampleSizeApproximationImperfectSensitivityCalculation,
  sampleSizeApproximationPerfectTestCalculation,
  sampleSizeToDetectFinitePopulationCalculation,
  sampleSizeToDetectLargePopulationCalculation,
} from '../sampling/sample-size-to-detect.ts';
import { sampleSizeToEstimateCalculation } from '../sampling/sample-size-to-estimate.ts';
import { combineComponentsCalculation, reportingSensitivityCalculation } from '../sampling/surveillance-components.ts';
import {
  roganGladenNormalCalculation,
  truePrevalenceBlakerCalculation,
  truePrevalenceClopperPearsonCalculation,
  truePrevalenceEstimatedTestCalculation,
  truePrevalenceWilsonCalculation,
} from '../sampling/true-prevalence.ts';
import {
  apiariesForColoniesPerApiaryCalculation,
  twoStageSampleSizesCalculation,
  twoStageSystemSensitivityCalculation,
  twoStageSystemSensitivityExactCalculation,
} from '../sampling/two-stage.ts';
import { twoTestsTwoPopulationsBayesCalculation, twoTestsTwoPopulationsCalculation } from '../sampling/two-tests.ts';
import { undetectedCasesCalculation } from '../sampling/undetected-cases.ts';
import { upperPrevalenceAfterAllNegativeCalculation } from '../sampling/upper-prevalence.ts';

/** Every calculation about samples, surveys, freedom, prevalence and agreement. */
export const ofSampling: readonly Calculation[] = [
  sampleSizeToDetectLargePopulationCalculation,
  sampleSizeToDetectFinitePopulationCalculation,
  sampleSizeApproximationPerfectTestCalculation,
  sampleSizeApproximationImperfectSensitivityCalculation,
  sampleSizeImperfectTestFinitePopulationCalculation,
  sampleSizeImperfectTestLargePopulationCalculation,
  sampleSizeToEstimateCalculation,
  detectionProbabilityLargePopulationCalculation,
  detectionProbabilityFinitePopulationCalculation,
  detectionProbabilityFiniteApproximationCalculation,
  detectionVaryingSensitivityCalculation,
  cutPointRuleFinitePopulationCalculation,
  cutPointRuleLargePopulationCalculation,
  probabilityOfSoFewPositivesIfInfectedCalculation,
  upperPrevalenceAfterAllNegativeCalculation,
  twoStageSampleSizesCalculation,
  twoStageSystemSensitivityCalculation,
  twoStageSystemSensitivityExactCalculation,
  apiariesForColoniesPerApiaryCalculation,
  riskBasedSensitivityCalculation,
  riskBasedSampleSizeCalculation,
  riskBasedSensitivityTwoFactorsCalculation,
  probabilityOfFreedomOverTimeCalculation,
  plateauOfFreedomCalculation,
  sensitivityNeededForFreedomCalculation,
  negativeRoundsNeededCalculation,
  sampleSizeForFreedomCalculation,
  combineComponentsCalculation,
  reportingSensitivityCalculation,
  wilsonCalculation,
  clopperPearsonCalculation,
  jeffreysCalculation,
  blakerCalculation,
  agrestiCoullCalculation,
  truePrevalenceBlakerCalculation,
  truePrevalenceClopperPearsonCalculation,
  truePrevalenceWilsonCalculation,
  truePrevalenceEstimatedTestCalculation,
  roganGladenNormalCalculation,
  posteriorPrevalenceCalculation,
  pooledPrevalencePerfectTestCalculation,
  pooledPrevalenceImperfectTestCalculation,
  pooledPrevalenceVariableSizeCalculation,
  pooledSurveySensitivityCalculation,
  poolsNeededCalculation,
  pooledHerdTestCalculation,
  kappaCalculation,
  twoTestsTwoPopulationsCalculation,
  twoTestsTwoPopulationsBayesCalculation,
  undetectedCasesCalculation,
  betaFromModeCalculation,
  betaFromMeanCalculation,
  betaFromRangeCalculation,
];
