import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { CombResult } from '@combside/science/comb/comb-result';
import { readComb } from '@combside/science/comb/read-comb';
import { scoreCells } from '@combside/science/comb/reading/score-reading';
import { beforeAll, describe, expect, it } from 'vitest';
import { decodePicture } from './decode-picture.ts';

/*
 * Three real photographs under open licences, with truth labelled by eye by one reader (packages/science/src/comb/reference/manifest.json). No one
 * here made them, and nothing was trained on them; the thresholds of the lattice were chosen while looking at them. Three
 * are few: what holds here is a floor, not a proof.
 */
const at = (name: string) => new URL(`../../science/src/comb/reference/${name}`, import.meta.url);
const manifest = JSON.parse(readFileSync(at('manifest.json'), 'utf8')) as {
  pictures: { file: string; sha256: string; licence: string }[];
};

async function readPicture(name: string): Promise<{ result: CombResult; width: number; height: number }> {
  const decoded = await decodePicture(readFileSync(at(name)));
  if ('problem' in decoded) throw new Error(`${name}: ${decoded.problem}`);
  const { picture } = decoded;
  return { result: readComb(picture), width: picture.width, height: picture.height };
}

interface Labels {
  cells: { x: number; y: number; coarse: string }[];
}

function score(name: string, read: { result: CombResult; width: number; height: number }) {
  const labels = JSON.parse(readFileSync(at(`${name}.cells.json`), 'utf8')) as Labels;
  const pitch = read.result.pitchPx;
  return scoreCells(
    read.result.cells,
    labels.cells.map((cell) => ({
      x: cell.x,
      y: cell.y,
      pitch,
      class: undefined,
      coarse: cell.coarse === 'open' ? 'open' : 'hidden',
    })),
    read.width,
    read.height,
  );
}

describe('the reference pictures', () => {
  it('are the bytes the manifest names, each with an open licence', () => {
    expect(manifest.pictures).toHaveLength(3);
    for (const { file, sha256, licence } of manifest.pictures) {
      expect(
        createHash('sha256')
          .update(readFileSync(at(file)))
          .digest('hex'),
      ).toBe(sha256);
      expect(['CC BY-SA 4.0', 'CC0 1.0']).toContain(licence);
    }
  });
});

describe('pale new comb, close (a-open-white-comb)', () => {
  let read: Awaited<ReturnType<typeof readPicture>>;
  beforeAll(async () => {
    read = await readPicture('a-open-white-comb.jpg');
  });

  it('finds every cell away from the edge, and none that is not there', () => {
    const found = score('a-open-white-comb', read);
    expect(found.wanted).toBeGreaterThan(55);
    expect(found.hit / found.wanted).toBeGreaterThanOrEqual(0.98);
    expect(found.hit / (found.hit + found.false)).toBeGreaterThanOrEqual(0.98);
  });

  it('reads what it decides as open', () => {
    const { coarse } = score('a-open-white-comb', read);
    expect(coarse.decided).toBeGreaterThan(45);
    expect(coarse.right / coarse.decided).toBeGreaterThan(0.9);
  });
});

describe('new comb under bees (d-new-comb-queen)', () => {
  it('finds most of the labelled open cells and reads them as open', async () => {
    const found = score('d-new-comb-queen', await readPicture('d-new-comb-queen.jpg'));
    expect(found.hit / found.wanted).toBeGreaterThan(0.8);
    expect(found.coarse.right / found.coarse.decided).toBeGreaterThan(0.85);
  });
});

describe('a frame in the hands, nine tenths under bees (f-frame-in-hand)', () => {
  it('is refused, and the reason says what to do', async () => {
    const { result } = await readPicture('f-frame-in-hand.jpg');
    expect(result.verdict).toBe('refused');
    expect(['no-comb', 'under-bees', 'cells-too-small']).toContain(result.reasons[0]);
    expect(result.cells).toEqual([]);
  });
});
