import { expect, test } from 'vitest';
import { dayEdges } from './day-edges.ts';

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
