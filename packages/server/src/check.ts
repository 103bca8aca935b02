import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { databaseRecord } from './check/database-record.ts';
import { type ExportWritten, readExport, writeExport } from './check/export-file.ts';
import type { WholeRecord } from './check/records.ts';
import { type Depth, depths, type RecordFinding, type Verdict, verifyRecord } from './check/verify-record.ts';
import { startCluster } from './store/cluster.ts';
import { openDatabase } from './store/database.ts';
import { ServerError } from './store/errors.ts';
import { keysIn } from './store/keys.ts';
import { wallClock } from './store/node-ports.ts';
import { openServerOffice } from './store/open-server-office.ts';

export type { Depth, ExportWritten, RecordFinding, Verdict };
export { depths };

/** Which record: the one of a server's data folder, running or not, or of an agency's own PostgreSQL. */
export interface RecordPlace {
  readonly data: string;
  readonly databaseUrl?: string;
}

/**
 * Checks the record in a server's own database, against the key in its data folder. Where no checkpoint was signed yet,
 * one is signed now, which shows less: that the database agrees with itself at this moment.
 */
export async function verifyDatabase(place: RecordPlace, depth: Depth): Promise<Verdict> {
  return withRecord(place, async (record) => {
    const signed = (await record.checkpoint()) ?? (await record.sign());
    return verifyRecord({ ...record, checkpoint: async () => signed }, depth, record.office.publicKey);
  });
}

/**
 * Checks an export file: its bytes against its manifest, then its entries.
 *
 * @param trustedKey the office's public key as known from elsewhere
 * @throws ServerError `export-unreadable`
 */
export async function verifyExport(path: string, depth: Depth, trustedKey?: string): Promise<Verdict> {
  const record = await readExport(path);
  const verdict = await verifyRecord(record, depth, trustedKey);
  const findings = [
    ...record.faults.map((fault) => ({ device: record.office.device, seq: 0, fault })),
    ...verdict.findings,
  ];
  return { ...verdict, findings, holds: findings.length === 0 };
}

/** Writes the whole record to a file with a signed manifest. */
export async function exportRecord(place: RecordPlace, path: string): Promise<ExportWritten> {
  return withRecord(place, (record) => writeExport(record, record.signer, resolve(path), new Date(wallClock.now())));
}

type OpenRecord = WholeRecord & {
  readonly sign: () => Promise<NonNullable<Awaited<ReturnType<WholeRecord['checkpoint']>>>>;
  readonly signer: Awaited<ReturnType<ReturnType<typeof keysIn>['signerFor']>>;
};

async function withRecord<T>(place: RecordPlace, work: (record: OpenRecord) => Promise<T>): Promise<T> {
  const data = resolve(place.data);
  // Looking at a folder must never begin a record in it.
  if (!existsSync(join(data, 'keys'))) throw new ServerError('no-record', data);
  const cluster = place.databaseUrl === undefined ? await startCluster({ folder: join(data, 'postgres') }) : undefined;
  try {
    const address = cluster ? { cluster, name: 'combside' } : { url: place.databaseUrl ?? '' };
    const database = await openDatabase(address, 3);
    try {
      const keys = keysIn(join(data, 'keys'));
      const { office } = await openServerOffice(database, keys, wallClock);
      const record = databaseRecord(database, office.key);
      const sign = (): Promise<Awaited<ReturnType<typeof office.checkpoint>>> => office.checkpoint(null, 0);
      return await work({ ...record, sign, signer: await keys.signerFor(office.key.device) });
    } finally {
      await database.close();
    }
  } finally {
    await cluster?.stop();
  }
}
