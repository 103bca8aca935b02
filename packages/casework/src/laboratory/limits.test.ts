import { summarise } from '@combside/record/fold';
import type { LaboratoryLimitsBody } from '@combside/record/kinds/laboratory-limits';
import type { Folded } from '@combside/record/states';
import { describe, expect, test } from 'vitest';
import { smallSite } from '../acceptance/small-site.ts';
import { correctLimits, type StandingLimits, standingLimits, stateLimits } from './limits.ts';

const limits: LaboratoryLimitsBody = {
  laboratory: 'Invented laboratory',
  method: 'culture',
  material: 'brood-nest honey',
  unit: 'g',
  statedOn: '2026-01-10',
  source: 'letter of that day, invented',
  classes: [
    { name: 'few', from: 0 },
    { name: 'some', from: 100 },
  ],
  countable: null,
};
const written = { entry: 'e1', by: 'p', device: 'd', at: '2026-01-11T08:00:00.000Z', clock: '' };
const folded: Folded<LaboratoryLimitsBody> = { written, body: limits, original: limits, corrections: [] };
const standing: StandingLimits[] = [{ laboratory: 'l1', limits: folded }];
const state = (change: Partial<LaboratoryLimitsBody>, known = standing) =>
  stateLimits({ limits: { ...limits, ...change }, standing: known, newLaboratory: 'l2' });

describe('stating limits', () => {
  test('a laboratory known by name, however it is spaced, keeps its identity; another gets its own', () => {
    expect(state({ statedOn: '2026-07-01', laboratory: ' invented  Laboratory' })).toMatchObject({
      ok: true,
      proposals: [{ kind: 'laboratory-limits', about: { type: 'laboratory', id: 'l1' } }],
    });
    expect(state({ laboratory: 'Other' })).toMatchObject({ ok: true, proposals: [{ about: { id: 'l2' } }] });
  });

  test('the same thing for the same day is not stated twice', () => {
    expect(state({ classes: [{ name: 'any', from: 0 }] })).toMatchObject({
      ok: false,
      reason: 'casework.refused.limits-stated-already',
    });
    expect(state({ unit: 'ml' })).toMatchObject({ ok: true });
  });

  test('limits that are not whole are refused', () => {
    const wrong: Partial<LaboratoryLimitsBody>[] = [
      { source: ' ' },
      { statedOn: '2026-13-40' },
      { classes: [] },
      { classes: [{ name: 'few', from: 5 }] },
      { classes: [limits.classes[1] as never, limits.classes[0] as never] },
      { countable: { lowest: 300, highest: 30 } },
    ];
    for (const change of wrong) {
      expect(state(change, []), JSON.stringify(change)).toMatchObject({ ok: false, reason: 'casework.refused.shape' });
    }
  });
});

describe('correcting limits', () => {
  const wrong = standing[0] as StandingLimits;
  test('needs a reason and a change, and names the entry it corrects', () => {
    const changed = { ...limits, source: 'letter of 9 January, invented' };
    expect(correctLimits({ wrong, limits: changed, reason: ' ' })).toMatchObject({
      reason: 'casework.refused.reason-missing',
    });
    expect(correctLimits({ wrong, limits: { ...limits }, reason: 'typed wrong' })).toMatchObject({
      reason: 'casework.refused.nothing-changed',
    });
    expect(correctLimits({ wrong, limits: changed, reason: 'typed wrong' })).toMatchObject({
      ok: true,
      proposals: [
        { kind: 'correction', about: { type: 'laboratory', id: 'l1' }, body: { corrects: 'e1', body: changed } },
      ],
    });
  });
});

test('through the record: a later statement stands beside the earlier, a correction beside what was first written', () => {
  const site = smallSite();
  const about = { type: 'laboratory', id: site.newId() } as const;
  const at = (day: number) => `2026-08-0${day}T09:00:00.000Z`;
  const state = () => site.ledger.laboratory(about.id);
  const known = () => standingLimits([state()]);
  site.carryOut(stateLimits({ limits, standing: [], newLaboratory: about.id }), at(1));
  const later = { ...limits, statedOn: '2026-07-01', classes: [{ name: 'any', from: 0 }] };
  site.carryOut(stateLimits({ limits: later, standing: known(), newLaboratory: site.newId() }), at(2));
  expect(known().map((one) => one.limits.body.statedOn)).toEqual(['2026-07-01', '2026-01-10']);
  const [wrong] = known() as [StandingLimits];
  site.carryOut(correctLimits({ wrong, limits: { ...later, source: 'page 2' }, reason: 'read again' }), at(3));
  const [corrected] = known();
  expect(corrected?.limits.body.source).toBe('page 2');
  expect(corrected?.limits.original.source).toBe(limits.source);
  expect(corrected?.limits.corrections[0]?.reason).toBe('read again');
  expect(summarise(state())).toMatchObject({ name: 'Invented laboratory' });
});
