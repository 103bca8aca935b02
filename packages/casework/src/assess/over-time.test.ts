import { loadPack } from '@combside/law/load-pack';
import type { ExaminationBody } from '@combside/record/kinds/examination';
import { lengthenedWindow } from '@combside/science/diagnosis/time-since-onset';
import { beforeEach, describe, expect, test } from 'vitest';
import { arrival, type SmallSite, smallSite, startAt } from '../acceptance/small-site.ts';
import type { Tap } from '../draft/tap.ts';
import { type CloseColony, closeColony } from '../examine/close-colony.ts';
import { contactWindowDays } from './circumstances.ts';
import { dutiesOwed } from './duties-owed.ts';
import { wholeReasoning } from './whole-reasoning.ts';

const pack = await loadPack('quillmoor');
const first = '2027-05-04T09:30:00.000Z';
const secondStart = '2027-06-01T09:00:00.000Z';
const second = '2027-06-01T09:30:00.000Z';

const all: Tap = { tap: 'everything looked at' };
const seen = (sign: string): Tap => ({ tap: 'sign', sign, outcome: 'seen' });
const cells = (sign: string, frame: number, cellsAffected: number): Tap => ({
  tap: 'cells at',
  sign,
  place: { box: 'lower', frame, side: 'a' },
  cellsOpened: null,
  cellsAffected,
});

let site: SmallSite;
let visits: string[];
beforeEach(() => {
  site = smallSite();
  visits = [site.newId(), site.newId()];
  site.carryOut(startAt(site, visits[0] as string), arrival);
  site.carryOut(startAt(site, visits[1] as string, { startedAt: secondStart }), secondStart);
});

function close(visit: 0 | 1, change: Partial<CloseColony>) {
  const observedAt = visit === 0 ? first : second;
  const act = closeColony({
    taps: [],
    colony: site.ledger.colony(site.colonies[0]),
    visit: site.ledger.visit(visits[visit] as string),
    pack,
    closing: 'nothing seen',
    suspected: [],
    observedAt,
    examinationId: site.newId(),
    ...change,
  });
  return site.carryOut(act, observedAt);
}

const suspectAtFirst = () =>
  close(0, {
    taps: [seen('cap.sunken'), cells('cap.sunken', 2, 4), cells('cap.sunken', 3, 30), all],
    closing: 'signs seen',
    suspected: ['american-foulbrood'],
  });

function reasoningOn(examination: ExaminationBody, entry: string | null, now = second) {
  return wholeReasoning({
    examination,
    entry,
    colony: site.ledger.colony(site.colonies[0]),
    pack,
    known: null,
    priorChanges: [],
    suspectedByInspector: [],
    now,
  });
}

