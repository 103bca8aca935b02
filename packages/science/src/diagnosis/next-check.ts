import type { SourceId } from '@combside/sources/bibliography';
import { pointEye } from '../brood/what-a-look-shows.ts';
import { type DiseaseId, diseases } from '../signs/catalogue.ts';
import { type Check, type CheckId, checks, type NotPossible, openSigns } from './checks.ts';
import type { Evidence } from './evidence.ts';
import { type FirstStep, firstSteps } from './first-steps.ts';
import type { Observation } from './inference.ts';
import { type Network, nodeIndex, pointChances } from './network.ts';
import { inferenceOf, pointWeighing, statesWith, weigh } from './posterior.ts';
import type { Prior } from './prior.ts';
import { name, type Sentence, sentence } from './sentence.ts';
import { noticedBy, sortEvidence } from './sort-evidence.ts';
import type { TestId } from './test-figures.ts';

/** What errors cost, in one unit: a wrong name for a disease that nobody must notify is 1. Settings, no source. */
export interface Losses {
  /** A notifiable disease is there and is not suspected. */
  readonly missed: number;
  /** A notifiable disease is suspected and none is there. */
  readonly falseAlarm: number;
  /** Another condition is there and is not named, or is named and is not there. */
  readonly misnamed: number;
  /**
   * By which factor, up or down, the loss of a missed disease is in doubt. The expected loss is averaged over that band,
   * since nobody knows the figure: a check then keeps its worth a little beside the exact point of indifference.
   */
  readonly doubtOfMissed: number;
}

export interface CheckSettings {
  readonly losses: Losses;
  /** Which tests the inspector carries today. */
  readonly kitsAtHand: readonly TestId[];
  /**
   * Loss avoided per minute below which no answer would change what is done: such checks are ranked by the doubt they
   * remove instead.
   */
  readonly worthAMinute: number;
  /** Minutes at the hive or days in the laboratory, where they differ from the defaults. */
  readonly costs: Readonly<Partial<Record<CheckId, number>>>;
}

/** Defaults: our settings, no source. */
export const defaultCheckSettings: CheckSettings = {
  losses: { missed: 200, falseAlarm: 10, misnamed: 1, doubtOfMissed: 4 },
  kitsAtHand: [],
  worthAMinute: 0.02,
  costs: {},
};

/** A check that can be done, with what it is worth. */
export interface RankedCheck {
  readonly check: CheckId;
  readonly place: 'hive' | 'laboratory';
  /** Expected loss avoided by knowing the answer, in the unit of the losses; 0 when no answer would change what is done. */
  readonly lossAvoided: number;
  /** Minutes at the hive; days for a laboratory. */
  readonly cost: number;
  /** What the ranking at the hive goes by: loss avoided per minute. */
  readonly lossAvoidedPerMinute: number | null;
  /** Expected fall of the doubt whether a notifiable disease is present, in bits: breaks ties. */
  readonly doubtRemoved: number;
  /** Chance that it comes out seen or positive. */
  readonly chancePositive: number;
  /** What to do, and how to do it right. */
  readonly how: Sentence<`check.${CheckId}.how`>;
  readonly sources: readonly SourceId[];
}

export interface NextChecks {
  /** Steps that come first; none unless suspicion stands. */
  readonly first: readonly { readonly step: FirstStep; readonly sentence: Sentence<`first.${FirstStep}`> }[];
  /** At the hive, the most useful minute first. */
  readonly atHive: readonly RankedCheck[];
  /** In the laboratory, the greatest loss avoided first; ties by days. */
  readonly inLaboratory: readonly RankedCheck[];
  readonly notPossible: readonly {
    readonly check: CheckId;
    readonly why: NotPossible;
    readonly sentence: Sentence<`not-possible.${NotPossible}`>;
  }[];
}

/**
 * The answers a check may give, as likelihoods to be multiplied: for each thing it reveals, seen or not; for the rope
 * test, no thread, a short one or a long one. What was already not seen counts only as far as the better look adds to it.
 */
