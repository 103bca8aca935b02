import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { usualPlanning, visitGrounds } from './planning-settings.ts';
import { type ApiariesToRank, type ApiaryToRank, type CaseSite, rankApiaries } from './rank-apiaries.ts';

const today = '2027-06-01';
const quiet: ApiaryToRank = {
  apiary: 'a',
  position: { latitude: 56, longitude: 3 },
  keeper: 'k1',
  lastVisitedOn: today,
  lastConfirmedOn: today,
  asked: [],
};
const site: CaseSite = {
  apiary: 'case',
  position: { latitude: 56, longitude: 3 },
  keeper: 'k9',
  since: '2027-04-12',
  lastOn: '2027-05-01',
};
const far: CaseSite = { ...site, position: { latitude: 50, longitude: 3 } };
const rank = (
  one: Partial<ApiaryToRank>,
  cases: readonly CaseSite[] = [],
  movements: ApiariesToRank['movements'] = [],
) => rankApiaries({ apiaries: [{ ...quiet, ...one }], cases, movements, settings: usualPlanning, today })[0];

describe('an apiary gets points', () => {
  test('none where nothing speaks for a visit', () => {
    expect(rank({})).toEqual({ apiary: 'a', points: 0, grounds: [] });
  });

  test('for a case nearby, in proportion to its nearness', () => {
    // Half of 4 miles north: a degree of latitude is 111.195 km on a sphere of 6371.0088 km.
    const half = { ...site, position: { latitude: 56 + 6437 / 2 / 111_195, longitude: 3 } };
    const ranked = rank({}, [half]);
    expect(ranked?.grounds).toHaveLength(1);
    expect(ranked?.grounds[0]).toMatchObject({ ground: 'case nearby', from: 'case' });
    expect(ranked?.grounds[0]?.metres).toBeCloseTo(6437 / 2, -1);
    expect(ranked?.points).toBeCloseTo(15, 2);
    expect(rank({}, [{ ...site, position: { latitude: 56.06, longitude: 3 } }])?.points).toBe(0);
    expect(rank({ position: null }, [site])?.points).toBe(0);
  });

  test('for the nearest case, and never for itself', () => {
    const nearer = { ...site, apiary: 'nearer', position: { latitude: 56.01, longitude: 3 } };
    const further = { ...site, apiary: 'further', position: { latitude: 55.97, longitude: 3 } };
    expect(rank({}, [further, nearer])?.grounds[0]?.from).toBe('nearer');
    expect(rank({}, [{ ...site, apiary: 'a', keeper: 'k1' }])?.points).toBe(0);
  });

  test('for a keeper who has a case elsewhere', () => {
    expect(rank({}, [{ ...far, keeper: 'k1' }])).toMatchObject({
      points: 30,
      grounds: [{ ground: 'owner link', from: 'case' }],
    });
    expect(rank({ keeper: null }, [{ ...far, keeper: null }])?.points).toBe(0);
  });

  test('for bees that went either way since a year before the suspicion, and no earlier', () => {
    const move = (latest: string, from = 'case', to = 'a') => [{ from, to, latest }];
    expect(rank({}, [far], move('2026-04-12'))?.grounds).toMatchObject([{ ground: 'trade', from: 'case', days: 415 }]);
    expect(rank({}, [far], move('2026-04-11'))?.points).toBe(0);
    expect(rank({}, [far], move('2027-05-20', 'a', 'case'))?.points).toBe(30);
    expect(rank({}, [far], move('2027-05-20', 'b', 'c'))?.points).toBe(0);
  });

  test('for time, a place nobody confirmed, and what was asked for', () => {
    expect(rank({ lastVisitedOn: '2026-06-01' })?.points).toBeCloseTo(10, 10);
    expect(rank({ lastVisitedOn: null })?.points).toBe(20);
    expect(rank({ lastVisitedOn: '2020-06-01' })?.points).toBe(20);
    expect(rank({ lastConfirmedOn: '2025-06-01' })?.points).toBe(0);
    expect(rank({ lastConfirmedOn: '2025-05-31' })?.points).toBe(5);
    expect(rank({ lastConfirmedOn: null })?.points).toBe(5);
    expect(rank({ asked: ['suspicion reported'] })?.points).toBe(40);
    expect(rank({ asked: ['request', 'suspicion reported'] })?.grounds.map((one) => one.ground)).toEqual([
      'suspicion reported',
      'request',
    ]);
  });

  test('not for a suspicion of longer ago than clusters last', () => {
    expect(rank({}, [{ ...site, since: '2022-05-01', lastOn: '2022-05-31' }])?.points).toBe(0);
    expect(rank({}, [{ ...site, since: '2022-05-01', lastOn: '2022-06-01' }])?.points).toBe(30);
  });
});

