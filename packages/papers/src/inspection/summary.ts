import type { WalkWord } from '@combside/casework/examine/walk';
import type { ColonyRecord, InspectionRecord } from '@combside/casework/report/inspection-record';
import { markOfResult } from '@combside/casework/result/result-mark';
import { resultWords } from '@combside/casework/result/results-by-gravity';
import type { ColonyState } from '../drawings/state-mark.ts';
import { conditionName, isSuspect, type PaperWords } from './phrases.ts';

/** What the visit came to, the gravest first: one sentence for each result that occurred. */
export interface Summary {
  readonly mark: ColonyState | null;
  readonly sentences: readonly string[];
}

/** What is said of the colonies of each result; both suspicions are one, and nothing seen is said by itself. */
const said = {
  suspect: 'papers.summary.suspect',
  'signs seen': 'papers.summary.signs',
  'masked, no conclusion': 'papers.summary.masked',
  'too little brood to judge': 'papers.summary.too-little',
  'not judged': 'papers.summary.not-judged',
  'not opened': 'papers.summary.not-opened',
} as const satisfies Record<Exclude<WalkWord, 'being looked at' | 'nothing seen with this look'>, string>;

/** From the gravest down; the summary and its mark follow this order. */
const gravest = [...resultWords, 'not opened' as const].filter((one) =>
  Object.hasOwn(said, one),
) as (keyof typeof said)[];

/** The same summary stands on the paper and, large, on the screen. */
export function summaryOf(record: InspectionRecord, words: PaperWords): Summary {
  const { colonies } = record;
  if (colonies.length === 0) return { mark: null, sentences: [words.say('papers.summary.no-colonies')] };

  const sentences: string[] = [];
  let mark: ColonyState | null = null;
  for (const result of gravest) {
    const these = colonies.filter((one) => (result === 'suspect' ? isSuspect(one) : one.result === result));
    if (these.length === 0) continue;
    mark ??= markOfResult(result);
    sentences.push(words.say(said[result], { count: these.length, colonies: someLabels(words, these) }));
    if (result === 'suspect') {
      const conditions = [...new Set(these.flatMap((one) => one.suspected))].map((one) => conditionName(words, one));
      if (conditions.length > 0) {
        sentences.push(words.say('papers.summary.suspect-of', { conditions: words.list(conditions) }));
      }
    }
  }
  const nothing = colonies.filter((one) => one.result === 'nothing seen with this look').length;
  if (nothing > 0) {
    const nothingSaid = words.say('papers.summary.nothing-seen', { count: nothing, all: colonies.length });
    // With nothing graver it is the first thing said; otherwise it comes after what matters more.
    if (sentences.length === 0) mark = 'nothing seen';
    sentences.push(nothingSaid);
  }
  return { mark, sentences };
}

/** Labels of colonies in a row: "2, 5 and 7". */
export function labels(words: PaperWords, colonies: readonly Pick<ColonyRecord, 'label'>[]): string {
  return words.list(colonies.map((one) => one.label));
}

/** The summary stays short: the first twenty labels, and how many more there are. The table names them all. */
function someLabels(words: PaperWords, colonies: readonly ColonyRecord[]): string {
  if (colonies.length <= 20) return labels(words, colonies);
  const first = colonies.slice(0, 20).map((one) => one.label);
  return words.say('papers.summary.and-more', { some: first.join(', '), count: colonies.length - first.length });
}
