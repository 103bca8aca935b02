/*
 * How often do the intervals hold the truth? `npx tsx bench/interval-coverage.ts [runs] [seed]`
 *
 * For each sample size and true prevalence, surveys are drawn with a fixed seed, and the share of intervals that hold the
 * truth is shown beside the exact coverage (all outcomes weighed by their chance). An interval that guarantees its
 * coverage must never fall below it; the others should stay near. The simulation errs by about one in sqrt(runs).
 */
import { binomialMass } from '../packages/science/src/distributions/binomial.ts';
import { seeded } from '../packages/science/src/random/seeded.ts';
import * as interval from '../packages/science/src/sampling/interval.ts';
import * as truePrevalence from '../packages/science/src/sampling/true-prevalence.ts';

const runs = Number(process.argv[2] ?? 4000);
const seed = Number(process.argv[3] ?? 20260301);
const confidence = 0.95;
const methods = {
  wilson: interval.wilson,
  clopperPearson: interval.clopperPearson,
  blaker: interval.blaker,
  jeffreys: interval.jeffreys,
  agrestiCoull: interval.agrestiCoull,
} as const;
const trueMethods = {
  wilson: truePrevalence.wilson,
  clopperPearson: truePrevalence.clopperPearson,
  blaker: truePrevalence.blaker,
} as const;
const guaranteed = new Set(['clopperPearson', 'blaker', 'true, blaker', 'true, clopperPearson']);

interface Limits {
  readonly lower: number;
  readonly upper: number;
}
interface Setting {
  readonly tested: number;
  /** The fraction the interval is to hold. */
  readonly truth: number;
  /** Chance that one unit tests positive. */
  readonly positive: number;
}

/** Limits for every possible count, worked out once. */
const limitsOf = (tested: number, one: (positives: number) => Limits) =>
  Array.from({ length: tested + 1 }, (_, x) => one(x));
const holds = ({ lower, upper }: Limits, truth: number) => lower <= truth + 1e-12 && upper >= truth - 1e-12;

function coverage({ tested, truth, positive }: Setting, limits: readonly Limits[], random: () => number) {
  let held = 0;
  for (let run = 0; run < runs; run++) {
    let positives = 0;
    for (let i = 0; i < tested; i++) if (random() < positive) positives += 1;
    if (holds(limits[positives] as Limits, truth)) held += 1;
  }
  const exact = limits.reduce((sum, l, x) => sum + (holds(l, truth) ? binomialMass(x, tested, positive) : 0), 0);
  return { simulated: held / runs, exact };
}

const rows: Record<string, string | number>[] = [];
const failures: string[] = [];
const random = seeded(seed).uniform;

function judge(method: string, setting: Setting, limits: readonly Limits[]) {
  const { simulated, exact } = coverage(setting, limits, random);
  rows.push({
    interval: method,
    tested: setting.tested,
    'true fraction': setting.truth,
    'simulated %': Number((100 * simulated).toFixed(1)),
    'exact %': Number((100 * exact).toFixed(2)),
  });
  const error = Math.sqrt((exact * (1 - exact)) / runs);
  if (Math.abs(simulated - exact) > 4.5 * error + 1e-3)
    failures.push(`${method} at ${setting.tested}, ${setting.truth}: simulation and sum differ`);
  if (guaranteed.has(method) && exact < confidence - 1e-9)
    failures.push(`${method} at ${setting.tested}, ${setting.truth}: ${exact}`);
}

for (const tested of [10, 30, 100, 300]) {
  for (const [method, of] of Object.entries(methods)) {
    const limits = limitsOf(tested, (positives) => of({ positives, tested, confidence }));
    for (const truth of [0.01, 0.05, 0.2, 0.5]) judge(method, { tested, truth, positive: truth }, limits);
  }
  const [sensitivity, specificity] = [0.85, 0.97];
  for (const [method, of] of Object.entries(trueMethods)) {
    const limits = limitsOf(tested, (positives) => of({ positives, tested, sensitivity, specificity, confidence }));
    for (const truth of [0.01, 0.2]) {
      judge(
        `true, ${method}`,
        { tested, truth, positive: truth * sensitivity + (1 - truth) * (1 - specificity) },
        limits,
      );
    }
  }
}

console.table(rows);
const average = (method: string) => {
  const own = rows.filter((row) => row.interval === method).map((row) => Number(row['exact %']));
  return `${method} ${(own.reduce((a, b) => a + b, 0) / own.length).toFixed(1)} % (lowest ${Math.min(...own).toFixed(1)})`;
};
console.log(
  `mean coverage at ${100 * confidence} %: ${[...new Set(rows.map((row) => String(row.interval)))].map(average).join('; ')}`,
);
console.log(`${runs} surveys each, seed ${seed}`);
if (failures.length > 0) {
  console.error(failures.join('\n'));
  process.exitCode = 1;
}
