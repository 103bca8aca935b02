import type { InspectionRecord } from '@combside/casework/report/inspection-record';
import type { Block } from '../../layout/paper-definition.ts';
import { isSuspect, type PaperWords } from '../phrases.ts';

/** Specimens taken; that none was taken is said where there is a suspicion. */
export function specimensSection(record: InspectionRecord, words: PaperWords): Block[] {
  const title = words.say('papers.specimens.title');
  if (record.specimens.length === 0) {
    return record.colonies.some(isSuspect)
      ? [
          { kind: 'heading', level: 2, text: title },
          { kind: 'paragraph', text: words.say('papers.specimens.none') },
        ]
      : [];
  }
  return [
    { kind: 'heading', level: 2, text: title },
    {
      kind: 'table',
      summary: title,
      columns: [
        { title: words.say('papers.specimens.id'), width: 26 },
        { title: words.say('papers.specimens.colony'), width: 14 },
        { title: words.say('papers.specimens.what'), width: 42 },
        { title: words.say('papers.specimens.taken'), width: 18 },
      ],
      rows: record.specimens.map((one) => [
        [{ text: one.id, bold: true }],
        record.colonies.find((colony) => colony.id === one.colony)?.label ?? one.colony,
        one.what,
        words.clockTime(one.takenAt, record.visit.timeZone),
      ]),
    },
  ];
}
