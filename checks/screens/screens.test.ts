import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { screens } from '../../packages/web/e2e/screens.ts';
import { stageScreens } from '../../packages/web/stage/screens.ts';
import { filesOf } from '../tree.ts';

const house = join(import.meta.dirname, '../..');
const paths = filesOf(house).filter((path) => path.startsWith('packages/web/'));
const textOf = (files: readonly string[]) => files.map((path) => readFileSync(join(house, path), 'utf8')).join('\n');

/** How often each screen is named in a text; those named once are left out. */
function notOnce(text: string, names: readonly string[]): string[] {
  return names.flatMap((name) => {
    const times = text.split(`'${name}'`).length - 1;
    return times === 1 ? [] : [`${name}: ${times} times`];
  });
}

test('every screen of the tables is judged once, in a journey or on the stage', () => {
  const journeys = paths.filter((path) => path.endsWith('.spec.ts'));
  expect(journeys.length).toBeGreaterThan(10);
  expect(notOnce(textOf(journeys), screens)).toEqual([]);

  const components = paths.filter((path) => path.endsWith('.component.test.tsx'));
  expect(components.length).toBeGreaterThan(2);
  expect(notOnce(textOf(components), stageScreens)).toEqual([]);

  // On the stage each in English and in German.
  const judged: readonly string[] = [...screens, ...stageScreens.flatMap((name) => [`${name}/en`, `${name}/de`])];
  expect(judged.length).toBeGreaterThan(90);
  expect(new Set(judged).size).toBe(judged.length);
});

test('a screen that nobody judges, or that two do, is caught', () => {
  expect(notOnce("judge(page, 'desk/map/en'); judge(page, 'desk/map/en');", ['desk/map/en', 'desk/map/de'])).toEqual([
    'desk/map/en: 2 times',
    'desk/map/de: 0 times',
  ]);
});
