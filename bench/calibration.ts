/*
 * Does a stated probability mean what it says, when the numbers behind it are wrong? A study by simulation: colonies are
 * drawn from the model with other values than the ones the reasoning uses, looked at, weighed, and the answers compared
 * with the truth.
 *
 *   npx tsx bench/calibration.ts [colonies]
 *
 * What it cannot show: whether the model is the world. Colonies, signs and looks come from the same network; only its
 * numbers are mis-set. A real study needs colonies whose truth is known from the laboratory.
 */

import type { Look } from '../packages/science/src/brood/look.ts';
import type { Eye } from '../packages/science/src/brood/what-a-look-shows.ts';
import { eyeBands, pointEye } from '../packages/science/src/brood/what-a-look-shows.ts';
import {
  type Evidence,
  emptyEvidence,
  nothingKnown,
  type SignAnswer,
} from '../packages/science/src/diagnosis/evidence.ts';
import type { SignChances } from '../packages/science/src/diagnosis/inference.ts';
import { intervals } from '../packages/science/src/diagnosis/intervals.ts';
import {
  broodNetwork,
  drawerOf,
  pointChances,
  type SignNode,
  type TestNode,
} from '../packages/science/src/diagnosis/network.ts';
import { inferenceOf, noticedGiven, posterior, reachOf, weigh } from '../packages/science/src/diagnosis/posterior.ts';
import { pointWeights, priorFrom } from '../packages/science/src/diagnosis/prior.ts';
import { type EvidenceItem, noticedBy, sortEvidence } from '../packages/science/src/diagnosis/sort-evidence.ts';
import { type Chance, seeded } from '../packages/science/src/random/seeded.ts';
import { diseases, type Sign, signs } from '../packages/science/src/signs/catalogue.ts';

const colonies = Number(process.argv[2] ?? 8000);
const seed = 20260704;

/** What the true numbers are, for one world: all colonies of a world share them. */
interface World {
  readonly chances: readonly SignChances[];
  readonly eye: Eye;
}

const logit = (p: number): number => Math.log(p / (1 - p));
const fromLogit = (x: number): number => 1 / (1 + Math.exp(-x));
const signNodes = broodNetwork.nodes.slice(0, signs.length) as readonly (SignNode | TestNode)[];

/** A world whose numbers lie where `place` puts each band: 0 at its low end, 1 at its high end, beyond outside it. */
function world(chance: Chance, place: () => number, eyePlace: () => number): World {
  const moved = {
    ...chance,
    // The draws of the network ask for a uniform number and use it as the place in the band.
    uniform: place,
  };
  const eye = Object.fromEntries(
    Object.entries(eyeBands).map(([name, { value, low = value, high = value }]) => [
      name,
      fromLogit(logit(low) + (logit(high) - logit(low)) * eyePlace()),
    ]),
  ) as unknown as Eye;
  return { chances: signNodes.map((node) => drawerOf(node, 'not known', moved)()), eye };
}

const looks: readonly Look[] = [
  {
    depth: 'full',
    framesHeld: 10,
    framesSeen: 10,
    sides: 'both',
    beesShaken: true,
    light: 'torch',
    hold: 'top bar toward the viewer',
    cellsOpened: 20,
    cellsSuspicious: 30,
    sealedBroodCombSides: 8,
  },
  {
    depth: 'full',
    framesHeld: 10,
    framesSeen: 10,
    sides: 'both',
    beesShaken: true,
    light: 'shade',
    hold: 'flat',
    cellsOpened: 5,
    cellsSuspicious: 30,
    sealedBroodCombSides: 3,
  },
  {
    depth: 'part',
    framesHeld: 10,
    framesSeen: 3,
    sides: 'both',
    beesShaken: false,
    light: 'shade',
    hold: 'top bar away',
    cellsOpened: 0,
    cellsSuspicious: 30,
    sealedBroodCombSides: 8,
  },
];

