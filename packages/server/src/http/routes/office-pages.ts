import { apiariesAsked } from '@combside/contract/apiaries';
import { coloniesSearched } from '@combside/contract/colonies';
import { visitsAsked } from '@combside/contract/visits';
import { Hono } from 'hono';
import type { Database } from '../../store/database.ts';
import { apiariesListed } from '../../store/desk/apiaries.ts';
import { apiaryPageOf } from '../../store/desk/apiary-page.ts';
import { coloniesSearchedFor } from '../../store/desk/colonies.ts';
import { colonyPageOf } from '../../store/desk/colony-page.ts';
import { laboratoriesListed } from '../../store/desk/laboratories.ts';
import { visitPageOf } from '../../store/desk/visit-page.ts';
import { visitsListed } from '../../store/desk/visits.ts';
import { districtsGranted } from '../../store/districts.ts';
import { readQuery } from '../answers.ts';
import { identifierIn, rightsOf, type SignedInEnv } from './signed-in.ts';

/** Lists of the office, and one page for each apiary, colony and visit. */
export function officePageRoutes(database: Database): Hono<SignedInEnv> {
  const app = new Hono<SignedInEnv>();
  app.get('/districts', async (context) => context.json(await districtsGranted(database, rightsOf(context))));
  app.get('/apiaries', async (context) =>
    context.json(await apiariesListed(database, rightsOf(context), readQuery(context, apiariesAsked))),
  );
  app.get('/apiaries/:id', async (context) =>
    context.json(await apiaryPageOf(database, rightsOf(context), identifierIn(context.req.param('id')))),
  );
  app.get('/visits', async (context) =>
    context.json(await visitsListed(database, rightsOf(context), readQuery(context, visitsAsked))),
  );
  app.get('/visits/:id', async (context) =>
    context.json(await visitPageOf(database, rightsOf(context), identifierIn(context.req.param('id')))),
  );
  app.get('/colonies', async (context) =>
    context.json(await coloniesSearchedFor(database, rightsOf(context), readQuery(context, coloniesSearched))),
  );
  app.get('/colonies/:id', async (context) =>
    context.json(await colonyPageOf(database, rightsOf(context), identifierIn(context.req.param('id')))),
  );
  app.get('/laboratories', async (context) => context.json(await laboratoriesListed(database)));
  return app;
}
