import type { CombReadingBody } from '@combside/record/kinds/comb-reading';
import { useEffect, useRef, useState } from 'react';
import type { Session } from '../../app/session.ts';
import type { Device } from '../../device/start.ts';
import { canWrite, useDeskDevice } from '../use-desk-device.ts';

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

export interface DeskDraft {
  readonly said: SaidAtDesk;
  /** `nowhere`: this browser gives no storage. */
  readonly saving: 'saved' | 'saving' | 'failed' | 'nowhere';
  /** Something was said before the screen opened, and is here again. */
  readonly cameBack: boolean;
  /** What is said has been written, and the office has not answered with it yet. */
  readonly isWritten: boolean;
  readonly key: string;
  say(change: Partial<SaidAtDesk>): void;
  sayOfCell(cell: number, of: string): void;
  /** Takes back the last word on a cell. */
  undo(): void;
  /** Forgets all of it. */
  beginAgain(): void;
  /** Resolves when everything so far is durable. */
  settled(): Promise<void>;
  /** To be called when this was written, with `key` closed. */
  written(said: SaidAtDesk): void;
}

interface Kept {
  readonly said: SaidAtDesk;
  readonly cameBack: boolean;
  /** What stood when this was written; null while it is not. */
  readonly writtenOn: string | null;
}

/**
 * What is said of one photograph's reading at this desk, stored with every word, so that it is there again after the page
 * was left or the browser died. Kept apart from what stands, so that it fits on what others wrote meanwhile.
 *
 * @param of names the photograph, and the machine's cells by which the words count
 * @param stands names what the office holds of it; words that were written are over once that has changed
 * @returns undefined while it is being read
 */
export function useDeskDraft(session: Session, of: string, stands: string): DeskDraft | undefined {
  const key = `desk-comb/${of}`;
  const desk = useDeskDevice(session);
  const { device } = desk;
  const isNowhere = !canWrite(desk);
  const [kept, setKept] = useState<Kept | null>(null);
  const [saving, setSaving] = useState<'saved' | 'saving' | 'failed'>('saved');
  const latest = useRef<SaidAtDesk>(nothing);
  const queue = useRef<Promise<unknown>>(Promise.resolve());

  useEffect(() => {
    if (!device) return;
    let left = false;
    void device.drafts.load(key).then((found) => {
      if (left) return;
      const said = (found as SaidAtDesk | null) ?? nothing;
      latest.current = said;
      setKept({ said, cameBack: found !== null, writtenOn: null });
    });
    return () => {
      left = true;
    };
  }, [device, key]);

  const isOver = kept !== null && kept.writtenOn !== null && kept.writtenOn !== stands;
  const now = isOver || kept === null ? { said: nothing, cameBack: false, writtenOn: null } : kept;
  if (kept === null && !isNowhere) return undefined;

  const sofar = () => (isOver && latest.current === kept?.said ? nothing : latest.current);
  const store = (said: SaidAtDesk, cameBack = now.cameBack) => {
    latest.current = said;
    setKept({ said, cameBack, writtenOn: null });
    if (!device) return;
    setSaving('saving');
    queue.current = queue.current
      // What waits behind this one holds it too.
      .then(() => (latest.current === said ? keep(device, key, said) : undefined))
      .then(() => {
        if (latest.current === said) setSaving('saved');
      })
      .catch(() => setSaving('failed'));
  };
  return {
    said: now.said,
    saving: isNowhere ? 'nowhere' : saving,
    cameBack: now.cameBack,
    isWritten: now.writtenOn !== null,
    key,
    say: (change) => store({ ...sofar(), ...change }),
    sayOfCell: (cell, of) => store({ ...sofar(), corrections: [...sofar().corrections, { cell, class: of }] }),
    undo: () => store({ ...sofar(), corrections: sofar().corrections.slice(0, -1) }),
    beginAgain: () => store(nothing, false),
    settled: async () => void (await queue.current),
    written: (said) => {
      // What was said while it was being written has yet to be kept.
      if (latest.current !== said) store(latest.current, false);
      else setKept({ said, cameBack: false, writtenOn: stands });
    },
  };
}

function keep(device: Device, key: string, said: SaidAtDesk): Promise<void> {
  const isNothing =
    said.corrections.length === 0 && said.place === null && said.accepted === null && said.reason === '';
  return isNothing ? device.drafts.remove(key) : device.drafts.change(key, () => said);
}
