import type { InspectionRecord } from '@combside/casework/report/inspection-record';
import { drawStateMark } from '../../drawings/state-mark.ts';
import type { Block } from '../../layout/paper-definition.ts';
import { type PaperWords, replacesWords, whenWords } from '../phrases.ts';
import { summaryOf } from '../summary.ts';

/** What the paper is, of which visit, and what it came to. */
export function headSection(record: InspectionRecord, words: PaperWords): Block[] {
  const summary = summaryOf(record, words);
  const replaces = replacesWords(words, record);
  const place = [record.authority, record.district].filter(Boolean).join(' · ');
  return [
    ...(place ? [{ kind: 'paragraph', text: place, size: 'small' } as const] : []),
    { kind: 'heading', level: 1, text: words.say('papers.inspection.title') },
    {
      kind: 'paragraph',
      size: 'large',
      text: [{ text: record.apiary.name, bold: true }, { text: ` · ${whenWords(words, record.visit)}` }],
    },
    ...(record.invented
      ? [{ kind: 'paragraph', text: [{ text: words.say('papers.invented'), bold: true }] } as const]
      : []),
    ...(replaces ? [{ kind: 'paragraph', text: [{ text: replaces, bold: true }] } as const] : []),
    ...(record.visit.endedAt === null
      ? [{ kind: 'paragraph', text: [{ text: words.say('papers.draft'), bold: true }] } as const]
      : []),
    {
      kind: 'statement',
      mark: summary.mark ? drawStateMark(summary.mark) : null,
      alternative: words.say('papers.summary.title'),
      lines: [...summary.sentences, words.say('papers.inspection.what-it-says')],
    },
  ];
}
