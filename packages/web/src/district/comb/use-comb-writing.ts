import type { Act } from '@combside/casework/act';
import { useWrite, type Writing } from '../../device/write/use-write.ts';
import type { CombDeskDraft } from './use-comb-desk-draft.ts';

/** What is written of a reading, and the draft that goes with it. */
interface OfReading {
  readonly act: () => Act | Promise<Act>;
  readonly draft: CombDeskDraft;
}

export type CombWriting = Writing<OfReading>;

/** One writing for the page of a comb, so that what became of it stays in sight when the reading turns into a kept one. */
export function useCombWriting(): CombWriting {
  return useWrite(
    ({ act }: OfReading) => act(),
    ({ draft }) => ({ closes: [draft] }),
  );
}
