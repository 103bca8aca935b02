import { type LineFault, lineFault, type Table, type TableRow } from './table.ts';

/** Separators that are looked for, in the order in which a tie is broken. */
const separators = [',', ';', '\t', '|'] as const;

/** How many characters of a file are looked at to find its separator. */
const lookedAt = 20_000;

/** A text of more than this many characters in one cell is an open quotation mark, not a cell. */
const longestCell = 20_000;

/**
 * The separator of a text: the one that cuts most of its first lines into the same number of cells, at least two.
 * Separators inside quotation marks do not count.
 */
export function separatorOf(text: string): string {
  const told = /^\uFEFF?sep=(.)\r?\n/i.exec(text)?.[1];
  if (told) return told;
  let best: string = ',';
  let bestScore = 0;
  for (const separator of separators) {
    const { rows } = rowsOf(text.slice(0, lookedAt), separator);
    // The last row may be cut in the middle.
    const widths = (rows.length > 1 ? rows.slice(0, -1) : rows).slice(0, 50).map(({ cells }) => cells.length);
    const counts = new Map<number, number>();
    for (const width of widths) if (width > 1) counts.set(width, (counts.get(width) ?? 0) + 1);
    let score = 0;
    for (const [width, count] of counts) score = Math.max(score, (count / widths.length) * 1000 + width);
    if (score > bestScore) {
      best = separator;
      bestScore = score;
    }
  }
  return best;
}

/**
 * Reads a text of separated values (RFC 4180, any separator, LF, CRLF or CR). Empty lines are left out. A cell in
 * quotation marks may hold separators, line ends and doubled quotation marks; blanks around it are dropped.
 *
 * @param text decoded text, with or without a byte order mark
 * @param separator one character
 * @returns the first row that holds anything as the header, the others with the line on which each begins
 */
export function readSeparatedText(text: string, separator = separatorOf(text)): Table {
  const { rows, faults } = rowsOf(text, separator);
  const [first, ...rest] = rows;
  if (!first) return { header: [], rows: [], faults: [lineFault('register.fault.no-header', 1)] };
  return tableFrom(first, rest, faults);
}

/** A table whose first row is the header; says which headers are missing or stand there twice, and which rows are too long. */
export function tableFrom(first: TableRow, rest: readonly TableRow[], found: readonly LineFault[] = []): Table {
  const header = trimmedEnd(first.cells).map((cell) => cell.trim());
  const faults = [...found];
  const seen = new Set<string>();
  header.forEach((name, index) => {
    if (name === '') return;
    if (seen.has(name)) {
      faults.push(
        lineFault('register.fault.header-twice', first.line, { column: index + 1, header: name, value: name }),
      );
    }
    seen.add(name);
  });
  if (seen.size === 0) faults.push(lineFault('register.fault.no-header', first.line));
  const rows: TableRow[] = [];
  for (const row of rest) {
    const cells = trimmedEnd(row.cells);
    if (cells.length === 0) continue;
    if (cells.length > header.length) {
      const values = { cells: cells.length, columns: header.length };
      const where = { column: header.length + 1, value: cells[header.length] ?? '' };
      faults.push(lineFault('register.fault.cells-too-many', row.line, where, values));
    }
    rows.push({ line: row.line, cells });
  }
  return { header, rows, faults };
}

/** Without the empty cells at its end. */
function trimmedEnd(cells: readonly string[]): readonly string[] {
  let length = cells.length;
  while (length > 0 && (cells[length - 1] ?? '').trim() === '') length -= 1;
  return length === cells.length ? cells : cells.slice(0, length);
}

