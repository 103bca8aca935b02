import type { Act, Refused } from '@combside/casework/act';
import { useState } from 'react';
import { useHiveDevice } from '../hive-device.tsx';
import type { CombDraftInHand } from './use-comb-draft.ts';

/** How the keeping of a reading stands. */
export interface KeepingReading {
  readonly busy: boolean;
  readonly failed: boolean;
  readonly refusal: Refused | null;
  /**
   * Writes what the act makes of the draft, once every tap of it is durable; the draft is closed with it.
   *
   * @returns whether it was written
   */
  keep(hand: CombDraftInHand, act: () => Act): Promise<boolean>;
}

/** Lets a screen keep a reading, the first time or corrected. */
export function useKeepingReading(): KeepingReading {
  const device = useHiveDevice();
  const [refusal, setRefusal] = useState<Refused | null>(null);
  const [busy, setBusy] = useState(false);
  const [failed, setFailed] = useState(false);
  return {
    busy,
    failed,
    refusal,
    async keep(hand, act) {
      setBusy(true);
      setFailed(false);
      try {
        await hand.settled();
        const made = act();
        if (!made.ok) {
          setRefusal(made);
          return false;
        }
        await device.book.write(made.proposals, { closes: hand.keys });
        void device.sync.run();
        return true;
      } catch (failure) {
        setFailed(true);
        // Handed on, so that the fault report has it.
        void Promise.reject(failure);
        return false;
      } finally {
        setBusy(false);
      }
    },
  };
}
