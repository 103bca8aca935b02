import type { Room, WordId } from './rooms.ts';
import type { Words } from './words.ts';

/**
 * A sentence as the floors above hand it out: the id of a message, and what is put into it. A value says what it is: text
 * as it stands, a number, a calendar day (`2026-05-14`), a moment that is read as a day, or another message by its id.
 */
export interface Sentence<R extends Room> {
  readonly id: WordId<R>;
  readonly values: Readonly<
    Record<
      string,
      string | number | { readonly day: string } | { readonly moment: string } | { readonly word: WordId<R> }
    >
  >;
}

/**
 * The sentence in words.
 *
 * @param timeZone IANA name of the place whose day a moment is read as
 * @throws RangeError when a day, a moment or the zone cannot be read
 */
export function saySentence<R extends Room>(words: Words<R>, sentence: Sentence<R>, timeZone: string): string {
  const values: Record<string, string | number> = {};
  for (const [name, value] of Object.entries(sentence.values)) {
    if (typeof value !== 'object') values[name] = value;
    else if ('day' in value) values[name] = words.day(value.day);
    else if ('moment' in value) values[name] = words.dayOf(value.moment, timeZone);
    else values[name] = words.say(value.word);
  }
  return words.say(sentence.id, values);
}
