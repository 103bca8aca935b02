import type { Proposal } from '@combside/record/entry';
import { assessment } from '@combside/record/kinds/assessment';
import { describe, expect, test } from 'vitest';
import { arrival, type SmallSite, smallSite, startAt } from '../acceptance/small-site.ts';
import { beforeOpening, cleanDownOwed, cleanDownOwedAtExit, recordCleanDown } from './clean-down.ts';
import { endVisit, whatIsOpen } from './end-visit.ts';
import { calmConditions, readBack, warningsOnArrival } from './start-visit.ts';
import { byLabel, walk } from './walk.ts';

const later = (minutes: number) =>
  `2027-05-04T${String(9 + Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}:00.000Z`;

function started(): { site: SmallSite; visit: string } {
  const site = smallSite();
  const visit = site.newId();
  site.carryOut(startAt(site, visit), arrival);
  return { site, visit };
}

/** A suspicion written down as such, without the whole examination around it. */
function suspicion(colony: string, visit: string, examination: string, statedAt: string): Proposal {
  return {
    kind: assessment.kind,
    version: assessment.version,
    about: { type: 'colony', id: colony },
    body: {
      examination,
      visit,
      statedAt,
      result: 'suspect',
      suspected: ['american-foulbrood'],
      basis: 'inspector',
      rule: null,
      differential: [],
      nextCheck: null,
      circumstances: null,
      priorChanges: [],
      combReadings: [],
      scienceVersion: 'test',
      pack: { id: 'quillmoor', version: '1' },
    },
    replaces: [],
  };
}

describe('starting', () => {
  test('reads the register back with its doubts', () => {
    const site = smallSite();
    const colonies = site.ledger.coloniesOf(site.apiary);
    const fresh = readBack(site.ledger.apiary(site.apiary), colonies, arrival);
    expect(fresh).toMatchObject({ name: 'Test Bank', coloniesRegistered: 3, coloniesKnown: 3, findings: [] });
    const stale = readBack(site.ledger.apiary(site.apiary), colonies, '2029-05-04T09:00:00.000Z');
    expect(stale?.findings.map((one) => one.id)).toEqual(['casework.warning.not-confirmed-lately']);
  });

  test('a count that agrees proposes no change; one that differs proposes it and changes nothing', () => {
    const site = smallSite();
    expect(site.carryOut(startAt(site, site.newId()), arrival).proposals.map((one) => one.kind)).toEqual(['visit']);
    const other = startAt(site, site.newId(), { coloniesCounted: 5 });
    expect(site.carryOut(other, arrival).proposals.map((one) => one.kind)).toEqual(['visit', 'proposed-change']);
    const state = site.ledger.apiary(site.apiary);
    expect(state.apiary.current?.body.coloniesRegistered).toBe(3);
    expect(state.proposals[0]?.body).toMatchObject({ field: 'coloniesRegistered', from: 3, to: 5 });
  });

  test('weather warns and never blocks; the answers are kept', () => {
    const site = smallSite();
    const visit = site.newId();
    const act = startAt(site, visit, {
      conditions: { ...calmConditions, temperatureCelsius: 14, rain: true },
      answers: { 'casework.warning.cold': 'dying hive' },
    });
    const done = site.carryOut(act, arrival);
    expect(done.findings.filter((one) => one.weight === 'warns').map((one) => one.id)).toEqual([
      'casework.warning.cold',
      'casework.warning.rain',
    ]);
    expect(site.ledger.visit(visit).visit.current?.body.warnings).toEqual([
      { warning: 'casework.warning.cold', answer: 'dying hive' },
      { warning: 'casework.warning.rain', answer: '' },
    ]);
  });

  // 15 degrees: below it hives are better left shut; 10-12 degrees: most bees do not fly [APISAV].
  test.each([
    [15, []],
    [14.9, ['casework.warning.cold']],
    [11, ['casework.warning.bees-do-not-fly']],
    [null, ['casework.warning.temperature-not-known']],
  ])('at %s degrees', (temperatureCelsius, ids) => {
    const found = warningsOnArrival({ ...calmConditions, temperatureCelsius }, arrival, 56);
    expect(found.map((one) => one.id)).toEqual(ids);
  });

  test('the season is that of the hemisphere', () => {
    const warm = { ...calmConditions, temperatureCelsius: 20 };
    const january = '2027-01-15T12:00:00.000Z';
    expect(warningsOnArrival(warm, january, 56).map((one) => one.id)).toEqual(['casework.warning.little-brood-season']);
    expect(warningsOnArrival(warm, january, -36)).toEqual([]);
    expect(warningsOnArrival(warm, '2027-07-15T12:00:00.000Z', -36)).toHaveLength(1);
  });

  test.each<[string, Parameters<typeof startAt>[2], string]>([
    ['an unknown reason', { reason: 'curiosity' }, 'casework.refused.unknown-reason'],
    ['an unknown right', { power: 'magic' }, 'casework.refused.unknown-power'],
    ['a stranger’s role', { people: [{ name: 'X', role: 'ghost' }] }, 'casework.refused.unknown-word'],
    ['half a colony', { coloniesCounted: 2.5 }, 'casework.refused.number-out-of-range'],
  ])('is refused for %s', (_, change, reason) => {
    const site = smallSite();
    expect(startAt(site, site.newId(), change)).toMatchObject({ ok: false, reason });
  });

  test('is refused when the visit runs, has ended, or is somebody else’s', () => {
    const { site, visit } = started();
    const planned = site.ledger.visit(visit);
    expect(startAt(site, visit, { planned })).toMatchObject({ reason: 'casework.refused.visit-running' });
    const before = planned.visit.current?.body;
    if (!before || !planned.visit.current) throw new Error('the visit is there');
    const notBegun = {
      ...planned,
      visit: { ...planned.visit, current: { ...planned.visit.current, body: { ...before, startedAt: null } } },
    };
    expect(startAt(site, visit, { planned: notBegun, inspector: site.keeper })).toMatchObject({
      reason: 'casework.refused.visit-not-yours',
    });
    expect(startAt(site, visit, { planned: notBegun }).ok).toBe(true);
  });
});

