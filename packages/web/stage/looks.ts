import type { Language } from '@combside/words/language';
import axe from 'axe-core';
import { expect } from 'vitest';
import { page } from 'vitest/browser';

/** Width and height of a window, in CSS pixels. */
export type Window = readonly [width: number, height: number];

/** The phones a screen must fit: the smallest still in use, and that of the journeys. */
export const phones: readonly Window[] = [
  [360, 640],
  [390, 844],
];

/** The desks, and the phone on which somebody opens the desk all the same. */
export const desks: readonly Window[] = [
  [1440, 900],
  [1024, 768],
  [390, 844],
];

const buttonsAndHeadings = 'button, a.button, [role="tab"], h1, h2, h3, h4, summary, legend';

/**
 * Demands of the screen in sight that it speaks its language, that accessibility rules find nothing (once, in the last
 * of the windows), and that it fits every window with plain and with doubled text.
 *
 * @param windows from the first to the last, where it is left
 * @throws the assertion's error, naming the window and the elements
 */
export async function looksRight(language: Language, windows: readonly Window[]): Promise<void> {
  expect(document.documentElement.lang).toBe(language);
  expect(idsShown(), 'ids stand where words should').toEqual([]);
  for (const [width, height] of windows) {
    await page.viewport(width, height);
    for (const text of ['100%', '200%']) {
      document.documentElement.style.fontSize = text;
      await drawn();
      expect(sticksOut(), `wider than its window of ${width} x ${height} with text of ${text}`).toEqual([]);
      expect(clipped(), `cut off at ${width} x ${height} with text of ${text}`).toEqual([]);
    }
    document.documentElement.style.removeProperty('font-size');
  }
  await accessible();
}

/** Demands that head and foot of a hive screen stand in the window, wherever the rest is scrolled to. */
export async function headAndFootInSight(): Promise<void> {
  const head = document.querySelector('.hive-head');
  const foot = document.querySelector('.hive-foot');
  for (const top of [0, document.documentElement.scrollHeight]) {
    window.scrollTo(0, top);
    await drawn();
    if (head) expect(head.getBoundingClientRect().top, 'the head is out of sight').toBeGreaterThanOrEqual(0);
    if (foot) expect(foot.getBoundingClientRect().bottom, 'the foot is out of sight').toBeLessThanOrEqual(innerHeight);
  }
  window.scrollTo(0, 0);
}

const runOnly = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const contrast = 'color-contrast';

/** The rules of WCAG 2.2 A and AA and axe's own best practices, as in the journeys. */
export async function accessible(): Promise<void> {
  const [width, height] = [innerWidth, innerHeight];
  const hidden = hideRowsAlike(20);
  // Head and foot stay in sight while the rest moves under them; axe would judge a button half under the foot as small.
  if (document.documentElement.scrollHeight > height) await page.viewport(width, document.documentElement.scrollHeight);
  await drawn();
  const all = await axe.run(document, {
    resultTypes: ['violations'],
    runOnly,
    rules: { [contrast]: { enabled: false } },
  });
  // Contrast costs more than all other rules together, and by the square of a long list.
  hidden.push(...hideRowsAlike(2));
  const inContrast = await axe.run(document, { runOnly: [contrast] });
  for (const row of hidden) row.style.removeProperty('display');
  const violations = [...all.violations, ...inContrast.violations];
  await page.viewport(width, height);
  expect(
    violations.map(({ id, help, nodes }) => `${id}: ${help}\n${nodes.map(({ html }) => `    ${html}`).join('\n')}`),
    `accessibility at ${location.pathname}`,
  ).toEqual([]);
  expect(all.passes.length, 'axe looked at nothing').toBeGreaterThan(0);
  expect(inContrast.passes.length, 'axe looked at no contrast').toBeGreaterThan(0);
}

/**
 * Hides, in each list, the rows that are made of the same elements, classes and states as so many rows before them: of a
 * thousand such rows only the words differ.
 */
function hideRowsAlike(kept: number): HTMLElement[] {
  const alike: HTMLElement[] = [];
  for (const list of document.querySelectorAll('ul, ol, tbody')) {
    const before = new Map<string, number>();
    for (const row of list.querySelectorAll<HTMLElement>(':scope > *')) {
      const look = [row, ...row.querySelectorAll('*')].map(lookOf).join();
      const count = before.get(look) ?? 0;
      if (count >= kept) alike.push(row);
      before.set(look, count + 1);
    }
  }
  for (const row of alike) row.style.setProperty('display', 'none', 'important');
  return alike;
}

/** What styles an element: its name and class, and the attributes that say its state. */
function lookOf(one: Element): string {
  const states = [...one.attributes].filter(({ name }) => styling.test(name));
  return `${one.tagName} ${states.map(({ name, value }) => `${name}=${value}`).join(' ')}`;
}
const styling = /^(class|disabled|data-.*|aria-(current|selected|checked|pressed|expanded|disabled|invalid))$/;

function drawn(): Promise<void> {
  return new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(() => resolve())));
}

const anId =
  /\b(always|front|hive|signs|casework|reasoning|roadside|comb|district|register|planning|programme|papers|questions)[.][a-z][a-z.-]+/;

function idsShown(): string[] {
  const found: string[] = [];
  const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (texts.nextNode()) {
    const text = texts.currentNode.textContent ?? '';
    if (anId.test(text)) found.push(text);
  }
  return found;
}

/** What makes the page wider than its window; empty where nothing does. */
function sticksOut(): string[] {
  const page = document.documentElement;
  if (page.scrollWidth <= page.clientWidth) return [];
  const wide = [...document.body.querySelectorAll('*')].filter(
    (one) => one.getBoundingClientRect().right > page.clientWidth + 0.5,
  );
  return [`${page.scrollWidth} of ${page.clientWidth} pixels`, ...wide.slice(-4).map(shown)];
}

/** Buttons and headings whose text is wider than they are. */
function clipped(): string[] {
  const all = [...document.querySelectorAll<HTMLElement>(buttonsAndHeadings)];
  return all
    .filter((one) => getComputedStyle(one).display !== 'inline' && !one.closest('.visually-hidden'))
    .filter((one) => one.clientWidth > 0 && one.scrollWidth > one.clientWidth)
    .map(shown);
}

function shown(one: Element): string {
  return `${one.outerHTML.slice(0, 160)} (${one.scrollWidth} in ${one.clientWidth})`;
}
