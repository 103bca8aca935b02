import type { InspectionRecord } from '@combside/casework/report/inspection-record';
import type { Block } from '../../layout/paper-definition.ts';
import type { PaperWords } from '../phrases.ts';

/** What the inspector wrote freely. */
export function remarksSection(record: InspectionRecord, words: PaperWords): Block[] {
  return record.remarks
    ? [
        { kind: 'heading', level: 2, text: words.say('papers.remarks.title') },
        { kind: 'paragraph', text: record.remarks },
      ]
    : [];
}
