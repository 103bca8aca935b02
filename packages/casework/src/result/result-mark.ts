import { type ResultWord, resultWords } from './results-by-gravity.ts';

const marks = {
  suspect: 'suspect',
  'remains suspect': 'suspect',
  'signs seen': 'signs seen',
  'masked, no conclusion': 'masked',
  'too little brood to judge': 'too little brood',
  'not judged': 'not opened',
  'nothing seen with this look': 'nothing seen',
} as const satisfies Record<ResultWord, string>;

/** The marks of the house that a result can have; `papers/drawings` draws them. */
export type ResultMark = (typeof marks)[ResultWord];

/** The mark of a result; its word always stands beside it. No result, and a word of a newer version, is "not opened". */
export function markOfResult(result: string | null): ResultMark {
  return resultWords.some((one) => one === result) ? marks[result as ResultWord] : 'not opened';
}

/** One word for each mark but that of "not opened", the gravest first: what a key explains. */
export const wordsOfMarks: readonly ResultWord[] = resultWords.filter(
  (word, place) =>
    marks[word] !== 'not opened' && resultWords.findIndex((other) => marks[other] === marks[word]) === place,
);
