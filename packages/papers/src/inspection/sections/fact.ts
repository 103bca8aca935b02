import type { PaperWords } from '../phrases.ts';

/** A fact under its name, as a list to be spread; none when there is nothing to say. */
export function fact(
  words: PaperWords,
  id: Parameters<PaperWords['say']>[0],
  value: string,
): { readonly name: string; readonly value: string }[] {
  return value ? [{ name: words.say(id), value }] : [];
}
