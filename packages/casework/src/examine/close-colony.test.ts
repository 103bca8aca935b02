import { loadPack } from '@combside/law/load-pack';
import { describe, expect, test } from 'vitest';
import { arrival, type SmallSite, smallSite, startAt } from '../acceptance/small-site.ts';
import { dutiesOwed } from '../assess/duties-owed.ts';
import { reasoningLine } from '../assess/line.ts';
import { draftFrom } from '../draft/draft-from-taps.ts';
import type { Tap } from '../draft/tap.ts';
import { type CloseColony, closeColony } from './close-colony.ts';
import { walk } from './walk.ts';

const pack = await loadPack('quillmoor');
const at = '2027-05-04T09:30:00.000Z';

function visiting(): {
  site: SmallSite;
  visit: string;
  close: (change?: Partial<CloseColony>) => ReturnType<typeof closeColony>;
} {
  const site = smallSite();
  const visit = site.newId();
  site.carryOut(startAt(site, visit), arrival);
  const close = (change: Partial<CloseColony> = {}) =>
    closeColony({
      taps: [],
      colony: site.ledger.colony(site.colonies[0]),
      visit: site.ledger.visit(visit),
      pack,
      closing: 'nothing seen',
      suspected: [],
      observedAt: at,
      examinationId: site.newId(),
      ...change,
    });
  return { site, visit, close };
}

const rope = (threadMillimetres: number, snapsBack: boolean | null = true): Tap => ({
  tap: 'rope test',
  test: {
    box: 'lower',
    frame: 3,
    side: 'a',
    tissue: 'moist brown',
    stick: 'rough and dry',
    threadMillimetres,
    snapsBack,
    colour: 'coffee',
  },
});
const all: Tap = { tap: 'everything looked at' };
const seen = (sign: string): Tap => ({ tap: 'sign', sign, outcome: 'seen' });

test('a colony closed at a visit is not closed there again, as a second window would', () => {
  const { site, close } = visiting();
  site.carryOut(close(), at);
  expect(close()).toMatchObject({ ok: false, reason: 'casework.refused.colony-closed' });
  // Another colony, and this one at another visit, are.
  expect(close({ colony: site.ledger.colony(site.colonies[1]) }).ok).toBe(true);
  const later = site.newId();
  site.carryOut(startAt(site, later), arrival);
  expect(close({ visit: site.ledger.visit(later) }).ok).toBe(true);
});

describe('nothing seen', () => {
  test('seals one examination and the assessment that names it', () => {
    const { site, visit, close } = visiting();
    const done = site.carryOut(close(), at);
    expect(done.proposals.map((one) => one.kind)).toEqual(['examination', 'assessment']);
    const colony = site.ledger.colony(site.colonies[0]);
    expect(colony.examinations[0]?.body).toMatchObject({ claim: 'nothing seen', depth: 'full', beesShaken: true });
    expect(colony.assessments[0]?.body).toMatchObject({
      examination: colony.examinations[0]?.written.entry,
      result: 'nothing seen with this look',
      suspected: [],
      pack: { id: 'quillmoor', version: '1' },
    });
    const walked = walk(site.ledger.apiary(site.apiary), site.ledger.coloniesOf(site.apiary), visit);
    expect(walked[0]?.word).toBe('nothing seen with this look');
  });

  test('is masked inside the pack’s masking period, whatever the look', () => {
    const { close } = visiting();
    const asked = (lastOn: string | null): Tap => ({
      tap: 'medicines',
      answer: { asked: true, answer: 'yes', lastOn, what: '' },
    });
    const masked = close({ taps: [asked('2027-04-20')] });
    expect(masked.ok && masked.assessed.result).toBe('masked, no conclusion');
    expect(masked.ok && masked.assessed.maskedUntil).toBe('2027-06-19T00:00:00.000Z');
    const long = close({ taps: [asked('2027-01-20')] });
    expect(long.ok && long.assessed.result).toBe('nothing seen with this look');
    const unknown = close({ taps: [asked(null)] });
    expect(unknown.ok && unknown.assessed.result).toBe('masked, no conclusion');
  });

  test('is not said of too little brood', () => {
    const { close } = visiting();
    const act = close({ taps: [{ tap: 'sealed brood', combSides: 0 }] });
    expect(act.ok && act.assessed.result).toBe('too little brood to judge');
    expect(act.ok && act.findings.map((one) => one.id)).toContain('casework.examined.too-little-brood');
  });

  test('never lifts an earlier suspicion', () => {
    const { site, visit, close } = visiting();
    site.carryOut(close({ taps: [all, rope(25)], closing: 'signs seen' }), at);
    const second = site.newId();
    site.carryOut(startAt(site, second, { startedAt: '2027-06-04T09:00:00.000Z' }), '2027-06-04T09:00:00.000Z');
    const again = close({
      colony: site.ledger.colony(site.colonies[0]),
      visit: site.ledger.visit(second),
      observedAt: '2027-06-04T09:30:00.000Z',
    });
    expect(again.ok && again.assessed.result).toBe('remains suspect');
    expect(again.ok && again.assessed.stillSuspect).toEqual({ since: at, conditions: ['american-foulbrood'] });
    expect(visit).not.toBe(second);
  });
});

