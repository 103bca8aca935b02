import type { ColonyRecord } from '@combside/casework/report/inspection-record';

/** Puts a colony to those of which the same is said, so that they share one line. */
export function gather(groups: Map<string, ColonyRecord[]>, key: string, colony: ColonyRecord): void {
  const group = groups.get(key);
  if (group) group.push(colony);
  else groups.set(key, [colony]);
}
