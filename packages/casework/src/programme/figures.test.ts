import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ExaminedRow, Registered } from './examined.ts';
import { type Figure, programmeFigures } from './figures.ts';

const register: Registered = { keepers: 10, apiaries: 20, colonies: 100, keeperOf: new Map([['s1', 'k1']]) };
const row = (change: Partial<ExaminedRow> = {}): ExaminedRow => ({
  examination: 'e1',
  colony: 'c1',
  apiary: 's1',
  visit: 'v1',
  on: '2027-05-04',
  depth: 'full',
  reason: 'routine',
  result: 'nothing seen with this look',
  suspected: [],
  basis: 'inspector',
  finds: [],
  ...change,
});
const ill = { result: 'suspect', suspected: ['american-foulbrood'] };
const find = (figures: readonly Figure[], ...id: string[]) =>
  figures.find((one) => JSON.stringify(one.id) === JSON.stringify(id));

describe('the figures of a programme', () => {
  const rows = [
    row({ examination: 'e1', colony: 'c1', ...ill }),
    row({ examination: 'e2', colony: 'c2', depth: 'part', finds: ['varroa'] }),
    // Looked at twice: first from the top bars, a month later in full.
    row({ examination: 'e3', colony: 'c3', depth: 'tops', visit: 'v2' }),
    row({ examination: 'e4', colony: 'c3', visit: 'v3', on: '2027-06-04', reason: 'suspicion reported', ...ill }),
    row({ examination: 'e5', colony: 'c4', apiary: 's2', depth: 'tops', visit: 'v4', reason: 'contact' }),
  ];
  const figures = programmeFigures(rows, register);

  test('count looks by their depth, and each colony once under its deepest', () => {
    expect(find(figures, 'examinations', 'tops')?.count).toBe(2);
    expect(find(figures, 'colonies', 'full')?.count).toBe(2);
    expect(find(figures, 'colonies', 'part')?.count).toBe(1);
    expect(find(figures, 'colonies', 'tops')?.count).toBe(1);
    expect(find(figures, 'inspected')?.count).toBe(3);
    expect(find(figures, 'apiaries', 'full')?.count).toBe(1);
    expect(find(figures, 'apiaries', 'tops')?.count).toBe(1);
  });

  test('never mix depths in one denominator', () => {
    expect(find(figures, 'prevalence', 'american-foulbrood', 'full')).toMatchObject({ count: 2, of: 2 });
    expect(find(figures, 'prevalence', 'american-foulbrood', 'tops')).toMatchObject({ count: 0, of: 1 });
    expect(find(figures, 'apiary prevalence', 'american-foulbrood', 'full')).toMatchObject({ count: 1, of: 1 });
  });

  test('say which visits found it, who began them, and in which month', () => {
    expect(find(figures, 'yield', 'routine')).toMatchObject({ count: 1, of: 2 });
    expect(find(figures, 'yield', 'suspicion reported')).toMatchObject({ count: 1, of: 1 });
    expect(find(figures, 'found by', 'an inspector')).toMatchObject({ count: 1, of: 2 });
    expect(find(figures, 'found by', 'the keeper')).toMatchObject({ count: 1, of: 2 });
    expect(find(figures, 'month', 'suspect', '2027-06')?.count).toBe(1);
    expect(find(figures, 'finds', 'varroa')?.count).toBe(1);
    expect(find(figures, 'suspicions', 'american-foulbrood', 'inspector', 'full')?.count).toBe(2);
  });

  test('hold coverage and incidence against the register, and give no share where the register holds fewer', () => {
    expect(find(figures, 'coverage', 'colonies')).toMatchObject({ count: 3, of: 100 });
    expect(find(figures, 'coverage', 'keepers')).toMatchObject({ count: 1, of: 10 });
    expect(find(figures, 'incidence', 'american-foulbrood')).toMatchObject({ count: 2, of: 100 });
    const poor = programmeFigures(rows, { ...register, colonies: 1 });
    expect(find(poor, 'coverage', 'colonies')).toMatchObject({ count: 3, of: null, low: null });
    expect(find(poor, 'incidence', 'american-foulbrood')?.of).toBeNull();
  });

  test('keep the examinations behind each number', () => {
    expect(find(figures, 'prevalence', 'american-foulbrood', 'full')?.examinations).toEqual(['e1', 'e4']);
    expect(find(figures, 'examinations', 'tops')?.examinations).toEqual(['e3', 'e5']);
  });

  test('of nothing are no figures but the empty ones', () => {
    const empty = programmeFigures([], register);
    expect(empty.filter((one) => one.count > 0 || one.low !== null)).toEqual([]);
    expect(empty.filter((one) => one.id[0] === 'coverage')).toEqual([
      { id: ['coverage', 'keepers'], count: 0, of: 10, low: null, high: null, examinations: [] },
      { id: ['coverage', 'apiaries'], count: 0, of: 20, low: null, high: null, examinations: [] },
      { id: ['coverage', 'colonies'], count: 0, of: 100, low: null, high: null, examinations: [] },
    ]);
  });
});

