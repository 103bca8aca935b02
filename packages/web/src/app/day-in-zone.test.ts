import { expect, test } from 'vitest';
import { dayEdges, dayInZone, startOfDay } from './day-in-zone.ts';

const hours = (edges: { start: string; end: string }) => (Date.parse(edges.end) - Date.parse(edges.start)) / 3_600_000;

// Summer time in central Europe: last Sunday of March to last Sunday of October (Directive 2000/84/EC, Articles 2 and 3).
test('a day of the year has 24 hours, the last Sunday of March 23, the last Sunday of October 25', () => {
  expect(dayEdges('2026-06-10T10:00:00.000Z', 'Europe/Berlin')).toEqual({
    start: '2026-06-09T22:00:00.000Z',
    end: '2026-06-10T22:00:00.000Z',
  });
  expect(hours(dayEdges('2026-03-29T10:00:00.000Z', 'Europe/Berlin'))).toBe(23);
  expect(hours(dayEdges('2026-10-25T10:00:00.000Z', 'Europe/Berlin'))).toBe(25);
});

test('just before and just after local midnight fall on different days', () => {
  expect(dayEdges('2026-06-09T21:59:59.999Z', 'Europe/Berlin').end).toBe('2026-06-09T22:00:00.000Z');
  expect(dayEdges('2026-06-09T22:00:00.000Z', 'Europe/Berlin').start).toBe('2026-06-09T22:00:00.000Z');
});

test('south and west of Greenwich', () => {
  expect(dayEdges('2026-01-15T02:00:00.000Z', 'America/St_Johns').start).toBe('2026-01-14T03:30:00.000Z');
  expect(dayEdges('2026-01-15T02:00:00.000Z', 'Pacific/Auckland').start).toBe('2026-01-14T11:00:00.000Z');
});

test('an instant falls on the day its place shows', () => {
  expect(dayInZone('2026-12-31T23:30:00.000Z', 'Europe/Berlin')).toBe('2027-01-01');
  expect(dayInZone('2028-03-01T05:00:00.000Z', 'America/Los_Angeles')).toBe('2028-02-29');
  expect(dayInZone('2026-10-25T22:59:59.999Z', 'Europe/Berlin')).toBe('2026-10-25');
});

// The language itself as the reference: it takes the time zone of the machine.
test('days start when the machine says so, in its own zone, all through the years', () => {
  const here = Intl.DateTimeFormat().resolvedOptions().timeZone;
  for (let day = 0; day < 3 * 366; day++) {
    const local = new Date(2026, 0, 1 + day);
    const two = (value: number) => String(value).padStart(2, '0');
    const text = `${local.getFullYear()}-${two(local.getMonth() + 1)}-${two(local.getDate())}`;
    expect(startOfDay(text, here)).toBe(local.toISOString());
    expect(dayInZone(local.toISOString(), here)).toBe(text);
  }
});

// IANA zone of Cuba: clocks go forward at midnight to one, and back from one to midnight.
test('where clocks change at midnight, a day starts at its first instant', () => {
  expect(startOfDay('2026-03-08', 'America/Havana')).toBe('2026-03-08T05:00:00.000Z');
  expect(startOfDay('2026-11-01', 'America/Havana')).toBe('2026-11-01T04:00:00.000Z');
});
