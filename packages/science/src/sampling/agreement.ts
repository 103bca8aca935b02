import { calculation, shown } from '../distributions/calculation.ts';
import { acceptCount, acceptList, DomainError } from '../distributions/domain.ts';
import { twoSidedDeviate } from '../distributions/normal.ts';
import { wilson } from './interval.ts';

/** Agreement of two readers. The last six are for two categories only, null for more, and null where undefined. */
export interface Agreement {
  /** Share of units on which both readers agree. */
  readonly observedAgreement: number;
  /** Share on which they would agree by chance, given how often each uses each category. */
  readonly expectedAgreement: number;
  /** Null when only one category is used: report the observed agreement and `pabak`. */
  readonly kappa: number | null;
  /** For the interval (Fleiss, Cohen and Everitt 1969). */
  readonly standardError: number | null;
  /** For testing kappa = 0 only; an interval built with it is wrong. */
  readonly standardErrorUnderNull: number | null;
  /** 95 % normal interval, upper end not above 1. Null where its error comes out as 0, as when the readers never differ. */
  readonly lower: number | null;
  readonly upper: number | null;
  /** 2 Po - 1. */
  readonly pabak: number | null;
  /** 95 %, by Wilson's interval of Po: it has a width also where the readers never differ. */
  readonly pabakLower: number | null;
  readonly pabakUpper: number | null;
  /** (a - d)/n, signed. */
  readonly prevalenceIndex: number | null;
  /** (b - c)/n, signed. */
  readonly biasIndex: number | null;
  /** 2a/(2a + b + c). */
  readonly positiveAgreement: number | null;
  /** 2d/(2d + b + c). */
  readonly negativeAgreement: number | null;
  /** (b - c)^2/(b + c), without correction; null when the readers never disagree. */
  readonly mcNemar: number | null;
}

/**
 * Do two inspectors (or two tests) agree, beyond chance?
 *
 *   kappa = (Po - Pe)/(1 - Pe)
 *
 * Kappa falls when nearly everything is negative, even if the readers hardly ever differ; read it with `pabak`, the
 * prevalence index and the positive agreement. Worked: [[19, 10], [6, 256]]: 0.67 (0.52 to 0.82).
 *
 * @param inputs.table counts: row = first reader's category, column = second reader's; for two categories
 *   [[++, +-], [-+, --]]; square, two or more categories, at least one unit
 * @throws DomainError when the table is not square, holds anything but whole numbers of 0 or more, or is empty
 * Source: Fleiss, Cohen and Everitt 1969 [FLEISS69]; Byrt, Bishop and Carlin 1993 [BYRT93]; Newcombe 1998 [NEWCOMBE98]
 */
export function kappa(inputs: { table: readonly (readonly number[])[] }): Agreement {
  const rows = acceptList('table', inputs.table, (name, value) => acceptList(name, value, (n, v) => acceptCount(n, v)));
  const categories = rows.length;
  if (categories < 2 || rows.some((row) => row.length !== categories)) {
    throw new DomainError('table', 'square, with two or more categories', inputs.table);
  }
  const n = rows.flat().reduce((a, b) => a + b, 0);
  if (n === 0) throw new DomainError('table', 'a table with at least one unit', inputs.table);
  const p = rows.map((row) => row.map((count) => count / n));
  const rowShare = p.map((row) => row.reduce((a, b) => a + b, 0));
  const columnShare = p.map((_, j) => p.reduce((sum, row) => sum + (row[j] as number), 0));
  const observed = p.reduce((sum, row, i) => sum + (row[i] as number), 0);
  const expected = rowShare.reduce((sum, share, i) => sum + share * (columnShare[i] as number), 0);
  return {
    observedAgreement: observed,
    expectedAgreement: expected,
    ...beyondChance(p, rowShare, columnShare, observed, expected, n),
    ...twoCategories(rows, observed, n),
  };
}

export const kappaCalculation = calculation({
  name: 'kappa',
  room: 'sampling',
  line: 'agreement of two readers beyond chance',
  inputs: { table: 'square table of counts, rows first reader, columns second; [[++, +-], [-+, --]]' },
  formula: '(Po - Pe)/(1 - Pe); standard error by the delta method',
  sources: ['FLEISS69', 'BYRT93', 'NEWCOMBE98'],
  call: kappa,
  steps: (_, r) => [
    `observed ${shown(r.observedAgreement)}, by chance ${shown(r.expectedAgreement)}`,
    `kappa ${shown(r.kappa)} (${shown(r.lower)} to ${shown(r.upper)}), PABAK ${shown(r.pabak)}`,
  ],
});

function beyondChance(
  p: readonly (readonly number[])[],
  rowShare: readonly number[],
  columnShare: readonly number[],
  observed: number,
  expected: number,
  n: number,
) {
  const room = 1 - expected;
  if (room <= 1e-12) {
    return { kappa: null, standardError: null, standardErrorUnderNull: null, lower: null, upper: null };
  }
  const value = (observed - expected) / room;
  let spread = 0;
  let nullSpread = 0;
  p.forEach((row, i) => {
    row.forEach((cell, j) => {
      const crossed = (rowShare[j] as number) + (columnShare[i] as number);
      spread += cell * ((i === j ? room : 0) - crossed * (1 - observed)) ** 2;
    });
    const own = (rowShare[i] as number) * (columnShare[i] as number);
    nullSpread += own * ((rowShare[i] as number) + (columnShare[i] as number));
  });
  const variance = (spread - (observed * expected - 2 * expected + observed) ** 2) / (n * room ** 4);
  const standardError = Math.sqrt(Math.max(0, variance));
  const standardErrorUnderNull = Math.sqrt(Math.max(0, expected + expected ** 2 - nullSpread) / n) / room;
  const z = twoSidedDeviate(0.95);
  // Readers who never differ give an error of 0, which says nothing of how many more of them would.
  const says = standardError > 1e-6;
  return {
    kappa: value,
    standardError,
    standardErrorUnderNull,
    lower: says ? value - z * standardError : null,
    upper: says ? Math.min(1, value + z * standardError) : null,
  };
}

function twoCategories(rows: readonly (readonly number[])[], observed: number, n: number) {
  if (rows.length !== 2) {
    return {
      pabak: null,
      pabakLower: null,
      pabakUpper: null,
      prevalenceIndex: null,
      biasIndex: null,
      positiveAgreement: null,
      negativeAgreement: null,
      mcNemar: null,
    };
  }
  const [a, b, c, d] = rows.flat() as [number, number, number, number];
  const ratio = (top: number, bottom: number) => (bottom === 0 ? null : top / bottom);
  const around = wilson({ positives: a + d, tested: n, confidence: 0.95 });
  return {
    pabak: 2 * observed - 1,
    pabakLower: 2 * around.lower - 1,
    pabakUpper: 2 * around.upper - 1,
    prevalenceIndex: (a - d) / n,
    biasIndex: (b - c) / n,
    positiveAgreement: ratio(2 * a, 2 * a + b + c),
    negativeAgreement: ratio(2 * d, 2 * d + b + c),
    mcNemar: ratio((b - c) ** 2, b + c),
  };
}
