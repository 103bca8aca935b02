import { keepersAsked } from '@combside/contract/keepers';
import { registerRowsAsked } from '@combside/contract/register-rows';
import { registerSearched } from '@combside/contract/register-search';
import { unsettledAsked } from '@combside/contract/unsettled';
import { identifier } from '@combside/record/entry';
import { type Context, Hono } from 'hono';
import type { Database } from '../store/database.ts';
import { entriesOfOne } from '../store/entries-of-one.ts';
import { ServerError } from '../store/errors.ts';
import { keeperPageOf, keepersListed } from '../store/keepers.ts';
import { registerRowsListed } from '../store/register-rows.ts';
import { registerSearched as searched } from '../store/register-search.ts';
import type { SignedIn } from '../store/server-ports.ts';
import { unsettledListed } from '../store/unsettled.ts';
import { readQuery } from './answers.ts';

type Env = { Variables: { readonly signedIn: SignedIn } };

/** The register's addresses, mounted below `/api` behind the question who you are. */
export function registerAddresses(database: Database): Hono<Env> {
  const app = new Hono<Env>();
  const rights = (context: Context<Env>) => context.get('signedIn').rights;
  app.get('/register/search', async (context) =>
    context.json(await searched(database, rights(context), readQuery(context, registerSearched))),
  );
  app.get('/register/rows', async (context) =>
    context.json(await registerRowsListed(database, rights(context), readQuery(context, registerRowsAsked))),
  );
  app.get('/register/unsettled', async (context) =>
    context.json(await unsettledListed(database, rights(context), readQuery(context, unsettledAsked))),
  );
  app.get('/register/entries/:type/:id', async (context) => {
    const { type, id } = context.req.param();
    if (!identifier.safeParse(id).success) throw new ServerError('not-found');
    return context.json(await entriesOfOne(database, rights(context), type, id));
  });
  app.get('/keepers', async (context) =>
    context.json(await keepersListed(database, rights(context), readQuery(context, keepersAsked))),
  );
  app.get('/keepers/:id', async (context) => {
    const id = context.req.param('id');
    if (!identifier.safeParse(id).success) throw new ServerError('not-found');
    return context.json(await keeperPageOf(database, rights(context), id));
  });
  return app;
}
