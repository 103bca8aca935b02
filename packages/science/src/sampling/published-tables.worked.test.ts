import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { wilson } from './interval.ts';

/*
 * Published inspection tables, worked through: enter the counts, get the percentages, and put what was printed beside
 * them. The table is printed at the end, because where the two differ the reader should see it. The recomputed figures
 * were worked out apart from this code; intervals are 95 % Wilson.
 */
interface Share {
  programme: string;
  measure: string;
  count: number;
  of: number;
  printedPercent: string | null;
  recomputedPercent: string;
  wilson?: [string, string];
  remark?: string;
}
interface Change {
  programme: string;
  measure: string;
  from: number;
  to: number;
  printedPercent: string;
  recomputedPercent: string;
  remark?: string;
}
const tables: {
  shares: Share[];
  changes: Change[];
  sums: { programme: string; measure: string; parts: number[]; printedTotal: number }[];
  implied: { programme: string; measure: string; printedPercent: string; of: number; impliedCount: number }[];
} = JSON.parse(readFileSync(new URL('./reference/published-tables.json', import.meta.url), 'utf8'));

const decimalsOf = (text: string) => text.split('.')[1]?.length ?? 0;

/** Half-up (away from zero) to as many decimals as the text beside it shows. */
function asPrinted(value: number, like: string): string {
  const scale = 10 ** decimalsOf(like);
  const rounded = Math.floor(Math.abs(value) * scale * (1 + 1e-12) + 0.5) / scale;
  return (Math.sign(value) * rounded).toFixed(decimalsOf(like));
}

const lines: string[] = [];
const show = (programme: string, measure: string, counts: string, printed: string, got: string, remark = '') =>
  lines.push(
    [programme.padEnd(30), measure.padEnd(33), counts.padEnd(18), printed.padEnd(8), got.padEnd(22), remark].join(' '),
  );

afterAll(() => {
  const head = ['programme', 'measure', 'counts', 'printed', 'recomputed % (95 % Wilson)'];
  console.log([head.join(' | '), ...lines].join('\n'));
});

describe('published tables from their counts', () => {
  it.each(tables.shares)(
    '$programme: $measure',
    ({ programme, measure, count, of, printedPercent, recomputedPercent, wilson: ends, remark }) => {
      const { estimate, lower, upper } = wilson({ positives: count, tested: of, confidence: 0.95 });
      const got = asPrinted(100 * estimate, recomputedPercent);
      const gotEnds = [lower, upper].map((end) => asPrinted(100 * end, ends?.[0] ?? recomputedPercent));
      show(programme, measure, `${count}/${of}`, printedPercent ?? '-', `${got} (${gotEnds.join('-')})`, remark);
      expect(got).toBe(recomputedPercent);
      if (ends) expect(gotEnds).toEqual(ends);
      // Where nothing is remarked, the printed figure must follow from the counts by half-up rounding.
      if (printedPercent !== null && remark === undefined) {
        expect(asPrinted(100 * estimate, printedPercent)).toBe(printedPercent);
      } else if (remark?.includes('does not follow')) {
        expect(asPrinted(100 * estimate, printedPercent ?? '')).not.toBe(printedPercent);
      } else if (remark?.includes('cuts off')) {
        const scale = 10 ** decimalsOf(printedPercent ?? '');
        expect((Math.floor(100 * estimate * scale) / scale).toFixed(decimalsOf(printedPercent ?? ''))).toBe(
          printedPercent,
        );
      }
    },
  );

  it.each(tables.changes)(
    '$programme: change of $measure',
    ({ programme, measure, from, to, printedPercent, recomputedPercent, remark }) => {
      const got = asPrinted(100 * (to / from - 1), recomputedPercent);
      show(programme, measure, `${from} to ${to}`, printedPercent, got, remark);
      expect(got).toBe(recomputedPercent);
    },
  );

  it.each(tables.sums)('$programme: $measure', ({ programme, measure, parts, printedTotal }) => {
    const sum = parts.reduce((a, b) => a + b, 0);
    show(programme, measure, parts.join(' + '), String(printedTotal), String(sum));
    expect(sum).toBe(printedTotal);
  });

  it.each(tables.implied)(
    '$programme: $measure implies a count',
    ({ programme, measure, printedPercent, of, impliedCount }) => {
      const count = Math.round((Number(printedPercent) / 100) * of);
      show(programme, measure, `? of ${of}`, printedPercent, `implies about ${count}`);
      expect(count).toBe(impliedCount);
    },
  );
});