function questions(network: Network, check: Check, evidence: Evidence): Observation[][] {
  const { exposure } = evidence.circumstances;
  const at = (id: Parameters<typeof nodeIndex>[1]): Observation['sign'] => {
    const node = network.nodes[nodeIndex(network, id)] as Network['nodes'][number];
    return pointChances(node, exposure);
  };
  if (check.id === 'rope-test') {
    // Three cells, as the check says.
    const threads = 1 - (1 - pointEye.ropeInOneCell) ** 3;
    const sign = at('rope-test');
    return [[0, 1, 2].map((grade) => ({ sign, grade, noticed: [threads, threads] }))];
  }
  if (check.reveals.length === 0) {
    const sign = at(check.id as TestId);
    return [[0, 1].map((grade) => ({ sign, grade, noticed: [1] }))];
  }
  const better = check.improves(evidence.look);
  return openSigns(check, evidence).flatMap((id) => {
    const now = noticedBy(id, better, pointEye);
    const before = evidence.signs[id] ? noticedBy(id, evidence.look, pointEye) : now.map(() => 0);
    const added = now.map((chance, g) => {
      const missedSoFar = 1 - (before[g] as number);
      return missedSoFar <= 0 ? 0 : Math.max(0, 1 - (1 - chance) / missedSoFar);
    });
    if (added.every((chance) => chance === 0)) return [];
    const sign = at(id);
    return [[0, 'seen' as const].map((grade) => ({ sign, grade, noticed: added }))];
  });
}

/** The loss of the best decision, and the doubt about a notifiable disease, for an unnormalised joint. */
class Judge {
  readonly #network: Network;
  readonly #losses: Losses;
  readonly #notifiable: readonly boolean[];
  readonly #mask: Uint8Array;
  /** Nine values of the loss of a missed disease, evenly over its band on the logarithmic scale. */
  readonly #missed: readonly number[];

  constructor(network: Network, losses: Losses, notifiable: readonly DiseaseId[]) {
    this.#network = network;
    this.#losses = losses;
    this.#notifiable = diseases.map((id) => notifiable.includes(id));
    this.#mask = statesWith(network, notifiable);
    this.#missed = Array.from({ length: 9 }, (_, i) => losses.missed * losses.doubtOfMissed ** ((i - 4) / 4));
  }

