/** A table as a file holds it, before anybody said what its columns mean. */
export interface Table {
  readonly header: readonly string[];
  readonly rows: readonly TableRow[];
  /** What is wrong with the file itself. Rows behind such a fault are still there, as far as they could be read. */
  readonly faults: readonly LineFault[];
}

export interface TableRow {
  /** Where it begins: line of the text, row of the sheet, or number of the feature, counted from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

/** Everything that can be wrong with a line; each is the id of a sentence in `words` that says what to do. */
export const faultIds = [
  'register.fault.quote-open',
  'register.fault.text-after-quote',
  'register.fault.cells-too-many',
  'register.fault.no-header',
  'register.fault.header-twice',
  'register.fault.unreadable-letter',
  'register.fault.not-json',
  'register.fault.not-features',
  'register.fault.feature-not-point',
  'register.fault.too-long',
  'register.fault.number-not-read',
  'register.fault.number-out-of-range',
  'register.fault.number-not-whole',
  'register.fault.coordinate-not-read',
  'register.fault.position-half',
  'register.fault.position-zero',
  'register.fault.position-swapped',
  'register.fault.position-far',
  'register.fault.date-not-read',
  'register.fault.date-order-unknown',
  'register.fault.date-in-future',
  'register.fault.word-unknown',
  'register.fault.mail-not-read',
  'register.fault.record-not-read',
  'register.fault.record-not-there',
  'register.fault.site-without-name',
  'register.fault.keeper-without-name',
  'register.fault.line-says-nothing',
  'register.fault.twice-in-file',
  'register.fault.several-match',
  'register.fault.other-district',
  'register.fault.contested',
] as const;
export type FaultId = (typeof faultIds)[number];

/** Something wrong, and where: line of the file, column counted from 1 (null where it is about the whole line). */
export interface LineFault {
  readonly id: FaultId;
  readonly line: number;
  readonly column: number | null;
  /** The column's header, empty where there is none. */
  readonly header: string;
  /** What stands there, cut to a length that fits a screen. */
  readonly value: string;
  /** Further values of the sentence. */
  readonly values: Readonly<Record<string, string | number>>;
}

export function lineFault(
  id: FaultId,
  line: number,
  where: { readonly column?: number; readonly header?: string; readonly value?: string } = {},
  values: LineFault['values'] = {},
): LineFault {
  return {
    id,
    line,
    column: where.column ?? null,
    header: where.header ?? '',
    value: shortened(where.value ?? ''),
    values,
  };
}

const shown = 60;

function shortened(text: string): string {
  return text.length > shown ? `${text.slice(0, shown - 1)}…` : text;
}
