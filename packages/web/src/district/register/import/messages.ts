import type { DateOrder } from '@combside/casework/register/import/cells';
import type { Columns } from '@combside/casework/register/import/columns';
import type { ImportCounts, LinePlan } from '@combside/casework/register/import/plan-import';
import type { LineFault } from '@combside/casework/register/import/table';
import type { Proposal } from '@combside/record/entry';
import type { Unreadable } from './read-file.ts';

/** How the person wants the file read. */
export interface Wishes {
  readonly columns: Columns;
  readonly district: string;
  readonly dateOrder: DateOrder | null;
  readonly language: string;
  /** The day of the import, `YYYY-MM-DD`. */
  readonly today: string;
  /** Stays with each record that is entered or changed, as its reason. */
  readonly reason: string;
}

export type ToImporter =
  | { readonly ask: 'read'; readonly file: File; readonly sheet: string | null }
  | { readonly ask: 'plan'; readonly wishes: Wishes }
  /** Hands over what is to be written. */
  | { readonly ask: 'take' };

/** A file as the columns step shows it. */
export interface FileShown {
  readonly name: string;
  readonly encoding: string;
  /** Sheets of a spreadsheet, and the one that was read; none for every other file. */
  readonly sheets: readonly string[];
  readonly sheet: string | null;
  readonly rows: number;
  readonly header: readonly string[];
  /** The first few rows. */
  readonly examples: readonly (readonly string[])[];
  /** What is wrong with the header: nothing can go on until it is mended. */
  readonly headerFaults: readonly LineFault[];
}

/** What would happen. */
export interface Preview {
  readonly sites: ImportCounts;
  readonly keepers: ImportCounts;
  /** Entries that would be written, reasons not counted. */
  readonly entries: number;
  readonly faultyLines: number;
  readonly faults: readonly LineFault[];
  readonly lines: readonly LinePlan[];
}

export type FromImporter =
  | { readonly told: 'read'; readonly file: FileShown }
  | { readonly told: 'unreadable'; readonly why: Unreadable }
  | { readonly told: 'fetching'; readonly count: number }
  | { readonly told: 'planning'; readonly done: number; readonly of: number }
  | { readonly told: 'planned'; readonly preview: Preview }
  | { readonly told: 'taken'; readonly proposals: readonly Proposal[] }
  | { readonly told: 'failed' };
