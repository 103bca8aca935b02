import type { CombReadingBody } from '@combside/record/kinds/comb-reading';
import type { CellClass } from '@combside/science/comb/cells/cell-classes';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { broodComb, combPlace, laidComb, laidPicture, photographOf } from '../acceptance/laid-comb.ts';
import { type Comparison, compareReadings, sidesRead } from './compare-readings.ts';
import { readingPart } from './propose-reading.ts';
import { measuredSolidness, solidnessError } from './reader-error.ts';

const may = '2027-05-04T09:30:00.000Z';
const june = '2027-06-01T09:30:00.000Z';

function kept(observedAt: string, classes: readonly CellClass[], change: Partial<CombReadingBody> = {}) {
  const part = readingPart({ result: laidComb(classes), picture: laidPicture });
  if (!part) throw new Error('not kept');
  const body: CombReadingBody = {
    visit: '01900000-0000-7000-8000-000000000001',
    apiary: '01900000-0000-7000-8000-000000000002',
    observedAt,
    photograph: photographOf(observedAt),
    place: combPlace,
    ...part,
    corrections: [],
    accepted: true,
    ...change,
  };
  return body;
}

const solid = broodComb(1200, 25, 200);
const gappy = broodComb(1200, 3, 200);

describe('two readings of one comb side', () => {
  test('say what became less, with how far it may be off', () => {
    const { change, earlier, later, doubts } = compareReadings(kept(june, gappy), kept(may, solid));
    expect(doubts).toEqual([]);
    expect([earlier?.observedAt, later?.observedAt]).toEqual([may, june]);
    // 1152 of 1200 cells sealed before and 800 of 1200 after, at 4 cells per cm2 (CELLRACE): 288 and 200 cm2.
    expect(earlier?.brood.squareCentimetres).toBeCloseTo(288, 6);
    expect(change?.broodArea?.difference).toBeCloseTo(-88, 6);
    expect(change?.broodArea?.says).toBe('less');
    expect(change?.solidness?.difference).toBeCloseTo(
      (later?.solidness?.value ?? 0) - (earlier?.solidness?.value ?? 0),
    );
    expect(change?.solidness?.says).toBe('less');
    expect(change?.shares.map((one) => one.class).sort()).toEqual([
      'open-empty',
      'sealed-honey',
      'sealed-worker-brood',
    ]);
    expect(change?.shares.at(-1)?.class).toBe('sealed-honey');
    const total = (figures: Comparison['earlier']) =>
      Object.values(figures?.shares ?? {}).reduce((sum, share) => sum + share, 0);
    expect(total(earlier)).toBeCloseTo(1, 12);
  });

  test('speak of no change where the difference is within the error', () => {
    const { change } = compareReadings(kept(may, broodComb(1200, 25, 200)), kept(june, broodComb(1200, 22, 200)));
    expect(change?.solidness?.says).toBe('within-error');
    expect(change?.broodArea?.says).toBe('within-error');
    expect(change?.broodArea?.difference).not.toBe(0);
  });

  test('give the same answer whichever is named first', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 40 }), fc.integer({ min: 2, max: 40 }), (a, b) => {
        const one = kept(may, broodComb(400, a));
        const other = kept(june, broodComb(400, b));
        expect(compareReadings(one, other)).toEqual(compareReadings(other, one));
      }),
      { seed: 4, numRuns: 20 },
    );
  });

  test.each<[string, Partial<CombReadingBody>]>([
    ['other-place', { place: { ...combPlace, side: 'b' } }],
    ['other-place', { place: { ...combPlace, box: 'upper' } }],
    ['other-reader', { reader: { ...kept(may, solid).reader, version: 999 } }],
    ['unreadable', { cells: { count: 9, packed: 'AAAA' } }],
  ])('say nothing of a change where there is %s', (doubt, change) => {
    const found = compareReadings(kept(may, solid), kept(june, gappy, change));
    expect(found.doubts).toContain(doubt);
    expect(found.change).toBeNull();
    expect(found.earlier).not.toBeNull();
  });

  test('say nothing of a change where the frame is not known, or most could not be read', () => {
    const unknown = { place: { ...combPlace, frame: null } };
    expect(compareReadings(kept(may, solid, unknown), kept(june, gappy, unknown))).toMatchObject({
      doubts: ['place-not-known'],
      change: null,
    });
    const hidden = solid.map((of, n): CellClass => (n % 5 < 3 ? 'hidden' : of));
    expect(compareReadings(kept(may, solid), kept(june, hidden))).toMatchObject({
      doubts: ['much-unread'],
      change: null,
    });
  });

  test('leave the area out where the photographs show different parts of the side', () => {
    const found = compareReadings(kept(may, solid), kept(june, broodComb(800, 25, 100)));
    expect(found.doubts).toEqual(['other-extent']);
    expect(found.change?.broodArea).toBeNull();
    expect(found.change?.solidness?.says).toBe('within-error');
    const region = { ...kept(june, gappy).reader, region: [0, 1, 2].map((n) => ({ x: 100 * n, y: 90 * (n % 2) })) };
    expect(compareReadings(kept(may, solid), kept(june, gappy, { reader: region })).doubts).toEqual(['other-extent']);
  });

  test('say so where they rest on little, or on a reading nobody accepted', () => {
    const some = solid.map((of, n): CellClass => (n % 5 < 2 ? 'not-decided' : of));
    expect(compareReadings(kept(may, solid, { accepted: false }), kept(june, some)).doubts).toEqual([
      'some-unread',
      'not-accepted',
    ]);
    const small = broodComb(80, 9);
    const few = compareReadings(kept(may, small), kept(june, small));
    expect(few.doubts).toEqual(['few-cells']);
    expect(few.change?.shares).toHaveLength(2);
  });

  test('are found by comb side, newest first', () => {
    const folded = (body: CombReadingBody, entry: string) => ({
      written: { entry, by: '', device: '', at: '', clock: '' },
      body,
      original: body,
      corrections: [],
    });
    const sides = sidesRead({
      combReadings: [
        folded(kept(june, gappy), 'c'),
        folded(kept(june, solid, { place: { ...combPlace, side: 'b' } }), 'b'),
        folded(kept(may, solid), 'a'),
      ],
    });
    expect(sides.map((side) => side.readings.map((one) => one.written.entry))).toEqual([['c', 'a'], ['b']]);
  });
});

describe('the error of a solidness', () => {
  test('is that of the reader and of counting: 95 of 100 cells, worked by hand', () => {
    // Laplace: (95 + 1) / (100 + 2) = 0.941176; sqrt(0.941176 * 0.058824 / 102) = 0.023298; with 0.03: 0.037984.
    expect(solidnessError(95, 5, 0.1)).toBeCloseTo(0.037984, 5);
    expect(solidnessError(95, 5, 0.4)).toBeGreaterThan(0.13);
  });

  test('is never nothing, and the interval stays between 0 and 1', () => {
    const all = measuredSolidness({ solidness: { value: 1, sealed: 5000, missed: 0, leftOut: 0 }, unread: 0 });
    expect(all?.error).toBeGreaterThanOrEqual(0.03);
    expect(all?.high).toBe(1);
    expect(all?.low).toBeLessThan(1);
    expect(measuredSolidness({ unread: 0 })).toBeNull();
  });
});
