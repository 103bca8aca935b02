import type { SourcedValue } from '@combside/sources/sourced-value';
import type { Chance } from '../random/seeded.ts';
import type { Rate } from './test-figures.ts';

const logit = (p: number): number => Math.log(p / (1 - p));

/**
 * A draw from a band of probability: uniform on the log-odds scale between its ends, so that neither end can become 0 or
 * 1 and the middle of the draws is the point value of an expert band. A value without ends is returned as it is.
 */
export function drawProbability(value: SourcedValue, chance: Chance): number {
  return drawFrom(logOddsOf(value), chance);
}

/** A band of probability by the log-odds of its ends; `width` is 0 where the value has none. */
export interface LogOdds {
  readonly value: number;
  readonly from: number;
  readonly width: number;
}

/** Reads a band once, for whoever draws from it hundreds of times. */
export function logOddsOf({ value, low, high }: SourcedValue): LogOdds {
  if (low === undefined || high === undefined || low === high) return { value, from: 0, width: 0 };
  return { value, from: logit(low), width: logit(high) - logit(low) };
}

/** One draw, as `drawProbability` makes it. */
export function drawFrom({ value, from, width }: LogOdds, chance: Chance): number {
  // One draw is always taken, so that a band that collapses does not shift the draws behind it.
  const u = chance.uniform();
  return width === 0 ? value : 1 / (1 + Math.exp(-(from + width * u)));
}

/** A draw from a band of a positive factor: uniform on the logarithmic scale. */
export function drawFactor(value: SourcedValue, chance: Chance): number {
  const { low, high } = value;
  const u = chance.uniform();
  if (low === undefined || high === undefined || low === high) return value.value;
  return low * (high / low) ** u;
}

/** A draw of a rate: the Jeffreys posterior of its counts where there are counts, else its band. */
export function drawRate(rate: Rate, chance: Chance): number {
  if (!rate.counts) return drawProbability(rate.value, chance);
  const { positive, of } = rate.counts;
  const drawn = chance.beta(positive + 0.5, of - positive + 0.5);
  // A beta draw may round to an end; no probability is 0 or 1.
  return Math.min(1 - 1e-9, Math.max(1e-9, drawn));
}

/** True when the number was printed in a source or follows from printed numbers by arithmetic. */
export function isPublished(value: SourcedValue): boolean {
  return value.standing === 'published' || value.standing === 'arithmetic';
}
