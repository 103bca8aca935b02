import type { About, Entry } from '@combside/record/entry';
import { RecordError } from '@combside/record/errors';
import type { StateBase } from '@combside/record/states';
import {
  aboutKey,
  type FoldedState,
  type Head,
  type OfficeChange,
  type OfficeStore,
  type Placement,
  type StoredEntry,
} from '@combside/record/store';
import type { FoldedType, SummaryByType, SummaryFilter } from '@combside/record/summary';
import { type Kysely, type Selectable, sql } from 'kysely';
import type pg from 'pg';
import { columnsOf, instantOrNull, storable } from './columns.ts';
import type { Database } from './database.ts';
import type { Tables } from './tables.ts';

/** Writers of one database wait for each other by this number (ours, chosen freely), in whatever process they run. */
const writerLock = 3_301_403;

/** PostgreSQL's channel on which every commit that placed entries says so. */
export const arrivalChannel = 'combside_arrivals';

const uniqueViolation = '23505';

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

type EntryRow = Selectable<Tables['combside.entries']>;

type Exclusive = <T>(work: (inside: OfficeStore) => Promise<T>) => Promise<T>;

function storeOver(db: Kysely<Tables>, exclusive: Exclusive): OfficeStore {
  return {
    exclusive,
    commit: (change) =>
      db.transaction().execute(async (transaction) => {
        await apply(transaction, change);
      }),

    clock: async () =>
      (await db.selectFrom('combside.office_clock').select('reading').executeTakeFirst())?.reading ?? null,

    head: async (device) =>
      (await db
        .selectFrom('combside.heads')
        .select(['device', 'seq', 'hash'])
        .where('device', '=', device)
        .executeTakeFirst()) ?? null,

    heads: () => db.selectFrom('combside.heads').select(['device', 'seq', 'hash']).orderBy('device').execute(),

    byHash: async (hashes) => {
      if (hashes.length === 0) return new Map();
      const rows = await sql<EntryRow>`
        select * from combside.entries where hash = any(${distinct(hashes)}::text[])`.execute(db);
      return new Map(rows.rows.map((row) => [row.hash, keptOf(row)]));
    },

    byId: async (ids) => {
      if (ids.length === 0) return new Map();
      const rows = await sql<EntryRow>`
        select * from combside.entries where refused is null and id = any(${distinct(ids)}::uuid[])`.execute(db);
      return new Map(rows.rows.map((row) => [row.id, keptOf(row)]));
    },

    chain: async (device, seq, limit) => {
      const rows = await db
        .selectFrom('combside.entries')
        .selectAll()
        .where('device', '=', device)
        .where('seq', '>=', seq)
        .orderBy('seq')
        .limit(limit)
        .execute();
      return rows.map(keptOf);
    },

    entriesAbout: async (abouts) => {
      const wanted = new Map(abouts.map((about) => [aboutKey(about), [] as StoredEntry[]]));
      if (abouts.length === 0) return wanted;
      const rows = await sql<EntryRow>`
        select entries.* from ${asked(abouts)}
        join combside.entries on entries.about_type = asked.type and entries.about_id = asked.id
        where entries.refused is null`.execute(db);
      for (const row of rows.rows) wanted.get(aboutKey(row.envelope.about))?.push(keptOf(row));
      for (const [key, found] of wanted) if (found.length === 0) wanted.delete(key);
      return wanted;
    },

    states: async (abouts) => {
      const found = new Map<string, StateBase>();
      if (abouts.length === 0) return found;
      const rows = await sql<{ state: StateBase }>`
        select states.state from ${asked(abouts)}
        join combside.states on states.entity_type = asked.type and states.entity_id = asked.id`.execute(db);
      for (const { state } of rows.rows) found.set(aboutKey(state.about), state);
      return found;
    },

    summaries: async <T extends FoldedType>(type: T, where?: SummaryFilter): Promise<SummaryByType[T][]> => {
      let query = db.selectFrom('combside.states').select('summary').where('entity_type', '=', type);
      for (const [field, value] of Object.entries(where ?? {}) as [keyof Columnar, string][]) {
        query =
          type === 'movement' && field === 'apiary'
            ? query.where((at) => at.or([at('apiary', '=', value), at('other_apiary', '=', value)]))
            : query.where(field, '=', storable(value));
      }
      return (await query.execute()).map((row) => row.summary as SummaryByType[T]);
    },

    stale: async (foldVersion, limit) => {
      const rows = await db
        .selectFrom('combside.states')
        .select(['entity_type', 'entity_id'])
        .where('fold_version', '!=', foldVersion)
        .limit(limit)
        .execute();
      return rows.map((row) => ({ type: row.entity_type, id: row.entity_id }));
    },

    tail: async (scope) =>
      placementOf(
        await db
          .selectFrom('combside.placements')
          .selectAll()
          .where('scope', '=', scope)
          .orderBy('position', 'desc')
          .limit(1)
          .executeTakeFirst(),
      ),

    placement: async (scope, position) =>
      placementOf(
        await db
          .selectFrom('combside.placements')
          .selectAll()
          .where('scope', '=', scope)
          .where('position', '=', position)
          .executeTakeFirst(),
      ),

    placed: async (scope, position, limit) => {
      const rows = await db
        .selectFrom('combside.placements as placed')
        .innerJoin('combside.entries as entry', 'entry.hash', 'placed.hash')
        .selectAll('entry')
        .select(['placed.scope', 'placed.position', 'placed.digest'])
        .where('placed.scope', '=', scope)
        .where('placed.position', '>', position)
        .orderBy('placed.position')
        .limit(limit)
        .execute();
      return rows.map((row) => ({
        placement: { scope: row.scope, position: row.position, hash: row.hash, digest: row.digest },
        kept: keptOf(row),
      }));
    },

    placedAlready: async (scope, hashes) => {
      if (hashes.length === 0) return new Set();
      const rows = await sql<{ hash: string }>`
        select hash from combside.placements where scope = ${scope} and hash = any(${distinct(hashes)}::text[])`.execute(
        db,
      );
      return new Set(rows.rows.map((row) => row.hash));
    },

    memberships: async (abouts) => {
      const found = new Map<string, string[]>();
      if (abouts.length === 0) return found;
      const rows = await sql<{ type: string; id: string; scope: string }>`
        select asked.type, asked.id, member.scope from ${asked(abouts)}
        join combside.memberships member on member.entity_type = asked.type and member.entity_id = asked.id`.execute(
        db,
      );
      for (const row of rows.rows) {
        const key = aboutKey(row);
        found.set(key, [...(found.get(key) ?? []), row.scope]);
      }
      return found;
    },

    followers: async (parents) => {
      if (parents.length === 0) return [];
      const rows = await sql<About>`
        select distinct follow.child_type as type, follow.child_id as id from ${asked(parents)}
        join combside.follows follow on follow.parent_type = asked.type and follow.parent_id = asked.id`.execute(db);
      return rows.rows;
    },
  };
}

