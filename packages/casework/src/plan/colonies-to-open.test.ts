import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chanceFromLooks, chanceToFindOne, coloniesToOpen } from './colonies-to-open.ts';
import { openingRule, openingRules } from './opening-rules.ts';

const open = (rule: string, colonies: number, suspect = false) => coloniesToOpen(openingRule(rule), colonies, suspect);

describe('colonies to open', () => {
  test('under an inspection protocol: ten or fewer all, eleven and more half [PROT-US]', () => {
    expect([0, 1, 10, 11, 12, 41].map((n) => open('ten, then half', n))).toEqual([0, 1, 10, 6, 6, 21]);
  });

  test('under the shares of N.J.A.C. 2:24-4.1: all, 50 %, 33 %, 20 %, and all once foulbrood is suspected', () => {
    expect([10, 11, 20, 21, 50, 51, 100].map((n) => open('falling shares', n))).toEqual([10, 6, 10, 7, 17, 11, 20]);
    expect(open('falling shares', 100, true)).toBe(100);
  });

  test('under Fla. Admin. Code 5B-54.011: 5 % and ten at least, all where fewer stand', () => {
    expect([4, 9, 10, 11, 200, 201, 400].map((n) => open('one in twenty, ten at least', n))).toEqual([
      4, 9, 10, 10, 10, 11, 20,
    ]);
    expect(open('one in twenty, ten at least', 400, true)).toBe(20);
  });

  test('never more than stand there, and never fewer because more stand within a band', () => {
    fc.assert(
      fc.property(fc.constantFrom(...openingRules), fc.nat(2000), fc.boolean(), (rule, colonies, suspect) => {
        const n = coloniesToOpen(rule, colonies, suspect);
        expect(n).toBeLessThanOrEqual(colonies);
        expect(n).toBeGreaterThanOrEqual(Math.min(colonies, rule.least));
        expect(Number.isInteger(n)).toBe(true);
      }),
      { seed: 3 },
    );
  });

  test('a count that is none is refused', () => {
    expect(() => open('every colony', 2.5)).toThrow(/colonies/);
    expect(() => open('every colony', -1)).toThrow(/colonies/);
  });
});

describe('the chance to find one diseased colony', () => {
  test('as worked by hand: of 40, one diseased, a look that sees it 8 times in 10', () => {
    // 10 opened: 10/40 x 0.8; 20: 20/40 x 0.8; all: 0.8.
    expect(chanceToFindOne(40, 10, 0.8)).toBeCloseTo(0.2, 12);
    expect(chanceToFindOne(40, 20, 0.8)).toBeCloseTo(0.4, 12);
    expect(chanceToFindOne(40, 40, 0.8)).toBeCloseTo(0.8, 12);
    expect(chanceToFindOne(0, 0, 0.8)).toBeNull();
  });

  test('from looks made: half the frames count half, a look from above nothing, and full looks as planned', () => {
    const full = { framesSeen: 9, framesHeld: 9 };
    expect(chanceFromLooks(40, Array(10).fill(full), 0.8)).toBeCloseTo(chanceToFindOne(40, 10, 0.8) as number, 12);
    expect(chanceFromLooks(4, [full, { framesSeen: 5, framesHeld: 10 }], 0.8)).toBeCloseTo(0.3, 12);
    expect(chanceFromLooks(4, [{ framesSeen: 0, framesHeld: 10 }], 0.8)).toBe(0);
    expect(chanceFromLooks(0, [], 0.8)).toBeNull();
    expect(() => chanceFromLooks(1, [full, full], 0.8)).toThrow();
  });
});
