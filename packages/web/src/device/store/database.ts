import { openDB } from 'idb';
import { migrations } from './migrations.ts';
import type { DeviceDatabase, DeviceSchema } from './schema.ts';

export interface DatabaseWatch {
  /** An older tab still holds the database in its old shape: it must be closed before this one can go on. */
  readonly blocked?: () => void;
  /** This tab gave the database up so that a newer program may change its shape, or the browser closed it. */
  readonly closed?: (why: 'newer program' | 'closed by the browser') => void;
}

/** Name of the database of one person on this device. */
export function databaseName(person: string): string {
  return `combside ${person}`;
}

/**
 * Opens the device's database, bringing its shape up to date step by step.
 *
 * @param steps the migrations this program knows; tests give fewer, to play an older program
 */
export async function openDatabase(
  name: string,
  watch: DatabaseWatch = {},
  steps: typeof migrations = migrations,
): Promise<DeviceDatabase> {
  const database = await openDB<DeviceSchema>(name, steps.length, {
    upgrade(opened, from, _to, transaction) {
      for (const step of steps.slice(from)) step.change(opened, transaction);
    },
    blocked: () => watch.blocked?.(),
    blocking: () => {
      // Saying nothing would keep the newer tab waiting for ever.
      database.close();
      watch.closed?.('newer program');
    },
    terminated: () => watch.closed?.('closed by the browser'),
  });
  return database;
}
