import { dayOf } from '@combside/calendar/instant';
import { figureRecordsAsked, figuresAsked } from '@combside/contract/figures';
import { owedAsked } from '@combside/contract/owed';
import { planningAsked } from '@combside/contract/planning';
import { loadPack } from '@combside/law/load-pack';
import { Hono } from 'hono';
import { figureRecordsListed, figuresCounted } from '../../store/desk/figures.ts';
import { owedListed } from '../../store/desk/owed.ts';
import { planningListed } from '../../store/desk/planning.ts';
import { readQuery } from '../answers.ts';
import type { AppPorts } from '../app-ports.ts';
import { rightsOf, type SignedInEnv } from './signed-in.ts';

type Ports = Pick<AppPorts, 'database' | 'pack' | 'now'>;

/** The office's questions over many apiaries: what is owed, what to plan, the figures. */
export function officeQuestionRoutes(ports: Ports): Hono<SignedInEnv> {
  const { database, pack } = ports;
  const app = new Hono<SignedInEnv>();
  app.get('/owed', async (context) => {
    const asked = readQuery(context, owedAsked);
    const at = { pack: await loadPack(pack), now: ports.now().toISOString() };
    return context.json(await owedListed(database, rightsOf(context), asked, at));
  });
  app.get('/planning', async (context) => {
    const asked = readQuery(context, planningAsked);
    const on = { pack: await loadPack(pack), today: dayOf(ports.now().toISOString()) };
    return context.json(await planningListed(database, rightsOf(context), asked, on));
  });
  app.get('/figures', async (context) => {
    const asked = readQuery(context, figuresAsked);
    return context.json(await figuresCounted(database, rightsOf(context), asked, ports.now().toISOString()));
  });
  app.get('/figures/records', async (context) =>
    context.json(await figureRecordsListed(database, rightsOf(context), readQuery(context, figureRecordsAsked))),
  );
  return app;
}
