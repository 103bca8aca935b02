import type { ColonyState } from '@combside/record/states';

/** Changes when a reading of a comb photograph is kept, accepted or corrected: then the reasoning is asked again. */
export function combReadingsSaid(colony: ColonyState): readonly (readonly [string, number])[] {
  return colony.combReadings.map((one) => [one.written.entry, one.corrections.length]);
}
