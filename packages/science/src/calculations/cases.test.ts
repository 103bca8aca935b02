import { readFileSync } from 'node:fs';
import { source } from '@combside/sources/bibliography';
import { afterAll, describe, expect, it } from 'vitest';
import { DomainError } from '../distributions/domain.ts';
import { calculate, calculationNamed, calculations, explain } from './registry.ts';

/*
 * Every check value of `reference/cases.json`, each with the source of its number. The count that passed is printed, and
 * the worked published examples by name.
 */
interface Case {
  id: string;
  call: string;
  inputs: Record<string, unknown>;
  gives: Record<string, unknown>;
  within: number;
  source: string;
}
const { cases }: { cases: Case[] } = JSON.parse(
  readFileSync(new URL('./reference/cases.json', import.meta.url), 'utf8'),
);

/** Equal within the case's tolerance plus 1e-10 relative, through lists; null only equals null. */
function agrees(got: unknown, wanted: unknown, within: number): boolean {
  if (Array.isArray(wanted)) {
    return Array.isArray(got) && got.length === wanted.length && wanted.every((w, i) => agrees(got[i], w, within));
  }
  if (typeof wanted === 'number') {
    return typeof got === 'number' && Math.abs(got - wanted) <= within + 1e-10 * Math.abs(wanted);
  }
  return got === wanted;
}

/** Sources that print a worked figure of their own, apart from formulas evaluated in R. */
const published =
  /manual|Pirk|Forsgren|Newcombe|Hui|Watson|Dohoo I, Martin W, Stryhn H \(2003\) Veterinary Epidemiologic Research, p|Christensen J/;

let passed = 0;
const worked = new Set<string>();
afterAll(() => {
  console.log(
    `check values: ${passed} of ${cases.length} passed, ${new Set(cases.map((c) => c.call)).size} calculations`,
  );
  console.log(`worked published examples among them:\n  ${[...worked].sort().join('\n  ')}`);
});

describe('check values', () => {
  it('are all there', () => {
    expect(cases.length).toBe(289);
    for (const { call } of cases) expect(Object.keys(calculations)).toContain(call);
  });

  it.each(cases.map((one) => [one.id, one.call, one] as const))('%s %s', (_, call, one) => {
    if ('error' in one.gives) {
      expect(() => calculate(call, one.inputs)).toThrow(DomainError);
    } else {
      const result = calculate(call, one.inputs) as Record<string, unknown>;
      for (const [field, wanted] of Object.entries(one.gives)) {
        expect(agrees(result[field], wanted, one.within), `${field}: ${result[field]}, wanted ${wanted}`).toBe(true);
      }
    }
    passed += 1;
    if (published.test(one.source)) worked.add(`${call}: ${one.source.slice(0, 150)}`);
  });
});

describe('every calculation', () => {
  const examples = new Map(cases.filter((c) => !('error' in c.gives)).map((c) => [c.call, c.inputs]));

  it('has a line, a formula and sources that exist', () => {
    for (const [name, { line, formula, sources }] of Object.entries(calculations)) {
      expect(line.length, name).toBeGreaterThan(10);
      expect(formula.length, name).toBeGreaterThan(5);
      for (const id of sources) expect(source(id).title.length).toBeGreaterThan(5);
    }
  });

  it.each([...examples])(
    '%s explains itself with numbers, and speaks of every field its check values use',
    (name, inputs) => {
      const { steps, result } = explain(name, inputs);
      expect(steps.length).toBeGreaterThan(0);
      expect(steps.join(' ')).toMatch(/\d/);
      expect(steps.join(' ')).not.toMatch(/NaN|undefined|Infinity/);
      expect(JSON.stringify(result)).not.toContain('NaN');
    },
  );

  it.each([...examples])('%s refuses each input in turn when it is not a number at all', (name, inputs) => {
    for (const field of Object.keys(inputs)) {
      for (const wrong of [Number.NaN, -1, 'some', {}]) {
        // minimum and maximum of an opinion may be any number, and -1 is one.
        if (name === 'betaFromRange' && wrong === -1) continue;
        expect(() => calculate(name, { ...inputs, [field]: wrong }), `${field} ${String(wrong)}`).toThrow(DomainError);
      }
    }
  });

  it.each([...examples])('%s refuses a missing and an unknown field', (name, inputs) => {
    expect(() => calculate(name, { ...inputs, confidance: 0.95 })).toThrow('confidance must be left out');
    const required = Object.keys(inputs).filter((field) => inputs[field] !== null);
    const optional = [
      'populationSize',
      'stratumSizes',
      'clustersInPopulation',
      'unitsPerCluster',
      'unitsInSampledClusters',
    ];
    optional.push('sensitivitySample', 'specificitySample', 'designEffect');
    for (const field of required.filter((f) => !optional.includes(f))) {
      const { [field]: _, ...rest } = inputs;
      expect(() => calculate(name, rest), field).toThrow(DomainError);
    }
  });

  it('is found by its name only, with a hint for a near miss', () => {
    expect(() => calculationNamed('sampleSize')).toThrow('did you mean sampleSizeToDetectLargePopulation');
    expect(() => calculationNamed('toString')).toThrow('no calculation "toString"');
  });
});
