import type { ColonyPage } from '@combside/contract/colony-page';
import type { Database } from '../database.ts';
import { ServerError } from '../errors.ts';
import { stateOf } from '../folded-states.ts';
import { newestArrival } from '../newest-arrival.ts';
import { peopleIn } from '../people.ts';
import { assertReadable, type Rights } from '../rights.ts';
import { apiaryLineOf } from './apiaries.ts';
import { apiariesAtEnds, apiaryNames, movementsAt } from './movements.ts';
import { photographsShown } from './photographs-shown.ts';

/**
 * One colony with everything ever seen in it.
 *
 * @throws ServerError `not-found`, also for a colony in a district that is not granted
 */
export async function colonyPageOf(database: Database, rights: Rights, colony: string): Promise<ColonyPage> {
  const position = await newestArrival(database);
  const state = await stateOf(database, 'colony', colony);
  if (!state) throw new ServerError('not-found');
  const site = state.colony.current?.body.apiary ?? state.examinations[0]?.body.apiary;
  const apiary = site ? await apiaryLineOf(database, site) : null;
  const author = state.colony.history[0]?.written.by ?? state.examinations[0]?.written.by ?? null;
  assertReadable(rights, apiary?.district ?? null, author);
  const photographs = await photographsShown(
    database,
    state.examinations.map((examination) => ({ colony, examination })),
  );
  const sites = [...new Set(state.colony.history.map(({ body }) => body.apiary))];
  const movements = await movementsAt(database, sites, colony);
  const otherEnds = await apiaryNames(database, rights, [...sites, ...apiariesAtEnds(movements)]);
  const people = await peopleIn(database, [state, ...movements], []);
  return { colony: state, apiary, movements, otherEnds, photographs, people: [...people], position } as ColonyPage;
}