  /** Both sums are of the same weight as the joint, so branches can be added. */
  weigh(joint: Float64Array): { loss: number; doubt: number; weight: number } {
    const marginals = inferenceOf(this.#network).marginals(joint);
    const first = marginals[0] as number[];
    const weight = first.reduce((sum, p) => sum + p, 0);
    let present = 0;
    for (let s = 0; s < joint.length; s++) if (this.#mask[s] === 1) present += joint[s] as number;
    const absent = Math.max(0, weight - present);
    const { falseAlarm, misnamed } = this.#losses;
    let loss = 0;
    for (const missed of this.#missed) loss += Math.min(present * missed, absent * falseAlarm) / this.#missed.length;
    marginals.forEach((levels, v) => {
      if (this.#notifiable[v]) return;
      const without = levels[0] as number;
      loss += misnamed * Math.min(without, weight - without);
    });
    const bits = (part: number): number => (part > 0 ? -part * Math.log2(part / weight) : 0);
    return { loss, doubt: bits(present) + bits(absent), weight };
  }
}

/**
 * What to look at next: every check possible on what is there, by the expected loss it avoids per minute. The decision
 * weighed is whether to suspect a notifiable disease and how to name the others; the tool proposes, the inspector decides.
 *
 * @param notifiable which diseases the pack says are notifiable
 */
export function nextChecks(
  network: Network,
  evidence: Evidence,
  prior: Prior,
  notifiable: readonly DiseaseId[],
  settings: CheckSettings = defaultCheckSettings,
): NextChecks {
  for (const [loss, value] of Object.entries(settings.losses)) {
    if (!(value >= 0 && Number.isFinite(value)))
      throw new RangeError(`losses.${loss} is ${value}: give a number from 0`);
  }
  if (!(settings.losses.doubtOfMissed >= 1)) {
    throw new RangeError(`losses.doubtOfMissed is ${settings.losses.doubtOfMissed}: give a factor from 1`);
  }
  const { items } = sortEvidence(network, evidence);
  const inference = inferenceOf(network);
  const { joint } = weigh(inference, pointWeighing(network, evidence, prior, items));
  const judge = new Judge(network, settings.losses, notifiable);
  const now = judge.weigh(joint);

  const ranked: RankedCheck[] = [];
  const notPossible: NextChecks['notPossible'][number][] = [];
  const scratch: Float64Array[] = [];
  const space = (depth: number): Float64Array => {
    scratch[depth] ??= new Float64Array(inference.states);
    return scratch[depth] as Float64Array;
  };

  for (const check of checks) {
    const why = check.notPossible(evidence, settings.kitsAtHand);
    if (why !== null) {
      notPossible.push({
        check: check.id,
        why,
        sentence: sentence(`not-possible.${why}`, { check: name('check', check.id) }),
      });
      continue;
    }
    const asked = questions(network, check, evidence);
    if (asked.length === 0) {
      notPossible.push({
        check: check.id,
        why: 'done',
        sentence: sentence('not-possible.done', { check: name('check', check.id) }),
      });
      continue;
    }
    const likelihoods = asked.map((answers) => answers.map((answer) => inference.likelihood(answer)));
    let loss = 0;
    let doubt = 0;
    let nothing = 0;
    const descend = (depth: number, weights: Float64Array, allNothing: boolean): void => {
      if (depth === likelihoods.length) {
        const judged = judge.weigh(weights);
        loss += judged.loss;
        doubt += judged.doubt;
        if (allNothing) nothing += judged.weight;
        return;
      }
      (likelihoods[depth] as Float64Array[]).forEach((likelihood, answer) => {
        const into = space(depth);
        for (let s = 0; s < into.length; s++) into[s] = (weights[s] as number) * (likelihood[s] as number);
        descend(depth + 1, into, allNothing && answer === 0);
      });
    };
    descend(0, joint, true);

    const cost = settings.costs[check.id] ?? check.cost.value;
    if (!(cost > 0)) throw new RangeError(`costs["${check.id}"] is ${cost}: give minutes or days above 0`);
    // Rounding may leave a trace below 0; knowing more never costs.
    const lossAvoided = tidy(now.loss - loss);
    ranked.push({
      check: check.id,
      place: check.place,
      lossAvoided,
      cost,
      lossAvoidedPerMinute: check.place === 'hive' ? lossAvoided / cost : null,
      doubtRemoved: tidy(now.doubt - doubt),
      chancePositive: Math.min(1, Math.max(0, 1 - nothing)),
      how: sentence(`check.${check.id}.how`),
      sources: check.sources,
    });
  }

  const worth = (one: RankedCheck): number => {
    const perMinute = one.lossAvoided / one.cost;
    return perMinute < settings.worthAMinute ? 0 : perMinute;
  };
  return {
    first: evidence.suspicionStands ? firstSteps.map((step) => ({ step, sentence: sentence(`first.${step}`) })) : [],
    atHive: ranked
      .filter((one) => one.place === 'hive')
      .sort((a, b) => worth(b) - worth(a) || b.doubtRemoved / b.cost - a.doubtRemoved / a.cost),
    inLaboratory: ranked
      .filter((one) => one.place === 'laboratory')
      .sort((a, b) => b.lossAvoided - a.lossAvoided || b.doubtRemoved - a.doubtRemoved || a.cost - b.cost),
    notPossible,
  };
}

function tidy(difference: number): number {
  return difference < 1e-12 ? 0 : difference;
}
