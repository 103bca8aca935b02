import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { twoSidedDeviate } from '../distributions/normal.ts';
import { kappa } from './agreement.ts';
import { betaFromMode } from './beta-from-opinion.ts';
import { cutPointRuleFinitePopulation } from './cut-point-rule.ts';
import {
  detectionProbabilityFinitePopulation,
  detectionProbabilityLargePopulation,
  detectionVaryingSensitivity,
} from './detection-probability.ts';
import { negativeRoundsNeeded, plateauOfFreedom, probabilityOfFreedomOverTime } from './freedom.ts';
import { infectedUnitsFromPrevalence } from './infected-units.ts';
import * as interval from './interval.ts';
import { pooledPrevalencePerfectTest, pooledPrevalenceVariableSize, poolsNeeded } from './pools.ts';
import { posteriorPrevalence } from './posterior-prevalence.ts';
import { riskBasedSampleSize, riskBasedSensitivity } from './risk-based.ts';
import {
  sampleSizeImperfectTestFinitePopulation,
  sampleSizeImperfectTestLargePopulation,
} from './sample-size-imperfect-test.ts';
import {
  sampleSizeApproximationPerfectTest,
  sampleSizeToDetectFinitePopulation,
  sampleSizeToDetectLargePopulation,
} from './sample-size-to-detect.ts';
import * as truePrevalence from './true-prevalence.ts';
import { twoStageSystemSensitivityExact } from './two-stage.ts';
import { undetectedCases } from './undetected-cases.ts';
import { upperPrevalenceAfterAllNegative } from './upper-prevalence.ts';

/* What must hold whatever the numbers, and the hard edges. The seed is fixed, so a failure comes back. */
const seed = 20260301;
const fraction = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
const size = (null_: number | null) => null_ ?? Number.POSITIVE_INFINITY;

