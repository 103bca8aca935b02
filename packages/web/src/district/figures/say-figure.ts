import type { FigureLine } from '@combside/contract/figures';
import type { Words } from '@combside/words/words';
import { sayWord } from '../../ui/say-sentence.ts';

/** The sections of the page, each with the numbers that stand in it. */
export const figureSections = [
  { section: 'inspected', holds: ['inspected', 'colonies', 'apiaries', 'examinations'] },
  { section: 'suspicions', holds: ['suspicions'] },
  { section: 'prevalence', holds: ['prevalence', 'apiary prevalence', 'within', 'incidence'] },
  { section: 'coverage', holds: ['coverage'] },
  { section: 'yield', holds: ['yield', 'yield colonies'] },
  { section: 'found', holds: ['found by'] },
  { section: 'finds', holds: ['finds'] },
  { section: 'month', holds: ['month'] },
] as const;

/** The name of a figure in the address: its parts, joined. */
export function figureName(figure: Pick<FigureLine, 'id'>): string {
  return figure.id.join('|');
}

/** What a number counts, in words. */
export function sayFigure(words: Words, id: readonly string[]): string {
  const [kind = '', first = '', second = '', third = ''] = id;
  const condition = (one: string) =>
    one === 'not named' ? words.say('programme.not-named') : sayWord(words, 'signs.condition.*.name', one);
  const depth = (one: string) => sayWord(words, 'casework.depth.*', one);
  switch (kind) {
    case 'examinations':
    case 'colonies':
    case 'apiaries':
      return sayWord(words, 'programme.row.*', kind, { depth: depth(first) });
    case 'suspicions':
      return words.say('programme.row.suspicions', {
        condition: condition(first),
        basis: sayWord(words, 'programme.basis.*', second),
        depth: depth(third),
      });
    case 'prevalence':
    case 'apiary prevalence':
      return sayWord(words, 'programme.row.*', kind, { condition: condition(first), depth: depth(second) });
    case 'within':
    case 'incidence':
      return sayWord(words, 'programme.row.*', kind, { condition: condition(first) });
    case 'coverage':
      return words.say('programme.row.coverage', { what: sayWord(words, 'programme.what.*', first) });
    case 'yield':
    case 'yield colonies': {
      const reason =
        first === 'not known' ? words.say('programme.not-known') : sayWord(words, 'casework.visit-reason.*', first);
      return sayWord(words, 'programme.row.*', kind, { reason });
    }
    case 'found by':
      return words.say('programme.row.found by', { by: sayWord(words, 'programme.by.*', first) });
    case 'finds':
      return words.say('programme.row.finds', { find: sayWord(words, 'casework.find.*', first) });
    case 'month':
      return sayWord(words, 'programme.row.month.*', first, { month: sayMonth(words, second) });
    default:
      return sayWord(words, 'programme.row.*', kind);
  }
}

/** A month, YYYY-MM, as the language writes it. */
export function sayMonth(words: Words, month: string): string {
  return new Intl.DateTimeFormat(words.language, { month: 'short', year: 'numeric', timeZone: 'UTC' }).format(
    new Date(`${month}-15T12:00:00Z`),
  );
}

/** A count, with what it is out of. */
export function sayNumber(words: Words, figure: FigureLine): string {
  return figure.of === null
    ? words.number(figure.count)
    : words.say('programme.number.of', { count: words.number(figure.count), of: words.number(figure.of) });
}

/** Decimals, 1 to 5, with which the ends of so small an interval can still be told apart in per cent. */
export function decimalsFor(high: number): number {
  return high > 0 ? Math.min(5, Math.max(1, Math.floor(-Math.log10(high)))) : 1;
}
