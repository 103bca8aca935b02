import { type Eye, eyeBands } from '../brood/what-a-look-shows.ts';
import { type Chance, seeded } from '../random/seeded.ts';
import { type DiseaseId, diseases } from '../signs/catalogue.ts';
import { drawFrom, logOddsOf } from './bands.ts';
import type { Evidence } from './evidence.ts';
import { drawerOf, type Network } from './network.ts';
import { inferenceOf, nodeAt, statesWith, weigh } from './posterior.ts';
import { drawnWeights, type Prior } from './prior.ts';
import { sortEvidence } from './sort-evidence.ts';

/** The middle 90 % of the draws. */
export interface Interval {
  readonly low: number;
  readonly high: number;
  /** Where each end itself may lie, from the number of draws alone (95 %, order statistics). */
  readonly lowBetween: readonly [number, number];
  readonly highBetween: readonly [number, number];
}

export interface Intervals {
  readonly disease: Readonly<Record<DiseaseId, Interval>>;
  readonly foulbroodStage: { readonly early: Interval; readonly advanced: Interval };
  readonly none: Interval;
  readonly notifiable: Interval;
  readonly draws: number;
  readonly seed: number;
  /** The widest "between" of any end: how far more draws could still move an end. */
  readonly widestEnd: number;
}

/** The middle 90 %: its ends. */
const ends = [0.05, 0.95] as const;

const eyeInLogOdds = Object.entries(eyeBands).map(([band, value]) => [band, logOddsOf(value)] as const);

/** Every band of the eye drawn once. */
export function drawnEye(chance: Chance): Eye {
  const eye: Record<string, number> = {};
  for (const [band, value] of eyeInLogOdds) eye[band] = drawFrom(value, chance);
  return eye as unknown as Eye;
}

/** The middle 90 % of values, each end between the two nearest draws. Sorts in place. */
export function intervalOf(values: Float64Array): Interval {
  values.sort();
  const n = values.length;
  const at = (position: number): number => {
    const place = Math.min(n - 1, Math.max(0, position));
    const below = Math.floor(place);
    const low = values[below] as number;
    const high = values[Math.min(n - 1, below + 1)] as number;
    return low + (high - low) * (place - below);
  };
  const end = (share: number): { value: number; between: [number, number] } => {
    const place = share * (n - 1);
    const reach = 1.96 * Math.sqrt(n * share * (1 - share));
    return { value: at(place), between: [at(Math.floor(place - reach)), at(Math.ceil(place + reach))] };
  };
  const low = end(ends[0]);
  const high = end(ends[1]);
  return { low: low.value, high: high.value, lowBetween: low.between, highBetween: high.between };
}

/**
 * What the bands leave open: the whole inference repeated with every band drawn anew (likelihoods, eye, prior).
 *
 * Each node, the eye and the prior have a stream of chance of their own, so that neither the order of entry nor a
 * further sign changes the draws of the others.
 *
 * @param draws how many, 400 unless told; at least 40, since the ends are the 5th and 95th of a hundred
 * @throws RangeError when there are too few draws
 */
export function intervals(
  network: Network,
  evidence: Evidence,
  prior: Prior,
  notifiable: readonly DiseaseId[],
  { draws = 400, seed = 1 }: { readonly draws?: number; readonly seed?: number } = {},
): Intervals {
  if (!Number.isInteger(draws) || draws < 40) {
    throw new RangeError(`${draws} draws cannot show the 5th and the 95th of a hundred: give 40 or more`);
  }
  const { items } = sortEvidence(network, evidence);
  const { exposure } = evidence.circumstances;
  const inference = inferenceOf(network);
  const priorChance = seeded(seed);
  const eyeChance = seeded(seed + 1);
  const nodes = items.map((item) => {
    const chance = seeded(seed + 1000 + item.index);
    return { chance, draw: drawerOf(nodeAt(network, item.index), exposure, chance) };
  });

  const joint = new Float64Array(inference.states);
  const mask = statesWith(network, notifiable);
  const column = (): Float64Array => new Float64Array(draws);
  const perDisease = diseases.map(column);
  const early = column();
  const advanced = column();
  const none = column();
  const any = column();
  const foulbrood = diseases.indexOf('american-foulbrood');

  for (let d = 0; d < draws; d++) {
    const eye = drawnEye(eyeChance);
    const chances = nodes.map(({ draw }) => draw());
    const drawn = items.map((item, i) => {
      const { chance } = nodes[i] as (typeof nodes)[number];
      return item.drawnGrade ? { ...item, grade: item.drawnGrade(chance) } : item;
    });
    weigh(
      inference,
      { weights: drawnWeights(prior, priorChance), items: drawn, chances, eye, look: evidence.look },
      joint,
    );
    const marginals = inference.marginals(joint);
    perDisease.forEach((values, v) => {
      values[d] = (marginals[v] as number[]).slice(1).reduce((sum, p) => sum + p, 0);
    });
    const stages = marginals[foulbrood] as number[];
    early[d] = stages[1] as number;
    advanced[d] = stages[2] as number;
    none[d] = joint[0] as number;
    let sum = 0;
    for (let s = 0; s < joint.length; s++) sum += (mask[s] as number) * (joint[s] as number);
    any[d] = sum;
  }

  const disease = Object.fromEntries(
    diseases.map((id, v) => [id, intervalOf(perDisease[v] as Float64Array)]),
  ) as unknown as Record<DiseaseId, Interval>;
  const result = {
    disease,
    foulbroodStage: { early: intervalOf(early), advanced: intervalOf(advanced) },
    none: intervalOf(none),
    notifiable: intervalOf(any),
  };
  const widths = [...Object.values(disease), result.none, result.notifiable].flatMap(({ lowBetween, highBetween }) => [
    lowBetween[1] - lowBetween[0],
    highBetween[1] - highBetween[0],
  ]);
  return { ...result, draws, seed, widestEnd: Math.max(...widths) };
}
