import type { Refused } from '@combside/casework/act';
import { addTap, draftFrom, undo } from '@combside/casework/draft/draft-from-taps';
import type { ExaminationDraft } from '@combside/casework/draft/examination-draft';
import type { Tap } from '@combside/casework/draft/tap';
import type { ColonyState } from '@combside/record/states';
import { useEffect, useRef, useState } from 'react';
import { useHiveDevice } from '../hive-device.tsx';

export type Saving = 'saved' | 'saving' | 'failed';

export interface DraftInHand {
  readonly taps: readonly Tap[];
  readonly draft: ExaminationDraft;
  readonly saving: Saving;
  /** The draft stood here already when the screen opened: the phone stopped, or the colony was left open. */
  readonly cameBack: boolean;
  /** Why the last tap could not be taken, or null. */
  readonly refusal: Refused | null;
  tap(tap: Tap): void;
  undo(): void;
  /** Resolves when every tap so far is durable. */
  settled(): Promise<void>;
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
 * One colony's draft. Each tap is shown at once and stored before "saved here" is said; stores follow one another, so
 * that a slow one never overtakes a later tap.
 *
 * @param begin taps it starts from where nothing is stored: a correction starts from what was sealed
 */
export function useDraft(key: string, colony: ColonyState, begin: readonly Tap[] = []): DraftInHand | undefined {
  const device = useHiveDevice();
  const [taps, setTaps] = useState<readonly Tap[] | undefined>();
  const [saving, setSaving] = useState<Saving>('saved');
  const [refusal, setRefusal] = useState<Refused | null>(null);
  const [cameBack, setCameBack] = useState(false);
  const latest = useRef<readonly Tap[]>([]);
  const [start] = useState(begin);
  const queue = useRef<Promise<void>>(Promise.resolve());

  useEffect(() => {
    let left = false;
    void device.loadDraft(key).then((kept) => {
      if (left) return;
      const first = kept.length > 0 ? kept : start;
      latest.current = first;
      setCameBack(kept.length > 0);
      setTaps(first);
    });
    return () => {
      left = true;
    };
  }, [device, key, start]);

  if (!taps) return undefined;

  const store = (next: readonly Tap[]) => {
    latest.current = next;
    setTaps(next);
    setSaving('saving');
    queue.current = queue.current
      // A longer list that waits behind this one holds this one's taps too.
      .then(() => (latest.current === next ? device.saveDraft(key, next) : undefined))
      .then(() => {
        if (latest.current === next) setSaving('saved');
      })
      .catch(() => setSaving('failed'));
  };

  return {
    taps,
    draft: draftFrom(taps, colony),
    saving,
    cameBack,
    refusal,
    tap(tap) {
      const result = addTap(latest.current, tap, colony);
      if (result.ok) {
        setRefusal(null);
        store(result.taps);
      } else setRefusal(result);
    },
    undo() {
      setRefusal(null);
      store(undo(latest.current));
    },
    settled: () => queue.current,
  };
}
