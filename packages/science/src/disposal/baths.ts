import type { SourcedValue } from '@combside/sources/sourced-value';
import { calculation, shown } from '../distributions/calculation.ts';
import { acceptNumber, acceptPositive } from '../distributions/domain.ts';
import { always, type CautionId, cautionsOfMethod } from './cautions.ts';
import { acceptBeesDead, acceptChosen, acceptDone } from './chosen.ts';
import * as described from './inputs-described.ts';

/** A published strength and time for hypochlorite, and what it is for. */
export interface HypochloriteGuidance {
  readonly percent: SourcedValue;
  readonly minutes: SourcedValue | null;
  /** Further steps the guidance asks for. */
  readonly afterwards: 'rinse' | 'boiling water over 10 minutes' | null;
}

/** Strengths differ between guidances: all are shown, the pack chooses. */
export const hypochloriteGuidance = {
  'England and Wales, cleaned surfaces': {
    percent: { value: 0.5, unit: '%', standing: 'published', sources: ['NBU-HYPO'] },
    minutes: { value: 20, unit: 'minutes', standing: 'published', sources: ['NBU-HYPO'] },
    afterwards: 'rinse',
  },
  'Poland (EU sheet)': {
    percent: { value: 1, unit: '%', standing: 'published', sources: ['BTHENET'] },
    minutes: { value: 20, unit: 'minutes', standing: 'published', sources: ['BTHENET'] },
    afterwards: null,
  },
  'Western Australia, metal floors': {
    percent: { value: 5, unit: '%', standing: 'published', sources: ['WA-AFB22'] },
    minutes: null,
    afterwards: 'boiling water over 10 minutes',
  },
} as const satisfies Record<string, HypochloriteGuidance>;

/** Which parts of the room's guidance a bath meets. */
export type GuidanceName = keyof typeof hypochloriteGuidance;

/** Liquid for a tank: its ground area times the depth of liquid, less what the pieces displace; all in litres. */
export interface BathVolume {
  readonly cautions: readonly CautionId[];
  readonly litres: number;
}

/**
 * How much liquid covers the pieces in this tank?
 *
 *   litres = length * width * depth / 1000, less the litres the pieces displace
 *
 * @param inputs.lengthCentimetres inside, above 0; `widthCentimetres` likewise
 * @param inputs.depthCentimetres of liquid with the pieces in it, above 0
 * @param inputs.displacedLitres by the pieces, 0 or more, less than the tank holds; 0 leaves a reserve
 * @throws DomainError on inputs outside these ranges
 * Source: geometry
 */
export function bathVolume(inputs: {
  lengthCentimetres: number;
  widthCentimetres: number;
  depthCentimetres: number;
  displacedLitres: number;
}): BathVolume {
  const litres =
    (acceptPositive('lengthCentimetres', inputs.lengthCentimetres) *
      acceptPositive('widthCentimetres', inputs.widthCentimetres) *
      acceptPositive('depthCentimetres', inputs.depthCentimetres)) /
    1000;
  const displaced = acceptNumber(
    'displacedLitres',
    inputs.displacedLitres,
    `from 0 to below ${litres} litres (what the tank holds to that depth)`,
    (v) => v >= 0 && v < litres,
  );
  return { cautions: [...always, 'eyes, gloves, boots, air'], litres: litres - displaced };
}

export const bathVolumeCalculation = calculation({
  name: 'bathVolume',
  room: 'disposal',
  line: 'liquid to fill a bath',
  inputs: {
    lengthCentimetres: 'inside, above 0',
    widthCentimetres: 'inside, above 0',
    depthCentimetres: 'of liquid with the pieces in it, above 0',
    displacedLitres: 'by the pieces, 0 or more',
  },
  formula: 'length * width * depth / 1000 - displaced',
  sources: [],
  call: bathVolume,
  steps: (i, r) => [
    `${shown((i.lengthCentimetres * i.widthCentimetres * i.depthCentimetres) / 1000)} - ${shown(i.displacedLitres)} = ${shown(r.litres)} l`,
  ],
});

/** How to mix a hypochlorite bath, and which guidance it meets. */
export interface HypochloriteBath {
  readonly cautions: readonly CautionId[];
  /** Parts of water to one part of stock. */
  readonly partsWater: number;
  readonly stockLitres: number;
  readonly waterLitres: number;
  /** Guidance whose strength and time this bath reaches. */
  readonly meets: readonly GuidanceName[];
}

/**
 * How is a hypochlorite bath mixed, and which published guidance does it meet?
 *
 *   parts water = stock % / wanted % - 1
 *
 * For cleaned, non-porous surfaces. Bleach loses strength in store: take the strength from a fresh label.
 * Worked: household bleach of 3 % to 0.5 %: 1 part and 5 parts of water.
 *
 * @param inputs.stockPercent strength of the stock, above 0, at most 100
 * @param inputs.wantedPercent wanted strength, above 0, not above the stock's
 * @param inputs.bathLitres above 0
 * @param inputs.minutes of immersion, above 0
 * @param inputs.cleaned must be true: dirt uses the bleach up
 * @param inputs.beesDead must be true
 * @throws DomainError on inputs outside these ranges
 * Sources: NBU-HYPO, BTHENET, WA-AFB22
 */
