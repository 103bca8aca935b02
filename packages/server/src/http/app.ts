import { dayOf } from '@combside/calendar/instant';
import { apiariesAsked } from '@combside/contract/apiaries';
import { checkpointAsked } from '@combside/contract/checkpoint';
import { coloniesSearched } from '@combside/contract/colonies';
import { combPhotographsAsked } from '@combside/contract/comb-photographs';
import { combReadingsAsked } from '@combside/contract/comb-readings';
import { figureRecordsAsked, figuresAsked } from '@combside/contract/figures';
import type { Health, Hello } from '@combside/contract/hello';
import { mapAsked } from '@combside/contract/map';
import { owedAsked } from '@combside/contract/owed';
import type { Me } from '@combside/contract/people';
import { photographHash, photographsAsked } from '@combside/contract/photograph';
import { planningAsked } from '@combside/contract/planning';
import { pull } from '@combside/contract/pull';
import { largestMessage, push } from '@combside/contract/push';
import { oldestServed, protocolHeader, protocolVersion } from '@combside/contract/version';
import { visitsAsked } from '@combside/contract/visits';
import { loadPack } from '@combside/law/load-pack';
import { identifier } from '@combside/record/entry';
import { foldVersion } from '@combside/record/fold';
import { type Context, Hono, type MiddlewareHandler } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { compress } from 'hono/compress';
import { apiariesListed } from '../store/apiaries.ts';
import { apiaryPageOf } from '../store/apiary-page.ts';
import { coloniesSearchedFor } from '../store/colonies.ts';
import { colonyPageOf } from '../store/colony-page.ts';
import { combPhotographsListed } from '../store/comb-photographs.ts';
import type { Database } from '../store/database.ts';
import { districtsGranted, districtsKnown, onlyInvented } from '../store/districts.ts';
import { ServerError } from '../store/errors.ts';
import { figureRecordsListed, figuresCounted } from '../store/figures.ts';
import { healthOf } from '../store/health.ts';
import { laboratoriesListed } from '../store/laboratories.ts';
import { mapExtentOf, mapWindow } from '../store/map.ts';
import { owedListed } from '../store/owed.ts';
import { peopleFor } from '../store/people.ts';
import { planningListed } from '../store/planning.ts';
import {
  type AccountsPort,
  type ArrivalsPort,
  addressHeader,
  type CombReadingsPort,
  type OfficePort,
  type PhotographsPort,
  type SignedIn,
} from '../store/server-ports.ts';
import { visitPageOf } from '../store/visit-page.ts';
import { visitsListed } from '../store/visits.ts';
import { readMessage, readQuery, refuse } from './answers.ts';
import { archiveOf, type Background, backgroundTold, foreignOrigin } from './background.ts';
import { liveStream } from './live.ts';
import { webPages } from './pages.ts';
import { registerAddresses } from './register.ts';
import { sameOriginOnly, securityHeaders } from './security.ts';

/** Everything the HTTP edge needs; `start.ts` puts it together. */
export interface AppPorts {
  readonly database: Database;
  readonly accounts: AccountsPort;
  readonly office: OfficePort;
  readonly photographs: PhotographsPort;
  readonly combReadings: CombReadingsPort;
  readonly arrivals: ArrivalsPort;
  /** Folder of the built web app. */
  readonly web: string;
  /** Id of the rule pack in force here (law/load-pack). */
  readonly pack: string;
  /** What lies behind the apiaries on the map. */
  readonly background: Background;
  /** Version of the program. */
  readonly program: string;
  readonly server: { readonly device: string; readonly publicKey: string };
  readonly now: () => Date;
  /** True when people reach the server over https. */
  readonly secure: boolean;
  /** Falls when the server stops. */
  readonly stopping: AbortSignal;
  /** Told of what nobody expected; never of a body. */
  readonly complain: (error: unknown) => void;
}

interface Variables {
  readonly signedIn: SignedIn;
}
type Env = { Variables: Variables };

