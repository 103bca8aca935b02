import { combPhotographsAsked } from '@combside/contract/comb-photographs';
import { combReadingsAsked } from '@combside/contract/comb-readings';
import { photographHash } from '@combside/contract/photograph';
import { Hono } from 'hono';
import { combPhotographsListed } from '../../store/desk/comb-photographs.ts';
import { readMessage, readQuery, refuse } from '../answers.ts';
import type { AppPorts } from '../app-ports.ts';
import { atMost, rightsOf, type SignedInEnv } from './signed-in.ts';

type Ports = Pick<AppPorts, 'database' | 'combReadings' | 'now'>;

/** Photographs of combs, and their reading by the server: asked for, called off, given out. */
export function combReadingRoutes(ports: Ports): Hono<SignedInEnv> {
  const { database, combReadings } = ports;
  const app = new Hono<SignedInEnv>();
  const small = atMost(256 * 1024);
  app.get('/comb-photographs', async (context) =>
    context.json(await combPhotographsListed(database, rightsOf(context), readQuery(context, combPhotographsAsked))),
  );
  app.post('/comb-readings', small, async (context) => {
    const asked = await readMessage(context, combReadingsAsked);
    return context.json(await combReadings.ask(asked.photographs, rightsOf(context), ports.now()));
  });
  app.post('/comb-readings/cancel', small, async (context) => {
    const asked = await readMessage(context, combReadingsAsked);
    return context.json(await combReadings.cancel(asked.photographs, rightsOf(context)));
  });
  app.get('/comb-readings/:hash', async (context) => {
    const hash = photographHash.safeParse(context.req.param('hash'));
    const found = hash.success ? await combReadings.proposed(hash.data, rightsOf(context)) : null;
    return found ? context.json(found) : refuse(context, 'not-found');
  });
  return app;
}
