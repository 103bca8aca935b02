/*
 * How fast are the calculations, and how fast is R at the same? `npx tsx bench/statistics.ts`
 *
 * Every calculation with check values is called on each of them, here and (when Rscript is there) in base R in the same
 * run, as a table: milliseconds per call, and the largest difference between our value and R's. Then the curves that a
 * screen redraws while a slider moves: each must stay under 16 ms.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { calculate, calculations } from '../packages/science/src/calculations/registry.ts';
import { allQuestions } from '../packages/web/src/district/questions/all-questions.ts';
import { readAddress } from '../packages/web/src/district/questions/inputs-in-address.ts';
import { examples, heaviestInputs } from './statistics-examples.ts';

interface Case {
  id: string;
  call: string;
  inputs: Record<string, unknown>;
  gives: Record<string, unknown>;
}
const file = new URL('../packages/science/src/calculations/reference/cases.json', import.meta.url);
const cases = (JSON.parse(readFileSync(file, 'utf8')) as { cases: Case[] }).cases.filter(
  ({ gives }) => !('error' in gives),
);

/** The output that statistics.R prints for a call. */
const compared: Readonly<Record<string, string>> = {
  twoStageSampleSizes: 'clusters',
  riskBasedSensitivity: 'adjustedRisks',
  riskBasedSampleSize: 'total',
  probabilityOfFreedomOverTime: 'discountedPriors',
  apiariesForColoniesPerApiary: 'clusterSensitivities',
  sampleSizeApproximationImperfectSensitivity: 'sampleSize',
  posteriorPrevalence: 'mean',
};

function comparable(call: string, result: Record<string, unknown>): number | null {
  const upper = /^(interval|truePrevalence)[.]/.test(call) ? 'upper' : undefined;
  const value = result[compared[call] ?? upper ?? (Object.keys(result)[0] as string)];
  const first = Array.isArray(value) ? value[0] : value;
  return typeof first === 'number' ? first : null;
}

function millisecondsPerCall(run: () => unknown, patience: number): number {
  run();
  const start = performance.now();
  let calls = 0;
  do {
    for (let k = 0; k < 5; k++) run();
    calls += 5;
  } while (performance.now() - start < patience);
  return (performance.now() - start) / calls;
}

function asR(value: unknown): string {
  if (value === null) return 'NULL';
  if (typeof value === 'number') return String(value);
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (typeof value === 'string') return JSON.stringify(value);
  if (Array.isArray(value)) {
    const plain = value.every((item) => typeof item === 'number');
    return `${plain ? 'c' : 'list'}(${value.map(asR).join(', ')})`;
  }
  const fields = Object.entries(value as object).map(([name, item]) => `\`${name}\` = ${asR(item)}`);
  return `list(${fields.join(', ')})`;
}

