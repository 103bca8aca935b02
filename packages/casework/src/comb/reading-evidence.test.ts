import { loadPack } from '@combside/law/load-pack';
import type { CombReadingBody } from '@combside/record/kinds/comb-reading';
import type { CellClass } from '@combside/science/comb/cells/cell-classes';
import { describe, expect, test } from 'vitest';
import { broodComb, combPlace, laidComb, laidPicture, photographOf } from '../acceptance/laid-comb.ts';
import { arrival, smallSite, startAt } from '../acceptance/small-site.ts';
import { wholeReasoning } from '../assess/whole-reasoning.ts';
import type { Tap } from '../draft/tap.ts';
import { type CloseColony, closeColony } from '../examine/close-colony.ts';
import { proposeReading } from './propose-reading.ts';
import { readingEvidence, sealedSidesMeasured } from './reading-evidence.ts';
import { replaceReading } from './replace-reading.ts';

const pack = await loadPack('quillmoor');
const at = '2027-05-04T09:30:00.000Z';
const later = '2027-05-05T07:00:00.000Z';
const solid = broodComb(1200, 30);
const gappy = broodComb(1200, 3);

const look: Tap[] = [
  { tap: 'frames seen', box: 'lower', frames: 8 },
  { tap: 'sides', box: 'lower', sides: 'both' },
  { tap: 'bees shaken', shaken: true },
];
const mummies: Tap = { tap: 'sign', sign: 'con.mummy_loose', outcome: 'seen' };
const spotty: Tap = { tap: 'sign', sign: 'pattern.spotty', outcome: 'seen' };

function visited() {
  const site = smallSite();
  const visit = site.newId();
  site.carryOut(startAt(site, visit), arrival);
  const [colony] = site.colonies;
  const state = () => site.ledger.colony(colony);
  const keep = (
    classes: readonly CellClass[],
    accepted: boolean,
    place: CombReadingBody['place'] = combPlace,
    observedAt = at,
  ) => {
    const act = proposeReading({
      read: { result: laidComb(classes), picture: laidPicture },
      // Each of another photograph: of one, only one reading is kept.
      photograph: photographOf(observedAt, String(state().combReadings.length).padStart(64, '0')),
      place,
      observedAt,
      colony: state(),
      visit: site.ledger.visit(visit),
      accepted,
      id: site.newId(),
    });
    site.carryOut(act, at);
    return act.ok ? (act.proposals[0]?.id ?? '') : '';
  };
  const close = (change: Partial<CloseColony> = {}) =>
    closeColony({
      taps: [...look, mummies],
      colony: state(),
      visit: site.ledger.visit(visit),
      pack,
      closing: 'signs seen',
      suspected: [],
      observedAt: at,
      examinationId: site.newId(),
      ...change,
    });
  const weighed = (change: Partial<CloseColony> = {}) => {
    const act = close(change);
    if (!act.ok) throw new Error(act.reason);
    return act.assessed;
  };
  return { site, visit, state, keep, close, weighed };
}

