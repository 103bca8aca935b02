import { isDay } from '@combside/calendar/day';
import { checkLook, type Look } from '../brood/look.ts';
import { type DiseaseId, diseases, type HiveState, isSign, type SignId, signOf } from '../signs/catalogue.ts';
import type { MeasuredPattern } from './measured-pattern.ts';
import type { TestId } from './test-figures.ts';
import { testFigures } from './test-figures.ts';

/** By comb: 1-10, 11-100, more than 100 cells. */
export type CountClass = '1-10' | '11-100' | 'over 100';

/** What was answered about one sign. A sign without an answer was not looked for, which says nothing at all. */
export type SignAnswer =
  | { readonly outcome: 'not seen' }
  | {
      readonly outcome: 'seen';
      /** For signs measured in cells; left out when nobody counted. */
      readonly count?: CountClass;
      /** For signs measured by degree; left out when nobody said. */
      readonly amount?: 'slight' | 'marked';
      /** On how many brood frames it was seen. */
      readonly frames?: number;
    };

/** One rope test on one cell. */
export interface RopeTest {
  readonly tissue: 'too fresh' | 'moist brown' | 'part dry' | 'dry scale';
  readonly stick: 'rough and dry' | 'smooth or wet';
  /** Length of the thread when it broke, mm; 0 when none was drawn. */
  readonly threadMillimetres: number;
  readonly snapsBack: boolean | null;
}

/** One test with a result. */
export interface TestResult {
  readonly test: TestId;
  readonly result: 'positive' | 'negative' | 'failed';
  /** Day the result was read, as YYYY-MM-DD. */
  readonly readOn?: string;
  /** Printed on the kit. */
  readonly batch?: string;
  /** Last day of use printed on the kit, as YYYY-MM-DD. A kit read after it does not count. */
  readonly expires?: string;
}

/** Cells affected on one brood frame, the worse of its sides counted together. */
export interface FrameCount {
  readonly frame: string;
  readonly cellsAffected: number;
}

/** Colonies with a confirmed disease among colonies looked at, in the district in this season. */
export interface DistrictCount {
  readonly disease: DiseaseId;
  readonly confirmed: number;
  readonly examined: number;
  /** What was counted, for the reason shown: "spring 2025, district". */
  readonly about: string;
}

/** A prior the inspector set by hand, with the reason. */
export interface PriorChange {
  readonly disease: DiseaseId;
  /** Probability, strictly between 0 and 1. */
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  readonly reason: string;
}

/** What is known before the hive is opened. Where it concerns other keepers, it is shown behind one tap and printed nowhere. */
export interface Circumstances {
  /** Counts of confirmed disease in the district by season. */
  readonly district: readonly DistrictCount[];
  /** American foulbrood confirmed earlier at this apiary. */
  readonly earlierCaseAtApiary: boolean | null;
  /** A contact to a case, found by tracing. */
  readonly contactOfCase: boolean | null;
  /** Spores of American foulbrood found in this operation's honey. */
  readonly honeyPositive: boolean | null;
  /** Whether spores must be expected here anyway: decides what a positive culture of bees means. */
  readonly exposure: 'none known' | 'apiary affected' | 'operation affected' | 'not known';
  /** Days since a medicine that can hide signs; null when not known or never. */
  readonly daysSinceMedicine: number | null;
  /** Days since combs were changed; null when not known or never. */
  readonly daysSinceCombChange: number | null;
  /** For how long the pack in force lets these hide disease, days; null when no pack says. */
  readonly maskingDays: number | null;
  readonly priorChanges: readonly PriorChange[];
}

/** What an earlier look at the same colony left behind. */
export interface EarlierLook {
  readonly daysAgo: number;
  /** Signs of foulbrood were seen, or the colony was suspect. */
  readonly suspect: boolean;
  /** A laboratory answered the suspicion since. */
  readonly answered: 'not yet' | 'positive' | 'negative';
}

/** Everything one examination offers to the reasoning. */
export interface Evidence {
  readonly hive: HiveState;
  readonly look: Look;
  readonly signs: Readonly<Partial<Record<SignId, SignAnswer>>>;
  readonly ropeTests: readonly RopeTest[];
  readonly tests: readonly TestResult[];
  readonly frameCounts: readonly FrameCount[];
  /** The brood pattern as photographs of comb sides show it, where a person accepted the reading. */
  readonly measuredPattern?: MeasuredPattern;
  readonly circumstances: Circumstances;
  readonly earlier: readonly EarlierLook[];
  /** The inspector suspects a notifiable disease, or a pack's rule does. Never set by a probability. */
  readonly suspicionStands: boolean;
}

/** Nothing known, nothing asked. */
export const nothingKnown: Circumstances = {
  district: [],
  earlierCaseAtApiary: null,
  contactOfCase: null,
  honeyPositive: null,
  exposure: 'not known',
  daysSinceMedicine: null,
  daysSinceCombChange: null,
  maskingDays: null,
  priorChanges: [],
};

/**
 * An examination in which nothing but the look and the state of the hive is stated. Spread it and add what was found.
 */
export function emptyEvidence(look: Look, hive: HiveState = 'living'): Evidence {
  return {
    hive,
    look,
    signs: {},
    ropeTests: [],
    tests: [],
    frameCounts: [],
    circumstances: nothingKnown,
    earlier: [],
    suspicionStands: false,
  };
}

function refuse(where: string, found: unknown, wanted: string): never {
  throw new RangeError(`evidence.${where} is ${JSON.stringify(found)}: ${wanted}`);
}

