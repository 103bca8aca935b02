import { mapAsked } from '@combside/contract/map';
import { Hono } from 'hono';
import { mapExtentOf, mapWindow } from '../../store/desk/map.ts';
import { readQuery } from '../answers.ts';
import type { AppPorts } from '../app-ports.ts';
import { archiveOf, backgroundTold } from '../background.ts';
import { rightsOf, type SignedInEnv } from './signed-in.ts';

/** Apiaries in a window of the map, and what lies behind them. */
export function mapRoutes({ database, background }: Pick<AppPorts, 'database' | 'background'>): Hono<SignedInEnv> {
  const app = new Hono<SignedInEnv>();
  app.get('/map', async (context) =>
    context.json(await mapWindow(database, rightsOf(context), readQuery(context, mapAsked))),
  );
  app.get('/map/background', async (context) => context.json(backgroundTold(background)));
  app.get('/map/tiles.pmtiles', (context) => archiveOf(context, background));
  app.get('/map/extent', async (context) => context.json(await mapExtentOf(database, rightsOf(context))));
  return app;
}
