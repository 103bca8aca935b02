import { describe, expect, test } from 'vitest';
import { decimalsFor } from './say-figure.ts';

describe('how finely a share is said', () => {
  test.each([
    [1, 1],
    [0.2, 1],
    [0.02, 1],
    // 57 of 52,337, 95 % interval to 0.00141: said with one decimal, both ends would read 0.1 %.
    [0.00141, 2],
    [0.000071, 4],
    [1e-9, 5],
    [0, 1],
  ])('an interval up to %d is said with %d decimals', (high, decimals) => {
    expect(decimalsFor(high)).toBe(decimals);
  });
});
