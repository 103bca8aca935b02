/**
 * A cell as RFC 4180 writes it. What a spreadsheet would take for a formula gets an apostrophe in front, also behind blanks
 * and line breaks: some programs take them off before they read.
 */
function cell(value: string | number | null): string {
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  const safe = /^(\s*[=+\-@]|[\t\r])/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** Rows as CSV after RFC 4180: commas, CR LF, quotes doubled; numbers with a decimal point. */
export function commaSeparated(rows: readonly (readonly (string | number | null)[])[]): string {
  return rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}

/** Hands a text over as a file; the mark in front lets spreadsheets read it as UTF-8. */
export function saveText(name: string, text: string): void {
  const address = URL.createObjectURL(new Blob(['\uFEFF', text], { type: 'text/csv;charset=utf-8' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
