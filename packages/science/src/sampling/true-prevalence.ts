import { calculation, shown } from '../distributions/calculation.ts';
import { acceptCount, acceptFraction, DomainError, isUnknown } from '../distributions/domain.ts';
import { twoSidedDeviate } from '../distributions/normal.ts';
import * as described from './inputs-described.ts';
import * as interval from './interval.ts';

/*
 * From the share that tests positive to the share that is infected, with a test that errs. Import as a whole,
 * `import * as truePrevalence from '@combside/science/sampling/true-prevalence'`, and read `truePrevalence.blaker(...)`.
 */

/** A survey's counts and a test whose accuracy is taken as known. */
export interface KnownTestInputs extends interval.ProportionInputs {
  /** Se, fraction 0 to 1. */
  sensitivity: number;
  /** Sp, fraction 0 to 1; Se + Sp must exceed 1. */
  specificity: number;
}

/** The estimate before and after cutting to 0..1, with its interval (cut). */
export interface TruePrevalence extends interval.ProportionInterval {
  /** (AP + Sp - 1)/(Se + Sp - 1). Below 0: fewer positives than false positives alone would give. */
  readonly raw: number;
}

const cut = (p: number) => Math.min(1, Math.max(0, p));

/** Accepts Se and Sp of a test better than a coin. @throws DomainError */
export function acceptTest(inputs: { sensitivity: number; specificity: number }) {
  const sensitivity = acceptFraction('sensitivity', inputs.sensitivity);
  const specificity = acceptFraction('specificity', inputs.specificity);
  if (sensitivity + specificity - 1 <= 1e-12) {
    throw new DomainError(
      'sensitivity + specificity',
      'above 1 (a test worse than a coin tells nothing)',
      sensitivity + specificity,
    );
  }
  return { sensitivity, specificity };
}

function through(inputs: KnownTestInputs, limits: (of: interval.ProportionInputs) => interval.ProportionInterval) {
  const { sensitivity, specificity } = acceptTest(inputs);
  const apparent = limits(inputs);
  const line = (ap: number) => (ap + specificity - 1) / (sensitivity + specificity - 1);
  const raw = line(apparent.estimate);
  return { raw, estimate: cut(raw), lower: cut(line(apparent.lower)), upper: cut(line(apparent.upper)) };
}

/**
 * True prevalence with Blaker's exact limits of the apparent prevalence pushed through the Rogan-Gladen line.
 *
 *   (AP + Sp - 1) / (Se + Sp - 1), limits likewise, cut to 0..1; Se and Sp taken as known
 *
 * Worked: 45 of 150, Se 0.96, Sp 0.89: 0.224 (0.139 to 0.317).
 *
 * @throws DomainError on inputs outside their ranges, and when Se + Sp does not exceed 1
 * Source: Reiczigel, Foldi and Ozsvari 2010 [REICZIGEL10]; Rogan and Gladen 1978 [ROGAN78]
 */
export const blaker = (inputs: KnownTestInputs): TruePrevalence => through(inputs, interval.blaker);

const knownTestDescribed = {
  ...interval.proportionDescribed,
  sensitivity: described.sensitivity,
  specificity: `${described.specificity}; Se + Sp above 1`,
};

/* @__NO_SIDE_EFFECTS__ */
function knownTestCalculation(
  name: string,
  spoken: string,
  source: 'REICZIGEL10' | 'NEWCOMBE98',
  call: (inputs: KnownTestInputs) => TruePrevalence,
  apparent: (inputs: interval.ProportionInputs) => interval.ProportionInterval,
) {
  return calculation({
    name,
    room: 'sampling',
    line: `true prevalence with a known test, ${spoken} limits`,
    inputs: knownTestDescribed,
    formula: '(AP + Sp - 1)/(Se + Sp - 1), limits of AP through the same line, cut to 0..1',
    sources: ['ROGAN78', source],
    call,
    steps: (i, r) => {
      const ap = apparent(i);
      return [
        `AP = ${i.positives}/${i.tested} = ${shown(ap.estimate)} (${shown(ap.lower)} to ${shown(ap.upper)})`,
        `divide by Se + Sp - 1 = ${shown(i.sensitivity + i.specificity - 1)}: raw ${shown(r.raw)}`,
        `cut to 0..1: ${shown(r.estimate)} (${shown(r.lower)} to ${shown(r.upper)})`,
      ];
    },
  });
}

