import type { Calculation } from '../distributions/calculation.ts';
import { acceptFields, DomainError } from '../distributions/domain.ts';
import { ofColony } from './of-colony.ts';
import { ofDisposal } from './of-disposal.ts';
import { ofLaboratory } from './of-laboratory.ts';
import { ofSampling } from './of-sampling.ts';

/** Every calculation by the name it is called by. */
export const calculations: Readonly<Record<string, Calculation>> = Object.fromEntries(
  [...ofSampling, ...ofLaboratory, ...ofColony, ...ofDisposal].map((one) => [one.name, one]),
);

/**
 * Finds a calculation by name.
 *
 * @throws RangeError when there is none, with names that come near
 */
export function calculationNamed(name: string): Calculation {
  const found = Object.hasOwn(calculations, name) ? calculations[name] : undefined;
  if (found) return found;
  const wanted = name.toLowerCase();
  const near = Object.keys(calculations).filter((known) => {
    const lower = known.toLowerCase();
    return lower.includes(wanted) || (wanted.length > 3 && wanted.includes(lower)) || sharedStart(lower, wanted) >= 6;
  });
  const hint = near.length > 0 ? `; did you mean ${near.slice(0, 5).join(', ')}?` : '';
  throw new RangeError(`no calculation "${name}"${hint}`);
}

function sharedStart(a: string, b: string): number {
  let i = 0;
  while (i < a.length && a[i] === b[i]) i++;
  return i;
}

/**
 * Computes by name from an object of inputs, such as came as JSON. A field the calculation does not know is refused, so
 * that a misspelt one is not silently left out.
 *
 * @throws RangeError when there is no such calculation
 * @throws DomainError when an input is unknown, missing or out of range
 */
export function calculate(name: string, inputs: unknown): object {
  const { call, inputs: known } = calculationNamed(name);
  const fields = acceptFields('inputs', inputs);
  for (const field of Object.keys(fields)) {
    if (!Object.hasOwn(known, field)) {
      throw new DomainError(field, `left out: ${name} takes ${Object.keys(known).join(', ')}`, fields[field]);
    }
  }
  return call(fields as never);
}

/** How an answer came about: formula, sources, and the steps with their numbers. */
export interface Explanation {
  readonly name: string;
  readonly line: string;
  readonly formula: string;
  readonly sources: Calculation['sources'];
  readonly steps: readonly string[];
  readonly result: object;
}

/** Computes by name and explains the answer. @throws as `calculate` */
export function explain(name: string, inputs: unknown): Explanation {
  const { line, formula, sources, steps } = calculationNamed(name);
  const result = calculate(name, inputs);
  return { name, line, formula, sources, steps: steps(inputs as never, result as never), result };
}
