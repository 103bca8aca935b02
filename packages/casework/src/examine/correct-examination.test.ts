import { loadPack } from '@combside/law/load-pack';
import { assessLook, defaultSettings } from '@combside/science/diagnosis/assess';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arrival, smallSite, startAt } from '../acceptance/small-site.ts';
import { draftFrom } from '../draft/draft-from-taps.ts';
import { signsAsked } from '../draft/sign-order.ts';
import type { Tap } from '../draft/tap.ts';
import { tapsFromExamination } from '../draft/taps-from-examination.ts';
import { closeColony } from './close-colony.ts';
import { type CorrectExamination, correctExamination } from './correct-examination.ts';

const pack = await loadPack('quillmoor');
const at = '2027-05-04T09:30:00.000Z';
const later = '2027-05-05T07:00:00.000Z';

const look: Tap[] = [
  { tap: 'frames seen', box: 'lower', frames: 8 },
  { tap: 'sides', box: 'lower', sides: 'both' },
  { tap: 'bees shaken', shaken: true },
];
const sunken: Tap = { tap: 'sign', sign: 'cap.sunken', outcome: 'seen' };

// How wide an interval is, is asked nowhere here: the fewest draws that are taken will do.
const weigh: typeof assessLook = (evidence, settings = defaultSettings) =>
  assessLook(evidence, { ...settings, draws: 40 });

/** A visit at which the first colony was closed with these taps, and the act that corrects it. */
function closed(taps: readonly Tap[], closing: 'signs seen' | 'nothing seen' | 'not judged', suspected: string[] = []) {
  const site = smallSite();
  const visit = site.newId();
  site.carryOut(startAt(site, visit), arrival);
  const examinationId = site.newId();
  const [colony] = site.colonies;
  const act = closeColony({
    taps,
    colony: site.ledger.colony(colony),
    visit: site.ledger.visit(visit),
    pack,
    closing,
    suspected,
    observedAt: at,
    examinationId,
    weigh,
  });
  site.carryOut(act, at);
  const state = () => site.ledger.colony(colony);
  const start = () => {
    const [examined] = state().examinations;
    if (!examined) throw new Error('nothing was sealed');
    return tapsFromExamination(examined.body, state().assessments[0]?.body ?? null, state());
  };
  const correct = (change: Partial<CorrectExamination> = {}) =>
    correctExamination({
      taps: start(),
      colony: state(),
      visit: site.ledger.visit(visit),
      pack,
      closing: 'signs seen',
      suspected: [],
      corrects: examinationId,
      reason: 'the wrong line was tapped',
      by: site.inspector,
      correctedAt: later,
      weigh,
      ...change,
    });
  return { site, state, start, correct, examinationId };
}

describe('a correction', () => {
  test('says what the examination should have said, with a new assessment; the earlier ones stay', () => {
    const { site, state, start, correct, examinationId } = closed([...look, sunken], 'signs seen');
    const before = state();
    const done = site.carryOut(
      correct({ taps: [...start(), { tap: 'sign count', sign: 'cap.sunken', count: '11-100' }] }),
      later,
    );
    expect(done.proposals.map((one) => one.kind)).toEqual(['correction', 'assessment']);
    const [examined] = state().examinations;
    expect(examined?.body.signs).toContainEqual(expect.objectContaining({ sign: 'cap.sunken', count: '11-100' }));
    expect(examined?.original).toEqual(before.examinations[0]?.body);
    expect(examined?.corrections[0]).toMatchObject({ reason: 'the wrong line was tapped' });
    expect(examined?.body.observedAt).toBe(at);
    expect(state().assessments).toHaveLength(2);
    expect(state().assessments.map((one) => one.body.examination)).toEqual([examinationId, examinationId]);
    expect(state().assessments[0]?.body.statedAt).toBe(later);
    expect(state().assessments[1]).toEqual(before.assessments[0]);
  });

  test('may be corrected again, and both reasons stay', () => {
    const { site, state, start, correct } = closed([...look, sunken], 'signs seen');
    site.carryOut(correct({ taps: [...start(), { tap: 'light', light: 'torch' }], reason: 'first' }), later);
    const again = '2027-05-06T07:00:00.000Z';
    site.carryOut(
      correct({ taps: [...start(), { tap: 'light', light: 'shade' }], reason: 'second', correctedAt: again }),
      again,
    );
    const [examined] = state().examinations;
    expect(examined?.body.light).toBe('shade');
    expect(examined?.original.light).toBeNull();
    expect(examined?.corrections.map((one) => one.reason)).toEqual(['first', 'second']);
  });

  test('does not lift a suspicion that was stated', () => {
    const { site, state, correct } = closed([...look, sunken], 'signs seen', ['american-foulbrood']);
    expect(state().assessments[0]?.body.result).toBe('suspect');
    const taps: Tap[] = [{ tap: 'everything looked at' }];
    site.carryOut(correct({ taps, closing: 'nothing seen' }), later);
    expect(state().examinations[0]?.body.claim).toBe('nothing seen');
    expect(state().assessments[0]?.body).toMatchObject({
      result: 'remains suspect',
      suspected: ['american-foulbrood'],
    });
  });

  test('does not cover a suspicion stated at a later look', () => {
    const { site, state, start, correct } = closed([...look, sunken], 'signs seen');
    const visit = site.newId();
    site.carryOut(startAt(site, visit, { startedAt: later }), later);
    const [colony] = site.colonies;
    const closing = closeColony({
      taps: [...look, sunken],
      colony: site.ledger.colony(colony),
      visit: site.ledger.visit(visit),
      pack,
      closing: 'signs seen',
      suspected: ['american-foulbrood'],
      observedAt: '2027-05-05T08:00:00.000Z',
      examinationId: site.newId(),
    });
    site.carryOut(closing, '2027-05-05T08:00:00.000Z');
    const afterwards = '2027-05-06T07:00:00.000Z';
    const taps: Tap[] = [...start().filter((one) => one.tap !== 'sign'), { tap: 'everything looked at' }];
    expect(taps).not.toContainEqual(sunken);
    site.carryOut(correct({ taps, closing: 'nothing seen', correctedAt: afterwards }), afterwards);
    expect(state().assessments[0]?.body).toMatchObject({ statedAt: afterwards, result: 'remains suspect' });
  });

  test('can state the suspicion that was forgotten', () => {
    const { site, state, start, correct } = closed([...look, sunken], 'signs seen');
    site.carryOut(correct({ taps: start(), suspected: ['american-foulbrood'] }), later);
    expect(state().assessments[0]?.body).toMatchObject({ result: 'suspect', suspected: ['american-foulbrood'] });
  });

  test.each<[string, Partial<CorrectExamination>, string]>([
    ['without a reason', { reason: '  ' }, 'casework.refused.reason-missing'],
    ['with a reason of a whole page', { reason: 'x'.repeat(501) }, 'casework.refused.number-out-of-range'],
    ['by somebody else', { by: '01930000-0000-7000-8000-000000000000' }, 'casework.refused.examination-not-yours'],
    ['of an examination nobody knows', { corrects: 'none' }, 'casework.refused.no-such-line'],
    ['when nothing was changed', {}, 'casework.refused.nothing-changed'],
    ['from before the look', { correctedAt: arrival }, 'casework.refused.time-runs-backward'],
    ['to nothing seen against a sign', { closing: 'nothing seen' }, 'casework.refused.sign-was-seen'],
    ['to a suspicion nobody knows', { suspected: ['gloom'] }, 'casework.refused.unknown-condition'],
  ])('is refused %s', (_, change, reason) => {
    const { correct } = closed([...look, sunken], 'signs seen');
    expect(correct(change)).toMatchObject({ ok: false, reason });
  });
});

