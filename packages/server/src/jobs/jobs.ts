import PgBoss from 'pg-boss';
import type { Database } from '../store/database.ts';

/** Work that is done now and then, in whichever process comes first. It may be done twice: it must not matter. */
export interface Job {
  readonly name: string;
  /** When, as a cron line in UTC. It is also asked for once at every start. */
  readonly when: string;
  readonly run: () => Promise<void>;
  /** After so many seconds a run counts as lost and is given to somebody else. */
  readonly lostAfterSeconds: number;
}

export interface Jobs {
  /** Asks for a run now; where one waits already, nothing more happens. */
  readonly ask: (name: string) => Promise<void>;
  readonly stop: () => Promise<void>;
}

/**
 * Starts the background work on the database's own queue, in a schema of its own and over the same pool: a job begun by
 * a process that died is taken up by another.
 */
export async function startJobs(
  database: Database,
  jobs: readonly Job[],
  complain: (error: unknown) => void,
): Promise<Jobs> {
  const boss = new PgBoss({
    schema: 'jobs',
    db: { executeSql: (text, values) => database.pool.query(text, values) },
    application_name: 'combside',
  });
  boss.on('error', complain);
  await boss.start();
  const workers = new Map<string, string>();
  for (const job of jobs) {
    await boss.createQueue(job.name, {
      name: job.name,
      // One waiting run is enough: the next one does all there is.
      policy: 'short',
      retryLimit: 3,
      retryDelay: 30,
      expireInSeconds: job.lostAfterSeconds,
    });
    workers.set(job.name, await boss.work(job.name, { pollingIntervalSeconds: 5, batchSize: 1 }, () => job.run()));
    await boss.schedule(job.name, job.when, {}, { tz: 'UTC' });
    await boss.send(job.name, {});
  }
  return {
    ask: async (name) => {
      await boss.send(name, {});
      // Somebody waits for it: this process looks at once, not at its next turn.
      const worker = workers.get(name);
      if (worker !== undefined) boss.notifyWorker(worker);
    },
    stop: () => boss.stop({ graceful: true, wait: true, close: false, timeout: 5000 }),
  };
}