type Columnar = Pick<Tables['combside.states'], 'district' | 'keeper' | 'apiary' | 'inspector'>;

async function apply(db: Kysely<Tables>, change: OfficeChange): Promise<void> {
  if (change.expected) await expectHead(db, change.expected);
  if (change.entries?.length) await insertEntries(db, change.entries);
  if (change.receipts?.length) {
    await sql`
      update combside.entries set received_at = r.at, refused = r.refused
      from jsonb_to_recordset(${JSON.stringify(
        change.receipts.map((receipt) => ({
          hash: receipt.hash,
          at: receipt.receivedAt,
          refused: storable(receipt.refused),
        })),
      )}::jsonb) as r (hash text, at timestamptz, refused text)
      where entries.hash = r.hash`.execute(db);
  }
  if (change.erase?.length) {
    await sql`
      update combside.entries set body = null, salt = null where hash = any(${distinct(change.erase)}::text[])`.execute(
      db,
    );
  }
  if (change.states?.length) await upsertStates(db, change.states);
  if (change.clock !== undefined) {
    const reading = change.clock;
    await db
      .insertInto('combside.office_clock')
      .values({ reading })
      .onConflict((conflict) => conflict.column('one').doUpdateSet({ reading }))
      .execute();
  }
  if (change.memberships?.length) {
    await sql`
      insert into combside.memberships (entity_type, entity_id, scope)
      select r.type, r.id, r.scope from jsonb_to_recordset(${JSON.stringify(
        change.memberships.map(({ about, scope }) => ({ ...about, type: storable(about.type), scope })),
      )}::jsonb) as r (type text, id uuid, scope text)
      on conflict do nothing`.execute(db);
  }
  if (change.follows?.length) {
    await sql`
      insert into combside.follows (child_type, child_id, parent_type, parent_id)
      select r.ct, r.ci, r.pt, r.pi from jsonb_to_recordset(${JSON.stringify(
        change.follows.map(({ child, parent }) => ({
          ct: storable(child.type),
          ci: child.id,
          pt: storable(parent.type),
          pi: parent.id,
        })),
      )}::jsonb) as r (ct text, ci uuid, pt text, pi uuid)
      on conflict do nothing`.execute(db);
  }
  if (change.placements?.length) {
    await expectNoGap(db, change.placements);
    await sql`
      insert into combside.placements (scope, position, hash, digest)
      select r.scope, r.position, r.hash, r.digest from jsonb_to_recordset(${JSON.stringify(change.placements)}::jsonb)
        as r (scope text, position integer, hash text, digest text)
      order by r.scope, r.position`
      .execute(db)
      .catch(asClash);
    await sql`select pg_notify(${arrivalChannel}, '')`.execute(db);
  }
}

