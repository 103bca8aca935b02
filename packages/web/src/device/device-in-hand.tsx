import { createContext, type ReactNode, useContext, useSyncExternalStore } from 'react';
import type { Device } from './start.ts';

/** What a screen writes and keeps drafts with. */
export type WritingDevice = Pick<Device, 'book' | 'drafts' | 'sync'>;

/** The device, as far as it is open. */
export type DeviceNow =
  | { readonly state: 'opening' | 'blocked' | 'given up' | 'failed'; readonly device: null }
  | { readonly state: 'there'; readonly device: WritingDevice };

/** The device of the person signed in, as a half of the program gives it to its screens. */
export interface DeviceInHand {
  now(): DeviceNow;
  /** Tells of changes; a half may open its device with the first listener and let go of it with the last. */
  subscribe(listener: () => void): () => void;
  /**
   * The device once it is open, for what is written before the screen has seen it open.
   * @throws what kept it from opening
   */
  opened(): Promise<WritingDevice>;
}

/** A device that is open already and stays so. */
export function alwaysThere(device: WritingDevice): DeviceInHand {
  const now: DeviceNow = { state: 'there', device };
  return { now: () => now, subscribe: () => () => undefined, opened: async () => device };
}

const DeviceContext = createContext<DeviceInHand | null>(null);

export function GivesDevice({ given, children }: { readonly given: DeviceInHand; readonly children: ReactNode }) {
  return <DeviceContext value={given}>{children}</DeviceContext>;
}

/** @throws Error outside GivesDevice */
export function useDeviceInHand(): DeviceInHand {
  const given = useContext(DeviceContext);
  if (!given) throw new Error('no device here: a screen that writes must be wrapped in GivesDevice');
  return given;
}

/** How the device stands; it is kept open while the screen that asks is in sight. */
export function useDevice(): DeviceNow {
  const { subscribe, now } = useDeviceInHand();
  return useSyncExternalStore(subscribe, now);
}

/** Whether what is written now reaches the store: at once, or as soon as it has opened. */
export function canWrite({ state }: DeviceNow): boolean {
  return state === 'there' || state === 'opening';
}
