import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawStateMark } from '../drawings/state-mark.ts';
import { layOut } from './lay-out.ts';
import type { Block, PaperDefinition } from './paper-definition.ts';
import type { LaidOut, PlacedText } from './placed.ts';
import { lineWidth, margins, page } from './sheet.ts';
import { breakIntoLines, type Letters, plainOf } from './text-lines.ts';

/** Every letter half as wide as the size is high; the first fonts have Latin letters only. */
const letters: Letters = {
  width: (text, _font, size) => [...text].length * size * 0.5,
  has: (codePoint) => codePoint < 0x250,
};

const paper = (blocks: readonly Block[]): PaperDefinition => ({
  title: 'Trial',
  author: '',
  language: 'en',
  instant: 0,
  blocks,
  header: 'Head of the page',
  footer: 'Foot',
  pageOf: (one, all) => `Page ${one} of ${all}`,
});

const textsOf = (laid: LaidOut, index: number): PlacedText[] =>
  (laid.pages[index] ?? []).filter((one): one is PlacedText => one.kind === 'text');
const spoken = (laid: LaidOut, index: number): string =>
  textsOf(laid, index)
    .map((one) => one.text)
    .join(' ');

describe('breaking text into lines', () => {
  test('no line is wider than asked, and no letter is lost', () => {
    expect.hasAssertions();
    fc.assert(
      fc.property(
        fc.array(
          fc.oneof(
            fc.string({
              unit: fc.constantFrom('a', 'ß', 'Ł', 'Ж', '-', '/', '\u00ad', '7'),
              minLength: 1,
              maxLength: 30,
            }),
            fc.constantFrom(' ', '  ', '\n'),
          ),
          { maxLength: 30 },
        ),
        fc.integer({ min: 12, max: 200 }),
        (parts, width) => {
          const text = parts.join('');
          const lines = breakIntoLines([{ text }, { text: 'end', bold: true }], 10, width, letters);
          for (const line of lines) {
            const last = line.at(-1);
            expect(last ? last.x + last.width : 0).toBeLessThanOrEqual(width + 1e-9);
          }
          const lettersOf = (from: string) => from.replace(/[\s\u00ad-]/g, '');
          expect(lettersOf(lines.map((line) => line.map((piece) => piece.text.trimEnd()).join('')).join(''))).toBe(
            lettersOf(`${text}end`),
          );
        },
      ),
      { seed: 20260514, numRuns: 300 },
    );
  });

  test('a soft hyphen shows only where a line ends', () => {
    const say = (width: number) =>
      breakIntoLines('Bienen\u00adstand', 10, width, letters).map((line) =>
        line.map((piece) => piece.text.trimEnd()).join(''),
      );
    expect(say(100)).toEqual(['Bienenstand']);
    expect(say(45)).toEqual(['Bienen-', 'stand']);
    expect(plainOf('Bienen\u00adstand')).toBe('Bienenstand');
  });

  test('identifiers stay whole at their hyphens; words part at theirs', () => {
    const say = (text: string) =>
      breakIntoLines(text, 10, 50, letters).map((line) => line.map((piece) => piece.text.trimEnd()).join(''));
    expect(say('no WEN-26-01')).toEqual(['no', 'WEN-26-01']);
    expect(say('Varroa-Milbe')).toEqual(['Varroa-', 'Milbe']);
  });

  test('letters the first font has not are set in the fallback, in the weight of their run', () => {
    const [line] = breakIntoLines([{ text: 'Ма', bold: true }, { text: 'rk' }], 10, 100, letters);
    expect(line?.map((piece) => [piece.text, piece.font])).toEqual([
      ['Ма', 'bold fallback'],
      ['rk', 'regular'],
    ]);
  });
});

