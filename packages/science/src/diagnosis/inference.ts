/**
 * Exact inference over every joint state of a few conditions.
 *
 * A condition is a variable with two or more levels that exclude one another (absent, early, advanced). A joint state is
 * one level of each; the first variable runs fastest, so state = level0 + size0 * (level1 + size1 * (level2 + ...)).
 * With one condition of three levels and nine of two there are 3 x 2^9 = 1536 states, few enough to keep them all: no
 * cap on how many conditions are present, no approximation, and the prior comes back when there is no evidence.
 *
 * A sign is graded: 0 not seen, 1 to 3 by amount. Each condition present, and a background that is always present (the
 * leak), produces a grade of its own, independently of the others; what shows is the highest. This is the noisy-OR of
 * graded signs, the noisy-MAX (Diez 1993 and Henrion 1989, from memory). Written with reach(g), the chance that a cause
 * produces grade g or more, and F(g) = 1 - reach(g + 1):
 *
 *   P(shown <= g | state) = product over the causes present of F(g)
 *
 * - Not seen, g = 0: the product falls apart into one factor per condition. All "not seen" together cost as much as one.
 * - Seen with grade g: the product at g less the product at g - 1. Taken as it stands this loses all its digits when the
 *   causes are rare, so the difference itself is carried along. With P the product at g, D the difference, and a further
 *   cause with f = F(g), e = F(g - 1) and d = f - e:  D' = P d + D e,  P' = P f. Every term is positive.
 * - A sign of healthy brood works the other way: the background shows it, each condition present leaves only a share of
 *   it. Not seen is then 1 - Q with Q the product of the shares; carried along as N' = N + Q (1 - q),  Q' = Q q.
 *
 * The tables over all states are filled by doubling: once the states of the first variables stand, each level of the
 * next is the same block times that level's factor.
 *
 * How much was looked at enters as the chance of noticing each grade; it thins every cause alike. A chance of 0 makes
 * "not seen" the same under every state: it says nothing, exactly.
 */

/** What one cause does to a sign. */
export interface CauseOfSign {
  /** Which variable, by its place in the network. */
  readonly variable: number;
  /** Which of its levels, from 1. */
  readonly level: number;
  /** reach[g - 1]: chance that this cause alone shows grade g or more; falling. For a sign of healthy brood one number: the share it leaves. */
  readonly reach: readonly number[];
}

/** The chances of one sign or test as numbers. */
export interface SignChances {
  /** True for a sign of healthy brood: causes take away. Such a sign has one grade. */
  readonly takenAway: boolean;
  /** The background's own reach: chance to show the sign with no condition present. */
  readonly background: readonly number[];
  readonly causes: readonly CauseOfSign[];
}

/** One piece of evidence, ready to be computed. */
export interface Observation {
  readonly sign: SignChances;
  /**
   * 0 not seen; g seen with exactly grade g; `seen` when nobody said how much; for a measurement the likelihood of each
   * grade from 0 up, which is then the sum over the grades.
   */
  readonly grade: number | 'seen' | readonly number[];
  /** noticed[g - 1]: chance that this look notices the sign when it is there with grade g. */
  readonly noticed: readonly number[];
}

function isMeasured(grade: Observation['grade']): grade is readonly number[] {
  return typeof grade === 'object';
}

/** The reach left when grade g is noticed only with chance noticed[g - 1]. */
function thinned(reach: readonly number[], noticed: readonly number[], into: Float64Array): void {
  let above = 0;
  let beyond = 0;
  for (let g = reach.length - 1; g >= 0; g--) {
    const here = reach[g] as number;
    above += (here - beyond) * (noticed[g] as number);
    beyond = here;
    into[g] = above;
  }
}

/** The computation over all joint states of variables with the given numbers of levels. Keeps its own scratch space. */
export class Inference {
  readonly levels: readonly number[];
  /** How many joint states there are. */
  readonly states: number;
  readonly #product: Float64Array;
  readonly #difference: Float64Array;
  readonly #likelihood: Float64Array;
  readonly #factors: Float64Array[];
  readonly #steps: Float64Array[];

