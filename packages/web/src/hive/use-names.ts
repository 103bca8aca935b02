import { useCallback } from 'react';
import { useWords } from '../ui/words-context.tsx';
import { useField } from './field.tsx';

/** Names of people as far as this device knows them: whoever is signed in; others are named at the office. */
export function useNames(): (person: string) => string {
  const words = useWords();
  const { session } = useField();
  return useCallback(
    (person) => (person === session.person ? session.name : words.say('always.not-known')),
    [session, words],
  );
}
