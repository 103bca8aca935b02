import { combsWereSeen, type Look } from '../brood/look.ts';
import {
  chanceNothingShown,
  type Eye,
  framesLookedAt,
  noticeChance,
  type Place,
  sealedBroodShare,
} from '../brood/what-a-look-shows.ts';
import type { Chance } from '../random/seeded.ts';
import { type SignId, signOf, signs } from '../signs/catalogue.ts';
import { drawProbability } from './bands.ts';
import type { Evidence, RopeTest } from './evidence.ts';
import type { Observation } from './inference.ts';
import { patternLikelihood, speaksForCompact } from './measured-pattern.ts';
import type { Network, NodeId } from './network.ts';
import { type TestId, testIds } from './test-figures.ts';

/** One piece of evidence that counts. */
export interface EvidenceItem {
  readonly node: NodeId;
  /** Place of the node in the network: items stand in this order, whatever the order of entry. */
  readonly index: number;
  /** A number or `seen`; for a measurement the likelihood of each grade at the point values of its bands. */
  readonly grade: Observation['grade'];
  /** For a measurement: the likelihood with its bands drawn. */
  readonly drawnGrade?: (chance: Chance) => readonly number[];
  /** The chance of noticing each grade, for a given eye. */
  readonly noticed: (eye: Eye) => readonly number[];
  /** True when it was looked for on combs: then it shares the luck of the look with the others (see `posterior.ts`). */
  readonly onCombs: boolean;
}

/** Why something that was entered does not count. */
export type WhySilent =
  | 'not-asked-in-this-hive'
  | 'masked'
  | 'view-hides-it'
  | 'pattern-counted-once'
  | 'odour-counted-once'
  | 'bees-uncap-diseased-brood'
  | 'scale-does-not-rope'
  | 'tissue-does-not-rope'
  | 'poor-stick'
  | 'does-not-snap-back'
  | 'rope-test-says-it'
  | 'kit-expired'
  | 'test-failed'
  | 'test-counted-once'
  | 'photograph-beside-the-eye'
  | 'photograph-masked'
  | 'photograph-without-look';

export interface SilentEvidence {
  readonly node: NodeId;
  readonly why: WhySilent;
}

export interface SortedEvidence {
  readonly items: readonly EvidenceItem[];
  readonly silent: readonly SilentEvidence[];
}

/** Cells that stand for a count class: our setting, inside 1-10, 11-100 and more than 100. */
export const cellsOfGrade = [3, 30, 200] as const;

/** What was seen was seen, however poor the look: the chance of noticing it is never taken as nothing. */
export const leastForSeen = 0.02;

const capsThatBeesRemove: readonly SignId[] = [
  'cap.sunken',
  'cap.dark_greasy',
  'cap.perforated',
  'cap.flattened',
  'cap.late_unemerged',
];
const deadRemains: readonly SignId[] = ['col.coffee', 'post.melted', 'con.ropy', 'tongue', 'scale.hard_lower'];
const odourKinds: readonly SignId[] = ['odour.glue', 'odour.sour'];

/** Thread of this length or more is a positive rope test, mm (NZ-ROPE: under 10 mm is not). */
export const ropeThreshold = 10;
/** Up to this length European foulbrood with secondary bacteria may thread too, mm (DOR-EFB, NZ-EFB). */
export const ropeOverlap = 20;

/** Signs of the hive that show at the entrance or on the landing board, without opening it. */
const seenFromOutside: readonly SignId[] = ['floor.mummies'];

/**
 * The chance that this look notices a sign of each grade, when it is there.
 *
 * @returns one number per grade; all 0 when the look cannot show the sign
 */
export function noticedBy(sign: SignId, look: Look, eye: Eye): readonly number[] {
  const { place, measure } = signOf(sign);
  if (place === 'hive') {
    const opened = look.depth !== 'outside' && look.depth !== 'laboratory only';
    const outside = look.depth === 'outside' && seenFromOutside.includes(sign) ? eye.outside : 0;
    const eyeOrNose = sign.startsWith('odour.') ? eye.nose : eye.openHive;
    const chance = opened ? eyeOrNose : outside;
    // A slight smell or a few mites are met less often than marked ones.
    return measure === 'degree' ? [chance * 0.7, chance] : [chance];
  }
  if (measure !== 'cells') {
    if (!combsWereSeen(look)) return measure === 'degree' ? [0, 0] : [0];
    // A pattern is seen on the whole face, not cell by cell: what limits it is the frames seen and what hides the comb.
    const face = noticeChance('comb face', { ...look, sides: 'both' }, eye) / eye.cell;
    const chance = Math.min(1, framesLookedAt(look, eye).share) * face;
    return measure === 'degree' ? [0.6 * chance, 0.95 * chance] : [0.9 * chance];
  }
  const kept = noticedInCells.get(eye);
  const table = kept?.look === look ? kept : { look, places: new Map<Place, number[]>() };
  if (table !== kept) noticedInCells.set(eye, table);
  let noticed = table.places.get(place);
  if (!noticed) {
    const sealed = place === 'comb face' || place === 'capped cells' ? sealedBroodShare(look) : 1;
    noticed = cellsOfGrade.map((cells) => 1 - chanceNothingShown(cells * sealed, place, look, eye));
    table.places.set(place, noticed);
  }
  return noticed;
}

