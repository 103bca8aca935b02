import { describe, expect, it } from 'vitest';
import { workerClock } from '../brood/development-calendar.ts';
import { earliestSigns } from './earliest-sign.ts';
import { daysUntilAllDead, lastDeathAfterCapping } from './time-course.ts';

describe('the earliest sign after an exposure', () => {
  const signs = earliestSigns({ exposedOn: '2026-06-01' });

  it('12: infected larvae are all dead within 7.8 ± 1.7 days (fast) to 11.6 ± 0.6 days (slow) (GEN05)', () => {
    expect(signs.firstLarvaeAllDead).toEqual({ earliest: '2026-06-07', latest: '2026-06-14' });
  });

  it('says beside the arithmetic that signs were published as showing about 12.5 days after feeding (NZ-TIME)', () => {
    expect(signs.signsAsPublished).toEqual({ earliest: '2026-06-13', latest: '2026-06-14' });
  });

  it('13, 14: with infection on day 4 the last die about 2.8 and 6.2 to 6.6 days after capping (arithmetic)', () => {
    expect(lastDeathAfterCapping(daysUntilAllDead.fast.value)).toBeCloseTo(2.8, 12);
    expect(lastDeathAfterCapping(daysUntilAllDead.slow.value)).toBeCloseTo(6.2, 12);
    expect(lastDeathAfterCapping(daysUntilAllDead.slowest.value)).toBeCloseTo(6.6, 12);
    expect(workerClock.capped).toBe(9);
  });

  it('15: no scale before 35 to 42 days (arithmetic on MAAREC-SCALE and GEN05)', () => {
    expect(signs.scale).toEqual({ earliest: '2026-07-06', latest: '2026-07-13' });
  });

  it('16: the first remains rope for about three weeks after death, give or take one (BOOKLET)', () => {
    expect(signs.deadBrood).toEqual({ earliest: '2026-06-06', latest: '2026-06-09' });
    expect(signs.firstRemainsRopeUntil).toEqual({ earliest: '2026-06-20', latest: '2026-07-07' });
  });

  it('never names a last day, and refuses what is no day', () => {
    expect(signs.latest).toBeNull();
    expect(() => earliestSigns({ exposedOn: '2026-06-31' })).toThrow(/^exposedOn must be a calendar day/);
  });
});
