import type { SourceId } from '@combside/sources/bibliography';
import type { SourcedValue } from '@combside/sources/sourced-value';
import type { Chance } from '../random/seeded.ts';
import { amountOf } from '../signs/amounts.ts';
import { backgroundOf, unmentionedOfHealthyBrood } from '../signs/background.ts';
import {
  type ConditionId,
  conditions,
  type DiseaseId,
  diseaseOf,
  diseases,
  foulbroodStages,
  type SignId,
  type SignMeasure,
  signs,
} from '../signs/catalogue.ts';
import { band, bandOf } from '../signs/levels.ts';
import { type Link, linkOf } from '../signs/links.ts';
import { drawFrom, drawRate, type LogOdds, logOddsOf } from './bands.ts';
import type { CauseOfSign, SignChances } from './inference.ts';
import { type Exposure, figureOf, type Rate, type TestId, testIds } from './test-figures.ts';

/** A disease as a variable: level 0 is absent, further levels are its stages. */
export interface Variable {
  readonly disease: DiseaseId;
  readonly levels: readonly string[];
}

/** What carries evidence: a sign, the rope test, a test, or a pattern measured on photographs. */
export type NodeId = SignId | 'rope-test' | TestId | 'pattern-measured';

/** The chance that a cause shows a sign, and how much of it then. */
export interface Arrow {
  readonly condition: ConditionId;
  readonly variable: number;
  readonly level: number;
  /** Chance to show the sign; for a sign of healthy brood, the share left of it. */
  readonly shows: SourcedValue;
  readonly many: SourcedValue;
  readonly mostly: SourcedValue;
}

/** A sign, the rope test, or the pattern as measured. */
export interface SignNode {
  readonly kind: 'sign';
  readonly id: SignId | 'rope-test' | 'pattern-measured';
  readonly grades: number;
  readonly takenAway: boolean;
  readonly background: Omit<Arrow, 'condition' | 'variable' | 'level'>;
  readonly arrows: readonly Arrow[];
}

/** A test with a positive or a negative result. */
export interface TestNode {
  readonly kind: 'test';
  readonly id: TestId;
  readonly sensitivity: Rate;
  readonly falsePositive: Readonly<Record<Exposure, Rate>>;
  readonly targets: readonly { readonly variable: number; readonly level: number }[];
}

export interface Network {
  readonly variables: readonly Variable[];
  readonly nodes: readonly (SignNode | TestNode)[];
}

const gradesOf: Readonly<Record<SignMeasure, number>> = { cells: 3, degree: 2, none: 1 };

const variables: readonly Variable[] = diseases.map((disease) => ({
  disease,
  levels: disease === 'american-foulbrood' ? ['absent', ...foulbroodStages] : ['absent', 'present'],
}));

/** Where a condition stands among the variables; null for the healthy colony. */
export function placeOf(condition: ConditionId): { variable: number; level: number } | null {
  const disease = diseaseOf(condition);
  if (disease === null) return null;
  return { variable: diseases.indexOf(disease), level: condition === 'american-foulbrood.advanced' ? 2 : 1 };
}

function bandOfLink(link: Link): SourcedValue {
  return {
    ...bandOf[link.level],
    standing: link.basis === 'described' ? 'described' : 'expert band',
    sources: link.sources,
    ...(link.basis === 'common practice' ? { doubts: 'Common practice, no source.' } : {}),
  };
}

function signNode(id: SignId, measure: SignMeasure, ofHealthyBrood: boolean): SignNode {
  const arrows: Arrow[] = [];
  const background = backgroundOf(id);
  for (const condition of conditions) {
    const place = placeOf(condition);
    if (place === null) continue;
    const link = linkOf(id, condition);
    const amount = amountOf[condition];
    if (ofHealthyBrood) {
      // The table gives how often the sign is seen under the condition; what it leaves is that over the healthy rate.
      const shows = link ? leftBy(bandOfLink(link), background) : unmentionedOfHealthyBrood;
      arrows.push({ condition, ...place, shows, many: amount.many, mostly: amount.mostly });
      continue;
    }
    // "Never described" and "no mention" are the background alone, which keeps a floor of its own.
    if (!link || link.level === 'never described') continue;
    arrows.push({ condition, ...place, shows: bandOfLink(link), many: amount.many, mostly: amount.mostly });
  }
  return {
    kind: 'sign',
    id,
    grades: gradesOf[measure],
    takenAway: ofHealthyBrood,
    background: { shows: background, many: amountOf.healthy.many, mostly: amountOf.healthy.mostly },
    arrows,
  };
}

function leftBy(seen: SourcedValue, background: SourcedValue): SourcedValue {
  const left = (p: number): number => Math.min(0.98, p / background.value);
  const low = left(seen.low ?? seen.value);
  const high = left(seen.high ?? seen.value);
  return { ...seen, ...band(low, high), standing: seen.standing, sources: seen.sources };
}

/** A thread of more than 20 mm, given one of 10 mm or more. */
const longThread: Readonly<Record<'american' | 'other', SourcedValue>> = {
  american: band(0.4, 0.85, {
    sources: ['NZ-ROPE', 'DOR-EFB', 'SBK-AFB', 'QLD-SIGN'],
    doubts: 'Sources give 10-30 mm, 30-50 mm, or 20 mm and more.',
  }),
  other: band(0.03, 0.3, { sources: ['DOR-EFB'], doubts: 'Said to be about 15 mm.' }),
};

