import type { Refused } from '@combside/casework/act';
import { addTap, draftFrom, undo } from '@combside/casework/draft/draft-from-taps';
import type { ExaminationDraft } from '@combside/casework/draft/examination-draft';
import type { Tap } from '@combside/casework/draft/tap';
import type { ColonyState } from '@combside/record/states';
import { useState } from 'react';
import type { Saving, Settled } from '../../device/drafts/open-draft.ts';
import { useDraft } from '../../device/drafts/use-draft.ts';

export interface ColonyDraftInHand {
  readonly taps: readonly Tap[];
  readonly draft: ExaminationDraft;
  readonly saving: Saving;
  /** The draft stood here already when the screen opened: the phone stopped, or the colony was left open. */
  readonly cameBack: boolean;
  /** Why the last tap could not be taken, or null. */
  readonly refusal: Refused | null;
  /** The taps at this moment, newer than what was drawn last. */
  now(): readonly Tap[];
  tap(tap: Tap): void;
  undo(): void;
  settled(): Promise<Settled>;
}

/** Keys of all drafts of a visit begin with this; what follows is the colony. */
export function draftPrefix(visit: string): string {
  return `examination/${visit}/`;
}

export function draftKey(visit: string, colony: string): string {
  return draftPrefix(visit) + colony;
}

/** A correction has a draft of its own: it leaves the colony closed, and holds no visit open. */
export function correctionKey(visit: string, colony: string): string {
  return `correction/${visit}/${colony}`;
}

/**
 * One colony's draft: its taps. Each is added to those that stand by then, of this tab and of others.
 *
 * @param begin taps it starts from where nothing is stored: a correction starts from what was sealed
 * @returns undefined while it is being read
 */
export function useColonyDraft(
  key: string,
  colony: ColonyState,
  begin: readonly Tap[] = [],
): ColonyDraftInHand | undefined {
  const [refusal, setRefusal] = useState<Refused | null>(null);
  const [start] = useState(begin);
  const hand = useDraft<readonly Tap[]>({
    key,
    begin: start,
    read: (stored) => stored as readonly Tap[],
    isNothing: (taps) => taps.length === 0,
  });
  if (!hand) return undefined;
  return {
    taps: hand.value,
    draft: draftFrom(hand.value, colony),
    saving: hand.saving,
    cameBack: hand.cameBack,
    refusal,
    now: hand.now,
    tap(tap) {
      setRefusal(null);
      hand.change((taps) => {
        const result = addTap(taps, tap, colony);
        if (result.ok) return result.taps;
        setRefusal(result);
        return taps;
      });
    },
    undo() {
      setRefusal(null);
      hand.change(undo);
    },
    settled: hand.settled,
  };
}
