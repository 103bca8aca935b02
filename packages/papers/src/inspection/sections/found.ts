import type { ColonyRecord, InspectionRecord } from '@combside/casework/report/inspection-record';
import type { Block } from '../../layout/paper-definition.ts';
import { askedWords, conditionName, isSuspect, lookWords, type PaperWords, resultWord, wordFor } from '../phrases.ts';
import { fact } from './fact.ts';
import { photographsTable } from './photographs-table.ts';
import { ropeTable } from './rope-table.ts';
import { signsTable } from './signs-table.ts';

/** What was found, colony by colony; a colony with nothing to tell has its line in the table only. */
export function foundSection(record: InspectionRecord, words: PaperWords): Block[] {
  const telling = record.colonies.filter(tells);
  if (telling.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: words.say('papers.detail.title') },
    ...telling.flatMap((one) => detail(one, record, words)),
  ];
}

/** Whether a colony has more to tell than a line of the table. */
function tells(colony: ColonyRecord): boolean {
  return (
    isSuspect(colony) ||
    colony.signs.some((one) => one.outcome === 'seen') ||
    colony.ropeTests.length > 0 ||
    colony.finds.some((one) => one.outcome === 'seen') ||
    colony.remarks !== '' ||
    colony.photographs.length > 0 ||
    colony.medicines?.answer === 'yes' ||
    colony.combChanges?.answer === 'yes'
  );
}

function detail(colony: ColonyRecord, record: InspectionRecord, words: PaperWords): Block[] {
  const { label, look } = colony;
  const findWords = (outcome: 'seen' | 'not seen'): string =>
    colony.finds
      .filter((one) => one.outcome === outcome)
      .map((one) => {
        const find = wordFor(words, 'casework.find.*', one.find);
        return one.amount
          ? words.say('papers.finds.amount', { find, amount: words.say(`casework.amount.${one.amount}`) })
          : find;
      })
      .join(', ');
  const light = look
    ? [
        look.light ? words.say(`casework.light.${look.light}`) : '',
        look.hold && colony.hiveState === 'living' ? words.say(`casework.hold.${look.hold}`) : '',
      ].filter(Boolean)
    : [];
  const sealed = look?.sealedBroodCombSides ?? null;
  const blocks: Block[] = [
    {
      kind: 'heading',
      level: 3,
      text: words.say('papers.detail.colony', { label, result: resultWord(colony, words) }),
    },
    {
      kind: 'facts',
      facts: [
        ...fact(
          words,
          'papers.detail.suspected',
          words.list(colony.suspected.map((condition) => conditionName(words, condition))),
        ),
        ...fact(
          words,
          'papers.detail.at',
          colony.observedAt ? words.clockTime(colony.observedAt, record.visit.timeZone) : '',
        ),
        ...fact(words, 'papers.detail.looked-at', [lookWords(words, colony), ...light].join(', ')),
        ...fact(
          words,
          'papers.detail.sealed-brood',
          sealed === null ? '' : words.say('papers.detail.comb-sides', { count: sealed, text: words.number(sealed) }),
        ),
        ...fact(words, 'papers.detail.medicines', colony.medicines ? askedWords(words, colony.medicines) : ''),
        ...fact(words, 'papers.detail.comb-changes', colony.combChanges ? askedWords(words, colony.combChanges) : ''),
        ...fact(words, 'papers.finds.seen', findWords('seen')),
        ...fact(words, 'papers.finds.not-seen', findWords('not seen')),
        ...fact(words, 'papers.detail.remarks', colony.remarks),
      ],
    },
    ...signsTable(colony, words),
    ...ropeTable(colony, words),
    ...photographsTable(colony, record, words),
  ];
  // What is short stays on one page; a long finding would leave half a page empty.
  const short = colony.signs.filter((one) => one.outcome === 'seen').length <= 2 && colony.ropeTests.length === 0;
  return short ? [{ kind: 'together', blocks }] : blocks;
}
