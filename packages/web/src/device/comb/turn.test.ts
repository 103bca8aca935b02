import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { pictureHeader } from './picture-header.ts';
import { toStored, toUpright, uprightSize } from './turn.ts';

const size = { width: 48, height: 32 };

/** A grey picture with one white block of 8 x 8 pixels, in a file that asks for this turn. */
async function photograph(orientation: number, left: number, top: number): Promise<Buffer> {
  const block = await sharp({ create: { width: 8, height: 8, channels: 3, background: 'white' } })
    .png()
    .toBuffer();
  return sharp({ create: { ...size, channels: 3, background: 'grey' } })
    .composite([{ input: block, left, top }])
    .withMetadata({ orientation })
    .jpeg({ quality: 100 })
    .toBuffer();
}

describe('a turned photograph', () => {
  // sharp turns the same files: what it shows is the truth here.
  test.each([1, 2, 3, 4, 5, 6, 7, 8])('with orientation %i lies as another program turns it', async (orientation) => {
    const file = await photograph(orientation, 8, 16);
    const header = pictureHeader(new Uint8Array(file));
    expect(header).toEqual({ ...size, orientation });
    const { data, info } = await sharp(file).rotate().greyscale().raw().toBuffer({ resolveWithObject: true });
    const turn = { ...size, orientation };
    expect(uprightSize(turn)).toEqual({ width: info.width, height: info.height });
    // The middle of the block as stored: pixels 8 to 15 across, 16 to 23 down.
    const middle = { x: 11.5, y: 19.5 };
    const seen = toUpright(turn, middle);
    const bright = (x: number, y: number) => (data[y * info.width + x] as number) > 200;
    for (const [dx, dy] of [
      [-3, -3],
      [3, 3],
      [-3, 3],
      [3, -3],
    ] as const) {
      expect(bright(Math.round(seen.x + dx), Math.round(seen.y + dy))).toBe(true);
    }
    expect(data.filter((value) => value > 200).length).toBe(64);
    expect(toStored(turn, seen)).toEqual(middle);
  });
});

describe('the header of a picture', () => {
  test('gives the size of a PNG', async () => {
    const file = await sharp({ create: { ...size, channels: 3, background: 'grey' } })
      .png()
      .toBuffer();
    expect(pictureHeader(new Uint8Array(file))).toEqual({ ...size, orientation: 1 });
  });

  test('is nothing for what is no picture, and never throws on a cut or broken file', async () => {
    expect(pictureHeader(new Uint8Array())).toBeNull();
    expect(pictureHeader(new TextEncoder().encode('no picture at all, but long enough to look like one'))).toBeNull();
    const file = new Uint8Array(await photograph(6, 0, 0));
    for (let length = 0; length < 200; length++) {
      const header = pictureHeader(file.subarray(0, length));
      if (header) expect(header).toEqual({ ...size, orientation: 6 });
    }
    for (let at = 2; at < 120; at++) {
      const broken = file.slice();
      broken[at] = 0xff - (broken[at] as number);
      expect(() => pictureHeader(broken)).not.toThrow();
    }
  });
});