describe('a second visit', () => {
  test('signs that are gone do not lift a suspicion, and a specimen is still asked for [NZ-INF]', () => {
    suspectAtFirst();
    const { assessed } = close(1, {});
    expect(assessed.result).toBe('remains suspect');
    expect(assessed.suspicion).toBeNull();
    expect(assessed.reasoning.states.map((one) => one.id)).toContain('remains-suspect');
    expect(assessed.reasoning.advice.map((one) => one.id)).toContain('specimen-though-signs-gone');
    const foulbrood = assessed.reasoning.diseases.find((one) => one.disease === 'american-foulbrood');
    expect(foulbrood?.priorSteps.map((one) => one.id)).toContain('earlier-suspicion');
    // What was owed since the first look is owed still.
    const owed = dutiesOwed([site.ledger.colony(site.colonies[0])], pack, second);
    expect(owed.filter((one) => one.duty === 'notify' && one.state !== 'met' && one.state !== 'ended')).not.toEqual([]);
    expect(site.ledger.colony(site.colonies[0]).assessments[0]?.body.suspected).toEqual(['american-foulbrood']);
  });

  test('a cause that explains the signs keeps the question open and sets a day to look again', () => {
    const mummies = ['con.mummy_loose', 'floor.mummies', 'con.fluff'].map(seen);
    const { assessed, findings } = close(0, { taps: [...mummies, all], closing: 'signs seen' });
    expect(assessed.result).toBe('signs seen');
    expect(assessed.reasoning.diseases[0]?.disease).toBe('chalkbrood');
    expect(assessed.reasoning.advice.map((one) => one.id)).toContain('question-stays-open');
    expect(findings.map((one) => one.id)).toContain('casework.examined.other-cause-keeps-question-open');
    const recheck = dutiesOwed([site.ledger.colony(site.colonies[0])], pack, first).filter(
      (one) => one.duty === 'look again',
    );
    // Once, though two diseases are notifiable here; and it names neither.
    expect(recheck.map((one) => [one.rule, one.condition])).toEqual([['look-again-after-other-cause', null]]);
    expect(recheck[0]?.due, 'a day is set').not.toBeNull();
    // What stays after one of them was suspected is still owed for the other.
    close(1, { taps: [seen('scale.hard_lower'), all], closing: 'signs seen', suspected: ['american-foulbrood'] });
    const after = dutiesOwed([site.ledger.colony(site.colonies[0])], pack, second);
    const states = after.filter((one) => one.duty === 'look again').map((one) => [one.condition, one.state]);
    expect(states).toEqual([
      ['european-foulbrood', 'open'],
      ['american-foulbrood', 'ended'],
    ]);
  });

  test('a look is weighed as things stood then: what came later does not count', () => {
    close(0, { taps: [seen('cap.sunken'), all], closing: 'signs seen' });
    const [earlier] = site.ledger.colony(site.colonies[0]).examinations;
    if (!earlier) throw new Error('no examination');
    const then = reasoningOn(earlier.body, earlier.written.entry, first);
    close(1, { taps: [seen('scale.hard_lower'), all], closing: 'signs seen', suspected: ['american-foulbrood'] });
    expect(reasoningOn(earlier.body, earlier.written.entry, first)).toEqual(then);
    expect(then.assessed.result).toBe('signs seen');
  });
});

describe('tests with no sign', () => {
  const examined = (change: Partial<ExaminationBody>): ExaminationBody => {
    close(0, {});
    const [one] = site.ledger.colony(site.colonies[0]).examinations;
    if (!one) throw new Error('no examination');
    return { ...one.body, ...change };
  };

  test('a positive culture of bees with no sign is a state of its own: contaminated, not clinical [LF05]', () => {
    const body = examined({
      tests: [
        {
          test: 'culture-bees-afb',
          material: 'bees',
          result: 'positive',
          readOn: '2027-05-11',
          batch: '',
          expires: null,
        },
      ],
    });
    const { reasoning, result } = reasoningOn(body, null).assessed;
    expect(result).toBe('nothing seen with this look');
    expect(reasoning.states[0]?.id).toBe('contaminated-not-clinical');
    expect(reasoning.advice.map((one) => one.id)).toContain('look-again-contaminated');
  });

  test('a kit past its last day is kept, set aside with why, and makes no sign of trouble', () => {
    const kit = {
      test: 'lateral-flow-afb',
      material: 'diseased cell',
      result: 'positive' as const,
      readOn: '2027-05-04',
      batch: 'INV-1',
      expires: '2027-05-03',
    };
    const body = examined({});
    const expired = reasoningOn({ ...body, tests: [kit] }, null).assessed;
    expect(expired.reasoning.reasons.silent.map((one) => one.why)).toContain('kit-expired');
    expect(expired.result).toBe('nothing seen with this look');
    const inDate = reasoningOn({ ...body, tests: [{ ...kit, expires: '2027-05-04' }] }, null).assessed;
    expect(inDate.result).toBe('signs seen');
    expect(inDate.reasoning.reasons.reasons.some((one) => one.node === 'lateral-flow-afb')).toBe(true);
  });

  test('a test of a newer version is set aside and named', () => {
    const stranger = { test: 'breath-test', material: 'bees', readOn: null, batch: '', expires: null };
    const { assessed } = reasoningOn(examined({ tests: [{ ...stranger, result: 'positive' }] }), null);
    expect(assessed.setAside).toContain('breath-test');
  });
});

