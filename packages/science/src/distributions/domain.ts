/**
 * Thrown when an input lies outside its range. Says which field, what it may be and what was given, so that the
 * person who typed it can put it right.
 */
export class DomainError extends RangeError {
  readonly field: string;
  readonly range: string;
  readonly given: unknown;

  /**
   * @param field name of the input, as the caller knows it
   * @param range what the input may be, in words that follow "must be"
   * @param given what was found instead
   */
  constructor(field: string, range: string, given: unknown) {
    super(`${field} must be ${range}, but was ${shown(given)}`);
    this.name = 'DomainError';
    this.field = field;
    this.range = range;
    this.given = given;
  }
}

function shown(given: unknown): string {
  if (given === undefined) return 'not given';
  if (typeof given === 'number') return String(given);
  const text = JSON.stringify(given) ?? String(given);
  return text.length > 80 ? `${text.slice(0, 77)}...` : text;
}

/** Accepts a finite number for which `inside` holds. @throws DomainError naming field, range and what was given */
export function acceptNumber(field: string, given: unknown, range: string, inside: (value: number) => boolean): number {
  if (typeof given !== 'number' || !Number.isFinite(given) || !inside(given)) {
    throw new DomainError(field, range, given);
  }
  return given;
}

/** Accepts any finite number. */
export const acceptFinite = (field: string, given: unknown) =>
  acceptNumber(field, given, 'a finite number', () => true);

/** Accepts a fraction from 0 to 1, both ends included. Fractions are never per cent. */
export const acceptFraction = (field: string, given: unknown) =>
  acceptNumber(field, given, 'a fraction from 0 to 1', (v) => v >= 0 && v <= 1);

/** Accepts a fraction above 0, up to and including 1. */
export const acceptPositiveFraction = (field: string, given: unknown) =>
  acceptNumber(field, given, 'a fraction above 0, up to 1', (v) => v > 0 && v <= 1);

/** Accepts a fraction strictly between 0 and 1, such as a confidence. */
export const acceptOpenFraction = (field: string, given: unknown) =>
  acceptNumber(field, given, 'a fraction above 0 and below 1', (v) => v > 0 && v < 1);

/** Accepts a number above 0. */
export const acceptPositive = (field: string, given: unknown) =>
  acceptNumber(field, given, 'a number above 0', (v) => v > 0);

/** Accepts a number of 0 or more. */
export const acceptNonNegative = (field: string, given: unknown) =>
  acceptNumber(field, given, 'a number of 0 or more', (v) => v >= 0);

/** Accepts a whole number from `lowest` to `highest` (both included); `reason` says where `highest` comes from. */
export function acceptCount(
  field: string,
  given: unknown,
  lowest = 0,
  highest: number = Number.MAX_SAFE_INTEGER,
  reason = '',
): number {
  const upTo =
    highest === Number.MAX_SAFE_INTEGER
      ? `a whole number of ${lowest} or more`
      : `a whole number from ${lowest} to ${highest}${reason ? ` (${reason})` : ''}`;
  return acceptNumber(field, given, upTo, (v) => Number.isSafeInteger(v) && v >= lowest && v <= highest);
}

/**
 * Accepts a list of at least one item, each accepted by `item`, which gets the item's own name (`tested[2]`).
 * When `length` is given the list must have it; `like` names the list it must match.
 */
export function acceptList<T>(
  field: string,
  given: unknown,
  item: (name: string, value: unknown) => T,
  length?: number,
  like?: string,
): T[] {
  if (!Array.isArray(given) || given.length === 0) {
    throw new DomainError(field, 'a list of at least one item', given);
  }
  if (length !== undefined && given.length !== length) {
    throw new DomainError(field, `a list of ${length} items${like ? `, as many as ${like}` : ''}`, given);
  }
  return given.map((value: unknown, i) => item(`${field}[${i}]`, value));
}

/** Accepts a list of fractions that add up to 1 (to within one in a million). */
export function acceptShares(field: string, given: unknown, length?: number, like?: string): number[] {
  const shares = acceptList(field, given, acceptFraction, length, like);
  const sum = shares.reduce((a, b) => a + b, 0);
  if (Math.abs(sum - 1) > 1e-6) throw new DomainError(field, 'a list of fractions that add up to 1', given);
  return shares;
}

/** Accepts one of the given words. */
export function acceptWord<const W extends string>(field: string, given: unknown, words: readonly W[]): W {
  const found = words.find((word) => word === given);
  if (found === undefined) {
    throw new DomainError(field, `one of ${words.map((word) => `"${word}"`).join(', ')}`, given);
  }
  return found;
}

/** Accepts an object (not a list, not null) whose fields are still to be looked at. */
export function acceptFields(field: string, given: unknown): Record<string, unknown> {
  if (typeof given !== 'object' || given === null || Array.isArray(given)) {
    throw new DomainError(field, 'an object with named fields', given);
  }
  return given as Record<string, unknown>;
}

/** True when a value was not given: absent, or `null` for "not known". */
export const isUnknown = (given: unknown): given is null | undefined => given === null || given === undefined;
