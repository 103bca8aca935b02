import type { Book } from '@combside/record/book/book';
import { exchange, type SyncFault, type SyncPorts } from '@combside/record/sync';
import { TransportError, type TransportFailure } from '@combside/record/transport';
import type { Photographs } from '../photographs/photographs.ts';
import { sendPhotographs } from '../photographs/send-photographs.ts';
import type { DeviceDatabase } from '../store/schema.ts';
import { fetchNames, keptNames } from './fetch-names.ts';

/** What one turn of the loop came to. */
export interface Turn {
  readonly failure: TransportFailure | 'wrong server' | 'program fault' | null;
  readonly faults: readonly SyncFault[];
  readonly exchangedAt: string | null;
}

const refoldAtOnce = 200;

/**
 * One turn: exchange entries, then send photographs, then, between visits, fold what an older program left. Holds a
 * lock over all tabs, so that one turn runs at a time.
 */
export function exchangeTurn(
  ports: SyncPorts,
  database: DeviceDatabase,
  photographs: Photographs,
  stopped: () => boolean,
): Promise<Turn> {
  return navigator.locks.request(`${database.name} exchange`, async () => {
    let faults: readonly SyncFault[] = [];
    try {
      const report = await exchange(ports, { stopped });
      faults = report.faults;
      const exchangedAt = new Date().toISOString();
      await database.put('meta', exchangedAt, 'lastExchangeAt');
      // New names come with new entries.
      if (report.fetched > 0 || Object.keys(await keptNames(database)).length === 0) await fetchNames(database);
      await sendPhotographs(photographs, stopped);
      return { failure: null, faults, exchangedAt };
    } catch (error) {
      if (error instanceof TransportError) return { failure: error.failure, faults, exchangedAt: null };
      const isOther = (error as { code?: unknown }).code === 'wrong server';
      if (isOther) return { failure: 'wrong server', faults, exchangedAt: null };
      throw error;
    }
  }) as Promise<Turn>;
}

/** Folds what an older program left, unless a visit is under way. */
export async function refoldBetweenVisits(book: Book, person: string, stopped: () => boolean): Promise<void> {
  const visits = await book.summaries('visit', { inspector: person });
  if (visits.some(({ startedAt, endedAt }) => startedAt !== null && endedAt === null)) return;
  while (!stopped() && (await book.refold(refoldAtOnce)) > 0) {
    // A breath between batches, so that whoever waits for the store gets it.
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}