async function expectHead(db: Kysely<Tables>, expected: NonNullable<OfficeChange['expected']>): Promise<void> {
  const head = await db
    .selectFrom('combside.heads')
    .select(['seq', 'hash'])
    .where('device', '=', expected.device)
    .forUpdate()
    .executeTakeFirst();
  if (head?.seq !== expected.head?.seq || head?.hash !== expected.head?.hash) {
    throw new RecordError('head moved', `device ${expected.device}`);
  }
}

async function insertEntries(db: Kysely<Tables>, entries: readonly StoredEntry[]): Promise<void> {
  const rows = entries.map(({ entry: { envelope, salt, body }, hash, receivedAt, refused }) => ({
    id: envelope.id,
    device: envelope.device,
    seq: envelope.seq,
    kind: storable(envelope.kind),
    version: envelope.version,
    about_type: storable(envelope.about.type),
    about_id: envelope.about.id,
    by: envelope.by,
    at: instantOrNull(envelope.at),
    clock: storable(envelope.clock),
    hash,
    // As text within the parameter, so that PostgreSQL checks their form but never unescapes them.
    envelope: JSON.stringify(envelope),
    body: salt === null ? null : JSON.stringify(body),
    salt,
    received_at: receivedAt,
    refused: storable(refused),
  }));
  await sql`
      insert into combside.entries (id, device, seq, kind, version, about_type, about_id, "by", at, clock, hash,
        envelope, body, salt, received_at, refused)
      select r.id, r.device, r.seq, r.kind, r.version, r.about_type, r.about_id, r."by", r.at, r.clock, r.hash,
        r.envelope::json, r.body::json, r.salt, r.received_at, r.refused
      from jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) as r (id uuid, device uuid, seq bigint, kind text,
        version bigint, about_type text, about_id uuid, "by" uuid, at timestamptz, clock text, hash text,
        envelope text, body text, salt text, received_at timestamptz, refused text)`
    .execute(db)
    .catch(asClash);
  const heads = newestOf(entries);
  await sql`
    insert into combside.heads (device, seq, hash)
    select r.device, r.seq, r.hash from jsonb_to_recordset(${JSON.stringify(heads)}::jsonb)
      as r (device uuid, seq bigint, hash text)
    on conflict (device) do update set seq = excluded.seq, hash = excluded.hash
      where excluded.seq > heads.seq`.execute(db);
}

