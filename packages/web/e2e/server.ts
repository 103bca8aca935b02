import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const house = join(import.meta.dirname, '../../..');

/** What Node runs for a server: its sources, as an installation runs them. */
const sources = ['--import', 'tsx', 'packages/server/src/start.ts'];

/** A real server on a database of its own. */
export interface RunningServer {
  /** Where it answers, without a slash at the end. */
  readonly address: string;
  /** Folder of its database and photographs. */
  readonly data: string;
  /** Everything it printed so far. */
  readonly printed: () => string;
  /** Ends it as an operator would; its data stay. */
  readonly stop: () => Promise<void>;
  /** Ends it without warning, as a power cut would end the process. */
  readonly kill: () => Promise<void>;
  /** Starts it again at the same address, on the same data. */
  readonly startAgain: () => Promise<void>;
  /** Ends it and removes its data. */
  readonly remove: () => Promise<void>;
}

/** A temporary folder for a server. The database runs as another user when this is root, and must be able to pass through. */
export function serverFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'combside-e2e-'));
  chmodSync(folder, 0o755);
  return folder;
}

/**
 * Starts a server on a free port of this machine.
 *
 * @param folder where its data stand or come to stand, in `data`; removed with the server
 * @param options for the server; asked for anew at every start
 * @param program what Node runs: the server's sources, or a bundle of them
 * @throws Error with everything the server printed, when it ends or does not answer within three minutes
 */
export async function startServer(
  folder: string,
  options: () => readonly string[],
  program: readonly string[] = sources,
): Promise<RunningServer> {
  const data = join(folder, 'data');
  const port = await freePort();
  const address = `http://127.0.0.1:${port}`;
  let printed = '';
  let child: ChildProcess | undefined;

  const start = async (): Promise<void> => {
    const started = spawn(
      process.execPath,
      [...program, '--data', data, '--port', String(port), '--host', '127.0.0.1', ...options()],
      { cwd: house, stdio: ['ignore', 'pipe', 'pipe'] },
    );
    child = started;
    const before = printed.length;
    for (const stream of [started.stdout, started.stderr])
      stream?.setEncoding('utf8').on('data', (text) => (printed += text));
    const deadline = performance.now() + 180_000;
    // It answers before all is ready; it says that it is open when it is.
    while (!(printed.slice(before).includes(address) && (await answers(address)))) {
      if (started.exitCode !== null)
        throw new Error(`the server ended with code ${started.exitCode} before it answered:\n${printed}`);
      if (performance.now() > deadline)
        throw new Error(`the server did not answer at ${address} within three minutes:\n${printed}`);
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
  };

  const end = async (signal: NodeJS.Signals): Promise<void> => {
    const ending = child;
    child = undefined;
    if (!ending || ending.exitCode !== null || ending.signalCode !== null) return;
    const exited = once(ending, 'exit');
    ending.kill(signal);
    const patience = setTimeout(() => ending.kill('SIGKILL'), 15_000);
    await exited;
    clearTimeout(patience);
  };

  const remove = async (): Promise<void> => {
    await end('SIGTERM');
    rmSync(folder, { recursive: true, force: true });
  };

  try {
    await start();
  } catch (error) {
    await remove();
    throw error;
  }
  return {
    address,
    data,
    printed: () => printed,
    stop: () => end('SIGTERM'),
    kill: () => end('SIGKILL'),
    startAgain: start,
    remove,
  };
}

async function answers(address: string): Promise<boolean> {
  try {
    const response = await fetch(address);
    await response.arrayBuffer();
    return response.ok;
  } catch {
    return false;
  }
}

/** Asks the system for a port nobody uses. */
async function freePort(): Promise<number> {
  const asking = createServer().listen(0, '127.0.0.1');
  await once(asking, 'listening');
  const address = asking.address();
  asking.close();
  await once(asking, 'close');
  if (address === null || typeof address === 'string') throw new Error('the system gave no port');
  return address.port;
}
