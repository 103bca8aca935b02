import type { SourceId } from '@combside/sources/bibliography';

/**
 * One calculation as it is offered by name: what it answers, what it takes, and how to explain an answer. It stands beside
 * its function; `calculations/` gathers them. The texts are technical English for epidemiologists, as are the names of the
 * fields.
 */
export interface Calculation {
  /** What it is called by: the name of its function, with a word before it where several rooms use that name. */
  readonly name: string;
  readonly room: 'sampling' | 'laboratory' | 'colony' | 'disposal';
  /** What it answers, in one line. */
  readonly line: string;
  /** Every field it takes, with range and unit. */
  readonly inputs: Readonly<Record<string, string>>;
  readonly formula: string;
  readonly sources: readonly SourceId[];
  readonly call: (inputs: never) => object;
  /** The steps that led from these inputs to this result, with the numbers. */
  readonly steps: (inputs: never, result: never) => readonly string[];
}

/**
 * Holds inputs, result and steps of one calculation to the same types. Without effect of its own, and marked so: the phone
 * loads many of these files and asks for nothing by name.
 */
/* @__NO_SIDE_EFFECTS__ */
export function calculation<Inputs extends object, Result extends object>(one: {
  readonly name: string;
  readonly room: Calculation['room'];
  readonly line: string;
  readonly inputs: { readonly [Field in keyof Required<Inputs>]: string };
  readonly formula: string;
  readonly sources: readonly SourceId[];
  readonly call: (inputs: Inputs) => Result;
  readonly steps: (inputs: Inputs, result: Result) => readonly string[];
}): Calculation {
  return one as unknown as Calculation;
}

/** A number as the steps show it: six significant digits, "none" for null. */
export function shown(value: number | null | undefined): string {
  if (value === null || value === undefined) return 'none';
  if (Number.isInteger(value)) return String(value);
  return String(Number(value.toPrecision(6)));
}

/** A list of numbers as the steps show it. */
export const shownList = (values: readonly (number | null)[]): string => `[${values.map(shown).join(', ')}]`;

/** A span of days as the steps show it. */
export const shownSpan = ({ earliest, latest }: { earliest: string; latest: string }): string =>
  `${earliest} to ${latest}`;
