import type { DutyLine, Owed } from '@combside/contract/owed';
import type { VisitLine } from '@combside/contract/visits';
import { expect, test } from 'vitest';
import { dutiesOnce, owedByTime } from './owed-by-time.ts';

const day = { start: '2027-05-03T22:00:00.000Z', end: '2027-05-04T22:00:00.000Z' };
const visit = (name: string, plannedFor: string | null, startedAt: string | null = null): VisitLine => ({
  visit: name,
  apiary: 'a',
  apiaryName: name,
  district: 'quillmoor',
  inspector: 'i',
  inspectorName: null,
  reason: 'routine',
  plannedFor,
  startedAt,
  endedAt: null,
  colonies: 0,
  results: [],
});
const duty = (apiary: string, due: string | null, change: Partial<DutyLine> = {}): DutyLine => ({
  duty: 'look again',
  rule: 'r',
  owedBy: 'inspector',
  condition: null,
  apiary,
  apiaryName: apiary,
  colony: null,
  colonyLabel: null,
  since: '2027-05-01T10:00:00.000Z',
  notBefore: null,
  due,
  promptness: null,
  late: false,
  article: '',
  ...change,
});

test('what is owed stands under its time, visits by their hour, duties of an apiary together', () => {
  const owed: Owed = {
    visits: [
      visit('evening', '2027-05-04T21:59:00.000Z'),
      visit('midnight', '2027-05-04T22:00:00.000Z'),
      visit('morning', '2027-05-03T22:00:00.000Z'),
      visit('yesterday', '2027-05-03T21:59:00.000Z'),
      visit('seventh day', '2027-05-10T21:59:00.000Z'),
      visit('eighth day', '2027-05-10T22:00:00.000Z'),
      visit('asked for', null),
      visit('under way', '2027-05-01T08:00:00.000Z', '2027-05-01T08:05:00.000Z'),
    ],
    more: false,
    duties: [
      duty('again', '2027-04-01T00:00:00.000Z', { late: true, colonyLabel: '2' }),
      duty('report', '2027-05-02T00:00:00.000Z', { late: true, duty: 'notify' }),
      duty('report', '2027-05-01T00:00:00.000Z', { late: true, colonyLabel: '3' }),
      duty('standing', null, { duty: 'standstill' }),
      duty('soon', '2027-05-06T00:00:00.000Z'),
    ],
    now: '2027-05-04T08:00:00.000Z',
    position: 1,
  };
  const groups = Object.fromEntries(
    owedByTime(owed, day).map(({ time, visits, duties }) => [
      time,
      [...visits.map((one) => one.visit), ...duties.map((one) => `${one.apiary} ${one.duties.length} ${one.due}`)],
    ]),
  );
  expect(groups).toEqual({
    late: ['yesterday', 'report 2 2027-05-01T00:00:00.000Z', 'again 1 2027-04-01T00:00:00.000Z'],
    today: ['under way', 'morning', 'evening'],
    week: ['midnight', 'seventh day', 'soon 1 2027-05-06T00:00:00.000Z'],
    later: ['eighth day'],
    'no-day': ['asked for', 'standing 1 null'],
  });
});

test('a kind of duty is said once, with its colonies', () => {
  const line = (colonyLabel: string | null, kind = 'specimen') => duty('a', null, { duty: kind, colonyLabel });
  expect(dutiesOnce([line('1'), line('2'), line('1'), line(null, 'notify')])).toEqual([
    { duty: 'specimen', colonies: ['1', '2'] },
    { duty: 'notify', colonies: [] },
  ]);
});
