import { describe, expect, it } from 'vitest';
import { seeded } from '../../random/seeded.ts';
import { tileTransform } from './fourier.ts';

describe('tileTransform', () => {
  it('equals the defining double sum of the discrete Fourier transform', () => {
    const size = 8;
    const chance = seeded(1);
    const real = Float64Array.from({ length: size * size }, () => chance.normal());
    const imaginary = Float64Array.from({ length: size * size }, () => chance.normal());
    const re = real.slice();
    const im = imaginary.slice();
    tileTransform(size)(re, im);
    for (let fy = 0; fy < size; fy++) {
      for (let fx = 0; fx < size; fx++) {
        let sr = 0;
        let si = 0;
        for (let y = 0; y < size; y++) {
          for (let x = 0; x < size; x++) {
            const angle = (-2 * Math.PI * (fx * x + fy * y)) / size;
            const r = real[y * size + x] as number;
            const i = imaginary[y * size + x] as number;
            sr += r * Math.cos(angle) - i * Math.sin(angle);
            si += r * Math.sin(angle) + i * Math.cos(angle);
          }
        }
        expect(re[fy * size + fx]).toBeCloseTo(sr, 9);
        expect(im[fy * size + fx]).toBeCloseTo(si, 9);
      }
    }
  });

  it('refuses a side that is no power of two', () => {
    expect(() => tileTransform(12)).toThrow(/12 is not a power of two/);
  });
});