describe('taps from a sealed examination', () => {
  const ids = signsAsked('living').flatMap((group) => group.signs.map((one) => one.id));
  const tap: fc.Arbitrary<Tap> = fc.oneof(
    fc.record({
      tap: fc.constant('sign' as const),
      sign: fc.constantFrom(...ids),
      outcome: fc.constantFrom('seen' as const, 'not seen' as const),
    }),
    fc.record({
      tap: fc.constant('sign count' as const),
      sign: fc.constantFrom(...ids),
      count: fc.constantFrom('1-10' as const, 'over 100' as const),
    }),
    fc.record({
      tap: fc.constant('cells at' as const),
      sign: fc.constantFrom(...ids),
      place: fc.constant({ box: 'lower', frame: 2, side: 'b' as const }),
      cellsOpened: fc.integer({ min: 5, max: 20 }),
      cellsAffected: fc.integer({ min: 0, max: 5 }),
    }),
    fc.record({
      tap: fc.constant('frames held' as const),
      box: fc.constant('lower'),
      frames: fc.integer({ min: 8, max: 11 }),
    }),
    fc.record({ tap: fc.constant('hold' as const), hold: fc.constantFrom('flat' as const, 'top bar away' as const) }),
    fc.record({ tap: fc.constant('sealed brood' as const), combSides: fc.constantFrom(0, 0.25, 3.5) }),
    fc.record({ tap: fc.constant('remark' as const), text: fc.string({ maxLength: 20 }) }),
    fc.record({
      tap: fc.constant('medicines' as const),
      answer: fc.constant({ asked: true, answer: 'yes' as const, lastOn: '2027-04-20', what: '' }),
    }),
    fc.record({
      tap: fc.constant('measurement' as const),
      what: fc.constant('hive weight'),
      value: fc.integer({ min: 1, max: 200 }),
    }),
    fc.record({
      tap: fc.constant('find' as const),
      find: fc.constant('wax-moth'),
      outcome: fc.constant('seen' as const),
      amount: fc.constantFrom('slight' as const, null),
    }),
  );

  test('add up to the same draft again', () => {
    fc.assert(
      fc.property(fc.array(tap, { maxLength: 25 }), (taps) => {
        const { start, state } = closed([...look, ...taps, sunken], 'signs seen');
        const made = draftFrom([...look, ...taps, sunken], state());
        // What could not be read the first time was not sealed.
        expect(draftFrom(start(), state())).toEqual({ ...made, unread: [] });
      }),
      { seed: 20261125, numRuns: 60 },
    );
  });

  test('leave a look unstated that was never stated', () => {
    const { start, state } = closed([], 'not judged');
    expect(draftFrom(start(), state())).toEqual(draftFrom([], state()));
  });
});
