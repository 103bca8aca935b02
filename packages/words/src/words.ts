import { createFormats, type Formats } from './formats.ts';
import type { Language } from './language.ts';
import { type Message, readMessage, speak, type Values } from './message.ts';
import type { Room, WordId, WordPattern } from './rooms.ts';

/** Messages by id, as one room writes them in one language. */
export type Catalogue = Readonly<Record<string, string>>;

/** What to do with an id nobody wrote: throw (tests, development), or show the id itself (in the field). */
export type OnMissing = 'throw' | 'show the id';

/**
 * Everything people read in one language, for the rooms that were loaded. A part of the program that needs only some
 * rooms says so: `Words<'always' | 'signs'>`; words of more rooms may be handed to it, words of fewer do not compile.
 */
export interface Words<R extends Room = Room> extends Formats {
  readonly language: Language;
  /**
   * The message of this id with its values put in. A number is written the way the language writes numbers; dates and
   * units are formatted first (`words.day`, `words.unit`) and handed in as text.
   *
   * @throws RangeError when the id is unknown or a value is missing (only with `onMissing: 'throw'`)
   */
  readonly say: (id: WordId<R>, values?: Values) => string;
  /**
   * One of the messages whose ids fit a pattern: `sayOne('signs.sign.*.name', 'scale')`. For a word that comes out of the
   * record, such as a sign; null when it was written by a newer version and these rooms have no such id.
   *
   * @throws RangeError when a value is missing (only with `onMissing: 'throw'`)
   */
  readonly sayOne: <const Pattern extends string>(
    pattern: WordPattern<R, Pattern>,
    word: string,
    values?: Values,
  ) => string | null;
}

/**
 * Words of one language from the catalogues given. `loadWords` fetches the catalogues and calls this.
 *
 * @param catalogues those of one language; an id may stand in one of them only
 * @throws RangeError when two catalogues hold the same id
 */
export function createWords<R extends Room = Room>(
  language: Language,
  catalogues: readonly Catalogue[],
  onMissing: OnMissing = 'throw',
): Words<R> {
  const texts = new Map<string, string>();
  for (const catalogue of catalogues) {
    for (const [id, text] of Object.entries(catalogue)) {
      if (texts.has(id))
        throw new RangeError(`two catalogues hold the word "${id}"; each room starts its ids with its own name`);
      texts.set(id, text);
    }
  }

  // Reading a message takes far longer than speaking it, so each is read once, when first spoken.
  const read = new Map<string, Message>();
  const formats = createFormats(language);

  const sayOrThrow = (id: string, values: Values): string => {
    let message = read.get(id);
    if (!message) {
      const text = texts.get(id);
      if (text === undefined) throw new RangeError(`no word "${id}" in ${language}; is its room loaded?`);
      message = readMessage(id, text);
      read.set(id, message);
    }
    return speak(id, message, values, formats);
  };

  const say = (id: string, values: Values = {}): string => {
    if (onMissing === 'throw') return sayOrThrow(id, values);
    try {
      return sayOrThrow(id, values);
    } catch {
      // At the hive a bare id is better than a screen that is gone.
      return id;
    }
  };

  return {
    ...formats,
    language,
    say,
    sayOne: (pattern, word, values = {}) => {
      const id = pattern.replace('*', () => word);
      return texts.has(id) ? say(id, values) : null;
    },
  };
}
