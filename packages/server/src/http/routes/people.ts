import type { Me } from '@combside/contract/people';
import { Hono } from 'hono';
import { districtsKnown } from '../../store/districts.ts';
import { peopleFor } from '../../store/people.ts';
import type { AppPorts } from '../app-ports.ts';
import { rightsOf, type SignedInEnv } from './signed-in.ts';

/** One's own rights, and the names behind `by`. */
export function peopleRoutes({ database, pack }: Pick<AppPorts, 'database' | 'pack'>): Hono<SignedInEnv> {
  const app = new Hono<SignedInEnv>();
  app.get('/me', async (context) => {
    const { rights: own, email } = context.get('signedIn');
    const districts = own.districts === 'all' ? await districtsKnown(database) : own.districts;
    return context.json({ ...own, email, districts: [...districts], pack } satisfies Me);
  });
  app.get('/people', async (context) => context.json({ people: await peopleFor(database, rightsOf(context)) }));
  return app;
}
