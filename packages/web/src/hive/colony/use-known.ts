import { notifiableDiseases } from '@combside/casework/assess/assess-examination';
import { circumstancesFrom } from '@combside/casework/assess/circumstances';
import type { CircumstancesKnown } from '@combside/record/kinds/assessment';
import { useMemo, useState } from 'react';
import { useHiveDevice, useSummaries } from '../hive-device.tsx';

/**
 * What this device knows before the hive is opened: cases and counts of the district, movements, this apiary's past.
 * Null while it is being read.
 */
export function useKnown(colony: string, apiary: string): CircumstancesKnown | null {
  const device = useHiveDevice();
  const colonies = useSummaries('colony');
  const apiaries = useSummaries('apiary');
  const movements = useSummaries('movement');
  const [observedAt] = useState(() => device.now());
  return useMemo(
    () =>
      colonies && apiaries && movements
        ? circumstancesFrom(
            { colony, apiary, observedAt, notifiable: notifiableDiseases(device.pack) },
            { colonies, apiaries, movements },
          )
        : null,
    [colony, apiary, observedAt, device.pack, colonies, apiaries, movements],
  );
}