function checkCount(where: string, value: number | null, wanted = 'give a number from 0'): void {
  if (value !== null && !(Number.isFinite(value) && value >= 0)) refuse(where, value, wanted);
}

/**
 * Checks what came from outside before anything is computed from it. A sign the catalogue does not know is the caller's
 * to leave out (it may be written by a newer version); here it is an error.
 *
 * @throws RangeError saying which field, what was found and what is wanted
 */
export function checkEvidence(evidence: Evidence): void {
  checkLook(evidence.look);
  for (const [id, answer] of Object.entries(evidence.signs)) {
    if (!isSign(id)) refuse(`signs["${id}"]`, id, 'no such sign in the catalogue');
    const sign = signOf(id);
    if (answer.outcome !== 'seen' && answer.outcome !== 'not seen') {
      refuse(`signs["${id}"].outcome`, (answer as SignAnswer).outcome, 'give "seen" or "not seen"');
    }
    if (answer.outcome !== 'seen') continue;
    if (answer.count !== undefined && sign.measure !== 'cells') {
      refuse(`signs["${id}"].count`, answer.count, 'this sign is not counted in cells');
    }
    if (answer.count !== undefined && !['1-10', '11-100', 'over 100'].includes(answer.count)) {
      refuse(`signs["${id}"].count`, answer.count, 'give "1-10", "11-100" or "over 100"');
    }
    if (answer.amount !== undefined && sign.measure !== 'degree') {
      refuse(`signs["${id}"].amount`, answer.amount, 'this sign has no degree');
    }
    if (answer.amount !== undefined && !['slight', 'marked'].includes(answer.amount)) {
      refuse(`signs["${id}"].amount`, answer.amount, 'give "slight" or "marked"');
    }
    if (answer.frames !== undefined && !(Number.isInteger(answer.frames) && answer.frames >= 1)) {
      refuse(`signs["${id}"].frames`, answer.frames, 'give a whole number from 1');
    }
  }
  evidence.ropeTests.forEach((rope, i) => {
    if (!(rope.threadMillimetres >= 0 && rope.threadMillimetres <= 300)) {
      refuse(`ropeTests[${i}].threadMillimetres`, rope.threadMillimetres, 'give millimetres from 0 to 300');
    }
  });
  evidence.tests.forEach((test, i) => {
    if (!(test.test in testFigures))
      refuse(`tests[${i}].test`, test.test, 'no such test; see diagnosis/test-figures.ts');
    for (const field of ['readOn', 'expires'] as const) {
      const value = test[field];
      if (value !== undefined && !isDay(value)) refuse(`tests[${i}].${field}`, value, 'give a day as YYYY-MM-DD');
    }
  });
  evidence.frameCounts.forEach((frame, i) => {
    if (!(Number.isInteger(frame.cellsAffected) && frame.cellsAffected >= 0)) {
      refuse(`frameCounts[${i}].cellsAffected`, frame.cellsAffected, 'give a whole number from 0');
    }
  });
  const { measuredPattern } = evidence;
  if (measuredPattern) {
    const { solidness, standardError, sides } = measuredPattern;
    if (!(solidness >= 0 && solidness <= 1)) refuse('measuredPattern.solidness', solidness, 'give a share from 0 to 1');
    if (!(standardError > 0 && standardError <= 1)) {
      refuse(
        'measuredPattern.standardError',
        standardError,
        'no measurement is without error: give more than 0, at most 1',
      );
    }
    if (!(Number.isInteger(sides) && sides >= 1)) {
      refuse('measuredPattern.sides', sides, 'give a whole number from 1');
    }
  }
  const known = evidence.circumstances;
  known.district.forEach((count, i) => {
    const where = `circumstances.district[${i}]`;
    if (!diseases.includes(count.disease))
      refuse(`${where}.disease`, count.disease, 'no such disease in the catalogue');
    if (!(Number.isInteger(count.examined) && count.examined > 0)) {
      refuse(`${where}.examined`, count.examined, 'give a whole number from 1');
    }
    if (!(Number.isInteger(count.confirmed) && count.confirmed >= 0 && count.confirmed <= count.examined)) {
      refuse(`${where}.confirmed`, count.confirmed, 'give a whole number from 0 up to the number examined');
    }
  });
  known.priorChanges.forEach((change, i) => {
    const where = `circumstances.priorChanges[${i}]`;
    if (!diseases.includes(change.disease)) refuse(`${where}.disease`, change.disease, 'no such disease');
    for (const field of ['value', 'low', 'high'] as const) {
      const value = change[field];
      if (value !== undefined && !(value > 0 && value < 1)) {
        refuse(`${where}.${field}`, value, 'a prior lies strictly between 0 and 1: nothing is certain before the look');
      }
    }
    const { low = change.value, high = change.value } = change;
    if (!(low <= change.value && change.value <= high)) refuse(where, change, 'give low <= value <= high');
    if (change.reason.trim() === '') refuse(`${where}.reason`, change.reason, 'say why the prior was changed');
  });
  checkCount('circumstances.daysSinceMedicine', known.daysSinceMedicine);
  checkCount('circumstances.daysSinceCombChange', known.daysSinceCombChange);
  checkCount('circumstances.maskingDays', known.maskingDays);
  evidence.earlier.forEach((look, i) => {
    checkCount(`earlier[${i}].daysAgo`, look.daysAgo);
  });
}