  /**
   * @param levels the number of levels of each variable, each 2 or more
   * @throws RangeError when a variable has fewer than two levels, or there would be more than 2^22 states
   */
  constructor(levels: readonly number[]) {
    let states = 1;
    for (const count of levels) {
      if (!Number.isInteger(count) || count < 2) {
        throw new RangeError(`a variable has ${count} levels: it needs at least two, absent and present`);
      }
      states *= count;
    }
    if (states > 2 ** 22) throw new RangeError(`${states} joint states are too many to keep: at most 2^22`);
    this.levels = levels;
    this.states = states;
    this.#product = new Float64Array(states);
    this.#difference = new Float64Array(states);
    this.#likelihood = new Float64Array(states);
    this.#factors = levels.map((count) => new Float64Array(count));
    this.#steps = levels.map((count) => new Float64Array(count));
  }

  /**
   * The joint distribution after the evidence.
   *
   * @param prior per variable, the probability of each level; each adds up to 1
   * @param observations in any order; the order changes nothing but the last digits
   * @param into where to put it: one number per state; a new array when left out
   * @returns the joint and the natural logarithm of the probability of the evidence
   * @throws RangeError when a shape does not fit, or the evidence is impossible under every state
   */
  joint(
    prior: readonly (readonly number[])[],
    observations: readonly Observation[],
    into: Float64Array = new Float64Array(this.states),
  ): { joint: Float64Array; logEvidence: number } {
    const weights = this.#factors;
    if (prior.length !== this.levels.length) {
      throw new RangeError(`a prior for ${prior.length} variables does not fit a network of ${this.levels.length}`);
    }
    prior.forEach((row, v) => {
      const kept = weights[v] as Float64Array;
      if (row.length !== kept.length) {
        throw new RangeError(`the prior of variable ${v} has ${row.length} levels, the network ${kept.length}`);
      }
      kept.set(row);
    });

    let logEvidence = 0;
    const reach = new Float64Array(3);
    for (const { sign, grade, noticed } of observations) {
      if (grade !== 0 || sign.takenAway) continue;
      // Every cause, the background too, must have failed to show or have been overlooked.
      thinned(sign.background, noticed, reach);
      logEvidence += Math.log1p(-(reach[0] as number));
      for (const cause of sign.causes) {
        thinned(cause.reach, noticed, reach);
        const row = weights[cause.variable] as Float64Array;
        row[cause.level] = (row[cause.level] as number) * (1 - (reach[0] as number));
      }
    }

    into[0] = 1;
    let size = 1;
    for (let v = 0; v < this.levels.length; v++) {
      const row = weights[v] as Float64Array;
      for (let level = row.length - 1; level >= 0; level--) {
        const factor = row[level] as number;
        const start = level * size;
        for (let s = 0; s < size; s++) into[start + s] = (into[s] as number) * factor;
      }
      size *= row.length;
    }

    let total = 0;
    for (let s = 0; s < size; s++) total += into[s] as number;
    for (const observation of observations) {
      if (observation.grade === 0 && !observation.sign.takenAway) continue;
      const likelihood = this.likelihood(observation, this.#likelihood);
      // Scaled as it goes, so that forty signs do not run out of exponent.
      const scale = 1 / total;
      logEvidence += Math.log(total);
      total = 0;
      for (let s = 0; s < size; s++) {
        const weight = (into[s] as number) * scale * (likelihood[s] as number);
        into[s] = weight;
        total += weight;
      }
    }
    if (!(total > 0)) throw new RangeError('the evidence is impossible under every state: some chance is 0 or 1');
    for (let s = 0; s < size; s++) into[s] = (into[s] as number) / total;
    return { joint: into, logEvidence: logEvidence + Math.log(total) };
  }

  /**
   * The probability of one observation under every joint state.
   *
   * @param into where to put it; a new array when left out
   * @throws RangeError when the grade is not one the sign has
   */
  likelihood(observation: Observation, into: Float64Array = new Float64Array(this.states)): Float64Array {
    const { sign, grade, noticed } = observation;
    if (isMeasured(grade)) return this.#measured(observation, grade, into);
    if (sign.takenAway) return this.#takenAway(observation, into);
    const grades = sign.background.length;
    if (grade !== 'seen' && !(Number.isInteger(grade) && grade >= 0 && grade <= grades)) {
      throw new RangeError(`grade ${grade} does not fit a sign with grades 0 to ${grades}`);
    }
    // Seen with an unknown grade is everything but 0: the product at the highest grade, which is 1, less that at 0.
    const upper = grade === 'seen' ? grades : grade;
    const lower = grade === 'seen' ? 0 : grade - 1;
    const reach = new Float64Array(3);
    const below = (g: number): number => (g < 0 ? 0 : g >= grades ? 1 : 1 - (reach[g] as number));
    const step = (): number =>
      (lower < 0 ? 1 : (reach[lower] as number)) - (upper >= grades ? 0 : (reach[upper] as number));

    for (let v = 0; v < this.levels.length; v++) {
      (this.#factors[v] as Float64Array).fill(1);
      (this.#steps[v] as Float64Array).fill(0);
    }
    // factors: F(upper). steps: F(upper) - F(lower), taken from the reaches so that small chances keep their digits.
    for (const cause of sign.causes) {
      thinned(cause.reach, noticed, reach);
      (this.#factors[cause.variable] as Float64Array)[cause.level] = below(upper);
      (this.#steps[cause.variable] as Float64Array)[cause.level] = step();
    }
    thinned(sign.background, noticed, reach);
    const product = this.#product;
    const difference = grade === 0 ? this.#difference : into;
    product[0] = below(upper);
    difference[0] = step();

    let size = 1;
    for (let v = 0; v < this.levels.length; v++) {
      const factors = this.#factors[v] as Float64Array;
      const steps = this.#steps[v] as Float64Array;
      for (let level = 1; level < factors.length; level++) {
        const f = factors[level] as number;
        const d = steps[level] as number;
        const start = level * size;
        if (f === 1 && d === 0) {
          if (upper < grades) product.copyWithin(start, 0, size);
          difference.copyWithin(start, 0, size);
          continue;
        }
        const e = f - d;
        if (upper >= grades) {
          // At the highest grade the product is 1 everywhere: D' = d + D e.
          for (let s = 0; s < size; s++) difference[start + s] = d + (difference[s] as number) * e;
          continue;
        }
        for (let s = 0; s < size; s++) {
          const p = product[s] as number;
          product[start + s] = p * f;
          difference[start + s] = p * d + (difference[s] as number) * e;
        }
      }
      size *= factors.length;
    }
    if (grade === 0) into.set(product);
    return into;
  }

  #measured({ sign, noticed }: Observation, weights: readonly number[], into: Float64Array): Float64Array {
    if (weights.length !== sign.background.length + 1) {
      throw new RangeError(
        `${weights.length} likelihoods do not fit a sign with grades 0 to ${sign.background.length}`,
      );
    }
    const sum = new Float64Array(this.states);
    weights.forEach((weight, grade) => {
      this.likelihood({ sign, grade, noticed }, into);
      for (let s = 0; s < this.states; s++) sum[s] = (sum[s] as number) + weight * (into[s] as number);
    });
    into.set(sum);
    return into;
  }

  #takenAway({ sign, grade, noticed }: Observation, into: Float64Array): Float64Array {
    const shown = (sign.background[0] as number) * (noticed[0] as number);
    const left = this.#product;
    const missing = this.#difference;
    for (const row of this.#factors) row.fill(1);
    for (const cause of sign.causes) {
      (this.#factors[cause.variable] as Float64Array)[cause.level] = cause.reach[0] as number;
    }
    left[0] = shown;
    missing[0] = 1 - shown;
    let size = 1;
    for (let v = 0; v < this.levels.length; v++) {
      const factors = this.#factors[v] as Float64Array;
      for (let level = 1; level < factors.length; level++) {
        const q = factors[level] as number;
        const start = level * size;
        for (let s = 0; s < size; s++) {
          const here = left[s] as number;
          left[start + s] = here * q;
          missing[start + s] = (missing[s] as number) + here * (1 - q);
        }
      }
      size *= factors.length;
    }
    into.set(grade === 0 ? missing : left);
    return into;
  }

  /**
   * The marginal of each variable: per variable, the probability of each level.
   */
  marginals(joint: Float64Array): number[][] {
    const sums = this.levels.map((count) => new Array<number>(count).fill(0));
    // From the slowest variable down: its levels are whole blocks, and added up they are the joint of the variables below.
    const left = this.#product;
    left.set(joint);
    let size = joint.length;
    for (let v = this.levels.length - 1; v >= 0; v--) {
      const count = this.levels[v] as number;
      const row = sums[v] as number[];
      size /= count;
      for (let level = 0; level < count; level++) {
        let sum = 0;
        const from = level * size;
        for (let s = 0; s < size; s++) {
          const here = left[from + s] as number;
          sum += here;
          if (level > 0) left[s] = (left[s] as number) + here;
        }
        row[level] = sum;
      }
    }
    return sums;
  }
}
