import type { Words } from '@combside/words/words';

/** A sentence as science and casework hand it out: an id, and values that may themselves be words. */
export interface SpokenSentence {
  readonly id: string;
  readonly values: Readonly<Record<string, string | number | { readonly word: string }>>;
}

/** The sentence in words; values that are ids of words are put into words first. */
export function saySentence(words: Words, sentence: SpokenSentence): string {
  const values: Record<string, string | number> = {};
  for (const [name, value] of Object.entries(sentence.values)) {
    values[name] = typeof value === 'object' ? sayId(words, value.word) : value;
  }
  return sayId(words, sentence.id, values);
}

/** A word by an id that comes out of science or casework; an id of a newer version is shown as it is. */
export function sayId(words: Words, id: string, values: Readonly<Record<string, string | number>> = {}): string {
  const spoken = Object.fromEntries(Object.entries(values).map(([name, value]) => [name, daySpoken(words, value)]));
  return words.sayIfKnown(id, spoken) ?? id;
}

const here = Intl.DateTimeFormat().resolvedOptions().timeZone;

/** A day or a moment among the values is written as a day, at the time of the place where it is read. */
function daySpoken(words: Words, value: string | number): string | number {
  if (typeof value === 'number') return value;
  if (/^\d{4}-\d{2}-\d{2}$/.test(value)) return words.day(value);
  if (/^\d{4}-\d{2}-\d{2}T[\d:.]+Z$/.test(value)) return words.dayOf(value, here);
  return value;
}
