import type { Act } from '@combside/casework/act';
import { useWrite, type Writing } from '../../device/write/use-write.ts';

export type RecordWriting = Writing<() => Act | Promise<Act>>;

/** One writing for a whole page of the register, whichever of its acts is done: one line says what became of it. */
export function useRecordWriting(): RecordWriting {
  return useWrite((act: () => Act | Promise<Act>) => act());
}