describe('sample sizes', () => {
  it('fall as prevalence or sensitivity rises, and rise with confidence', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fraction(0.5, 0.999),
        fraction(0.3, 1),
        fraction(0.001, 0.5),
        (N, confidence, sensitivity, part) => {
          const d = infectedUnitsFromPrevalence(N, part);
          const base = { populationSize: N, infectedUnits: d, confidence, sensitivity };
          const n = size(sampleSizeToDetectFinitePopulation(base).sampleSize);
          const more = Math.min(N, d + 1 + Math.floor(N * 0.05));
          expect(
            size(sampleSizeToDetectFinitePopulation({ ...base, infectedUnits: more }).sampleSize),
          ).toBeLessThanOrEqual(n);
          const surer = { ...base, confidence: confidence + (1 - confidence) / 2 };
          expect(size(sampleSizeToDetectFinitePopulation(surer).sampleSize)).toBeGreaterThanOrEqual(n);
          const sharper = { ...base, sensitivity: (1 + sensitivity) / 2 };
          expect(size(sampleSizeToDetectFinitePopulation(sharper).sampleSize)).toBeLessThanOrEqual(n);
          const large = { designPrevalence: part, confidence, sensitivity };
          const m = sampleSizeToDetectLargePopulation(large).sampleSize ?? 0;
          const dearer = sampleSizeToDetectLargePopulation({ ...large, designPrevalence: part / 2 }).sampleSize ?? 0;
          expect(dearer).toBeGreaterThanOrEqual(m);
        },
      ),
      { seed, numRuns: 300 },
    );
  });

  it('are the smallest that meet the target: one fewer does not', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 300 }),
        fraction(0.5, 0.99),
        fraction(0.5, 1),
        fraction(0.01, 0.4),
        (N, C, Se, P) => {
          const d = infectedUnitsFromPrevalence(N, P);
          const { sampleSize } = sampleSizeToDetectFinitePopulation({
            populationSize: N,
            infectedUnits: d,
            confidence: C,
            sensitivity: Se,
          });
          const at = (tested: number) =>
            detectionProbabilityFinitePopulation({ populationSize: N, infectedUnits: d, tested, sensitivity: Se })
              .probability;
          if (sampleSize === null) {
            expect(at(N)).toBeLessThan(C);
            return;
          }
          expect(at(sampleSize)).toBeGreaterThanOrEqual(C - 1e-12);
          expect(at(sampleSize - 1)).toBeLessThan(C);
        },
      ),
      { seed, numRuns: 300 },
    );
  });

  it('of a finite population tend to those of an infinite one', () => {
    for (const [P, C, Se] of [
      [0.05, 0.95, 1],
      [0.02, 0.99, 0.8],
      [0.1, 0.9, 0.6],
    ] as const) {
      const large =
        sampleSizeToDetectLargePopulation({ designPrevalence: P, confidence: C, sensitivity: Se }).sampleSize ?? 0;
      const finite = [100, 1000, 10_000, 1_000_000].map((N) =>
        size(
          sampleSizeToDetectFinitePopulation({
            populationSize: N,
            infectedUnits: infectedUnitsFromPrevalence(N, P),
            confidence: C,
            sensitivity: Se,
          }).sampleSize,
        ),
      );
      expect(finite[3]).toBe(large);
      for (const n of finite.slice(1)) expect(n).toBeLessThanOrEqual(large);
    }
    const finite = sampleSizeImperfectTestFinitePopulation({
      populationSize: 1_000_000,
      infectedUnits: 50_000,
      sensitivity: 0.9,
      specificity: 0.98,
      targetSensitivity: 0.95,
      targetSpecificity: 0.95,
    });
    const large = sampleSizeImperfectTestLargePopulation({
      designPrevalence: 0.05,
      sensitivity: 0.9,
      specificity: 0.98,
      targetSensitivity: 0.95,
      targetSpecificity: 0.95,
    });
    expect(finite.sampleSize).toBe(large.sampleSize);
    expect(finite.cutPoint).toBe(large.cutPoint);
  });

  it("agree with Cannon and Roe's approximation to within one for a perfect test (120 combinations)", () => {
    let equal = 0;
    let all = 0;
    for (const N of [10, 20, 50, 100, 200, 400, 700, 1000]) {
      for (const P of [0.02, 0.05, 0.1, 0.2, 0.3]) {
        for (const confidence of [0.9, 0.95, 0.99]) {
          const inputs = { populationSize: N, infectedUnits: infectedUnitsFromPrevalence(N, P), confidence };
          const exact = sampleSizeToDetectFinitePopulation({ ...inputs, sensitivity: 1 }).sampleSize ?? 0;
          const difference = sampleSizeApproximationPerfectTest(inputs).sampleSize - exact;
          expect(Math.abs(difference)).toBeLessThanOrEqual(1);
          if (difference === 0) equal += 1;
          all += 1;
        }
      }
    }
    expect(all).toBe(120);
    expect(equal).toBeGreaterThanOrEqual(115);
  });

  it('with false positives are the smallest of all, also where c rises and coarse steps would miss it', () => {
    // N = 3000, P = 5 %, Se 0.8, Sp 0.99: 181 with 5 or more; walking in steps of 5 to 200 returns 208.
    const inputs = { sensitivity: 0.8, specificity: 0.99, targetSensitivity: 0.95, targetSpecificity: 0.95 };
    const found = sampleSizeImperfectTestFinitePopulation({ populationSize: 3000, infectedUnits: 150, ...inputs });
    expect(found).toMatchObject({ sampleSize: 181, cutPoint: 5 });
    for (let tested = 1; tested < 181; tested++) {
      let cutPoint = 1;
      const at = (c: number) =>
        cutPointRuleFinitePopulation({
          populationSize: 3000,
          infectedUnits: 150,
          tested,
          cutPoint: c,
          sensitivity: 0.8,
          specificity: 0.99,
        });
      while (cutPoint < tested && at(cutPoint).clusterSpecificity < 0.95) cutPoint += 1;
      expect(at(cutPoint).clusterSensitivity < 0.95 || at(cutPoint).clusterSpecificity < 0.95).toBe(true);
    }
  });

  it('with many false positives leap over hopeless cut-points and still find the smallest', () => {
    const inputs = {
      designPrevalence: 0.03,
      sensitivity: 0.7,
      specificity: 0.9,
      targetSensitivity: 0.95,
      targetSpecificity: 0.95,
    };
    const found = sampleSizeImperfectTestLargePopulation(inputs);
    expect(found.cutPoint).toBeGreaterThan(60);
    expect(found.populationSensitivity).toBeGreaterThanOrEqual(0.95);
    expect(found.populationSpecificity).toBeGreaterThanOrEqual(0.95);
    // R 4.2.2, every n in turn: c = qbinom(0.95, n, 0.1) + 1, first n with 1 - pbinom(c - 1, n, 0.118) >= 0.95.
    expect([found.sampleSize, found.cutPoint]).toEqual([3251, 354]);
  });
});