/** Milliseconds and value of each case in R; empty without Rscript. */
function inR(patienceSeconds: number): Map<string, { ms: number; value: number }> {
  if (spawnSync('Rscript', ['--version']).status !== 0) return new Map();
  const folder = mkdtempSync(join(tmpdir(), 'combside-statistics-'));
  try {
    const path = join(folder, 'cases.R');
    writeFileSync(
      path,
      `cases <- list(\n${cases.map((one) => asR({ id: one.id, call: one.call, inputs: one.inputs })).join(',\n')}\n)\n`,
    );
    const script = new URL('./statistics.R', import.meta.url).pathname;
    const lines = execFileSync('Rscript', [script, path, String(patienceSeconds)], { encoding: 'utf8' })
      .trim()
      .split('\n');
    return new Map(
      lines.map((line) => {
        const [id, ms, value] = line.trim().split(/\s+/);
        return [id as string, { ms: Number(ms), value: Number(value) }];
      }),
    );
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const patience = Number(process.argv[2] ?? 20);
const reference = inR(patience / 1000);
const byCall = new Map<string, Case[]>();
for (const one of cases) byCall.set(one.call, [...(byCall.get(one.call) ?? []), one]);

const rows = [...byCall].map(([call, group]) => {
  let ours = 0;
  let theirs = 0;
  let difference = 0;
  let comparedCases = 0;
  for (const { id, inputs } of group) {
    ours += millisecondsPerCall(() => calculate(call, inputs), patience);
    const r = reference.get(id);
    if (!r || Number.isNaN(r.ms)) continue;
    theirs += r.ms;
    const value = comparable(call, calculate(call, inputs) as Record<string, unknown>);
    if (value === null && Number.isNaN(r.value)) comparedCases += 1;
    else if (value !== null && !Number.isNaN(r.value)) {
      comparedCases += 1;
      difference = Math.max(difference, Math.abs(value - r.value) / Math.max(1, Math.abs(r.value)));
    } else difference = Number.POSITIVE_INFINITY;
  }
  const mean = ours / group.length;
  const meanR = theirs / group.length;
  return {
    calculation: call,
    cases: group.length,
    'ms here': Number(mean.toPrecision(3)),
    'ms in R': comparedCases > 0 ? Number(meanR.toPrecision(3)) : '-',
    'R / here': comparedCases > 0 ? Number((meanR / mean).toPrecision(2)) : '-',
    'largest difference': comparedCases > 0 ? difference.toExponential(0) : '-',
  };
});
console.table(rows);

/* Laboratory, colony and disposal: no reference program computes them, so only their own times stand here. */
const absent = Object.keys(calculations).filter((name) => !byCall.has(name));
const untried = absent.filter((name) => !(name in examples));
if (untried.length > 0) throw new Error(`give an example of ${untried.join(', ')} in bench/statistics-examples.ts`);
console.table(
  absent.map((call) => {
    const ms = millisecondsPerCall(() => calculate(call, examples[call]), patience);
    return { calculation: call, room: calculations[call]?.room, 'ms here': Number(ms.toPrecision(3)) };
  }),
);
if (reference.size === 0) console.log('Rscript is not installed: only our own times are shown');

/* Curves behind sliders. */
const hundred = Array.from({ length: 100 }, (_, i) => 0.005 * (i + 1));
const over = (name: string, inputs: (p: number) => object) => () => hundred.map((p) => calculate(name, inputs(p)));
const curves: Readonly<Record<string, () => unknown>> = {
  'sample size, very large, 100 prevalences': over('sampleSizeToDetectLargePopulation', (designPrevalence) => ({
    designPrevalence,
    confidence: 0.95,
    sensitivity: 0.8,
  })),
  ...Object.fromEntries(
    [40, 1000, 100_000].map((N) => [
      `sample size, exact, N = ${N}, 100 prevalences`,
      over('sampleSizeToDetectFinitePopulation', (p) => ({
        populationSize: N,
        infectedUnits: Math.max(1, Math.ceil(N * p)),
        confidence: 0.95,
        sensitivity: 0.8,
      })),
    ]),
  ),
  'sample size with cut-point, N = 1000, 100 prevalences': over('sampleSizeImperfectTestFinitePopulation', (p) => ({
    populationSize: 1000,
    infectedUnits: Math.max(1, Math.ceil(1000 * (0.04 + p / 2))),
    sensitivity: 0.9,
    specificity: 0.98,
    targetSensitivity: 0.95,
    targetSpecificity: 0.95,
  })),
  'chance to find one, 100 numbers opened': () =>
    hundred.map((_, i) =>
      calculate('detectionProbabilityFinitePopulation', {
        populationSize: 100,
        infectedUnits: 1,
        tested: i + 1,
        sensitivity: 0.8,
      }),
    ),
  'freedom over 100 rounds': () =>
    calculate('probabilityOfFreedomOverTime', {
      priorFreedom: 0.5,
      introductionProbabilities: hundred.map(() => 0.01),
      systemSensitivities: hundred.map(() => 0.4),
    }),
  'Wilson, 100 counts': () =>
    hundred.map((_, i) => calculate('interval.wilson', { positives: i, tested: 200, confidence: 0.95 })),
  'Blaker, 100 counts': () =>
    hundred.map((_, i) => calculate('interval.blaker', { positives: i, tested: 200, confidence: 0.95 })),
  'posterior, known test, one curve': () =>
    calculate('posteriorPrevalence', {
      positives: 6,
      tested: 151,
      prior: [1, 1],
      sensitivity: 0.96,
      specificity: 0.93,
      interval: 0.95,
    }),
  'posterior, estimated test (behind a button, not a slider)': () =>
    calculate('posteriorPrevalence', {
      positives: 20,
      tested: 120,
      prior: [1, 1],
      sensitivity: { alpha: 21, beta: 3 },
      specificity: { alpha: 90, beta: 4 },
      interval: 0.95,
    }),
};
console.table(
  Object.entries(curves).map(([curve, run]) => {
    const ms = millisecondsPerCall(run, 10 * patience);
    return { curve, ms: Number(ms.toPrecision(3)), 'under 16 ms': ms < 16 };
  }),
);

/* The office's questions as a slider moves them: the whole answer with its curve, at inputs as heavy as the fields take. */
console.table(
  heaviestInputs.map(({ question, inputs }) => {
    const asked = allQuestions.find((one) => one.id === question);
    if (!asked) throw new Error(`no question ${question}`);
    const { values, leftOut } = readAddress(asked.fields, new URLSearchParams(inputs));
    const answer = asked.answer(values as never);
    if (leftOut.length > 0 || answer.said.length === 0) throw new Error(`${question} did not answer: ${leftOut}`);
    const ms = millisecondsPerCall(() => asked.answer(values as never), 10 * patience);
    const slow = asked.slow(values as never);
    return {
      question,
      inputs: inputs.slice(0, 60),
      ms: Number(ms.toPrecision(3)),
      'under 16 ms': slow ? 'on a button, in a worker' : ms < 16,
    };
  }),
);
