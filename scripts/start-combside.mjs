import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { buildWhenStale } from './build.mjs';
import { installWhenNeeded } from './install.mjs';
import { endChildrenOnInterrupt, house, Missing } from './run.mjs';

/** How the server starts when nothing else is asked for: here, for this machine only, with the invented demo district. */
const asUsual = ['--data', './data', '--port', '4680', '--host', '127.0.0.1', '--demo'];

/**
 * Installs when needed, builds when stale, and runs the server until it ends or is interrupted.
 *
 * @param {readonly string[]} args options for the server; they stand after the usual ones, so the last word is theirs
 */
export async function startCombside(args) {
  const serveOnly = endChildrenOnInterrupt();
  try {
    await installWhenNeeded();
  } catch (error) {
    if (!(error instanceof Missing)) throw error;
    console.error(error.message);
    process.exitCode = 1;
    return;
  }
  if (!(await buildWhenStale({ quiet: true }))) {
    console.error('The pages could not be built (see above); nothing was started.');
    process.exitCode = 1;
    return;
  }
  const entry = 'packages/server/src/start.ts';
  if (!existsSync(join(house, entry))) {
    console.error(`${entry} is missing: is this a whole copy of Combside?`);
    process.exitCode = 1;
    return;
  }
  serveOnly();
  process.exitCode = await serve(entry, args);
}

/** Runs the server. An interruption reaches it once; it is given ten seconds to close its books. */
function serve(entry, args) {
  return new Promise((resolve) => {
    const server = spawn(process.execPath, ['--import', 'tsx', entry, ...asUsual, ...args], {
      cwd: house,
      // A group of its own: the terminal's Ctrl-C then reaches only us, and the server hears one request to stop, not two.
      detached: process.platform !== 'win32',
      stdio: 'inherit',
    });
    let asked = false;
    const stop = () => {
      if (asked) return;
      asked = true;
      server.kill('SIGTERM');
      setTimeout(() => {
        console.error('The server did not stop in ten seconds; ending it.');
        server.kill('SIGKILL');
      }, 10_000).unref();
    };
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, stop);
    server.on('error', (error) => {
      console.error(`The server could not be started: ${error.message}`);
      resolve(1);
    });
    server.on('exit', (code) => resolve(asked ? 0 : (code ?? 1)));
  });
}
