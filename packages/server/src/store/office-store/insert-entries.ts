import { RecordError } from '@combside/record/errors';
import type { Head, OfficeChange, StoredEntry } from '@combside/record/store';
import { type Kysely, sql } from 'kysely';
import type pg from 'pg';
import { instantOrNull, storable } from '../columns.ts';
import type { Tables } from '../tables.ts';

const uniqueViolation = '23505';

/** Locks the head of a chain and compares it. @throws RecordError `head moved` */
export async function expectHead(db: Kysely<Tables>, expected: NonNullable<OfficeChange['expected']>): Promise<void> {
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

/** Inserts entries and moves the heads of their chains. @throws RecordError `entry clash` */
export async function insertEntries(db: Kysely<Tables>, entries: readonly StoredEntry[]): Promise<void> {
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

/** Says in the record's words that an identifier or a place is taken; throws everything else on. */
export function asClash(error: unknown): never {
  if ((error as pg.DatabaseError).code !== uniqueViolation) throw error;
  throw new RecordError('entry clash', (error as pg.DatabaseError).detail ?? 'an identifier or a place', error);
}

function newestOf(entries: readonly StoredEntry[]): Head[] {
  const heads = new Map<string, Head>();
  for (const { entry, hash } of entries) {
    const { device, seq } = entry.envelope;
    if (seq > (heads.get(device)?.seq ?? 0)) heads.set(device, { device, seq, hash });
  }
  return [...heads.values()];
}
