import { cellDatesCalculation } from '../brood/cell-dates.ts';
import { cellsFromCountCalculation, cellsPerAreaCalculation } from '../brood/cells-per-area.ts';
import { broodBalanceCalculation, eggsPerDayCalculation } from '../brood/development-calendar.ts';
import { releaseThisSeasonCalculation } from '../brood/release-this-season.ts';
import { beesOnCombsCalculation, broodCellsCalculation } from '../brood/strength.ts';
import { earliestSignsCalculation } from '../diagnosis/earliest-sign.ts';
import type { Calculation } from '../distributions/calculation.ts';

/** Every calculation on the strength and the calendar of a colony. */
export const ofColony: readonly Calculation[] = [
  beesOnCombsCalculation,
  broodCellsCalculation,
  cellsPerAreaCalculation,
  cellsFromCountCalculation,
  eggsPerDayCalculation,
  broodBalanceCalculation,
  cellDatesCalculation,
  earliestSignsCalculation,
  releaseThisSeasonCalculation,
];
