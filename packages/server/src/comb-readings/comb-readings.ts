import type { ReadingPart } from '@combside/casework/comb/propose-reading';
import type { CombReadingProposed, CombReadingTold } from '@combside/contract/comb-readings';
import type { WallClock } from '@combside/record/ports';
import { readerVersion } from '@combside/science/comb/reading/reader-version';
import { sql } from 'kysely';
import type { Database } from '../store/database.ts';
import type { Rights } from '../store/rights.ts';
import type { CombReadingsPort, PhotographsPort } from '../store/server-ports.ts';
import type { ReadingThread } from './reading-thread.ts';

export interface CombReadings extends CombReadingsPort {
  /**
   * Reads what waits, one photograph at a time, until nothing waits, `stopping` falls, or the time is over. Two processes
   * may do so at once: each takes what the other has not begun.
   *
   * @returns how many were read or refused
   */
  readonly work: (forMilliseconds: number) => Promise<number>;
  /** Called when photographs were asked for; `start.ts` lets the background work begin. */
  onAsked: () => void;
}

/** So long a begun reading is left to whoever began it; then another may begin it anew. In milliseconds. */
const begunFor = 180_000;
/** A photograph that ended the thread so many times is given up. */
const mostAttempts = 3;

interface CombReadingsPorts {
  readonly database: Database;
  readonly photographs: Pick<PhotographsPort, 'readable'>;
  /** Where the bytes of a photograph lie. */
  readonly pathOf: (hash: string) => string;
  readonly thread: ReadingThread;
  readonly clock: WallClock;
  /** Falls when the server stops. */
  readonly stopping: AbortSignal;
  /** Told of what nobody expected; never of a body. */
  readonly complain: (error: unknown) => void;
}

/** Readings of stored photographs by the server, kept as proposals of the machine (`combside.comb_readings`). */
export function openCombReadings(ports: CombReadingsPorts): CombReadings {
  const { database, photographs, pathOf, thread, clock, stopping, complain } = ports;
  const instant = (): Date => new Date(clock.now());
  let working: Promise<number> | null = null;

  const readNext = async (): Promise<boolean> => {
    const taken = await takeNext(database, instant());
    if (!taken) return false;
    try {
      const answer = await thread.read({ path: pathOf(taken.photograph) });
      const part = 'part' in answer ? answer.part : null;
      await finish(database, taken.photograph, instant(), { state: answer.state, reasons: answer.reasons, part });
    } catch (error) {
      // Stopped in the middle: the row is taken up again when its time is over, or at once by the next start.
      if (stopping.aborted) await giveBack(database, taken.photograph).catch(complain);
      else {
        complain(error);
        if (taken.attempts >= mostAttempts) {
          await finish(database, taken.photograph, instant(), {
            state: 'failed',
            reasons: ['reader-failed'],
            part: null,
          });
        } else await giveBack(database, taken.photograph);
      }
    }
    return true;
  };

  const workFor = async (milliseconds: number): Promise<number> => {
    const until = performance.now() + milliseconds;
    let done = 0;
    try {
      while (!stopping.aborted && performance.now() < until && (await readNext())) done++;
    } finally {
      await thread.end();
    }
    return done;
  };
  stopping.addEventListener('abort', () => void thread.end());

  const sorted = async (hashes: readonly string[], rights: Rights) => {
    const known: string[] = [];
    const unknown: string[] = [];
    for (const hash of new Set(hashes)) ((await photographs.readable(hash, rights)) ? known : unknown).push(hash);
    return { known, unknown };
  };

  const combReadings: CombReadings = {
    onAsked: () => undefined,

    ask: async (hashes, rights, now) => {
      const { known, unknown } = await sorted(hashes, rights);
      if (known.length > 0) {
        await database.sql
          .insertInto('combside.comb_readings')
          .values(
            known.map((photograph) => ({
              photograph,
              reader_version: readerVersion,
              state: 'waiting' as const,
              asked_at: now.toISOString(),
            })),
          )
          .onConflict((conflict) => conflict.doNothing())
          .execute();
      }
      const rows = await rowsOf(database, known);
      if (rows.some((row) => row.state === 'waiting')) combReadings.onAsked();
      return { readings: rows.map(told), unknown };
    },

    cancel: async (hashes, rights) => {
      const { known, unknown } = await sorted(hashes, rights);
      if (known.length > 0) {
        // One that is taken up at this very moment is being read by the time its row is free, and stays.
        await database.sql
          .deleteFrom('combside.comb_readings')
          .where('photograph', 'in', known)
          .where('reader_version', '=', readerVersion)
          .where('state', '=', 'waiting')
          .execute();
      }
      return { readings: (await rowsOf(database, known)).map(told), unknown };
    },

    proposed: async (hash, rights) => {
      if (!(await photographs.readable(hash, rights))) return null;
      const [row] = await rowsOf(database, [hash]);
      return row ? ({ ...told(row), part: row.part } as CombReadingProposed) : null;
    },

    work: (milliseconds) => {
      working ??= workFor(milliseconds).finally(() => {
        working = null;
      });
      return working;
    },
  };
  return combReadings;
}

async function rowsOf(database: Database, photographs: readonly string[]) {
  if (photographs.length === 0) return [];
  return database.sql
    .selectFrom('combside.comb_readings')
    .selectAll()
    .where('photograph', 'in', photographs)
    .where('reader_version', '=', readerVersion)
    .orderBy('asked_at')
    .orderBy('photograph')
    .execute();
}

function told(row: Awaited<ReturnType<typeof rowsOf>>[number]): CombReadingTold {
  return {
    photograph: row.photograph,
    readerVersion: row.reader_version,
    state: row.state,
    askedAt: row.asked_at.toISOString(),
    finishedAt: row.finished_at?.toISOString() ?? null,
    reasons: row.reasons,
  };
}

/** The longest waiting photograph, or one whose reader went away; taken by nobody else. */
async function takeNext(
  database: Database,
  now: Date,
): Promise<{ readonly photograph: string; readonly attempts: number } | null> {
  const until = new Date(now.getTime() + begunFor);
  const { rows } = await sql<{ photograph: string; attempts: number }>`
    update combside.comb_readings set state = 'reading', begun_until = ${until.toISOString()}, attempts = attempts + 1
    where reader_version = ${readerVersion} and photograph = (
      select photograph from combside.comb_readings
      where reader_version = ${readerVersion}
        and (state = 'waiting' or (state = 'reading' and begun_until < ${now.toISOString()}))
      order by attempts, asked_at, photograph limit 1 for update skip locked)
    returning photograph, attempts`.execute(database.sql);
  return rows[0] ?? null;
}

async function finish(
  database: Database,
  photograph: string,
  now: Date,
  came: {
    readonly state: 'read' | 'refused' | 'failed';
    readonly reasons: readonly string[];
    readonly part: ReadingPart | null;
  },
): Promise<void> {
  await database.sql
    .updateTable('combside.comb_readings')
    .set({
      state: came.state,
      reasons: [...came.reasons],
      part: came.part === null ? null : JSON.stringify(came.part),
      begun_until: null,
      finished_at: now.toISOString(),
    })
    .where('photograph', '=', photograph)
    .where('reader_version', '=', readerVersion)
    .execute();
}

async function giveBack(database: Database, photograph: string): Promise<void> {
  await database.sql
    .updateTable('combside.comb_readings')
    .set({ state: 'waiting', begun_until: null })
    .where('photograph', '=', photograph)
    .where('reader_version', '=', readerVersion)
    .where('state', '=', 'reading')
    .execute();
}
