import type { ColonyRecord, InspectionRecord } from '@combside/casework/report/inspection-record';
import type { Block } from '../../layout/paper-definition.ts';
import { couldHaveMissed, type PaperWords } from '../phrases.ts';
import { labels } from '../summary.ts';
import { gather } from './gather.ts';

/** What the looks could have missed, colonies with the same in one line. */
export function missedSection(record: InspectionRecord, words: PaperWords): Block[] {
  const groups = new Map<string, ColonyRecord[]>();
  for (const colony of record.colonies) {
    const id = couldHaveMissed(colony);
    if (id) gather(groups, words.say(id), colony);
  }
  if (groups.size === 0) return [];
  return [
    { kind: 'heading', level: 2, text: words.say('papers.missed.title') },
    {
      kind: 'list',
      items: [...groups].map(([what, colonies]) =>
        words.say('papers.missed.colonies', { count: colonies.length, colonies: labels(words, colonies), what }),
      ),
    },
  ];
}