describe('chances to detect', () => {
  it('grow with every unit opened, with prevalence and with sensitivity, and stay within 0 and 1', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 500 }), fc.nat(), fc.nat(), fraction(0, 1), (N, a, b, sensitivity) => {
        const [tested, infectedUnits] = [a % N, b % N];
        const base = { populationSize: N, infectedUnits, tested, sensitivity };
        const chance = detectionProbabilityFinitePopulation(base).probability;
        expect(chance).toBeGreaterThanOrEqual(0);
        expect(chance).toBeLessThanOrEqual(1);
        const more = [
          { ...base, tested: tested + 1 },
          { ...base, infectedUnits: infectedUnits + 1 },
          { ...base, sensitivity: (1 + sensitivity) / 2 },
        ];
        for (const inputs of more) {
          expect(detectionProbabilityFinitePopulation(inputs).probability).toBeGreaterThanOrEqual(chance - 1e-12);
        }
      }),
      { seed, numRuns: 300 },
    );
  });

  it('of equal units are those of one sensitivity', () => {
    const unitSensitivities = Array.from({ length: 30 }, () => 0.8);
    expect(
      detectionVaryingSensitivity({ populationSize: null, designPrevalence: 0.05, unitSensitivities }).probability,
    ).toBeCloseTo(
      detectionProbabilityLargePopulation({ tested: 30, designPrevalence: 0.05, sensitivity: 0.8 }).probability,
      12,
    );
  });

  it('what rules can see, one diseased colony and per-colony sensitivity 0.8: 20, 40 and 80 % (arithmetic)', () => {
    const at = (tested: number) =>
      detectionProbabilityFinitePopulation({ populationSize: 40, infectedUnits: 1, tested, sensitivity: 0.8 })
        .probability;
    expect([10, 20, 40].map((n) => at(n).toFixed(4))).toEqual(['0.2000', '0.4000', '0.8000']);
  });

  it('cells and frames: 30 %, 53.3 %, 77.8 %; 10.0, 65.3 and 96.0 % of 1,000 cells; 60 clean cells leave 4.9 % (arithmetic)', () => {
    const percent = (populationSize: number, infectedUnits: number, tested: number) =>
      (
        100 *
        detectionProbabilityFinitePopulation({ populationSize, infectedUnits, tested, sensitivity: 1 }).probability
      ).toFixed(1);
    expect([percent(10, 1, 3), percent(10, 2, 3), percent(10, 2, 5)]).toEqual(['30.0', '53.3', '77.8']);
    expect([percent(1000, 1, 100), percent(1000, 10, 100), percent(1000, 30, 100)]).toEqual(['10.0', '65.3', '96.0']);
    expect(upperPrevalenceAfterAllNegative({ tested: 60, confidence: 0.95, sensitivity: 1 }).prevalence).toBeCloseTo(
      0.049,
      3,
    );
  });

  it('of a district, exact, equal enumeration of every set of infected apiaries', () => {
    const sizes = [4, 6, 5];
    const opened = [2, 3, 5];
    const H = 6;
    const D = 2;
    const { systemSensitivity, clusterSensitivities } = twoStageSystemSensitivityExact({
      clustersInPopulation: H,
      unitsInSampledClusters: sizes,
      unitsTested: opened,
      designPrevalenceClusters: D / H,
      designPrevalenceUnits: 0.3,
      unitSensitivity: 0.7,
    });
    let miss = 0;
    let sets = 0;
    for (let i = 0; i < H; i++) {
      for (let j = i + 1; j < H; j++) {
        sets += 1;
        miss += [i, j].reduce((product, k) => product * (1 - (clusterSensitivities[k] ?? 0)), 1);
      }
    }
    expect(systemSensitivity).toBeCloseTo(1 - miss / sets, 12);
  });
});

