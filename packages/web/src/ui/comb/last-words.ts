import type { CombReadingBody } from '@combside/record/kinds/comb-reading';

type Corrections = CombReadingBody['corrections'];

/** The last word on each cell, for the record. */
export function lastWords(corrections: Corrections): Corrections {
  return [...new Map(corrections.map((one) => [one.cell, one])).values()];
}

/** What a person says of a reading, but for the reason: equal when it is the same, whatever the order of the words. */
export function whatIsSaid({
  corrections,
  place,
  accepted,
}: Pick<CombReadingBody, 'corrections' | 'place' | 'accepted'>): string {
  const cells = lastWords(corrections).sort((a, b) => a.cell - b.cell);
  return JSON.stringify([cells, place.box, place.frame, place.side, accepted]);
}