describe('suspicion', () => {
  test('is the pack’s rule on a thread of 10 mm that snaps back', () => {
    const { site, close } = visiting();
    const done = site.carryOut(close({ taps: [all, rope(10)], closing: 'signs seen' }), at);
    expect(done.assessed.suspicion).toMatchObject({ basis: 'pack rule', conditions: ['american-foulbrood'] });
    expect(site.ledger.colony(site.colonies[0]).assessments[0]?.body).toMatchObject({
      result: 'suspect',
      basis: 'pack rule',
      rule: 'rope-thread',
    });
    expect(done.findings.map((one) => one.id)).toEqual(
      expect.arrayContaining(['casework.examined.rule-suspicion', 'casework.examined.close-the-hive']),
    );
  });

  test.each([
    ['under 10 mm', rope(9)],
    ['that does not snap back', rope(25, false)],
  ])('is not made by a thread %s', (_, tap) => {
    const act = visiting().close({ taps: [all, seen('cap.sunken'), tap], closing: 'signs seen' });
    expect(act.ok && act.assessed.suspicion).toBeNull();
    expect(act.ok && act.assessed.result).toBe('signs seen');
  });

  test('is never made by a probability: every sign that points to foulbrood, none that a rule names', () => {
    const taps = [
      all,
      ...[
        'pattern.spotty',
        'cap.sunken',
        'cap.dark_greasy',
        'cap.perforated',
        'col.coffee',
        'post.melted',
        'odour.glue',
      ].map(seen),
    ];
    const act = visiting().close({ taps, closing: 'signs seen' });
    if (!act.ok) throw new Error(act.reason);
    expect(act.assessed.reasoning.diseases[0]?.disease).toBe('american-foulbrood');
    expect(act.assessed.reasoning.diseases[0]?.point).toBeGreaterThan(0.5);
    expect(act.assessed.result).toBe('signs seen');
    expect(act.assessed.suspicion).toBeNull();
  });

  test('is the inspector’s act, on whatever was entered', () => {
    const act = visiting().close({
      taps: [all, seen('cap.sunken')],
      closing: 'signs seen',
      suspected: ['american-foulbrood'],
    });
    expect(act.ok && act.assessed).toMatchObject({ result: 'suspect', suspicion: { basis: 'inspector', rule: null } });
  });

  test('owes what the pack says', () => {
    const { site, close } = visiting();
    site.carryOut(close({ taps: [all, rope(25)], closing: 'signs seen' }), at);
    const owed = dutiesOwed(site.ledger.coloniesOf(site.apiary), pack, at);
    expect(owed.map((one) => [one.duty, one.due])).toEqual([
      ['notify', '2027-05-05T09:30:00.000Z'],
      ['serve notice', '2027-05-06T09:30:00.000Z'],
      ['specimen', '2027-05-07T09:30:00.000Z'],
      ['standstill', null],
    ]);
  });
});

describe('a dead hive', () => {
  test('with scale is suspect by rule, and the register is asked to follow', () => {
    const { site, close } = visiting();
    const taps: Tap[] = [
      { tap: 'hive state', state: 'dead' },
      all,
      seen('scale.hard_lower'),
      { tap: 'sign count', sign: 'scale.hard_lower', count: 'over 100' },
    ];
    const done = site.carryOut(close({ taps, closing: 'signs seen' }), at);
    expect(done.assessed.result).toBe('suspect');
    expect(done.proposals.map((one) => one.kind)).toEqual(['examination', 'assessment', 'proposed-change']);
    expect(done.assessed.reasoning.timeSinceOnset?.atLeastDays).toBeGreaterThanOrEqual(35);
  });
});

describe('closing is refused', () => {
  test.each<[string, Partial<CloseColony>, string]>([
    ['"nothing seen" after a sign', { taps: [seen('cap.sunken')] }, 'casework.refused.sign-was-seen'],
    [
      'a suspicion with "nothing seen"',
      { suspected: ['american-foulbrood'] },
      'casework.refused.suspicion-against-nothing-seen',
    ],
    ['a suspicion of a word nobody knows', { suspected: ['gout'] }, 'casework.refused.unknown-condition'],
    ['"signs seen" without one', { taps: [all], closing: 'signs seen' }, 'casework.refused.no-sign-entered'],
    [
      '"signs seen" without a look',
      { taps: [seen('cap.sunken')], closing: 'signs seen' },
      'casework.refused.look-not-stated',
    ],
    ['before the visit began', { observedAt: '2027-05-04T08:00:00.000Z' }, 'casework.refused.time-runs-backward'],
  ])('%s', (_, change, reason) => {
    expect(visiting().close(change)).toMatchObject({ ok: false, reason });
  });
});

describe('the line at the comb', () => {
  const line = (...taps: Tap[]) => {
    const { site } = visiting();
    const colony = site.ledger.colony(site.colonies[0]);
    return reasoningLine(draftFrom(taps, colony), { colony, pack, observedAt: at, suspicionStands: false });
  };

  test('leads with nothing before a sign was seen', () => {
    expect(line()).toMatchObject({ leading: null, order: [], firstStep: null });
  });

  test('names what leads, and what to look at next', () => {
    const caps = line(all, seen('cap.sunken'), seen('cap.dark_greasy'));
    expect(caps.leading).not.toBeNull();
    expect(caps.nextCheck).not.toBeNull();
    const sac = line(all, seen('con.sac'), seen('post.head_up'));
    expect(sac.leading).toBe('sacbrood');
  });

  test('mummies found lower what sunken cappings say about foulbrood', () => {
    const rank = (order: readonly string[]) => order.indexOf('american-foulbrood');
    const caps = line(all, seen('cap.sunken'), seen('cap.perforated'));
    const mummies = line(
      all,
      seen('cap.sunken'),
      seen('cap.perforated'),
      seen('con.mummy_loose'),
      seen('floor.mummies'),
    );
    expect(mummies.leading).toBe('chalkbrood');
    expect(rank(mummies.order)).toBeGreaterThanOrEqual(rank(caps.order));
  });
});