describe('how bad and for how long', () => {
  test('the comb score is kept over the visits, oldest first (BB-AFB-4.3.1: 4 cells score 1, 30 score 2)', () => {
    suspectAtFirst();
    close(1, { taps: [seen('cap.sunken'), cells('cap.sunken', 2, 120), all], closing: 'signs seen' });
    const [latest] = site.ledger.colony(site.colonies[0]).examinations;
    if (!latest) throw new Error('no examination');
    const { severities } = reasoningOn(latest.body, latest.written.entry);
    expect(severities.map((one) => [one.observedAt, one.severity.sum, one.severity.frames.length])).toEqual([
      [first, 1 + 2, 9],
      [second, 3, 9],
    ]);
    expect(severities[0]?.severity.mean).toBeCloseTo(3 / 9, 12);
  });

  test('what the comb says of the onset may lengthen a tracing window, never shorten one', () => {
    suspectAtFirst();
    const [one] = site.ledger.colony(site.colonies[0]).examinations;
    if (!one) throw new Error('no examination');
    const onset = reasoningOn(one.body, one.written.entry).assessed.reasoning.timeSinceOnset;
    expect(onset?.atMostDays).toBeNull();
    expect(lengthenedWindow(contactWindowDays, onset)).toBe(contactWindowDays);
    expect(lengthenedWindow(0, onset)).toBeGreaterThanOrEqual(onset?.atLeastDays as number);
  });
});

describe('what the law says follows', () => {
  test('of a look not suspected, what a suspicion would ask is shown apart and not owed', () => {
    close(0, { taps: [seen('cap.sunken'), seen('col.coffee'), all], closing: 'signs seen' });
    const [one] = site.ledger.colony(site.colonies[0]).examinations;
    if (!one) throw new Error('no examination');
    const whole = reasoningOn(one.body, one.written.entry, first);
    expect(whole.owed.some((duty) => duty.duty === 'notify')).toBe(false);
    expect(whole.wouldFollow?.condition).toBe('american-foulbrood');
    expect(whole.wouldFollow?.duties.some((duty) => duty.duty === 'notify')).toBe(true);
    const suspected = wholeReasoning({
      examination: one.body,
      entry: one.written.entry,
      colony: site.ledger.colony(site.colonies[0]),
      pack,
      known: null,
      priorChanges: [],
      suspectedByInspector: ['american-foulbrood'],
      now: first,
    });
    expect(suspected.wouldFollow).toBeNull();
    expect(suspected.owed.some((duty) => duty.duty === 'notify')).toBe(true);
  });
});

describe('what was known goes into the record', () => {
  test('with every change of the inspector and its reason, and moves the answer', () => {
    const known = {
      district: [{ condition: 'american-foulbrood', confirmed: 3, examined: 200, about: '2027' }],
      earlierCaseAtApiary: false,
      contactOfCase: true,
      honeyPositive: null,
      exposure: 'not known' as const,
    };
    const change = { value: 0.4, low: null, high: null, reason: 'cold, wet spring' };
    const { assessed } = close(0, {
      taps: [{ tap: 'prior', condition: 'chalkbrood', change }, { tap: 'spores in honey or bees', found: true }, all],
      known,
    });
    const [made] = site.ledger.colony(site.colonies[0]).assessments;
    expect(made?.body.circumstances).toEqual({ ...known, honeyPositive: true, exposure: 'operation affected' });
    expect(made?.body.priorChanges).toEqual([{ condition: 'chalkbrood', ...change }]);
    const prior = (disease: string) => assessed.reasoning.diseases.find((one) => one.disease === disease);
    expect(prior('chalkbrood')?.prior).toBe(0.4);
    expect(prior('american-foulbrood')?.priorSteps.map((one) => one.id)).toEqual([
      'district-count',
      'contact-of-case',
      'honey-positive',
    ]);
    // What tells of other keepers is marked, so that no page shows it unasked.
    expect(prior('american-foulbrood')?.priorSteps.filter((one) => one.concernsOthers)).toHaveLength(2);
  });
});
