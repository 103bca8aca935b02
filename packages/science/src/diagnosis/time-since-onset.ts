import type { SourceId } from '@combside/sources/bibliography';
import type { SignId } from '../signs/catalogue.ts';
import type { Evidence, SignAnswer } from './evidence.ts';
import { type Sentence, sentence } from './sentence.ts';
import { readRopeTests } from './sort-evidence.ts';
import { daysToDeath, daysToScale, earliestScale } from './time-course.ts';

/** What a lower bound rests on. */
export type OnsetBasis = 'dead-brood' | 'ropy-remains' | 'scale' | 'much-scale' | 'spread-over-frames';

/**
 * For how long the colony has had American foulbrood, if it has it: a lower bound, the upper end always open. It may
 * lengthen a tracing window, never shorten one.
 */
export interface TimeSinceOnset {
  /** Days that must have passed at least since the first infection. */
  readonly atLeastDays: number;
  /** The published times leave the bound itself open between these. */
  readonly atLeastBetween: readonly [number, number];
  /** Always open: nothing seen on a comb says how old a case is at most. */
  readonly atMostDays: null;
  readonly basis: readonly OnsetBasis[];
  /** Said in the trade of what was seen; no bound is drawn from it. */
  readonly oftenMonths: boolean;
  readonly sentence: Sentence<`onset.${'often-months' | 'at-least'}`>;
  readonly sources: readonly SourceId[];
}

const deadSigns: readonly SignId[] = [
  'cap.sunken',
  'cap.dark_greasy',
  'cap.perforated',
  'cap.late_unemerged',
  'age.prepupa',
  'age.pupa',
  'post.melted',
  'col.coffee',
  'tongue',
];

function isMuch(answer: SignAnswer | undefined): boolean {
  return answer?.outcome === 'seen' && (answer.count === '11-100' || answer.count === 'over 100');
}

/**
 * The time since onset from what was seen.
 *
 * @returns null when no sign that American foulbrood leaves was seen
 */
export function timeSinceOnset(evidence: Evidence): TimeSinceOnset | null {
  const { signs } = evidence;
  const seen = (sign: SignId): boolean => signs[sign]?.outcome === 'seen';
  const basis: OnsetBasis[] = [];
  const sources = new Set<SourceId>();
  let bound: readonly [number, number] | null = null;
  const raise = (to: readonly [number, number], why: OnsetBasis, from: readonly SourceId[]): void => {
    basis.push(why);
    for (const source of from) sources.add(source);
    if (bound === null || to[0] > bound[0]) bound = to;
  };

  const death = [daysToDeath.low as number, daysToDeath.high as number] as const;
  if (deadSigns.some(seen)) raise(death, 'dead-brood', daysToDeath.sources);
  if (seen('con.ropy') || readRopeTests(evidence.ropeTests).thread !== null) {
    raise(death, 'ropy-remains', ['BOOKLET', ...daysToDeath.sources]);
  }
  const scale = signs['scale.hard_lower'];
  if (scale?.outcome === 'seen') {
    const much = isMuch(scale);
    raise(earliestScale(), much ? 'much-scale' : 'scale', [...daysToScale.sources, ...daysToDeath.sources]);
  }
  if (bound === null) return null;
  const frames = evidence.frameCounts.filter((frame) => frame.cellsAffected > 0).length;
  const most = Math.max(frames, ...Object.values(signs).map((a) => (a.outcome === 'seen' ? (a.frames ?? 0) : 0)));
  if (most >= 3) basis.push('spread-over-frames');
  const between: readonly [number, number] = bound;
  // "Much scale means months" is common practice without a source, and so is spread: a hint, never a bound.
  const oftenMonths = isMuch(scale) || (scale?.outcome === 'seen' && most >= 3);
  return {
    atLeastDays: between[0],
    atLeastBetween: between,
    atMostDays: null,
    basis,
    oftenMonths,
    sentence: sentence(oftenMonths ? 'onset.often-months' : 'onset.at-least', { days: between[0] }),
    sources: [...sources],
  };
}

/**
 * A tracing window with what the comb says: it may grow, it never shrinks.
 *
 * @param windowDays what the pack or the inspector set, days, from 0
 * @throws RangeError when negative
 */
export function lengthenedWindow(windowDays: number, onset: TimeSinceOnset | null): number {
  if (!(windowDays >= 0)) throw new RangeError(`a tracing window of ${windowDays} days: give a number from 0`);
  return Math.max(windowDays, onset?.atLeastBetween[1] ?? 0);
}
