import {
  type Columns,
  guessColumns,
  headerFingerprint,
  rememberedColumns,
} from '@combside/casework/register/import/columns';

const prefix = 'combside.import ';

/** The matching used the last time for a file with these headers on this device, else a guess. */
export function columnsFor(header: readonly string[]): { readonly columns: Columns; readonly remembered: boolean } {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(prefix + headerFingerprint(header)) ?? 'null');
    const columns = rememberedColumns(header, kept);
    if (columns) return { columns, remembered: true };
  } catch {
    // What was kept cannot be read: it is guessed again.
  }
  return { columns: guessColumns(header), remembered: false };
}

export function rememberColumns(header: readonly string[], columns: Columns): void {
  try {
    localStorage.setItem(prefix + headerFingerprint(header), JSON.stringify(columns));
  } catch {
    // A full store only costs the memory of this matching.
  }
}
