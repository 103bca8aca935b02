import { dayAt } from '@combside/calendar/day';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { acceptDay } from './calendar-day.ts';
import { cellDates } from './cell-dates.ts';
import type { Caste } from './development-calendar.ts';
import { releaseThisSeason } from './release-this-season.ts';

describe('calendar days', () => {
  it('counts as Date does, over four centuries of leap years (the language itself as the reference)', () => {
    fc.assert(
      fc.property(fc.integer({ min: -150_000, max: 150_000 }), (number) => {
        const text = new Date(number * 86_400_000).toISOString().slice(0, 10);
        expect(dayAt(number)).toBe(text);
        expect(acceptDay('day', text)).toBe(number);
      }),
      { seed: 7, numRuns: 500 },
    );
  });

  it('refuses a day that does not exist, naming the field', () => {
    for (const wrong of ['2026-02-29', '2026-13-01', '2026-00-10', '1 June', '', undefined]) {
      expect(() => acceptDay('seenOn', wrong)).toThrow(/^seenOn must be a calendar day/);
    }
  });
});

describe('the dates of a cell', () => {
  const seenOn = '2026-06-21';

  it('1: a worker egg laid that day hatches, is capped and emerges 3, 9 and 21 days on (NZ-DEV)', () => {
    const { laid, hatches, capped, emerges } = cellDates({ caste: 'worker', stage: 'egg', seenOn });
    expect([laid.latest, hatches.latest, capped.latest, emerges.latest]).toEqual([
      '2026-06-21',
      '2026-06-24',
      '2026-06-30',
      '2026-07-12',
    ]);
    expect(laid.earliest).toBe('2026-06-18');
  });

  it('2: from laying to emerging 21, 24 and 16 days (DEV-CASTE)', () => {
    const days = (caste: Caste) => {
      const { laid, emerges } = cellDates({ caste, stage: 'egg', seenOn });
      return acceptDay('emerges', emerges.latest) - acceptDay('laid', laid.latest);
    };
    expect([days('worker'), days('drone'), days('queen')]).toEqual([21, 24, 16]);
  });

  it('3: a capped cell was laid 9 to 21 days ago in worker brood, 9.5 to 24 in drone brood, outward (DEV-CASTE)', () => {
    expect(cellDates({ caste: 'worker', stage: 'capped', seenOn }).laid).toEqual({
      earliest: '2026-05-31',
      latest: '2026-06-12',
    });
    expect(cellDates({ caste: 'drone', stage: 'capped', seenOn }).laid).toEqual({
      earliest: '2026-05-28',
      latest: '2026-06-12',
    });
  });

  it('tells more of a worker cell that was opened: a pupa is 12 to 21 days old (NZ-DEV)', () => {
    expect(cellDates({ caste: 'worker', stage: 'pupa', seenOn }).emerges).toEqual({
      earliest: '2026-06-21',
      latest: '2026-06-30',
    });
    expect(() => cellDates({ caste: 'drone', stage: 'pupa', seenOn })).toThrow(/stage must be/);
  });
});

describe('release this season', () => {
  // Two looks at least 8 weeks apart, the first at the earliest 2 months after: as a rule of law may ask (invented case).
  const asked = { firstLookAfterDays: 61, looks: 2, daysBetweenLooks: 56 };

  it('holds all looks while there is brood, and says until when (NZ-DEV, arithmetic)', () => {
    const season = releaseThisSeason({
      ...asked,
      countedFrom: '2026-05-04',
      lastEggsOn: '2026-09-30',
      firstEggsOn: null,
    });
    expect(season).toMatchObject({
      lastOpenBrood: '2026-10-09',
      lastCappedBrood: '2026-10-21',
      notBefore: '2026-08-29',
      thisSeason: true,
    });
    expect(season.looks.map((look) => look.earliest)).toEqual(['2026-07-04', '2026-08-29']);
  });

  it('puts a look off to the first capped brood of next season when none is left', () => {
    const late = { ...asked, countedFrom: '2026-07-20', lastEggsOn: '2026-09-30' };
    const season = releaseThisSeason({ ...late, firstEggsOn: '2027-02-20' });
    expect(season.looks[1]).toEqual({ earliest: '2027-03-01', brood: 'open and capped brood', waitsForBrood: true });
    expect(season.thisSeason).toBe(false);
    expect(releaseThisSeason({ ...late, firstEggsOn: null })).toMatchObject({ notBefore: null, thisSeason: false });
  });

  it('marks a look that falls where only capped brood is left', () => {
    const season = releaseThisSeason({
      countedFrom: '2026-09-01',
      firstLookAfterDays: 40,
      looks: 1,
      daysBetweenLooks: 0,
      lastEggsOn: '2026-09-30',
      firstEggsOn: null,
    });
    expect(season.looks).toEqual([{ earliest: '2026-10-11', brood: 'capped brood only', waitsForBrood: false }]);
  });

  it('claims nothing about the season when nobody stated the end of laying, and refuses a spring before the autumn', () => {
    const open = { ...asked, countedFrom: '2026-05-04', firstEggsOn: null };
    expect(releaseThisSeason({ ...open, lastEggsOn: null })).toMatchObject({ thisSeason: null, lastOpenBrood: null });
    expect(() => releaseThisSeason({ ...open, lastEggsOn: '2026-09-30', firstEggsOn: '2026-09-30' })).toThrow(
      /after lastEggsOn/,
    );
    expect(() => releaseThisSeason({ ...open, lastEggsOn: null, looks: 0 })).toThrow(/looks must be/);
  });
});
