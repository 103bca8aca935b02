/**
 * Chance that can be repeated: an object handed to whoever needs draws, so that the same seed gives the same answer on
 * every machine. Generator xoshiro128** (Blackman and Vigna, "Scrambled Linear Pseudorandom Number Generators", 2018),
 * seeded through splitmix32; both from memory, the first checked against its published vector in the test beside this.
 * Not for secrets.
 */
export interface Chance {
  /** The next 32 random bits, as an integer in 0..2^32-1. */
  bits(): number;
  /** Uniform in [0, 1), with 53 random bits. */
  uniform(): number;
  /** Uniform in [low, high). */
  between(low: number, high: number): number;
  /** Uniform integer in 0..count-1. Throws RangeError unless count is a positive integer up to 2^32. */
  integer(count: number): number;
  /** Normal with mean 0 and standard deviation 1 (polar method of Marsaglia and Bray 1964). */
  normal(): number;
  /** Gamma with the given shape (> 0) and scale 1 (Marsaglia and Tsang 2000, ACM TOMS 26:363-372). */
  gamma(shape: number): number;
  /** Beta(a, b), both > 0. */
  beta(a: number, b: number): number;
  /** PERT (a beta stretched between low and high with the given mode and weight 4). Throws unless low <= mode <= high. */
  pert(low: number, mode: number, high: number): number;
}

/** The four 32-bit words of the generator's state; never all zero. */
export type ChanceState = readonly [number, number, number, number];

/**
 * Chance from a seed.
 *
 * @param seed any safe integer; equal seeds give equal draws
 * @throws RangeError when the seed is not a safe integer
 */
export function seeded(seed: number): Chance {
  if (!Number.isSafeInteger(seed)) {
    throw new RangeError(`seed ${seed} is not a whole number: give an integer, so that the draws can be repeated`);
  }
  // The upper half is multiplied in, so that small negative and small positive seeds do not meet.
  let mixed = ((seed >>> 0) + Math.imul(Math.floor(seed / 2 ** 32), 0x85ebca6b)) >>> 0;
  const word = (): number => {
    mixed = (mixed + 0x9e3779b9) >>> 0;
    let z = mixed;
    z = Math.imul(z ^ (z >>> 16), 0x21f0aaad);
    z = Math.imul(z ^ (z >>> 15), 0x735a2d97);
    return (z ^ (z >>> 15)) >>> 0;
  };
  return fromState([word(), word(), word(), word()]);
}

/**
 * Chance from a full state, for continuing a run or for checking against the published vector.
 *
 * @throws RangeError when all four words are zero (the generator would stand still)
 */
export function fromState(state: ChanceState): Chance {
  let [a, b, c, d] = state.map((word) => word >>> 0) as [number, number, number, number];
  if ((a | b | c | d) === 0) {
    throw new RangeError('the state of the generator is all zero: give at least one word that is not');
  }
  let spare: number | null = null;

  const bits = (): number => {
    const five = Math.imul(b, 5);
    const result = Math.imul((five << 7) | (five >>> 25), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = (d << 11) | (d >>> 21);
    return result;
  };

  const uniform = (): number => ((bits() >>> 5) * 67108864 + (bits() >>> 6)) / 9007199254740992;

  const normal = (): number => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const square = x * x + y * y;
      if (square > 0 && square < 1) {
        const factor = Math.sqrt((-2 * Math.log(square)) / square);
        spare = y * factor;
        return x * factor;
      }
    }
  };

  const gamma = (shape: number): number => {
    if (!(shape > 0) || !Number.isFinite(shape)) {
      throw new RangeError(`gamma shape ${shape} must be a number above 0`);
    }
    // Below 1 the method needs the boost of Marsaglia and Tsang, section 6.
    if (shape < 1) return gamma(shape + 1) * (1 - uniform()) ** (1 / shape);
    const third = shape - 1 / 3;
    const scale = 1 / Math.sqrt(9 * third);
    for (;;) {
      const x = normal();
      const v = (1 + scale * x) ** 3;
      if (v <= 0) continue;
      const u = 1 - uniform();
      if (Math.log(u) < 0.5 * x * x + third - third * v + third * Math.log(v)) return third * v;
    }
  };

  const beta = (left: number, right: number): number => {
    const x = gamma(left);
    return x / (x + gamma(right));
  };

  return {
    bits,
    uniform,
    between: (low, high) => low + (high - low) * uniform(),
    integer: (count) => {
      if (!Number.isInteger(count) || count < 1 || count > 2 ** 32) {
        throw new RangeError(`cannot draw one of ${count}: give a whole number from 1 to 2^32`);
      }
      // Reject the ragged end, so that every outcome is equally likely.
      const limit = 2 ** 32 - (2 ** 32 % count);
      for (;;) {
        const drawn = bits();
        if (drawn < limit) return drawn % count;
      }
    },
    normal,
    gamma,
    beta,
    pert: (low, mode, high) => {
      if (!(low <= mode && mode <= high)) {
        throw new RangeError(`PERT needs low <= mode <= high, got ${low}, ${mode}, ${high}`);
      }
      if (low === high) return low;
      const width = high - low;
      return low + width * beta(1 + (4 * (mode - low)) / width, 1 + (4 * (high - mode)) / width);
    },
  };
}
