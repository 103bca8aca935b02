import { pointEye } from '../brood/detectability.ts';
import { type DiseaseId, diseases } from '../signs/catalogue.ts';
import type { Evidence } from './evidence.ts';
import { type EvidenceItem, findingsOf } from './findings.ts';
import { type Finding, Inference } from './inference.ts';
import { levelsOf, type Network, pointChances } from './network.ts';
import { type LevelWeights, type Prior, pointWeights } from './prior.ts';

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

/** Findings at the point values of the bands. */
export function pointFindings(network: Network, evidence: Evidence, items: readonly EvidenceItem[]): Finding[] {
  const { exposure } = evidence.circumstances;
  return items.map((item) => ({
    sign: pointChances(nodeAt(network, item.index), exposure),
    grade: item.grade,
    noticed: item.noticed(pointEye),
  }));
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
  const { items } = findingsOf(network, evidence);
  const weights = pointWeights(prior);
  if (items.length === 0) return unchanged(network, prior, weights);
  const { joint, logEvidence } = inferenceOf(network).joint(weights, pointFindings(network, evidence, items));
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
