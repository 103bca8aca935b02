import type { ColonySeen, VisitPage } from '@combside/contract/visit-page';
import type { ColonyState } from '@combside/record/states';
import { sql } from 'kysely';
import type { Database } from '../database.ts';
import { ServerError } from '../errors.ts';
import { stateOf, statesOf } from '../folded-states.ts';
import { newestArrival } from '../newest-arrival.ts';
import { peopleIn } from '../people.ts';
import { assertReadable, type Rights } from '../rights.ts';
import { apiaryLineOf } from './apiaries.ts';
import { photographsShown } from './photographs-shown.ts';

/**
 * A visit with its apiary, its colonies as it saw them, and their photographs.
 *
 * @throws ServerError `not-found`, also for a visit in a district that is not granted
 */
export async function visitPageOf(database: Database, rights: Rights, visit: string): Promise<VisitPage> {
  const position = await newestArrival(database);
  const state = await stateOf(database, 'visit', visit);
  const body = state?.visit.current?.body;
  if (!state || !body) throw new ServerError('not-found');
  const apiary = await apiaryLineOf(database, body.apiary);
  assertReadable(rights, apiary?.district ?? null, body.inspector);

  const seen = await database.sql
    .selectFrom('combside.visit_colonies')
    .select('colony')
    .where('visit', '=', visit)
    .execute();
  const found = await statesOf(
    database,
    'colony',
    seen.map((row) => row.colony),
  );
  const colonies = found.map((colony) => colonySeen(colony, visit)).filter((one) => one.examinations.length > 0);
  colonies.sort((a, b) => a.label.localeCompare(b.label, 'en', { numeric: true }) || (a.colony < b.colony ? -1 : 1));

  const keeper = apiary?.keeper ? await stateOf(database, 'keeper', apiary.keeper) : null;
  const photographs = await photographsShown(
    database,
    colonies.flatMap((one) => one.examinations.map((examination) => ({ colony: one.colony, examination }))),
  );
  const states = [state, keeper, ...found];
  return {
    visit: state,
    apiary,
    keeper,
    colonies,
    photographs,
    people: [...(await peopleIn(database, states, [body.inspector]))],
    arrivedAt: await arrivedAt(database, visit),
    position,
  } as VisitPage;
}

function colonySeen(state: ColonyState, visit: string): ColonySeen {
  const colony = state.colony.current?.body;
  return {
    colony: state.about.id,
    label: colony?.label ?? '',
    hiveType: colony?.hiveType ?? null,
    examinations: state.examinations.filter((one) => one.body.visit === visit),
    assessments: state.assessments.filter((one) => one.body.visit === visit),
    notes: state.notes,
  } as ColonySeen;
}

async function arrivedAt(database: Database, visit: string): Promise<string> {
  const found = await sql<{ at: Date }>`
    select max(received_at) as at from combside.entries where refused is null and (
      (about_type = 'visit' and about_id = ${visit}::uuid) or (about_type = 'colony' and about_id = any(array(
        select colony from combside.visit_colonies where visit = ${visit}::uuid))))`.execute(database.sql);
  return (found.rows[0]?.at ?? new Date(0)).toISOString();
}
