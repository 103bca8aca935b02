import type { InspectionRecord } from '@combside/casework/report/inspection-record';
import type { Block } from '../../layout/paper-definition.ts';
import type { PaperWords } from '../phrases.ts';

/** By what the paper can be checked against the record. */
export function proofSection(record: InspectionRecord, words: PaperWords): Block[] {
  const { entries } = record.proof;
  return [
    { kind: 'heading', level: 2, text: words.say('papers.proof.title') },
    { kind: 'paragraph', size: 'small', text: words.say('papers.proof.says') },
    {
      kind: 'facts',
      facts: [
        { name: words.say('papers.proof.content'), value: record.proof.contentHash },
        { name: words.say('papers.proof.visit'), value: record.visit.id },
      ],
    },
    ...(entries.length > 0
      ? [
          {
            kind: 'paragraph',
            size: 'small',
            text: [{ text: `${words.say('papers.proof.entries')}: `, bold: true }, { text: entries.join(', ') }],
          } as const,
        ]
      : []),
  ];
}
