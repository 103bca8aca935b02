import type { Look } from '../brood/look.ts';
import { chanceNothingShown, type Eye, pointEye, sealedBroodShare } from '../brood/what-a-look-shows.ts';
import { type DiseaseId, diseases } from '../signs/catalogue.ts';
import type { Evidence } from './evidence.ts';
import { Inference, type Observation, type SignChances } from './inference.ts';
import { levelsOf, type Network, pointChances } from './network.ts';
import { type LevelWeights, type Prior, pointWeights } from './prior.ts';
import { cellsOfGrade, type EvidenceItem, leastForSeen, sortEvidence } from './sort-evidence.ts';

/** What is believed after the evidence, at the point values of every band. */
export interface Posterior {
  /** Probability of each disease, American foulbrood in either stage. */
  readonly disease: Readonly<Record<DiseaseId, number>>;
  /** American foulbrood by stage. */
  readonly foulbroodStage: { readonly early: number; readonly advanced: number };
  /** Probability that none of the named conditions is present. */
  readonly none: number;
  /** Probability of every joint state, in the order of `inference.ts`. */
  readonly joint: Float64Array;
  /** Natural logarithm of the probability of the evidence. */
  readonly logEvidence: number;
}

/**
 * No probability handed out comes nearer to 0 or 1 than this: with many signs the arithmetic would round to an end, and
 * no look proves anything.
 */
export const nearestToCertain = 1e-12;

const kept = (p: number): number => Math.min(1 - nearestToCertain, Math.max(nearestToCertain, p));

const inferences = new WeakMap<Network, Inference>();

/** The inference of a network, made once and kept with its scratch space. */
export function inferenceOf(network: Network): Inference {
  let inference = inferences.get(network);
  if (!inference) {
    inference = new Inference(levelsOf(network));
    inferences.set(network, inference);
  }
  return inference;
}

/**
 * The luck of a look, shared by all signs on combs.
 *
 * A light case lies in a few cells on one or two frames. When the look does not reach those cells it misses every sign of
 * theirs together: twenty signs "not seen" on three frames of ten are not twenty pieces of evidence. So the look reaches
 * a light case or it does not, with the chance w of noticing the smallest grade on the comb face, and each sign's chance d
 * of being noticed is split between the two without changing it: min(1, d / w) when reached, max(0, (d - w) / (1 - w))
 * when not. The posterior is the mixture of both.
 */
export interface Reach {
  /** Chance that the look reaches a light case: w, in [0, 1). */
  readonly chance: number;
}

/** The chance that this look reaches a light case. */
export function reachOf(look: Look, eye: Eye): Reach {
  return { chance: 1 - chanceNothingShown(cellsOfGrade[0] * sealedBroodShare(look), 'comb face', look, eye) };
}

/** The chance of noticing each grade, given whether the look reached a light case. */
export function noticedGiven(
  reached: boolean,
  { chance: w }: Reach,
  item: EvidenceItem,
  noticed: readonly number[],
): readonly number[] {
  if (!item.onCombs || w === 0) return noticed;
  const least = item.grade === 0 || item.drawnGrade ? 0 : leastForSeen;
  return noticed.map((d) => Math.max(least, reached ? Math.min(1, d / w) : Math.max(0, (d - w) / (1 - w))));
}

/** Evidence as numbers: each item's chances, the eye, and what the look can reach. */
export interface Weighing {
  readonly weights: LevelWeights;
  readonly items: readonly EvidenceItem[];
  readonly chances: readonly SignChances[];
  readonly eye: Eye;
  readonly look: Look;
}

const otherBranch = new WeakMap<Inference, Float64Array>();

/**
 * The joint distribution after the evidence, mixed over the luck of the look.
 *
 * @param into where to put it; a new array when left out
 */
export function weigh(
  inference: Inference,
  { weights, items, chances, eye, look }: Weighing,
  into: Float64Array = new Float64Array(inference.states),
): { joint: Float64Array; logEvidence: number } {
  const reach = reachOf(look, eye);
  const noticed = items.map((item) => item.noticed(eye));
  const observations = (reached: boolean): Observation[] =>
    items.map((item, i) => ({
      sign: chances[i] as SignChances,
      grade: item.grade,
      noticed: noticedGiven(reached, reach, item, noticed[i] as readonly number[]),
    }));
  if (reach.chance === 0 || !items.some((item) => item.onCombs))
    return inference.joint(weights, observations(true), into);

  let other = otherBranch.get(inference);
  if (!other) {
    other = new Float64Array(inference.states);
    otherBranch.set(inference, other);
  }
  const reached = inference.joint(weights, observations(true), into);
  const missed = inference.joint(weights, observations(false), other);
  const logReached = reached.logEvidence + Math.log(reach.chance);
  const logMissed = missed.logEvidence + Math.log1p(-reach.chance);
  const top = Math.max(logReached, logMissed);
  const sum = Math.exp(logReached - top) + Math.exp(logMissed - top);
  const share = Math.exp(logReached - top) / sum;
  const rest = Math.exp(logMissed - top) / sum;
  for (let s = 0; s < into.length; s++) into[s] = share * (into[s] as number) + rest * (other[s] as number);
  return { joint: into, logEvidence: top + Math.log(sum) };
}

