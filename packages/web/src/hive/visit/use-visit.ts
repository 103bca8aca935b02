import type { Tap } from '@combside/casework/draft/tap';
import type { ApiaryState, ColonyState, VisitState } from '@combside/record/states';
import { useEffect, useState } from 'react';
import { draftPrefix } from '../colony/use-colony-draft.ts';
import { useEntity, useHiveDevice, useStates } from '../hive-device.tsx';

/** A visit with everything its screens need. */
export interface VisitInHand {
  readonly visit: VisitState;
  readonly apiary: ApiaryState;
  readonly colonies: readonly ColonyState[];
  /** Stored taps of colonies not closed yet, by colony id. */
  readonly drafts: Readonly<Record<string, readonly Tap[]>>;
}

/** Reads a visit with its apiary, colonies and drafts; `null` when this device does not know it. */
export function useVisit(id: string): VisitInHand | null | undefined {
  const device = useHiveDevice();
  const visit = useEntity('visit', id);
  const apiaryId = visit?.visit.current?.body.apiary ?? '';
  const apiary = useEntity('apiary', apiaryId);
  const colonies = useStates('colony', { apiary: apiaryId });
  const [drafts, setDrafts] = useState<VisitInHand['drafts'] | undefined>();
  // Closing a colony takes its draft away in the same stroke, so the drafts are read again with every new state.
  // biome-ignore lint/correctness/useExhaustiveDependencies: `colonies` is the sign that something was closed
  useEffect(() => {
    let left = false;
    const prefix = draftPrefix(id);
    const read = () =>
      void device.drafts.all(prefix).then((stored) => {
        if (!left) setDrafts(stored as Record<string, readonly Tap[]>);
      });
    read();
    const stop = device.drafts.onElsewhere((keys) => {
      if (keys.some((key) => key.startsWith(prefix))) read();
    });
    return () => {
      left = true;
      stop();
    };
  }, [device, id, colonies]);

  if (visit === null) return null;
  if (!visit || colonies === undefined || apiary === undefined || drafts === undefined) return undefined;
  if (apiary === null) return null;
  return { visit, apiary, colonies, drafts };
}
