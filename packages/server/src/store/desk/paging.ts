import { ServerError } from '../errors.ts';

/** Where a page ended, as text for the address of the next one. */
export function pageMark(values: readonly (string | null)[]): string {
  return Buffer.from(JSON.stringify(values)).toString('base64url');
}

/** @throws ServerError `bad-request` when the text is not a mark of ours with so many values, the last a UUID */
export function readPageMark(mark: string | undefined, count: number): readonly (string | null)[] | undefined {
  if (mark === undefined) return undefined;
  try {
    const values: unknown = JSON.parse(Buffer.from(mark, 'base64url').toString('utf8'));
    const whole =
      Array.isArray(values) &&
      values.length === count &&
      values.every((value) => value === null || (typeof value === 'string' && !value.includes('\u0000'))) &&
      /^[0-9a-f-]{36}$/.test(String(values.at(-1)));
    if (whole) return values as (string | null)[];
  } catch {
    // Falls through to the one answer.
  }
  throw new ServerError('bad-request', 'after');
}

/** A pattern for `like` that finds the text anywhere, with the pattern's own signs taken as plain text. */
export function patternAnywhere(text: string): string {
  return `%${text.replaceAll('\u0000', '').replace(/[\\%_]/g, (sign) => `\\${sign}`)}%`;
}
