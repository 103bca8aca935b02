import { notifiableDiseases } from '@combside/casework/assess/assess-examination';
import { circumstancesFrom } from '@combside/casework/assess/circumstances';
import type { CircumstancesKnown } from '@combside/record/kinds/assessment';
import { useMemo, useState } from 'react';
import { useField, useSummaries } from './field.tsx';

/**
 * What this device knows before the hive is opened: cases and counts of the district, movements, this apiary's past.
 * Null while it is being read.
 */
export function useKnown(colony: string, apiary: string): CircumstancesKnown | null {
  const field = useField();
  const colonies = useSummaries('colony');
  const apiaries = useSummaries('apiary');
  const movements = useSummaries('movement');
  const [observedAt] = useState(() => field.now());
  return useMemo(
    () =>
      colonies && apiaries && movements
        ? circumstancesFrom(
            { colony, apiary, observedAt, notifiable: notifiableDiseases(field.pack) },
            { colonies, apiaries, movements },
          )
        : null,
    [colony, apiary, observedAt, field.pack, colonies, apiaries, movements],
  );
}
