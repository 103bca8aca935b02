import { describe, expect, test } from 'vitest';
import { arrival, smallSite, startAt } from '../acceptance/small-site.ts';
import { planVisit, visitsToMake } from './today.ts';

const day = { start: '2027-05-04T00:00:00.000Z', end: '2027-05-05T00:00:00.000Z' };

describe('Today', () => {
  test('puts running visits first, then late ones, then by the hour, and leaves ended and other people’s out', () => {
    const site = smallSite();
    const apiary = site.ledger.apiary(site.apiary);
    const plan = (plannedFor: string, inspector = site.inspector): string => {
      const visit = site.newId();
      site.carryOut(
        planVisit({ visit, planned: null, apiary, inspector, reason: 'routine', plannedFor }),
        '2027-05-01T09:00:00.000Z',
      );
      return visit;
    };
    const afternoon = plan('2027-05-04T14:00:00.000Z');
    const morning = plan('2027-05-04T08:00:00.000Z');
    const late = plan('2027-05-02T08:00:00.000Z');
    const next = plan('2027-05-05T00:00:00.000Z');
    const others = plan('2027-05-04T10:00:00.000Z', site.keeper);
    const running = plan('2027-05-04T09:00:00.000Z');
    site.carryOut(startAt(site, running, { planned: site.ledger.visit(running) }), arrival);
    const all = [afternoon, morning, late, next, others, running].map((one) => site.ledger.visit(one));
    const today = visitsToMake({ visits: all, apiaries: [apiary], inspector: site.inspector, day });
    expect(today.map((one) => [one.visit, one.state])).toEqual([
      [running, 'running'],
      [late, 'late'],
      [morning, 'today'],
      [afternoon, 'today'],
      [next, 'later'],
    ]);
    expect(today[0]).toMatchObject({ name: 'Test Bank', coloniesRegistered: 3 });
  });

  test('a visit that began cannot be planned anew', () => {
    const site = smallSite();
    const visit = site.newId();
    site.carryOut(startAt(site, visit), arrival);
    const act = planVisit({
      visit,
      planned: site.ledger.visit(visit),
      apiary: site.ledger.apiary(site.apiary),
      inspector: site.inspector,
      reason: 'routine',
      plannedFor: arrival,
    });
    expect(act).toMatchObject({ ok: false, reason: 'casework.refused.visit-running' });
  });
});
