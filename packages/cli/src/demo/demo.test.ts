import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { demo } from './demo.ts';

function run(...args: string[]): Promise<{ code: number; out: string[]; err: string[] }> {
  const out: string[] = [];
  const err: string[] = [];
  const streams = {
    read: () => '',
    out: (line: string) => void out.push(line),
    err: (line: string) => void err.push(line),
  };
  return demo(args, streams).then((code) => ({ code, out, err }));
}

const patience = 180_000;

test(
  'the whole slice works: visit without signal, paper, sealed chain, office',
  async () => {
    const folder = mkdtempSync(join(tmpdir(), 'combside-demo-test-'));
    onTestFinished(() => rmSync(folder, { recursive: true }));
    const paper = join(folder, 'result.pdf');
    const { code, out, err } = await run('--paper', paper);
    expect(err).toEqual([]);
    expect(code).toBe(0);
    const text = out.join('\n');
    expect(text).toContain('Colony 4: suspect');
    expect(text).toContain('Colony 6: suspect');
    expect(text.match(/Colony \d: nothing seen with this look/g)).toHaveLength(4);
    expect(text).toContain('6 examinations, 2 suspect, as on the phone');
    // What was sealed is what was sent: counted by the phone and by the office's receipts.
    const sealed = /(\d+) entries sealed on the phone/.exec(text)?.[1];
    expect(text).toContain(`Network found: ${sealed} entries sent, 0 refused, 0 waiting`);
    const pdf = readFileSync(paper);
    expect(pdf.subarray(0, 5).toString('latin1')).toBe('%PDF-');
    expect(text).toContain(`PDF of ${pdf.length.toLocaleString('en')} bytes at ${paper}`);
  },
  patience,
);

test(
  'it leaves with 1 and the reason when a step cannot work, and says so in the language asked for',
  async () => {
    const { code, err, out } = await run('--language', 'de', '--paper', join(tmpdir(), 'no-such-folder', 'result.pdf'));
    expect(code).toBe(1);
    expect(err.join('\n')).toMatch(/^Dieser Schritt ist nicht gelungen: .*ENOENT/);
    expect(out.join('\n')).toContain('Volk 4: Verdacht');
    expect(out.join('\n')).not.toContain('Alle Schritte sind gelungen.');
  },
  patience,
);

test('it refuses what it does not understand', async () => {
  const { code, err } = await run('--loud');
  expect(code).toBe(2);
  expect(err.join('\n')).toContain('combside demo [--language en|de]');
});