describe('flow', () => {
  const filler = (lines: number): Block => ({
    kind: 'paragraph',
    text: Array.from({ length: lines }, () => 'x').join('\n'),
  });

  test('a heading is never the last thing on a page', () => {
    for (let lines = 40; lines < 60; lines += 1) {
      const laid = layOut(
        paper([filler(lines), { kind: 'heading', level: 2, text: 'Heading' }, { kind: 'paragraph', text: 'follows' }]),
        letters,
      );
      const where = laid.pages.findIndex((_, index) => spoken(laid, index).includes('Heading'));
      expect(spoken(laid, where), `after ${lines} lines`).toContain('follows');
    }
  });

  test('a table repeats its header on each page, outside the structure, and keeps rows whole', () => {
    const rows = Array.from({ length: 60 }, (_, index) => [`row ${index}`, `first line\nlast line of ${index}`]);
    const laid = layOut(
      paper([
        {
          kind: 'table',
          summary: 'Trial',
          columns: [
            { title: 'Name', width: 1 },
            { title: 'What', width: 2 },
          ],
          rows,
        },
      ]),
      letters,
    );
    expect(laid.pages.length).toBeGreaterThan(2);
    laid.pages.forEach((_, index) => {
      const heads = textsOf(laid, index).filter((one) => one.text === 'Name');
      expect(heads).toHaveLength(1);
      expect(heads[0]?.tag === null).toBe(index > 0);
    });
    for (let row = 0; row < 60; row += 1) {
      const where = laid.pages.findIndex((_, index) =>
        textsOf(laid, index).some((one) => one.tag?.type === 'TH' && one.text === `row ${row}`),
      );
      expect(spoken(laid, where)).toContain(`last line of ${row}`);
    }
    const table = laid.structure.children[0];
    expect(table?.type).toBe('Table');
    expect(table?.children).toHaveLength(61);
  });

  test('a row, a fact, a list higher than a page goes on over the pages without loss', () => {
    const long = Array.from({ length: 150 }, (_, index) => `w${index}`).join('\n');
    const blocks: Block[] = [
      { kind: 'table', summary: 'T', columns: [{ title: 'A', width: 1 }], rows: [[long]] },
      { kind: 'facts', facts: [{ name: 'Fact', value: long }] },
      { kind: 'list', items: [long] },
      { kind: 'paragraph', text: long },
    ];
    for (const block of blocks) {
      const laid = layOut(paper([block]), letters);
      expect(laid.pages.length, block.kind).toBeGreaterThan(2);
      const words = laid.pages.flatMap((_, index) =>
        textsOf(laid, index)
          .filter((one) => one.tag !== null)
          .map((one) => one.text),
      );
      expect(words.filter((word) => /^w\d+$/.test(word))).toHaveLength(150);
      for (const placed of laid.pages.flat()) {
        if (placed.kind === 'text' && placed.tag) expect(placed.baseline).toBeLessThan(page.height - margins.bottom);
      }
    }
  });

  test('what belongs together moves together, and a figure shrinks rather than leave a hole', () => {
    const drawing = { ...drawStateMark('suspect') };
    const together: Block = {
      kind: 'together',
      blocks: [
        { kind: 'heading', level: 2, text: 'Plan' },
        { kind: 'figure', drawing, width: 200, alternative: 'a mark', caption: 'Below' },
      ],
    };
    const roomy = layOut(paper([filler(30), together]), letters);
    expect(roomy.pages).toHaveLength(1);
    const tight = layOut(paper([filler(36), together]), letters);
    const figure = tight.pages[0]?.find((one) => one.kind === 'drawing');
    expect(tight.pages).toHaveLength(1);
    expect(figure?.kind === 'drawing' && figure.width).toBeLessThan(200);
    for (let lines = 20; lines < 50; lines += 1) {
      const laid = layOut(paper([filler(lines), together]), letters);
      const where = laid.pages.findIndex((_, index) => spoken(laid, index).includes('Plan'));
      expect(spoken(laid, where), `after ${lines} lines`).toContain('Below');
      expect(laid.pages[where]?.some((one) => one.kind === 'drawing')).toBe(true);
    }
    const over = layOut(paper([filler(44), together]), letters);
    expect(over.pages).toHaveLength(2);
    expect(spoken(over, 1)).toMatch(/Plan.*Below/);
  });

  test('the page number, foot and head stand on every page and are no part of the reading', () => {
    const laid = layOut(paper([filler(120)]), letters);
    laid.pages.forEach((_, index) => {
      const furniture = textsOf(laid, index).filter((one) => one.tag === null);
      const said = furniture.map((one) => one.text).join(' ');
      expect(said).toContain(`Page ${index + 1} of ${laid.pages.length}`);
      expect(said.includes('Head of the page')).toBe(index > 0);
    });
  });

  test('each thing is measured once, whatever it stands in', () => {
    const asked = new Map<string, number>();
    const counting: Letters = {
      ...letters,
      width: (text, font, size) => {
        asked.set(text, (asked.get(text) ?? 0) + 1);
        return letters.width(text, font, size);
      },
    };
    breakIntoLines('alone', 10, 200, counting);
    const once = asked.get('alone');
    expect(once).toBeGreaterThan(0);
    const drawing = drawStateMark('suspect');
    const together: Block[] = [
      { kind: 'heading', level: 2, text: 'heading' },
      { kind: 'heading', level: 3, text: 'under' },
      { kind: 'paragraph', text: 'paragraph' },
      { kind: 'facts', facts: [{ name: 'fact', value: 'value' }] },
      {
        kind: 'table',
        summary: '',
        columns: [{ title: 'column', width: 1 }],
        rows: [['cell'], [{ drawing, alternative: '', width: 20, text: 'beside' }]],
      },
      { kind: 'figure', drawing, width: 100, alternative: '', caption: 'caption' },
      { kind: 'list', items: ['item'] },
      { kind: 'statement', mark: drawing, alternative: '', lines: ['statement'] },
      { kind: 'signatures', lines: [{ title: 'signature', drawing: null, alternative: '', below: 'below' }] },
    ];
    layOut(paper([filler(20), { kind: 'together', blocks: together }]), counting);
    const words = 'heading under paragraph fact value column cell beside caption item statement signature below'.split(
      ' ',
    );
    expect(words.map((word) => [word, asked.get(word)])).toEqual(words.map((word) => [word, once]));
  });

  test('the line is the page less its margins', () => {
    expect(lineWidth).toBeCloseTo(595.28 - 108, 6);
  });
});
