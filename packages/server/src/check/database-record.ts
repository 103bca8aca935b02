import type { OfficeKey, StoredEntry } from '@combside/record/store';
import type { Checkpoint } from '@combside/record/transport';
import type { Database } from '../store/database.ts';
import { openOfficeStore } from '../store/office-store/open-office-store.ts';
import type { WholeRecord } from './records.ts';

const atOnce = 1000;

/** The record in the server's own database. */
export function databaseRecord(database: Database, office: OfficeKey): WholeRecord {
  const store = openOfficeStore(database);
  return {
    office,
    chains: async function* () {
      for (const head of await store.heads()) {
        const chain: StoredEntry[] = [];
        for (let next = 1; ; ) {
          const part = await store.chain(head.device, next, atOnce);
          chain.push(...part);
          const last = part.at(-1);
          if (!last || part.length < atOnce) break;
          next = last.entry.envelope.seq + 1;
        }
        yield chain;
      }
    },
    checkpoint: async () => {
      const row = await database.sql
        .selectFrom('combside.checkpoints')
        .select('signed')
        .orderBy('made_at', 'desc')
        .limit(1)
        .executeTakeFirst();
      return (row?.signed as Checkpoint | undefined) ?? null;
    },
  };
}