describe('intervals', () => {
  const all = [interval.wilson, interval.clopperPearson, interval.jeffreys, interval.blaker, interval.agrestiCoull];
  const counts = fc
    .integer({ min: 1, max: 2000 })
    .chain((tested) => fc.tuple(fc.integer({ min: 0, max: tested }), fc.constant(tested)));

  it('contain the estimate, stay within 0 and 1, and widen with confidence', () => {
    fc.assert(
      fc.property(counts, fraction(0.5, 0.999), ([positives, tested], confidence) => {
        for (const limits of all) {
          const { estimate, lower, upper } = limits({ positives, tested, confidence });
          expect(lower).toBeGreaterThanOrEqual(0);
          expect(upper).toBeLessThanOrEqual(1);
          expect(lower).toBeLessThanOrEqual(estimate + 1e-12);
          expect(upper).toBeGreaterThanOrEqual(estimate - 1e-12);
          const wider = limits({ positives, tested, confidence: confidence + (1 - confidence) / 2 });
          expect(wider.lower).toBeLessThanOrEqual(lower + 1e-9);
          expect(wider.upper).toBeGreaterThanOrEqual(upper - 1e-9);
        }
      }),
      { seed, numRuns: 200 },
    );
  });

  it('of Blaker lie inside those of Clopper and Pearson', () => {
    fc.assert(
      fc.property(counts, fraction(0.5, 0.999), ([positives, tested], confidence) => {
        const exact = interval.clopperPearson({ positives, tested, confidence });
        const shorter = interval.blaker({ positives, tested, confidence });
        expect(shorter.lower).toBeGreaterThanOrEqual(exact.lower - 1e-12);
        expect(shorter.upper).toBeLessThanOrEqual(exact.upper + 1e-12);
      }),
      { seed, numRuns: 300 },
    );
  });

  it('mirror when positives and negatives change places', () => {
    fc.assert(
      fc.property(counts, ([positives, tested]) => {
        for (const limits of all) {
          const one = limits({ positives, tested, confidence: 0.95 });
          const other = limits({ positives: tested - positives, tested, confidence: 0.95 });
          expect(one.lower).toBeCloseTo(1 - other.upper, 9);
        }
      }),
      { seed, numRuns: 100 },
    );
  });

  it('of trade figures: 21 of 21 is 84.5 to 100 % (Wilson), lower 83.9 % exact (LF05, arithmetic)', () => {
    const inputs = { positives: 21, tested: 21, confidence: 0.95 };
    expect(interval.wilson(inputs).lower).toBeCloseTo(0.845, 3);
    expect(interval.clopperPearson(inputs).lower).toBeCloseTo(0.839, 3);
    // HK89: 2/56, 12/46, 55/120; HOR-HON: 63/505, 52/315; BEL01: 146/1328.
    const percent = (positives: number, tested: number) =>
      (100 * interval.wilson({ positives, tested, confidence: 0.95 }).estimate).toFixed(1);
    expect([percent(2, 56), percent(12, 46), percent(55, 120)]).toEqual(['3.6', '26.1', '45.8']);
    expect([percent(63, 505), percent(52, 315), percent(146, 1328)]).toEqual(['12.5', '16.5', '11.0']);
  });

  it('of the true prevalence contain the estimate, and with a perfect test are those of the apparent', () => {
    fc.assert(
      fc.property(counts, fraction(0.6, 1), fraction(0.6, 1), ([positives, tested], sensitivity, specificity) => {
        for (const limits of [truePrevalence.wilson, truePrevalence.clopperPearson, truePrevalence.blaker]) {
          const { estimate, lower, upper } = limits({ positives, tested, sensitivity, specificity, confidence: 0.95 });
          expect(lower).toBeLessThanOrEqual(estimate + 1e-12);
          expect(upper).toBeGreaterThanOrEqual(estimate - 1e-12);
        }
        const perfect = truePrevalence.wilson({ positives, tested, sensitivity: 1, specificity: 1, confidence: 0.95 });
        expect(perfect.upper).toBeCloseTo(interval.wilson({ positives, tested, confidence: 0.95 }).upper, 12);
      }),
      { seed, numRuns: 100 },
    );
  });
});

