import { spawn } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of the house. */
export const house = join(dirname(fileURLToPath(import.meta.url)), '..');

/** Something is missing that only a person can provide; the message says what, and what to do. */
export class Missing extends Error {}

/** Children now running, so that an interruption can end them. */
const running = new Set();

/**
 * Runs a program and waits for its end.
 *
 * @param {string} program path or name on the PATH
 * @param {readonly string[]} args
 * @param {{ cwd?: string, env?: NodeJS.ProcessEnv, quiet?: boolean }} [options] quiet: keep the output, do not show it
 * @returns {Promise<{ code: number, output: string }>} exit code (1 when it could not start or was ended by a signal)
 */
export function run(program, args, { cwd = house, env = {}, quiet = false } = {}) {
  return new Promise((resolve) => {
    const child = spawn(program, args, { cwd, env: { ...process.env, ...env }, stdio: ['ignore', 'pipe', 'pipe'] });
    running.add(child);
    let output = '';
    const hear = (stream) => (chunk) => {
      output += chunk;
      if (!quiet) stream.write(chunk);
    };
    child.stdout.setEncoding('utf8').on('data', hear(process.stdout));
    child.stderr.setEncoding('utf8').on('data', hear(process.stderr));
    child.on('error', (error) => {
      running.delete(child);
      resolve({ code: 1, output: `${output}${error.message}\n` });
    });
    child.on('close', (code) => {
      running.delete(child);
      resolve({ code: code ?? 1, output });
    });
  });
}

/** Runs a script with this same Node. */
export function runNode(args, options) {
  return run(process.execPath, args, options);
}

/**
 * Ends every running child when this process is interrupted, then ends this one.
 *
 * @returns {() => void} takes the arrangement back
 */
export function endChildrenOnInterrupt() {
  const codes = { SIGINT: 130, SIGTERM: 143, SIGHUP: 129 };
  const end = (signal) => {
    for (const child of running) child.kill('SIGTERM');
    // npm goes on for a while after it was asked to stop; what it leaves half done is done anew next time.
    setTimeout(() => {
      for (const child of running) child.kill('SIGKILL');
    }, 3000);
    setInterval(() => {
      if (running.size === 0) process.exit(codes[signal]);
    }, 50);
  };
  for (const signal of Object.keys(codes)) process.once(signal, end);
  return () => {
    for (const signal of Object.keys(codes)) process.off(signal, end);
  };
}

/** "4.2 s", or "2 min 5 s" from two minutes on. */
export function spent(since) {
  const seconds = (performance.now() - since) / 1000;
  return seconds < 120 ? `${seconds.toFixed(1)} s` : `${Math.floor(seconds / 60)} min ${Math.round(seconds % 60)} s`;
}
