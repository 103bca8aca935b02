import type { DeviceInHand, DeviceNow } from '../device/device-in-hand.tsx';
import { type Device, openDevice } from '../device/start.ts';

/** So long what was written may take to reach the office after its screen was left, in milliseconds. */
const lingers = 20_000;

const opening: DeviceNow = { state: 'opening', device: null };

const devices = new Map<string, DeviceInHand>();

/**
 * The desk's own store and book: one for all screens, opened with the first that writes and let go of with the last of them.
 * Screens that only read the office never open it.
 */
export function deskDevice(person: string): DeviceInHand {
  const made = devices.get(person) ?? openedWhenNeeded(person);
  devices.set(person, made);
  return made;
}

function openedWhenNeeded(person: string): DeviceInHand {
  const listeners = new Set<() => void>();
  let now = opening;
  let opened: Promise<Device> | null = null;

  const tell = (next: DeviceNow) => {
    now = next;
    for (const listener of listeners) listener();
  };

  function open(): Promise<Device> {
    if (opened) return opened;
    const mine = openDevice(person, {
      blocked: () => tell({ state: 'blocked', device: null }),
      closed: () => {
        if (opened === mine) opened = null;
        tell({ state: 'given up', device: null });
      },
    });
    opened = mine;
    tell(opening);
    mine.then(
      (device) => tell({ state: 'there', device }),
      () => {
        if (opened === mine) opened = null;
        tell({ state: 'failed', device: null });
      },
    );
    return mine;
  }

  /** Closes the store once nobody listens, but not before what was written there has been sent, or that takes too long. */
  async function letGo(): Promise<void> {
    const mine = opened;
    const device = await mine?.catch(() => null);
    if (!device || listeners.size > 0) return;
    await sent(device);
    if (listeners.size > 0 || opened !== mine) return;
    opened = null;
    now = opening;
    device.close();
  }

  return {
    now: () => now,
    subscribe(listener) {
      listeners.add(listener);
      void open().catch(() => undefined); // said by the state
      return () => {
        listeners.delete(listener);
        void letGo();
      };
    },
    opened: open,
  };
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
