import type { ApiarySummary, ColonySummary, MovementSummary } from '@combside/record/summary';
import { describe, expect, test } from 'vitest';
import { circumstancesFrom, contactWindowDays, leastForACount, withWhatWasSaid } from './circumstances.ts';

const base = { foldVersion: 1, contested: false, writtenByNewer: false };
const site = (id: string, keeper: string, district = 'north'): ApiarySummary => ({
  ...base,
  about: { type: 'apiary', id },
  name: id,
  number: null,
  district,
  keeper,
  latitude: null,
  longitude: null,
  uncertaintyMetres: null,
  coloniesRegistered: null,
  lastConfirmedOn: null,
  proposals: 0,
  mergedInto: null,
});
const colony = (id: string, apiary: string, change: Partial<ColonySummary> = {}): ColonySummary => ({
  ...base,
  about: { type: 'colony', id },
  apiary,
  label: id,
  hiveType: null,
  hiveState: 'living',
  examinations: 1,
  lastExaminedAt: '2027-05-01T10:00:00.000Z',
  lastVisit: null,
  lastClaim: 'nothing seen',
  lastResult: 'nothing seen with this look',
  suspected: [],
  ...change,
});
const suspect: Partial<ColonySummary> = {
  lastClaim: 'signs seen',
  lastResult: 'suspect',
  suspected: ['american-foulbrood'],
};
const moved = (id: string, from: string | null, to: string | null, change: Partial<MovementSummary> = {}) =>
  ({
    ...base,
    about: { type: 'movement', id },
    from,
    to,
    what: 'nuclei',
    quantity: 2,
    how: 'sold',
    latest: '2027-03-01',
    happened: true,
    ...change,
  }) as MovementSummary;

const of = {
  colony: 'own',
  apiary: 'here',
  observedAt: '2027-06-01T10:00:00.000Z',
  notifiable: ['american-foulbrood'],
} as const;
const sites = [site('here', 'k1'), site('sister', 'k1'), site('other', 'k2'), site('far', 'k3', 'south')];
const many = (count: number, apiary = 'other', change: Partial<ColonySummary> = {}) =>
  Array.from({ length: count }, (_, i) => colony(`${apiary} ${i} ${change.lastExaminedAt ?? ''}`, apiary, change));
const known = (colonies: readonly ColonySummary[], movements: readonly MovementSummary[] = []) =>
  circumstancesFrom(of, { colonies, apiaries: sites, movements });

describe('what is known before the look', () => {
  test('counts the district by season, this one and the one before, each only with enough colonies', () => {
    const lastYear = { lastExaminedAt: '2026-08-01T10:00:00.000Z' };
    const found = known([
      ...many(leastForACount - 1),
      colony('sick', 'other', suspect),
      ...many(leastForACount - 1, 'sister', lastYear),
      ...many(100, 'far', suspect),
    ]);
    expect(found.district).toEqual([
      { condition: 'american-foulbrood', confirmed: 1, examined: leastForACount, about: '2027' },
    ]);
  });

  test('counts neither the colony itself, nor what was not judged, nor what came after the look', () => {
    const found = known([
      colony('own', 'here', suspect),
      ...many(leastForACount, 'other', { lastClaim: 'not judged' }),
      ...many(leastForACount, 'other', { ...suspect, lastExaminedAt: '2027-07-01T10:00:00.000Z' }),
    ]);
    expect(found).toEqual({
      district: [],
      earlierCaseAtApiary: false,
      contactOfCase: false,
      honeyPositive: null,
      exposure: 'not known',
    });
  });

  test('knows a case at the apiary, and one in another apiary of the same keeper', () => {
    expect(known([colony('next', 'here', suspect)])).toMatchObject({
      earlierCaseAtApiary: true,
      exposure: 'apiary affected',
    });
    expect(known([colony('next', 'sister', suspect)])).toMatchObject({
      earlierCaseAtApiary: false,
      exposure: 'operation affected',
    });
    expect(known([colony('next', 'here', { ...suspect, suspected: ['european-foulbrood'] })])).toMatchObject({
      earlierCaseAtApiary: false,
    });
  });

  test('finds contact either way, within the window, by what can carry disease', () => {
    const sick = [colony('sick', 'other', suspect)];
    expect(known(sick, [moved('a', 'other', 'here')]).contactOfCase).toBe(true);
    expect(known(sick, [moved('a', 'here', 'other')]).contactOfCase).toBe(true);
    expect(known(sick, [moved('a', 'other', 'sister')]).contactOfCase).toBe(false);
    expect(known(sick, [moved('a', 'other', 'here', { what: 'queens' })]).contactOfCase).toBe(false);
    expect(known(sick, [moved('a', 'other', 'here', { happened: false })]).contactOfCase).toBe(false);
    expect(known(sick, [moved('a', 'other', 'here', { latest: '2027-06-02' })]).contactOfCase).toBe(false);
    expect(contactWindowDays).toBe(730);
    // 2027-05-01 less 730 days is 2025-05-01.
    expect(known(sick, [moved('a', 'other', 'here', { latest: '2025-05-01' })]).contactOfCase).toBe(true);
    expect(known(sick, [moved('a', 'other', 'here', { latest: '2025-04-30' })]).contactOfCase).toBe(false);
  });

  test('takes what the inspector was told of honey or bees, also where nothing could be looked up', () => {
    expect(withWhatWasSaid(null, { honeyPositive: null })).toBeNull();
    expect(withWhatWasSaid(null, { honeyPositive: true })).toMatchObject({
      honeyPositive: true,
      exposure: 'operation affected',
      contactOfCase: null,
    });
    const atApiary = known([colony('next', 'here', suspect)]);
    expect(withWhatWasSaid(atApiary, { honeyPositive: true })?.exposure).toBe('apiary affected');
    expect(withWhatWasSaid(atApiary, { honeyPositive: false })?.honeyPositive).toBe(false);
  });
});