describe('walking', () => {
  test('labels count as numbers', () => {
    expect(['10', '2', '1a', '1'].sort(byLabel)).toEqual(['1', '1a', '2', '10']);
    const { site, visit } = started();
    const walked = walk(site.ledger.apiary(site.apiary), site.ledger.coloniesOf(site.apiary), visit);
    expect(walked.map((one) => [one.label, one.word])).toEqual([
      ['1', 'not opened'],
      ['2', 'not opened'],
      ['10', 'not opened'],
    ]);
  });

  test('a draft says so', () => {
    const { site, visit } = started();
    const drafts = { [site.colonies[1]]: [{ tap: 'bees shaken', shaken: true } as const] };
    const walked = walk(site.ledger.apiary(site.apiary), site.ledger.coloniesOf(site.apiary), visit, drafts);
    expect(walked.map((one) => one.word)).toEqual(['not opened', 'being looked at', 'not opened']);
  });
});

describe('cleaning down', () => {
  const answered = {
    gloves: 'changed',
    tool: 'flamed',
    phone: 'wiped',
    wentOnAfterWarning: false,
    remarks: '',
  } as const;

  test('is owed after a suspicion, warns on the way to an unsuspected colony, and is owed again at the exit', () => {
    const { site, visit } = started();
    const state = () => site.ledger.visit(visit);
    const colonies = () => site.ledger.coloniesOf(site.apiary);
    expect(cleanDownOwed(state(), colonies())).toEqual([]);
    expect(beforeOpening(state(), colonies(), site.colonies[1])).toEqual([]);

    site.write([suspicion(site.colonies[0], visit, site.newId(), later(10))], later(10));
    expect(cleanDownOwed(state(), colonies())).toEqual([{ where: 'before the next colony', after: site.colonies[0] }]);
    expect(beforeOpening(state(), colonies(), site.colonies[1]).map((one) => one.id)).toEqual([
      'casework.clean-down.owed-before-next',
      'casework.clean-down.suspect-to-unsuspected',
      'casework.clean-down.soda',
    ]);

    const act = recordCleanDown({
      visit: state(),
      colonies: colonies(),
      after: site.colonies[0],
      doneAt: later(15),
      ...answered,
    });
    site.carryOut(act, later(15));
    expect(cleanDownOwed(state(), colonies())).toEqual([]);
    // Cleaned, but still going from a suspect to an unsuspected colony.
    expect(beforeOpening(state(), colonies(), site.colonies[1]).map((one) => one.id)).toContain(
      'casework.clean-down.suspect-to-unsuspected',
    );
    expect(cleanDownOwedAtExit(state(), colonies())).toEqual({ where: 'at the exit', after: null });
    site.carryOut(
      recordCleanDown({ visit: state(), colonies: colonies(), after: null, doneAt: later(40), ...answered }),
      later(40),
    );
    expect(cleanDownOwedAtExit(state(), colonies())).toBeNull();
  });

  test('a suspicion stated after the clean-down owes another', () => {
    const { site, visit } = started();
    site.write([suspicion(site.colonies[0], visit, site.newId(), later(10))], later(10));
    const colonies = () => site.ledger.coloniesOf(site.apiary);
    const act = recordCleanDown({
      visit: site.ledger.visit(visit),
      colonies: colonies(),
      after: site.colonies[0],
      doneAt: later(15),
      ...answered,
    });
    site.carryOut(act, later(15));
    site.write([suspicion(site.colonies[0], visit, site.newId(), later(30))], later(30));
    expect(cleanDownOwed(site.ledger.visit(visit), colonies())).toHaveLength(1);
  });

  test('each of the three has to be answered; "not done" is an answer and is said', () => {
    const { site, visit } = started();
    site.write([suspicion(site.colonies[0], visit, site.newId(), later(10))], later(10));
    const given = {
      visit: site.ledger.visit(visit),
      colonies: site.ledger.coloniesOf(site.apiary),
      after: site.colonies[0],
      doneAt: later(15),
      ...answered,
    };
    expect(recordCleanDown({ ...given, tool: null })).toMatchObject({
      reason: 'casework.refused.answer-missing',
      values: { question: 'tool' },
    });
    const act = recordCleanDown({ ...given, gloves: 'not changed' });
    expect(act.ok && act.findings.map((one) => one.id)).toEqual(['casework.clean-down.not-done']);
    expect(recordCleanDown({ ...given, after: site.colonies[1] })).toMatchObject({
      reason: 'casework.refused.no-suspicion-before',
    });
  });
});