export const truePrevalenceBlakerCalculation = knownTestCalculation(
  'truePrevalence.blaker',
  'Blaker',
  'REICZIGEL10',
  blaker,
  interval.blaker,
);

/**
 * True prevalence with Clopper-Pearson limits pushed through the same line. As `blaker`, a little wider.
 *
 * @throws DomainError on inputs outside their ranges, and when Se + Sp does not exceed 1
 * Source: Reiczigel, Foldi and Ozsvari 2010 [REICZIGEL10]
 */
export const clopperPearson = (inputs: KnownTestInputs): TruePrevalence => through(inputs, interval.clopperPearson);

export const truePrevalenceClopperPearsonCalculation = knownTestCalculation(
  'truePrevalence.clopperPearson',
  'Clopper-Pearson',
  'REICZIGEL10',
  clopperPearson,
  interval.clopperPearson,
);

/**
 * True prevalence with Wilson limits pushed through the same line. As `blaker`, coverage near the nominal one.
 *
 * @throws DomainError on inputs outside their ranges, and when Se + Sp does not exceed 1
 * Source: Rogan and Gladen 1978 [ROGAN78]; Newcombe 1998 [NEWCOMBE98]
 */
export const wilson = (inputs: KnownTestInputs): TruePrevalence => through(inputs, interval.wilson);

export const truePrevalenceWilsonCalculation = knownTestCalculation(
  'truePrevalence.wilson',
  'Wilson',
  'NEWCOMBE98',
  wilson,
  interval.wilson,
);

/**
 * True prevalence when Se and Sp were themselves estimated, from nSe infected and nSp uninfected animals.
 *
 *   z^2 pseudo-tests are added to the survey and one positive and one negative to each validation sample; the estimate
 *   is shifted by dp = 2 z^2 (p varSe - (1 - p) varSp), with a normal interval, cut to 0..1
 *
 * Wider than the known-test intervals, as it should be. Worked: 20 of 120, Se 0.9 (50), Sp 0.99 (100): 0.100 to 0.267.
 *
 * @param inputs.sensitivitySample nSe, whole, 1 or more
 * @param inputs.specificitySample nSp, whole, 1 or more
 * @throws DomainError on inputs outside their ranges, and when Se + Sp does not exceed 1
 * Source: Lang and Reiczigel 2014 [LANG14]
 */
export function estimatedTest(
  inputs: KnownTestInputs & { sensitivitySample: number; specificitySample: number },
): TruePrevalence {
  const { x, n, confidence } = interval.acceptProportion(inputs);
  const { sensitivity, specificity } = acceptTest(inputs);
  const nSe = acceptCount('sensitivitySample', inputs.sensitivitySample, 1);
  const nSp = acceptCount('specificitySample', inputs.specificitySample, 1);
  const z = twoSidedDeviate(confidence);
  const raw = (x / n + specificity - 1) / (sensitivity + specificity - 1);
  const se = (nSe * sensitivity + 1) / (nSe + 2);
  const sp = (nSp * specificity + 1) / (nSp + 2);
  const whole = n + z * z;
  const ap = (x + (z * z) / 2) / whole;
  const gain = se + sp - 1;
  if (gain <= 1e-12) {
    throw new DomainError('sensitivitySample', 'large enough that the test stays better than a coin', nSe);
  }
  const p = (ap + sp - 1) / gain;
  const varSe = (se * (1 - se)) / (nSe + 2);
  const varSp = (sp * (1 - sp)) / (nSp + 2);
  const shift = 2 * z * z * (p * varSe - (1 - p) * varSp);
  const error = Math.sqrt((ap * (1 - ap)) / whole + p * p * varSe + (1 - p) ** 2 * varSp) / gain;
  return { raw, estimate: cut(raw), lower: cut(p + shift - z * error), upper: cut(p + shift + z * error) };
}

