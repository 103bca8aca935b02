/** A note in two parts: its words, and the question of the office that it was kept from. */
export interface NoteParts {
  readonly words: string;
  /** Where the question opens with its inputs, from the root of this program; null for a note somebody wrote. */
  readonly question: string | null;
}

/**
 * Takes the address of a question off the end of a note. Only addresses of this program's own questions count: a note is
 * free words, and nothing else in it ever becomes a link.
 */
export function linkInNote(text: string): NoteParts {
  const found = /^(?:([\s\S]*?)\s*\n)?(\/district\/questions\/[a-z-]+(?:\?[\w.~%+&=*-]*)?)\s*$/.exec(text);
  return found ? { words: found[1] ?? '', question: found[2] ?? null } : { words: text, question: null };
}
