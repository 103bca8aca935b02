import { fold } from '@combside/record/fold';
import type { ColonyState, VisitState } from '@combside/record/states';
import type { CombResult } from '@combside/science/comb/comb-result';
import { readerVersion } from '@combside/science/comb/reading/reader-version';
import { describe, expect, test } from 'vitest';
import { broodComb, combPlace, laidComb, laidPicture, photographOf } from '../acceptance/laid-comb.ts';
import { arrival, smallSite, startAt } from '../acceptance/small-site.ts';
import { correctedReading } from './corrected-reading.ts';
import { type ProposeReading, proposeReading, readingPart } from './propose-reading.ts';
import { type ReplaceReading, replaceReading } from './replace-reading.ts';

const at = '2027-05-04T09:30:00.000Z';
const later = '2027-05-05T07:00:00.000Z';

function photographed() {
  const site = smallSite();
  const visit = site.newId();
  site.carryOut(startAt(site, visit), arrival);
  const [colony] = site.colonies;
  const state = () => site.ledger.colony(colony);
  const result = laidComb(broodComb(800, 10, 40));
  const propose = (change: Partial<ProposeReading> = {}) =>
    proposeReading({
      read: { result, picture: laidPicture },
      photograph: photographOf(at),
      place: combPlace,
      observedAt: at,
      colony: state(),
      visit: site.ledger.visit(visit),
      accepted: false,
      ...change,
    });
  const kept = () => {
    const [first] = state().combReadings;
    if (!first) throw new Error('no reading was kept');
    return first;
  };
  const replace = (change: Partial<ReplaceReading>) =>
    replaceReading({
      colony: state(),
      corrects: kept().written.entry,
      reason: 'looked at it again',
      correctedAt: later,
      ...change,
    });
  return { site, visit, state, result, propose, kept, replace };
}

describe('a reading that is kept', () => {
  test('holds what the machine read, with the version of the reader, and folds into the colony', () => {
    const { site, propose, kept, result } = photographed();
    site.carryOut(propose(), at);
    const { body } = kept();
    expect(body.reader).toMatchObject({ version: readerVersion, picture: laidPicture, pitchPx: 20, region: null });
    expect(body.cells.count).toBe(840);
    const standing = correctedReading(body);
    if (!standing || !result.reading) throw new Error('not readable');
    const { secondLook: _, ...figures } = result.reading;
    expect(standing.machine).toEqual(figures);
    expect(standing.reading).toEqual(figures);
    expect(standing.agreement).toBeNull();
  });

  test('is the same entry from the part that a draft keeps as from the reading itself', () => {
    const { propose, result } = photographed();
    const part = readingPart({ result, picture: laidPicture });
    if (!part) throw new Error('not kept');
    const fromDraft = propose({ read: { part: structuredClone(part) } });
    const atOnce = propose();
    expect(fromDraft.ok && fromDraft.reading).toEqual(atOnce.ok && atOnce.reading);
  });

  test('takes cells a little outside the photograph to its edge', () => {
    const { propose, result } = photographed();
    const [first, ...rest] = result.cells;
    if (!first) throw new Error('no cells');
    const outside: CombResult = { ...result, cells: [{ ...first, x: -3, y: 1503.7 }, ...rest] };
    const act = propose({ read: { result: outside, picture: laidPicture } });
    if (!act.ok) throw new Error(act.reason);
    expect(correctedReading(act.reading)?.cells[0]).toMatchObject({ x: 0, y: 1500 });
  });

  test('stands newest first by when the comb was photographed', () => {
    const { site, propose, state } = photographed();
    site.carryOut(propose({ observedAt: '2027-05-04T09:50:00.000Z' }), at);
    site.carryOut(propose({ photograph: photographOf(at, 'cd'.repeat(32)) }), at);
    expect(state().combReadings.map((one) => one.body.observedAt)).toEqual(['2027-05-04T09:50:00.000Z', at]);
  });

  test('is refused where it cannot stand, with the reason', () => {
    const { site, propose, result, visit } = photographed();
    const reason = (change: Partial<ProposeReading>) => {
      const act = propose(change);
      return act.ok ? 'done' : act.reason;
    };
    const bad: CombResult = { ...result, verdict: 'refused', reasons: ['under-bees'], cells: [] };
    expect(reason({ read: { result: bad, picture: laidPicture } })).toBe('casework.refused.comb-not-read');
    expect(reason({ read: { result, picture: { width: 20_000, height: 900 } } })).toBe(
      'casework.refused.comb-picture-too-large',
    );
    expect(reason({ observedAt: '2027-05-03T00:00:00.000Z' })).toBe('casework.refused.time-runs-backward');
    expect(reason({ corrections: [{ cell: 840, class: 'pollen' }] })).toBe('casework.refused.comb-cell-not-there');
    expect(reason({ corrections: [{ cell: 1, class: 'purple' }] })).toBe('casework.refused.unknown-word');
    const noVisit = fold({ type: 'visit', id: site.newId() }, []) as VisitState;
    expect(reason({ visit: noVisit })).toBe('casework.refused.visit-not-started');
    const noColony = fold({ type: 'colony', id: site.newId() }, []) as ColonyState;
    expect(reason({ colony: noColony })).toBe('casework.refused.not-in-register');
    expect(reason({ visit: site.ledger.visit(visit) })).toBe('done');
    site.carryOut(propose(), at);
    expect(reason({})).toBe('casework.refused.comb-reading-kept');
    expect(reason({ photograph: photographOf(at, 'cd'.repeat(32)) })).toBe('done');
  });
});

