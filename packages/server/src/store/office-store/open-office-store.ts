import type { OfficeStore } from '@combside/record/store';
import { type Kysely, sql } from 'kysely';
import type { Database } from '../database.ts';
import type { Tables } from '../tables.ts';
import { commitChange } from './commit-change.ts';
import {
  chainFrom,
  clockReading,
  entriesAbout,
  entriesByHash,
  entriesById,
  headOf,
  headsOfAll,
} from './read-entries.ts';
import {
  followersOf,
  membershipsOf,
  parentsOf,
  placedAfter,
  placedAlready,
  placementAt,
  tailOf,
} from './read-scopes.ts';
import { staleEntities, statesOf, summariesOf } from './read-states.ts';

/** Writers of one database wait for each other by this number (ours, chosen freely), in whatever process they run. */
const writerLock = 3_301_403;

/**
 * The office's store on PostgreSQL.
 *
 * `exclusive` holds an advisory lock of the session, so it counts over all processes and falls with its connection;
 * within one process writers queue before they take a connection, so that waiting writers never starve readers.
 * Placements become visible in the order of their numbers because the lock is given back only after the commit.
 */
export function openOfficeStore(database: Database): OfficeStore {
  let queue: Promise<unknown> = Promise.resolve();
  const exclusive = <T>(work: (inside: OfficeStore) => Promise<T>): Promise<T> => {
    const turn = queue.then(() =>
      database.sql.connection().execute(async (connection) => {
        await sql`select pg_advisory_lock(${writerLock})`.execute(connection);
        try {
          return await work(storeOver(connection, refuseToNest));
        } finally {
          await sql`select pg_advisory_unlock(${writerLock})`.execute(connection);
        }
      }),
    );
    queue = turn.catch(() => undefined);
    return turn;
  };
  return storeOver(database.sql, exclusive);
}

function refuseToNest(): never {
  throw new Error('exclusive is not re-entrant: use the store that was handed in');
}

type Exclusive = <T>(work: (inside: OfficeStore) => Promise<T>) => Promise<T>;

function storeOver(db: Kysely<Tables>, exclusive: Exclusive): OfficeStore {
  return {
    exclusive,
    commit: (change) => commitChange(db, change),
    clock: () => clockReading(db),
    head: (device) => headOf(db, device),
    heads: () => headsOfAll(db),
    byHash: (hashes) => entriesByHash(db, hashes),
    byId: (ids) => entriesById(db, ids),
    chain: (device, seq, limit) => chainFrom(db, device, seq, limit),
    entriesAbout: (abouts) => entriesAbout(db, abouts),
    states: (abouts) => statesOf(db, abouts),
    summaries: (type, where) => summariesOf(db, type, where),
    stale: (foldVersion, limit) => staleEntities(db, foldVersion, limit),
    tail: (scope) => tailOf(db, scope),
    placement: (scope, position) => placementAt(db, scope, position),
    placed: (scope, position, limit) => placedAfter(db, scope, position, limit),
    placedAlready: (scope, hashes) => placedAlready(db, scope, hashes),
    memberships: (abouts) => membershipsOf(db, abouts),
    followers: (parents) => followersOf(db, parents),
    parents: (children) => parentsOf(db, children),
  };
}