/** The prior of the study: foulbrood common enough to be counted. Truth is drawn from the same prior. */
const circumstances: Evidence['circumstances'] = {
  ...nothingKnown,
  priorChanges: [
    { disease: 'american-foulbrood', value: 0.15, reason: 'study' },
    { disease: 'european-foulbrood', value: 0.1, reason: 'study' },
  ],
};
const weights = pointWeights(priorFrom({ circumstances, earlier: [] }));

function drawLevel(row: readonly number[], chance: Chance): number {
  let left = chance.uniform();
  for (let level = 0; level < row.length; level++) {
    left -= row[level] as number;
    if (left < 0) return level;
  }
  return row.length - 1;
}

/** What one sign shows to one look, in one state of the colony. */
function show(
  sign: Sign,
  chances: SignChances,
  levels: readonly number[],
  noticed: readonly number[],
  chance: Chance,
): SignAnswer {
  const present = chances.causes.filter((cause) => levels[cause.variable] === cause.level);
  if (chances.takenAway) {
    const share = present.reduce((left, cause) => left * (cause.reach[0] as number), chances.background[0] as number);
    return chance.uniform() < share * (noticed[0] as number) ? { outcome: 'seen' } : { outcome: 'not seen' };
  }
  let highest = 0;
  for (const reach of [chances.background, ...present.map((cause) => cause.reach)]) {
    const u = chance.uniform();
    let grade = 0;
    while (grade < reach.length && u < (reach[grade] as number)) grade++;
    if (grade > highest && chance.uniform() < (noticed[grade - 1] as number)) highest = grade;
  }
  if (highest === 0) return { outcome: 'not seen' };
  if (sign.measure === 'cells') {
    return { outcome: 'seen', count: (['1-10', '11-100', 'over 100'] as const)[highest - 1] as '1-10' };
  }
  return { outcome: 'seen', amount: highest === 1 ? 'slight' : 'marked' };
}

// Signs that enter an answer by rules of their own (counted once, set aside when others are seen) are left out: the study
// is about the numbers.
const ruled = new Set([
  'pattern.compact',
  'odour.any',
  'con.ropy',
  'scale.hard_lower',
  'col.coffee',
  'post.melted',
  'tongue',
]);
const asked = signs.filter((sign) => !ruled.has(sign.id));

interface Answer {
  readonly believed: readonly number[];
  readonly truth: readonly boolean[];
  readonly evidence: Evidence;
  readonly items: readonly EvidenceItem[];
}

function examine({ chances, eye }: World, chance: Chance): Answer {
  const levels = weights.map((row) => drawLevel(row, chance));
  const look = looks[chance.integer(looks.length)] as Look;
  const reach = reachOf(look, eye);
  const reached = chance.uniform() < reach.chance;
  const given: Record<string, SignAnswer> = {};
  for (const sign of asked) {
    if (chance.uniform() < 0.5) continue;
    const index = signs.indexOf(sign);
    const item = { onCombs: sign.place !== 'hive', grade: 0 } as EvidenceItem;
    const noticed = noticedGiven(reached, reach, item, noticedBy(sign.id, look, eye));
    given[sign.id] = show(sign, chances[index] as SignChances, levels, noticed, chance);
  }
  const evidence: Evidence = { ...emptyEvidence(look), signs: given, circumstances };
  const { disease } = posterior(broodNetwork, evidence, priorFrom(evidence));
  return {
    believed: diseases.map((id) => disease[id]),
    truth: levels.map((level) => level > 0),
    evidence,
    items: sortEvidence(broodNetwork, evidence).items,
  };
}

const edges = [0, 0.01, 0.05, 0.1, 0.2, 0.4, 0.6, 0.8, 0.9, 0.99, 1];

