import { readGeoJson } from '@combside/casework/register/import/geojson';
import { readSeparatedText, tableFrom } from '@combside/casework/register/import/separated-text';
import type { Table } from '@combside/casework/register/import/table';
import { decodeText } from './decode.ts';

export interface FileRead {
  readonly table: Table;
  /** `UTF-8` and the like, or `sheet` for a spreadsheet. */
  readonly encoding: string;
  /** Names of the sheets of a spreadsheet, in its own order; empty for every other file. */
  readonly sheets: readonly string[];
  /** The one of them that was read. */
  readonly sheet: string | null;
}

/** Why a file is no table at all; each is the end of an id of `words`. */
export type Unreadable = 'old-spreadsheet' | 'empty' | 'too-large' | 'broken';

/** Largest file that is read, in bytes. A hundred thousand rows are some twenty million. */
export const largestFile = 150_000_000;

/**
 * Reads a file by what it holds, whatever its name says.
 *
 * @param sheet which sheet of a spreadsheet; null for the first one on which anything stands
 */
export async function readFile(file: Blob, sheet: string | null = null): Promise<FileRead | Unreadable> {
  if (file.size === 0) return 'empty';
  if (file.size > largestFile) return 'too-large';
  const bytes = new Uint8Array(await file.arrayBuffer());
  // The first bytes of a ZIP archive, which a spreadsheet is, and of the container of older office files.
  if (begins(bytes, [0x50, 0x4b, 0x03, 0x04])) return readSpreadsheet(file, sheet);
  if (begins(bytes, [0xd0, 0xcf, 0x11, 0xe0])) return 'old-spreadsheet';
  const { text, encoding } = decodeText(bytes);
  const isJson = /^\uFEFF?\s*[{[]/.test(text.slice(0, 1000));
  return { table: isJson ? readGeoJson(text) : readSeparatedText(text), encoding, sheets: [], sheet: null };
}

/** One sheet of a spreadsheet; its reader is fetched only when one comes. */
async function readSpreadsheet(file: Blob, wanted: string | null): Promise<FileRead | Unreadable> {
  try {
    const { default: readSheets } = await import('read-excel-file/web-worker');
    const read = (await readSheets(file)).map(({ sheet, data }) => ({
      sheet,
      lines: data
        .map((cells, index) => ({ line: index + 1, cells: cells.map(cellText) }))
        .filter(({ cells }) => cells.some((cell) => cell.trim() !== '')),
    }));
    const chosen = read.find(({ sheet, lines }) => (wanted === null ? lines.length > 0 : sheet === wanted)) ?? read[0];
    const [first, ...rest] = chosen?.lines ?? [];
    const sheets = read.map(({ sheet }) => sheet);
    if (first && chosen) return { table: tableFrom(first, rest), encoding: 'sheet', sheets, sheet: chosen.sheet };
    // An empty sheet beside filled ones is shown as it is, so that another can be chosen.
    return read.some(({ lines }) => lines.length > 0)
      ? { table: { header: [], rows: [], faults: [] }, encoding: 'sheet', sheets, sheet: chosen?.sheet ?? null }
      : 'empty';
  } catch {
    return 'broken';
  }
}

/** Numbers without powers of ten, days as days: a spreadsheet's day is midnight in UTC. */
function cellText(cell: unknown): string {
  if (cell === null || cell === undefined) return '';
  if (cell instanceof Date) return Number.isNaN(cell.getTime()) ? '' : cell.toISOString().slice(0, 10);
  if (typeof cell === 'number') return Number.isInteger(cell) ? String(cell) : cell.toFixed(9);
  return String(cell);
}

function begins(bytes: Uint8Array, signature: readonly number[]): boolean {
  return signature.every((byte, at) => bytes[at] === byte);
}
