import { binomialLowerTail, binomialUpperTail } from '../distributions/binomial.ts';
import { calculation, shown } from '../distributions/calculation.ts';
import { acceptCount, acceptFraction, acceptOpenFraction, acceptPositiveFraction } from '../distributions/domain.ts';
import { probabilityOfFewPositives } from '../distributions/hypergeometric.ts';
import { meets, smallestCount } from '../distributions/target.ts';
import * as described from './inputs-described.ts';

/**
 * A sample size with its cut-point: call the population infected at `cutPoint` positives or more. All null when no
 * sample size works. Some sources print the largest count still read as free, which is `cutPoint` - 1.
 */
export interface SampleSizeWithCutPoint {
  readonly sampleSize: number | null;
  readonly cutPoint: number | null;
  readonly populationSensitivity: number | null;
  readonly populationSpecificity: number | null;
}

const noneWorks: SampleSizeWithCutPoint = {
  sampleSize: null,
  cutPoint: null,
  populationSensitivity: null,
  populationSpecificity: null,
};

/** The largest sample looked at in a "very large" population. */
export const largestSample = 10_000_000;

/**
 * How many of N units must be tested, and from how many positives on is the population called infected, so that an
 * imperfect test reaches both targets?
 *
 *   for each n the cut-point c is the smallest with P(Binomial(n, 1 - Sp) < c) >= target specificity;
 *   the answer is the smallest n whose P(c or more positives | d of N infected) >= target sensitivity.
 *
 * The search is jagged: each time c rises by one the sensitivity drops. Between two rises c stays and the sensitivity
 * only grows with n, so each such stretch is searched by halving and no n is skipped.
 * If every positive is followed up until refuted, the system's specificity is 1 and the simple formula applies.
 * Worked: N = 100, d = 10, Se 0.9, Sp 0.98, both targets 0.95: 60 with 4 or more.
 *
 * @param inputs.populationSize N, whole, 1 or more
 * @param inputs.infectedUnits d, whole, 1 to N
 * @param inputs.sensitivity Se, fraction above 0, up to 1
 * @param inputs.specificity Sp, fraction 0 to 1
 * @param inputs.targetSensitivity wanted chance to call an infected population infected, above 0 and below 1
 * @param inputs.targetSpecificity wanted chance to call a free population free, above 0 and below 1
 * @throws DomainError on inputs outside these ranges
 * Source: Cameron and Baldock 1998 [CAMERON98]
 */
export function sampleSizeImperfectTestFinitePopulation(inputs: {
  populationSize: number;
  infectedUnits: number;
  sensitivity: number;
  specificity: number;
  targetSensitivity: number;
  targetSpecificity: number;
}): SampleSizeWithCutPoint {
  const N = acceptCount('populationSize', inputs.populationSize, 1);
  const d = acceptCount('infectedUnits', inputs.infectedUnits, 1, N, 'populationSize');
  const test = acceptTestAndTargets(inputs);
  if (test.sensitivity <= test.falsePositive) return noneWorks;
  return search(N, test, (n, c) => 1 - probabilityOfFewPositives(c - 1, N, d, n, test.sensitivity, test.falsePositive));
}

export const sampleSizeImperfectTestFinitePopulationCalculation = calculation({
  name: 'sampleSizeImperfectTestFinitePopulation',
  room: 'sampling',
  line: 'sample size and cut-point for a test with false positives, N units',
  inputs: {
    populationSize: described.populationSize,
    infectedUnits: `${described.infectedUnits}, 1 or more`,
    sensitivity: `${described.sensitivity}, above 0`,
    specificity: described.specificity,
    targetSensitivity: 'wanted population sensitivity, fraction above 0 and below 1',
    targetSpecificity: 'wanted population specificity, fraction above 0 and below 1',
  },
  formula: 'every n: smallest c with P(Bin(n, 1-Sp) < c) >= target; smallest n with P(c or more | d of N) >= target',
  sources: ['CAMERON98'],
  call: sampleSizeImperfectTestFinitePopulation,
  steps: (i, r) => [
    `every n from 1 to ${i.populationSize} stands to choose, with the smallest cut-point that keeps ${i.targetSpecificity}`,
    `smallest n: ${shown(r.sampleSize)}, infected at ${shown(r.cutPoint)} positives or more`,
    `population sensitivity ${shown(r.populationSensitivity)}, specificity ${shown(r.populationSpecificity)}`,
  ],
});

/**
 * The same for a very large population: positives are Binomial(n, AP) with the apparent prevalence
 * AP = P Se + (1 - P)(1 - Sp). Samples up to 10,000,000 are looked at.
 *
 * @param inputs.designPrevalence P, fraction above 0, up to 1; the rest as for the finite form
 * @throws DomainError on inputs outside these ranges
 * Source: Cameron and Baldock 1998 [CAMERON98]
 */
