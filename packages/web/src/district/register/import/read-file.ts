import { readGeoJson } from '@combside/casework/register/import/geojson';
import { readSeparatedText, tableFrom } from '@combside/casework/register/import/separated-text';
import type { Table } from '@combside/casework/register/import/table';
import { decodeText } from './decode.ts';

export interface FileRead {
  readonly table: Table;
  /** `UTF-8` and the like, or `sheet` for a spreadsheet. */
  readonly encoding: string;
}

/** Why a file is no table at all; each is the end of an id of `words`. */
export type Unreadable = 'old-spreadsheet' | 'empty' | 'too-large' | 'broken';

/** Largest file that is read, in bytes. A hundred thousand rows are some twenty million. */
export const largestFile = 150_000_000;

/** Reads a file by what it holds, whatever its name says. */
export async function readFile(file: Blob): Promise<FileRead | Unreadable> {
  if (file.size === 0) return 'empty';
  if (file.size > largestFile) return 'too-large';
  const bytes = new Uint8Array(await file.arrayBuffer());
  // The first bytes of a ZIP archive, which a spreadsheet is, and of the container of older office files.
  if (begins(bytes, [0x50, 0x4b, 0x03, 0x04])) return readSpreadsheet(file);
  if (begins(bytes, [0xd0, 0xcf, 0x11, 0xe0])) return 'old-spreadsheet';
  const { text, encoding } = decodeText(bytes);
  const isJson = /^\uFEFF?\s*[{[]/.test(text.slice(0, 1000));
  return { table: isJson ? readGeoJson(text) : readSeparatedText(text), encoding };
}

/** The first sheet of a spreadsheet; its reader is fetched only when one comes. */
async function readSpreadsheet(file: Blob): Promise<FileRead | Unreadable> {
  try {
    const { readSheet } = await import('read-excel-file/web-worker');
    const sheet = await readSheet(file);
    const rows = sheet.map((cells, index) => ({ line: index + 1, cells: cells.map(cellText) }));
    const filled = rows.filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
    const [first, ...rest] = filled;
    return first ? { table: tableFrom(first, rest), encoding: 'sheet' } : 'empty';
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
