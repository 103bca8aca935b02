import type { ApiaryBody } from '@combside/record/kinds/apiary';
import type { KeeperBody } from '@combside/record/kinds/keeper';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arrival, hive, siteBody, smallSite } from '../acceptance/small-site.ts';
import { newApiary } from './apiary.ts';
import { newColony } from './colony.ts';
import { metresBetween } from './distance.ts';
import { proposeDuplicates } from './duplicates.ts';
import { historyOf } from './history.ts';
import { changeKeeper, newKeeper } from './keeper.ts';
import { keptOf, mergeApiaries, mergeKeepers, takeApart, tellApart } from './merge.ts';
import type { ApiaryStanding, KeeperStanding } from './rows.ts';
import { withReason } from './with-reason.ts';

const id = (number: number) => `01900000-0000-7000-8000-${String(number).padStart(12, '0')}`;
const keeper = (number: number, body: Partial<KeeperBody>, notTheSame: string[] = []): KeeperStanding => ({
  ...{ id: id(number), standing: [], mergedInto: null, notTheSame },
  body: {
    name: 'Ann Bell',
    number: null,
    addressWords: '',
    telephone: '',
    email: '',
    language: 'en',
    trade: 'hobby',
    ...body,
  },
});
const site = (number: number, body: Partial<ApiaryBody>): ApiaryStanding => ({
  ...{ id: id(number), standing: [], mergedInto: null, notTheSame: [] },
  body: { ...siteBody, ...body },
});
const at = (latitude: number, longitude: number, uncertaintyMetres = 8): ApiaryBody['position'] => ({
  ...{ latitude, longitude, uncertaintyMetres },
  how: 'measured on site',
});
const reasonsOf = (keepers: KeeperStanding[], apiaries: ApiaryStanding[] = []) =>
  proposeDuplicates({ keepers, apiaries }).map(({ reasons }) =>
    reasons.map((one) => one.id.replace('register.duplicate.', '')),
  );

describe('keepers who may be one', () => {
  test.each([
    ['one number, written in two ways', { number: 'QM-0012' }, { name: 'X', number: 'qm 0012' }, ['same-number']],
    [
      'one telephone and one name',
      { telephone: '030 1234567' },
      { name: 'Bell, Ann', telephone: '+49 30 1234567' },
      ['same-telephone', 'same-name'],
    ],
    [
      'a slip of the pen at one address',
      { addressWords: 'Mill Lane 1' },
      { name: 'Ann Bel', addressWords: 'mill lane 1' },
      ['like-name-same-address'],
    ],
    ['one mail address', { email: 'a@b.example' }, { name: 'Somebody Else', email: 'A@b.example' }, ['same-mail']],
  ])('%s', (_, one, two, reasons) => {
    expect(reasonsOf([keeper(1, one), keeper(2, two)])).toEqual([reasons]);
  });

  test('two numbers of one register are two keepers, and who was told apart stays apart', () => {
    expect(reasonsOf([keeper(1, { number: '1' }), keeper(2, { number: '2' })])).toEqual([]);
    expect(reasonsOf([keeper(1, {}), keeper(2, {}, [id(1)])])).toEqual([]);
  });

  test('one telephone of a whole association says nothing', () => {
    const many = Array.from({ length: 40 }, (_, n) =>
      keeper(n, { name: `Keeper ${n} x${n}`, telephone: '0301234567' }),
    );
    expect(reasonsOf(many)).toEqual([]);
  });
});

describe('apiaries that may be one', () => {
  const bell = id(90);
  test.each([
    [
      'near, one keeper',
      { position: at(56, 3), keeper: bell, name: 'Mill' },
      { position: at(56.0002, 3), keeper: bell, name: 'Ford' },
      ['same-place', 'same-keeper'],
    ],
    [
      'near, one found at the roadside',
      { position: at(56, 3), keeper: bell, name: 'Mill' },
      { position: at(56, 3.0003), keeper: null, name: 'Roadside' },
      ['same-place', 'keeper-not-known'],
    ],
    [
      'as far as they are uncertain',
      { position: at(56, 3, 300), keeper: bell },
      { position: at(56.004, 3, 300), keeper: bell },
      ['same-place', 'same-keeper', 'like-name'],
    ],
  ])('%s', (_, one, two, reasons) => {
    expect(reasonsOf([], [site(1, one), site(2, two)])).toEqual([reasons]);
  });

  test.each([
    ['too far apart', { position: at(56, 3), keeper: bell }, { position: at(56.001, 3), keeper: bell }],
    [
      'two keepers side by side',
      { position: at(56, 3), keeper: bell, name: 'Mill' },
      { position: at(56, 3), keeper: id(91), name: 'Ford' },
    ],
    ['nobody knows where', { position: null, keeper: bell }, { position: null, keeper: bell }],
  ])('not: %s', (_, one, two) => {
    expect(reasonsOf([], [site(1, one), site(2, two)])).toEqual([]);
  });

  test('every pair near enough is found, anywhere on earth', () => {
    const spot = fc.record({
      latitude: fc.double({ min: -90, max: 90, noNaN: true }),
      longitude: fc.double({ min: -180, max: 180, noNaN: true }),
    });
    const step = fc.record({
      north: fc.double({ min: -0.01, max: 0.01, noNaN: true }),
      east: fc.double({ min: -0.03, max: 0.03, noNaN: true }),
    });
    const corners = fc.constantFrom(
      { latitude: 10, longitude: 180 },
      { latitude: 89.999, longitude: 0 },
      { latitude: 0, longitude: 0 },
      { latitude: -60, longitude: -180 },
    );
    fc.assert(
      fc.property(fc.oneof(spot, corners), step, ({ latitude, longitude }, { north, east }) => {
        const other = {
          latitude: Math.max(-90, Math.min(90, latitude + north)),
          longitude:
            longitude + east > 180
              ? longitude + east - 360
              : longitude + east < -180
                ? longitude + east + 360
                : longitude + east,
        };
        const rows = [
          site(1, { position: at(latitude, longitude, 400) }),
          site(2, { position: at(other.latitude, other.longitude, 400) }),
        ];
        const near = metresBetween({ latitude, longitude }, other) <= 830;
        expect(reasonsOf([], rows).length).toBe(near ? 1 : 0);
      }),
      { seed: 20_270_504, numRuns: 2000 },
    );
  });
});

