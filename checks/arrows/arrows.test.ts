import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Cruise, cruiseHouse, doorsNamed, sourcesOnDisk } from './cruise.ts';
import { packageNames, rules } from './rules.ts';

const house = join(import.meta.dirname, '../..');

describe('the imports of the house', () => {
  let seen: Cruise;
  beforeAll(async () => {
    seen = await cruiseHouse(house);
  });

  test('follow the arrows', () => {
    const told = seen.breaches.map(({ rule, from, to, remedy }) => `${from} -> ${to}\n    ${rule}: ${remedy}`);
    expect(told).toEqual([]);
  });

  test('were all seen: the cruiser visited every source on disk', () => {
    const onDisk = sourcesOnDisk(house);
    expect(onDisk.length).toBeGreaterThan(100);
    expect(onDisk.filter((path) => !seen.imports.has(path))).toEqual([]);
  });

  test('were all followed: every door named in a source led to a source of that package', () => {
    let doors = 0;
    const lost: string[] = [];
    for (const path of sourcesOnDisk(house)) {
      for (const door of doorsNamed(house, path)) {
        doors += 1;
        const resolved = seen.imports.get(path)?.get(door) ?? 'nothing';
        const owner = door.split('/')[1];
        if (!resolved.startsWith(`packages/${owner}/src/`)) lost.push(`${path}: ${door} led to ${resolved}`);
      }
    }
    expect(lost).toEqual([]);
    expect(doors).toBeGreaterThan(30);
  });

  test('know every package on disk', () => {
    expect(readdirSync(join(house, 'packages')).sort()).toEqual([...packageNames].sort());
  });
});

describe('the offenders', () => {
  const yard = mkdtempSync(join(tmpdir(), 'combside-arrows-'));
  let seen: Cruise;

  beforeAll(async () => {
    buildOffendingHouse(yard);
    seen = await cruiseHouse(yard);
  });
  afterAll(() => rmSync(yard, { recursive: true, force: true }));

  test.each(rules.map(({ name }) => name))('%s is caught', (rule) => {
    const caught = seen.breaches.filter((breach) => breach.rule === rule).map(({ from }) => ruleOf(from));
    expect(new Set(caught)).toEqual(new Set([rule]));
  });

  test('break only the rule they are named after, and the innocent break none', () => {
    const wrong = seen.breaches.filter(({ rule, from }) => rule !== ruleOf(from));
    expect(wrong).toEqual([]);
    const names = new Set(rules.map(({ name }) => name));
    const innocent = sourcesOnDisk(yard).filter((path) => !names.has(ruleOf(path)));
    expect(innocent.length).toBeGreaterThan(10);
  });

  test('every offender is caught, also where one rule has several', () => {
    const names = new Set(rules.map(({ name }) => name));
    const offenders = sourcesOnDisk(yard).filter((path) => names.has(ruleOf(path)));
    const caught = new Set(seen.breaches.map(({ from }) => from));
    expect(offenders.filter((path) => !caught.has(path))).toEqual([]);
  });

  test('each rule carries its remedy in words', () => {
    for (const { name, comment } of rules) expect(comment.length, name).toBeGreaterThan(40);
  });
});

/** An offender is named `<rule>.ts`, or `<rule>.<which>.ts` where one rule has several. */
function ruleOf(path: string): string {
  return basename(path).split('.')[0] ?? '';
}

/** A small house of offenders: the same packages with the same doors, and two stand-in libraries. */
function buildOffendingHouse(yard: string): void {
  cpSync(join(import.meta.dirname, 'offenders'), yard, { recursive: true });
  mkdirSync(join(yard, 'node_modules/@combside'), { recursive: true });
  for (const name of packageNames) {
    mkdirSync(join(yard, 'packages', name, 'src'), { recursive: true });
    cpSync(join(house, 'packages', name, 'package.json'), join(yard, 'packages', name, 'package.json'));
    symlinkSync(join('../../packages', name), join(yard, 'node_modules/@combside', name));
    const door = join(yard, 'packages', name, 'src/door.ts');
    if (!existsSync(door)) writeFileSync(door, 'export const door = 1;\n');
  }
  for (const library of ['zod', 'stranger']) {
    mkdirSync(join(yard, 'node_modules', library), { recursive: true });
    writeFileSync(
      join(yard, 'node_modules', library, 'package.json'),
      JSON.stringify({ name: library, main: 'index.js' }),
    );
    writeFileSync(join(yard, 'node_modules', library, 'index.js'), 'export default 1;\n');
  }
}