/** What an eye notices in cells depends on the place alone, so thirty signs of one look share four answers. */
const noticedInCells = new WeakMap<Eye, { readonly look: Look; readonly places: Map<Place, number[]> }>();

/** True when a pack's masking period after a medicine or a change of combs is still running. */
export function isMasked(evidence: Evidence): boolean {
  const { daysSinceMedicine, daysSinceCombChange, maskingDays } = evidence.circumstances;
  if (maskingDays === null) return false;
  const running = (since: number | null): boolean => since !== null && since < maskingDays;
  return running(daysSinceMedicine) || running(daysSinceCombChange);
}

/** What the rope tests of one colony come to. */
export interface RopeReading {
  /** Longest thread of 10 mm or more that did not fail to snap back, mm; null when none. */
  readonly thread: number | null;
  /** Tests that could have threaded and did not: moist brown remains, rough dry stick. */
  readonly failures: number;
  /** A stick that does not hold was used, whatever came of it: to be repeated with a rough dry one. */
  readonly poorStick: boolean;
  /** Why the others say nothing. */
  readonly silent: readonly WhySilent[];
}

/**
 * Reads rope tests. A thread counts whatever the stick, since a poor stick hides threads and does not make them; its
 * absence counts only from moist brown remains on a rough dry stick (NZ-ROPE).
 */
export function readRopeTests(ropes: readonly RopeTest[]): RopeReading {
  let thread: number | null = null;
  let failures = 0;
  const silent: WhySilent[] = [];
  for (const rope of ropes) {
    if (rope.threadMillimetres >= ropeThreshold) {
      if (rope.snapsBack === false) silent.push('does-not-snap-back');
      else thread = Math.max(thread ?? 0, rope.threadMillimetres);
    } else if (rope.tissue === 'dry scale') silent.push('scale-does-not-rope');
    else if (rope.tissue !== 'moist brown') silent.push('tissue-does-not-rope');
    else if (rope.stick !== 'rough and dry') silent.push('poor-stick');
    else failures++;
  }
  return { thread, failures, poorStick: ropes.some((rope) => rope.stick === 'smooth or wet'), silent };
}

function gradeOf(answer: { readonly count?: string; readonly amount?: string }, measure: string): number | 'seen' {
  if (measure === 'none') return 1;
  const word = measure === 'cells' ? answer.count : answer.amount;
  if (word === undefined) return 'seen';
  return { '1-10': 1, '11-100': 2, 'over 100': 3, slight: 1, marked: 2 }[word] ?? 'seen';
}

/**
 * Sorts what was entered into evidence that counts and what stays silent, with the reason.
 *
 * - A sign without an answer was not looked for and appears in neither.
 * - "Not seen" counts as far as this look could have shown the sign; where it could not, it is silent.
 * - What follows from another answer is counted once.
 */
