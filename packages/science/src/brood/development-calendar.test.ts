import { describe, expect, it } from 'vitest';
import { broodBalance, eggsPerDay, stageDays, steadyRatio, totalDays, workerClock } from './development-calendar.ts';

describe('the development calendar', () => {
  it('1: a worker hatches, stretches, is capped, pupates and emerges on days 3, 8, 9, 12, 21 (NZ-DEV)', () => {
    expect(Object.values(workerClock)).toEqual([3, 8, 9, 12, 21]);
  });

  it('2: worker, drone and queen take 21, 24 and 16 days (DEV-CASTE)', () => {
    expect([totalDays('worker'), totalDays('drone'), totalDays('queen')]).toEqual([21, 24, 16]);
  });

  it('3: the stages add up, and the clock agrees with them (DEV-CASTE, arithmetic)', () => {
    expect(stageDays.worker).toMatchObject({ egg: 3, larva: 6, capped: 12 });
    expect(stageDays.drone).toMatchObject({ egg: 3, larva: 6.5, capped: 14.5 });
    expect(stageDays.queen).toMatchObject({ egg: 3, larva: 5.5, capped: 7.5 });
    expect(workerClock.capped).toBe(stageDays.worker.egg + stageDays.worker.larva);
    expect(workerClock.emerges).toBe(totalDays('worker'));
  });

  it('4: steady worker brood is 1 : 2 : 4, give or take a quarter (RATIO)', () => {
    expect(steadyRatio('worker')).toEqual({ egg: 1, larva: 2, capped: 4 });
    expect(broodBalance({ egg: 1000, larva: 2000, capped: 4000 })).toBe('steady');
    expect(broodBalance({ egg: 1000, larva: 2450, capped: 4900 })).toBe('steady');
    expect(broodBalance({ egg: 1000, larva: 2000, capped: 2000 })).toBe('capped brood missing');
    expect(broodBalance({ egg: 100, larva: 2000, capped: 4000 })).toBe('eggs missing');
    expect(broodBalance({ egg: 3000, larva: 3000, capped: 6000 })).toBe('growing or shrinking');
  });

  it('5: 12,000 capped worker cells are 1,000 eggs a day (arithmetic)', () => {
    expect(eggsPerDay(12_000)).toBe(1000);
  });

  it('refuses what cannot be', () => {
    expect(() => eggsPerDay(-1)).toThrow(/from 0/);
    expect(() => broodBalance({ egg: 0, larva: 0, capped: 0 })).toThrow(/no brood/);
  });
});
