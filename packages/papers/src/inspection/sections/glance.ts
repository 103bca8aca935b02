import type { ColonyRecord, InspectionRecord } from '@combside/casework/report/inspection-record';
import { markOfResult } from '@combside/casework/result/result-mark';
import { drawStateMark } from '../../drawings/state-mark.ts';
import type { Block, Cell } from '../../layout/paper-definition.ts';
import { capital, lookWords, type PaperWords, resultWord } from '../phrases.ts';

/** Every colony in one line. */
export function glanceSection(record: InspectionRecord, words: PaperWords): Block[] {
  if (record.colonies.length === 0) return [];
  const title = words.say('papers.glance.title');
  return [
    { kind: 'heading', level: 2, text: title },
    {
      kind: 'table',
      summary: title,
      columns: [
        { title: words.say('papers.glance.colony'), width: 14 },
        { title: words.say('papers.glance.hive'), width: 15 },
        { title: words.say('papers.glance.looked-at'), width: 39 },
        { title: words.say('papers.glance.result'), width: 32 },
      ],
      rows: record.colonies.map((one) => [
        [{ text: one.label, bold: true }],
        capital(words.say(`casework.hive-state.${one.hiveState}`)),
        lookWords(words, one),
        marked(one, words),
      ]),
    },
  ];
}

function marked(colony: ColonyRecord, words: PaperWords): Cell {
  const word = capital(resultWord(colony, words));
  return { drawing: drawStateMark(markOfResult(colony.result)), width: 13, alternative: word, text: word };
}