function ropeNode(): SignNode {
  const sign = signNode('con.ropy', 'cells', false);
  return {
    ...sign,
    id: 'rope-test',
    grades: 2,
    background: { ...sign.background, many: longThread.other },
    arrows: sign.arrows.map((arrow) => ({
      ...arrow,
      many: diseaseOf(arrow.condition) === 'american-foulbrood' ? longThread.american : longThread.other,
    })),
  };
}

/** A pattern measured on photographs is the spotty pattern, met another way. */
function measuredPatternNode(): SignNode {
  return { ...signNode('pattern.spotty', 'degree', false), id: 'pattern-measured' };
}

function testNode(id: TestId): TestNode {
  const figure = figureOf(id);
  const variable = diseases.indexOf(figure.target);
  const levels = variables[variable]?.levels.length ?? 0;
  return {
    kind: 'test',
    id,
    sensitivity: figure.sensitivity,
    falsePositive: figure.falsePositive,
    targets: Array.from({ length: levels - 1 }, (_, i) => ({ variable, level: i + 1 })),
  };
}

/**
 * The network of brood disease: American foulbrood with two stages and nine further conditions, 3 x 2^9 = 1536 joint
 * states; 41 signs, the rope test and the tests of `test-figures.ts`.
 */
export const broodNetwork: Network = {
  variables,
  nodes: [
    ...signs.map((sign) => signNode(sign.id, sign.measure, sign.ofHealthyBrood)),
    ropeNode(),
    ...testIds.map(testNode),
    measuredPatternNode(),
  ],
};

/** How many levels each variable has, in order: what the inference needs. */
export function levelsOf(network: Network): number[] {
  return network.variables.map((variable) => variable.levels.length);
}

/**
 * The place of a node in the network.
 *
 * @throws RangeError when the network has no such node
 */
export function nodeIndex(network: Network, id: NodeId): number {
  const index = network.nodes.findIndex((node) => node.id === id);
  if (index < 0) throw new RangeError(`the network has no sign or test "${id}"`);
  return index;
}

type Read = (value: SourcedValue) => number;

function reachOf(arrow: Omit<Arrow, 'condition' | 'variable' | 'level'>, grades: number, read: Read): number[] {
  const reach = [read(arrow.shows)];
  if (grades > 1) reach.push((reach[0] as number) * read(arrow.many));
  if (grades > 2) reach.push((reach[1] as number) * read(arrow.mostly));
  return reach;
}

/** Turns a sensitivity into the chance that the disease alone makes the test positive, beside the background. */
function beyondBackground(sensitivity: number, falsePositive: number): number {
  return Math.max(1e-6, 1 - (1 - sensitivity) / (1 - falsePositive));
}

function chancesOf(
  node: SignNode | TestNode,
  exposure: Exposure,
  read: Read,
  rate: (rate: Rate) => number,
): SignChances {
  if (node.kind === 'test') {
    const falsePositive = rate(node.falsePositive[exposure]);
    const alone = beyondBackground(rate(node.sensitivity), falsePositive);
    return {
      takenAway: false,
      background: [falsePositive],
      causes: node.targets.map(({ variable, level }) => ({ variable, level, reach: [alone] })),
    };
  }
  const background = reachOf(node.background, node.grades, read);
  const causes: CauseOfSign[] = node.arrows.map((arrow) => ({
    variable: arrow.variable,
    level: arrow.level,
    reach: reachOf(arrow, node.grades, read),
  }));
  return { takenAway: node.takenAway, background, causes };
}

/** A node's chances at the point values. */
export function pointChances(node: SignNode | TestNode, exposure: Exposure): SignChances {
  return chancesOf(
    node,
    exposure,
    (value) => value.value,
    (rate) => rate.value.value,
  );
}

/**
 * A node's chances drawn from their bands, anew at each call: hundreds of times for one answer. The object handed out is
 * the same each time, overwritten.
 *
 * @param chance the node's own stream
 */
export function drawerOf(node: SignNode | TestNode, exposure: Exposure, chance: Chance): () => SignChances {
  if (node.kind === 'test') {
    const rate = (one: Rate): number => drawRate(one, chance);
    return () => chancesOf(node, exposure, (value) => value.value, rate);
  }
  const drawer = (arrow: Omit<Arrow, 'condition' | 'variable' | 'level'>) => {
    const bands = [arrow.shows, arrow.many, arrow.mostly].slice(0, node.grades).map(logOddsOf);
    const reach = bands.map(() => 0);
    const draw = (): void => {
      let reached = 1;
      for (let g = 0; g < bands.length; g++) {
        reached *= drawFrom(bands[g] as LogOdds, chance);
        reach[g] = reached;
      }
    };
    return { reach, draw };
  };
  const background = drawer(node.background);
  const arrows = node.arrows.map((arrow) => ({ ...drawer(arrow), variable: arrow.variable, level: arrow.level }));
  const chances = { takenAway: node.takenAway, background: background.reach, causes: arrows };
  return () => {
    background.draw();
    for (const arrow of arrows) arrow.draw();
    return chances;
  };
}

/** Every number a node rests on, for saying which are expert bands and where the others come from. */
export function numbersBehind(node: SignNode | TestNode, exposure: Exposure): SourcedValue[] {
  if (node.kind === 'test') return [node.sensitivity.value, node.falsePositive[exposure].value];
  return [node.background.shows, ...node.arrows.map((arrow) => arrow.shows)];
}

/** The sources a node rests on, in order, each once. */
export function sourcesBehind(node: SignNode | TestNode, exposure: Exposure): SourceId[] {
  return [...new Set(numbersBehind(node, exposure).flatMap((value) => value.sources))];
}
