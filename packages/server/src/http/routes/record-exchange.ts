import { checkpointAsked } from '@combside/contract/checkpoint';
import { pull } from '@combside/contract/pull';
import { largestMessage, push } from '@combside/contract/push';
import { Hono } from 'hono';
import { readMessage } from '../answers.ts';
import type { AppPorts } from '../app-ports.ts';
import { liveStream } from '../live.ts';
import { spokenHere } from '../protocol.ts';
import { atMost, rightsOf, type SignedInEnv } from './signed-in.ts';

type Ports = Pick<AppPorts, 'office' | 'database' | 'arrivals' | 'stopping'>;

/** The record's own four questions, and the stream of what is newly stored. */
export function recordExchangeRoutes({ office, ...live }: Ports): Hono<SignedInEnv> {
  const app = new Hono<SignedInEnv>();
  const small = atMost(64 * 1024);
  app.get('/greeting', spokenHere, async (context) => context.json(await office.greet(rightsOf(context))));
  app.post('/push', spokenHere, atMost(largestMessage), async (context) => {
    const message = await readMessage(context, push);
    return context.json({ results: await office.push(rightsOf(context), message.entries) });
  });
  app.post('/pull', spokenHere, small, async (context) => {
    const { scope, after, limit } = await readMessage(context, pull);
    return context.json(await office.pull(rightsOf(context), scope, after, limit));
  });
  app.post('/checkpoint', spokenHere, small, async (context) => {
    const { scope, position } = await readMessage(context, checkpointAsked);
    return context.json(await office.checkpoint(rightsOf(context), scope, position));
  });
  app.get('/live', (context) => liveStream(context, live, rightsOf(context)));
  return app;
}
