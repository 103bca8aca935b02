import type { ReadingPart } from '@combside/casework/comb/propose-reading';
import type { CombReadingBody } from '@combside/record/kinds/comb-reading';
import type { CellClass } from '@combside/science/comb/cells/cell-classes';
import { useEffect, useState } from 'react';
import type { Saving, Settled } from '../../device/drafts/open-draft.ts';
import { useDraft } from '../../device/drafts/use-draft.ts';
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
  /** What is said at this moment, newer than what was drawn last. */
  now(): SaidOfComb;
  /** Takes a reading, in place of the one before it; what is said changes with it, in one stroke. */
  keepPart(part: ReadingPart, change?: Partial<SaidOfComb>): void;
  say(change: Partial<SaidOfComb>): void;
  sayOfCell(cell: number, of: CellClass): void;
  /** Takes back the last word on a cell. */
  undo(): void;
  settled(): Promise<Settled>;
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
  const [part, setPart] = useState<ReadingPart | null | undefined>();
  const partKey = `${key}/part`;
  const hand = useDraft<SaidOfComb>(
    {
      key: `${key}/said`,
      begin: start,
      read: (stored) => ({ ...start, ...(stored as Partial<SaidOfComb>) }),
      isNothing: () => false,
    },
    [partKey],
  );
  useEffect(() => {
    let left = false;
    const read = () =>
      void device.drafts.load(partKey).then((stored) => {
        if (!left) setPart(stored as ReadingPart | null);
      });
    read();
    const stop = device.drafts.onElsewhere((keys) => {
      if (keys.includes(partKey)) read();
    });
    return () => {
      left = true;
      stop();
    };
  }, [device, partKey]);
  if (!hand || part === undefined) return undefined;

  const said = hand.value;
  const say = (change: Partial<SaidOfComb>) => hand.change((before) => ({ ...before, ...change }));
  return {
    part,
    said,
    saving: hand.saving,
    cameBack: hand.cameBack,
    canUndo: said.corrections.length > start.corrections.length,
    now: hand.now,
    keepPart(next, change = {}) {
      setPart(next);
      hand.change((before) => ({ ...before, ...change }), { [partKey]: next });
    },
    say,
    sayOfCell: (cell, of) =>
      hand.change((before) => ({ ...before, corrections: [...before.corrections, { cell, class: of }] })),
    undo: () =>
      hand.change((before) =>
        before.corrections.length > start.corrections.length
          ? { ...before, corrections: before.corrections.slice(0, -1) }
          : before,
      ),
    settled: hand.settled,
  };
}
