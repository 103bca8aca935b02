import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { InspectionRecord } from '@combside/casework/report/inspection-record';
import { type Language, languages } from '@combside/words/language';
import { loadWords } from '@combside/words/load-words';
import { unsayableIn } from '@combside/words/unsayable';
import { describe, expect, test } from 'vitest';
import { readPaperFonts } from '../layout/node-fonts.ts';
import { previewLayout } from '../layout/pdf.ts';
import type { LaidOut, PlacedText, Tag } from '../layout/placed.ts';
import { readingText } from '../layout/reading-text.ts';
import { margins, page } from '../layout/sheet.ts';
import { inspectionPaper } from './inspection-paper.ts';
import { inspectionPdf } from './inspection-pdf.ts';
import { inventedColony, inventedVisitOfForty, inventedVisitOfOne, inventedVisitOfSix } from './invented-records.ts';
import { couldHaveMissed } from './phrases.ts';
import { spokenShortForm } from './short-form.ts';

const fonts = await readPaperFonts();
const words = { en: await wordsOf('en'), de: await wordsOf('de') };
function wordsOf(language: Language) {
  return loadWords(language, ['papers', 'casework', 'signs']);
}

const lay = (record: InspectionRecord, language: Language): Promise<LaidOut> =>
  previewLayout(inspectionPaper(record, words[language]), fonts);

const cases = languages.flatMap((language) =>
  [
    ['one', inventedVisitOfOne] as const,
    ['six', inventedVisitOfSix] as const,
    ['forty', inventedVisitOfForty] as const,
  ].map(([name, record]) => ({ language, name, record })),
);

