import { bathVolumeCalculation, causticBathCalculation, hypochloriteBathCalculation } from '../disposal/baths.ts';
import { fuelForBurningCalculation, scorchingCalculation } from '../disposal/fire.ts';
import { hotWaxDipCalculation } from '../disposal/hot-wax-dip.ts';
import { irradiationConsignmentCalculation } from '../disposal/irradiation.ts';
import { killingDoseCalculation } from '../disposal/killing.ts';
import { pitForBurningCalculation } from '../disposal/pit.ts';
import type { Calculation } from '../distributions/calculation.ts';

/** Every calculation for destroying and cleaning. Each result opens with its cautions. */
export const ofDisposal: readonly Calculation[] = [
  pitForBurningCalculation,
  fuelForBurningCalculation,
  scorchingCalculation,
  hotWaxDipCalculation,
  bathVolumeCalculation,
  hypochloriteBathCalculation,
  causticBathCalculation,
  irradiationConsignmentCalculation,
  killingDoseCalculation,
];