describe('other laws', () => {
  it('freedom never passes its plateau from below, and the closed count agrees with the recursion', () => {
    fc.assert(
      fc.property(
        fraction(0.05, 0.95),
        fraction(0, 0.2),
        fraction(0.05, 1),
        fraction(0.5, 0.995),
        (prior, pi, SSe, target) => {
          const rounds = 400;
          const { freedom } = probabilityOfFreedomOverTime({
            priorFreedom: prior,
            introductionProbabilities: Array.from({ length: rounds }, () => pi),
            systemSensitivities: Array.from({ length: rounds }, () => SSe),
          });
          const first = freedom.findIndex((free) => free >= target - 1e-12);
          const inputs = {
            priorFreedom: prior,
            introductionProbability: pi,
            systemSensitivity: SSe,
            targetFreedom: target,
          };
          const counted = negativeRoundsNeeded(inputs).rounds;
          if (first >= 0) expect(counted).toBe(first + 1);
          else expect(size(counted)).toBeGreaterThan(rounds);
          const plateau = plateauOfFreedom({ introductionProbability: pi, systemSensitivity: SSe }).freedom;
          if (prior <= plateau) for (const free of freedom) expect(free).toBeLessThanOrEqual(plateau + 1e-9);
        },
      ),
      { seed, numRuns: 200 },
    );
  });

  it('all risks equal are simple random sampling; the strata of a plan add up', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 20 }), { minLength: 2, maxLength: 5 }),
        fraction(0.01, 0.2),
        (weights, P) => {
          const all = weights.reduce((a, b) => a + b, 0);
          const populationShares = weights.map((w) => w / all);
          const tested = weights.map((w) => w * 2);
          const equal = riskBasedSensitivity({
            relativeRisks: weights.map(() => 1),
            populationShares,
            tested,
            designPrevalence: P,
            sensitivity: 0.9,
          });
          const simple = detectionProbabilityLargePopulation({
            tested: 2 * all,
            designPrevalence: P,
            sensitivity: 0.9,
          });
          expect(equal.sensitivity).toBeCloseTo(simple.probability, 10);
          const plan = riskBasedSampleSize({
            relativeRisks: weights.map(() => 1),
            populationShares,
            sampleShares: populationShares,
            designPrevalence: P,
            confidence: 0.95,
            sensitivity: 0.9,
          });
          expect((plan.perStratum ?? []).reduce((a, b) => a + b, 0)).toBe(plan.total);
        },
      ),
      { seed, numRuns: 100 },
    );
  });

  it('pools of one are single samples; pools of one size are equal pools', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 60 }), fc.nat(), fc.integer({ min: 1, max: 30 }), (pools, a, poolSize) => {
        const positivePools = a % pools;
        const equal = pooledPrevalencePerfectTest({ positivePools, pools, poolSize, confidence: 0.95 });
        const various = pooledPrevalenceVariableSize({
          positivePools: [positivePools],
          pools: [pools],
          poolSizes: [poolSize],
        });
        expect(various.prevalence).toBeCloseTo(equal.prevalence, 10);
        expect(equal.lower).toBeLessThanOrEqual(equal.prevalence);
        expect(equal.upper).toBeGreaterThanOrEqual(equal.prevalence);
        const single = pooledPrevalencePerfectTest({ positivePools, pools, poolSize: 1, confidence: 0.95 });
        expect(single.prevalence).toBeCloseTo(positivePools / pools, 12);
      }),
      { seed, numRuns: 100 },
    );
    // SpP below 1 counts false alarms as detections: 32 pools, but a free population is called infected 81 in 100.
    const alarms = poolsNeeded({
      poolSize: 5,
      designPrevalence: 0.01,
      poolSensitivity: 0.9,
      poolSpecificity: 0.95,
      confidence: 0.95,
    });
    expect(alarms.pools).toBe(32);
    expect(1 - (alarms.surveySpecificity ?? 0)).toBeCloseTo(0.81, 2);
    expect(
      poolsNeeded({ poolSize: 5, designPrevalence: 0.01, poolSensitivity: 0.9, poolSpecificity: 1, confidence: 0.95 })
        .pools,
    ).toBe(67);
  });

  it('the posterior with a perfect test is the Beta of the textbook, also for very large samples', () => {
    for (const [positives, tested] of [
      [5, 12],
      [0, 30],
      [30, 30],
      [200, 1_000_000],
    ] as const) {
      const got = posteriorPrevalence({
        positives,
        tested,
        prior: [1, 1],
        sensitivity: 1,
        specificity: 1,
        interval: 0.95,
      });
      const [a, b] = [positives + 1, tested - positives + 1];
      expect(got.mean / (a / (a + b))).toBeCloseTo(1, 8);
      expect(got.sd / Math.sqrt((a * b) / ((a + b) ** 2 * (a + b + 1)))).toBeCloseTo(1, 6);
      expect(got.lower).toBeLessThan(got.median);
      expect(got.median).toBeLessThan(got.upper);
    }
  });

  it('undetected cases never bring the log interval below the cases seen', () => {
    fc.assert(
      fc.property(fc.nat(300), fc.nat(300), fc.nat(), (firstSource, secondSource, a) => {
        const both = a % (Math.min(firstSource, secondSource) + 1);
        const { seen, total, logLower, logUpper } = undetectedCases({
          firstSource,
          secondSource,
          both,
          confidence: 0.95,
        });
        expect(logLower).toBeGreaterThanOrEqual(seen - 1e-9);
        expect(logLower).toBeLessThanOrEqual(total + 1e-9);
        expect(logUpper).toBeGreaterThanOrEqual(total - 1e-9);
      }),
      { seed, numRuns: 300 },
    );
  });

  it('readers who never differ get no interval of no width: none for kappa, and one of PABAK that narrows with the units', () => {
    const twelve = kappa({
      table: [
        [2, 0],
        [0, 10],
      ],
    });
    expect(twelve).toMatchObject({ kappa: 1, lower: null, upper: null, pabak: 1, pabakUpper: 1 });
    // Wilson 12 of 12, 95 %: from 12/(12 + 1.96^2) = 0.7575.
    expect(twelve.pabakLower).toBeCloseTo(2 * (12 / (12 + 1.959964 ** 2)) - 1, 6);
    const more = kappa({
      table: [
        [20, 0],
        [0, 100],
      ],
    });
    expect(more.pabakLower ?? 0).toBeGreaterThan(twelve.pabakLower ?? 1);
  });

  it('kappa is 1 for full agreement, below 0 for contrary readers, null for one category', () => {
    expect(
      kappa({
        table: [
          [7, 0],
          [0, 5],
        ],
      }).kappa,
    ).toBeCloseTo(1, 12);
    expect(
      kappa({
        table: [
          [0, 6],
          [6, 0],
        ],
      }).kappa,
    ).toBeLessThan(0);
    expect(
      kappa({
        table: [
          [30, 0],
          [0, 0],
        ],
      }),
    ).toMatchObject({ kappa: null, pabak: 1, mcNemar: null, negativeAgreement: null });
  });

  it('an opinion vaguer than knowing nothing has no Beta', () => {
    expect(betaFromMode({ mode: 0.9, percentile: 0.5, probability: 0.4, direction: 'above' })).toEqual({
      alpha: null,
      beta: null,
    });
  });
});

