import { Hono } from 'hono';
import { compress } from 'hono/compress';
import { ServerError } from '../store/errors.ts';
import { refuse } from './answers.ts';
import type { AppPorts } from './app-ports.ts';
import { foreignOrigin } from './background.ts';
import { webPages } from './pages.ts';
import { combReadingRoutes } from './routes/comb-readings.ts';
import { mapRoutes } from './routes/map.ts';
import { officePageRoutes } from './routes/office-pages.ts';
import { officeQuestionRoutes } from './routes/office-questions.ts';
import { openRoutes } from './routes/open-to-everybody.ts';
import { peopleRoutes } from './routes/people.ts';
import { photographRoutes } from './routes/photographs.ts';
import { recordExchangeRoutes } from './routes/record-exchange.ts';
import { registerRoutes } from './routes/register.ts';
import type { SignedInEnv } from './routes/signed-in.ts';
import { cameFrom, noStore, sameOriginOnly, securityHeaders } from './security.ts';

/** The whole HTTP edge: handlers read by the contract, ask the ports, and answer by the contract. */
export function makeApp(ports: AppPorts): Hono<SignedInEnv> {
  const app = new Hono<SignedInEnv>();

  app.use(securityHeaders(ports.secure, foreignOrigin(ports.background)));
  app.use(cameFrom);
  app.use('/api/*', sameOriginOnly, noStore);
  app.use('/api/*', compress());

  app.onError((error, context) => {
    if (error instanceof ServerError && error.status < 500) return refuse(context, error.code, error.where ?? null);
    ports.complain(error);
    return refuse(context, error instanceof ServerError ? error.code : 'server-failed');
  });

  app.route('/api', openRoutes(ports));

  // Everything else below /api asks who you are.
  app.use('/api/*', async (context, next) => {
    const signedIn = await ports.accounts.signedIn(context.req.raw.headers);
    if (!signedIn) return refuse(context, 'not-signed-in');
    context.set('signedIn', signedIn);
    return next();
  });
  app.route('/api', peopleRoutes(ports));
  app.route('/api', recordExchangeRoutes(ports));
  app.route('/api', officePageRoutes(ports.database));
  app.route('/api', registerRoutes(ports.database));
  app.route('/api', officeQuestionRoutes(ports));
  app.route('/api', mapRoutes(ports));
  app.route('/api', photographRoutes(ports.photographs));
  app.route('/api', combReadingRoutes(ports));

  app.all('/api/*', (context) => refuse(context, 'not-found'));
  app.route('/', webPages(ports.web));
  return app;
}