export function hypochloriteBath(inputs: {
  stockPercent: number;
  wantedPercent: number;
  bathLitres: number;
  minutes: number;
  cleaned: boolean;
  beesDead: boolean;
}): HypochloriteBath {
  acceptBeesDead(inputs.beesDead);
  acceptDone('cleaned', inputs.cleaned, 'scraped and washed, for dirt uses the bleach up');
  const stock = acceptNumber('stockPercent', inputs.stockPercent, 'above 0, at most 100 %', (v) => v > 0 && v <= 100);
  const wanted = acceptNumber(
    'wantedPercent',
    inputs.wantedPercent,
    `above 0, not above the stock's ${stock} %`,
    (v) => v > 0 && v <= stock,
  );
  const litres = acceptPositive('bathLitres', inputs.bathLitres);
  const minutes = acceptPositive('minutes', inputs.minutes);
  const stockLitres = (litres * wanted) / stock;
  const reached = (guidance: HypochloriteGuidance) =>
    wanted >= guidance.percent.value && minutes >= (guidance.minutes?.value ?? 0);
  return {
    cautions: cautionsOfMethod.hypochloriteBath,
    partsWater: stock / wanted - 1,
    stockLitres,
    waterLitres: litres - stockLitres,
    meets: (Object.keys(hypochloriteGuidance) as GuidanceName[]).filter((name) => reached(hypochloriteGuidance[name])),
  };
}

export const hypochloriteBathCalculation = calculation({
  name: 'hypochloriteBath',
  room: 'disposal',
  line: 'hypochlorite bath: parts of water, litres, and which guidance it meets',
  inputs: {
    stockPercent: 'strength of the stock, above 0, at most 100',
    wantedPercent: "above 0, at most the stock's",
    bathLitres: 'above 0',
    minutes: 'of immersion, above 0',
    cleaned: 'must be true',
    beesDead: described.beesDead,
  },
  formula: 'parts water = stock/wanted - 1',
  sources: ['NBU-HYPO', 'BTHENET', 'WA-AFB22'],
  call: hypochloriteBath,
  steps: (i, r) => [
    `${shown(i.stockPercent)}/${shown(i.wantedPercent)} - 1 = ${shown(r.partsWater)} parts water`,
    `${shown(r.stockLitres)} l stock and ${shown(r.waterLitres)} l water`,
    `meets: ${r.meets.join('; ') || 'none of the guidance known here'}`,
  ],
});

/** What keepers cite for caustic soda: 1 lb to 10 US gallons, boiled 15 minutes. No official figure was found. */
export const causticKeepersCite = {
  gramsPerLitre: { value: 12, unit: 'g per litre', standing: 'common practice', sources: [] },
  minutes: { value: 15, unit: 'minutes, boiling', standing: 'common practice', sources: [] },
} as const satisfies Record<string, SourcedValue>;

/**
 * How much caustic soda goes into a cleaning bath?
 *
 *   grams = litres * grams per litre; strength % = grams per litre / 10
 *
 * No official strength or time was found, so both are asked for; and by guidance it cleans but does not decontaminate.
 * Never a proof of disinfection. Worked: 454 g in 37.9 l are 1.2 % (common practice, no source).
 *
 * @param inputs.bathLitres above 0
 * @param inputs.gramsPerLitre chosen, above 0; `minutes` chosen, above 0
 * @param inputs.beesDead must be true
 * @throws DomainError on inputs outside these ranges
 * Source: WA-AFB22 (cleans only); strength common practice, no source
 */
export function causticBath(inputs: {
  bathLitres: number;
  gramsPerLitre: number;
  minutes: number;
  beesDead: boolean;
}): {
  cautions: readonly CautionId[];
  causticGrams: number;
  strengthPercent: number;
  minutes: number;
  decontaminates: false;
} {
  acceptBeesDead(inputs.beesDead);
  const litres = acceptPositive('bathLitres', inputs.bathLitres);
  const perLitre = acceptChosen('gramsPerLitre', inputs.gramsPerLitre);
  return {
    cautions: cautionsOfMethod.causticBath,
    causticGrams: litres * perLitre,
    strengthPercent: perLitre / 10,
    minutes: acceptChosen('minutes', inputs.minutes),
    decontaminates: false,
  };
}

export const causticBathCalculation = calculation({
  name: 'causticBath',
  room: 'disposal',
  line: 'caustic soda for a cleaning bath; not a decontamination',
  inputs: {
    bathLitres: 'above 0',
    gramsPerLitre: `above 0 ${described.toBeChosen}`,
    minutes: `above 0 ${described.toBeChosen}`,
    beesDead: described.beesDead,
  },
  formula: 'grams = litres * grams per litre',
  sources: ['WA-AFB22'],
  call: causticBath,
  steps: (i, r) => [
    `${shown(i.bathLitres)} * ${shown(i.gramsPerLitre)} = ${shown(r.causticGrams)} g, ${shown(r.strengthPercent)} %; cleans only`,
  ],
});
