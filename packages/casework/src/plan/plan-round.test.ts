import { describe, expect, test } from 'vitest';
import { smallSite, startAt } from '../acceptance/small-site.ts';
import { askForVisit } from './ask-for-visit.ts';
import { planRound, reasonFor } from './plan-round.ts';
import { visitsToMake } from './today.ts';

const day = { start: '2027-05-04T00:00:00.000Z', end: '2027-05-05T00:00:00.000Z' };
const round = { firstAt: '2027-05-04T08:00:00.000Z', minutesBetween: 150 };

describe('a round', () => {
  test('puts its visits on the inspector’s Today, one behind the other, and takes up what was asked for', () => {
    const site = smallSite();
    const apiary = site.ledger.apiary(site.apiary);
    const asked = site.newId();
    site.carryOut(
      askForVisit({ visit: asked, apiary, takenBy: site.keeper, reason: 'request' }),
      '2027-05-01T09:00:00.000Z',
    );
    expect(
      visitsToMake({ visits: [site.ledger.visit(asked)], apiaries: [apiary], inspector: site.keeper, day }),
    ).toEqual([]);
    const fresh = site.newId();
    const act = planRound({
      ...round,
      inspector: site.inspector,
      stops: [
        { visit: fresh, asked: null, apiary, reason: 'contact' },
        { visit: asked, asked: site.ledger.visit(asked), apiary, reason: 'request' },
      ],
    });
    site.carryOut(act, '2027-05-03T09:00:00.000Z');
    const visits = [fresh, asked].map((one) => site.ledger.visit(one));
    expect(
      visitsToMake({ visits, apiaries: [apiary], inspector: site.inspector, day }).map((one) => [
        one.visit,
        one.plannedFor,
        one.reason,
      ]),
    ).toEqual([
      [fresh, '2027-05-04T08:00:00.000Z', 'contact'],
      [asked, '2027-05-04T10:30:00.000Z', 'request'],
    ]);
    expect(site.ledger.visit(asked).visit.contested).toEqual([]);
  });

  test('is refused as a whole: empty, an unknown reason, a visit that runs', () => {
    const site = smallSite();
    const apiary = site.ledger.apiary(site.apiary);
    const stop = { visit: site.newId(), asked: null, apiary, reason: 'routine' };
    expect(planRound({ ...round, inspector: site.inspector, stops: [] })).toMatchObject({
      ok: false,
      reason: 'casework.refused.round-empty',
    });
    expect(
      planRound({ ...round, inspector: site.inspector, stops: [stop, { ...stop, reason: 'a whim' }] }),
    ).toMatchObject({ ok: false, reason: 'casework.refused.unknown-reason' });
    const running = site.newId();
    site.carryOut(startAt(site, running), '2027-05-04T09:00:00.000Z');
    expect(
      planRound({
        ...round,
        inspector: site.inspector,
        stops: [{ ...stop, visit: running, asked: site.ledger.visit(running) }],
      }),
    ).toMatchObject({ ok: false, reason: 'casework.refused.visit-running' });
  });

  test('takes its reason from the weightiest ground', () => {
    const held = { held: 1, points: 1, from: null, metres: null, days: null };
    expect(reasonFor([{ ground: 'trade', ...held }])).toBe('contact');
    expect(reasonFor([{ ground: 'unconfirmed site', ...held }])).toBe('routine');
    expect(reasonFor([])).toBe('routine');
  });
});
