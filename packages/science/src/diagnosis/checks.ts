import type { SourceId } from '@combside/sources/bibliography';
import type { SourcedValue } from '@combside/sources/sourced-value';
import { combsWereSeen, type Look } from '../brood/look.ts';
import type { SignId } from '../signs/catalogue.ts';
import { signOf } from '../signs/catalogue.ts';
import type { Evidence } from './evidence.ts';
import { readRopeTests } from './sort-evidence.ts';
import { figureOf, type TestId, testIds } from './test-figures.ts';

/** Something that can be looked at with hands and eyes at the hive. */
export type HandCheckId =
  | 'open-cells'
  | 'rope-test'
  | 'scale-search'
  | 'every-frame-shaken'
  | 'look-into-open-cells'
  | 'search-tongue'
  | 'look-for-mites'
  | 'look-at-eggs'
  | 'search-floor';

export type CheckId = HandCheckId | TestId;

/** Why a check cannot be done on what is there. */
export type NotPossible =
  | 'done'
  | 'no-living-brood'
  | 'no-moist-remains'
  | 'no-remains'
  | 'no-sealed-brood'
  | 'no-bees'
  | 'kit-not-at-hand'
  | 'too-far-dried';

export interface Check {
  readonly id: CheckId;
  readonly place: 'hive' | 'laboratory';
  /** Minutes at the hive, or days for a laboratory: a default that settings replace. */
  readonly cost: SourcedValue;
  /** The signs it answers; empty for the rope test and the tests, which are nodes of their own. */
  readonly reveals: readonly SignId[];
  /** How the look becomes by doing it. */
  readonly improves: (look: Look) => Look;
  readonly notPossible: (evidence: Evidence, kits: readonly TestId[]) => NotPossible | null;
  /** Where the way of doing it comes from. */
  readonly sources: readonly SourceId[];
}

const minutes = (value: number): SourcedValue => ({
  value,
  unit: 'minutes',
  standing: 'setting',
  sources: [],
  doubts: 'Our estimate; no published minutes were found.',
});

const same = (look: Look): Look => look;
const atLeastPart = (look: Look): Look => (combsWereSeen(look) ? look : { ...look, depth: 'part' });

const remains: readonly SignId[] = [
  'col.offwhite_yellow',
  'col.coffee',
  'col.grey_black_shiny',
  'age.coiled',
  'age.twisted',
  'age.prepupa',
  'age.pupa',
  'post.head_up',
  'post.melted',
  'con.tracheae',
  'con.watery',
  'con.ropy',
  'con.sac',
];

const scales: readonly SignId[] = ['scale.hard_lower', 'scale.rubbery', 'scale.mouth', 'scale.gondola'];

const seen = (evidence: Evidence, id: SignId): boolean => evidence.signs[id]?.outcome === 'seen';
const someSeen = (evidence: Evidence, ids: readonly SignId[]): boolean => ids.some((id) => seen(evidence, id));
const answered = (evidence: Evidence, ids: readonly SignId[]): boolean => ids.every((id) => evidence.signs[id]);

/** Wet brown remains are there: a brown or slumped body was seen, or a rope test was made on one. */
export function moistRemainsThere(evidence: Evidence): boolean {
  return (
    someSeen(evidence, ['col.coffee', 'post.melted', 'con.ropy']) ||
    evidence.ropeTests.some((rope) => rope.tissue === 'moist brown')
  );
}

function livingBrood(evidence: Evidence): NotPossible | null {
  return evidence.hive === 'living' ? null : 'no-living-brood';
}

/** Opening, unlike looking, needs something sealed. */
const revealedByOpening: readonly SignId[] = [
  'col.coffee',
  'post.melted',
  'con.sac',
  'con.mummy_loose',
  'post.head_up',
];
const revealedByFrames: readonly SignId[] = ['cap.sunken', 'cap.perforated', 'cap.dark_greasy', 'age.coiled'];
const revealedInOpenCells: readonly SignId[] = ['age.coiled', 'age.twisted', 'con.tracheae', 'col.offwhite_yellow'];

