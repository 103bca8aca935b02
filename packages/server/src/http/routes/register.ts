import { keepersAsked } from '@combside/contract/keepers';
import { registerRowsAsked } from '@combside/contract/register-rows';
import { registerSearched } from '@combside/contract/register-search';
import { unsettledAsked } from '@combside/contract/unsettled';
import { Hono } from 'hono';
import type { Database } from '../../store/database.ts';
import { keeperPageOf, keepersListed } from '../../store/desk/keepers.ts';
import { registerRowsListed } from '../../store/desk/register-rows.ts';
import { registerSearched as searched } from '../../store/desk/register-search.ts';
import { unsettledListed } from '../../store/desk/unsettled.ts';
import { entriesOfOne } from '../../store/entries-of-one.ts';
import { readQuery } from '../answers.ts';
import { identifierIn, rightsOf, type SignedInEnv } from './signed-in.ts';

/** The register: searched, listed, opened entry by entry, and what waits for a word. */
export function registerRoutes(database: Database): Hono<SignedInEnv> {
  const app = new Hono<SignedInEnv>();
  app.get('/register/search', async (context) =>
    context.json(await searched(database, rightsOf(context), readQuery(context, registerSearched))),
  );
  app.get('/register/rows', async (context) =>
    context.json(await registerRowsListed(database, rightsOf(context), readQuery(context, registerRowsAsked))),
  );
  app.get('/register/unsettled', async (context) =>
    context.json(await unsettledListed(database, rightsOf(context), readQuery(context, unsettledAsked))),
  );
  app.get('/register/entries/:type/:id', async (context) => {
    const { type, id } = context.req.param();
    return context.json(await entriesOfOne(database, rightsOf(context), type, identifierIn(id)));
  });
  app.get('/keepers', async (context) =>
    context.json(await keepersListed(database, rightsOf(context), readQuery(context, keepersAsked))),
  );
  app.get('/keepers/:id', async (context) =>
    context.json(await keeperPageOf(database, rightsOf(context), identifierIn(context.req.param('id')))),
  );
  return app;
}
