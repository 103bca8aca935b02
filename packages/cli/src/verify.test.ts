import { chmodSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startServer } from '@combside/server/start';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { writeExport } from './export.ts';
import { verify } from './verify.ts';

let folder = '';
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'combside-verify-'));
  // PostgreSQL of root runs as another user, who must be able to pass.
  chmodSync(folder, 0o755);
  const server = await startServer({ data: join(folder, 'data'), port: 0 });
  const about = { type: 'apiary', id: server.office.newId() };
  await server.office.write(
    [{ kind: 'note', version: 1, about, body: { text: 'written at the desk' }, replaces: [] }],
    '01900000-0000-7000-8000-000000000001',
  );
  await server.stop();
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function run(command: typeof verify, ...args: string[]): Promise<{ code: number; out: string; err: string }> {
  const lines = { out: [] as string[], err: [] as string[] };
  const code = await command(args, { out: (line) => lines.out.push(line), err: (line) => lines.err.push(line) });
  return { code, out: lines.out.join('\n'), err: lines.err.join('\n') };
}

describe('combside verify and export', () => {
  test('a record and its export hold; a spoilt export does not, and says where', async () => {
    const data = join(folder, 'data');
    const file = join(folder, 'record.ndjson');
    expect(await run(verify, '--data', data)).toMatchObject({ code: 0, err: '' });
    const exported = await run(writeExport, file, '--data', data);
    expect([exported.code, exported.err]).toEqual([0, '']);
    const verdict = await run(verify, file, '--json');
    expect(JSON.parse(verdict.out)).toMatchObject({ depth: 'copy', holds: true, entries: 2, chains: 1, findings: [] });

    writeFileSync(file, readFileSync(file, 'utf8').replace('written at the desk', 'changed on the way'));
    const spoilt = await run(verify, file, '--depth', 'entry', '--json');
    expect(spoilt.code).toBe(1);
    const { findings } = JSON.parse(spoilt.out) as { findings: { seq: number; fault: string }[] };
    expect(findings.map((finding) => [finding.seq, finding.fault])).toEqual([
      [0, 'bytes changed'],
      [2, 'wrong body hash'],
    ]);
  });

  test('what cannot be understood or read leaves with 2, and makes nothing', async () => {
    expect((await run(verify, '--depth', 'deep')).code).toBe(2);
    expect((await run(verify, '--nonsense')).code).toBe(2);
    expect((await run(verify, join(folder, 'missing'))).code).toBe(2);
    const nowhere = await run(verify, '--data', join(folder, 'nothing-here'));
    expect([nowhere.code, nowhere.err]).toEqual([2, expect.stringContaining('No server has kept a record')]);
    expect((await run(writeExport)).code).toBe(2);
    expect((await run(verify, '--help')).code).toBe(0);
  });
});
