import type { Language } from '@combside/words/language';
import { loadWords } from '@combside/words/load-words';
import type { Room } from '@combside/words/rooms';
import type { Words } from '@combside/words/words';
import { createContext, type ReactNode, useContext, useEffect, useState } from 'react';

const WordsContext = createContext<Words | null>(null);

/**
 * Loads the words of the rooms a half needs, in one language, and hands them to everything below. While they load,
 * nothing is shown: they come from the same place as the script and take one moment.
 */
export function SpeaksWords({
  language,
  rooms,
  children,
}: {
  readonly language: Language;
  readonly rooms: readonly Room[];
  readonly children: ReactNode;
}) {
  const [words, setWords] = useState<Words | null>(null);
  const wanted = rooms.join(' ');
  useEffect(() => {
    let left = false;
    void loadWords(language, wanted.split(' ') as Room[], import.meta.env.DEV ? 'throw' : 'show the id').then(
      (loaded) => {
        if (!left) setWords(loaded as Words);
      },
    );
    return () => {
      left = true;
    };
  }, [language, wanted]);
  return words ? <WordsContext value={words}>{children}</WordsContext> : null;
}

/** The words of the half this component stands in. */
export function useWords(): Words {
  const words = useContext(WordsContext);
  if (!words) throw new Error('no words here: the half must be wrapped in SpeaksWords');
  return words;
}

/** The same words, for whoever asks for those of a few rooms only. */
export function useWordsOf<R extends Room>(): Words<R> {
  // Words of every room can say what words of a few can; the compiler cannot follow that through the ids.
  return useWords() as unknown as Words<R>;
}