export const truePrevalenceEstimatedTestCalculation = calculation({
  name: 'truePrevalence.estimatedTest',
  room: 'sampling',
  line: 'true prevalence when the test was itself estimated',
  inputs: {
    ...knownTestDescribed,
    sensitivitySample: 'infected animals Se was estimated from',
    specificitySample: 'uninfected animals Sp was estimated from',
  },
  formula: 'z^2 pseudo-tests, one positive and one negative per validation sample, shift 2z^2(p varSe - (1-p) varSp)',
  sources: ['LANG14'],
  call: estimatedTest,
  steps: (i, r) => [
    `AP = ${shown(i.positives / i.tested)}, raw ${shown(r.raw)}`,
    `Se from ${i.sensitivitySample}, Sp from ${i.specificitySample}, z = ${shown(twoSidedDeviate(i.confidence))}`,
    `estimate ${shown(r.estimate)} (${shown(r.lower)} to ${shown(r.upper)})`,
  ],
});

/**
 * The Rogan-Gladen estimate with its large-sample standard error and normal interval, uncut: what many reports print.
 *
 *   known Se, Sp:     se = sqrt(AP(1-AP)/n) / (Se+Sp-1)
 *   estimated:        se = sqrt(AP(1-AP)/n + p^2 Se(1-Se)/nSe + (1-p)^2 Sp(1-Sp)/nSp) / (Se+Sp-1)
 *
 * Its limits may lie outside 0..1; prefer `estimatedTest` or `blaker`.
 *
 * @param inputs.sensitivitySample nSe, whole, 1 or more, or null when Se is taken as known
 * @param inputs.specificitySample nSp, whole, 1 or more, or null when Sp is taken as known
 * @throws DomainError on inputs outside their ranges, and when Se + Sp does not exceed 1
 * Source: Rogan and Gladen 1978 [ROGAN78]
 */
export function roganGladenNormal(
  inputs: KnownTestInputs & { sensitivitySample: number | null; specificitySample: number | null },
): { raw: number; standardError: number; lower: number; upper: number } {
  const { x, n, confidence } = interval.acceptProportion(inputs);
  const { sensitivity, specificity } = acceptTest(inputs);
  const sample = (field: string, given: number | null) =>
    isUnknown(given) ? Number.POSITIVE_INFINITY : acceptCount(field, given, 1);
  const nSe = sample('sensitivitySample', inputs.sensitivitySample);
  const nSp = sample('specificitySample', inputs.specificitySample);
  const gain = sensitivity + specificity - 1;
  const ap = x / n;
  const raw = (ap + specificity - 1) / gain;
  const variance =
    (ap * (1 - ap)) / n +
    (raw * raw * sensitivity * (1 - sensitivity)) / nSe +
    ((1 - raw) ** 2 * specificity * (1 - specificity)) / nSp;
  const standardError = Math.sqrt(variance) / gain;
  const z = twoSidedDeviate(confidence);
  return { raw, standardError, lower: raw - z * standardError, upper: raw + z * standardError };
}

export const roganGladenNormalCalculation = calculation({
  name: 'roganGladenNormal',
  room: 'sampling',
  line: 'Rogan-Gladen estimate with normal interval, uncut',
  inputs: {
    ...knownTestDescribed,
    sensitivitySample: 'infected animals Se was estimated from, or null when known',
    specificitySample: 'uninfected animals Sp was estimated from, or null when known',
  },
  formula: '(AP+Sp-1)/(Se+Sp-1) +- z sqrt(AP(1-AP)/n + p^2 Se(1-Se)/nSe + (1-p)^2 Sp(1-Sp)/nSp)/(Se+Sp-1)',
  sources: ['ROGAN78'],
  call: roganGladenNormal,
  steps: (i, r) => [
    `AP = ${shown(i.positives / i.tested)}, raw ${shown(r.raw)}, standard error ${shown(r.standardError)}`,
    `limits ${shown(r.lower)} to ${shown(r.upper)}`,
  ],
});
