import { dayIn } from './asked/shared-fields.ts';
import type { Field, Fields } from './question.ts';

export type Value = number | string | null;
export type Values = Readonly<Record<string, Value>>;

/** What an address held, and the names of what it held that the question does not take. */
export interface Read {
  readonly values: Values;
  readonly leftOut: readonly string[];
}

/** Whether a number lies within its field, on its step for whole numbers. */
export function fits(field: Extract<Field, { kind: 'number' }>, value: number): boolean {
  if (!Number.isFinite(value) || value < field.from || value > field.to) return false;
  return field.step !== 1 || Number.isInteger(value);
}

function readOne(field: Field, text: string): Value | undefined {
  if (field.kind === 'number') {
    const value = Number(text);
    return text.trim() !== '' && fits(field, value) ? value : undefined;
  }
  if (field.kind === 'choice') return field.options.includes(text) ? text : undefined;
  if (field.kind === 'day' && text !== '' && dayIn(text) === null) return undefined;
  return text.length <= 2000 ? text : undefined;
}

/** What was stated in an address: everything else stands where it starts. Nothing outside its range is let in. */
export function readAddress(fields: Fields, address: URLSearchParams): Read {
  const values: Record<string, Value> = {};
  const leftOut: string[] = [];
  for (const [name, field] of Object.entries(fields)) values[name] = field.start;
  for (const [name, text] of address) {
    const field = Object.hasOwn(fields, name) ? fields[name] : undefined;
    const value = field ? readOne(field, text) : undefined;
    if (value === undefined) leftOut.push(`${name}=${text.slice(0, 40)}`);
    else values[name] = value;
  }
  return { values, leftOut };
}

/** The address that brings these inputs back: only what differs from the start, in the order of the fields. */
export function writeAddress(fields: Fields, values: Values): string {
  const address = new URLSearchParams();
  for (const [name, field] of Object.entries(fields)) {
    const value = values[name] ?? null;
    if (value !== null && value !== '' && value !== field.start) address.set(name, String(value));
  }
  return address.toString();
}
