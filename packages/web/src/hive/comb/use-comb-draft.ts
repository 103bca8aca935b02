import type { ReadingPart } from '@combside/casework/comb/propose-reading';
import type { CombReadingBody } from '@combside/record/kinds/comb-reading';
import type { CellClass } from '@combside/science/comb/cells/cell-classes';
import { useEffect, useRef, useState } from 'react';
import type { Saving } from '../colony/use-draft.ts';
import { useHiveDevice } from '../hive-device.tsx';

/** What a person says of a reading, in the order of the taps; of two words on one cell the later counts. */
export interface SaidOfComb {
  readonly corrections: CombReadingBody['corrections'];
  readonly place: CombReadingBody['place'];
  readonly accepted: boolean;
  /** Corners set for the next reading, in pixels as stored; null when the whole photograph is to be read. */
  readonly corners: CombReadingBody['reader']['region'];
  /** Why a kept reading is corrected; empty while it is not kept yet. */
  readonly reason: string;
}

/** Drafts of all comb readings of a colony at a visit begin with this; what follows is the photograph, then the part. */
export function combDraftPrefix(visit: string, colony: string): string {
  return `comb/${visit}/${colony}/`;
}

export interface CombDraftInHand {
  /** What the machine read; null before it did. */
  readonly part: ReadingPart | null;
  readonly said: SaidOfComb;
  readonly saving: Saving;
  /** The draft stood here already when the screen opened. */
  readonly cameBack: boolean;
  readonly canUndo: boolean;
  readonly keys: readonly string[];
  /** Takes a reading, in place of the one before it; what is said changes with it, in one stroke. */
  keepPart(part: ReadingPart, change?: Partial<SaidOfComb>): void;
  say(change: Partial<SaidOfComb>): void;
  sayOfCell(cell: number, of: CellClass): void;
  /** Takes back the last word on a cell. */
  undo(): void;
  /** Resolves when everything so far is durable. */
  settled(): Promise<void>;
}

/**
 * The draft of one comb reading: the machine's part, stored with each reading, and what a person says, stored with every tap.
 *
 * @param key where it stands among the drafts
 * @param begin what is said before any tap: nothing, or what stands in a reading that is corrected
 * @returns undefined while it is being read
 */
export function useCombDraft(key: string, begin: SaidOfComb): CombDraftInHand | undefined {
  const device = useHiveDevice();
  const [start] = useState(begin);
  const [part, setPart] = useState<ReadingPart | null>(null);
  const [said, setSaid] = useState<SaidOfComb | null>(null);
  const [saving, setSaving] = useState<Saving>('saved');
  const [cameBack, setCameBack] = useState(false);
  const latest = useRef(start);
  const queue = useRef<Promise<unknown>>(Promise.resolve());
  const partKey = `${key}/part`;
  const saidKey = `${key}/said`;

  useEffect(() => {
    let left = false;
    void Promise.all([device.drafts.load(partKey), device.drafts.load(saidKey)]).then(([keptPart, keptSaid]) => {
      if (left) return;
      latest.current = { ...start, ...(keptSaid as Partial<SaidOfComb> | null) };
      setPart(keptPart as ReadingPart | null);
      setSaid(latest.current);
      setCameBack(keptPart !== null || keptSaid !== null);
    });
    return () => {
      left = true;
    };
  }, [device, partKey, saidKey, start]);

  if (said === null) return undefined;

  const store = (work: () => Promise<void>, isLatest: () => boolean) => {
    setSaving('saving');
    queue.current = queue.current
      .then(work)
      .then(() => {
        if (isLatest()) setSaving('saved');
      })
      .catch(() => setSaving('failed'));
  };
  const say = (change: Partial<SaidOfComb>) => {
    const next = { ...latest.current, ...change };
    latest.current = next;
    setSaid(next);
    store(
      // What waits behind this one holds it too.
      async () => (latest.current === next ? device.drafts.save(saidKey, next) : undefined),
      () => latest.current === next,
    );
  };
  return {
    part,
    said,
    saving,
    cameBack,
    canUndo: said.corrections.length > start.corrections.length,
    keys: [partKey, saidKey],
    keepPart(next, change = {}) {
      const words = { ...latest.current, ...change };
      latest.current = words;
      setPart(next);
      setSaid(words);
      store(
        () => device.drafts.saveTogether({ [partKey]: next, [saidKey]: latest.current }),
        () => latest.current === words,
      );
    },
    say,
    sayOfCell: (cell, of) => say({ corrections: [...latest.current.corrections, { cell, class: of }] }),
    undo: () => {
      if (latest.current.corrections.length > start.corrections.length) {
        say({ corrections: latest.current.corrections.slice(0, -1) });
      }
    },
    settled: async () => void (await queue.current),
  };
}
