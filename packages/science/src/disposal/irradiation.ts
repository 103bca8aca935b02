import type { SourcedValue } from '@combside/sources/sourced-value';
import { calculation, shown } from '../distributions/calculation.ts';
import { acceptCount, acceptNumber, acceptPositive, isUnknown } from '../distributions/domain.ts';
import { type CautionId, cautionsOfMethod } from './cautions.ts';
import { acceptBeesDead, acceptDone } from './chosen.ts';
import * as described from './inputs-described.ts';

/** Irradiation figures. Doses differ between guidances and laws: the pack's decides. */
export const irradiation = {
  decimalReductionDose: {
    value: 0.2,
    unit: 'kGy',
    standing: 'published',
    sources: ['GUZMAN11'],
    doubts: 'Spores on glass. The practical limits are dose spread in the load, density and honey, not this figure.',
  },
  hivesSterileFrom: { value: 15, unit: 'kGy, minimum dose', standing: 'published', sources: ['GUZMAN11'] },
  combAndHoneySterileFrom: { value: 17.5, low: 15, high: 20, unit: 'kGy', standing: 'published', sources: ['CJM62'] },
  legalMinimumFlorida: { value: 20, unit: 'kGy', standing: 'published', sources: ['FL-5B54'] },
  heaviestUnit: { value: 25, unit: 'kg', standing: 'published', sources: ['WA-AFB22'] },
  heaviestPallet: { value: 1000, unit: 'kg', standing: 'published', sources: ['WA-AFB22'] },
  highestPallet: { value: 2, unit: 'm', standing: 'published', sources: ['WA-AFB22'] },
} as const satisfies Record<string, SourcedValue>;

/** A consignment, after the cautions. */
export interface Consignment {
  readonly cautions: readonly CautionId[];
  /** Wrapped, sealed, labelled units. */
  readonly units: number;
  readonly kilogramsPerUnit: number;
  readonly kilograms: number;
  readonly pallets: number;
  /** Log10 of the part of spores killed on glass at this dose; far above any bioburden. */
  readonly logReduction: number;
  /** Whether the delivered minimum dose reaches the pack's; null before the certificate is there. */
  readonly doseReached: boolean | null;
}

/**
 * How many units and pallets, and what does the dose do?
 *
 *   units = ceil(boxes / boxes per unit); pallets by mass (1,000 kg) and by height (under 2 m);
 *   log10 reduction = dose / D10, D10 = 0.2 kGy on glass
 *
 * What counts is the minimum dose delivered, from the operator's certificate, never the dose ordered. There is no default
 * dose: the pack states one. Worked: 15 kGy / 0.2 = 75.
 *
 * @param inputs.boxes whole, 1 or more; `boxesPerUnit` whole, 1 or more
 * @param inputs.kilogramsPerBox wrapped, above 0; a unit may weigh at most 25 kg
 * @param inputs.unitHeightMetres above 0 and below 2; `unitsPerLayer` on a pallet, whole, 1 or more
 * @param inputs.packMinimumKiloGray minimum dose the pack asks for, above 0
 * @param inputs.deliveredMinimumKiloGray from the certificate, 0 or more, or null before it is there
 * @param inputs.freeOfBeesAndHoney must be true; honey shields spores and leaks
 * @param inputs.beesDead must be true
 * @throws DomainError on inputs outside these ranges
 * Sources: GUZMAN11, WA-AFB22, FL-5B54, CJM62
 */
export function irradiationConsignment(inputs: {
  boxes: number;
  boxesPerUnit: number;
  kilogramsPerBox: number;
  unitHeightMetres: number;
  unitsPerLayer: number;
  packMinimumKiloGray: number;
  deliveredMinimumKiloGray: number | null;
  freeOfBeesAndHoney: boolean;
  beesDead: boolean;
}): Consignment {
  acceptBeesDead(inputs.beesDead);
  acceptDone('freeOfBeesAndHoney', inputs.freeOfBeesAndHoney, 'free of bees and honey, washed outside, double wrapped');
  const boxes = acceptCount('boxes', inputs.boxes, 1);
  const boxesPerUnit = acceptCount('boxesPerUnit', inputs.boxesPerUnit, 1);
  const perBox = acceptPositive('kilogramsPerBox', inputs.kilogramsPerBox);
  const heaviest = irradiation.heaviestUnit.value;
  const kilogramsPerUnit = acceptNumber(
    'boxesPerUnit * kilogramsPerBox',
    boxesPerUnit * perBox,
    `at most ${heaviest} kg, the most one wrapped unit may weigh`,
    (v) => v <= heaviest,
  );
  const highest = irradiation.highestPallet.value;
  const height = acceptNumber(
    'unitHeightMetres',
    inputs.unitHeightMetres,
    `above 0 and below ${highest} m`,
    (v) => v > 0 && v < highest,
  );
  const perLayer = acceptCount('unitsPerLayer', inputs.unitsPerLayer, 1);
  const minimum = acceptPositive('packMinimumKiloGray', inputs.packMinimumKiloGray);
  const delivered = isUnknown(inputs.deliveredMinimumKiloGray)
    ? null
    : acceptNumber('deliveredMinimumKiloGray', inputs.deliveredMinimumKiloGray, 'a number of 0 or more', (v) => v >= 0);
  const units = Math.ceil(boxes / boxesPerUnit);
  const kilograms = boxes * perBox;
  // Under 2 m: layers whose height together stays below it.
  const layers = Math.max(1, Math.ceil(highest / height) - 1);
  const perPallet = Math.min(layers * perLayer, Math.floor(irradiation.heaviestPallet.value / kilogramsPerUnit));
  return {
    cautions: cautionsOfMethod.irradiation,
    units,
    kilogramsPerUnit,
    kilograms,
    pallets: Math.ceil(units / perPallet),
    logReduction: (delivered ?? minimum) / irradiation.decimalReductionDose.value,
    doseReached: delivered === null ? null : delivered >= minimum,
  };
}

export const irradiationConsignmentCalculation = calculation({
  name: 'irradiationConsignment',
  room: 'disposal',
  line: 'irradiation: units, pallets, and whether the delivered dose is enough',
  inputs: {
    boxes: 'whole',
    boxesPerUnit: 'boxes wrapped together, whole',
    kilogramsPerBox: 'above 0; a unit at most 25 kg',
    unitHeightMetres: 'above 0 and below 2',
    unitsPerLayer: 'on a pallet, whole',
    packMinimumKiloGray: "minimum dose the jurisdiction's pack asks for, above 0",
    deliveredMinimumKiloGray: 'from the certificate, 0 or more, or null',
    freeOfBeesAndHoney: 'must be true',
    beesDead: described.beesDead,
  },
  formula: 'units = ceil(boxes/per unit); log10 reduction = dose/0.2 kGy',
  sources: ['GUZMAN11', 'WA-AFB22', 'FL-5B54', 'CJM62'],
  call: irradiationConsignment,
  steps: (i, r) => [
    `${r.units} units of ${shown(r.kilogramsPerUnit)} kg on ${r.pallets} pallets, ${shown(r.kilograms)} kg`,
    `dose ${shown(i.deliveredMinimumKiloGray)} kGy delivered at least, ${shown(i.packMinimumKiloGray)} asked for`,
    `log10 reduction ${shown(r.logReduction)} on glass`,
  ],
});