describe('ending', () => {
  const leave = (site: SmallSite, visit: string, change: Partial<Parameters<typeof endVisit>[0]> = {}) =>
    endVisit({
      visit: site.ledger.visit(visit),
      apiary: site.ledger.apiary(site.apiary),
      colonies: site.ledger.coloniesOf(site.apiary),
      drafts: {},
      endedAt: later(90),
      leftOpen: Object.fromEntries(site.colonies.map((one) => [one, 'rain began'])),
      ...change,
    });

  test('says what is still open and writes why a colony was left', () => {
    const { site, visit } = started();
    const open = whatIsOpen({
      visit: site.ledger.visit(visit),
      apiary: site.ledger.apiary(site.apiary),
      colonies: site.ledger.coloniesOf(site.apiary),
      drafts: {},
    });
    expect(open.map((one) => one.id)).toEqual([
      'casework.open.colony-not-opened',
      'casework.open.colony-not-opened',
      'casework.open.colony-not-opened',
      'casework.open.not-handed-over',
    ]);
    site.carryOut(leave(site, visit), later(90));
    const body = site.ledger.visit(visit).visit.current?.body;
    expect(body?.endedAt).toBe(later(90));
    expect(body?.leftOpen.map((one) => one.reason)).toEqual(['rain began', 'rain began', 'rain began']);
    expect(leave(site, visit)).toMatchObject({ reason: 'casework.refused.visit-ended' });
  });

  test('is refused with a draft, a silent colony, a clean-down owed, or a clock that runs backward', () => {
    const { site, visit } = started();
    const drafts = { [site.colonies[0]]: [{ tap: 'bees shaken', shaken: true } as const] };
    expect(leave(site, visit, { drafts })).toMatchObject({
      reason: 'casework.refused.drafts-open',
      values: { colonies: '1' },
    });
    expect(leave(site, visit, { leftOpen: { [site.colonies[0]]: 'rain' } })).toMatchObject({
      reason: 'casework.refused.colonies-unopened',
      values: { count: 2, colonies: '2, 10' },
    });
    expect(leave(site, visit, { endedAt: '2027-05-04T08:00:00.000Z' })).toMatchObject({
      reason: 'casework.refused.time-runs-backward',
    });
    site.write([suspicion(site.colonies[0], visit, site.newId(), later(10))], later(10));
    expect(leave(site, visit)).toMatchObject({ reason: 'casework.refused.clean-down-owed' });
  });
});
