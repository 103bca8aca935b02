import { calculation, shown } from '../distributions/calculation.ts';
import {
  acceptCount,
  acceptFields,
  acceptList,
  acceptNumber,
  acceptOpenFraction,
  acceptPositive,
  acceptPositiveFraction,
  acceptWord,
  DomainError,
  isUnknown,
} from '../distributions/domain.ts';
import { poissonInterval } from '../distributions/poisson.ts';

/** What a load is counted per. Loads in different units are never converted into one another. */
export const loadUnits = ['g', 'bee', 'ml'] as const;
export type LoadUnit = (typeof loadUnits)[number];

/** One plate as read. */
export interface Plate {
  /** How far the suspension was diluted before plating: 1 undiluted, 0.01 for 10^-2. Above 0, up to 1. */
  dilution: number;
  /** ml spread on the plate, above 0. */
  millilitres: number;
  /** Colonies counted, whole; null when there were too many to count. */
  colonies: number | null;
}

/** How the specimen became a suspension, and the plates made of it. */
export interface PlateCountInputs {
  plates: readonly Plate[];
  /** ml of suspension that held the whole amount. */
  suspensionMillilitres: number;
  /** How much specimen was in it: g of honey or debris, number of bees, ml. Above 0. */
  amount: number;
  unit: LoadUnit;
  /** The laboratory's own limits of counting, both included, or null when it states none. None is built in. */
  countable: { lowest: number; highest: number } | null;
  /** Two-sided confidence of the interval, fraction above 0 and below 1. */
  confidence: number;
}

/**
 * How to read the number.
 * - `counted`: from plates within the laboratory's limits
 * - `below counting range`: colonies grew, but on no plate enough; an estimate
 * - `none grown`: below the detection limit; `upper` is what may still be there
 * - `too many to count`: on every plate; the load is at least `lower`
 */
export type PlateReading = 'counted' | 'below counting range' | 'none grown' | 'too many to count';

/** A load in colony-forming units per unit, with the arithmetic that led to it. */
export interface PlateCount {
  readonly reading: PlateReading;
  /** CFU per unit; 0 when none grew, null when too many to count. */
  readonly load: number | null;
  readonly lower: number | null;
  readonly upper: number | null;
  readonly unit: LoadUnit;
  /** CFU per ml of undiluted suspension; null when too many to count. */
  readonly perMillilitre: number | null;
  /** One colony on all the plates together, in CFU per unit. */
  readonly detectionLimit: number;
  readonly coloniesCounted: number;
  /** ml of undiluted suspension that the plates used stand for: sum of volume times dilution. */
  readonly millilitresExamined: number;
  /** Index of each plate used, and of each left out. */
  readonly used: readonly number[];
  readonly leftOut: readonly number[];
}

/**
 * What load do the plates show?
 *
 *   N = sum(C) / sum(V d) per ml of suspension; load = N * suspension / amount
 *
 * For tenfold steps with equal volumes this is the weighted mean sum(C) / (V (n1 + 0.1 n2) d). Only plates within the
 * laboratory's counting limits are used when there are any; a lower dilution with too many colonies says nothing more.
 * The interval is the exact one for a Poisson count. Only part of the spores germinate on a plate (often quoted as under
 * 10 %, from memory): this is CFU, see `sporesAssumingRecovery`.
 *
 * Worked: 12 + 15 + 9 colonies on 3 plates of 0.1 ml, 10 g honey in 20 ml: 36/0.3 * 20/10 = 240 CFU/g, limit 6.7.
 *
 * @param inputs see `PlateCountInputs`; at least one plate
 * @throws DomainError on inputs outside their ranges
 * Source: first principles; weighted mean and counting limits as in ISO 7218 (from memory) [ISO7218]; interval [GARWOOD36]
 */
export function plateCount(inputs: PlateCountInputs): PlateCount {
  const { plates, perUnit, unit, confidence } = acceptPlates(inputs);
  const countable = acceptCountable(inputs.countable);
  const everyVolume = examined(plates);
  const detectionLimit = perUnit / everyVolume;
  const indexes = plates.map((_, i) => i);
  const countedAtAll = indexes.filter((i) => {
    const colonies = plates[i]?.colonies ?? null;
    return colonies !== null && (countable === null || colonies <= countable.highest);
  });
  const within = countedAtAll.filter((i) => countable === null || (plates[i]?.colonies ?? 0) >= countable.lowest);

  if (countedAtAll.length === 0) {
    // Every plate is overgrown: at least the highest countable number on the most diluted one.
    const smallest = Math.min(...plates.map((plate) => plate.millilitres * plate.dilution));
    return {
      reading: 'too many to count',
      load: null,
      lower: countable === null ? null : (countable.highest / smallest) * perUnit,
      upper: null,
      unit,
      perMillilitre: null,
      detectionLimit,
      coloniesCounted: 0,
      millilitresExamined: 0,
      used: [],
      leftOut: indexes,
    };
  }
  const used = within.length > 0 ? within : countedAtAll;
  const leftOut = indexes.filter((i) => !used.includes(i));
  const chosen = used.map((i) => plates[i] as AcceptedPlate);
  const coloniesCounted = chosen.reduce((sum, plate) => sum + (plate.colonies ?? 0), 0);
  const millilitresExamined = examined(chosen);
  const scale = perUnit / millilitresExamined;
  const mean = poissonInterval(coloniesCounted, confidence);
  return {
    reading: coloniesCounted === 0 ? 'none grown' : within.length > 0 ? 'counted' : 'below counting range',
    load: coloniesCounted * scale,
    lower: mean.lower * scale,
    // When none grew the question is one-sided: up to 3 colonies (95 %) may have been missed.
    upper: (coloniesCounted === 0 ? -Math.log1p(-confidence) : mean.upper) * scale,
    unit,
    perMillilitre: coloniesCounted / millilitresExamined,
    detectionLimit,
    coloniesCounted,
    millilitresExamined,
    used,
    leftOut,
  };
}

