import { describe, expect, it } from 'vitest';
import { combScore, severityOf } from './severity.ts';

describe('the comb score', () => {
  it('18: 0, 9, 11, 100, 101 cells score 0, 1, 2, 2, 3; exactly 10 is ours: 1 (BB-AFB-4.3.1)', () => {
    expect([0, 9, 10, 11, 100, 101].map(combScore)).toEqual([0, 1, 1, 2, 2, 3]);
  });

  it('19: frame scores 0, 1, 2, 3, 0 give sum 6 and mean 1.2 (BB-AFB-4.3.1, arithmetic)', () => {
    const cells = [0, 4, 50, 300, 0];
    const severity = severityOf(cells.map((cellsAffected, i) => ({ frame: `${i + 1}`, cellsAffected })));
    expect(severity?.frames.map((frame) => frame.score)).toEqual([0, 1, 2, 3, 0]);
    expect(severity?.sum).toBe(6);
    expect(severity?.mean).toBeCloseTo(1.2, 12);
  });

  it('says nothing of a colony whose frames were not counted, and refuses half cells', () => {
    expect(severityOf([])).toBeNull();
    expect(() => combScore(1.5)).toThrow(/whole number/);
  });
});