function rowsOf(text: string, separator: string): { rows: TableRow[]; faults: LineFault[] } {
  const rows: TableRow[] = [];
  const faults: LineFault[] = [];
  const cut = separator.charCodeAt(0);
  let at = text.charCodeAt(0) === 0xfeff ? 1 : 0;
  let line = 1;
  // Spreadsheets write the separator into the first line; it is no data.
  const told = /^sep=.\r?\n/i.exec(text.slice(at, at + 8));
  if (told) {
    at += told[0].length;
    line = 2;
  }
  while (at < text.length) {
    const begun = line;
    const cells: string[] = [];
    for (let more = true; more; ) {
      let end = at;
      while (text.charCodeAt(end) === 0x20 || (text.charCodeAt(end) === 0x09 && cut !== 0x09)) end += 1;
      if (text.charCodeAt(end) === 0x22) {
        const opened = line;
        let cell = '';
        at = end + 1;
        for (;;) {
          const close = text.indexOf('"', at);
          if (close === -1 || close - at + cell.length > longestCell) {
            const where = { column: cells.length + 1, value: text.slice(at, at + 60) };
            faults.push(lineFault('register.fault.quote-open', opened, where));
            // The rest of that line is taken as it stands, so that the lines behind it can still be read.
            const stop = lineEnd(text, at);
            cell += text.slice(at, stop);
            at = stop;
            break;
          }
          cell += text.slice(at, close);
          at = close + 1;
          if (text.charCodeAt(at) !== 0x22) break;
          cell += '"';
          at += 1;
        }
        line += lineEndsIn(cell);
        let after = at;
        while (after < text.length && !isCut(text.charCodeAt(after), cut)) after += 1;
        const left = text.slice(at, after).trim();
        if (left !== '') {
          const where = { column: cells.length + 1, value: `${cell}" ${left}` };
          faults.push(lineFault('register.fault.text-after-quote', line, where));
        }
        at = after;
        cells.push(cell);
      } else {
        end = at;
        while (end < text.length && !isCut(text.charCodeAt(end), cut)) end += 1;
        cells.push(text.slice(at, end));
        at = end;
      }
      const sign = text.charCodeAt(at);
      more = at < text.length && sign === cut;
      if (at < text.length) at += sign === 0x0d && text.charCodeAt(at + 1) === 0x0a ? 2 : 1;
      // A separator at the very end of the text is followed by one more, empty cell.
      if (more && at >= text.length) {
        cells.push('');
        more = false;
      }
    }
    line += 1;
    if (cells.some((cell) => cell.trim() !== '')) rows.push({ line: begun, cells });
  }
  return { rows, faults };
}

function isCut(sign: number, cut: number): boolean {
  return sign === cut || sign === 0x0a || sign === 0x0d;
}

function lineEnd(text: string, from: number): number {
  let end = from;
  while (end < text.length && text.charCodeAt(end) !== 0x0a && text.charCodeAt(end) !== 0x0d) end += 1;
  return end;
}

function lineEndsIn(cell: string): number {
  let count = 0;
  for (let at = 0; at < cell.length; at++) {
    const sign = cell.charCodeAt(at);
    if (sign === 0x0a || (sign === 0x0d && cell.charCodeAt(at + 1) !== 0x0a)) count += 1;
  }
  return count;
}

/**
 * Writes a table as separated text: CRLF (RFC 4180), a cell without blanks around it, in quotation marks where it must be. A text that a
 * spreadsheet would take for a formula gets an apostrophe in front, as spreadsheets themselves write it; reading takes
 * it off again (`readCell`).
 */
export function writeSeparatedText(rows: readonly (readonly string[])[], separator = ','): string {
  const special = new RegExp(`["\\r\\n${separator === '\t' ? '\\t' : `\\${separator}`}]`);
  return rows
    .map((cells) =>
      cells
        .map((cell) => {
          const safe = guarded(cell.trim());
          return special.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
        })
        .join(separator),
    )
    .map((line) => `${line}\r\n`)
    .join('');
}

const formula = /^[=+\-@]/;
const plainNumber = /^[+-]?\d+([.,]\d+)?$/;

function guarded(cell: string): string {
  return (formula.test(cell) && !plainNumber.test(cell)) || /^'[=+\-@']/.test(cell) ? `'${cell}` : cell;
}

/** A cell without blanks around it, without the apostrophe that guards against formulas, with plain spaces inside. */
export function readCell(cell: string): string {
  const text = cell.replaceAll('\u00a0', ' ').trim();
  return /^'[=+\-@']/.test(text) ? text.slice(1) : text;
}
