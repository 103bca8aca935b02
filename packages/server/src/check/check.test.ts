import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Checkpoint } from '@combside/record/transport';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { newId, phoneOf, type TestHouse, testHouse, testPeople } from '../acceptance/test-house.ts';
import { apiaryProposal, keeperProposal, noteProposal } from '../acceptance/test-proposals.ts';
import { verifyExport } from '../check.ts';
import { keysIn, newSigner } from '../store/keys.ts';
import { databaseRecord } from './database-record.ts';
import { writeExport } from './export-file.ts';
import type { WholeRecord } from './records.ts';
import { depths, verifyRecord } from './verify-record.ts';

let house: TestHouse;
let folder = '';
let record: WholeRecord & { sign: () => Promise<Checkpoint> };
let signed: Checkpoint;
let device = '';
beforeAll(async () => {
  house = await testHouse();
  folder = mkdtempSync(join(tmpdir(), 'combside-check-'));
  const north = await house.signIn(testPeople.north);
  const phone = phoneOf(testPeople.north.person);
  device = phone.device;
  const [apiary, keeper] = [newId(), newId()];
  const entries = await phone.write(
    keeperProposal(keeper, 'Berta Lind'),
    apiaryProposal(apiary, 'north', { keeper }),
    apiaryProposal(newId(), 'south'),
    noteProposal('apiary', apiary, 'one'),
    noteProposal('apiary', apiary, 'two'),
  );
  const results = await north.push(entries);
  expect(results.map((result) => result.outcome)).toContain('refused');
  await house.office.erase([entries[1]?.envelope.id ?? ''], 'retention over', testPeople.office.person);
  const plain = databaseRecord(house.database, house.office.key);
  const sign = () => house.office.checkpoint(null, 0);
  signed = await sign();
  record = { ...plain, sign, checkpoint: async () => signed };
});
afterAll(async () => {
  rmSync(folder, { recursive: true, force: true });
  await house.tearDown();
});

const faults = async (depth: (typeof depths)[number]): Promise<string[]> =>
  (await verifyRecord(record, depth)).findings.map((finding) => finding.fault).sort();

/** Changes the database behind everybody's back, looks, and puts it back. */
async function spoiled<T>(statement: string, look: () => Promise<T>): Promise<T> {
  const { pool } = house.database;
  await pool.query('create table kept as select * from combside.entries');
  try {
    await pool.query('alter table combside.placements disable trigger all');
    await pool.query('alter table combside.entries disable trigger all');
    await pool.query(statement, statement.includes('$1') ? [device] : []);
    return await look();
  } finally {
    await pool.query('delete from combside.entries');
    await pool.query('insert into combside.entries select * from kept');
    await pool.query('drop table kept');
  }
}

