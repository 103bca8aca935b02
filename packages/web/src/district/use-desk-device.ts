import { useEffect, useState } from 'react';
import type { Session } from '../app/session.ts';
import { type Device, openDevice } from '../device/start.ts';

/** The desk's own store and book, as far as it is open. */
export type DeskDevice =
  | { readonly state: 'opening' | 'blocked' | 'given up' | 'failed'; readonly device: null }
  | { readonly state: 'there'; readonly device: Device };

const opening: DeskDevice = { state: 'opening', device: null };

interface Held {
  readonly person: string;
  holders: number;
  now: DeskDevice;
  readonly watchers: Set<(now: DeskDevice) => void>;
  readonly opened: Promise<Device>;
}
let held: Held | null = null;

function hold(person: string): Held {
  if (held?.person === person) return held;
  const watchers = new Set<(now: DeskDevice) => void>();
  const tell = (now: DeskDevice) => {
    mine.now = now;
    for (const watcher of watchers) watcher(now);
  };
  const opened = openDevice(person, {
    blocked: () => tell({ state: 'blocked', device: null }),
    closed: () => {
      tell({ state: 'given up', device: null });
      if (held === mine) held = null;
    },
  });
  const mine: Held = { person, holders: 0, now: opening, watchers, opened };
  held = mine;
  opened.then(
    (device) => tell({ state: 'there', device }),
    () => {
      tell({ state: 'failed', device: null });
      if (held === mine) held = null;
    },
  );
  return mine;
}

/** So long what was written may take to reach the office after its screen was left, in milliseconds. */
const lingers = 20_000;

/** Closes the store once nobody holds it, but not before what was written there has been sent, or that takes too long. */
async function letGo(mine: Held): Promise<void> {
  if (mine.holders > 0) return;
  const device = await mine.opened.catch(() => null);
  if (device) await sent(device);
  if (mine.holders > 0) return;
  if (held === mine) held = null;
  device?.close();
}

function sent(device: Device): Promise<void> {
  return new Promise((resolve) => {
    const done = () => {
      clearTimeout(timer);
      stop();
      resolve();
    };
    const timer = setTimeout(done, lingers);
    const stop = device.sync.subscribe(() => {
      if (device.sync.status().waiting === 0) done();
    });
    if (device.sync.status().waiting === 0) done();
  });
}

/** Whether what is written now reaches the store: at once, or as soon as it has opened. */
export function canWrite({ state }: DeskDevice): boolean {
  return state === 'there' || state === 'opening';
}

/**
 * The desk's store once it is open: for what is written before the screen has seen it open. The screen that asks holds it
 * by `useDeskDevice`.
 *
 * @throws what kept it from opening
 */
export function deskDevice(session: Session): Promise<Device> {
  return hold(session.person).opened;
}

/**
 * Opens the desk's store while a screen that writes is in sight: one for all such screens, let go of with the last of
 * them. Screens that only read the office never need it.
 */
export function useDeskDevice(session: Session): DeskDevice {
  const [now, setNow] = useState<DeskDevice>(opening);
  useEffect(() => {
    const mine = hold(session.person);
    mine.holders += 1;
    mine.watchers.add(setNow);
    setNow(mine.now);
    return () => {
      mine.watchers.delete(setNow);
      mine.holders -= 1;
      void letGo(mine);
    };
  }, [session.person]);
  return now;
}