function asClash(error: unknown): never {
  if ((error as pg.DatabaseError).code !== uniqueViolation) throw error;
  throw new RecordError('entry clash', (error as pg.DatabaseError).detail ?? 'an identifier or a place', error);
}

/** Positions go on where the scope ends. Two writers who both see the same end meet at the primary key. */
async function expectNoGap(db: Kysely<Tables>, placements: readonly Placement[]): Promise<void> {
  const scopes = distinct(placements.map((placement) => placement.scope));
  const found = await sql<{ scope: string; last: number | null }>`
    select asked.scope, (select max(position) from combside.placements placed where placed.scope = asked.scope) as last
    from unnest(${scopes}::text[]) as asked (scope)`.execute(db);
  for (const { scope, last } of found.rows) {
    const positions = placements.filter((placement) => placement.scope === scope).map(({ position }) => position);
    positions.sort((a, b) => a - b);
    for (const [index, position] of positions.entries()) {
      const expected = (last ?? 0) + 1 + index;
      if (position !== expected) {
        throw new RecordError('entry clash', `position ${position} of ${scope}, where ${expected} comes next`);
      }
    }
  }
}

function newestOf(entries: readonly StoredEntry[]): Head[] {
  const heads = new Map<string, Head>();
  for (const { entry, hash } of entries) {
    const { device, seq } = entry.envelope;
    if (seq > (heads.get(device)?.seq ?? 0)) heads.set(device, { device, seq, hash });
  }
  return [...heads.values()];
}