const handChecks: readonly Check[] = [
  {
    id: 'rope-test',
    place: 'hive',
    cost: minutes(2),
    reveals: [],
    improves: same,
    notPossible: (evidence) => {
      const { thread, failures } = readRopeTests(evidence.ropeTests);
      if (thread !== null || failures >= 3) return 'done';
      return moistRemainsThere(evidence) ? null : 'no-moist-remains';
    },
    sources: ['NZ-ROPE'],
  },
  {
    id: 'open-cells',
    place: 'hive',
    cost: minutes(4),
    reveals: revealedByOpening,
    improves: (look) => {
      const part = atLeastPart(look);
      const already = part.cellsOpened ?? 0;
      return { ...part, cellsOpened: Math.max(already + 10, Math.min(part.cellsSuspicious ?? 0, already + 30)) };
    },
    notPossible: (evidence) => {
      if (livingBrood(evidence)) return 'no-living-brood';
      if (evidence.look.sealedBroodCombSides === 0) return 'no-sealed-brood';
      const { cellsOpened, cellsSuspicious } = evidence.look;
      const enough = (cellsOpened ?? 0) >= Math.max(10, cellsSuspicious ?? 0);
      return enough && answered(evidence, revealedByOpening) ? 'done' : null;
    },
    sources: ['NZ-FRAMES'],
  },
  {
    id: 'scale-search',
    place: 'hive',
    cost: minutes(5),
    reveals: ['scale.hard_lower', 'scale.rubbery', 'scale.gondola'],
    improves: (look) => ({
      ...atLeastPart(look),
      hold: 'top bar toward the viewer',
      light: 'sun over the shoulder',
      beesShaken: true,
    }),
    notPossible: (evidence) => {
      const { hold, light, beesShaken } = evidence.look;
      const wellHeld =
        hold === 'top bar toward the viewer' && light !== 'poor' && light !== null && beesShaken !== false;
      if (seen(evidence, 'scale.hard_lower')) return 'done';
      return wellHeld && evidence.signs['scale.hard_lower'] ? 'done' : null;
    },
    sources: ['QLD-SIGN'],
  },
  {
    id: 'every-frame-shaken',
    place: 'hive',
    cost: minutes(10),
    reveals: revealedByFrames,
    improves: (look) => ({
      ...look,
      depth: 'full',
      framesSeen: look.framesHeld,
      sides: 'both',
      beesShaken: true,
    }),
    notPossible: (evidence) => {
      if (livingBrood(evidence)) return 'no-living-brood';
      const { depth, framesHeld, framesSeen, beesShaken, sides } = evidence.look;
      const all = depth === 'full' && framesSeen === framesHeld && beesShaken === true && sides === 'both';
      return all && answered(evidence, revealedByFrames) ? 'done' : null;
    },
    sources: ['NZ-FRAMES', 'NZ-SHAKE'],
  },
  {
    id: 'look-into-open-cells',
    place: 'hive',
    cost: minutes(5),
    reveals: revealedInOpenCells,
    improves: (look) => ({ ...atLeastPart(look), beesShaken: true }),
    notPossible: (evidence) => {
      if (livingBrood(evidence)) return 'no-living-brood';
      return answered(evidence, revealedInOpenCells) ? 'done' : null;
    },
    sources: ['NZ-FRAMES'],
  },
  {
    id: 'search-tongue',
    place: 'hive',
    cost: minutes(3),
    reveals: ['tongue'],
    improves: (look) => {
      const part = atLeastPart(look);
      return { ...part, cellsOpened: (part.cellsOpened ?? 0) + 5 };
    },
    notPossible: (evidence) => {
      if (evidence.signs.tongue) return 'done';
      return someSeen(evidence, [...remains, ...scales]) ? null : 'no-remains';
    },
    sources: ['NZ-TONGUE'],
  },
  {
    id: 'look-for-mites',
    place: 'hive',
    cost: minutes(3),
    reveals: ['mites'],
    improves: (look) => (look.depth === 'outside' ? { ...look, depth: 'tops' } : look),
    notPossible: (evidence) => livingBrood(evidence) ?? (evidence.signs.mites ? 'done' : null),
    sources: ['TX-LEAF'],
  },
  {
    id: 'look-at-eggs',
    place: 'hive',
    cost: minutes(3),
    reveals: ['eggs.multi'],
    improves: (look) => ({ ...atLeastPart(look), beesShaken: true }),
    notPossible: (evidence) => livingBrood(evidence) ?? (evidence.signs['eggs.multi'] ? 'done' : null),
    sources: ['NZ-HMS'],
  },
  {
    id: 'search-floor',
    place: 'hive',
    cost: minutes(3),
    reveals: ['floor.mummies'],
    improves: (look) => (look.depth === 'outside' ? { ...look, depth: 'tops' } : look),
    notPossible: (evidence) => {
      if (evidence.hive === 'stored combs') return 'no-living-brood';
      return evidence.signs['floor.mummies'] ? 'done' : null;
    },
    sources: ['BB-FUN-1.2'],
  },
];

function testCheck(id: TestId): Check {
  const figure = figureOf(id);
  return {
    id,
    place: figure.place,
    cost: figure.cost,
    reveals: [],
    improves: same,
    notPossible: (evidence, kits) => {
      if (evidence.tests.some((test) => test.test === id && test.result !== 'failed')) return 'done';
      if (figure.place === 'hive' && !kits.includes(id)) return 'kit-not-at-hand';
      switch (figure.material) {
        case 'diseased cell':
          if (someSeen(evidence, remains)) return null;
          // A dry scale carries spores for a laboratory; a kit at the hive wants a body.
          if (!someSeen(evidence, scales)) return 'no-remains';
          return figure.place === 'laboratory' ? null : 'too-far-dried';
        case 'scale or smear':
          return someSeen(evidence, [...remains, ...scales]) ? null : 'no-remains';
        case 'bees':
          return evidence.hive === 'living' ? null : 'no-bees';
        default:
          return null;
      }
    },
    sources: figure.cost.sources,
  };
}

/** Every check there is, at the hive and in the laboratory. */
export const checks: readonly Check[] = [...handChecks, ...testIds.map(testCheck)];

/** The signs of a check that this evidence leaves open: not answered, or not seen by a look that this one improves. */
export function openSigns(check: Check, evidence: Evidence): SignId[] {
  return check.reveals.filter((sign) => {
    if (!signOf(sign).askedIn.includes(evidence.hive)) return false;
    return evidence.signs[sign]?.outcome !== 'seen';
  });
}
