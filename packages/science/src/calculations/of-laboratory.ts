import { combineTwoTests } from '../laboratory/combine-two-tests.ts';
import { meaningOfLoad } from '../laboratory/laboratory-limits.ts';
import { meaningOfResult } from '../laboratory/meaning-of-result.ts';
import { multipleHypotheses } from '../laboratory/multiple-hypotheses.ts';
import { plateCount, sporesAssumingRecovery } from '../laboratory/plate-count.ts';
import { chanceOfCarrierInSample, loadInPool } from '../laboratory/pooled-load.ts';
import { postTestProbability, predictiveValues } from '../laboratory/predictive-values.ts';
import { type Calculation, calculation, shownList as list, shown as n } from './calculation.ts';

const room = 'laboratory';
const band = '{low, value, high}, fractions 0 to 1 in order';

/** Every calculation on laboratory numbers and what they mean, by name. */
export const ofLaboratory: Readonly<Record<string, Calculation>> = {
  plateCount: calculation({
    room,
    line: 'plates and dilutions to colony-forming units per g, bee or ml',
    inputs: {
      plates: 'list of {dilution (1 undiluted, 0.01 for 10^-2), millilitres, colonies (null: too many to count)}',
      suspensionMillilitres: 'ml of suspension that held the whole amount, above 0',
      amount: 'specimen in it: g, bees or ml, above 0',
      unit: '"g", "bee" or "ml"',
      countable: "the laboratory's limits of counting {lowest, highest}, or null",
      confidence: 'fraction above 0 and below 1',
    },
    formula: 'sum(C)/sum(V d) per ml; times suspension/amount; exact Poisson interval',
    sources: ['ISO7218', 'GARWOOD36'],
    call: plateCount,
    steps: (i, r) => [
      `${r.used.length} of ${i.plates.length} plates used: ${r.coloniesCounted} colonies on ${n(r.millilitresExamined)} ml of suspension`,
      `${n(r.perMillilitre)} per ml, times ${n(i.suspensionMillilitres)}/${n(i.amount)}: ${n(r.load)} CFU per ${r.unit} (${r.reading})`,
      `interval ${n(r.lower)} to ${n(r.upper)}, detection limit ${n(r.detectionLimit)}`,
    ],
  }),
  sporesAssumingRecovery: calculation({
    room,
    line: 'spores behind a count, if a stated part of them germinates (an assumption)',
    inputs: { load: 'CFU per unit, 0 or more', recovery: 'assumed part that forms a colony, above 0, up to 1' },
    formula: 'load / recovery',
    sources: [],
    call: sporesAssumingRecovery,
    steps: (i, r) => [`${n(i.load)} / ${n(i.recovery)} = ${n(r.spores)}, only if the recovery holds`],
  }),
  loadInPool: calculation({
    room,
    line: 'what a pool of equal parts shows when one part is positive',
    inputs: {
      load: 'of the positive part, 0 or more',
      parts: 'parts in the pool, whole',
      detectionLimit: 'same unit, above 0',
    },
    formula: 'load / parts, caught when at the limit or above',
    sources: [],
    call: loadInPool,
    steps: (i, r) => [
      `${n(i.load)} / ${i.parts} = ${n(r.poolLoad)}, ${r.reachesLimit ? 'reaches' : 'stays below'} ${n(i.detectionLimit)}`,
      `least load of one part that is caught: ${n(r.leastLoadCaught)}`,
    ],
  }),
  chanceOfCarrierInSample: calculation({
    room,
    line: 'chance of at least one carrier among the bees taken from a positive hive',
    inputs: { carrierShare: 'share of its bees that carry, 0 to 1', bees: 'bees taken, whole' },
    formula: '1 - (1 - f)^n',
    sources: ['BB-STAT-2.2', 'BB-EFB-4'],
    call: chanceOfCarrierInSample,
    steps: (i, r) => [
      `(1 - ${n(i.carrierShare)})^${i.bees} = ${n(1 - r.probability)}; chance ${n(r.probability)} (optimistic: carriers are clumped)`,
    ],
  }),
  meaningOfLoad: calculation({
    room,
    line: 'a load read by the limits of the laboratory that reported it',
    inputs: {
      load: 'reported load, 0 or more',
      lower: 'lower end of its interval, or null',
      upper: 'upper end, or null',
      unit: '"g", "bee" or "ml"',
      material: 'as the report names it',
      method: 'as the report names it',
      limits: 'null, or {laboratory, method, material, unit, statedOn (YYYY-MM-DD), source, classes: [{name, from}]}',
    },
    formula: 'highest class whose lower limit the load reaches; every class the interval reaches into',
    sources: ['STE20'],
    call: meaningOfLoad,
    steps: (_, r) => [
      r.limitsFrom === null
        ? 'no limits of this laboratory are stored, and there are no others'
        : `limits of ${r.limitsFrom}`,
      `${r.outcome}: ${r.possibleClasses.join(', ') || 'no class'}`,
      'no single count marks or excludes disease',
    ],
  }),
  combineTwoTests: calculation({
    room,
    line: 'two tests in series or in parallel, with dependence',
    inputs: {
      sensitivities: '[Se1, Se2]',
      specificities: '[Sp1, Sp2]',
      covarianceInfected: 'between the tests in infected units, 0 for independence',
      covarianceUninfected: 'between the tests in uninfected units',
      reading: '"series" (positive when both are) or "parallel" (when either is)',
    },
    formula: 'series Se1 Se2 + cSe, 1 - (1-Sp1)(1-Sp2) - cSp; parallel 1 - (1-Se1)(1-Se2) - cSe, Sp1 Sp2 + cSp',
    sources: ['GARDNER00', 'DOHOO03'],
    call: combineTwoTests,
    steps: (i, r) => [
      `${i.reading}, covariances ${n(i.covarianceInfected)} and ${n(i.covarianceUninfected)}`,
      `sensitivity ${n(r.sensitivity)}, specificity ${n(r.specificity)}`,
    ],
  }),
  predictiveValues: calculation({
    room,
    line: 'what a positive or a negative result means at a prevalence',
    inputs: {
      sensitivity: 'Se, fraction 0 to 1',
      specificity: 'Sp, fraction 0 to 1',
      prevalence: 'among units like this one',
    },
    formula: 'PPV = P Se/(P Se + (1-P)(1-Sp)); NPV = (1-P)Sp/((1-P)Sp + P(1-Se)); LR+ = Se/(1-Sp); LR- = (1-Se)/Sp',
    sources: ['DOHOO03'],
    call: predictiveValues,
    steps: (i, r) => [
      `true positives ${n(i.prevalence * i.sensitivity)}, false positives ${n((1 - i.prevalence) * (1 - i.specificity))}: PPV ${n(r.positivePredictiveValue)}`,
      `true negatives ${n((1 - i.prevalence) * i.specificity)}, false negatives ${n(i.prevalence * (1 - i.sensitivity))}: NPV ${n(r.negativePredictiveValue)}`,
      `LR+ ${n(r.likelihoodRatioPositive)}, LR- ${n(r.likelihoodRatioNegative)}`,
    ],
  }),
  meaningOfResult: calculation({
    room,
    line: 'what this result means for this colony, with bands for what is not known exactly',
    inputs: { result: '"positive" or "negative"', prior: band, sensitivity: band, specificity: band },
    formula: "Bayes' theorem at the ends of the bands",
    sources: ['DOHOO03'],
    call: meaningOfResult,
    steps: (i, r) => [
      `prior ${n(i.prior.value)} (${n(i.prior.low)} to ${n(i.prior.high)})`,
      `after a ${i.result} result ${n(r.probability)} (${n(r.low)} to ${n(r.high)})`,
    ],
  }),
  postTestProbability: calculation({
    room,
    line: 'probability after several independent findings, by likelihood ratios',
    inputs: { priorProbability: 'above 0 and below 1', likelihoodRatios: 'list of numbers, 0 or more' },
    formula: 'posterior odds = prior odds * product of the ratios',
    sources: ['DOHOO03'],
    call: postTestProbability,
    steps: (i, r) => [
      `prior odds ${n(i.priorProbability / (1 - i.priorProbability))}, times ${n(i.likelihoodRatios.reduce((a, b) => a * b, 1))}`,
      `probability ${n(r.probability)}`,
    ],
  }),
  multipleHypotheses: calculation({
    room,
    line: "Bayes' theorem over several diseases with yes/no signs",
    inputs: {
      priors: 'list of fractions adding up to 1',
      signProbabilities: 'per hypothesis a list: chance of each sign',
      findings: 'list of true, false or null (not looked at)',
    },
    formula: 'prior * prod(L, seen) * prod(1 - L, absent), scaled to 1',
    sources: ['DOHOO03'],
    call: multipleHypotheses,
    steps: (i, r) => [
      `${i.findings.filter((f) => f !== null).length} of ${i.findings.length} signs looked at, their joint chance ${n(r.evidence)}`,
      `posteriors ${list(r.posteriors)}`,
    ],
  }),
};
