import type { InspectionRecord } from '@combside/casework/report/inspection-record';
import { saySentence } from '@combside/words/sentence';
import type { Block } from '../../layout/paper-definition.ts';
import { cautionWords } from '../cautions.ts';
import type { PaperWords } from '../phrases.ts';
import { stillOpenWords } from '../still-open.ts';

/** What is still open, what comes next, and the cautions. */
export function openSection(record: InspectionRecord, words: PaperWords): Block[] {
  const section = (title: string, items: readonly string[]): Block[] => [
    { kind: 'heading', level: 2, text: title },
    { kind: 'list', items },
  ];
  const stillOpen = stillOpenWords(record, words);
  const next = record.nextSteps.map((step) =>
    saySentence<'papers' | 'casework' | 'signs'>(words, step, record.visit.timeZone),
  );
  return [
    ...(stillOpen.length > 0
      ? section(words.say('papers.open.title'), stillOpen)
      : [
          { kind: 'heading', level: 2, text: words.say('papers.open.title') } as const,
          { kind: 'paragraph', text: words.say('papers.open.nothing') } as const,
        ]),
    ...(next.length > 0 ? section(words.say('papers.next.title'), next) : []),
    ...section(words.say('papers.cautions.title'), cautionWords(record, words)),
  ];
}
