import type { CombReadingBody } from '@combside/record/kinds/comb-reading';
import { useState } from 'react';
import type { Saving, Settled } from '../../device/drafts/open-draft.ts';
import { useDraft } from '../../device/drafts/use-draft.ts';

/** What a person says of a reading at the desk beyond what stands: null where nothing was said. */
export interface SaidAtDesk {
  /** In the order of the keys; of two words on one cell the later counts. */
  readonly corrections: CombReadingBody['corrections'];
  readonly place: CombReadingBody['place'] | null;
  readonly accepted: boolean | null;
  /** Why a kept reading is corrected. */
  readonly reason: string;
}

const nothing: SaidAtDesk = { corrections: [], place: null, accepted: null, reason: '' };

export interface CombDeskDraft {
  readonly said: SaidAtDesk;
  readonly saving: Saving;
  /** Something was said before the screen opened, and is here again. */
  readonly cameBack: boolean;
  /** What is said has been written, and the office has not answered with it yet. */
  readonly isWritten: boolean;
  say(change: Partial<SaidAtDesk>): void;
  sayOfCell(cell: number, of: string): void;
  /** Takes back the last word on a cell. */
  undo(): void;
  /** Forgets all of it. */
  beginAgain(): void;
  settled(): Promise<Settled>;
}

/**
 * What is said of one photograph's reading at this desk, kept apart from what stands, so that it fits on what others wrote
 * meanwhile. What was written stays in sight until the office answers with it.
 *
 * @param of names the photograph, and the machine's cells by which the words count
 * @param stands names what the office holds of it; words that were written are over once that has changed
 * @returns undefined while it is being read
 */
export function useCombDeskDraft(of: string, stands: string): CombDeskDraft | undefined {
  const [written, setWritten] = useState<{ readonly said: SaidAtDesk; readonly on: string } | null>(null);
  const hand = useDraft<SaidAtDesk>({
    key: `desk-comb/${of}`,
    begin: nothing,
    read: (stored) => stored as SaidAtDesk,
    isNothing,
  });
  if (!hand) return undefined;
  const isWritten = written !== null && written.on === stands && isNothing(hand.value);
  const ground = isWritten ? written.said : nothing;
  // Whoever goes on before the office has answered goes on from what was written.
  const change = (take: (said: SaidAtDesk) => SaidAtDesk) =>
    hand.change((said) => take(isNothing(said) ? ground : said));
  return {
    said: isWritten ? ground : hand.value,
    saving: hand.saving,
    cameBack: hand.cameBack,
    isWritten,
    say: (part) => change((said) => ({ ...said, ...part })),
    sayOfCell: (cell, word) =>
      change((said) => ({ ...said, corrections: [...said.corrections, { cell, class: word }] })),
    undo: () => change((said) => ({ ...said, corrections: said.corrections.slice(0, -1) })),
    beginAgain: () => {
      setWritten(null);
      hand.forget();
    },
    async settled() {
      const settled = await hand.settled();
      const said = hand.now();
      return {
        ...settled,
        written() {
          setWritten({ said, on: stands });
          settled.written();
        },
      };
    },
  };
}

function isNothing(said: SaidAtDesk): boolean {
  return said.corrections.length === 0 && said.place === null && said.accepted === null && said.reason === '';
}
