import type { CorrectedCell } from '@combside/casework/comb/corrected-reading';
import type { Words } from '@combside/words/words';

/** A cell in words: which it is, what it holds, and who says so. */
export function cellWords(words: Words, cells: readonly CorrectedCell[], cell: number): string {
  const one = cells[cell];
  if (!one) return '';
  const values = {
    cell: words.number(cell + 1, 0),
    count: words.number(cells.length, 0),
    what: words.say(`comb.class.${one.class}`),
    read: words.say(`comb.class.${one.machine}`),
    share: words.share(one.confidence),
  };
  if (!one.lookedAt) return words.say('comb.screen.cell.read', values);
  return words.say(one.class === one.machine ? 'comb.screen.cell.agreed' : 'comb.screen.cell.corrected', values);
}
