import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Office } from '@combside/record/office/office';
import type { WallClock } from '@combside/record/ports';
import { z } from 'zod';
import { type Accounts, openAccounts } from './accounts/accounts.ts';
import { type CombReadings, openCombReadings } from './comb-readings/comb-readings.ts';
import { type ReadingThread, readingThread } from './comb-readings/reading-thread.ts';
import { makeApp } from './http/app.ts';
import type { Background } from './http/background.ts';
import { openPhotographs, type Photographs } from './photographs/photographs.ts';
import { type Arrivals, listenForArrivals } from './store/arrivals.ts';
import type { Database } from './store/database.ts';
import { keysIn } from './store/keys.ts';
import { wallClock } from './store/node-ports.ts';
import { openServerOffice } from './store/open-server-office.ts';
import { secretIn } from './store/secret.ts';
import type { OfficePort } from './store/server-ports.ts';

export interface AssemblyOptions {
  readonly database: Database;
  /** Folder for photographs, keys and the session secret. */
  readonly data: string;
  /** What people type; sign-in has to know it. */
  readonly address: string;
  /** Folder of the built web app. */
  readonly web: string;
  /** Id of the rule pack in force. */
  readonly pack: string;
  /** What lies behind the apiaries on the map; nothing when left out. */
  readonly background?: Background;
  readonly attemptsPerMinute?: number;
  /** What time it is; the machine's clock when left out. */
  readonly clock?: WallClock;
  /** Reads photographs of combs; a thread of its own when left out. */
  readonly thread?: ReadingThread;
  /** Told of what nobody expected; never of a body. */
  readonly complain: (error: unknown) => void;
}

/** The server without its socket: the rooms of the server, opened, and the application that answers. */
export interface AssembledServer {
  readonly app: ReturnType<typeof makeApp>;
  readonly office: Office;
  /** The office as people reach it: each question asked with their rights. */
  readonly officePort: OfficePort;
  readonly accounts: Accounts;
  readonly photographs: Photographs;
  readonly combReadings: CombReadings;
  readonly arrivals: Arrivals;
  /** Ends open streams, which would otherwise keep the socket alive. */
  readonly endStreams: () => void;
  readonly close: () => Promise<void>;
}

/** Opens the rooms of the server and puts them together over an open database. */
export async function assemble(options: AssemblyOptions): Promise<AssembledServer> {
  const { database, data, address, complain } = options;
  const clock = options.clock ?? wallClock;
  const { office, officePort } = await openServerOffice(database, keysIn(join(data, 'keys')), clock);
  const accounts = await openAccounts({
    database,
    secret: await secretIn(join(data, 'keys', 'session-secret')),
    address,
    ...(options.attemptsPerMinute === undefined ? {} : { attemptsPerMinute: options.attemptsPerMinute }),
  });
  const photographs = await openPhotographs(database, join(data, 'photographs'), clock);
  await photographs.settle(new Date(clock.now()));
  const arrivals = await listenForArrivals(database);
  const stopping = new AbortController();
  const combReadings = openCombReadings({
    database,
    photographs,
    pathOf: photographs.pathOf,
    thread: options.thread ?? readingThread(),
    clock,
    stopping: stopping.signal,
    complain,
  });
  const app = makeApp({
    database,
    accounts,
    office: officePort,
    photographs,
    combReadings,
    arrivals,
    web: options.web,
    background: options.background ?? { kind: 'none' },
    // The law of the place is the agency's to say; without its word, the invented one of the demonstration.
    program: version(),
    pack: options.pack,
    server: office.key,
    now: () => new Date(clock.now()),
    secure: address.startsWith('https:'),
    stopping: stopping.signal,
    complain,
  });
  return {
    app,
    office,
    officePort,
    accounts,
    photographs,
    combReadings,
    arrivals,
    endStreams: () => stopping.abort(),
    close: () => arrivals.close(),
  };
}

function version(): string {
  const text = readFileSync(new URL('../package.json', import.meta.url), 'utf8');
  return z.object({ version: z.string() }).parse(JSON.parse(text)).version;
}
