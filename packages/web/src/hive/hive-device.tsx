import type { Pack } from '@combside/law/pack';
import type { Book } from '@combside/record/book/book';
import type { About } from '@combside/record/entry';
import type { Hasher } from '@combside/record/ports';
import type { StateByType } from '@combside/record/states';
import type { FoldedType, SummaryByType, SummaryFilter } from '@combside/record/summary';
import { createContext, type ReactNode, useContext, useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import type { Session } from '../app/session.ts';
import { alwaysThere, GivesDevice } from '../device/device-in-hand.tsx';
import type { Drafts } from '../device/drafts/stored-drafts.ts';
import type { Photographs } from '../device/photographs/photographs.ts';
import type { StorageStatus, StorageWatch } from '../device/storage-watch.ts';
import type { Sync, SyncStatus } from '../device/sync/start-sync.ts';

/** An own entry that the office did not take, and why, as an id. */
export interface NotTaken {
  readonly id: string;
  readonly kind: string;
  readonly at: string;
  readonly reason: string;
}

/** Everything a hive screen may use of the device. Given from `device/`, so that the screens know no database. */
export interface HiveDevice {
  readonly session: Session;
  readonly book: Book;
  readonly hasher: Hasher;
  readonly timeZone: string;
  /** The rules in force in the inspector's district. */
  readonly pack: Pack;
  /** This moment, RFC 3339 in UTC with milliseconds. */
  now(): string;
  readonly drafts: Drafts;
  readonly photographs: Photographs;
  /** Own entries that the office did not take, oldest first. */
  notTaken(): Promise<readonly NotTaken[]>;
  /** Names by person, as far as this device was told them. */
  names(): Promise<Readonly<Record<string, string>>>;
  readonly sync: Sync;
  readonly storage: StorageWatch;
  /** Lets go of the store, so that another tab may change its shape. */
  close(): void;
}

const HiveDeviceContext = createContext<HiveDevice | null>(null);

export function GivesHiveDevice({ device, children }: { readonly device: HiveDevice; readonly children: ReactNode }) {
  const given = useMemo(() => alwaysThere(device), [device]);
  return (
    <GivesDevice given={given}>
      <HiveDeviceContext value={device}>{children}</HiveDeviceContext>
    </GivesDevice>
  );
}

export function useHiveDevice(): HiveDevice {
  const device = useContext(HiveDeviceContext);
  if (!device) throw new Error('no device here: the hive must be wrapped in GivesHiveDevice');
  return device;
}

export function useSyncStatus(): SyncStatus {
  const { sync } = useHiveDevice();
  return useSyncExternalStore(sync.subscribe, sync.status);
}

export function useStorageStatus(): StorageStatus {
  const { storage } = useHiveDevice();
  return useSyncExternalStore(storage.subscribe, storage.status);
}

/** What is read from the device: `undefined` while it is being read, so that a screen never shows a wrong emptiness. */
function useRead<T>(
  read: () => Promise<T>,
  touches: (changed: readonly About[]) => boolean,
  key: string,
): T | undefined {
  const { book } = useHiveDevice();
  const [kept, setKept] = useState<{ key: string; value: T } | undefined>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: `key` says what is read; the closures change at every drawing
  useEffect(() => {
    let left = false;
    let turn = 0;
    const again = () => {
      turn += 1;
      const mine = turn;
      void read().then((value) => {
        if (!left && mine === turn) setKept({ key, value });
      });
    };
    again();
    const stop = book.subscribe((changed) => {
      if (touches(changed)) again();
    });
    return () => {
      left = true;
      stop();
    };
  }, [book, key]);
  return kept?.key === key ? kept.value : undefined;
}

/** The folded state of one entity; `null` when nothing was written about it on this device. */
export function useEntity<T extends keyof StateByType>(type: T, id: string): StateByType[T] | null | undefined {
  const { book } = useHiveDevice();
  return useRead(
    () => book.state({ type, id }),
    (changed) => changed.some((about) => about.type === type && about.id === id),
    `${type} ${id}`,
  );
}

/** The folded states of a group, such as the colonies of an apiary. */
export function useStates<T extends keyof StateByType>(
  type: T,
  where: SummaryFilter,
): readonly StateByType[T][] | undefined {
  const { book } = useHiveDevice();
  return useRead(
    () => book.states(type, where),
    (changed) => changed.some((about) => about.type === type),
    `${type} ${JSON.stringify(where)}`,
  );
}

/** The short rows of a group, or of everything of a type, for lists. */
export function useSummaries<T extends FoldedType>(
  type: T,
  where?: SummaryFilter,
): readonly SummaryByType[T][] | undefined {
  const { book } = useHiveDevice();
  return useRead(
    () => book.summaries(type, where),
    (changed) => changed.some((about) => about.type === type),
    `summaries ${type} ${where ? JSON.stringify(where) : ''}`,
  );
}
