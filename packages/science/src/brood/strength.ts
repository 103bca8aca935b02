import { calculation, shown } from '../distributions/calculation.ts';
import { acceptFields, acceptFraction, acceptList, acceptPositive } from '../distributions/domain.ts';

/** One side of one comb as judged by eye, after packing the bees together in the mind. */
export interface CoveredSide {
  /** Comb area of the side in cm², above 0. */
  squareCentimetres: number;
  /** Share covered by bees, 0 to 1. */
  covered: number;
}

/** One side of one comb, with the share of it that each stage of brood takes up; together at most 1. */
export interface BroodSide {
  /** Comb area of the side in cm², above 0. */
  squareCentimetres: number;
  /** Shares 0 to 1. */
  eggs: number;
  larvae: number;
  capped: number;
}

/** A number with the ends that the stated error leaves open. */
export interface Judged {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

const judged = (value: number, error: number): Judged => ({
  value,
  low: value * (1 - error),
  high: value * (1 + error),
});

/**
 * How many bees sit on the combs?
 *
 *   bees = sum over sides of area * share covered * bees per area
 *
 * Judge early in the morning before flight, or with entrances closed; bees abroad are not counted.
 * Worked: 10 deep sides of 871 cm² at 80 %, 130 bees per dm²: 9,058.
 *
 * @param inputs.sides see `CoveredSide`; at least one
 * @param inputs.beesPerSquareDecimetre bees on 1 dm² of a side fully covered, above 0; no default (`comb-constants.ts`)
 * @param inputs.errorByEye relative error of judging by eye, 0 to 1; 0.15 is remembered, more when bees are flying
 * @returns bees, with the ends the error leaves open
 * @throws DomainError on inputs outside these ranges
 * Source: Delaplane et al. 2013, s. 4.2 [BB-STR-4.2]; Imdorf and Gerig [IMD]
 */
export function beesOnCombs(inputs: {
  sides: readonly CoveredSide[];
  beesPerSquareDecimetre: number;
  errorByEye: number;
}): { bees: Judged; coveredSquareDecimetres: number } {
  const perArea = acceptPositive('beesPerSquareDecimetre', inputs.beesPerSquareDecimetre);
  const error = acceptFraction('errorByEye', inputs.errorByEye);
  const covered = acceptList('sides', inputs.sides, (name, value) => {
    const side = acceptFields(name, value);
    return (
      (acceptPositive(`${name}.squareCentimetres`, side.squareCentimetres) / 100) *
      acceptFraction(`${name}.covered`, side.covered)
    );
  }).reduce((a, b) => a + b, 0);
  return { bees: judged(covered * perArea, error), coveredSquareDecimetres: covered };
}

const errorByEyeDescribed = 'relative error of judging by eye, 0 to 1';

export const beesOnCombsCalculation = calculation({
  name: 'beesOnCombs',
  room: 'colony',
  line: 'bees from comb sides covered',
  inputs: {
    sides: 'list of {squareCentimetres, covered (share 0 to 1)}, one per side of a comb',
    beesPerSquareDecimetre: 'bees on 1 dm² of a side fully covered, above 0',
    errorByEye: errorByEyeDescribed,
  },
  formula: 'sum(area * covered) * bees per area',
  sources: ['BB-STR-4.2', 'IMD'],
  call: beesOnCombs,
  steps: (i, r) => [
    `${i.sides.length} sides, ${shown(r.coveredSquareDecimetres)} dm² covered, times ${shown(i.beesPerSquareDecimetre)}`,
    `${shown(r.bees.value)} bees (${shown(r.bees.low)} to ${shown(r.bees.high)})`,
  ],
});

/**
 * How many cells of eggs, open larvae and capped brood are there?
 *
 *   cells = sum over sides of area * share * cells per area
 *
 * Worked: 35 % of one side of 871 cm² capped, 4.0 cells/cm²: 1,219 cells.
 *
 * @param inputs.sides see `BroodSide`; at least one
 * @param inputs.cellsPerSquareCentimetre of one side, above 0; no default (`comb-constants.ts`, or `cells-per-area.ts`)
 * @param inputs.errorByEye relative error of judging by eye, 0 to 1
 * @returns cells per stage and together, with the ends the error leaves open
 * @throws DomainError on inputs outside these ranges, and when the shares of a side exceed 1
 * Source: Delaplane et al. 2013, s. 4.2 [BB-STR-4.2]
 */
export function broodCells(inputs: {
  sides: readonly BroodSide[];
  cellsPerSquareCentimetre: number;
  errorByEye: number;
}): { eggs: Judged; larvae: Judged; capped: Judged; all: Judged } {
  const perArea = acceptPositive('cellsPerSquareCentimetre', inputs.cellsPerSquareCentimetre);
  const error = acceptFraction('errorByEye', inputs.errorByEye);
  const areas = acceptList('sides', inputs.sides, (name, value) => {
    const side = acceptFields(name, value);
    const area = acceptPositive(`${name}.squareCentimetres`, side.squareCentimetres);
    const eggs = acceptFraction(`${name}.eggs`, side.eggs);
    const larvae = acceptFraction(`${name}.larvae`, side.larvae);
    const capped = acceptFraction(`${name}.capped`, side.capped);
    acceptFraction(`${name}.eggs + larvae + capped`, Number((eggs + larvae + capped).toFixed(12)));
    return [area * eggs, area * larvae, area * capped] as const;
  });
  const total = (stage: 0 | 1 | 2) => areas.reduce((sum, side) => sum + side[stage], 0) * perArea;
  const [eggs, larvae, capped] = [total(0), total(1), total(2)];
  return {
    eggs: judged(eggs, error),
    larvae: judged(larvae, error),
    capped: judged(capped, error),
    all: judged(eggs + larvae + capped, error),
  };
}

export const broodCellsCalculation = calculation({
  name: 'broodCells',
  room: 'colony',
  line: 'eggs, larvae and capped cells from comb area',
  inputs: {
    sides: 'list of {squareCentimetres, eggs, larvae, capped (shares 0 to 1)}',
    cellsPerSquareCentimetre: 'cells on 1 cm² of a side, above 0',
    errorByEye: errorByEyeDescribed,
  },
  formula: 'sum(area * share) * cells per area, per stage',
  sources: ['BB-STR-4.2'],
  call: broodCells,
  steps: (_, r) => [
    `eggs ${shown(r.eggs.value)}, larvae ${shown(r.larvae.value)}, capped ${shown(r.capped.value)}`,
    `together ${shown(r.all.value)} (${shown(r.all.low)} to ${shown(r.all.high)})`,
  ],
});
