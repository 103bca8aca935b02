import { cellsFromCount, cellsPerArea } from '../brood/cells-per-area.ts';
import { broodBalance, eggsPerDay } from '../brood/development-calendar.ts';
import { beesOnCombs, broodCells } from '../brood/strength.ts';
import { type Calculation, calculation, shown as n } from './calculation.ts';

const room = 'colony';
const error = 'relative error of judging by eye, 0 to 1';

/** Every calculation on the strength of a colony, by name. */
export const ofColony: Readonly<Record<string, Calculation>> = {
  beesOnCombs: calculation({
    room,
    line: 'bees from comb sides covered',
    inputs: {
      sides: 'list of {squareCentimetres, covered (share 0 to 1)}, one per side of a comb',
      beesPerSquareDecimetre: 'bees on 1 dm² of a side fully covered, above 0',
      errorByEye: error,
    },
    formula: 'sum(area * covered) * bees per area',
    sources: ['BB-STR-4.2', 'IMD'],
    call: beesOnCombs,
    steps: (i, r) => [
      `${i.sides.length} sides, ${n(r.coveredSquareDecimetres)} dm² covered, times ${n(i.beesPerSquareDecimetre)}`,
      `${n(r.bees.value)} bees (${n(r.bees.low)} to ${n(r.bees.high)})`,
    ],
  }),
  broodCells: calculation({
    room,
    line: 'eggs, larvae and capped cells from comb area',
    inputs: {
      sides: 'list of {squareCentimetres, eggs, larvae, capped (shares 0 to 1)}',
      cellsPerSquareCentimetre: 'cells on 1 cm² of a side, above 0',
      errorByEye: error,
    },
    formula: 'sum(area * share) * cells per area, per stage',
    sources: ['BB-STR-4.2'],
    call: broodCells,
    steps: (_, r) => [
      `eggs ${n(r.eggs.value)}, larvae ${n(r.larvae.value)}, capped ${n(r.capped.value)}`,
      `together ${n(r.all.value)} (${n(r.all.low)} to ${n(r.all.high)})`,
    ],
  }),
  cellsPerArea: calculation({
    room,
    line: 'cells per area from the width of a cell',
    inputs: { widthMillimetres: 'flat to flat, above 0' },
    formula: '1/(sqrt(3)/2 d^2)',
    sources: ['CELLRACE'],
    call: cellsPerArea,
    steps: (i, r) => [
      `${n(i.widthMillimetres)} mm: ${n(r.perSquareCentimetreSide)} per cm² of one side, ${n(r.perSquareDecimetreBothSides)} per dm² of both`,
    ],
  }),
  cellsFromCount: calculation({
    room,
    line: 'cells on both sides per dm² from a count along ten centimetres',
    inputs: { cellsInTenCentimetres: 'above 0' },
    formula: '4/sqrt(3) n^2',
    sources: ['BETTS38'],
    call: cellsFromCount,
    steps: (i, r) => [`2.309 * ${n(i.cellsInTenCentimetres)}^2 = ${n(r.perSquareDecimetreBothSides)}`],
  }),
  eggsPerDay: calculation({
    room,
    line: 'eggs laid a day, from capped worker cells with steady laying',
    inputs: { cappedCells: 'capped worker cells, 0 or more' },
    formula: 'capped / 12',
    sources: ['DEV-CASTE'],
    call: (i: { cappedCells: number }) => ({ eggsPerDay: eggsPerDay(i.cappedCells) }),
    steps: (i, r) => [`${n(i.cappedCells)} / 12 = ${n(r.eggsPerDay)}`],
  }),
  broodBalance: calculation({
    room,
    line: 'eggs : larvae : capped against 1 : 2 : 4 of steady laying',
    inputs: { egg: 'cells with eggs, 0 or more', larva: 'cells with open larvae', capped: 'capped cells' },
    formula: 'each step within 25 % of twofold is steady',
    sources: ['RATIO'],
    call: (i: { egg: number; larva: number; capped: number }) => ({ balance: broodBalance(i) }),
    steps: (i, r) => [`${n(i.egg)} : ${n(i.larva)} : ${n(i.capped)} is ${r.balance} (a suggestion, not a finding)`],
  }),
};
