import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { now } from './day.ts';
import { type RunningServer, serverFolder, startServer } from './server.ts';

/** Sets a server's clock to that of the journeys, at the moment it is started. */
export function clockOption(): readonly string[] {
  return ['--clock', new Date(now()).toISOString()];
}

/**
 * Starts a server of its own on a copy of the planted demonstration (`plant-once.ts`), with its database, keys and
 * accounts.
 *
 * @param options further options for the server
 */
export async function startPlantedServer(options: readonly string[] = []): Promise<RunningServer> {
  const { COMBSIDE_PLANTED: planted, COMBSIDE_PAGES: pages, COMBSIDE_SERVER: program } = process.env;
  if (!planted || !pages || !program) throw new Error('nothing was planted: run the journeys by playwright.config.ts');
  const folder = serverFolder();
  // Node's own copying loses whom a file belongs to, and the database's belong to another user when this is root.
  execFileSync('cp', ['-Rp', join(planted, 'data'), folder]);
  return startServer(folder, () => [...clockOption(), '--web', pages, ...options], [program]);
}
