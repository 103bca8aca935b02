/**
 * The words on a result, from the gravest on. This is the one list: papers, the map, lists and SQL follow its order. Never
 * "healthy", never "clear": a look cannot show it.
 */
export const resultWords = [
  'suspect',
  'remains suspect',
  'signs seen',
  'masked, no conclusion',
  'too little brood to judge',
  'not judged',
  'nothing seen with this look',
] as const;
export type ResultWord = (typeof resultWords)[number];

/** The result words that say a suspicion stands. */
export const suspectWords = ['suspect', 'remains suspect'] as const satisfies readonly ResultWord[];

/** Whether the result word says that a suspicion stands. No result, and a word of a newer version, says none. */
export function saysSuspect(result: string | null): boolean {
  return suspectWords.some((one) => one === result);
}

/**
 * How grave a result is: 0 for nothing seen with this look, more the graver it is.
 *
 * @returns -1 for no result, and for a word of a newer version
 */
export function gravityOf(result: string | null): number {
  const place = (resultWords as readonly (string | null)[]).indexOf(result);
  return place === -1 ? -1 : resultWords.length - 1 - place;
}