test('points are the sum of the grounds, lie between 0 and the sum of the weights, and never fall when more is known', () => {
  const place = fc.record({ latitude: fc.double({ min: 55, max: 57, noNaN: true }), longitude: fc.constant(3) });
  const apiary = fc.record({
    apiary: fc.constantFrom('a', 'b', 'c', 'd'),
    position: fc.option(place),
    keeper: fc.option(fc.constantFrom('k1', 'k2')),
    lastVisitedOn: fc.option(fc.constantFrom('2025-01-01', '2027-03-01')),
    lastConfirmedOn: fc.option(fc.constantFrom('2024-01-01', '2027-03-01')),
    asked: fc.subarray(['suspicion reported', 'request'] as const),
  });
  const sites = fc.array(
    fc.record({
      apiary: fc.constantFrom('a', 'x', 'y'),
      position: fc.option(place),
      keeper: fc.option(fc.constantFrom('k1', 'k2')),
      since: fc.constant('2026-01-01'),
      lastOn: fc.constantFrom('2026-01-01', '2027-02-01'),
    }),
  );
  const all = visitGrounds.reduce((sum, ground) => sum + usualPlanning.weights[ground].value, 0);
  fc.assert(
    fc.property(apiary, sites, sites, (one, some, more) => {
      const given = { apiaries: [one], movements: [], settings: usualPlanning, today };
      const before = rankApiaries({ ...given, cases: some })[0];
      const after = rankApiaries({ ...given, cases: [...some, ...more] })[0];
      const sum = after?.grounds.reduce((total, ground) => total + ground.points, 0) ?? -1;
      expect(after?.points).toBeCloseTo(sum, 9);
      expect(after?.points).toBeLessThanOrEqual(all);
      expect(before?.points).toBeGreaterThanOrEqual(0);
      expect(after?.points ?? 0).toBeGreaterThanOrEqual((before?.points ?? 0) - 1e-9);
    }),
    { seed: 7, numRuns: 300 },
  );
});

test('the nearest case found in the band is the nearest of all', () => {
  const position = fc.record({
    latitude: fc.double({ min: -89, max: 89, noNaN: true }),
    longitude: fc.double({ min: -180, max: 180, noNaN: true }),
  });
  const wide = { ...usualPlanning, caseWithinMetres: { ...usualPlanning.caseWithinMetres, value: 3_000_000 } };
  fc.assert(
    fc.property(position, fc.array(position, { maxLength: 30 }), (here, places) => {
      const cases = places.map((one, index) => ({ ...site, apiary: `case ${index}`, position: one }));
      const given = { apiaries: [{ ...quiet, position: here }], movements: [], settings: wide, today };
      const found = rankApiaries({ ...given, cases })[0]?.grounds[0]?.metres ?? null;
      const each = cases.map((one) => rankApiaries({ ...given, cases: [one] })[0]?.grounds[0]?.metres ?? Infinity);
      const least = Math.min(...each);
      expect(found).toBe(least === Number.POSITIVE_INFINITY ? null : least);
    }),
    { seed: 11, numRuns: 100 },
  );
});