describe('corrections', () => {
  const said = [
    { cell: 0, class: 'sealed-worker-brood' },
    { cell: 1, class: 'sealed-worker-brood' },
    { cell: 2, class: 'open-empty' },
    { cell: 9, class: 'pollen' },
  ];

  test('stand beside the machine, which stays; figures and agreement follow them', () => {
    const { site, propose, kept } = photographed();
    site.carryOut(propose({ corrections: said }), at);
    const standing = correctedReading(kept().body);
    if (!standing) throw new Error('not readable');
    expect(standing.changed).toBe(2);
    expect(standing.machine.counts).toMatchObject({ 'sealed-worker-brood': 720, 'open-empty': 80, pollen: 0 });
    expect(standing.reading.counts).toMatchObject({ 'sealed-worker-brood': 719, 'open-empty': 80, pollen: 1 });
    expect(standing.cells[9]).toMatchObject({ machine: 'open-empty', class: 'pollen', coarse: 'open', lookedAt: true });
    expect(standing.cells[0]).toMatchObject({ lookedAt: true, class: 'sealed-worker-brood' });
    expect(standing.cells[3]?.lookedAt).toBe(false);
    // By hand: two of four agree. Machine: 3 sealed, 1 open; person: 2 sealed, 1 open, 1 pollen. Chance agreement is
    // 3/4 * 2/4 + 1/4 * 1/4 = 7/16, so kappa = (1/2 - 7/16) / (1 - 7/16) = 1/9.
    expect(standing.agreement).toMatchObject({ lookedAt: 4, share: 0.5 });
    expect(standing.agreement?.kappa).toBeCloseTo(1 / 9, 12);
  });

  test('in words of a newer version are left out and counted; cells of a newer version give no reading', () => {
    const { propose } = photographed();
    const act = propose();
    if (!act.ok) throw new Error(act.reason);
    const body = { ...act.reading, corrections: [{ cell: 1, class: 'queen-cup' }] };
    expect(correctedReading(body)).toMatchObject({ setAside: 1, changed: 0, agreement: null });
    expect(correctedReading({ ...body, cells: { count: 3, packed: 'AAAA' } })).toBeNull();
  });

  test('made later are entries with a reason; both readings stay', () => {
    const { site, propose, replace, kept } = photographed();
    site.carryOut(propose(), at);
    site.carryOut(replace({ corrections: said, accepted: true }), later);
    expect(kept().original).toMatchObject({ accepted: false, corrections: [] });
    expect(kept().body).toMatchObject({ accepted: true, corrections: said });
    expect(kept().body.cells).toEqual(kept().original.cells);
    expect(kept().corrections.map((one) => one.reason)).toEqual(['looked at it again']);
    site.carryOut(replace({ accepted: false, reason: 'wrong comb' }), later);
    expect(kept().body.accepted).toBe(false);
    expect(kept().corrections).toHaveLength(2);
    site.carryOut(replace({ place: { ...combPlace, frame: 5 }, reason: 'frame miscounted' }), later);
    expect(kept().body.place.frame).toBe(5);
  });

  test('are refused without a reason, a reading or a change', () => {
    const { site, propose, replace } = photographed();
    site.carryOut(propose({ corrections: said }), at);
    const reason = (change: Partial<ReplaceReading>) => {
      const act = replace(change);
      return act.ok ? 'done' : act.reason;
    };
    expect(reason({ accepted: true, reason: ' ' })).toBe('casework.refused.reason-missing');
    expect(reason({ corrects: site.newId(), accepted: true })).toBe('casework.refused.no-such-line');
    expect(reason({ corrections: [...said].reverse() })).toBe('casework.refused.nothing-changed');
    expect(reason({ corrections: [{ cell: -1, class: 'pollen' }] })).toBe('casework.refused.comb-cell-not-there');
    expect(reason({ accepted: true, correctedAt: '2027-05-04T09:00:00.000Z' })).toBe(
      'casework.refused.time-runs-backward',
    );
    expect(reason({ accepted: true })).toBe('done');
  });
});
