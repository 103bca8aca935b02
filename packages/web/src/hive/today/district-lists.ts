import type { ApiarySummary, KeeperSummary } from '@combside/record/summary';
import { useMemo } from 'react';
import { useSummaries } from '../hive-device.tsx';

/** Apiaries on this phone by id. The phone holds only the districts its person may read. */
export function useDistrictApiaries(): ReadonlyMap<string, ApiarySummary> | undefined {
  const rows = useSummaries('apiary');
  return useMemo(() => rows && new Map(rows.map((apiary) => [apiary.about.id, apiary])), [rows]);
}

/** Keepers on this phone by id. */
export function useDistrictKeepers(): ReadonlyMap<string, KeeperSummary> | undefined {
  const rows = useSummaries('keeper');
  return useMemo(() => rows && new Map(rows.map((keeper) => [keeper.about.id, keeper])), [rows]);
}