describe('a merge', () => {
  const two = () => {
    const small = smallSite();
    const other = small.newId();
    const place = small.newId();
    small.carryOut(newKeeper(other, { ...keeper(1, { name: 'A. Bell', telephone: '1' }).body }), arrival);
    small.carryOut(newApiary(place, { ...siteBody, keeper: other }), arrival);
    return { small, other, place };
  };

  test('reads the younger record as part of the older, moves its apiaries, and loses neither history', () => {
    const { small, other, place } = two();
    const { ledger } = small;
    small.carryOut(
      mergeKeepers(ledger.keeper(other), ledger.keeper(small.keeper), {
        takes: ['telephone'],
        apiaries: [ledger.apiary(place)],
        reason: 'one person',
      }),
      arrival,
    );
    expect(ledger.keeper(small.keeper).keeper.current?.body.telephone).toBe('1');
    expect(ledger.apiary(place).apiary.current?.body.keeper).toBe(small.keeper);
    expect(ledger.keeper(other).keeper.current?.body.name).toBe('A. Bell');
    expect(historyOf(ledger.keeper(other)).map(({ what, why, other: into }) => [what, why, into])).toEqual([
      ['merged', 'one person', small.keeper],
      ['entered', null, null],
    ]);
    expect(
      mergeKeepers(ledger.keeper(other), ledger.keeper(small.keeper), { takes: [], apiaries: [], reason: 'again' }),
    ).toMatchObject({
      reason: 'casework.refused.merged-already',
    });
    small.carryOut(takeApart(ledger.keeper(other), 'two sisters'), arrival);
    expect(takeApart(ledger.keeper(other), 'x')).toMatchObject({ reason: 'casework.refused.not-merged' });
  });

  test('leaves colonies of one label where they are, and says so', () => {
    const { small, place } = two();
    const { ledger } = small;
    const double = small.newId();
    small.carryOut(newColony({ id: double, body: hive(place, '1'), at: ledger.apiary(place), colonies: [] }), arrival);
    const colonies = [...ledger.coloniesOf(small.apiary), ledger.colony(double)];
    const act = mergeApiaries(ledger.apiary(place), ledger.apiary(small.apiary), {
      takes: [],
      colonies,
      reason: 'one field',
    });
    expect(act).toMatchObject({ findings: [{ id: 'casework.register.same-label-stays', values: { count: 1 } }] });
    // The small site has three colonies; if it is the one that steps back, the two without a namesake go along.
    const moved = keptOf(place, small.apiary).kept === place ? ['colony', 'colony'] : [];
    expect(act.ok && act.proposals.map(({ kind }) => kind)).toEqual(['merge', ...moved]);
  });

  test('needs a reason, and two records', () => {
    const { small, other } = two();
    const { ledger } = small;
    expect(
      mergeKeepers(ledger.keeper(other), ledger.keeper(small.keeper), { takes: [], apiaries: [], reason: ' ' }),
    ).toMatchObject({
      reason: 'casework.refused.reason-missing',
    });
    expect(
      mergeKeepers(ledger.keeper(other), ledger.keeper(other), { takes: [], apiaries: [], reason: 'x' }),
    ).toMatchObject({
      reason: 'casework.refused.not-two-records',
    });
    expect(tellApart(ledger.keeper(other), ledger.apiary(small.apiary), 'x')).toMatchObject({
      reason: 'casework.refused.not-two-records',
    });
  });
});

test('a history says who changed what, and why', () => {
  const { ledger, keeper: of, carryOut, inspector, newId } = smallSite();
  carryOut(withReason(changeKeeper(ledger.keeper(of), { telephone: '42' }), 'rang us', newId), arrival);
  const [newest, first] = historyOf(ledger.keeper(of));
  expect(newest).toMatchObject({ what: 'changed', why: 'rang us', written: { by: inspector } });
  expect(newest?.fields.map(({ field, to }) => [field, to])).toEqual([['telephone', '42']]);
  expect(first).toMatchObject({ what: 'entered', fields: [] });
});
