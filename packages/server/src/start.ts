import { access } from 'node:fs/promises';
import type { Server } from 'node:http';
import { join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { dayOf } from '@combside/calendar/instant';
import { loadPack } from '@combside/law/load-pack';
import type { Office } from '@combside/record/office/office';
import type { WallClock } from '@combside/record/ports';
import { chooseLanguage } from '@combside/words/language';
import { loadWords } from '@combside/words/load-words';
import type { Words } from '@combside/words/words';
import { createAdaptorServer } from '@hono/node-server';
import type { Accounts } from './accounts/accounts.ts';
import { assemble } from './assemble.ts';
import { type DemoAccount, demoAccounts, demoPack, demoPassword, plantDemo } from './demo/plant.ts';
import { readBackground } from './http/background.ts';
import { startJobs } from './jobs/jobs.ts';
import { isLoopback } from './loopback.ts';
import { readOptions } from './read-options.ts';
import type { ServerOptions } from './server-options.ts';
import { type Cluster, startCluster } from './store/cluster.ts';
import { type Database, openDatabase } from './store/database.ts';
import { ServerError } from './store/errors.ts';
import { wallClock } from './store/node-ports.ts';

export interface RunningServer {
  /** What people type. */
  readonly address: string;
  readonly database: Database;
  readonly office: Office;
  readonly accounts: Accounts;
  /** Makes the demo accounts and the invented district where the record is empty: see `demo/plant.ts`. */
  readonly plantDemo: (begin?: () => void) => Promise<number | null>;
  /** Who can sign in once the demo was planted; every demo account has the one password. */
  readonly demo: { readonly accounts: readonly DemoAccount[]; readonly password: string };
  /** Answers a request without a socket. */
  readonly fetch: (request: Request) => Promise<Response>;
  /** Ends open streams and requests, closes the books, stops the database when nobody else uses it. */
  readonly stop: () => Promise<void>;
}

/** Ports tried after the one asked for. */
const portsTried = 50;

/** How long open requests may take when the server stops, in milliseconds. */
const patience = 3000;

/**
 * Starts the whole server and answers when it is ready.
 *
 * @throws ServerError when the database or the port cannot be had
 */
export async function startServer(options: ServerOptions): Promise<RunningServer> {
  const words = options.words ?? (await loadWords('en', ['server']));
  const say = options.say ?? (() => undefined);
  const data = resolve(options.data);
  const host = options.host ?? '127.0.0.1';
  const web = options.web ?? fileURLToPath(new URL('../../web/dist', import.meta.url));
  const clock = options.clock ?? wallClock;
  const pack = await loadPack(options.pack ?? demoPack);
  const background = readBackground(options.map);
  if (!background) throw new ServerError('map-setting', options.map ?? '');
  /** What to undo, newest first, when starting fails or the server stops. */
  const undo: (() => Promise<unknown>)[] = [];
  const unwind = async (): Promise<void> => {
    for (const step of undo.splice(0).reverse()) await step().catch(complain);
  };

  try {
    const { database, cluster } = await openRecord(options, data, undo);
    say(words.say('server.database', { place: cluster?.folder ?? database.where }));
    if (cluster?.attached) say(words.say('server.attached'));
    if (cluster && cluster.folder !== join(data, 'postgres')) {
      say(words.say('server.elsewhere', { folder: cluster.folder, asked: data }));
    }

    // The port first, because sign-in has to know the address; until all is ready it answers that it is busy.
    let answer = async (_request: Request, _env: object): Promise<Response> =>
      Response.json({ code: 'server-busy', message: 'starting', where: null }, { status: 503 });
    const server = createAdaptorServer({ fetch: (request, env) => answer(request, env), hostname: host }) as Server;
    const asked = options.port ?? 4680;
    const port = await listen(server, host, asked);
    undo.push(() => closeServer(server));
    if (asked !== 0 && port !== asked)
      say(words.say('server.port-taken', { asked: String(asked), used: String(port) }));
    const address = options.address ?? `http://${host.includes(':') ? `[${host}]` : host}:${port}`;
    if (!isLoopback(host) && !address.startsWith('https:')) say(words.say('server.open-to-network', { host }));

    const assembled = await assemble({
      database,
      data,
      address,
      web,
      pack: pack.id,
      background,
      clock,
      complain,
      ...limits(options),
    });
    undo.push(assembled.close);
    const { app, office, officePort, accounts, photographs, combReadings } = assembled;
    const jobs = await startJobs(
      database,
      backgroundWork({ database, office, photographs, combReadings, clock }),
      complain,
    );
    combReadings.onAsked = () => void jobs.ask('read-combs').catch(complain);
    undo.push(() => jobs.stop());
    if (!(await exists(join(web, 'index.html')))) say(words.say('server.pages-missing', { folder: web }));

    answer = async (request, env) => app.fetch(request, env);
    undo.push(async () => assembled.endStreams());
    return {
      address,
      database,
      office,
      accounts,
      plantDemo: (begin) => {
        const now = new Date(clock.now());
        const today = dayOf(now.toISOString());
        return plantDemo({ database, accounts, office: officePort, today, now, ...(begin ? { begin } : {}) });
      },
      demo: { accounts: demoAccounts, password: demoPassword },
      fetch: async (request) => app.fetch(request),
      stop: unwind,
    };
  } catch (error) {
    await unwind();
    throw error;
  }
}

function limits(options: ServerOptions): { attemptsPerMinute?: number } {
  return options.attemptsPerMinute === undefined ? {} : { attemptsPerMinute: options.attemptsPerMinute };
}

async function openRecord(
  options: ServerOptions,
  data: string,
  undo: (() => Promise<unknown>)[],
): Promise<{ database: Database; cluster: Cluster | undefined }> {
  if (options.databaseUrl !== undefined) {
    const database = await openDatabase({ url: options.databaseUrl });
    undo.push(() => database.close());
    return { database, cluster: undefined };
  }
  const cluster = await startCluster({ folder: join(data, 'postgres') });
  undo.push(() => cluster.stop());
  const database = await openDatabase({ cluster, name: 'combside' });
  undo.push(() => database.close());
  return { database, cluster };
}

/** Work between requests: old states, given-up uploads, the daily word on the whole record. */
function backgroundWork(opened: {
  readonly database: Database;
  readonly office: Office;
  readonly photographs: { readonly settle: (now: Date) => Promise<void> };
  readonly combReadings: { readonly work: (forMilliseconds: number) => Promise<number> };
  readonly clock: WallClock;
}): Parameters<typeof startJobs>[1] {
  const { database, office, photographs, combReadings, clock } = opened;
  return [
    {
      name: 'refold',
      when: '*/10 * * * *',
      lostAfterSeconds: 600,
      run: async () => {
        while ((await office.refold(200)) > 0);
      },
    },
    {
      name: 'settle-uploads',
      when: '17 * * * *',
      lostAfterSeconds: 300,
      run: () => photographs.settle(new Date(clock.now())),
    },
    {
      name: 'read-combs',
      when: '*/10 * * * *',
      lostAfterSeconds: 900,
      run: async () => void (await combReadings.work(8 * 60 * 1000)),
    },
    {
      name: 'checkpoint',
      when: '5 2 * * *',
      lostAfterSeconds: 300,
      run: async () => {
        const signed = await office.checkpoint(null, 0);
        await database.sql
          .insertInto('combside.checkpoints')
          .values({ made_at: signed.at, signed: JSON.stringify(signed) })
          .onConflict((conflict) => conflict.doNothing())
          .execute();
      },
    },
  ];
}

async function listen(server: Server, host: string, first: number): Promise<number> {
  for (let port = first; port <= first + portsTried; port += 1) {
    const found = await new Promise<number | undefined>((done, fail) => {
      const failed = (error: NodeJS.ErrnoException): void => {
        if (error.code === 'EADDRINUSE' && first !== 0) done(undefined);
        else fail(new ServerError('no-free-port', `${host}:${port}: ${error.message}`, { cause: error }));
      };
      server.once('error', failed);
      server.listen(port, host, () => {
        server.off('error', failed);
        const bound = server.address();
        done(typeof bound === 'object' && bound ? bound.port : port);
      });
    });
    if (found !== undefined) return found;
  }
  throw new ServerError('no-free-port', `${first} to ${first + portsTried} on ${host}`);
}

async function closeServer(server: Server): Promise<void> {
  const closed = new Promise<void>((done) => server.close(() => done()));
  server.closeIdleConnections();
  const impatient = setTimeout(() => server.closeAllConnections(), patience);
  await closed;
  clearTimeout(impatient);
}

/** Told to the terminal: the kind of error and where, never what an entry says. */
function complain(error: unknown): void {
  const stack = error instanceof Error ? (error.stack ?? error.message) : String(error);
  console.error(stack);
}

async function exists(path: string): Promise<boolean> {
  return access(path).then(
    () => true,
    () => false,
  );
}

/** `start.ts --data DIR --port N --host ADDRESS --web DIR --map FILE --clock INSTANT --demo`: runs until it is interrupted. */
async function main(args: readonly string[]): Promise<void> {
  const words = await loadWords(chooseLanguage([(process.env.LC_ALL || process.env.LANG || 'en').replace('_', '-')]), [
    'server',
  ]);
  const say = (line: string): void => console.log(line);
  const options = readOptions(args, process.env.DATABASE_URL, words);
  if (typeof options === 'string') {
    console.error(options);
    console.error(words.say('server.usage'));
    process.exitCode = 2;
    return;
  }
  let server: RunningServer;
  try {
    server = await startServer({ ...options, words, say });
    if (options.clock) say(words.say('server.clock', { now: new Date(options.clock.now()).toISOString() }));
    if (options.demo) await openDemo(server, words, say);
    if (options.demoWithheld) say(words.say('server.demo.withheld'));
  } catch (error) {
    console.error(words.say('server.failed', { why: error instanceof Error ? error.message : String(error) }));
    if (!(error instanceof ServerError)) complain(error);
    process.exitCode = 1;
    return;
  }
  say('');
  say(words.say('server.open', { address: server.address }));
  say(words.say('server.stop-how'));

  let stopping = false;
  const stop = (): void => {
    if (stopping) return;
    stopping = true;
    say(words.say('server.stopping'));
    void server.stop().then(() => {
      say(words.say('server.stopped'));
      process.exit(0);
    });
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, stop);
}

/** Plants the demo where the record is empty, and says who can sign in. */
async function openDemo(server: RunningServer, words: Words<'server'>, say: (line: string) => void): Promise<void> {
  const since = performance.now();
  const entries = await server.plantDemo(() => say(words.say('server.demo.making')));
  if (entries === null) return;
  const seconds = words.number((performance.now() - since) / 1000, 1);
  if (entries > 0) say(words.say('server.demo.made', { entries, seconds }));
  say('');
  say(words.say('server.demo.invented'));
  say(words.say('server.demo.accounts', { password: demoPassword }));
  const width = Math.max(...demoAccounts.map((account) => account.email.length));
  for (const account of demoAccounts) {
    const role =
      account.districts === 'all'
        ? words.say('server.demo.office')
        : words.say('server.demo.inspector', { districts: account.districts.join(', ') });
    say(`  ${account.email.padEnd(width)}  ${account.name}, ${role}`);
  }
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  await main(process.argv.slice(2));
}
