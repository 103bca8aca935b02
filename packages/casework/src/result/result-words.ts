/** The word on a result. Never "healthy", never "clear": a look cannot show it. */
export const resultWords = [
  'nothing seen with this look',
  'signs seen',
  'suspect',
  'remains suspect',
  'masked, no conclusion',
  'too little brood to judge',
  'not judged',
] as const;
export type ResultWord = (typeof resultWords)[number];

/** Result words that say a suspicion stands. */
const suspicious: ReadonlySet<string> = new Set(['suspect', 'remains suspect']);

/** Whether the result word says that a suspicion stands. */
export function saysSuspect(result: string): boolean {
  return suspicious.has(result);
}
