import { describe, expect, it } from 'vitest';
import {
  colonyDose,
  daysUntilAllDead,
  earliestScale,
  infectionAtAge,
  isBelievableSporeCount,
  lastDeathAfterCapping,
  lethalSpores,
  ropyDays,
  sporesPerDeadLarva,
  sporeYears,
} from './time-course.ts';

describe('the time course of American foulbrood', () => {
  it('8: 8.49 spores kill half of the larvae of 24 to 28 hours (BRO98)', () => {
    expect(lethalSpores.value).toBe(8.49);
  });

  it('9: infection is expected before 36 hours of age, not at 60 (BEIMS20, BRO98)', () => {
    expect(infectionAtAge(24)).toBe('expected');
    expect(infectionAtAge(40)).toBe('unsure');
    expect(infectionAtAge(60)).toBe('not expected');
    expect(() => infectionAtAge(-1)).toThrow(/from 0/);
  });

  it('10: one dead larva holds 500 colony doses (NZ-XFER, arithmetic)', () => {
    expect(sporesPerDeadLarva.value / colonyDose.value).toBe(500);
  });

  it('11: a hundred million to three thousand million spores are believed, 2.5 million are not (MAAREC-SCALE, WOAH-9.2, DOG23, EURL-AFB)', () => {
    expect([1e8, 1e9, 2.5e9, 3e9].every(isBelievableSporeCount)).toBe(true);
    expect(isBelievableSporeCount(2.5e6)).toBe(false);
  });

  it('12: all infected larvae are dead after 7.8, 11.2 or 11.6 days by genotype (GEN05)', () => {
    const { fast, slow, slowest } = daysUntilAllDead;
    expect([fast.value, slow.value, slowest.value]).toEqual([7.8, 11.2, 11.6]);
    expect((fast.high as number) - fast.value).toBeCloseTo(1.7, 9);
    expect((slow.high as number) - slow.value).toBeCloseTo(0.8, 9);
    expect((slowest.high as number) - slowest.value).toBeCloseTo(0.6, 9);
  });

  it('13: with the fast genotype the last deaths fall 2.8 days after capping (arithmetic)', () => {
    expect(lastDeathAfterCapping(daysUntilAllDead.fast.value)).toBeCloseTo(2.8, 9);
  });

  it('14: with slow genotypes 6.2 to 6.6 days after it (arithmetic)', () => {
    expect(lastDeathAfterCapping(daysUntilAllDead.slow.value)).toBeCloseTo(6.2, 9);
    expect(lastDeathAfterCapping(daysUntilAllDead.slowest.value)).toBeCloseTo(6.6, 9);
  });

  it('15: scale appears no sooner than 35 to 42 days after infection (arithmetic on MAAREC-SCALE, GEN05)', () => {
    expect(earliestScale()).toEqual([35, 42]);
  });

  it('16: remains rope for about three weeks, give or take one (BOOKLET)', () => {
    expect([ropyDays.low, ropyDays.value, ropyDays.high]).toEqual([14, 21, 28]);
  });

  it('17: dry spores live over 35 years, with no upper end: age never makes comb safe (NZ-MAN03)', () => {
    expect(sporeYears.value).toBe(35);
    expect(sporeYears.high).toBeUndefined();
  });
});