describe('checking a whole record', () => {
  test('one that nobody touched holds at every depth, with its refused and its erased entries', async () => {
    for (const depth of depths) {
      expect(await verifyRecord(record, depth)).toMatchObject({
        depth,
        holds: true,
        findings: [],
        chains: 2,
        refused: 1,
        erased: 1,
        checkpointAt: depth === 'copy' ? signed.at : null,
      });
    }
  });

  test('a changed body is found by every depth', async () => {
    const statement = `update combside.entries set body = '{"text":"other"}' where device = $1 and kind = 'note' and seq = 5`;
    for (const depth of depths)
      expect(await spoiled(statement, () => faults(depth)), depth).toEqual(['wrong body hash']);
  });

  test('a body taken away without an erasure is found', async () => {
    const statement = 'update combside.entries set body = null, salt = null where device = $1 and seq = 5';
    expect(await spoiled(statement, () => faults('entry'))).toEqual(['body missing']);
  });

  test('a changed envelope breaks its signature and the link after it', async () => {
    const statement = `update combside.entries set envelope = (jsonb_set(envelope::jsonb, '{at}', '"2020-01-01T00:00:00.000Z"'))::json
      where device = $1 and seq = 5`;
    expect(await spoiled(statement, () => faults('entry'))).toEqual(['wrong link', 'wrong signature']);
    expect(await spoiled(statement, () => faults('chain'))).toEqual(['wrong link', 'wrong link', 'wrong signature']);
  });

  test('an entry taken out of the middle is found by its chain, not by itself', async () => {
    const statement = 'delete from combside.entries where device = $1 and seq = 3';
    expect(await spoiled(statement, () => faults('entry'))).toEqual([]);
    expect(await spoiled(statement, () => faults('chain'))).toEqual(['gap']);
  });

  test('an entry taken off the end is found only by what the office signed', async () => {
    const statement = `with gone as (delete from combside.entries where device = $1 and seq = 6) select 1`;
    expect(await spoiled(statement, () => faults('chain'))).toEqual([]);
    expect(await spoiled(statement, () => faults('copy'))).toEqual(['signed head missing']);
  });

  test('a device the office never vouched for is found', async () => {
    const statement = `update combside.entries set refused = 'x' where kind = 'countersignature'`;
    expect(await spoiled(statement, () => faults('entry'))).toEqual([]);
    expect(await spoiled(statement, () => faults('chain'))).toEqual(['not countersigned']);
  });

  test('a checkpoint of somebody else does not count', async () => {
    const other = { ...record, checkpoint: async () => ({ ...signed, at: '2030-01-01T00:00:00.000Z' }) };
    const found = await verifyRecord(other, 'copy');
    expect(found.findings.map((finding) => finding.fault)).toEqual(['checkpoint not signed by the office']);
    const key = newSigner().publicKey;
    const mistrusted = await verifyRecord(record, 'copy', key);
    expect(mistrusted.findings.map((finding) => finding.fault)).toEqual([
      'another key than the office’s',
      'checkpoint not signed by the office',
    ]);
  });
});

describe('an export file', () => {
  const write = async (name: string) => {
    const path = join(folder, name);
    const signer = await keysIn(join(house.data, 'keys')).signerFor(house.office.key.device);
    const exported = await writeExport(record, signer, path, new Date());
    return { path, exported, text: readFileSync(path, 'utf8') };
  };

  test('holds by the key the office told, and appears whole or not at all', async () => {
    const { path, exported } = await write('whole');
    expect(exported.entries).toBeGreaterThan(8);
    const verdict = await verifyExport(path, 'copy', house.office.key.publicKey);
    expect(verdict).toMatchObject({ holds: true, entries: exported.entries, refused: 1, erased: 1 });
    expect(readdirSync(folder).filter((name) => name.includes('half'))).toEqual([]);
  });

  test('one byte changed, a line taken out, or the end cut off, is found', async () => {
    const { path, text } = await write('spoiled');
    const found = async (spoilt: string) => {
      writeFileSync(path, spoilt);
      return (await verifyExport(path, 'copy')).findings.map((finding) => finding.fault);
    };
    expect(await found(text)).toEqual([]);
    expect(await found(text.replace('"receivedAt":"20', '"receivedAt":"21'))).toEqual(['bytes changed']);
    const lines = text.trimEnd().split('\n');
    expect(await found(`${lines.filter((_, index) => index !== lines.length - 2).join('\n')}\n`)).toEqual(
      expect.arrayContaining(['bytes changed', 'entries missing']),
    );
    expect(await found(`${lines.slice(0, -1).join('\n')}\n`)).toEqual(['no manifest', 'no checkpoint']);
    const forged = text.replace(/"signature":"[^"]{86}"}\n$/, `"signature":"${'A'.repeat(86)}"}\n`);
    expect(await found(forged)).toEqual(['manifest not signed by the office']);
  });

  test('what is no export is said to be none, with the line', async () => {
    const path = join(folder, 'none');
    for (const [text, where] of [
      ['', 'is empty'],
      ['hello\n', 'line 1'],
      ['{"format":"combside export","version":2}\n', 'line 1'],
    ] as const) {
      writeFileSync(path, text);
      await expect(verifyExport(path, 'entry')).rejects.toMatchObject({ code: 'export-unreadable' });
      await expect(verifyExport(path, 'entry')).rejects.toThrow(where);
    }
    await expect(verifyExport(join(folder, 'missing'), 'entry')).rejects.toMatchObject({ code: 'export-unreadable' });
  });
});