/** The evidence at the point values of every band. */
export function pointWeighing(
  network: Network,
  evidence: Evidence,
  prior: Prior,
  items: readonly EvidenceItem[],
): Weighing {
  const { exposure } = evidence.circumstances;
  return {
    weights: pointWeights(prior),
    items,
    chances: items.map((item) => pointChances(nodeAt(network, item.index), exposure)),
    eye: pointEye,
    look: evidence.look,
  };
}

/** The node at a place of the network. */
export function nodeAt(network: Network, index: number): Network['nodes'][number] {
  const node = network.nodes[index];
  if (!node) throw new RangeError(`the network has no node ${index}; it has ${network.nodes.length}`);
  return node;
}

/** Reads a joint distribution of the brood network. */
export function readJoint(network: Network, joint: Float64Array, logEvidence: number): Posterior {
  const marginals = inferenceOf(network).marginals(joint);
  const disease = {} as Record<DiseaseId, number>;
  diseases.forEach((id, v) => {
    const levels = marginals[v] as number[];
    disease[id] = kept(levels.slice(1).reduce((sum, p) => sum + p, 0));
  });
  const foulbrood = marginals[diseases.indexOf('american-foulbrood')] as number[];
  return {
    disease,
    foulbroodStage: { early: kept(foulbrood[1] as number), advanced: kept(foulbrood[2] as number) },
    none: kept(joint[0] as number),
    joint,
    logEvidence,
  };
}

/** The prior as it stands, when there is no evidence: the same numbers, not what is left of them after a sum. */
function unchanged(network: Network, prior: Prior, weights: LevelWeights): Posterior {
  const { joint } = inferenceOf(network).joint(weights, []);
  const disease = {} as Record<DiseaseId, number>;
  for (const one of prior.diseases) disease[one.disease] = one.value.value;
  const foulbrood = weights[diseases.indexOf('american-foulbrood')] as readonly number[];
  return {
    disease,
    foulbroodStage: { early: foulbrood[1] as number, advanced: foulbrood[2] as number },
    none: weights.reduce((product, levels) => product * (levels[0] as number), 1),
    joint,
    logEvidence: 0,
  };
}

/**
 * The exact posterior over every joint state of the conditions, at the point values of the bands.
 *
 * The order in which evidence was entered changes nothing; with no evidence that counts the prior comes back exactly.
 *
 * @param network `broodNetwork`, or another over the same diseases
 * @param evidence checked by `checkEvidence`
 * @param prior from `priorFrom`
 */
export function posterior(network: Network, evidence: Evidence, prior: Prior): Posterior {
  const { items } = sortEvidence(network, evidence);
  if (items.length === 0) return unchanged(network, prior, pointWeights(prior));
  const { joint, logEvidence } = weigh(inferenceOf(network), pointWeighing(network, evidence, prior, items));
  return readJoint(network, joint, logEvidence);
}

const masks = new WeakMap<Network, Map<string, Uint8Array>>();

/** For every joint state, whether any of the diseases is present in it. */
export function statesWith(network: Network, any: readonly DiseaseId[]): Uint8Array {
  const key = [...any].sort().join(' ');
  let known = masks.get(network);
  if (!known) {
    known = new Map();
    masks.set(network, known);
  }
  const found = known.get(key);
  if (found) return found;
  const levels = levelsOf(network);
  const inference = inferenceOf(network);
  const mask = new Uint8Array(inference.states);
  let stride = 1;
  network.variables.forEach((variable, v) => {
    const count = levels[v] as number;
    if (any.includes(variable.disease)) {
      for (let s = 0; s < mask.length; s++) if (Math.floor(s / stride) % count > 0) mask[s] = 1;
    }
    stride *= count;
  });
  known.set(key, mask);
  return mask;
}

/**
 * The probability that at least one of the diseases is present: summed over the joint states, since signs they share
 * make them depend on one another.
 *
 * @param any which diseases are notifiable: an input from the pack
 */
export function chanceOfAny(network: Network, joint: Float64Array, any: readonly DiseaseId[]): number {
  if (any.length === 0) return 0;
  const mask = statesWith(network, any);
  let sum = 0;
  for (let s = 0; s < joint.length; s++) if (mask[s] === 1) sum += joint[s] as number;
  return kept(sum);
}
