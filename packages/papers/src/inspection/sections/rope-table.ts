import type { ColonyRecord } from '@combside/casework/report/inspection-record';
import { drawingOf } from '@combside/science/signs/drawing';
import { drawSign } from '../../drawings/sign-drawing.ts';
import type { Block } from '../../layout/paper-definition.ts';
import { type PaperWords, placeWords } from '../phrases.ts';

/** The rope tests of a colony, each drawn with its thread. */
export function ropeTable(colony: ColonyRecord, words: PaperWords): Block[] {
  if (colony.ropeTests.length === 0) return [];
  return [
    {
      kind: 'table',
      summary: words.say('papers.rope.title', { label: colony.label }),
      columns: [
        { title: words.say('papers.rope.thread'), width: 30 },
        { title: words.say('papers.rope.snaps'), width: 16 },
        { title: words.say('papers.rope.colour'), width: 18 },
        { title: words.say('papers.rope.remains'), width: 18 },
        { title: words.say('papers.rope.stick'), width: 20 },
        { title: words.say('papers.rope.where'), width: 22 },
      ],
      rows: colony.ropeTests.map((one) => {
        const length = words.unit(one.threadMillimetres, 'mm');
        return [
          {
            drawing: drawSign({ ...drawingOf['con.ropy'], thread: Math.max(1, one.threadMillimetres) }),
            width: 34,
            alternative: words.say('papers.rope.drawn', { length }),
            text: one.threadMillimetres > 0 ? length : words.say('papers.rope.none-drawn'),
          },
          one.snapsBack === null
            ? words.say('papers.rope.not-said')
            : words.say(one.snapsBack ? 'papers.rope.yes' : 'papers.rope.no'),
          one.colour ? words.say(`casework.colour.${one.colour}`) : words.say('papers.rope.not-said'),
          words.say(`casework.tissue.${one.tissue}`),
          words.say(`casework.stick.${one.stick}`),
          placeWords(words, one),
        ];
      }),
    },
  ];
}
