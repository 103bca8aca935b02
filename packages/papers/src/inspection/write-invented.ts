import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { languages } from '@combside/words/language';
import { loadWords } from '@combside/words/load-words';
import { readPaperFonts } from '../layout/node-fonts.ts';
import { inspectionPdf } from './inspection-pdf.ts';
import { inventedVisitOfForty, inventedVisitOfOne, inventedVisitOfSix } from './invented-records.ts';

// Writes the invented records as PDF, to be looked at: npx tsx write-invented.ts <folder>
const folder = process.argv[2];
if (!folder) throw new Error('say into which folder the papers go: npx tsx write-invented.ts <folder>');
mkdirSync(folder, { recursive: true });
const fonts = await readPaperFonts();
for (const language of languages) {
  const words = await loadWords(language, ['papers', 'casework', 'signs']);
  for (const [name, record] of Object.entries({
    1: inventedVisitOfOne,
    6: inventedVisitOfSix,
    40: inventedVisitOfForty,
  })) {
    writeFileSync(join(folder, `inspection-${name}-${language}.pdf`), await inspectionPdf(record, words, fonts));
  }
}