/** Counts as a report prints them, one full look for each colony. */
function printed(colonies: number, diseased: number): ExaminedRow[] {
  return Array.from({ length: colonies }, (_, index) =>
    row({
      examination: `e${index}`,
      colony: `c${index}`,
      apiary: `s${index % 50}`,
      visit: `v${index % 50}`,
      ...(index < diseased ? ill : {}),
    }),
  );
}

/** Per cent with three decimals, half up. */
const percent = (share: number) => Math.round(share * 100_000) / 1000;

test.each([
  // Counts: apiary programme of Ohio, 2015; Smallholder on England and Wales, 2007 (smallholder.co.uk/2220065).
  // Intervals: Wilson's formula, worked out apart from this program to three decimals of a per cent.
  ['Ohio 2015', 19_607, 20, 0.102, 0.066, 0.158],
  ['England 2007', 26_379, 46, 0.174, 0.131, 0.233],
  ['Wales 2007', 4705, 14, 0.298, 0.177, 0.499],
])('%s comes out of its own counts', (_, colonies, diseased, share, low, high) => {
  const figure = find(
    programmeFigures(printed(colonies, diseased), register),
    'prevalence',
    'american-foulbrood',
    'full',
  ) as Figure;
  expect([figure.count, figure.of]).toEqual([diseased, colonies]);
  expect(percent(figure.count / colonies)).toBe(share);
  expect(percent(figure.low as number)).toBe(low);
  expect(percent(figure.high as number)).toBe(high);
});

test('the order of the rows does not matter, classes are disjoint, and each number counts what its records hold', () => {
  const any = fc.record({
    examination: fc.uuid(),
    colony: fc.constantFrom('c1', 'c2', 'c3', 'c4'),
    apiary: fc.constantFrom('s1', 's2'),
    visit: fc.constantFrom('v1', 'v2', 'v3'),
    on: fc.constantFrom('2027-05-04', '2027-06-01'),
    depth: fc.constantFrom('full', 'part', 'tops', 'outside', 'laboratory only', 'by ear'),
    reason: fc.constantFrom('routine', 'contact', 'suspicion reported', null),
    result: fc.constantFrom('suspect', 'remains suspect', 'nothing seen with this look', null),
    suspected: fc.subarray(['american-foulbrood', 'european-foulbrood']),
    basis: fc.constantFrom('inspector', 'pack rule', null),
    finds: fc.subarray(['varroa']),
  });
  fc.assert(
    fc.property(fc.array(any, { maxLength: 30 }), (rows) => {
      const figures = programmeFigures(rows, register);
      expect(programmeFigures([...rows].reverse(), register)).toEqual(figures);
      const total = (kind: string) =>
        figures.filter((one) => one.id[0] === kind).reduce((sum, one) => sum + one.count, 0);
      expect(total('examinations')).toBe(rows.length);
      expect(total('colonies')).toBe(new Set(rows.map((one) => one.colony)).size);
      expect(total('apiaries')).toBe(new Set(rows.map((one) => one.apiary)).size);
      for (const one of figures) {
        if (one.of !== null) expect(one.count).toBeLessThanOrEqual(one.of);
        if (one.count > 0) expect(one.examinations.length).toBeGreaterThan(0);
      }
    }),
    { seed: 23, numRuns: 200 },
  );
});