export const plateCountCalculation = calculation({
  name: 'plateCount',
  room: 'laboratory',
  line: 'plates and dilutions to colony-forming units per g, bee or ml',
  inputs: {
    plates: 'list of {dilution (1 undiluted, 0.01 for 10^-2), millilitres, colonies (null: too many to count)}',
    suspensionMillilitres: 'ml of suspension that held the whole amount, above 0',
    amount: 'specimen in it: g, bees or ml, above 0',
    unit: '"g", "bee" or "ml"',
    countable: "the laboratory's limits of counting {lowest, highest}, or null",
    confidence: 'fraction above 0 and below 1',
  },
  formula: 'sum(C)/sum(V d) per ml; times suspension/amount; exact Poisson interval',
  sources: ['ISO7218', 'GARWOOD36'],
  call: plateCount,
  steps: (i, r) => [
    `${r.used.length} of ${i.plates.length} plates used: ${r.coloniesCounted} colonies on ${shown(r.millilitresExamined)} ml of suspension`,
    `${shown(r.perMillilitre)} per ml, times ${shown(i.suspensionMillilitres)}/${shown(i.amount)}: ${shown(r.load)} CFU per ${r.unit} (${r.reading})`,
    `interval ${shown(r.lower)} to ${shown(r.upper)}, detection limit ${shown(r.detectionLimit)}`,
  ],
});

type AcceptedPlate = Plate;

const examined = (plates: readonly Plate[]) => plates.reduce((sum, p) => sum + p.millilitres * p.dilution, 0);

function acceptPlates(inputs: PlateCountInputs) {
  const plates = acceptList('plates', inputs.plates, (name, value): AcceptedPlate => {
    const plate = acceptFields(name, value);
    return {
      dilution: acceptPositiveFraction(`${name}.dilution`, plate.dilution),
      millilitres: acceptPositive(`${name}.millilitres`, plate.millilitres),
      colonies: isUnknown(plate.colonies) ? null : acceptCount(`${name}.colonies`, plate.colonies, 0, 10_000),
    };
  });
  const suspension = acceptPositive('suspensionMillilitres', inputs.suspensionMillilitres);
  const amount = acceptPositive('amount', inputs.amount);
  return {
    plates,
    perUnit: suspension / amount,
    unit: acceptWord('unit', inputs.unit, loadUnits),
    confidence: acceptOpenFraction('confidence', inputs.confidence),
  };
}

function acceptCountable(given: unknown) {
  if (isUnknown(given)) return null;
  const limits = acceptFields('countable', given);
  const lowest = acceptCount('countable.lowest', limits.lowest);
  const highest = acceptCount('countable.highest', limits.highest, 1, 10_000);
  if (lowest > highest) throw new DomainError('countable.lowest', `at most countable.highest (${highest})`, lowest);
  return { lowest, highest };
}

/**
 * How many spores stand behind a count of colony-forming units, if a stated part of them germinates?
 *
 *   spores = CFU / recovery
 *
 * Recovery is an assumption and has no default: show it beside the answer, marked as one.
 *
 * @param inputs.load CFU per unit, 0 or more
 * @param inputs.recovery fraction of spores that form a colony, above 0, up to 1
 * @throws DomainError on inputs outside these ranges
 * Source: arithmetic
 */
export function sporesAssumingRecovery(inputs: { load: number; recovery: number }): { spores: number } {
  const load = acceptNumber('load', inputs.load, 'a number of 0 or more', (v) => v >= 0);
  return { spores: load / acceptPositiveFraction('recovery', inputs.recovery) };
}

export const sporesAssumingRecoveryCalculation = calculation({
  name: 'sporesAssumingRecovery',
  room: 'laboratory',
  line: 'spores behind a count, if a stated part of them germinates (an assumption)',
  inputs: { load: 'CFU per unit, 0 or more', recovery: 'assumed part that forms a colony, above 0, up to 1' },
  formula: 'load / recovery',
  sources: [],
  call: sporesAssumingRecovery,
  steps: (i, r) => [`${shown(i.load)} / ${shown(i.recovery)} = ${shown(r.spores)}, only if the recovery holds`],
});
