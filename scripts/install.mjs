import { createHash } from 'node:crypto';
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { house, Missing, run, spent } from './run.mjs';

const lock = join(house, 'package-lock.json');
/** npm's own list of what it installed. */
const installed = join(house, 'node_modules/.package-lock.json');
/** The lock file these dependencies were installed from, as a hash. */
const stamp = join(house, 'node_modules/.installed-from');

/**
 * Installs the dependencies when they are not there, or not the ones package-lock.json asks for.
 *
 * @throws {Missing} when npm, the registry, space on the disk or the right to write is missing
 */
export async function installWhenNeeded() {
  const reason = whyInstall();
  if (!reason) return;
  console.log(`Installing dependencies (${reason}); this takes about a minute and needs the network.`);
  const since = performance.now();
  const npm = process.env.npm_execpath;
  const args = ['ci', '--prefer-offline', '--no-audit', '--no-fund'];
  const { code, output } =
    npm && /[.]c?js$/.test(npm)
      ? await run(process.execPath, [npm, ...args], { quiet: true })
      : await run('npm', args, { quiet: true });
  // On a full disk npm may cut files short and still end with success, saying so in a warning only.
  if (code !== 0 || /ENOSPC|TAR_ENTRY_ERROR/.test(output)) {
    rmSync(installed, { force: true });
    throw new Missing(explain(output));
  }
  writeFileSync(stamp, hashOf(lock));
  console.log(`Installed in ${spent(since)}.\n`);
}

/** Undefined when the stamp names this lock file, or when npm's own list of what it installed agrees with it. */
function whyInstall() {
  if (!existsSync(installed)) return 'first run';
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === hashOf(lock)) return undefined;
  const wanted = packagesOf(lock);
  const have = packagesOf(installed);
  for (const [path, { version, optional, link }] of Object.entries(wanted)) {
    if (!path.startsWith('node_modules/') || optional) continue;
    const isThere = link ? have[path]?.link : have[path]?.version === version;
    if (!isThere) return `${path.replace(/^.*node_modules[/]/, '')} ${version ?? ''} is missing`;
  }
  return undefined;
}

function hashOf(path) {
  return createHash('sha256').update(readFileSync(path)).digest('hex');
}

function packagesOf(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8')).packages ?? {};
  } catch (error) {
    throw new Missing(
      `${path} cannot be read (${error.message}). Restore it, or delete node_modules, then run the command again.`,
    );
  }
}

const causes = [
  [/ENOSPC/, 'The disk is full. About 1 GB is needed for the dependencies; make room, then run the command again.'],
  [
    /ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ETIMEDOUT|ENETUNREACH|EHOSTUNREACH|ENOTCACHED|ERR_SOCKET_TIMEOUT|network/,
    'The package registry cannot be reached. Check the network (and any proxy: npm config get proxy), then run the command again.',
  ],
  [
    /EACCES|EPERM|EROFS/,
    'No right to write here. Use a copy of the folder that belongs to you, then run the command again.',
  ],
  [/spawn npm ENOENT/, 'npm was not found. It comes with Node: install Node from https://nodejs.org or your system.'],
  [
    /can only install packages when your package.json and package-lock.json/,
    'package.json and package-lock.json disagree: run npm install and look at what changed.',
  ],
];

function explain(output) {
  const [, cause = 'The dependencies could not be installed.'] = causes.find(([sign]) => sign.test(output)) ?? [];
  return `${cause}\n\nnpm said:\n${output.trim().split('\n').slice(-15).join('\n')}`;
}
