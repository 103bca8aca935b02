import { calculation, shown } from '../distributions/calculation.ts';
import { acceptPositive } from '../distributions/domain.ts';

/**
 * How many cells stand on a square centimetre of one side of comb?
 *
 *   1 / (sqrt(3)/2 * d^2) for a regular hexagon of width d (flat to flat)
 *
 * Worked: 5.2 mm 4.27, 5.37 mm 4.00, 5.5 mm 3.82 per cm².
 *
 * @param inputs.widthMillimetres d, above 0
 * @returns cells per cm² of one side, and per dm² of both sides
 * @throws DomainError on inputs outside this range
 * Source: geometry; widths and 760 to 875 per dm² of both sides [CELLRACE]
 */
export function cellsPerArea(inputs: { widthMillimetres: number }): {
  perSquareCentimetreSide: number;
  perSquareDecimetreBothSides: number;
} {
  const width = acceptPositive('widthMillimetres', inputs.widthMillimetres) / 10;
  const perSquareCentimetreSide = 2 / (Math.sqrt(3) * width * width);
  return { perSquareCentimetreSide, perSquareDecimetreBothSides: 200 * perSquareCentimetreSide };
}

export const cellsPerAreaCalculation = calculation({
  name: 'cellsPerArea',
  room: 'colony',
  line: 'cells per area from the width of a cell',
  inputs: { widthMillimetres: 'flat to flat, above 0' },
  formula: '1/(sqrt(3)/2 d^2)',
  sources: ['CELLRACE'],
  call: cellsPerArea,
  steps: (i, r) => [
    `${shown(i.widthMillimetres)} mm: ${shown(r.perSquareCentimetreSide)} per cm² of one side, ${shown(r.perSquareDecimetreBothSides)} per dm² of both`,
  ],
});

/**
 * The old rule: cells on both sides of a square decimetre from a count along ten centimetres.
 *
 *   2.309 n^2, that is 4/sqrt(3) n^2
 *
 * Worked: 12.8 give 378, 20 give 924.
 *
 * @param inputs.cellsInTenCentimetres n, above 0
 * @throws DomainError on inputs outside this range
 * Source: The size of brood-comb cells, Bee World Sept 1938, pp. 106-107 [BETTS38]
 */
export function cellsFromCount(inputs: { cellsInTenCentimetres: number }): { perSquareDecimetreBothSides: number } {
  const n = acceptPositive('cellsInTenCentimetres', inputs.cellsInTenCentimetres);
  return { perSquareDecimetreBothSides: (4 / Math.sqrt(3)) * n * n };
}

export const cellsFromCountCalculation = calculation({
  name: 'cellsFromCount',
  room: 'colony',
  line: 'cells on both sides per dm² from a count along ten centimetres',
  inputs: { cellsInTenCentimetres: 'above 0' },
  formula: '4/sqrt(3) n^2',
  sources: ['BETTS38'],
  call: cellsFromCount,
  steps: (i, r) => [`2.309 * ${shown(i.cellsInTenCentimetres)}^2 = ${shown(r.perSquareDecimetreBothSides)}`],
});
