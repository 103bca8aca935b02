import type { ColonyRecord } from '@combside/casework/report/inspection-record';
import { isSign } from '@combside/science/signs/catalogue';
import { drawingOf } from '@combside/science/signs/drawing';
import { drawSign } from '../../drawings/sign-drawing.ts';
import type { Block } from '../../layout/paper-definition.ts';
import { capital, cellsWords, type PaperWords, signName } from '../phrases.ts';

/** The signs seen in a colony, each drawn. */
export function signsTable(colony: ColonyRecord, words: PaperWords): Block[] {
  const seen = colony.signs.filter((one) => one.outcome === 'seen');
  if (seen.length === 0) return [];
  return [
    {
      kind: 'table',
      summary: words.say('papers.signs.title', { label: colony.label }),
      columns: [
        { title: words.say('papers.signs.sign'), width: 48 },
        { title: words.say('papers.signs.how-many'), width: 22 },
        { title: words.say('papers.signs.where'), width: 34 },
      ],
      rows: seen.map((one) => {
        const name = capital(signName(words, one.sign));
        const amount = one.count
          ? words.say(`casework.count.${one.count}`)
          : one.amount
            ? words.say(`casework.amount.${one.amount}`)
            : words.say('casework.outcome.seen');
        return [
          isSign(one.sign)
            ? {
                drawing: drawSign(drawingOf[one.sign]),
                width: 34,
                alternative: words.say('papers.signs.drawn', { sign: name }),
                text: name,
              }
            : name,
          capital(amount),
          one.places.map((place) => cellsWords(words, place)).join('\n'),
        ];
      }),
    },
  ];
}
