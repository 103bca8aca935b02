import { expect, test } from 'vitest';
import { siteBody } from '../../acceptance/small-site.ts';
import type { ApiaryStanding } from '../rows.ts';
import { darwinCore } from './darwin-core.ts';

const id = (number: number) => `01900000-0000-7000-8000-${String(number).padStart(12, '0')}`;
const sites = (count: number, latitude: number, longitude: number, keepers: number): ApiaryStanding[] =>
  Array.from({ length: count }, (_, index) => ({
    ...{ id: id(index), standing: [], mergedInto: null, notTheSame: [] },
    body: {
      ...siteBody,
      keeper: id(1000 + (index % keepers)),
      position: {
        latitude: latitude + index * 1e-4,
        longitude,
        uncertaintyMetres: 8,
        how: 'measured on site' as const,
      },
    },
  }));
const cellsIn = (held: ApiaryStanding[]) => {
  const { table, ...rest } = darwinCore({ keepers: [], apiaries: held }, 'quillmoor');
  const [terms = [], ...rows] = table;
  return { ...rest, rows: rows.map((row) => Object.fromEntries(terms.map((term, at) => [term, row[at]]))) };
};

test('a cell of five keepers is shown by its middle, with how far a site may lie from it', () => {
  const { rows, cellsSuppressed } = cellsIn(sites(6, 56.01, 3.02, 5));
  expect(cellsSuppressed).toBe(0);
  // Half a cell is 0.05 degrees: 5,560 m north, and 5,560 m times cos 56 = 3,109 m east; together 6,370 m.
  expect(Number(rows[0]?.coordinateUncertaintyInMeters)).toBeGreaterThan(6360);
  expect(Number(rows[0]?.coordinateUncertaintyInMeters)).toBeLessThan(6380);
  expect(rows[0]).toMatchObject({ decimalLatitude: '56.05', decimalLongitude: '3.05', organismQuantity: '6' });
});

test('a cell of four keepers is left out, however many sites they have', () => {
  expect(cellsIn(sites(40, 56.01, 3.02, 4))).toMatchObject({ rows: [], cellsSuppressed: 1, sitesSuppressed: 40 });
});

test('nothing in it names a keeper, a site or its position', () => {
  const text = JSON.stringify(cellsIn(sites(9, 56.0123, 3.0234, 9)));
  for (const secret of ['56.0123', '3.0234', id(1000), id(0), siteBody.name, siteBody.addressWords]) {
    expect(text).not.toContain(secret);
  }
});

test('west and south of the zero, and at the edges of the world, cells stay cells', () => {
  const { rows } = cellsIn([...sites(5, -0.05, -0.05, 5), ...sites(5, 10, 180, 5)]);
  expect(rows.map((row) => [row.decimalLatitude, row.decimalLongitude])).toEqual([
    ['-0.05', '-0.05'],
    ['10.05', '179.95'],
  ]);
});
