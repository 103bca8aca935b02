import { execFile } from 'node:child_process';
import {
  accessSync,
  chmodSync,
  constants,
  existsSync,
  mkdirSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
} from 'node:fs';
import { delimiter, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'chrome'];
const cache = join(import.meta.dirname, '../../../.cache');

/**
 * Flags for every Chromium the tests start. The sandbox is left out for root only, who cannot have one; the rest keeps
 * the browser from talking to anybody but the page under test.
 */
export function browserFlags(): string[] {
  const isRoot = process.getuid?.() === 0;
  return [
    ...(isRoot ? ['--no-sandbox'] : []),
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ];
}

/**
 * Finds a Chromium that starts: the one COMBSIDE_BROWSER names; else one on the PATH; else the one that came with the
 * dependencies, unpacked into `.cache` on first use.
 *
 * @returns path of the program
 * @throws Error saying what was tried, when none starts
 */
export async function findBrowser(): Promise<string> {
  const named = process.env.COMBSIDE_BROWSER;
  if (named) {
    const trouble = await troubleStarting(named);
    if (trouble) throw new Error(`COMBSIDE_BROWSER names ${named}, which does not start:\n${trouble}`);
    return named;
  }
  const tried: string[] = [];
  for (const path of onThePath()) {
    const trouble = await troubleStarting(path);
    if (!trouble) return path;
    tried.push(`${path}: ${trouble}`);
  }
  try {
    const path = await unpacked();
    const trouble = await troubleStarting(path);
    if (!trouble) return path;
    tried.push(`${path}: ${trouble}`);
  } catch (error) {
    tried.push(`the browser among the dependencies: ${error instanceof Error ? error.message : error}`);
  }
  throw new Error(
    'No browser for the browser tests. Install Chromium (Debian: apt-get install chromium), or set COMBSIDE_BROWSER to the ' +
      `path of a Chromium, then run the command again. Tried:\n- ${tried.join('\n- ')}`,
  );
}

function onThePath(): string[] {
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return names.flatMap((name) =>
    folders
      .map((folder) => join(folder, name))
      .filter(isProgram)
      .slice(0, 1),
  );
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

/** What goes wrong when the browser is asked for its version; undefined when it answers. */
async function troubleStarting(path: string): Promise<string | undefined> {
  try {
    const { stdout } = await promisify(execFile)(path, [...browserFlags(), '--headless', '--version'], {
      timeout: 30_000,
    });
    return /\d+[.]\d+/.test(stdout) ? undefined : `it answered "${stdout.trim()}" when asked for its version`;
  } catch (error) {
    const text = error instanceof Error ? error.message : String(error);
    const library = /(lib[\w.+-]+): cannot open shared object file/.exec(text)?.[1];
    return library
      ? `the system library ${library} is missing (Debian: apt-get install libnss3 libnspr4 libexpat1)`
      : text.trim();
  }
}

/**
 * Unpacks the Chromium of the package @sparticuz/chromium. It unpacks into the system's temporary folder and takes
 * whatever already lies there, so it is given a folder of its own, which gets its name only when complete. The program
 * is readable to its owner only, therefore one folder per user.
 */
async function unpacked(): Promise<string> {
  const home = join(cache, `browser-${process.getuid?.() ?? 'user'}`);
  const program = join(home, 'chromium');
  if (existsSync(program)) return program;
  const part = join(cache, `browser-part-${process.pid}`);
  rmSync(part, { recursive: true, force: true });
  mkdirSync(part, { recursive: true });
  const before = process.env.TMPDIR;
  process.env.TMPDIR = part;
  try {
    const { default: chromium } = await import('@sparticuz/chromium');
    await chromium.executablePath();
    for (const name of readdirSync(part)) if (name.endsWith('.so')) chmodSync(join(part, name), 0o755);
    rmSync(home, { recursive: true, force: true });
    renameSync(part, home);
  } finally {
    if (before === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = before;
    rmSync(part, { recursive: true, force: true });
  }
  return program;
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  try {
    console.log(await findBrowser());
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
}
