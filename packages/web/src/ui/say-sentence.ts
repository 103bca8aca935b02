import type { Room, WordPattern } from '@combside/words/rooms';
import { type Sentence, saySentence as sayIn } from '@combside/words/sentence';
import type { Words } from '@combside/words/words';
import { timeZoneHere } from './time-zone.ts';

/** A sentence of science or casework in words; a moment in it is written as a day at the time of the place where it is read. */
export function saySentence(words: Words, sentence: Sentence<'signs' | 'casework'>): string {
  return sayIn<Room>(words, sentence, timeZoneHere);
}

/** A word that the record or the law chose, by the pattern of its id; one of a newer version is shown as it is. */
export function sayWord<const Pattern extends string>(
  words: Words,
  pattern: WordPattern<Room, Pattern>,
  word: string,
  values: Readonly<Record<string, string | number>> = {},
): string {
  return words.sayOne(pattern, word, values) ?? word;
}
