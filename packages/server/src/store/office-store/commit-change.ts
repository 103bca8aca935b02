import type { OfficeChange } from '@combside/record/store';
import { type Kysely, sql } from 'kysely';
import { storable } from '../columns.ts';
import type { Tables } from '../tables.ts';
import { distinct } from './asked-entities.ts';
import { expectHead, insertEntries } from './insert-entries.ts';
import { insertPlacements } from './insert-placements.ts';
import { upsertStates } from './upsert-states.ts';

/** Makes one change in one transaction: all of it or nothing. @throws RecordError `head moved`, `entry clash` */
export async function commitChange(db: Kysely<Tables>, change: OfficeChange): Promise<void> {
  await db.transaction().execute(async (transaction) => {
    if (change.expected) await expectHead(transaction, change.expected);
    if (change.entries?.length) await insertEntries(transaction, change.entries);
    if (change.receipts?.length) await noteReceipts(transaction, change.receipts);
    if (change.erase?.length) await eraseBodies(transaction, change.erase);
    if (change.states?.length) await upsertStates(transaction, change.states);
    if (change.clock !== undefined) await setClock(transaction, change.clock);
    if (change.memberships?.length) await insertMemberships(transaction, change.memberships);
    if (change.follows?.length) await insertFollows(transaction, change.follows);
    if (change.placements?.length) await insertPlacements(transaction, change.placements);
  });
}

async function noteReceipts(db: Kysely<Tables>, receipts: NonNullable<OfficeChange['receipts']>): Promise<void> {
  const rows = receipts.map((receipt) => ({
    hash: receipt.hash,
    at: receipt.receivedAt,
    refused: storable(receipt.refused),
  }));
  await sql`
    update combside.entries set received_at = r.at, refused = r.refused
    from jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) as r (hash text, at timestamptz, refused text)
    where entries.hash = r.hash`.execute(db);
}

async function eraseBodies(db: Kysely<Tables>, hashes: readonly string[]): Promise<void> {
  await sql`
    update combside.entries set body = null, salt = null where hash = any(${distinct(hashes)}::text[])`.execute(db);
}

async function setClock(db: Kysely<Tables>, reading: string): Promise<void> {
  await db
    .insertInto('combside.office_clock')
    .values({ reading })
    .onConflict((conflict) => conflict.column('one').doUpdateSet({ reading }))
    .execute();
}

async function insertMemberships(
  db: Kysely<Tables>,
  memberships: NonNullable<OfficeChange['memberships']>,
): Promise<void> {
  const rows = memberships.map(({ about, scope }) => ({ ...about, type: storable(about.type), scope }));
  await sql`
    insert into combside.memberships (entity_type, entity_id, scope)
    select r.type, r.id, r.scope
    from jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) as r (type text, id uuid, scope text)
    on conflict do nothing`.execute(db);
}

async function insertFollows(db: Kysely<Tables>, follows: NonNullable<OfficeChange['follows']>): Promise<void> {
  const rows = follows.map(({ child, parent }) => ({
    ct: storable(child.type),
    ci: child.id,
    pt: storable(parent.type),
    pi: parent.id,
  }));
  await sql`
    insert into combside.follows (child_type, child_id, parent_type, parent_id)
    select r.ct, r.ci, r.pt, r.pi
    from jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) as r (ct text, ci uuid, pt text, pi uuid)
    on conflict do nothing`.execute(db);
}