function report(name: string, pairs: readonly (readonly [p: number, present: boolean])[], base: number): void {
  const brier = pairs.reduce((sum, [p, y]) => sum + (p - Number(y)) ** 2, 0) / pairs.length;
  const ignorant = pairs.reduce((sum, [, y]) => sum + (base - Number(y)) ** 2, 0) / pairs.length;
  console.log(
    `  ${name}: Brier ${brier.toFixed(4)}, knowing only the prior ${ignorant.toFixed(4)}, skill ${(1 - brier / ignorant).toFixed(3)}`,
  );
  for (let i = 0; i + 1 < edges.length; i++) {
    const inside = pairs.filter(([p]) => p >= (edges[i] as number) && p < (edges[i + 1] as number));
    if (inside.length < 20) continue;
    const said = inside.reduce((sum, [p]) => sum + p, 0) / inside.length;
    const found = inside.filter(([, y]) => y).length / inside.length;
    console.log(
      `    said ${edges[i]?.toFixed(2)}-${edges[i + 1]?.toFixed(2)}  n ${String(inside.length).padStart(6)}  mean said ${said.toFixed(3)}  truly ${found.toFixed(3)}`,
    );
  }
}

const scenarios: [string, (chance: Chance) => World][] = [
  [
    'numbers as assumed (checks the study itself)',
    () => ({ chances: signNodes.map((n) => pointChances(n, 'not known')), eye: pointEye }),
  ],
  [
    'numbers anywhere in their bands',
    (chance) =>
      world(
        chance,
        () => chance.uniform(),
        () => chance.uniform(),
      ),
  ],
  [
    'numbers mis-set: up to half a band outside',
    (chance) =>
      world(
        chance,
        () => 2 * chance.uniform() - 0.5,
        () => 2 * chance.uniform() - 0.5,
      ),
  ],
  [
    'every sign rarer than assumed (low ends)',
    (chance) =>
      world(
        chance,
        () => 0.1 * chance.uniform(),
        () => chance.uniform(),
      ),
  ],
  [
    'every sign commoner than assumed, false ones too (high ends)',
    (chance) =>
      world(
        chance,
        () => 1 - 0.1 * chance.uniform(),
        () => chance.uniform(),
      ),
  ],
  [
    'a worse eye than assumed (below the band)',
    (chance) =>
      world(
        chance,
        () => chance.uniform(),
        () => -0.5 * chance.uniform(),
      ),
  ],
];

console.log(
  `${colonies} colonies a scenario in worlds of 100, 3 kinds of look, half of ${asked.length} signs asked; seed ${seed}`,
);
for (const [name, makeWorld] of scenarios) {
  const chance = seeded(seed);
  const answers: Answer[] = [];
  let inside = 0;
  let tried = 0;
  while (answers.length < colonies) {
    const here = makeWorld(chance);
    for (let i = 0; i < 100; i++) {
      const answer = examine(here, chance);
      answers.push(answer);
      // For some colonies: does the interval hold the answer that the true numbers of this world would give?
      if (i < 2) {
        const prior = priorFrom(answer.evidence);
        const { disease } = intervals(broodNetwork, answer.evidence, prior, [], { draws: 100, seed: answers.length });
        const chances = answer.items.map((item) => here.chances[item.index] as SignChances);
        const inference = inferenceOf(broodNetwork);
        const { joint } = weigh(inference, {
          weights,
          items: answer.items,
          chances,
          eye: here.eye,
          look: answer.evidence.look,
        });
        const first = inference.marginals(joint)[0] as number[];
        const truly = 1 - (first[0] as number);
        const { low, high } = disease['american-foulbrood'];
        tried++;
        if (truly >= low && truly <= high) inside++;
      }
    }
  }
  console.log(`\n${name}`);
  const of = (d: number): (readonly [number, boolean])[] =>
    answers.map((a) => [a.believed[d] as number, a.truth[d] as boolean]);
  const base = (d: number): number => 1 - (weights[d]?.[0] as number);
  report('American foulbrood', of(0), base(0));
  report('European foulbrood', of(1), base(1));
  const pooled = diseases.flatMap((_, d) => of(d));
  const mean = diseases.reduce((sum, _, d) => sum + base(d), 0) / diseases.length;
  report('all ten diseases together', pooled, mean);
  console.log(
    `  90 % interval of foulbrood held the answer under the true numbers in ${((100 * inside) / tried).toFixed(0)} of 100 (${tried} tried)`,
  );
}
