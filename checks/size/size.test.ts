import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { filesOf } from '../tree.ts';
import { allowed } from './allowed.ts';
import { functionsIn, mostLines, tooLong } from './size.ts';

const house = join(import.meta.dirname, '../..');
const sources = filesOf(house).filter((path) => /[.](tsx?|mjs)$/.test(path) && !path.includes('/offenders/'));

describe('the functions of the house', () => {
  const functions = sources.flatMap((path) => functionsIn(path, readFileSync(join(house, path), 'utf8')));

  test('were seen', () => {
    expect(functions.length).toBeGreaterThan(9_000);
  });

  test(`are at most ${mostLines} lines long, but for those listed with a reason`, () => {
    expect(tooLong(functions, allowed)).toEqual([]);
  });
});

describe('the offenders', () => {
  const body = 'act();\n'.repeat(mostLines);

  test.each([
    ['a function', `function walk() {\n${body}}`, 'walk'],
    ['a variable', `const walk = () => {\n${body}};`, 'walk'],
    ['a method', `class Round {\nwalk() {\n${body}}\n}`, 'walk'],
    [
      'a test in a list of tests',
      `describe('a round', () => {\ntest('is walked', () => {\n${body}});\n});`,
      'is walked',
    ],
    ['a function in a function', `function round() { return {\nwalk: () => {\n${body}} }; }`, 'walk'],
  ])('%s too long is caught', (_, text, name) => {
    expect(tooLong(functionsIn('offender.ts', text), {}).join('\n')).toContain(`offender.ts ${name}: 152 lines`);
  });

  test('as long as allowed is left in peace, and so is a list of short tests', () => {
    const longest = `function walk() {\n${'act();\n'.repeat(mostLines - 2)}}`;
    const list = `describe('a round', () => {\n${"test('x', () => {});\n".repeat(mostLines)}});`;
    expect(tooLong(functionsIn('good.ts', `${longest}\n${list}`), {})).toEqual([]);
  });

  test('a listing that allows nothing any more is caught', () => {
    expect(tooLong([], { 'gone.ts walk': 'a reason' })).toHaveLength(1);
  });
});