describe('a reading as evidence', () => {
  test('that nobody accepted has no effect at all', () => {
    const { keep, weighed } = visited();
    const before = weighed();
    keep(gappy, false);
    expect(weighed()).toEqual(before);
    expect(before.combReadings).toEqual([]);
  });

  test('that was accepted is weighed, shown as measured, and named by the assessment', () => {
    const { keep, weighed, close } = visited();
    const before = weighed();
    const entry = keep(gappy, true);
    const { reasoning, combReadings } = weighed();
    expect(combReadings).toEqual([entry]);
    const reason = reasoning.reasons.reasons.find((one) => one.node === 'pattern-measured');
    expect(reason).toMatchObject({ outcome: 'measured', expertBand: true });
    // Each third cell is open: two of three are sealed, by hand 66 or 67 in a hundred.
    expect([66, 67]).toContain(reason?.sentence.values.solid);
    expect(reasoning.diseases).not.toEqual(before.reasoning.diseases);
    const act = close();
    const assessed = act.ok ? act.proposals.find((one) => one.kind === 'assessment') : undefined;
    expect(assessed?.body).toMatchObject({ combReadings: [entry], scienceVersion: 'brood 2' });
  });

  test('weighs nothing beside a pattern that was said at the combs', () => {
    const { keep, weighed } = visited();
    const before = weighed({ taps: [...look, mummies, spotty] });
    keep(solid, true);
    const { reasoning } = weighed({ taps: [...look, mummies, spotty] });
    expect(reasoning.diseases).toEqual(before.reasoning.diseases);
    expect(reasoning.reasons.silent.map((one) => one.why)).toContain('photograph-beside-the-eye');
  });

  test('that contradicts what was said of the pattern asks for a second look, and rules nothing', () => {
    const { keep, weighed } = visited();
    const notSpotty: Tap = { tap: 'sign', sign: 'pattern.spotty', outcome: 'not seen' };
    const compact: Tap = { tap: 'sign', sign: 'pattern.compact', outcome: 'seen' };
    const looks = (said: readonly Tap[]) =>
      weighed({ taps: [...look, mummies, ...said] }).findings.filter((one) => one.id.includes('photograph'));
    const before = weighed({ taps: [...look, mummies, notSpotty] });
    keep(gappy, false);
    expect(looks([notSpotty])).toEqual([]);
    keep(gappy, true);
    const [again, ...more] = looks([notSpotty]);
    expect(more).toEqual([]);
    // Each third cell is open: 66 or 67 of 100 are sealed.
    expect(again).toMatchObject({ id: 'casework.examined.photograph-spotty', weight: 'warns', values: { sides: 1 } });
    expect([66, 67]).toContain(again?.values.solid);
    expect(looks([compact]).map((one) => one.id)).toEqual(['casework.examined.photograph-spotty']);
    expect(looks([spotty])).toEqual([]);
    expect(looks([])).toEqual([]);
    const { result, suspicion, reasoning } = weighed({ taps: [...look, mummies, notSpotty] });
    expect({ result, suspicion, diseases: reasoning.diseases }).toEqual({
      result: before.result,
      suspicion: null,
      diseases: before.reasoning.diseases,
    });
  });

  test('of a compact comb contradicts "spotty", and agrees with the rest', () => {
    const { keep, weighed } = visited();
    // One cell in 200 is open: solid beyond the error, doubled, of the reader.
    keep(broodComb(1200, 200), true);
    const ids = (said: readonly Tap[]) =>
      weighed({ taps: [...look, mummies, ...said] })
        .findings.map((one) => one.id)
        .filter((id) => id.includes('photograph'));
    expect(ids([spotty])).toEqual(['casework.examined.photograph-compact']);
    expect(ids([{ tap: 'sign', sign: 'pattern.spotty', outcome: 'not seen' }])).toEqual([]);
    expect(ids([])).toEqual([]);
  });

  test('makes no suspicion, opens nothing and changes no word of the result', () => {
    const { keep, weighed } = visited();
    const before = weighed({ taps: look, closing: 'not judged' });
    for (const side of ['a', 'b'] as const) keep(broodComb(1200, 2), true, { ...combPlace, side });
    const after = weighed({ taps: look, closing: 'not judged' });
    expect(after).toMatchObject({ result: before.result, suspicion: null, stillSuspect: null });
    expect(after.reasoning.states).toEqual(before.reasoning.states);
  });

  test('of another visit does not count', () => {
    const { keep, state, site } = visited();
    keep(solid, true);
    expect(readingEvidence(state(), site.newId())).toEqual({ pattern: null, sides: [], readings: [] });
  });

  test('taken back later counts no more; one accepted later does not change what stood', () => {
    const { site, keep, state, close, visit } = visited();
    const first = keep(gappy, true);
    site.carryOut(close(), at);
    const reasoningOn = () => {
      const [examined] = state().examinations;
      if (!examined) throw new Error('nothing was sealed');
      return wholeReasoning({
        examination: examined.body,
        entry: examined.written.entry,
        colony: state(),
        pack,
        known: null,
        priorChanges: [],
        suspectedByInspector: [],
        now: later,
      }).assessed;
    };
    const stood = reasoningOn();
    expect(stood.combReadings).toEqual([first]);
    keep(solid, true, { ...combPlace, frame: 5 });
    expect(reasoningOn()).toEqual(stood);
    expect(readingEvidence(state(), visit).readings).toHaveLength(2);
    site.carryOut(
      replaceReading({ colony: state(), corrects: first, reason: 'wrong hive', correctedAt: later, accepted: false }),
      later,
    );
    expect(reasoningOn().combReadings).toEqual([]);
  });
});

describe('several readings of one visit', () => {
  test('are added up, the newest of each comb side', () => {
    const { keep, state, visit } = visited();
    keep(gappy, true, combPlace, '2027-05-04T09:10:00.000Z');
    const newest = keep(solid, true, combPlace, '2027-05-04T09:20:00.000Z');
    const other = keep(solid, true, { ...combPlace, side: 'b' });
    const { pattern, readings } = readingEvidence(state(), visit);
    expect([...readings].sort()).toEqual([newest, other].sort());
    expect(pattern?.sides).toBe(2);
    // 29 of 30 cells are sealed.
    expect(pattern?.solidness).toBeCloseTo(29 / 30, 2);
    expect(pattern?.standardError).toBeGreaterThan(0.04);
  });

  test('leave out a side of which most could not be read', () => {
    const { keep, state, visit } = visited();
    keep(
      solid.map((of, n) => (n % 3 === 0 ? of : 'hidden')),
      true,
    );
    expect(readingEvidence(state(), visit).readings).toEqual([]);
  });

  test('say how much sealed brood there is only when every lifted side is among them, or they show enough', () => {
    const side = (sealedShare: number, frame: number | null = 1) => ({
      box: 'lower',
      frame,
      side: 'a' as const,
      sealedShare,
      sealedShareAtLeast: 0.9 * sealedShare,
    });
    const of = (...sides: ReturnType<typeof side>[]) => ({ pattern: null, readings: [], sides });
    expect(sealedSidesMeasured(of(), 2)).toBeNull();
    expect(sealedSidesMeasured(of(side(0.5)), 2)).toBeNull();
    expect(sealedSidesMeasured(of(side(0.5), side(0.2)), 2)).toBeCloseTo(0.7, 12);
    expect(sealedSidesMeasured(of(side(0.5, null), side(0.2)), 2)).toBeNull();
    expect(sealedSidesMeasured(of(...[1, 2, 3, 4, 5].map((frame) => side(0.9, frame))), 18)).toBeCloseTo(4.05, 12);
    expect(sealedSidesMeasured(of(...[1, 2, 3, 4].map((frame) => side(0.9, frame))), 18)).toBeNull();
    expect(
      sealedSidesMeasured(of({ ...side(0.5), sealedShare: null, sealedShareAtLeast: null } as never), 1),
    ).toBeNull();
  });
});
