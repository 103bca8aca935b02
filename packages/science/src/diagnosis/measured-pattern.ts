import type { SourcedValue } from '@combside/sources/sourced-value';
import { band } from '../signs/levels.ts';

/**
 * A brood pattern that was measured instead of judged: sealed cells over sealed and missed ones, from photographs of comb
 * sides. What it says of "spotty, slight or marked" is a likelihood, never an answer: each grade gets the chance of such a
 * solidness under it, with the error of the measurement in it.
 */
export interface MeasuredPattern {
  /** 0 to 1, all sides together. */
  readonly solidness: number;
  /** Standard error of it, more than 0. */
  readonly standardError: number;
  /** Comb sides photographed. */
  readonly sides: number;
}

/**
 * Mean solidness of a comb side in a colony without a spotty pattern, with a slight and with a marked one. Nobody
 * published any: bands of ours. Of one healthy comb two windows were counted by eye: 0.95 and 0.91.
 */
export const sideSolidness: readonly [SourcedValue, SourcedValue, SourcedValue] = [
  band(0.88, 0.97, { unit: 'solidness' }),
  band(0.7, 0.88, { unit: 'solidness' }),
  band(0.4, 0.68, { unit: 'solidness' }),
];

/** Standard deviation between the sides of such colonies: settings of ours, no source. */
const spreadOfSides = [0.05, 0.08, 0.12] as const;

/** A photographed side of a colony with a spotty pattern shows it: band of ours. Else it looks like any other. */
export const sideShowsPattern: SourcedValue = band(0.5, 0.9);

/**
 * However far the solidness lies from what a grade would show, one grade is held likelier than another by this factor at
 * most: a setting of ours. A photograph shows one or a few sides, and nobody has tried the reader on real sick brood.
 */
export const mostAPhotographSays = 3;

/**
 * The likelihood of a measured pattern under each grade of the spotty pattern: none, slight, marked. Scaled so that the
 * greatest is 1; the least is 1/3 (`mostAPhotographSays`). A side more solid than usual says no more than a usual one, and
 * one with more gaps than a marked pattern no more than that.
 *
 * @param read how a band is read: its point value, or a draw
 */
export function patternLikelihood(
  measured: MeasuredPattern,
  read: (value: SourcedValue) => number = (value) => value.value,
): [number, number, number] {
  const means = sideSolidness.map(read) as [number, number, number];
  const shows = read(sideShowsPattern);
  const solidness = Math.max(means[2], Math.min(means[0], measured.solidness));
  const logs = means.map((mean, grade) => {
    const deviation = Math.hypot(spreadOfSides[grade] as number, measured.standardError);
    return -(((solidness - mean) / deviation) ** 2) / 2 - Math.log(deviation);
  });
  const top = Math.max(...logs);
  const [none, slight, marked] = logs.map((log) => Math.exp(log - top)) as [number, number, number];
  const weights = [none, shows * slight + (1 - shows) * none, shows * marked + (1 - shows) * none];
  const greatest = Math.max(...weights);
  const least = 1 / mostAPhotographSays;
  return weights.map((weight) => least + (1 - least) * (weight / greatest)) as [number, number, number];
}

/** True when it speaks for a pattern without gaps, at the point values of the bands. */
export function speaksForCompact(measured: MeasuredPattern): boolean {
  const [none, slight, marked] = patternLikelihood(measured);
  return none >= slight && none >= marked;
}

/**
 * What a measured pattern shows beyond its error: `spotty` when a standard error more would still be less solid than a side
 * of a colony without a spotty pattern, `compact` when a standard error less would still be more solid than a side with a
 * slight one. Null between.
 */
export function shownBeyondError({ solidness, standardError }: MeasuredPattern): 'spotty' | 'compact' | null {
  const [none, slight] = sideSolidness;
  if (solidness + standardError < (none.low ?? none.value)) return 'spotty';
  if (solidness - standardError > (slight.high ?? slight.value)) return 'compact';
  return null;
}
