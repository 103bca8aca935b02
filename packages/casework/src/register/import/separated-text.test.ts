import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { readCell, readSeparatedText, separatorOf, writeSeparatedText } from './separated-text.ts';

const seed = { seed: 20_270_504 };
/** Letters that make trouble: quotation marks, separators, line ends, blanks, signs of formulas. */
const cell = fc.string({ unit: fc.constantFrom(...`"',;|\t\n\r =+-@aZü0 .`), maxLength: 12 });
const plain = (text: string) => text.replaceAll('\u00a0', ' ').trim();

describe('separated text', () => {
  test('what is written is read again, whatever stands in the cells', () => {
    const table = fc
      .integer({ min: 1, max: 5 })
      .chain((width) =>
        fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 6 }),
      );
    fc.assert(
      fc.property(table, fc.constantFrom(',', ';', '\t', '|'), (rows, separator) => {
        const written = writeSeparatedText([rows[0]?.map((_, at) => `column ${at}`) ?? [], ...rows], separator);
        const read = readSeparatedText(written, separator);
        const kept = rows.filter((cells) => cells.some((one) => one.trim() !== ''));
        expect(read.faults).toEqual([]);
        expect(read.rows.map(({ cells }) => rows[0]?.map((_, at) => readCell(cells[at] ?? '')))).toEqual(
          kept.map((cells) => cells.map(plain)),
        );
      }),
      seed,
    );
  });

  test('reads as Papa Parse does what it writes', () => {
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 6 }), (rows) => {
        const text = Papa.unparse([['one', 'two', 'three', 'four'], ...rows], { quotes: true });
        const oracle = Papa.parse<string[]>(text, { delimiter: ',', newline: '\r\n' }).data.slice(1);
        const read = readSeparatedText(text, ',');
        const full = (cells: readonly string[]) => Array.from({ length: 4 }, (_, at) => cells[at] ?? '');
        const blank = (cells: readonly string[]) => full(cells).map((one) => (one.trim() === '' ? '' : one));
        expect(read.rows.map(({ cells }) => blank(cells))).toEqual(
          oracle.filter((cells) => cells.some((one) => one.trim() !== '')).map(blank),
        );
      }),
      seed,
    );
  });

  test('never throws and never loses its place, whatever comes', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...'",;\n\r a1'), maxLength: 60 }), (text) => {
        const { rows } = readSeparatedText(text);
        const lines = rows.map(({ line }) => line);
        expect(lines).toEqual([...new Set(lines)].sort((a, b) => a - b));
      }),
      seed,
    );
  });

  test('a cell in quotation marks may hold line ends; the lines behind it keep their numbers', () => {
    const { rows } = readSeparatedText('name;place\n"Ann\nBell";mill\r\nBen;ford\r\n');
    expect(rows).toEqual([
      { line: 2, cells: ['Ann\nBell', 'mill'] },
      { line: 4, cells: ['Ben', 'ford'] },
    ]);
  });

  test.each([
    ['commas', 'a,b,c\n1,2,3\n', ','],
    ['semicolons with decimal commas', 'a;b;c\n1,5;2,5;x\n3,5;4,5;y\n', ';'],
    ['tabs', 'a\tb\n1,2\t3\n', '\t'],
    ['the separator told in the first line', 'sep=|\na|b\n1|2\n', '|'],
    ['separators inside quotation marks', '"a,b,c";d\n"1,2,3";4\n', ';'],
    ['one column', 'a\n1\n', ','],
  ])('finds the separator: %s', (_, text, separator) => {
    expect(separatorOf(text)).toBe(separator);
  });

  test.each([
    ['an open quotation mark', 'a,b\n1,"2\n3,4\n', 'register.fault.quote-open', 2, 2],
    ['text behind a closed one', 'a,b\n"1"x,2\n', 'register.fault.text-after-quote', 2, 1],
    ['more cells than columns', 'a,b\n1,2\n1,2,3\n', 'register.fault.cells-too-many', 3, 3],
    ['a header twice', 'a,b,a\n1,2,3\n', 'register.fault.header-twice', 1, 3],
    ['nothing at all', '', 'register.fault.no-header', 1, null],
  ])('says what is wrong and where: %s', (_, text, id, line, column) => {
    expect(readSeparatedText(text).faults[0]).toMatchObject({ id, line, column });
  });

  test('an open quotation mark does not swallow the rest of the file', () => {
    expect(readSeparatedText('a,b\n1,"2\n3,4\n').rows.map(({ line }) => line)).toContain(3);
  });

  test('a formula is guarded on its way out', () => {
    expect(writeSeparatedText([['=1+1', '+49 30', '-3', '@x']])).toBe("'=1+1,'+49 30,-3,'@x\r\n");
  });
});
