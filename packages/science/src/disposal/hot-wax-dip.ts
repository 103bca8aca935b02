import type { SourcedValue } from '@combside/sources/sourced-value';
import { calculation, shown } from '../distributions/calculation.ts';
import { acceptCount, acceptNumber, acceptPositive, acceptWord, DomainError } from '../distributions/domain.ts';
import { type CautionId, cautionsOfMethod } from './cautions.ts';
import { acceptBeesDead, acceptDone } from './chosen.ts';
import * as described from './inputs-described.ts';

/** Hot wax, by the guidance of Western Australia (2022). */
export const hotWax = {
  lowestCelsius: { value: 160, unit: '°C', standing: 'published', sources: ['WA-AFB22', 'BTHENET'] },
  leastMinutes: { value: 10, unit: 'minutes', standing: 'published', sources: ['WA-AFB22', 'BTHENET'] },
  flammableVapourAboveCelsius: { value: 175, unit: '°C', standing: 'published', sources: ['WA-AFB22'] },
  flashPointCelsius: { value: 230, unit: '°C, about', standing: 'published', sources: ['WA-AFB22'] },
  severeBurnsAboveCelsius: { value: 150, unit: '°C', standing: 'published', sources: ['WA-AFB22'] },
  microcrystallineShare: {
    value: 0.5,
    unit: 'share, the rest paraffin wax',
    standing: 'published',
    sources: ['WA-AFB22'],
  },
  /** Minutes in beeswax at 150 °C that leave one spore in ten. */
  decimalReductionMinutes: {
    value: 2,
    low: 1.5,
    high: 2.5,
    unit: 'minutes at 150 °C',
    standing: 'published',
    sources: ['MACHOVA93'],
    doubts: 'Measured at 150 °C in beeswax, used here for 160 °C in mixed wax, which is on the safe side.',
  },
} as const satisfies Record<string, SourcedValue>;

/** What can be dipped, and what the guidance sends to the fire or to irradiation instead. */
export const dippable = ['boxes', 'wooden floors', 'wooden lids'] as const;
const notSuitable: Readonly<Record<string, string>> = {
  frames: 'burned',
  'masonite lids': 'irradiated or burned',
  'masonite floors': 'irradiated or burned',
};

/** Dips, wax and what the heat does, after the cautions. */
export interface HotWaxDip {
  readonly cautions: readonly CautionId[];
  readonly dips: number;
  /** Minutes in the wax in all, changing over not counted. */
  readonly minutesInWax: number;
  /** Litres of each wax for the first filling. */
  readonly microcrystallineLitres: number;
  readonly paraffinWaxLitres: number;
  /** Log10 of the part of spores killed, by the D-value at 150 °C: from the slow to the fast one. */
  readonly logReductionLow: number;
  readonly logReductionHigh: number;
}

/**
 * How many dips, how long, and how much wax?
 *
 *   dips = ceil(pieces / pieces per dip); log10 reduction = minutes / D, D = 1.5 to 2.5 min at 150 °C
 *
 * "Paraffin" means kerosene in some countries: what is meant is solid wax, hot wax. Below 160 °C it does not work, above
 * 175 °C the vapour burns; both are refused. Worked: 10 minutes: 4 to 6.7 log10, which is why time and temperature are
 * both logged.
 *
 * @param inputs.item one of `dippable`; frames and masonite are refused
 * @param inputs.pieces whole, 1 or more; `piecesPerDip` whole, 1 or more
 * @param inputs.celsius temperature of the wax with the pieces in it, 160 to 175
 * @param inputs.minutes per dip, 10 or more
 * @param inputs.vatLitres wax to fill the vat, above 0
 * @param inputs.cleanAndDry must be true: wet wood boils over
 * @param inputs.beesDead must be true
 * @throws DomainError on inputs outside these ranges
 * Sources: WA-AFB22, MACHOVA93
 */
export function hotWaxDip(inputs: {
  item: (typeof dippable)[number];
  pieces: number;
  piecesPerDip: number;
  celsius: number;
  minutes: number;
  vatLitres: number;
  cleanAndDry: boolean;
  beesDead: boolean;
}): HotWaxDip {
  const instead = notSuitable[String(inputs.item)];
  if (instead) throw new DomainError('item', `something that can be dipped; this is to be ${instead}`, inputs.item);
  acceptWord('item', inputs.item, dippable);
  acceptBeesDead(inputs.beesDead);
  acceptDone('cleanAndDry', inputs.cleanAndDry, 'scraped clean and dry, for wet wood makes hot wax boil over');
  const { lowestCelsius, flammableVapourAboveCelsius, leastMinutes, decimalReductionMinutes } = hotWax;
  acceptNumber(
    'celsius',
    inputs.celsius,
    `from ${lowestCelsius.value} (below it does not work) to ${flammableVapourAboveCelsius.value} (above the vapour burns)`,
    (v) => v >= lowestCelsius.value && v <= flammableVapourAboveCelsius.value,
  );
  const minutes = acceptNumber(
    'minutes',
    inputs.minutes,
    `${leastMinutes.value} or more`,
    (v) => v >= leastMinutes.value,
  );
  const dips = Math.ceil(acceptCount('pieces', inputs.pieces, 1) / acceptCount('piecesPerDip', inputs.piecesPerDip, 1));
  const litres = acceptPositive('vatLitres', inputs.vatLitres);
  return {
    cautions: cautionsOfMethod.hotWaxDip,
    dips,
    minutesInWax: dips * minutes,
    microcrystallineLitres: litres * hotWax.microcrystallineShare.value,
    paraffinWaxLitres: litres * (1 - hotWax.microcrystallineShare.value),
    logReductionLow: minutes / decimalReductionMinutes.high,
    logReductionHigh: minutes / decimalReductionMinutes.low,
  };
}

export const hotWaxDipCalculation = calculation({
  name: 'hotWaxDip',
  room: 'disposal',
  line: 'hot-wax dip: dips, minutes, wax, and what the heat does',
  inputs: {
    item: '"boxes", "wooden floors" or "wooden lids"',
    pieces: 'whole',
    piecesPerDip: 'whole',
    celsius: '160 to 175',
    minutes: 'per dip, 10 or more',
    vatLitres: 'wax to fill the vat, above 0',
    cleanAndDry: 'must be true',
    beesDead: described.beesDead,
  },
  formula: 'dips = ceil(pieces/per dip); log10 reduction = minutes/D, D 1.5 to 2.5 min at 150 °C',
  sources: ['WA-AFB22', 'MACHOVA93', 'BTHENET'],
  call: hotWaxDip,
  steps: (i, r) => [
    `${r.dips} dips of ${shown(i.minutes)} minutes: ${shown(r.minutesInWax)} minutes in the wax`,
    `${shown(r.microcrystallineLitres)} l microcrystalline and ${shown(r.paraffinWaxLitres)} l paraffin wax (solid wax, not kerosene)`,
    `log10 reduction ${shown(r.logReductionLow)} to ${shown(r.logReductionHigh)}`,
  ],
});
