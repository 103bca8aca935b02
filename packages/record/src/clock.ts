import { dayMilliseconds } from '@combside/calendar/day';
import { instantOf, readInstant } from '@combside/calendar/instant';
import { RecordError } from './errors.ts';

/**
 * The instants of the record, and the hybrid logical clock (Kulkarni, Demirbas, Madappa, Avva and Leone 2014, "Logical
 * Physical Clocks", OPODIS; from memory): a reading is never behind what this side has seen, and stays near wall time.
 *
 * A reading is text, `000001777883465120.000003`: milliseconds since 1970 in 18 digits, then a counter in 6. Texts
 * compare as the clock does.
 */

const lastMillisecond = 253_402_300_799_999; // 9999-12-31T23:59:59.999Z
const lastCount = 999_999;

/** RFC 3339 text in UTC. @throws RecordError `bad instant` outside 1970 to 9999 */
export function instantAt(milliseconds: number): string {
  if (!Number.isInteger(milliseconds) || milliseconds < 0 || milliseconds > lastMillisecond) {
    throw new RecordError('bad instant', `${milliseconds} ms`);
  }
  return instantOf(milliseconds);
}

/** Milliseconds since 1970 of a text as `instantAt` writes it. @throws RecordError `bad instant` */
export function millisecondsAt(instant: string): number {
  const milliseconds = readInstant(instant);
  if (milliseconds === null || milliseconds < 0) throw new RecordError('bad instant', instant);
  return milliseconds;
}

interface Reading {
  readonly milliseconds: number;
  readonly count: number;
}

/** @throws RecordError `bad clock` */
export function readClock(text: string): Reading {
  const found = /^(\d{18})\.(\d{6})$/.exec(text);
  const milliseconds = Number(found?.[1]);
  if (found === null || milliseconds > lastMillisecond) throw new RecordError('bad clock', text);
  return { milliseconds, count: Number(found[2]) };
}

function writeClock(reading: Reading): string {
  return `${String(reading.milliseconds).padStart(18, '0')}.${String(reading.count).padStart(6, '0')}`;
}

/**
 * The reading for something that happens now, later than everything this side wrote or saw.
 *
 * @param last newest reading of this side, null on the first
 * @param wall this device's wall clock, milliseconds since 1970
 */
export function tick(last: string | null, wall: number): string {
  const before = last === null ? { milliseconds: -1, count: 0 } : readClock(last);
  if (wall > before.milliseconds) return writeClock({ milliseconds: wall, count: 0 });
  if (before.count < lastCount) return writeClock({ milliseconds: before.milliseconds, count: before.count + 1 });
  return writeClock({ milliseconds: before.milliseconds + 1, count: 0 });
}

/** True when a reading runs more than 24 hours ahead of a wall clock. */
export function runsAhead(clock: string, wall: number): boolean {
  return readClock(clock).milliseconds > wall + dayMilliseconds;
}

/**
 * This side's newest reading after it has seen another's. A clock that runs more than 24 hours ahead of our wall clock
 * never moves ours: one phone set to the wrong year must not drag everybody along.
 */
export function observe(last: string | null, seen: string, wall: number): string | null {
  if (runsAhead(seen, wall)) return last;
  return last === null || seen > last ? seen : last;
}
