import type { Health, Hello } from '@combside/contract/hello';
import { oldestServed, protocolVersion } from '@combside/contract/version';
import { foldVersion } from '@combside/record/fold';
import { Hono } from 'hono';
import { onlyInvented } from '../../store/districts.ts';
import { healthOf } from '../../store/health.ts';
import { refuse } from '../answers.ts';
import type { AppPorts } from '../app-ports.ts';
import { atMost } from './signed-in.ts';

type Ports = Pick<AppPorts, 'database' | 'accounts' | 'program' | 'server' | 'now'>;

/** Whom one talks to, whether it is well, and the way in. */
export function openRoutes(ports: Ports): Hono {
  const { database, accounts, program, server } = ports;
  const app = new Hono();
  app.get('/hello', async (context) =>
    context.json({
      protocol: protocolVersion,
      oldestServed,
      program,
      server,
      now: ports.now().toISOString(),
      invented: await onlyInvented(database),
    } satisfies Hello),
  );
  app.get('/health', async (context) => {
    const health: Health = await healthOf(database, foldVersion);
    return context.json(health, health.well ? 200 : 503);
  });
  // Accounts are made and changed at the office's own machine. Over the wire an office account must not become anybody
  // else, set a password or rename itself: entries would then be signed in another person's name.
  for (const closed of ['/auth/admin/*', '/auth/update-user']) {
    app.all(closed, (context) => refuse(context, 'not-found'));
  }
  app.on(['GET', 'POST'], '/auth/*', atMost(64 * 1024), (context) => accounts.handle(context.req.raw));
  return app;
}