/** The whole HTTP edge: handlers read by the contract, ask the parts, and answer by the contract. */
export function makeApp(ports: AppPorts): Hono<Env> {
  const { database, accounts, office, photographs, combReadings } = ports;
  const app = new Hono<Env>();

  app.use(securityHeaders(ports.secure, foreignOrigin(ports.background)));
  app.use(cameFrom);
  app.use('/api/*', sameOriginOnly, noStore);
  app.use('/api/*', compress());

  app.onError((error, context) => {
    if (error instanceof ServerError && error.status < 500) return refuse(context, error.code, error.where ?? null);
    ports.complain(error);
    return refuse(context, error instanceof ServerError ? error.code : 'server-failed');
  });

  // Open to everybody.
  app.get('/api/hello', async (context) =>
    context.json({
      protocol: protocolVersion,
      oldestServed,
      program: ports.program,
      server: ports.server,
      now: ports.now().toISOString(),
      invented: await onlyInvented(database),
    } satisfies Hello),
  );
  app.get('/api/health', async (context) => {
    const health: Health = await healthOf(database, foldVersion);
    return context.json(health, health.well ? 200 : 503);
  });
  // Accounts are made and changed at the office's own machine. Over the wire an office account must not become anybody
  // else, set a password or rename itself: entries would then be signed in another person's name.
  for (const closed of ['/api/auth/admin/*', '/api/auth/update-user']) {
    app.all(closed, (context) => refuse(context, 'not-found'));
  }
  app.on(['GET', 'POST'], '/api/auth/*', bodyLimit({ maxSize: 64 * 1024, onError: tooLarge }), (context) =>
    accounts.handle(context.req.raw),
  );

  // Everything else below /api asks who you are.
  app.use('/api/*', async (context, next) => {
    const signedIn = await accounts.signedIn(context.req.raw.headers);
    if (!signedIn) return refuse(context, 'not-signed-in');
    context.set('signedIn', signedIn);
    return next();
  });
  const rights = (context: Context<Env>) => context.get('signedIn').rights;

  app.get('/api/me', async (context) => {
    const { rights: own, email } = context.get('signedIn');
    const districts = own.districts === 'all' ? await districtsKnown(database) : own.districts;
    return context.json({ ...own, email, districts: [...districts], pack: ports.pack } satisfies Me);
  });
  app.get('/api/people', async (context) => context.json({ people: await peopleFor(database, rights(context)) }));

  // The record's own four questions.
  const small = bodyLimit({ maxSize: 64 * 1024, onError: tooLarge });
  app.get('/api/greeting', spokenHere, async (context) => context.json(await office.greet(rights(context))));
  app.post('/api/push', spokenHere, bodyLimit({ maxSize: largestMessage, onError: tooLarge }), async (context) => {
    const message = await readMessage(context, push);
    return context.json({ results: await office.push(rights(context), message.entries) });
  });
  app.post('/api/pull', spokenHere, small, async (context) => {
    const { scope, after, limit } = await readMessage(context, pull);
    return context.json(await office.pull(rights(context), scope, after, limit));
  });
  app.post('/api/checkpoint', spokenHere, small, async (context) => {
    const { scope, position } = await readMessage(context, checkpointAsked);
    return context.json(await office.checkpoint(rights(context), scope, position));
  });
  app.get('/api/live', (context) => liveStream(context, ports, rights(context)));

  // The office's pages.
  app.get('/api/districts', async (context) => context.json(await districtsGranted(database, rights(context))));
  app.get('/api/apiaries', async (context) =>
    context.json(await apiariesListed(database, rights(context), readQuery(context, apiariesAsked))),
  );
  app.get('/api/visits', async (context) =>
    context.json(await visitsListed(database, rights(context), readQuery(context, visitsAsked))),
  );
  app.get('/api/visits/:id', async (context) =>
    context.json(await visitPageOf(database, rights(context), named(context.req.param('id')))),
  );
  app.get('/api/apiaries/:id', async (context) =>
    context.json(await apiaryPageOf(database, rights(context), named(context.req.param('id')))),
  );
  app.route('/api', registerAddresses(database));
  app.get('/api/colonies', async (context) =>
    context.json(await coloniesSearchedFor(database, rights(context), readQuery(context, coloniesSearched))),
  );
  app.get('/api/colonies/:id', async (context) =>
    context.json(await colonyPageOf(database, rights(context), named(context.req.param('id')))),
  );

  app.get('/api/laboratories', async (context) => context.json(await laboratoriesListed(database)));

  // The office's questions over many apiaries: what is owed, the map, planning, figures.
  const law = () => loadPack(ports.pack);
  app.get('/api/owed', async (context) => {
    const asked = readQuery(context, owedAsked);
    return context.json(await owedListed(database, rights(context), asked, await law(), ports.now().toISOString()));
  });
  app.get('/api/map', async (context) =>
    context.json(await mapWindow(database, rights(context), readQuery(context, mapAsked))),
  );
  app.get('/api/map/background', async (context) => context.json(backgroundTold(ports.background)));
  app.get('/api/map/tiles.pmtiles', (context) => archiveOf(context, ports.background));
  app.get('/api/map/extent', async (context) => context.json(await mapExtentOf(database, rights(context))));
  app.get('/api/planning', async (context) => {
    const asked = readQuery(context, planningAsked);
    const today = dayOf(ports.now().toISOString());
    return context.json(await planningListed(database, rights(context), asked, await law(), today));
  });
  app.get('/api/figures', async (context) => {
    const asked = readQuery(context, figuresAsked);
    return context.json(await figuresCounted(database, rights(context), asked, ports.now().toISOString()));
  });
  app.get('/api/figures/records', async (context) =>
    context.json(await figureRecordsListed(database, rights(context), readQuery(context, figureRecordsAsked))),
  );

  // Photographs.
  app.post('/api/photographs/held', bodyLimit({ maxSize: 256 * 1024, onError: tooLarge }), async (context) => {
    const { hashes } = await readMessage(context, photographsAsked);
    return context.json({ held: await photographs.held(hashes) });
  });
  app.get('/api/photographs/:hash', async (context) => {
    const hash = photographHash.safeParse(context.req.param('hash'));
    const found = hash.success ? await photographs.open(hash.data, rights(context)) : null;
    if (!found) return refuse(context, 'not-found');
    return new Response(found.body, {
      headers: {
        'content-type': found.mediaType,
        'content-length': String(found.bytes),
        ...photographHeaders,
      },
    });
  });
  app.get('/api/photographs/:hash/small', async (context) => {
    const hash = photographHash.safeParse(context.req.param('hash'));
    const found = hash.success ? await photographs.small(hash.data, rights(context)) : null;
    if (!found) return refuse(context, 'not-found');
    return new Response(found, { headers: { 'content-type': 'image/jpeg', ...photographHeaders } });
  });
  app.get('/api/comb-photographs', async (context) =>
    context.json(await combPhotographsListed(database, rights(context), readQuery(context, combPhotographsAsked))),
  );
  app.post('/api/comb-readings', bodyLimit({ maxSize: 256 * 1024, onError: tooLarge }), async (context) => {
    const asked = await readMessage(context, combReadingsAsked);
    return context.json(await combReadings.ask(asked.photographs, rights(context), ports.now()));
  });
  app.post('/api/comb-readings/cancel', bodyLimit({ maxSize: 256 * 1024, onError: tooLarge }), async (context) => {
    const asked = await readMessage(context, combReadingsAsked);
    return context.json(await combReadings.cancel(asked.photographs, rights(context)));
  });
  app.get('/api/comb-readings/:hash', async (context) => {
    const hash = photographHash.safeParse(context.req.param('hash'));
    const found = hash.success ? await combReadings.proposed(hash.data, rights(context)) : null;
    return found ? context.json(found) : refuse(context, 'not-found');
  });
  app.all('/api/uploads', (context) => photographs.handleUpload(context.req.raw, rights(context).person));
  app.all('/api/uploads/*', (context) => photographs.handleUpload(context.req.raw, rights(context).person));

  app.all('/api/*', (context) => refuse(context, 'not-found'));
  app.all('*', webPages(ports.web));
  return app;
}

