import type { Act, Refused } from '@combside/casework/act';
import type { EntriesOfOne } from '@combside/contract/register';
import type { WriteOptions } from '@combside/record/book';
import type { About, Proposal } from '@combside/record/entry';
import { RecordError } from '@combside/record/errors';
import { newIdentifier } from '@combside/record/identifier';
import { useState, useSyncExternalStore } from 'react';
import type { Session } from '../../app/session.ts';
import { webChance, webClock } from '../../device/keys/web-ports.ts';
import type { Device } from '../../device/start.ts';
import { canWrite, deskDevice, useDeskDevice } from '../use-desk-device.ts';

export interface Writing {
  readonly state: 'ready' | 'no store' | 'writing' | 'written' | 'at office' | 'failed';
  readonly refusal: Refused | null;
  /**
   * Writes what an act proposes, in the desk's own chain, waiting for its store where that is still opening: nobody who is
   * quick with the keyboard shall press a button in vain.
   *
   * @param builtOn what the act changes: the desk fetches its entries first, so that the change can name what it replaces
   * @param closes keys of the drafts that go with it
   * @returns whether it is written on this device
   */
  write(act: Act, builtOn: readonly About[], closes?: readonly string[]): Promise<boolean>;
  readonly newId: () => string;
}

const nobody = () => () => undefined;

/** Lets a screen of the register write, as the person signed in. */
export function useWriting(session: Session): Writing {
  const desk = useDeskDevice(session);
  const [state, setState] = useState<'ready' | 'writing' | 'written' | 'failed'>('ready');
  const [refusal, setRefusal] = useState<Refused | null>(null);
  const sent = useSyncExternalStore(
    desk.device?.sync.subscribe ?? nobody,
    () => desk.device?.sync.status().waiting === 0,
  );
  const gone = !canWrite(desk);
  return {
    state: gone ? 'no store' : state === 'written' && sent ? 'at office' : state,
    refusal,
    newId: () => newIdentifier(webClock, webChance),
    async write(act, builtOn, closes = []) {
      setRefusal(null);
      if (!act.ok) {
        setRefusal(act);
        return false;
      }
      if (gone) return false;
      setState('writing');
      try {
        await writeAtDesk(await deskDevice(session), act.proposals, builtOn, { closes });
        setState('written');
        return true;
      } catch (failure) {
        setState('failed');
        // Handed on, so that the fault report has it.
        void Promise.reject(failure);
        return false;
      }
    },
  };
}

/**
 * Writes proposals on the desk's device, after fetching the entries that they build on.
 *
 * @param options the drafts that go with them; who is told as entries are sealed and stored: what it throws stops the write
 *   with nothing stored
 */
export async function writeAtDesk(
  device: Device,
  proposals: readonly Proposal[],
  builtOn: readonly About[],
  options: WriteOptions = {},
): Promise<void> {
  await receiveEach(device, builtOn);
  try {
    await device.book.write(proposals, options);
  } catch (error) {
    if (!(error instanceof RecordError) || error.code !== 'unknown entry') throw error;
    // Entries of a device that this desk has not met yet are held back: one exchange brings the devices.
    await device.sync.run();
    await receiveEach(device, builtOn);
    await device.book.write(proposals, options);
  }
}

/** So many things are asked for at a time. */
const together = 8;

async function receiveEach(device: Device, abouts: readonly About[]): Promise<void> {
  for (let at = 0; at < abouts.length; at += together) {
    await Promise.all(abouts.slice(at, at + together).map((about) => receiveAll(device, about)));
  }
}

/** Brings all entries about one thing to this device. */
async function receiveAll(device: Device, { type, id }: About): Promise<void> {
  const answer = await fetch(`/api/register/entries/${type}/${id}`);
  if (answer.status === 404) return;
  if (!answer.ok) throw new Error(`entries of ${type} ${id}: ${answer.status}`);
  const { items } = (await answer.json()) as EntriesOfOne;
  await device.book.receive(items);
}
