import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brightness, checkPicture, shrink, shrinkToGrey, valueAt, windowMean } from './picture.ts';

const pictures = fc
  .record({
    width: fc.integer({ min: 1, max: 23 }),
    height: fc.integer({ min: 1, max: 19 }),
    channels: fc.constantFrom(3, 4),
  })
  .chain(({ width, height, channels }) =>
    fc
      .uint8Array({ minLength: width * height * channels, maxLength: width * height * channels })
      .map((data) => ({ width, height, data })),
  );

describe('shrink', () => {
  it('keeps the mean of every colour, whatever the scale', () => {
    fc.assert(
      fc.property(pictures, fc.double({ min: 0.05, max: 1, noNaN: true }), (picture, scale) => {
        const channels = picture.data.length / (picture.width * picture.height);
        const small = shrink(picture, scale);
        let before = 0;
        for (let k = 0; k < picture.data.length; k += channels) before += picture.data[k] as number;
        let after = 0;
        for (const v of small.red.data) after += v;
        expect(after / small.red.data.length).toBeCloseTo(before / (picture.width * picture.height), 2);
      }),
      { seed: 11, numRuns: 60 },
    );
  });
});

describe('windowMean', () => {
  it('equals the plain mean over the clamped window', () => {
    const plane = { width: 7, height: 5, data: Float32Array.from({ length: 35 }, (_, k) => (k * 37) % 11) };
    for (const radius of [0, 1, 2, 9]) {
      const mean = windowMean(plane, radius);
      for (let y = 0; y < 5; y++) {
        for (let x = 0; x < 7; x++) {
          let sum = 0;
          let count = 0;
          for (let sy = Math.max(0, y - radius); sy <= Math.min(4, y + radius); sy++) {
            for (let sx = Math.max(0, x - radius); sx <= Math.min(6, x + radius); sx++) {
              sum += plane.data[sy * 7 + sx] as number;
              count++;
            }
          }
          expect(mean.data[y * 7 + x]).toBeCloseTo(sum / count, 4);
        }
      }
    }
  });
});

describe('valueAt', () => {
  it('is exact on a slope and holds still outside', () => {
    const plane = { width: 4, height: 4, data: Float32Array.from({ length: 16 }, (_, k) => (k % 4) + 10 * (k >> 2)) };
    expect(valueAt(plane, 1.25, 2.5)).toBeCloseTo(26.25, 5);
    expect(valueAt(plane, -3, 99)).toBe(30);
  });
});

describe('checkPicture', () => {
  it('says what is wrong with a malformed picture', () => {
    expect(() => checkPicture({ width: 0, height: 3, data: new Uint8Array(0) })).toThrow(/width is 0/);
    expect(() => checkPicture({ width: 2, height: 2, data: new Uint8Array(5) })).toThrow(/5 bytes/);
  });
});

describe('shrinkToGrey', () => {
  it('equals the brightness of the shrunk colours', () => {
    fc.assert(
      fc.property(pictures, fc.double({ min: 0.05, max: 1, noNaN: true }), (picture, scale) => {
        const slow = brightness(shrink(picture, scale));
        const quick = shrinkToGrey(picture, scale);
        expect(quick.data.length).toBe(slow.data.length);
        for (let k = 0; k < quick.data.length; k++) expect(quick.data[k]).toBeCloseTo(slow.data[k] as number, 2);
      }),
      { seed: 12, numRuns: 60 },
    );
  });
});
