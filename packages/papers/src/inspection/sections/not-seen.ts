import type { ColonyRecord, InspectionRecord } from '@combside/casework/report/inspection-record';
import type { Block } from '../../layout/paper-definition.ts';
import { type PaperWords, signName } from '../phrases.ts';
import { labels } from '../summary.ts';
import { gather } from './gather.ts';

/** Signs that were looked for and not seen, colonies with the same list in one line. */
export function notSeenSection(record: InspectionRecord, words: PaperWords): Block[] {
  const groups = new Map<string, ColonyRecord[]>();
  for (const colony of record.colonies) {
    const signs = colony.signs.filter((one) => one.outcome === 'not seen').map((one) => signName(words, one.sign));
    if (signs.length > 0) gather(groups, signs.join('; '), colony);
  }
  if (groups.size === 0) return [];
  return [
    { kind: 'heading', level: 2, text: words.say('papers.signs.not-seen-title') },
    {
      kind: 'list',
      items: [...groups].map(([signs, colonies]) =>
        words.say('papers.signs.not-seen', { count: colonies.length, colonies: labels(words, colonies), signs }),
      ),
    },
    { kind: 'paragraph', text: words.say('papers.signs.not-looked') },
  ];
}
