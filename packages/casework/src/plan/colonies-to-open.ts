import { acceptCount } from '@combside/science/distributions/domain';
import { guardedCeil } from '@combside/science/distributions/target';
import {
  detectionProbabilityFinitePopulation,
  detectionVaryingSensitivity,
} from '@combside/science/sampling/detection-probability';
import type { OpeningRule } from './opening-rules.ts';

/**
 * How many of an apiary's colonies a rule wants opened (how many reach a wanted chance: `science/sampling`,
 * `sample-size-to-detect.ts`): the share of its band rounded up, at least the rule's least, never
 * more than stand there; all of them after a suspicion where the rule says so.
 *
 * @param colonies whole, 0 or more
 * @throws DomainError when `colonies` is no whole number of 0 or more
 */
export function coloniesToOpen(rule: OpeningRule, colonies: number, suspect: boolean): number {
  const all = acceptCount('colonies', colonies);
  if (suspect && rule.allWhenSuspect) return all;
  const band = rule.bands.find(({ upTo }) => upTo === null || all <= upTo);
  const share = guardedCeil((band?.share ?? 1) * all);
  return Math.min(all, Math.max(share, rule.least));
}

/**
 * The chance to find the disease when one colony of the apiary has it and so many, picked blindly, are opened in full.
 * Exact: hypergeometric with a perfect specificity [CAMERON98]. It rests on the sensitivity handed in, which nobody has
 * published.
 *
 * @param colonies that stand there, whole, 1 or more
 * @param opened whole, 0 to `colonies`
 * @param sensitivity of one full look, 0 to 1
 * @returns probability, 0 to 1; null where no colony stands
 * @throws DomainError on inputs outside these ranges
 */
export function chanceToFindOne(colonies: number, opened: number, sensitivity: number): number | null {
  if (colonies === 0) return null;
  return detectionProbabilityFinitePopulation({
    populationSize: colonies,
    infectedUnits: 1,
    tested: opened,
    sensitivity,
  }).probability;
}

/** One colony as it was looked at: brood frames seen of those held. A look from above or outside sees none. */
export interface LookMade {
  readonly framesSeen: number;
  readonly framesHeld: number;
}

/**
 * The same chance from looks that were made: a colony of which half the brood frames were seen counts half, as if the
 * disease sat on one frame. Bees left on the combs are not reckoned with, so it is at most this.
 *
 * @param colonies that stand there, whole, at least as many as there are looks
 * @returns probability, 0 to 1; null where no colony stands
 * @throws DomainError on more looks than colonies, or a sensitivity outside 0 to 1
 */
export function chanceFromLooks(colonies: number, looks: readonly LookMade[], sensitivity: number): number | null {
  if (colonies === 0) return null;
  const unitSensitivities = looks.map(({ framesSeen, framesHeld }) =>
    framesHeld === 0 ? 0 : sensitivity * Math.min(1, framesSeen / framesHeld),
  );
  return detectionVaryingSensitivity({ populationSize: colonies, designPrevalence: 1 / colonies, unitSensitivities })
    .probability;
}
