import { chmodSync, cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { bundleServer } from './bundle-server.ts';
import { ahead, moveClock } from './day.ts';
import { clockOption } from './planted-server.ts';
import { startServer } from './server.ts';

const built = join(import.meta.dirname, '../dist');

/**
 * Before the first journey: plants the demonstration once, at the journeys' day, into a folder of which every server gets
 * a copy; bundles the server that every copy is given to; and puts the moved clock at the head of the workers of the
 * program, which no page can reach. The planting itself is done by the server as an installation starts it.
 *
 * The folder is the temporary folder of everything this run starts, browsers too, and is removed at the end whatever
 * became of the journeys.
 *
 * @returns what removes it
 */
export default async function plantOnce(): Promise<() => void> {
  const run = mkdtempSync(join(tmpdir(), 'combside-journeys-'));
  // The database runs as another user when this is root, and must be able to pass through.
  chmodSync(run, 0o755);
  const remove = (): void => rmSync(run, { recursive: true, force: true, maxRetries: 5 });
  try {
    process.env.TMPDIR = run;
    process.env.COMBSIDE_AHEAD = String(ahead);
    process.env.COMBSIDE_PLANTED = join(run, 'planted');
    process.env.COMBSIDE_PAGES = join(run, 'pages');
    pagesWithMovedWorkers(process.env.COMBSIDE_PAGES);
    process.env.COMBSIDE_SERVER = await bundleServer();
    const server = await startServer(process.env.COMBSIDE_PLANTED, () => [...clockOption(), '--demo']);
    await server.stop();
    if (!existsSync(join(server.data, 'postgres/PG_VERSION'))) {
      throw new Error(`the database does not stand in ${server.data}, and cannot be copied:\n${server.printed()}`);
    }
  } catch (error) {
    remove();
    throw error;
  }
  return remove;
}

function pagesWithMovedWorkers(folder: string): void {
  cpSync(built, folder, { recursive: true, filter: (name) => !name.endsWith('.map') });
  const assets = join(folder, 'assets');
  const workers = readdirSync(assets).filter((name) => /worker-[^.]+[.]js$/.test(name));
  if (!workers.some((name) => name.startsWith('sync-worker'))) throw new Error(`no workers in ${assets}: build first`);
  for (const name of workers) {
    const path = join(assets, name);
    writeFileSync(path, `(${moveClock})(${ahead});\n${readFileSync(path, 'utf8')}`);
    // The packed forms the build laid beside it hold the clock that was not moved.
    rmSync(`${path}.br`, { force: true });
    writeFileSync(`${path}.gz`, gzipSync(readFileSync(path)));
  }
}
