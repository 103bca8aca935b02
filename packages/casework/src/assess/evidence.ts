import { dayOf, daysBetween } from '@combside/calendar/instant';
import type { Span } from '@combside/calendar/span';
import type { Pack } from '@combside/law/pack';
import type { CircumstancesKnown, PriorChanged } from '@combside/record/kinds/assessment';
import type { ExaminationBody } from '@combside/record/kinds/examination';
import type { ColonyState } from '@combside/record/states';
import type { Look } from '@combside/science/brood/look';
import {
  type Circumstances,
  type EarlierLook,
  type Evidence,
  type FrameCount,
  nothingKnown,
  type SignAnswer,
  type TestResult,
} from '@combside/science/diagnosis/evidence';
import { type TestId, testFigures } from '@combside/science/diagnosis/test-figures';
import { type DiseaseId, diseases, isSign, type SignId } from '@combside/science/signs/catalogue';
import { readingEvidence, sealedSidesMeasured } from '../comb/reading-evidence.ts';
import { saysSuspect } from '../result/results-by-gravity.ts';

/** What is known besides the examination: the colony's own past, the pack in force, and what tracing and counts say. */
export interface Setting {
  /** The colony's record; examinations and assessments made before this one count as earlier looks. */
  readonly colony: ColonyState | null;
  readonly pack: Pack;
  /** What the register, tracing and the district's counts know (`circumstances.ts`). Left out or null: nothing is known. */
  readonly known?: CircumstancesKnown | null;
  /** What the inspector changed of the priors, with reasons. */
  readonly priorChanges?: readonly PriorChanged[];
  readonly suspicionStands: boolean;
  /** The visit whose readings of comb photographs count; that of the examination when left out. */
  readonly visit?: string;
}

/**
 * An examination as evidence for the reasoning. Nothing is added: what was not stated stays unsaid, and a sign, a test or
 * a condition that this program does not know (written by a newer version) is set aside and named.
 */
export function evidenceFrom(
  examination: ExaminationBody,
  setting: Setting,
): {
  readonly evidence: Evidence;
  readonly setAside: readonly string[];
  /** Entries of the accepted readings of comb photographs among the evidence. */
  readonly combReadings: readonly string[];
} {
  const signs: Partial<Record<SignId, SignAnswer>> = {};
  const setAside: string[] = [];
  for (const looked of examination.signs) {
    if (!isSign(looked.sign)) {
      setAside.push(looked.sign);
      continue;
    }
    if (looked.outcome === 'not seen') {
      signs[looked.sign] = { outcome: 'not seen' };
      continue;
    }
    const frames = new Set(
      looked.places
        .filter((one) => one.frame !== null && one.cellsAffected !== 0)
        .map((one) => `${one.box}/${one.frame}`),
    ).size;
    signs[looked.sign] = {
      outcome: 'seen',
      ...(looked.count === null ? {} : { count: looked.count }),
      ...(looked.amount === null ? {} : { amount: looked.amount }),
      ...(frames === 0 ? {} : { frames }),
    };
  }
  const read = setting.colony ? readingEvidence(setting.colony, setting.visit ?? examination.visit) : null;
  const look = lookOf(examination);
  return {
    evidence: {
      hive: examination.hiveState,
      look:
        read && look.sealedBroodCombSides === null
          ? { ...look, sealedBroodCombSides: sealedSidesMeasured(read, sidesLifted(examination)) }
          : look,
      ...(read?.pattern ? { measuredPattern: read.pattern } : {}),
      signs,
      ropeTests: examination.ropeTests.map((one) => ({
        tissue: one.tissue,
        stick: one.stick,
        threadMillimetres: one.threadMillimetres,
        snapsBack: one.snapsBack,
      })),
      tests: testsOf(examination, setAside),
      frameCounts: frameCountsOf(examination),
      circumstances: {
        ...nothingKnown,
        ...knownOf(setting, setAside),
        daysSinceMedicine: daysSince(examination.medicines, examination.observedAt),
        daysSinceCombChange: daysSince(examination.combChanges, examination.observedAt),
        maskingDays: maskingDays(setting.pack),
      },
      earlier: earlierLooks(setting.colony, examination),
      suspicionStands: setting.suspicionStands,
    },
    setAside,
    combReadings: read?.readings ?? [],
  };
}

function testsOf(examination: ExaminationBody, setAside: string[]): TestResult[] {
  return examination.tests.flatMap((one) => {
    if (!Object.hasOwn(testFigures, one.test)) {
      setAside.push(one.test);
      return [];
    }
    return {
      test: one.test as TestId,
      result: one.result,
      readOn: one.readOn ?? dayOf(examination.observedAt),
      ...(one.batch === '' ? {} : { batch: one.batch }),
      ...(one.expires === null ? {} : { expires: one.expires }),
    };
  });
}

function knownOf(setting: Setting, setAside: string[]): Partial<Circumstances> {
  const isKnown = (condition: string): condition is DiseaseId => {
    const found = (diseases as readonly string[]).includes(condition);
    if (!found) setAside.push(condition);
    return found;
  };
  const { known, priorChanges = [] } = setting;
  return {
    ...(known
      ? {
          ...known,
          district: known.district.flatMap(({ condition, ...count }) =>
            isKnown(condition) ? { disease: condition, ...count } : [],
          ),
        }
      : {}),
    priorChanges: priorChanges.flatMap((one) =>
      isKnown(one.condition)
        ? {
            disease: one.condition,
            value: one.value,
            ...(one.low === null ? {} : { low: one.low }),
            ...(one.high === null ? {} : { high: one.high }),
            reason: one.reason,
          }
        : [],
    ),
  };
}

