import type { ColonyRecord, InspectionRecord } from '@combside/casework/report/inspection-record';
import type { Block } from '../../layout/paper-definition.ts';
import type { PaperWords } from '../phrases.ts';

/** The photographs of a colony, with the hashes that prove them. */
export function photographsTable(colony: ColonyRecord, record: InspectionRecord, words: PaperWords): Block[] {
  if (colony.photographs.length === 0) return [];
  return [
    {
      kind: 'table',
      summary: words.say('papers.photographs.of-colony', { label: colony.label }),
      columns: [
        { title: words.say('papers.photographs.title'), width: 30 },
        { title: words.say('papers.photographs.taken'), width: 17 },
        { title: words.say('papers.photographs.hash'), width: 53 },
      ],
      rows: colony.photographs.map((one) => [
        one.caption || words.say('papers.photographs.no-caption'),
        words.clockTime(one.takenAt, record.visit.timeZone),
        one.hash,
      ]),
    },
  ];
}
