import { useCallback, useEffect, useState } from 'react';
import { useWords } from '../ui/words-context.tsx';
import { useField, useSyncStatus } from './field.tsx';

/** Names of people as far as this device was told them: whoever works in the districts granted here. */
export function useNames(): (person: string) => string {
  const words = useWords();
  const field = useField();
  const { lastExchangeAt } = useSyncStatus();
  const [names, setNames] = useState<Readonly<Record<string, string>>>({});
  // biome-ignore lint/correctness/useExhaustiveDependencies: an exchange may have brought further names
  useEffect(() => {
    let left = false;
    void field.names().then((kept) => {
      if (!left) setNames(kept);
    });
    return () => {
      left = true;
    };
  }, [field, lastExchangeAt]);
  return useCallback(
    (person) =>
      person === field.session.person ? field.session.name : (names[person] ?? words.say('always.not-known')),
    [field, names, words],
  );
}