describe.each(cases)('$name in $language', ({ language, record }) => {
  test('every letter stands within the margins, and no text lies upon another', async () => {
    const laid = await lay(record, language);
    const upon: string[] = [];
    for (const placed of laid.pages) {
      const texts = placed.filter((one): one is PlacedText => one.kind === 'text');
      for (const one of texts) {
        expect(one.x).toBeGreaterThanOrEqual(margins.left - 0.01);
        expect(one.x + one.width, one.text).toBeLessThanOrEqual(page.width - margins.right + 0.5);
        if (one.tag) {
          expect(one.baseline - one.size * 0.7).toBeGreaterThanOrEqual(margins.top - 1);
          expect(one.baseline + one.size * 0.3).toBeLessThanOrEqual(page.height - margins.bottom + 1);
        }
      }
      texts.forEach((a, index) => {
        for (const b of texts.slice(index + 1)) {
          const beside = a.x + a.width <= b.x + 0.1 || b.x + b.width <= a.x + 0.1;
          // Between the height of small letters and the line they stand on.
          const apart = a.baseline <= b.baseline - b.size * 0.55 || b.baseline <= a.baseline - a.size * 0.55;
          if (!beside && !apart) upon.push(`"${a.text}" lies upon "${b.text}"`);
        }
      });
    }
    expect(upon).toEqual([]);
  });

  test('no heading ends a page, and no column title is cut within a word', async () => {
    const laid = await lay(record, language);
    for (const placed of laid.pages) {
      const last = placed.findLast((one) => one.kind !== 'rule' && one.tag !== null);
      expect(last && 'tag' in last ? last.tag?.type : '').not.toMatch(/^H/);
    }
    const titles = inspectionPaper(record, words[language])
      .blocks.flatMap((block) => (block.kind === 'table' ? block.columns : []))
      .flatMap((column) => column.title.split(/[ ]/));
    expect(titles.length).toBeGreaterThan(0);
    const drawn = new Set(
      laid.pages
        .flat()
        .flatMap((one) => (one.kind === 'text' && one.font === 'bold' && one.size === 8.5 ? [one.text] : [])),
    );
    for (const title of titles)
      expect(
        [...drawn].some((text) => text.split(' ').includes(title)),
        `"${title}" is cut`,
      ).toBe(true);
  });

  test('says nothing that a look cannot show, and no probability', async () => {
    const text = readingText(await lay(record, language));
    expect(unsayableIn(language, text)).toEqual([]);
    expect(text).not.toMatch(/\d\s?%/);
    expect(text).not.toMatch(/probab|wahrscheinlich/i);
    expect(text).toContain(record.apiary.name);
    expect(text).toContain(record.proof.contentHash);
  });

  test('the same record makes the same bytes: tagged, PDF/A-2a, every font embedded, every figure in words', async () => {
    const pdf = await inspectionPdf(record, words[language], fonts);
    expect(Buffer.compare(pdf, await inspectionPdf(record, words[language], fonts))).toBe(0);
    const raw = Buffer.from(pdf).toString('latin1');
    expect(raw.startsWith('%PDF-1.7')).toBe(true);
    expect(raw).toContain('/StructTreeRoot');
    expect(raw).toMatch(/\/Marked true/);
    expect(raw).toContain(`/Lang (${language})`);
    expect(raw).toContain('<pdfaid:part>2</pdfaid:part>');
    expect(raw).toMatch(/<pdfaid:conformance>A<\/pdfaid:conformance>/i);
    const descriptors = raw.match(/\/Type \/FontDescriptor[\s\S]*?>>/g) ?? [];
    expect(descriptors.length).toBeGreaterThanOrEqual(2);
    for (const one of descriptors) expect(one).toContain('/FontFile2');
    expect(raw).not.toContain('/BaseFont /Helvetica');
    const figures = raw.split('endobj').filter((one) => one.includes('/S /Figure'));
    expect(figures.length).toBeGreaterThan(0);
    for (const one of figures) expect(one).toMatch(/\/Alt \(./);
  });
});

test.runIf(spawnSync('pdftotext', ['-v']).status === 0)(
  'a stranger’s reader finds the words and the structure',
  async () => {
    const folder = mkdtempSync(join(tmpdir(), 'combside-paper-'));
    try {
      const file = join(folder, 'six.pdf');
      writeFileSync(file, await inspectionPdf(inventedVisitOfSix, words.de, fonts));
      const text = spawnSync('pdftotext', ['-raw', file, '-'], { encoding: 'utf8' }).stdout;
      expect(text).toContain('1 Volk ist verdächtig: 4.');
      expect(text).toContain('Zofia Wąsik-Brändle');
      expect(text).toContain('Waschsoda reinigt. Sporen der Faulbrut tötet es nicht ab.');
      const structure = spawnSync('pdfinfo', ['-struct', file], { encoding: 'utf8' }).stdout;
      for (const type of ['Document', 'H1', 'H2', 'H3', 'P', 'Figure', 'Table', 'TR', 'TH', 'TD', 'L', 'LI', 'LBody']) {
        expect(structure).toMatch(new RegExp(`^\\s*${type}\\b`, 'm'));
      }
    } finally {
      rmSync(folder, { recursive: true });
    }
  },
);

test('the structure reads in the order of the page', async () => {
  const laid = await lay(inventedVisitOfSix, 'en');
  const order: Tag[] = [];
  const walk = (tag: Tag): void => {
    order.push(tag);
    tag.children.forEach(walk);
  };
  walk(laid.structure);
  const heard = laid.pages.flatMap((placed) =>
    placed.flatMap((one) => (one.kind === 'rule' || !one.tag ? [] : [order.indexOf(one.tag)])),
  );
  expect(heard).not.toContain(-1);
  const top = laid.structure.children;
  const topOf = new Map<Tag, number>();
  const mark = (tag: Tag, index: number): void => {
    topOf.set(tag, index);
    for (const child of tag.children) mark(child, index);
  };
  top.forEach(mark);
  const sequence = heard.map((index) => topOf.get(order[index] as Tag) ?? -1);
  expect(sequence).toEqual([...sequence].sort((a, b) => a - b));
  expect(top.slice(0, 2).map((tag) => tag.type)).toEqual(['P', 'H1']);
});

test('a letter outside Latin calls for the fallback font, Polish and German do not', async () => {
  let asked = 0;
  const counting = {
    ...fonts,
    fallback: () => {
      asked += 1;
      return fonts.fallback();
    },
  };
  await inspectionPdf(inventedVisitOfSix, words.de, counting);
  expect(asked).toBe(0);
  const greek = { ...inventedVisitOfOne, keeper: { name: 'Μελίνα Κηρήθρα · Мира Улей', number: null } };
  const pdf = await inspectionPdf(greek, words.en, counting);
  expect(asked).toBe(1);
  expect(Buffer.from(pdf).toString('latin1')).toContain('DejaVuSans');
});

test('a word of a newer version stands on the paper as it was written', async () => {
  const record: InspectionRecord = {
    ...inventedVisitOfOne,
    visit: { ...inventedVisitOfOne.visit, reason: 'moonlight count', endedAt: null },
    colonies: [
      inventedColony('1', {
        signs: [{ sign: 'cap.striped', outcome: 'seen', count: '1-10', amount: null, places: [] }],
        result: 'suspect',
        suspected: ['striped-brood'],
      }),
    ],
  };
  const text = readingText(await lay(record, 'en'));
  expect(text).toContain('moonlight count (written by a newer version)');
  expect(text).toContain('Cap.striped (written by a newer version)');
  expect(text).toContain('striped-brood (written by a newer version)');
  expect(text).toContain('Draft: the visit has not ended');
});

test('a corrected result says on paper and on the screen which one it replaces; the first says nothing', async () => {
  const record: InspectionRecord = {
    ...inventedVisitOfOne,
    issue: { number: 2, replaces: '2027-05-04T10:10:00.000Z', handedOver: false },
  };
  const said = {
    en: 'Result no. 2, corrected. It replaces the result handed over on ',
    de: 'Ergebnis Nr. 2, berichtigt. Es ersetzt das am ',
  };
  for (const language of ['en', 'de'] as const) {
    expect(readingText(await lay(record, language))).toContain(said[language]);
    expect(spokenShortForm(record, words[language]).replaces).toContain(said[language]);
    expect(readingText(await lay(inventedVisitOfOne, language))).not.toContain(said[language].slice(0, 12));
  }
  expect(spokenShortForm(inventedVisitOfOne, words.en).replaces).toBeNull();
});

test('long remarks and hundreds of colonies still find their pages', async () => {
  const record: InspectionRecord = {
    ...inventedVisitOfOne,
    colonies: Array.from({ length: 300 }, (_, index) =>
      inventedColony(`${index + 1}`, index === 7 ? { remarks: 'sooty cell '.repeat(500) } : {}),
    ),
  };
  const laid = await lay(record, 'de');
  expect(laid.pages.length).toBeGreaterThan(15);
  for (const one of laid.pages.flat()) {
    if (one.kind === 'text' && one.tag) expect(one.baseline).toBeLessThan(page.height - margins.bottom);
  }
  expect(readingText(laid).match(/sooty/g)).toHaveLength(500);
});

test('what a look could have missed follows from how it was looked', () => {
  const look = inventedColony('1').look as NonNullable<ReturnType<typeof inventedColony>['look']>;
  const said = (change: Partial<typeof look>, hiveState: 'living' | 'dead' = 'living') =>
    couldHaveMissed(inventedColony('1', { look: { ...look, ...change }, hiveState }));
  const some = [{ box: 'lower', framesHeld: 9, framesSeen: 5, sides: 'both' as const }];
  expect(said({})).toBe('papers.missed.full');
  expect(said({ beesShaken: false })).toBe('papers.missed.bees-on');
  expect(said({ boxes: some })).toBe('papers.missed.frames');
  expect(said({ boxes: some, beesShaken: false })).toBe('papers.missed.frames-and-bees');
  expect(said({ boxes: [{ box: 'lower', framesHeld: 9, framesSeen: 9, sides: 'one' }] })).toBe('papers.missed.frames');
  expect(said({ depth: 'tops' })).toBe('papers.missed.tops');
  expect(said({ hold: 'flat', beesShaken: null }, 'dead')).toBe('papers.missed.scale');
  expect(said({ beesShaken: null }, 'dead')).toBe('papers.missed.empty-full');
  expect(couldHaveMissed(inventedColony('1', { look: null }))).toBeNull();
});

test('the short form says the same as the paper, and is never silent about a suspicion', async () => {
  const form = spokenShortForm(inventedVisitOfSix, words.en);
  const text = readingText(await lay(inventedVisitOfSix, 'en')).replace(/\s+/g, ' ');
  for (const line of [...form.summary, ...form.stillOpen, ...form.nextSteps, ...form.cautions, form.whatItSays]) {
    expect(text).toContain(line.replace(/\s+/g, ' '));
  }
  expect(form.mark).toBe('suspect');
  expect(form.stillOpen[0]).toBe('The suspicion in colony 4 is open until the authority confirms or lifts it.');
  expect(form.colonies.map((one) => one.result)).toContain('Suspect');
  expect(form.contentHash).toBe(inventedVisitOfSix.proof.contentHash);
});