describe('hard edges', () => {
  const confident = 0.9999;

  it('a population of one', () => {
    const one = { populationSize: 1, infectedUnits: 1, confidence: 0.95 };
    expect(sampleSizeToDetectFinitePopulation({ ...one, sensitivity: 1 }).sampleSize).toBe(1);
    expect(sampleSizeToDetectFinitePopulation({ ...one, sensitivity: 0.9 }).sampleSize).toBeNull();
    expect(
      detectionProbabilityFinitePopulation({ populationSize: 1, infectedUnits: 1, tested: 1, sensitivity: 0.8 })
        .probability,
    ).toBeCloseTo(0.8, 12);
    expect(
      detectionProbabilityFinitePopulation({ populationSize: 1, infectedUnits: 0, tested: 1, sensitivity: 1 })
        .probability,
    ).toBe(0);
    expect(interval.wilson({ positives: 1, tested: 1, confidence: 0.95 })).toMatchObject({ estimate: 1, upper: 1 });
  });

  it('more diseased than sampled, and so many that every sample must hold one', () => {
    const certain = { populationSize: 10, infectedUnits: 8, tested: 3, sensitivity: 1 };
    expect(detectionProbabilityFinitePopulation(certain).probability).toBe(1);
    expect(detectionProbabilityFinitePopulation({ ...certain, sensitivity: 0.5 }).probability).toBeGreaterThan(0.5);
    expect(cutPointRuleFinitePopulation({ ...certain, cutPoint: 1, specificity: 0.9 }).clusterSensitivity).toBe(1);
  });

  it('a million units, confidence 0.9999', () => {
    const inputs = { populationSize: 1_000_000, infectedUnits: 1, confidence: confident, sensitivity: 1 };
    expect(sampleSizeToDetectFinitePopulation(inputs).sampleSize).toBe(999_900);
    expect(sampleSizeToDetectFinitePopulation({ ...inputs, sensitivity: 0.999 }).sampleSize).toBeNull();
    // Perfect test and d = 100: 1 - (1 - n/N)^100 nearly; R 4.2.2, smallest n with 1 - phyper(0, 100, 999900, n) >= 0.9999.
    expect(sampleSizeToDetectFinitePopulation({ ...inputs, infectedUnits: 100 }).sampleSize).toBe(87_985);
    expect(twoSidedDeviate(confident)).toBeCloseTo(3.89059188641312, 12);
  });

  it('zero positives and all positives', () => {
    for (const [positives, tested] of [
      [0, 20],
      [20, 20],
      [0, 1_000_000],
    ] as const) {
      for (const limits of [interval.wilson, interval.clopperPearson, interval.jeffreys, interval.blaker]) {
        const { lower, upper } = limits({ positives, tested, confidence: confident });
        expect(positives === 0 ? lower : upper).toBe(positives === 0 ? 0 : 1);
        expect(positives === 0 ? upper : 1 - lower).toBeGreaterThan(0);
      }
    }
  });

  it('impossible input is refused with field, range and what was given', () => {
    const base = { populationSize: 10, infectedUnits: 2, tested: 5, sensitivity: 0.9 };
    const message = (inputs: object) => {
      try {
        detectionProbabilityFinitePopulation({ ...base, ...inputs });
      } catch (error) {
        return (error as Error).message;
      }
      return 'accepted';
    };
    expect(message({ tested: 11 })).toBe('tested must be a whole number from 0 to 10 (populationSize), but was 11');
    expect(message({ infectedUnits: 11 })).toBe(
      'infectedUnits must be a whole number from 0 to 10 (populationSize), but was 11',
    );
    expect(message({ sensitivity: 90 })).toBe('sensitivity must be a fraction from 0 to 1, but was 90');
    expect(message({ sensitivity: Number.NaN })).toBe('sensitivity must be a fraction from 0 to 1, but was NaN');
    expect(message({ populationSize: -3 })).toBe('populationSize must be a whole number of 1 or more, but was -3');
    expect(message({ tested: 2.5 })).toContain('whole number');
    expect(message({ tested: undefined })).toContain('not given');
    expect(() =>
      sampleSizeToDetectLargePopulation({ designPrevalence: 1e-300, confidence: 0.95, sensitivity: 1 }),
    ).toThrow('counted');
  });
});
