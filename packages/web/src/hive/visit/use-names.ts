import { useCallback, useEffect, useState } from 'react';
import { useWords } from '../../ui/words-context.tsx';
import { useHiveDevice, useSyncStatus } from '../hive-device.tsx';

/** Names of people as far as this device was told them: whoever works in the districts granted here. */
export function useNames(): (person: string) => string {
  const words = useWords();
  const device = useHiveDevice();
  const { lastExchangeAt } = useSyncStatus();
  const [names, setNames] = useState<Readonly<Record<string, string>>>({});
  // biome-ignore lint/correctness/useExhaustiveDependencies: an exchange may have brought further names
  useEffect(() => {
    let left = false;
    void device.names().then((kept) => {
      if (!left) setNames(kept);
    });
    return () => {
      left = true;
    };
  }, [device, lastExchangeAt]);
  return useCallback(
    (person) =>
      person === device.session.person ? device.session.name : (names[person] ?? words.say('always.not-known')),
    [device, names, words],
  );
}
