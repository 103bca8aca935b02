import type { SourceId } from '@combside/sources/bibliography';
import { type DiseaseId, diseases } from '../signs/catalogue.ts';
import { isPublished } from './bands.ts';
import type { Evidence } from './evidence.ts';
import { type Network, type NodeId, numbersBehind, sourcesBehind } from './network.ts';
import { inferenceOf, nodeAt, pointWeighing, weigh } from './posterior.ts';
import type { Prior } from './prior.ts';
import { name, type Sentence, sentence, type WordToName } from './sentence.ts';
import { type SilentEvidence, sortEvidence, type WhySilent } from './sort-evidence.ts';
import { type TestId, testFigures } from './test-figures.ts';

/** How much a piece of evidence moves the log-odds, in words. */
export type Strength = 'nothing' | 'weak' | 'fair' | 'strong';

type ReasonId = `reason.${'seen' | 'not-seen' | 'positive' | 'negative' | 'measured'}.${'for' | 'against' | 'neither'}`;

/** What one piece of evidence does. */
export interface Reason {
  readonly node: NodeId;
  readonly outcome: 'seen' | 'not seen' | 'positive' | 'negative' | 'measured';
  /** Log-odds of the leading condition with all evidence, less the same without this piece. Natural logarithm. */
  readonly forLeading: number;
  /** The same for its best rival. */
  readonly forRival: number;
  readonly direction: 'for' | 'against' | 'neither';
  readonly strength: Strength;
  readonly sentence: Sentence<ReasonId>;
  readonly sources: readonly SourceId[];
  /** True when any number behind it is unsourced: shown as "expert band". */
  readonly expertBand: boolean;
}

/** Something that was entered and does not count, with why. */
export interface SilentReason extends SilentEvidence {
  readonly sentence: Sentence<`silent.${WhySilent}`>;
}

export interface Reasons {
  readonly leading: DiseaseId;
  readonly rival: DiseaseId;
  /** The strongest first. */
  readonly reasons: readonly Reason[];
  readonly silent: readonly SilentReason[];
}

/** Below this a piece of evidence is said to say next to nothing: it changes odds by less than a fifth. */
const unfelt = Math.log(1.2);
const strengths: readonly [number, Strength][] = [
  [unfelt, 'nothing'],
  [Math.log(3), 'weak'],
  [Math.log(20), 'fair'],
  [Number.POSITIVE_INFINITY, 'strong'],
];

/** The word for a shift of log-odds: our settings, factors of 1.2, 3 and 20 on the odds. */
export function strengthOf(shift: number): Strength {
  const size = Math.abs(shift);
  return (strengths.find(([limit]) => size < limit) as [number, Strength])[1];
}

/** True for the tests, false for signs and the rope test. */
export function isTest(node: NodeId): node is TestId {
  return node in testFigures;
}

/** The name of a node: of the sign, or of the test that it is. A rope test made is not the check of three cells. */
function nodeName(node: NodeId): { readonly word: WordToName } {
  if (node === 'rope-test') return { word: 'signs.rope-test-made' };
  if (node === 'pattern-measured') return { word: 'signs.pattern-measured' };
  return isTest(node) ? name('check', node) : name('sign', node);
}

/** Log-odds of each disease under a joint distribution, from both sums, so that nothing is lost near 0 or 1. */
function logOdds(network: Network, joint: Float64Array): number[] {
  return inferenceOf(network)
    .marginals(joint)
    .map((levels) => Math.log(levels.slice(1).reduce((sum, p) => sum + p, 0)) - Math.log(levels[0] as number));
}

/** The two diseases with the greatest posterior; ties in the order of the catalogue. */
export function leadingTwo(probability: Readonly<Record<DiseaseId, number>>): readonly [DiseaseId, DiseaseId] {
  const order = [...diseases].sort((a, b) => probability[b] - probability[a]);
  return [order[0] as DiseaseId, order[1] as DiseaseId];
}

/**
 * Why: for each piece of evidence the exact leave-one-out shift of the log-odds, for the leading condition and for its
 * best rival. Shifts do not add up to the whole when signs explain one another away; that is the point of them.
 *
 * @param leading the condition to reason about, and its rival: `leadingTwo` of the posterior
 */
export function reasonsFor(
  network: Network,
  evidence: Evidence,
  prior: Prior,
  [leading, rival]: readonly [DiseaseId, DiseaseId],
): Reasons {
  const { items, silent } = sortEvidence(network, evidence);
  const inference = inferenceOf(network);
  const weighing = pointWeighing(network, evidence, prior, items);
  const all = logOdds(network, weigh(inference, weighing).joint);
  const lead = diseases.indexOf(leading);
  const second = diseases.indexOf(rival);
  const { exposure } = evidence.circumstances;

  const reasons = items.map((item, i): Reason => {
    const others = { ...weighing, items: items.toSpliced(i, 1), chances: weighing.chances.toSpliced(i, 1) };
    const without = logOdds(network, weigh(inference, others).joint);
    const forLeading = (all[lead] as number) - (without[lead] as number);
    const forRival = (all[second] as number) - (without[second] as number);
    const node = nodeAt(network, item.index);
    const test = isTest(item.node) || item.node === 'rope-test';
    const shown = item.grade !== 0;
    const measured = item.node === 'pattern-measured' ? evidence.measuredPattern : undefined;
    const outcome = measured ? 'measured' : test ? (shown ? 'positive' : 'negative') : shown ? 'seen' : 'not seen';
    const strength = strengthOf(forLeading);
    const direction = strength === 'nothing' ? 'neither' : forLeading > 0 ? 'for' : 'against';
    return {
      node: item.node,
      outcome,
      forLeading,
      forRival,
      direction,
      strength,
      sentence: sentence(`reason.${outcome === 'not seen' ? 'not-seen' : outcome}.${direction}`, {
        what: nodeName(item.node),
        condition: name('condition', leading),
        strength,
        ...(measured
          ? {
              solid: Math.round(100 * measured.solidness),
              error: Math.max(1, Math.round(100 * measured.standardError)),
              sides: measured.sides,
            }
          : {}),
      }),
      sources: sourcesBehind(node, exposure),
      expertBand: numbersBehind(node, exposure).some((value) => !isPublished(value)),
    };
  });
  reasons.sort((a, b) => Math.abs(b.forLeading) - Math.abs(a.forLeading));
  return {
    leading,
    rival,
    reasons,
    silent: silent.map((one) => ({
      ...one,
      sentence: sentence(`silent.${one.why}`, { what: nodeName(one.node) }),
    })),
  };
}
