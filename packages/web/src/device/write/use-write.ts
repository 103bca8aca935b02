import type { Act, Done } from '@combside/casework/act';
import { useRef, useState, useSyncExternalStore } from 'react';
import { canWrite, useDevice, useDeviceInHand } from '../device-in-hand.tsx';
import { type Alongside, type FreshRecord, OneWriteAtATime, type WritingStatus } from './one-write-at-a-time.ts';

/** An act on its way into the record, as a screen sees it. */
export type Writing<Input = void, Extra = unknown> = WritingStatus & {
  /** False where this device gives no store: then nothing can be written, and why is said. */
  readonly canWrite: boolean;
  /** @returns the act as done, once it is durable here; null when it was not: the status says why */
  write(input: Input): Promise<(Done & Extra) | null>;
};

/**
 * The one way to write, on phone and desk; a second tap does nothing (`OneWriteAtATime`). A device that is still opening is waited for: nobody who is quick shall press a
 * button in vain.
 *
 * @param act what casework makes of the input, given the record as it stands on this device; it may ask the office first.
 *   What it throws is a failure.
 * @param alongside the drafts that the write closes, and who is told of its progress
 */
export function useWrite<Input = void, Extra = unknown>(
  act: (input: Input, fresh: FreshRecord) => Act<Extra> | Promise<Act<Extra>>,
  alongside: (input: Input) => Alongside = () => ({}),
): Writing<Input, Extra> {
  const given = useDeviceInHand();
  const device = useDevice();
  const [writing] = useState(() => new OneWriteAtATime());
  const status = useSyncExternalStore(writing.subscribe, writing.status);
  // The act as drawn last: what waits for drafts to be durable is done with what is on the screen by then.
  const newest = useRef(act);
  newest.current = act;
  const able = canWrite(device);
  return {
    ...status,
    canWrite: able,
    write: async (input) =>
      able ? writing.write(given.opened, (fresh) => newest.current(input, fresh), alongside(input)) : null,
  };
}