/** Comb sides of all frames that were lifted. */
function sidesLifted(examination: ExaminationBody): number {
  return examination.boxes.reduce((sum, one) => sum + one.framesSeen * (one.sides === 'both' ? 2 : 1), 0);
}

/** How the colony was looked at, over all its boxes. One-sided anywhere counts as one-sided. */
export function lookOf(examination: ExaminationBody): Look {
  const lifted = examination.depth === 'full' || examination.depth === 'part';
  const seenBoxes = examination.boxes.filter((one) => one.framesSeen > 0);
  const held = examination.boxes.reduce((sum, one) => sum + one.framesHeld, 0);
  const framesSeen = examination.boxes.reduce((sum, one) => sum + one.framesSeen, 0);
  return {
    depth: examination.depth,
    framesHeld: examination.boxes.length === 0 ? null : held,
    framesSeen: lifted ? framesSeen : 0,
    sides: seenBoxes.length === 0 ? null : seenBoxes.every((one) => one.sides === 'both') ? 'both' : 'one',
    beesShaken: examination.beesShaken,
    light: examination.light,
    hold: examination.hold,
    cellsOpened: cellsOpenedIn(examination),
    cellsSuspicious: null,
    sealedBroodCombSides: examination.sealedBroodCombSides,
  };
}

/** Cells opened in all; two signs told of the same place are the same cells, so each place counts its larger number. */
function cellsOpenedIn(examination: ExaminationBody): number | null {
  const byPlace = new Map<string, number>();
  for (const looked of examination.signs) {
    for (const one of looked.places) {
      if (one.cellsOpened === null) continue;
      const place = `${one.box}/${one.frame ?? ''}/${one.side ?? ''}`;
      byPlace.set(place, Math.max(byPlace.get(place) ?? 0, one.cellsOpened));
    }
  }
  return byPlace.size === 0 ? null : [...byPlace.values()].reduce((sum, cells) => sum + cells, 0);
}

/**
 * Cells affected by frame: on each side the sign with most cells, the two sides added. As soon as one frame was counted,
 * the other frames looked at stand beside it with none, since the comb score is a mean over every brood frame.
 */
export function frameCountsOf(examination: ExaminationBody): FrameCount[] {
  const sides = new Map<string, Map<string, number>>();
  for (const looked of examination.signs) {
    if (looked.outcome !== 'seen') continue;
    for (const one of looked.places) {
      if (one.frame === null || one.cellsAffected === null) continue;
      const frame = `${one.box}/${one.frame}`;
      const bySide = sides.get(frame) ?? new Map<string, number>();
      const side = one.side ?? '';
      bySide.set(side, Math.max(bySide.get(side) ?? 0, one.cellsAffected));
      sides.set(frame, bySide);
    }
  }
  if (sides.size === 0) return [];
  const counted = [...sides.entries()]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([frame, bySide]) => ({ frame, cellsAffected: [...bySide.values()].reduce((sum, cells) => sum + cells, 0) }));
  const others = examination.boxes.flatMap((box) => {
    const told = counted.filter((one) => one.frame.startsWith(`${box.box}/`)).length;
    const rest = Math.max(0, box.framesSeen - told);
    return Array.from({ length: rest }, (_, index) => ({ frame: `${box.box}/other ${index + 1}`, cellsAffected: 0 }));
  });
  return [...counted, ...others];
}

/** Days since the last time; an answer "yes" without a date counts as today, since nobody can say that it was earlier. */
function daysSince(asked: ExaminationBody['medicines'], observedAt: string): number | null {
  if (asked.answer !== 'yes') return null;
  return asked.lastOn === null ? 0 : Math.max(0, daysBetween(asked.lastOn, observedAt));
}

/** The longest masking period the pack is sure of, in days; null when it has none. */
function maskingDays(pack: Pack): number | null {
  const periods = pack.masking.filter((one) => one.standing !== 'from memory').map((one) => daysIn(one.period));
  return periods.length === 0 ? null : Math.max(...periods);
}

function daysIn(span: Span): number {
  const days = { hours: 1 / 24, days: 1, weeks: 7, months: 31, years: 366 };
  return Math.ceil(span.count * days[span.unit]);
}

/**
 * Looks before this one that left a suspicion behind, newest first; a look that left none says nothing here. No
 * laboratory answers are written down yet in this version of the record.
 */
function earlierLooks(colony: ColonyState | null, examination: ExaminationBody): EarlierLook[] {
  if (!colony) return [];
  return colony.examinations
    .filter((one) => one.body.observedAt < examination.observedAt)
    .filter((one) =>
      colony.assessments.some((made) => made.body.examination === one.written.entry && saysSuspect(made.body.result)),
    )
    .map((one) => ({
      daysAgo: daysBetween(one.body.observedAt, examination.observedAt),
      suspect: true,
      answered: 'not yet' as const,
    }));
}
