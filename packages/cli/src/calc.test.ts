import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { calculations } from '@combside/science/calculations/registry';
import { describe, expect, it } from 'vitest';
import { calc as runCalc } from './calc.ts';

async function calc(args: readonly string[], stdin = '') {
  const heard = { code: 0, out: '', err: '' };
  heard.code = await runCalc(args, {
    read: (path) => (path === '-' ? stdin : readFileSync(path, 'utf8')),
    out: (text) => {
      heard.out += `${text}\n`;
    },
    err: (text) => {
      heard.err += `${text}\n`;
    },
  });
  return heard;
}

const ask = { designPrevalence: 0.05, confidence: 0.95, sensitivity: 1 };

describe('combside calc', () => {
  it('takes inputs as JSON and gives the result as JSON (59 bees: statistics paper 2013, BB-STAT-2.2)', async () => {
    const heard = await calc(['sampleSizeToDetectLargePopulation'], JSON.stringify(ask));
    expect(heard).toEqual({ code: 0, out: '{"sampleSize":59}\n', err: '' });
  });

  it('refuses impossible input, naming field, range and what was given', async () => {
    const heard = await calc(['sampleSizeToDetectLargePopulation', '-'], JSON.stringify({ ...ask, confidence: 95 }));
    expect(heard).toMatchObject({ code: 1, out: '' });
    expect(heard.err).toBe('confidence must be a fraction above 0 and below 1, but was 95\n');
  });

  it('says what is wrong with the command, the file or the JSON', async () => {
    expect(await calc(['sampleSizeToDetect'], '{}')).toMatchObject({ code: 1 });
    expect((await calc(['sampleSizeToDetect'], '{}')).err).toContain('did you mean');
    expect((await calc(['kappa', '/nowhere.json'])).err).toContain('cannot read /nowhere.json');
    expect((await calc(['kappa'], 'table')).err).toContain('standard input does not hold one JSON object');
    expect(await calc(['--every'])).toMatchObject({ code: 2 });
    expect(await calc([])).toMatchObject({ code: 2 });
    expect(await calc(['--list', '--batch'])).toMatchObject({ code: 2 });
    expect(await calc(['kappa', 'a', 'b'])).toMatchObject({ code: 2 });
  });

  it('lists every name with a line', async () => {
    const { out } = await calc(['--list']);
    for (const [name, { line }] of Object.entries(calculations)) {
      expect(
        out.split('\n').some((row) => row.trim().startsWith(`${name} `) && row.endsWith(line)),
        name,
      ).toBe(true);
    }
  });

  it('explains: formula, source and the steps with numbers', async () => {
    const { out } = await calc(['sampleSizeToDetectLargePopulation', '--explain'], JSON.stringify(ask));
    expect(out).toContain('formula: n = ceil(ln(1 - C) / ln(1 - P Se))');
    expect(out).toContain('\n  Martin SW, Shoukri M, Thorburn MA 1992');
    expect(out).toContain('ln(1 - 0.95) / ln(1 - P Se) = 58.404');
    expect(out).toContain('result: {"sampleSize":59}');
  });

  it('opens every explanation about disposal with its cautions, in sentences', async () => {
    const dip = { item: 'boxes', pieces: 4, piecesPerDip: 2, celsius: 160, minutes: 10, vatLitres: 100 };
    const { out } = await calc(
      ['hotWaxDip', '--explain'],
      JSON.stringify({ ...dip, cleanAndDry: true, beesDead: true }),
    );
    expect(out.startsWith('! The order, the permit and local law decide')).toBe(true);
    expect(out).toContain('Never water.');
    expect(out.indexOf('formula:')).toBeGreaterThan(out.lastIndexOf('! '));
  });

  it('tells the fields of one calculation', async () => {
    const { out } = await calc(['killingDose', '--help']);
    for (const field of Object.keys(calculations.killingDose?.inputs ?? {})) expect(out).toContain(`  ${field}: `);
  });

  it('works through a batch, one line for each, and goes on after a bad one', async () => {
    const lines = [
      JSON.stringify({ id: 'a', function: 'sampleSizeToDetectLargePopulation', inputs: ask }),
      '',
      JSON.stringify({ id: 'b', function: 'kappa', inputs: { table: [[1, 2]] } }),
      'not JSON',
      JSON.stringify({ id: 7, function: 'interval.wilson', inputs: { positives: 0, tested: 20, confidence: 0.95 } }),
      JSON.stringify({ id: 'c', function: 'noSuch', inputs: {} }),
    ];
    const { code, out } = await calc(['--batch'], lines.join('\n'));
    const answers = out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(code).toBe(1);
    expect(answers.map(({ id }) => id)).toEqual(['a', 'b', 4, 7, 'c']);
    expect(answers[0]).toEqual({ id: 'a', result: { sampleSize: 59 } });
    expect(answers[1].error).toContain('table must be square');
    expect(answers[3].result.upper).toBeCloseTo(0.161125, 6);
    expect(answers[4].error).toContain('no calculation "noSuch"');
  });

  it('runs as a program, from the file it is installed by', () => {
    const program = join(import.meta.dirname, '../bin/combside.mjs');
    const answer = execFileSync(process.execPath, [program, 'calc', 'sampleSizeToDetectLargePopulation', '-'], {
      input: JSON.stringify(ask),
      encoding: 'utf8',
    });
    expect(answer).toBe('{"sampleSize":59}\n');
    expect(execFileSync(process.execPath, [program, '--help'], { encoding: 'utf8' })).toContain('calc ');
  });
});