export function sampleSizeImperfectTestLargePopulation(inputs: {
  designPrevalence: number;
  sensitivity: number;
  specificity: number;
  targetSensitivity: number;
  targetSpecificity: number;
}): SampleSizeWithCutPoint {
  const prevalence = acceptPositiveFraction('designPrevalence', inputs.designPrevalence);
  const test = acceptTestAndTargets(inputs);
  if (test.sensitivity <= test.falsePositive) return noneWorks;
  const apparent = prevalence * test.sensitivity + (1 - prevalence) * test.falsePositive;
  return search(largestSample, test, (n, c) => binomialUpperTail(c, n, apparent));
}

export const sampleSizeImperfectTestLargePopulationCalculation = calculation({
  name: 'sampleSizeImperfectTestLargePopulation',
  room: 'sampling',
  line: 'sample size and cut-point for a test with false positives, very large population',
  inputs: {
    designPrevalence: described.designPrevalence,
    sensitivity: `${described.sensitivity}, above 0`,
    specificity: described.specificity,
    targetSensitivity: 'wanted population sensitivity, fraction above 0 and below 1',
    targetSpecificity: 'wanted population specificity, fraction above 0 and below 1',
  },
  formula: 'AP = P Se + (1-P)(1-Sp); every n with its smallest cut-point; P(Bin(n, AP) >= c) >= target',
  sources: ['CAMERON98'],
  call: sampleSizeImperfectTestLargePopulation,
  steps: (i, r) => [
    `AP = ${shown(i.designPrevalence * i.sensitivity + (1 - i.designPrevalence) * (1 - i.specificity))}`,
    `smallest n: ${shown(r.sampleSize)}, infected at ${shown(r.cutPoint)} positives or more`,
    `population sensitivity ${shown(r.populationSensitivity)}, specificity ${shown(r.populationSpecificity)}`,
  ],
});

interface TestAndTargets {
  readonly sensitivity: number;
  readonly falsePositive: number;
  readonly targetSensitivity: number;
  readonly targetSpecificity: number;
}

function acceptTestAndTargets(inputs: {
  sensitivity: number;
  specificity: number;
  targetSensitivity: number;
  targetSpecificity: number;
}): TestAndTargets {
  return {
    sensitivity: acceptPositiveFraction('sensitivity', inputs.sensitivity),
    falsePositive: 1 - acceptFraction('specificity', inputs.specificity),
    targetSensitivity: acceptOpenFraction('targetSensitivity', inputs.targetSensitivity),
    targetSpecificity: acceptOpenFraction('targetSpecificity', inputs.targetSpecificity),
  };
}

/** Up to this cut-point every stretch is looked at; beyond, stretches far below the target are leapt over. */
const everyStretchUpTo = 60;

/** How far below the target a stretch may end before its neighbours need not be looked at. */
const farBelow = 0.02;

function search(
  largest: number,
  test: TestAndTargets,
  sensitivityAt: (n: number, c: number) => number,
): SampleSizeWithCutPoint {
  const specificityAt = (n: number, c: number) => binomialLowerTail(c - 1, n, test.falsePositive);
  /** The largest n at which cut-point c still keeps the specificity; each is asked for several times. */
  const known = new Map<number, number>();
  const lastWith = (c: number): number => {
    const before = known.get(c);
    if (before !== undefined) return before;
    // One more positive allowed moves it by about 1 / falsePositive, so look near the last one before looking far.
    const from = Math.max(c, known.get(c - 1) ?? c);
    const broken = (n: number) => !meets(specificityAt(n, c), test.targetSpecificity);
    let step = Math.max(1, Math.ceil(2 / test.falsePositive));
    while (from + step < largest && !broken(from + step)) step *= 2;
    const firstBroken = smallestCount(from, Math.min(largest, from + step), broken);
    const last = firstBroken === null ? largest : firstBroken - 1;
    known.set(c, last);
    return last;
  };

  const found = (c: number): SampleSizeWithCutPoint | null => {
    const last = lastWith(c);
    const first = c === 1 ? 1 : Math.max(lastWith(c - 1) + 1, c);
    const n = smallestCount(first, last, (k) => meets(sensitivityAt(k, c), test.targetSensitivity));
    if (n === null) return null;
    return {
      sampleSize: n,
      cutPoint: c,
      populationSensitivity: sensitivityAt(n, c),
      populationSpecificity: specificityAt(n, c),
    };
  };

  let c = 1;
  for (; c <= everyStretchUpTo; c++) {
    const answer = found(c);
    if (answer) return answer;
    if (lastWith(c) === largest) return noneWorks;
  }

  // Beyond, the sensitivity at the end of each stretch climbs almost smoothly (one more unit changes the specificity
  // very little), so leap to where it comes near the target and look at every stretch from there.
  const near = (at: number) => {
    const last = lastWith(at);
    return last === largest || sensitivityAt(last, at) >= test.targetSensitivity - farBelow;
  };
  let reach = c;
  while (!near(reach)) reach *= 2;
  c = smallestCount(c, reach, near) ?? reach;
  for (; ; c++) {
    const answer = found(c);
    if (answer) return answer;
    if (lastWith(c) === largest) return noneWorks;
  }
}