export function sortEvidence(network: Network, evidence: Evidence): SortedEvidence {
  const items: EvidenceItem[] = [];
  const silent: SilentEvidence[] = [];
  const indexOf = new Map(network.nodes.map((node, index) => [node.id, index]));
  const { look } = evidence;
  const answered = evidence.signs;
  const seen = (sign: SignId): boolean => answered[sign]?.outcome === 'seen';
  const masked = isMasked(evidence);
  const rope = readRopeTests(evidence.ropeTests);
  const ropeCounts = rope.thread !== null || (rope.failures > 0 && !seen('con.ropy') && !seen('scale.hard_lower'));
  const remainsSeen = deadRemains.some(seen) || rope.thread !== null;

  const whyNotSeenSaysNothing = (sign: SignId): WhySilent | null => {
    if (!signOf(sign).askedIn.includes(evidence.hive)) return 'not-asked-in-this-hive';
    if (masked) return 'masked';
    if (remainsSeen && capsThatBeesRemove.includes(sign)) return 'bees-uncap-diseased-brood';
    if (sign === 'con.ropy' && seen('scale.hard_lower')) return 'scale-does-not-rope';
    return null;
  };
  const whyCountedOnce = (sign: SignId): WhySilent | null => {
    if (sign === 'con.ropy' && ropeCounts) return 'rope-test-says-it';
    if (sign === 'pattern.compact' && answered['pattern.spotty']) return 'pattern-counted-once';
    if (sign === 'odour.any' && odourKinds.some(seen)) return 'odour-counted-once';
    return null;
  };

  for (const { id, measure, place } of signs) {
    const answer = answered[id];
    if (!answer) continue;
    const why = whyCountedOnce(id) ?? (answer.outcome === 'not seen' ? whyNotSeenSaysNothing(id) : null);
    if (why !== null) {
      silent.push({ node: id, why });
      continue;
    }
    const index = indexOf.get(id);
    if (index === undefined) continue;
    if (answer.outcome === 'seen') {
      items.push({
        node: id,
        index,
        grade: gradeOf(answer, measure),
        noticed: (eye) => noticedBy(id, look, eye).map((chance) => Math.max(chance, leastForSeen)),
        onCombs: place !== 'hive',
      });
      continue;
    }
    const noticed = (eye: Eye): readonly number[] => noticedBy(id, look, eye);
    if (cannotShow(id, look)) silent.push({ node: id, why: 'view-hides-it' });
    else items.push({ node: id, index, grade: 0, noticed, onCombs: place !== 'hive' });
  }

  const ropeIndex = indexOf.get('rope-test');
  if (ropeIndex !== undefined && evidence.ropeTests.length > 0) {
    if (rope.thread !== null) {
      const grade = rope.thread > ropeOverlap ? 2 : 1;
      items.push({ node: 'rope-test', index: ropeIndex, grade, noticed: () => [1, 1], onCombs: false });
    } else if (ropeCounts) {
      const cells = rope.failures;
      items.push({
        node: 'rope-test',
        index: ropeIndex,
        grade: 0,
        noticed: (eye) => {
          const chance = 1 - (1 - eye.ropeInOneCell) ** cells;
          return [chance, chance];
        },
        onCombs: false,
      });
    } else if (rope.failures > 0) {
      silent.push({ node: 'rope-test', why: seen('scale.hard_lower') ? 'scale-does-not-rope' : 'rope-test-says-it' });
    }
    for (const why of new Set(rope.silent)) silent.push({ node: 'rope-test', why });
  }

  for (const test of testIds) {
    const results = evidence.tests.filter((one) => one.test === test);
    const valid = results.filter((one) => {
      if (one.result === 'failed') silent.push({ node: test, why: 'test-failed' });
      else if (isExpired(one)) silent.push({ node: test, why: 'kit-expired' });
      else return true;
      return false;
    });
    const index = indexOf.get(test);
    if (valid.length === 0 || index === undefined) continue;
    // Repeats on one colony share their errors: a positive counts once, else a negative counts once.
    for (let i = 1; i < valid.length; i++) silent.push({ node: test, why: 'test-counted-once' });
    const grade = valid.some((one) => one.result === 'positive') ? 1 : 0;
    items.push({ node: test, index, grade, noticed: () => [1], onCombs: false });
  }

  const { measuredPattern } = evidence;
  const patternIndex = indexOf.get('pattern-measured');
  if (measuredPattern && patternIndex !== undefined) {
    const why = whyPhotographSaysNothing(evidence);
    if (why !== null) silent.push({ node: 'pattern-measured', why });
    else {
      items.push({
        node: 'pattern-measured',
        index: patternIndex,
        grade: patternLikelihood(measuredPattern),
        drawnGrade: (chance) => patternLikelihood(measuredPattern, (value) => drawProbability(value, chance)),
        noticed: (eye) => noticedBy('pattern.spotty', look, eye),
        onCombs: true,
      });
    }
  }

  items.sort((a, b) => a.index - b.index);
  return { items, silent };
}

/**
 * A photograph shows a few sides, the eye saw every comb that was lifted: what a person said of the pattern counts, and
 * the photograph is silent. Nor does it count as a look of its own: it shows no more than the look could.
 */
function whyPhotographSaysNothing(evidence: Evidence): WhySilent | null {
  const { measuredPattern, signs: said, hive, look } = evidence;
  if (!signOf('pattern.spotty').askedIn.includes(hive)) return 'not-asked-in-this-hive';
  if (said['pattern.spotty'] || said['pattern.compact']) return 'photograph-beside-the-eye';
  if (cannotShow('pattern.spotty', look)) return 'photograph-without-look';
  if (measuredPattern && isMasked(evidence) && speaksForCompact(measuredPattern)) return 'photograph-masked';
  return null;
}

/** True when the look cannot show the sign at all, whatever the eye. */
function cannotShow(sign: SignId, look: Look): boolean {
  return noticedBy(sign, look, bestEye).every((chance) => chance === 0);
}

/** The eye that misses nothing it could see. Only for asking whether a look can show a sign at all. */
const bestEye: Eye = {
  cell: 0.999,
  beesLeftOn: 0.999,
  shakingNotSaid: 0.999,
  poorLight: 0.999,
  shade: 0.999,
  poorLightOnScale: 0.999,
  shadeOnScale: 0.999,
  lightNotSaid: 0.999,
  lightNotSaidOnScale: 0.999,
  heldFlat: 0.999,
  holdNotSaid: 0.999,
  uncappedByBees: 0.999,
  openedCell: 0.999,
  ropeInOneCell: 0.999,
  nose: 0.999,
  openHive: 0.999,
  outside: 0.999,
  lapse: 0.001,
  partNotSaid: 0.999,
};

function isExpired(test: { readonly test: TestId; readonly readOn?: string; readonly expires?: string }): boolean {
  return test.expires !== undefined && test.readOn !== undefined && test.readOn > test.expires;
}
