/*
 * How fast the reasoning is: medians of this machine, and how the cost grows with conditions and with signs.
 *
 *   npx tsx bench/diagnosis.ts
 *
 * Goals: the posterior (the line in words) in 2 ms, the whole assessment with its 400 draws in 250 ms.
 */
import { loadavg } from 'node:os';
import type { Look } from '../packages/science/src/brood/look.ts';
import { assessLook, defaultSettings } from '../packages/science/src/diagnosis/assess.ts';
import { couldHaveMissed } from '../packages/science/src/diagnosis/could-have-missed.ts';
import { type Evidence, emptyEvidence } from '../packages/science/src/diagnosis/evidence.ts';
import { Inference, type Observation } from '../packages/science/src/diagnosis/inference.ts';
import { intervals } from '../packages/science/src/diagnosis/intervals.ts';
import { broodNetwork } from '../packages/science/src/diagnosis/network.ts';
import { nextChecks } from '../packages/science/src/diagnosis/next-check.ts';
import { posterior } from '../packages/science/src/diagnosis/posterior.ts';
import { priorFrom } from '../packages/science/src/diagnosis/prior.ts';
import { leadingTwo, reasonsFor } from '../packages/science/src/diagnosis/reasons.ts';
import { testIds } from '../packages/science/src/diagnosis/test-figures.ts';
import { seeded } from '../packages/science/src/random/seeded.ts';
import { signs } from '../packages/science/src/signs/catalogue.ts';

const look: Look = {
  depth: 'full',
  framesHeld: 10,
  framesSeen: 10,
  sides: 'both',
  beesShaken: true,
  light: 'torch',
  hold: 'top bar toward the viewer',
  cellsOpened: 20,
  cellsSuspicious: 60,
  sealedBroodCombSides: 8,
};

function median(times: readonly number[]): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] as number;
}

/** Median milliseconds of one run, after a warm-up. */
function time(runs: number, work: () => unknown): number {
  for (let i = 0; i < Math.max(3, runs / 10); i++) work();
  const times: number[] = [];
  for (let i = 0; i < runs; i++) {
    const start = performance.now();
    work();
    times.push(performance.now() - start);
  }
  return median(times);
}

const brood = signs.filter((sign) => !sign.ofHealthyBrood);
function evidenceWith(seen: number, notSeen: number): Evidence {
  return {
    ...emptyEvidence(look),
    signs: Object.fromEntries([
      ...brood.slice(0, seen).map((sign) => [sign.id, { outcome: 'seen' }] as const),
      ...brood.slice(seen, seen + notSeen).map((sign) => [sign.id, { outcome: 'not seen' }] as const),
    ]),
  };
}

const cases: [string, Evidence][] = [
  ['nothing entered', evidenceWith(0, 0)],
  ['nothing seen, all looked for', evidenceWith(0, 39)],
  ['3 seen, 10 not seen', evidenceWith(3, 10)],
  ['8 seen, 20 not seen', evidenceWith(8, 20)],
  ['20 seen, 19 not seen', evidenceWith(20, 19)],
  ['all 39 seen', evidenceWith(39, 0)],
];
const notifiable = defaultSettings.notifiable;
const settings = { ...defaultSettings, checks: { ...defaultSettings.checks, kitsAtHand: testIds } };
const ms = (value: number): string => value.toFixed(value < 10 ? 2 : 0).padStart(9);

const first = performance.now();
assessLook(evidenceWith(3, 10), settings);
console.log(`first assessment, nothing warmed up: ${(performance.now() - first).toFixed(0)} ms\n`);

console.log('medians, ms                    posterior    whole  of it: draws  reasons  next checks  missed');
for (const [name, evidence] of cases) {
  const prior = priorFrom(evidence);
  const lead = leadingTwo(posterior(broodNetwork, evidence, prior).disease);
  const line = time(200, () => posterior(broodNetwork, evidence, prior));
  const whole = time(15, () => assessLook(evidence, settings));
  const draws = time(15, () => intervals(broodNetwork, evidence, prior, notifiable));
  const reasons = time(15, () => reasonsFor(broodNetwork, evidence, prior, lead));
  const next = time(15, () => nextChecks(broodNetwork, evidence, prior, notifiable, settings.checks));
  const missed = time(15, () => couldHaveMissed(look));
  console.log(`${name.padEnd(30)}${ms(line)}${ms(whole)}      ${ms(draws)}${ms(reasons)}    ${ms(next)}${ms(missed)}`);
}

/** A network as large as asked: every sign has arrows from five conditions. */
function growth(conditions: number, seenSigns: number): number {
  const chance = seeded(conditions * 1000 + seenSigns);
  const levels = [3, ...new Array<number>(conditions - 1).fill(2)];
  const findings: Observation[] = Array.from({ length: seenSigns }, () => ({
    sign: {
      takenAway: false,
      background: [0.05, 0.01, 0.002],
      causes: Array.from({ length: 5 }, (_, i) => ({
        variable: (chance.integer(conditions) + i) % conditions,
        level: 1,
        reach: [chance.between(0.2, 0.9), 0.15, 0.05],
      })),
    },
    grade: 2,
    noticed: [0.7, 0.9, 0.98],
  }));
  const prior = levels.map((count) => [1 - 0.05 * (count - 1), ...new Array<number>(count - 1).fill(0.05)]);
  const inference = new Inference(levels);
  const into = new Float64Array(inference.states);
  return time(conditions > 14 ? 5 : 30, () => inference.joint(prior, findings, into));
}

console.log('\ngrowth with conditions (10 signs seen): joint states doubled by each');
for (const conditions of [4, 6, 8, 10, 12, 14, 16]) {
  const states = 3 * 2 ** (conditions - 1);
  console.log(
    `${String(conditions).padStart(4)} conditions ${String(states).padStart(7)} states ${ms(growth(conditions, 10))} ms`,
  );
}
console.log('\ngrowth with signs seen (10 conditions, 1536 states)');
for (const seen of [1, 5, 10, 20, 40, 80, 160])
  console.log(`${String(seen).padStart(4)} signs ${ms(growth(10, seen))} ms`);

console.log(
  `\nload of the machine while measuring: ${loadavg()
    .map((load) => load.toFixed(1))
    .join(' ')} (1, 5, 15 minutes)`,
);