async function upsertStates(db: Kysely<Tables>, states: readonly FoldedState[]): Promise<void> {
  const newest = new Map(states.map((kept) => [aboutKey(kept.summary.about), kept]));
  const rows = [...newest.values()].map((kept) => {
    const { visits, photographs, examined, combs, ...columns } = columnsOf(kept);
    return {
      row: {
        entity_type: storable(kept.summary.about.type),
        entity_id: kept.summary.about.id,
        fold_version: kept.summary.foldVersion,
        state: JSON.stringify(kept.state),
        summary: JSON.stringify(kept.summary),
        ...columns,
      },
      visits,
      photographs,
      examined,
      combs,
    };
  });
  await sql`
    insert into combside.states (entity_type, entity_id, fold_version, state, summary, district, keeper, apiary,
      inspector, other_apiary, merged_into, name, search, unsettled, place, happened_at, last_result)
    select r.entity_type, r.entity_id, r.fold_version, r.state::json, r.summary::json, r.district, r.keeper, r.apiary,
      r.inspector, r.other_apiary, r.merged_into, r.name, r.search, r.unsettled, r.place::point, r.happened_at, r.last_result
    from jsonb_to_recordset(${JSON.stringify(rows.map(({ row }) => row))}::jsonb) as r (entity_type text, entity_id uuid,
      fold_version integer, state text, summary text, district text, keeper uuid, apiary uuid, inspector uuid,
      other_apiary uuid, merged_into uuid, name text, search text, unsettled boolean, place text, happened_at timestamptz,
      last_result text)
    on conflict (entity_type, entity_id) do update set fold_version = excluded.fold_version, state = excluded.state,
      summary = excluded.summary, district = excluded.district, keeper = excluded.keeper, apiary = excluded.apiary,
      inspector = excluded.inspector, other_apiary = excluded.other_apiary, merged_into = excluded.merged_into,
      name = excluded.name, search = excluded.search, place = excluded.place,
      unsettled = excluded.unsettled, happened_at = excluded.happened_at, last_result = excluded.last_result`.execute(
    db,
  );

  const visits = rows.flatMap(({ row, visits }) => visits.map((one) => ({ ...one, colony: row.entity_id })));
  if (visits.length > 0) {
    await sql`
      insert into combside.visit_colonies (visit, colony, result)
      select r.visit, r.colony, r.result from jsonb_to_recordset(${JSON.stringify(visits)}::jsonb)
        as r (visit uuid, colony uuid, result text)
      on conflict (visit, colony) do update set result = excluded.result`.execute(db);
  }
  const colonies = rows.filter(({ row }) => row.entity_type === 'colony').map(({ row }) => row.entity_id);
  if (colonies.length > 0) {
    const looks = rows.flatMap(({ row, examined }) => examined.map((one) => ({ ...one, colony: row.entity_id })));
    await sql`delete from combside.examined where colony = any(${colonies}::uuid[])`.execute(db);
    await sql`
      insert into combside.examined (examination, colony, visit, apiary, observed_at, depth, hive_state, frames_seen,
        frames_held, result, suspected, basis, finds)
      select r.examination, r.colony, r.visit, r.apiary, r.observed_at, r.depth, r.hive_state, r.frames_seen,
        r.frames_held, r.result, r.suspected, r.basis, r.finds
      from jsonb_to_recordset(${JSON.stringify(looks)}::jsonb) as r (examination uuid, colony uuid, visit uuid,
        apiary uuid, observed_at timestamptz, depth text, hive_state text, frames_seen integer, frames_held integer,
        result text, suspected text[], basis text, finds text[])
      on conflict (examination) do nothing`.execute(db);
    const combs = rows.flatMap(({ row, combs }) => combs.map((one) => ({ ...one, colony: row.entity_id })));
    await sql`delete from combside.comb_photographs where colony = any(${colonies}::uuid[])`.execute(db);
    await sql`
      insert into combside.comb_photographs (colony, hash, visit, apiary, taken_at, caption, accepted)
      select r.colony, r.hash, r.visit, r.apiary, r.taken_at, r.caption, r.accepted
      from jsonb_to_recordset(${JSON.stringify(combs)}::jsonb) as r (colony uuid, hash text, visit uuid, apiary uuid,
        taken_at timestamptz, caption text, accepted boolean)`.execute(db);
  }
  const references = rows.flatMap(({ row, photographs }) =>
    photographs.map((hash) => ({ hash, type: row.entity_type, id: row.entity_id })),
  );
  if (references.length > 0) {
    await sql`
      insert into combside.photograph_references (hash, entity_type, entity_id)
      select r.hash, r.type, r.id from jsonb_to_recordset(${JSON.stringify(references)}::jsonb)
        as r (hash text, type text, id uuid)
      on conflict do nothing`.execute(db);
  }
}

/** The entities asked for, as a table of one parameter. */
function asked(abouts: readonly About[]) {
  const rows = abouts.map(({ type, id }) => ({ type: storable(type), id }));
  return sql`(select distinct r.type, r.id from jsonb_to_recordset(${JSON.stringify(rows)}::jsonb)
    as r (type text, id uuid)) as asked`;
}

function keptOf(row: EntryRow): StoredEntry {
  const entry: Entry = { envelope: row.envelope, salt: row.salt, body: row.body };
  return {
    entry,
    hash: row.hash,
    receivedAt: row.received_at?.toISOString() ?? null,
    refused: row.refused,
  };
}

function placementOf(row: Selectable<Tables['combside.placements']> | undefined): Placement | null {
  return row ? { scope: row.scope, position: row.position, hash: row.hash, digest: row.digest } : null;
}

function distinct(ids: readonly string[]): string[] {
  return [...new Set(ids)];
}
