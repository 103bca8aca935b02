import { dayMilliseconds } from '@combside/calendar/day';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seededChance } from './acceptance/node-ports.ts';
import { instantAt, millisecondsAt, observe, readClock, runsAhead, tick } from './clock.ts';
import { identifier } from './entry.ts';
import { newIdentifier } from './identifier.ts';

describe('instants by arithmetic', () => {
  test('agree with the platform from 1970 to 9999', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 253_402_300_799_999 }), (milliseconds) => {
        expect(instantAt(milliseconds)).toBe(new Date(milliseconds).toISOString());
        expect(millisecondsAt(instantAt(milliseconds))).toBe(milliseconds);
      }),
      { seed: 1970, numRuns: 2000 },
    );
  });

  test.each(['2000-02-29', '2100-02-28', '2100-03-01', '1970-01-01', '9999-12-31', '2024-12-31'])('%s', (date) => {
    const instant = `${date}T23:59:59.999Z`;
    expect(millisecondsAt(instant)).toBe(Date.parse(instant));
    expect(instantAt(Date.parse(instant))).toBe(instant);
  });

  test('what is no instant is an error', () => {
    for (const wrong of [
      '2026-02-30T00:00:00.000Z',
      '2026-01-01T24:00:00.000Z',
      '2026-01-01',
      '1969-12-31T23:59:59.999Z',
    ]) {
      expect(() => millisecondsAt(wrong)).toThrow('bad instant');
    }
    for (const wrong of [-1, 1.5, Number.NaN, 253_402_300_800_000])
      expect(() => instantAt(wrong)).toThrow('bad instant');
  });
});

describe('the hybrid clock', () => {
  const walls = fc.integer({ min: 0, max: 4_102_444_800_000 });

  test('a tick is later than everything seen, and stays at wall time when it can', () => {
    fc.assert(
      fc.property(walls, walls, (last, wall) => {
        const before = tick(null, last);
        const after = tick(before, wall);
        expect(after > before).toBe(true);
        if (wall > last) expect(readClock(after)).toEqual({ milliseconds: wall, count: 0 });
      }),
      { seed: 24, numRuns: 1000 },
    );
  });

  test('a reading more than 24 hours ahead never moves ours; others do', () => {
    fc.assert(
      fc.property(walls, fc.integer({ min: -1_000_000_000, max: 1_000_000_000 }), (wall, ahead) => {
        const ours = tick(null, wall);
        const theirs = tick(null, Math.max(0, wall + ahead));
        const seen = observe(ours, theirs, wall);
        if (ahead > dayMilliseconds) expect(seen).toBe(ours);
        else expect(seen).toBe(theirs > ours ? theirs : ours);
        expect(runsAhead(theirs, wall)).toBe(ahead > dayMilliseconds);
      }),
      { seed: 25, numRuns: 1000 },
    );
  });

  test('a thousand ticks within one millisecond, and the counter’s end', () => {
    let reading = tick(null, 1000);
    for (let i = 0; i < 1000; i++) {
      const next = tick(reading, 1000);
      expect(next > reading).toBe(true);
      reading = next;
    }
    expect(readClock(reading)).toEqual({ milliseconds: 1000, count: 1000 });
    expect(readClock(tick('000000000000001000.999999', 1000))).toEqual({ milliseconds: 1001, count: 0 });
    expect(() => readClock('1000.1')).toThrow('bad clock');
  });
});

test('identifiers are UUIDs of version 7 that carry their millisecond', () => {
  const chance = seededChance(7);
  const milliseconds = 1_777_883_465_120;
  const ids = Array.from({ length: 200 }, () => newIdentifier({ now: () => milliseconds }, chance));
  for (const id of ids) {
    expect(identifier.safeParse(id).success).toBe(true);
    expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    expect(Number.parseInt(id.replaceAll('-', '').slice(0, 12), 16)).toBe(milliseconds);
  }
  expect(new Set(ids).size).toBe(200);
});
