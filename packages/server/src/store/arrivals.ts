import type { LiveEvent } from '@combside/contract/live';
import type { Envelope } from '@combside/record/entry';
import { districtScope, everyoneScope } from '@combside/record/transport';
import { sql } from 'kysely';
import type pg from 'pg';
import type { Database } from './database.ts';
import { arrivalChannel } from './office-store/insert-placements.ts';
import type { Rights } from './rights.ts';
import type { ArrivalsPort } from './server-ports.ts';

export interface Arrivals extends ArrivalsPort {
  readonly close: () => Promise<void>;
}

/** How long a lost listening connection waits before it tries again, in milliseconds. */
const reconnectAfter = 1000;

/** Listens on one connection of its own, for all who wait in this process. A lost connection is made anew. */
export async function listenForArrivals(database: Database): Promise<Arrivals> {
  const waiting = new Set<() => void>();
  let client: pg.Client | undefined;
  let closed = false;
  let retry: NodeJS.Timeout | undefined;
  const wakeAll = (): void => {
    for (const wake of waiting) wake();
  };
  const listen = async (): Promise<void> => {
    const fresh = await database.connect();
    if (closed) return fresh.end();
    client = fresh;
    fresh.on('notification', wakeAll);
    fresh.on('error', () => undefined);
    fresh.on('end', () => {
      if (!closed) retry = setTimeout(again, reconnectAfter);
    });
    await fresh.query(`listen ${arrivalChannel}`);
    // Something may have arrived while nobody listened.
    wakeAll();
  };
  const again = (): void => {
    listen().catch(() => {
      if (!closed) retry = setTimeout(again, reconnectAfter);
    });
  };
  await listen();
  return {
    subscribe: (wake) => {
      waiting.add(wake);
      return () => waiting.delete(wake);
    },
    close: async () => {
      closed = true;
      clearTimeout(retry);
      await client?.end().catch(() => undefined);
    },
  };
}

interface Row {
  readonly scope: string;
  readonly arrival: number;
  readonly envelope: Envelope;
  readonly body: unknown;
  readonly received_at: Date | null;
  readonly apiary: string | null;
}

/** What was placed after `arrival` in scopes this person may read, in order, at most `limit`. */
export async function arrivedAfter(
  database: Database,
  rights: Rights,
  arrival: number,
  limit: number,
): Promise<LiveEvent[]> {
  const readable =
    rights.districts === 'all'
      ? sql`true`
      : sql`placed.scope = any(${[everyoneScope, ...rights.districts.map(districtScope)]}::text[])`;
  const found = await sql<Row>`
    select placed.scope, placed.arrival, entry.envelope, entry.body, entry.received_at, state.apiary
    from combside.placements placed
    join combside.entries entry on entry.hash = placed.hash
    left join combside.states state on state.entity_type = entry.about_type and state.entity_id = entry.about_id
    where placed.arrival > ${arrival} and ${readable}
    order by placed.arrival limit ${limit}`.execute(database.sql);
  return found.rows.map((row) => {
    const { id, kind, about, by, at } = row.envelope;
    return {
      scope: row.scope,
      position: row.arrival,
      entry: id,
      kind,
      about,
      by,
      at,
      receivedAt: (row.received_at ?? new Date(0)).toISOString(),
      visit: about.type === 'visit' ? about.id : visitIn(row.body),
      apiary: about.type === 'apiary' ? about.id : row.apiary,
    };
  });
}

function visitIn(body: unknown): string | null {
  const visit = (body as { visit?: unknown } | null)?.visit;
  return typeof visit === 'string' ? visit : null;
}
