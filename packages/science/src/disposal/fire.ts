import { calculation, shown } from '../distributions/calculation.ts';
import { acceptCount, acceptWord, DomainError } from '../distributions/domain.ts';
import { always, type CautionId, cautionsOfMethod } from './cautions.ts';
import { acceptBeesDead, acceptChosen, acceptDone } from './chosen.ts';
import * as described from './inputs-described.ts';

/** What may feed the fire. Comb wax is fuel enough (NZ-KILL); petrol is not among them and never will be. */
export const fuels = ['comb wax alone', 'dry wood', 'straw', 'charcoal'] as const;
export type Fuel = (typeof fuels)[number];

/** Fuel and time for burning, after the cautions. */
export interface Burning {
  readonly cautions: readonly CautionId[];
  /** kg of fuel besides the comb wax; 0 for comb wax alone. */
  readonly fuelKilograms: number;
  /** Fires one after the other. */
  readonly fires: number;
  readonly hours: number;
}

/**
 * How much fuel and time does burning these hives take?
 *
 *   fuel = hives * kg per hive; fires = ceil(hives / hives at once); hours = fires * hours per fire
 *
 * Nothing is published on fuel or time per hive: both are asked for. Petrol is refused as fuel by every name known here.
 *
 * @param inputs.hives whole, 1 or more
 * @param inputs.fuel one of `fuels`
 * @param inputs.kilogramsPerHive chosen, above 0; null for comb wax alone
 * @param inputs.hivesAtOnce as many as the pit takes, whole, 1 or more
 * @param inputs.hoursPerFire until nothing glows, chosen, above 0
 * @param inputs.beesDead must be true
 * @throws DomainError on inputs outside these ranges, for petrol, and while bees live
 * Source: NZ-KILL (agency guidance: no petrol on the fire, comb wax is fuel enough); the rest arithmetic
 */
export function fuelForBurning(inputs: {
  hives: number;
  fuel: Fuel;
  kilogramsPerHive: number | null;
  hivesAtOnce: number;
  hoursPerFire: number;
  beesDead: boolean;
}): Burning {
  const named: unknown = inputs.fuel;
  if (typeof named === 'string' && /petrol|gasoline|benzin|essence|\bgas\b|nafta/i.test(named)) {
    throw new DomainError('fuel', `never petrol, whose vapour explodes; one of ${fuels.join(', ')}`, named);
  }
  const fuel = acceptWord('fuel', inputs.fuel, fuels);
  acceptBeesDead(inputs.beesDead);
  const hives = acceptCount('hives', inputs.hives, 1);
  const atOnce = acceptCount('hivesAtOnce', inputs.hivesAtOnce, 1);
  const fires = Math.ceil(hives / atOnce);
  return {
    cautions: [
      ...always,
      'ask about fire bans',
      'no petrol on a fire',
      'two people, water at hand',
      'honey must not reach bees',
    ],
    fuelKilograms: fuel === 'comb wax alone' ? 0 : hives * acceptChosen('kilogramsPerHive', inputs.kilogramsPerHive),
    fires,
    hours: fires * acceptChosen('hoursPerFire', inputs.hoursPerFire),
  };
}

export const fuelForBurningCalculation = calculation({
  name: 'fuelForBurning',
  room: 'disposal',
  line: 'fuel, fires and hours for burning hives; petrol is refused',
  inputs: {
    hives: 'whole, 1 or more',
    fuel: '"comb wax alone", "dry wood", "straw" or "charcoal"',
    kilogramsPerHive: `above 0 ${described.toBeChosen}; null for comb wax alone`,
    hivesAtOnce: 'as many as the pit takes, whole',
    hoursPerFire: `above 0 ${described.toBeChosen}`,
    beesDead: described.beesDead,
  },
  formula: 'fuel = hives * kg; fires = ceil(hives/at once); hours = fires * hours per fire',
  sources: ['NZ-KILL'],
  call: fuelForBurning,
  steps: (i, r) => [
    `${i.hives} hives, ${i.hivesAtOnce} at once: ${r.fires} fires, ${shown(r.hours)} hours`,
    `fuel ${shown(r.fuelKilograms)} kg`,
  ],
});

/**
 * How long does scorching these boxes take, where it is accepted at all?
 *
 *   minutes = boxes * minutes per box
 *
 * California and Queensland accept scorching of boxes; New Zealand's guidance, as quoted, calls it not effective enough.
 * So the pack must accept it. No published time per box: it is asked for.
 *
 * @param inputs.boxes whole, 1 or more
 * @param inputs.minutesPerBox chosen, above 0
 * @param inputs.acceptedByPack true when the jurisdiction's pack accepts scorching
 * @param inputs.beesDead must be true
 * @throws DomainError on inputs outside these ranges, and when the pack does not accept it
 * Source: CA-FAC; the Queensland and New Zealand guidance was seen as quoted only
 */
export function scorching(inputs: {
  boxes: number;
  minutesPerBox: number;
  acceptedByPack: boolean;
  beesDead: boolean;
}): {
  cautions: readonly CautionId[];
  minutes: number;
} {
  acceptDone('acceptedByPack', inputs.acceptedByPack, "scorching must be accepted by the jurisdiction's pack");
  acceptBeesDead(inputs.beesDead);
  return {
    cautions: cautionsOfMethod.scorching,
    minutes: acceptCount('boxes', inputs.boxes, 1) * acceptChosen('minutesPerBox', inputs.minutesPerBox),
  };
}

export const scorchingCalculation = calculation({
  name: 'scorching',
  room: 'disposal',
  line: "time for scorching boxes, where the jurisdiction's pack accepts it",
  inputs: {
    boxes: 'whole',
    minutesPerBox: `above 0 ${described.toBeChosen}`,
    acceptedByPack: 'must be true',
    beesDead: described.beesDead,
  },
  formula: 'boxes * minutes per box',
  sources: ['CA-FAC'],
  call: scorching,
  steps: (i, r) => [`${i.boxes} * ${shown(i.minutesPerBox)} = ${shown(r.minutes)} minutes`],
});
