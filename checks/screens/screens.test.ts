import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { screens } from '../../packages/web/e2e/screens.ts';

const journeys = join(import.meta.dirname, '../../packages/web/e2e');

/** How often each screen is named in the journeys' text; those named once are left out. */
function notOnce(text: string, names: readonly string[]): string[] {
  return names.flatMap((name) => {
    const times = text.split(`'${name}'`).length - 1;
    return times === 1 ? [] : [`${name}: ${times} times`];
  });
}

test('every screen of the table is judged by exactly one journey', () => {
  const files = readdirSync(journeys).filter((name) => name.endsWith('.spec.ts'));
  expect(files.length).toBeGreaterThan(10);
  const text = files.map((name) => readFileSync(join(journeys, name), 'utf8')).join('\n');
  expect(screens.length).toBeGreaterThan(90);
  expect(new Set(screens).size).toBe(screens.length);
  expect(notOnce(text, screens)).toEqual([]);
});

test('a screen that nobody judges, or that two do, is caught', () => {
  expect(notOnce("judge(page, 'desk/map/en'); judge(page, 'desk/map/en');", ['desk/map/en', 'desk/map/de'])).toEqual([
    'desk/map/en: 2 times',
    'desk/map/de: 0 times',
  ]);
});