const photographHeaders = {
  // The name is the hash of the bytes; the person's own cache may keep it.
  'cache-control': 'private, max-age=31536000, immutable',
  'content-security-policy': "default-src 'none'; sandbox",
} as const;

/** @throws ServerError `not-found` for what cannot be an identifier */
function named(id: string): string {
  if (!identifier.safeParse(id).success) throw new ServerError('not-found');
  return id;
}

function tooLarge(context: Context): Response {
  return refuse(context, 'too-large');
}

/** Answers of the API are for one person at one moment; a photograph says otherwise for itself. */
const noStore: MiddlewareHandler = async (context, next) => {
  await next();
  if (!context.res.headers.has('cache-control')) context.res.headers.set('cache-control', 'no-store');
};

/** Refuses a phone that speaks another protocol, with the word that tells it what to do. */
const spokenHere: MiddlewareHandler = async (context, next) => {
  const said = context.req.header(protocolHeader);
  context.header(protocolHeader, String(protocolVersion));
  if (said === undefined || !/^\d{1,6}$/.test(said)) return refuse(context, 'bad-request', protocolHeader);
  if (Number(said) < oldestServed) return refuse(context, 'protocol-too-old');
  if (Number(said) > protocolVersion) return refuse(context, 'protocol-too-new');
  return next();
};

/** Says from which address a request came, for the sign-in limit; what the client claims is thrown away. */
const cameFrom: MiddlewareHandler = async (context, next) => {
  const socket = (context.env as { incoming?: { socket?: { remoteAddress?: string } } } | undefined)?.incoming?.socket;
  context.req.raw.headers.set(addressHeader, socket?.remoteAddress ?? '127.0.0.1');
  return next();
};
